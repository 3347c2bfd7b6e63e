#include "core/documents/cost_words.h"

#include "core/documents/keys.h"
#include "core/documents/stock_words.h"
#include "core/documents/text_page.h"
#include "core/documents/writers.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

/// One of `count` equal parts, rounded, halves up.
std::int64_t part(std::int64_t whole, int count) { return count > 0 ? (2 * whole + count) / (2 * count) : whole; }

Money ofALane(const EventCost& cost) { return {part(cost.product.minor, cost.lanes.count()), cost.product.currency}; }
Seconds timeOfALane(const EventCost& cost) { return {part(cost.care.time.value, cost.lanes.count())}; }

/// In the centre's currency, where nothing has a price too.
Money inCurrency(Money money, const SeasonState& season) {
    if (money.currency.isEmpty()) money.currency = season.centre.facts.settings.currency;
    return money;
}

QString namesOf(const QStringList& products) {
    QStringList names;
    for (const QString& product : products)
        names << shown(product);
    return names.join(QStringLiteral(", "));
}

bool isFree(const EventCost& cost) { return cost.product.isZero() && !cost.withoutPrice.isEmpty(); }

QJsonObject careJson(const LaneCare& care) {
    return {{"time_s", qint64(care.time.value)},
            {"conditioner_ul", qint64(care.use.conditionerTotal().value)},
            {"cleaner_ul", qint64(care.use.cleaner.value)},
            {"waste_ul", qint64(care.use.waste.value)},
            {"lane_runs", care.use.laneRuns}};
}

}  // namespace

QStringList costSentences(const EventCost& cost, const SeasonState& season, const Speech& speech) {
    QStringList lines;
    const auto money = [&](const Money& m) { return moneyText(inCurrency(m, season), speech); };
    const QString conditioner = amountText(cost.care.use.conditionerTotal(), speech);
    const QString cleaner = amountText(cost.care.use.cleaner, speech);
    if (isFree(cost))
        lines << say(QT_TRANSLATE_NOOP("wording", "Product: %1 of conditioner, %2 of cleaner.")).arg(conditioner, cleaner);
    else
        lines << say(QT_TRANSLATE_NOOP("wording", "Product: %1 (%2 of conditioner, %3 of cleaner)."))
                     .arg(money(cost.product), conditioner, cleaner);
    lines << say(QT_TRANSLATE_NOOP("wording", "Work: %1.")).arg(durationText(cost.care.time, speech));
    const QString lanes = speech.locale.toString(cost.lanes.count());
    const QString time = durationText(timeOfALane(cost), speech);
    if (isFree(cost))
        lines << say(QT_TRANSLATE_NOOP("wording", "For each of its %1 lanes: %2.")).arg(lanes, time);
    else
        lines << say(QT_TRANSLATE_NOOP("wording", "For each of its %1 lanes: %2 and %3.")).arg(lanes, money(ofALane(cost)), time);
    if (!cost.withoutPrice.isEmpty())
        lines << say(QT_TRANSLATE_NOOP("wording", "Not in it, for want of a price: %1.")).arg(namesOf(cost.withoutPrice));
    lines << say(QT_TRANSLATE_NOOP("wording", "What an hour of work costs is not known here; add it yourself."));
    return lines;
}

QString costsText(const EventCosts& costs, const SeasonState& season, const Speech& speech) {
    if (costs.events.empty()) return say(QT_TRANSLATE_NOOP("wording", "No event needs lane care in this time.")) + u'\n';
    std::vector<QStringList> rows{{say(QT_TRANSLATE_NOOP("wording", "Begins")), say(QT_TRANSLATE_NOOP("wording", "Event")),
                                   say(QT_TRANSLATE_NOOP("wording", "Lanes")), say(QT_TRANSLATE_NOOP("wording", "Work")),
                                   say(QT_TRANSLATE_NOOP("wording", "Product")), say(QT_TRANSLATE_NOOP("wording", "A lane"))}};
    QStringList unknown;
    for (const EventCost& cost : costs.events) {
        const auto money = [&](const Money& m) { return isFree(cost) ? QString("-") : moneyText(inCurrency(m, season), speech); };
        rows.push_back({dateTimeText(cost.playBegins, speech), shown(cost.title), cost.lanes.text(),
                        durationText(cost.care.time, speech), money(cost.product), money(ofALane(cost))});
        unknown += cost.withoutPrice;
    }
    QString out = table(rows, 0);
    unknown.removeDuplicates();
    if (costs.nobody.time > Seconds{0})
        out += wrapped(
            say(QT_TRANSLATE_NOOP("wording", "Work that no event needs: %1.")).arg(durationText(costs.nobody.time, speech)), 0);
    if (!unknown.isEmpty())
        out += wrapped(say(QT_TRANSLATE_NOOP("wording", "Not in it, for want of a price: %1.")).arg(namesOf(unknown)), 0);
    return out + wrapped(say(QT_TRANSLATE_NOOP("wording", "What an hour of work costs is not known here; add it yourself.")), 0);
}

QJsonObject costsJson(const EventCosts& costs, const SeasonState& season, const Speech& speech) {
    QJsonArray events;
    for (const EventCost& cost : costs.events) {
        QJsonObject event = careJson(cost.care);
        event["series"] = cost.series.value;
        event["title"] = cost.title;
        event["start"] = isoTime(cost.playBegins, speech.zone);
        event["lanes"] = laneList(cost.lanes);
        event["product_minor"] = qint64(cost.product.minor);
        event["currency"] = QString::fromLatin1(inCurrency(cost.product, season).currency);
        event["without_price"] = QJsonArray::fromStringList(cost.withoutPrice);
        event["a_lane"] =
            QJsonObject{{"time_s", qint64(timeOfALane(cost).value)}, {"product_minor", qint64(ofALane(cost).minor)}};
        events.append(event);
    }
    return {{"events", events}, {"nobody", careJson(costs.nobody)}};
}

QByteArray costsCsv(const EventCosts& costs, const SeasonState& season, const Speech& speech) {
    std::vector<CsvField> header;
    for (const char* name : {"series", "title", "start", "lanes", "time_s", "conditioner_ul", "cleaner_ul", "waste_ul",
                             "lane_runs", "product_minor", "currency", "without_price", "a_lane_time_s", "a_lane_product_minor"})
        header.push_back({name, false});
    QByteArray out = csvRecord(header);
    const auto words = [](const QString& text) { return CsvField{text, false}; };
    const auto number = [](std::int64_t n) { return CsvField{QString::number(n), true}; };
    for (const EventCost& cost : costs.events) {
        const JobUse& use = cost.care.use;
        out += csvRecord({words(cost.series.value), words(cost.title), words(isoTime(cost.playBegins, speech.zone)),
                          words(cost.lanes.text()), number(cost.care.time.value), number(use.conditionerTotal().value),
                          number(use.cleaner.value), number(use.waste.value), number(use.laneRuns), number(cost.product.minor),
                          words(QString::fromLatin1(inCurrency(cost.product, season).currency)),
                          words(cost.withoutPrice.join(QStringLiteral(", "))), number(timeOfALane(cost).value),
                          number(ofALane(cost).minor)});
    }
    return out;
}

}  // namespace laneward
