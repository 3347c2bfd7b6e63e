#include "app/cli/csv_fields.h"
#include "app/cli/csv_supplies.h"
#include "core/documents/writers.h"
#include "core/season/count_rows.h"

#include <algorithm>

namespace laneward::cli {

namespace {

/// The last digits of a whole number behind a point: exact, as it is read again.
CsvField decimal(std::int64_t value, int digits) {
    QString text = QString::number(std::abs(value)).rightJustified(digits + 1, u'0');
    if (digits > 0) text.insert(text.size() - digits, u'.');
    return {value < 0 ? u'-' + text : text, true};
}

/// Its name, which people read, where that leads back to it; else its id.
template <class T>
CsvField calledIn(const std::vector<T>& rows, const T& row) {
    const bool leadsBack =
        !row.name.isEmpty() && row.name == row.name.trimmed() && std::all_of(rows.begin(), rows.end(), [&](const T& other) {
            return &other == &row || (other.name.compare(row.name, Qt::CaseInsensitive) != 0 && other.id.value != row.name);
        });
    return words(leadsBack ? row.name : row.id.value);
}

template <class T>
const T* rowWith(const std::vector<T>& rows, const decltype(T::id)& id) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const T& row) { return row.id == id; });
    return found == rows.end() ? nullptr : &*found;
}

struct Written {
    CsvField amount;
    CsvField unit;
};

/// Liquids in millilitres, cloth in millimetres.
Written amountOf(Amount amount, BaseUnit base) {
    switch (base) {
        case BaseUnit::Microlitre:
            return {decimal(amount.value, 3), words(QStringLiteral("ml"))};
        case BaseUnit::Millimetre:
            return {number(amount.value), words(QStringLiteral("mm"))};
        case BaseUnit::Piece:
            break;
    }
    return {number(amount.value), words(QStringLiteral("pieces"))};
}

QString wordOf(Place::Kind kind) {
    switch (kind) {
        case Place::Kind::Open:
            return QStringLiteral("open");
        case Place::Kind::Tank:
            return QStringLiteral("tank");
        case Place::Kind::WasteTank:
            return QStringLiteral("waste");
        default:
            return QStringLiteral("shelf");
    }
}

}  // namespace

QByteArray stockToCsv(const SeasonState& season) {
    QByteArray out = header({"supply", "place", "machine", "container", "lot", "amount", "unit"});
    for (const CountRow& row : rowsToCount(season)) {
        const Supply* supply = rowWith(season.supplies, row.key.supply);
        const Machine* machine = rowWith(season.centre.machines, row.key.place.machine);
        const Written books = amountOf(row.books, unitOf(row.kind));
        out += csvRecord({supply ? calledIn(season.supplies, *supply) : words({}), words(wordOf(row.key.place.kind)),
                          machine ? calledIn(season.centre.machines, *machine) : words({}), words(row.key.container),
                          words(row.key.lot), books.amount, books.unit});
    }
    return out;
}

QByteArray pricesToCsv(const SeasonState& season, const SupplierId& of) {
    QByteArray out =
        header({"supplier", "supply", "article", "pack", "pack_unit", "from_packs", "to_packs", "price", "currency"});
    const Supplier* supplier = rowWith(season.suppliers, of);
    for (const Offer& offer : season.offers) {
        const Supply* supply = rowWith(season.supplies, offer.supply);
        if (!supplier || offer.supplier != of || offer.retired || !supply) continue;
        const Written pack = amountOf(offer.pack, unitOf(supply->kind));
        for (size_t n = 0; n < offer.prices.size(); ++n) {
            const PriceBreak& price = offer.prices[n];
            const bool isLast = n + 1 == offer.prices.size();
            out += csvRecord(
                {calledIn(season.suppliers, *supplier), calledIn(season.supplies, *supply), words(offer.article), pack.amount,
                 pack.unit, number(price.packs), isLast ? words({}) : number(offer.prices[n + 1].packs - 1),
                 decimal(price.each.minor, minorDigits(price.each.currency)), words(QString::fromLatin1(price.each.currency))});
        }
    }
    return out;
}

}  // namespace laneward::cli
