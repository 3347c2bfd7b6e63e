#include "core/documents/purchase_order.h"

#include "core/documents/keys.h"
#include "core/documents/stock_words.h"
#include "core/documents/text_page.h"
#include "core/documents/writers.h"

#include <QCoreApplication>
#include <QJsonArray>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

CsvField words(const QString& text) { return {text, false}; }
CsvField number(std::int64_t n) { return {QString::number(n), true}; }

}  // namespace

PurchaseOrder purchaseOrder(const SeasonState& season, const Order& order) {
    PurchaseOrder page;
    page.centre = season.centre.facts.name;
    if (const Supplier* supplier = findSupplier(season.suppliers, order.supplier)) {
        page.supplier = supplier->name;
        page.address = supplier->address;
    }
    page.number = order.number;
    page.date = order.placedOn;
    if (const Person* person = findPerson(season.centre, order.person)) page.person = person->name;
    page.freight = order.freight;
    page.note = order.note;
    for (const OrderLine& line : order.lines) {
        const Supply* supply = findSupply(season.supplies, line.supply);
        PurchaseLine row{line.article,
                         supply ? supply->name : line.supply.value,
                         supply ? supply->kind : SupplyKind::Part,
                         line.pack,
                         line.packs,
                         line.each,
                         line.each * line.packs};
        page.goods = page.goods + row.total;
        page.lines.push_back(std::move(row));
    }
    page.total = page.goods + page.freight;
    return page;
}

QString orderText(const PurchaseOrder& order, const Speech& speech) {
    QString out = spread(shown(order.centre), say(QT_TRANSLATE_NOOP("wording", "Order")) + " " + shown(order.number));
    const QString when = order.date ? dayText(*order.date, speech) : say(QT_TRANSLATE_NOOP("wording", "Draft: not placed yet"));
    out += spread(shown(order.supplier), when) + QString(textColumns, '=') + "\n";
    for (const QString& line : order.address.split('\n', Qt::SkipEmptyParts))
        out += shown(line) + "\n";
    std::vector<QStringList> rows{{say(QT_TRANSLATE_NOOP("wording", "Article")), say(QT_TRANSLATE_NOOP("wording", "Supply")),
                                   say(QT_TRANSLATE_NOOP("wording", "Packs")), say(QT_TRANSLATE_NOOP("wording", "Each")),
                                   say(QT_TRANSLATE_NOOP("wording", "Total"))}};
    for (const PurchaseLine& line : order.lines) {
        rows.push_back({shown(line.article), shown(line.supply), packsText(line.packs, line.pack, line.kind, speech),
                        moneyText(line.each, speech), moneyText(line.total, speech)});
    }
    rows.push_back({{}, say(QT_TRANSLATE_NOOP("wording", "Freight")), {}, {}, moneyText(order.freight, speech)});
    rows.push_back({{}, say(QT_TRANSLATE_NOOP("wording", "Total")), {}, {}, moneyText(order.total, speech)});
    out += "\n" + table(rows, 2);
    if (!order.person.isEmpty()) out += "\n" + say(QT_TRANSLATE_NOOP("wording", "Ordered by %1")).arg(shown(order.person)) + "\n";
    if (!order.note.isEmpty()) out += "\n" + wrapped(shown(order.note), 0);
    return out;
}

QByteArray orderCsv(const PurchaseOrder& order) {
    std::vector<CsvField> header;
    for (const char* name : {"article", "supply", "pack", "packs", "each_minor", "total_minor", "currency"})
        header.push_back(words(name));
    QByteArray out = csvRecord(header);
    for (const PurchaseLine& line : order.lines) {
        out += csvRecord({words(line.article), words(line.supply), number(line.pack.value), number(line.packs),
                          number(line.each.minor), number(line.total.minor), words(QString::fromLatin1(line.each.currency))});
    }
    return out;
}

QJsonObject orderJson(const PurchaseOrder& order) {
    QJsonArray lines;
    for (const PurchaseLine& line : order.lines) {
        lines.append(QJsonObject{{"article", line.article},
                                 {"supply", line.supply},
                                 {"pack_" + unitKey(line.kind), qint64(line.pack.value)},
                                 {"packs", line.packs},
                                 {"each_minor", qint64(line.each.minor)},
                                 {"total_minor", qint64(line.total.minor)}});
    }
    return {{"supplier", order.supplier},
            {"number", order.number},
            {"date", order.date ? QJsonValue(order.date->toString(Qt::ISODate)) : QJsonValue()},
            {"lines", lines},
            {"goods_minor", qint64(order.goods.minor)},
            {"freight_minor", qint64(order.freight.minor)},
            {"total_minor", qint64(order.total.minor)},
            {"currency", QString::fromLatin1(order.total.currency)}};
}

}  // namespace laneward
