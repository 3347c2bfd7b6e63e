#include "core/documents/supply_difference_words.h"

#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

using Kind = DifferenceLine::Kind;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

QString nameOf(const SupplyId& id, const SeasonState& season) {
    const Supply* supply = findSupply(season.supplies, id);
    return shown(supply ? supply->name : id.value);
}

DifferenceLine runOutLine(const SupplyShift& shift, const SeasonState& season, const Speech& speech) {
    const QString name = nameOf(shift.supply, season);
    const auto day = [&](const std::optional<QDate>& date) { return dayWithWeekday(*date, speech); };
    if (!shift.after)
        return {Kind::Stock, say(QT_TRANSLATE_NOOP("wording", "%1 no longer runs out about %2.")).arg(name, day(shift.before))};
    if (!shift.before)
        return {Kind::Stock, say(QT_TRANSLATE_NOOP("wording", "%1 would run out too, about %2.")).arg(name, day(shift.after)),
                true};
    const int days = int(shift.before->daysTo(*shift.after));
    if (days < 0)
        return {Kind::Stock,
                say(QT_TRANSLATE_N_NOOP("wording", "%1 runs out %n day(s) earlier (%2)."), -days).arg(name, day(shift.after)),
                true};
    return {Kind::Stock,
            say(QT_TRANSLATE_N_NOOP("wording", "%1 runs out %n day(s) later (%2)."), days).arg(name, day(shift.after))};
}

DifferenceLine orderLine(const OrderShift& shift, const SeasonState& season, const Speech& speech) {
    QStringList names;
    for (const SupplyId& supply : shift.supplies)
        names << nameOf(supply, season);
    const QString what = names.join(QStringLiteral(", "));
    const auto day = [&](const std::optional<QDate>& date) { return dayWithWeekday(*date, speech); };
    if (!shift.after)
        return {Kind::Stock, say(QT_TRANSLATE_NOOP("wording", "No need to order %1 by %2.")).arg(what, day(shift.before))};
    if (!shift.before)
        return {Kind::Stock, say(QT_TRANSLATE_NOOP("wording", "Order %1 too, by %2.")).arg(what, day(shift.after)), true};
    return {Kind::Stock,
            say(QT_TRANSLATE_NOOP("wording", "Order %1 by %2 instead of %3.")).arg(what, day(shift.after), day(shift.before)),
            *shift.after < *shift.before};
}

}  // namespace

std::vector<DifferenceLine> stockLines(const SupplyDifference& change, const SeasonState& season, const Speech& speech) {
    std::vector<DifferenceLine> lines;
    for (const SupplyShift& shift : change.runOut)
        lines.push_back(runOutLine(shift, season, speech));
    for (const OrderShift& shift : change.orders)
        lines.push_back(orderLine(shift, season, speech));
    if (lines.empty())
        lines.push_back(
            {Kind::Stock, say(QT_TRANSLATE_NOOP("wording", "Nothing runs out or has to be ordered on another day."))});
    return lines;
}

DifferenceLine costLine(const ProductCost& cost, const Speech& speech) {
    const QString money = signedMoneyText(cost.sum, speech);
    if (cost.withoutPrice.isEmpty()) return {Kind::Cost, say(QT_TRANSLATE_NOOP("wording", "Product cost %1")).arg(money)};
    QStringList names;
    for (const QString& name : cost.withoutPrice)
        names << shown(name);
    return {Kind::Cost, say(QT_TRANSLATE_NOOP("wording", "Product cost %1, without what has no price: %2"))
                            .arg(money, names.join(QStringLiteral(", ")))};
}

void addStock(DifferenceWords& words, const SupplyDifference& change, const ProductCost& cost, const SeasonState& season,
              const Speech& speech) {
    std::vector<DifferenceLine> lines = stockLines(change, season, speech);
    lines.push_back(costLine(cost, speech));
    const auto proof = std::find_if(words.lines.begin(), words.lines.end(), [](const auto& l) { return l.kind == Kind::Proof; });
    words.lines.insert(proof, std::make_move_iterator(lines.begin()), std::make_move_iterator(lines.end()));
}

}  // namespace laneward
