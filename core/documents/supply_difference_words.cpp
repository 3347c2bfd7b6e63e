#include "core/documents/supply_difference_words.h"

#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

using Kind = DifferenceLine::Kind;

constexpr size_t mostDuties = 3;  // of those that shift: the first ones matter

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

DifferenceLine dutyLine(const DutyShift& shift, const QString& name, const Speech& speech) {
    const auto day = [&](const std::optional<QDate>& date) { return dayWithWeekday(*date, speech); };
    if (!shift.after)
        return {Kind::Service,
                say(QT_TRANSLATE_NOOP("wording", "%1 no longer falls due about %2.")).arg(name, day(shift.before))};
    if (!shift.before)
        return {Kind::Service, say(QT_TRANSLATE_NOOP("wording", "%1 falls due too, about %2.")).arg(name, day(shift.after))};
    const int days = int(shift.before->daysTo(*shift.after));
    if (days < 0)
        return {Kind::Service,
                say(QT_TRANSLATE_N_NOOP("wording", "%1 falls due %n day(s) earlier (%2)."), -days).arg(name, day(shift.after))};
    return {Kind::Service,
            say(QT_TRANSLATE_N_NOOP("wording", "%1 falls due %n day(s) later (%2)."), days).arg(name, day(shift.after))};
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

std::vector<DifferenceLine> serviceLines(const std::vector<DutyShift>& shifts, const SeasonState& season, const Speech& speech) {
    std::vector<DifferenceLine> lines;
    for (const DutyShift& shift : shifts) {
        if (lines.size() == mostDuties) break;
        const ServiceItem* item = findItem(season.items, shift.item);
        const Duty* duty = item ? findDuty(*item, shift.duty) : nullptr;
        if (duty) lines.push_back(dutyLine(shift, itemText(*item, season) + ", " + shown(duty->name), speech));
    }
    const int more = int(shifts.size()) - int(lines.size());
    if (more > 0 && !lines.empty())
        lines.push_back({Kind::Service, say(QT_TRANSLATE_N_NOOP("wording", "%n more duty(s) fall due on other days."), more)});
    return lines;
}

void addBesides(DifferenceWords& words, const ChangeBesides& change, const SeasonState& season, const Speech& speech) {
    std::vector<DifferenceLine> lines;
    if (!season.supplies.empty()) lines = stockLines(change.stock, season, speech);
    for (DifferenceLine& line : serviceLines(change.service, season, speech))
        lines.push_back(std::move(line));
    if (!season.supplies.empty()) lines.push_back(costLine(change.cost, speech));
    const auto proof = std::find_if(words.lines.begin(), words.lines.end(), [](const auto& l) { return l.kind == Kind::Proof; });
    words.lines.insert(proof, std::make_move_iterator(lines.begin()), std::make_move_iterator(lines.end()));
}

}  // namespace laneward
