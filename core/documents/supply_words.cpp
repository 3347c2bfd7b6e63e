#include "core/documents/supply_words.h"

#include "core/documents/stock_words.h"
#include "core/documents/text_page.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double leastRisk = 0.01;  ///< more than that is worth a sentence

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

QString dateOrLater(const std::optional<QDate>& date, const Speech& speech) {
    return date ? dayWithWeekday(*date, speech) : say(QT_TRANSLATE_NOOP("wording", "later"));
}

QString percentText(double share, const Speech& speech) {
    if (share < 0.005) return say(QT_TRANSLATE_NOOP("wording", "under 1 %"));
    if (share > 0.995) return say(QT_TRANSLATE_NOOP("wording", "over 99 %"));
    return say(QT_TRANSLATE_NOOP("wording", "%1 %")).arg(speech.locale.toString(qRound(share * 100)));
}

QString nameOf(const SupplyId& id, const SeasonState& season) {
    const Supply* supply = findSupply(season.supplies, id);
    return shown(supply ? supply->name : id.value);
}

QString supplierName(const SupplierId& id, const SeasonState& season) {
    const auto found =
        std::find_if(season.suppliers.begin(), season.suppliers.end(), [&](const Supplier& s) { return s.id == id; });
    return shown(found == season.suppliers.end() ? id.value : found->name);
}

const SupplyLine* firstToRunOut(const SupplyOutlook& outlook) {
    const auto found = std::find_if(outlook.lines.begin(), outlook.lines.end(),
                                    [](const SupplyLine& line) { return line.outEarly.has_value(); });
    return found == outlook.lines.end() ? nullptr : &*found;
}

QStringList namesOf(const PlannedOrder& order, const SeasonState& season) {
    QStringList names;
    for (const PlannedLine& line : order.lines) {
        const QString name = nameOf(line.supply, season);
        if (!names.contains(name)) names += name;
    }
    return names;
}

const NextOrder* soonest(const OrderPlan& plan) {
    const NextOrder* first = nullptr;
    for (const NextOrder& next : plan.next) {
        if (next.orderBy.isValid() && (!first || next.orderBy < first->orderBy)) first = &next;
    }
    return first;
}

}  // namespace

QString supplyHeadline(const SupplyOutlook& outlook, const SeasonState& season, const Speech& speech) {
    if (outlook.lines.empty()) return say(QT_TRANSLATE_NOOP("wording", "No supplies are kept yet."));
    const NextOrder* next = soonest(outlook.plan);
    if (next) {
        const PlannedOrder& order = outlook.plan.orders[next->order];
        const QString what = namesOf(order, season).join(", ");
        const QString who = supplierName(order.supplier, season);
        if (next->orderBy <= outlook.today) return say(QT_TRANSLATE_NOOP("wording", "Order today from %1: %2.")).arg(who, what);
        return say(QT_TRANSLATE_NOOP("wording", "Order from %1 by %2: %3."))
            .arg(who, dayWithWeekday(next->orderBy, speech), what);
    }
    if (const SupplyLine* line = firstToRunOut(outlook))
        return say(QT_TRANSLATE_NOOP("wording", "Nothing to order: %1 lasts until %2 at least (95 %)."))
            .arg(nameOf(line->supply, season), dayWithWeekday(*line->outEarly, speech));
    return say(QT_TRANSLATE_NOOP("wording", "Nothing to order: everything lasts past %1 (95 %)."))
        .arg(dayWithWeekday(outlook.today.addDays(outlook.days - 1), speech));
}

QStringList orderReasons(const SupplyOutlook& outlook, size_t next, const SeasonState& season, const Speech& speech) {
    QStringList reasons;
    const NextOrder& one = outlook.plan.next[next];
    const PlannedOrder& order = outlook.plan.orders[one.order];
    reasons += say(QT_TRANSLATE_NOOP("wording", "Placed on %1 it is there by %2."))
                   .arg(dayWithWeekday(order.on, speech), dayWithWeekday(order.arrives, speech));
    if (one.orderBy.isValid() && one.orderBy > order.on)
        reasons += say(QT_TRANSLATE_NOOP("wording", "The last day that is early enough is %1."))
                       .arg(dayWithWeekday(one.orderBy, speech));
    for (const PlannedLine& line : order.lines) {
        reasons += say(QT_TRANSLATE_NOOP("wording", "%1 then lasts until %2."))
                       .arg(nameOf(line.supply, season), dayWithWeekday(line.covers, speech));
    }
    for (const OrderRisk& risk : outlook.risks[next]) {
        if (risk.waiting < risk.onTime + leastRisk) continue;
        reasons += say(QT_TRANSLATE_NOOP("wording", "A week later: %1 runs out before the delivery with %2 (now %3)."))
                       .arg(nameOf(risk.supply, season), percentText(risk.waiting, speech), percentText(risk.onTime, speech));
    }
    if (one.weekEarlier) {
        reasons +=
            one.weekEarlier->minor >= 0
                ? say(QT_TRANSLATE_NOOP("wording", "A week earlier costs %1 more.")).arg(moneyText(*one.weekEarlier, speech))
                : say(QT_TRANSLATE_NOOP("wording", "A week earlier costs no more."));
    }
    return reasons;
}

QString weekText(const SupplyLine& line, SupplyKind kind, const Speech& speech) {
    constexpr double mostWeeks = 104;
    if (unitOf(kind) != BaseUnit::Piece || line.aWeek != Amount{} || line.chancePerDay <= 0)
        return amountText(line.aWeek, kind, speech);
    const double weeks = 1 / (7 * line.chancePerDay);
    if (weeks > mostWeeks) return say(QT_TRANSLATE_NOOP("wording", "under 1 in 2 years"));
    if (std::round(weeks) <= 1) return say(QT_TRANSLATE_NOOP("wording", "about 1"));
    return say(QT_TRANSLATE_NOOP("wording", "about 1 in %1 weeks")).arg(speech.locale.toString(qRound(weeks)));
}

QString supplyText(const SupplyOutlook& outlook, const PastScores& scores, const SeasonState& season, const Speech& speech) {
    QString out = wrapped(supplyHeadline(outlook, season, speech), 0) + "\n";
    std::vector<QStringList> rows{{say(QT_TRANSLATE_NOOP("wording", "Supply")), say(QT_TRANSLATE_NOOP("wording", "On hand")),
                                   say(QT_TRANSLATE_NOOP("wording", "A week")), say(QT_TRANSLATE_NOOP("wording", "Runs out")),
                                   say(QT_TRANSLATE_NOOP("wording", "Order by"))}};
    for (const SupplyLine& line : outlook.lines) {
        const Supply* supply = findSupply(season.supplies, line.supply);
        if (!supply) continue;
        const QString range = line.outEarly ? dateOrLater(line.outEarly, speech) + " - " + dateOrLater(line.outLate, speech)
                                            : say(QT_TRANSLATE_NOOP("wording", "later"));
        rows.push_back({shown(supply->name), amountText(line.onHand(), supply->kind, speech),
                        weekText(line, supply->kind, speech), range,
                        line.orderBy ? dayWithWeekday(*line.orderBy, speech) : QString("-")});
    }
    out += table(rows, 0);
    for (const Finding& finding : outlook.plan.findings)
        out += wrapped(text(finding, speech), 2);
    for (const SupplyLine& line : outlook.lines) {
        const Supply* supply = findSupply(season.supplies, line.supply);
        const auto score = scores.find(line.supply);
        if (!supply || score == scores.end() || score->second.most.spans == 0) continue;
        out += wrapped(shown(supply->name) + ": " + scoreWords(score->second, supply->kind, speech).all().join(' '), 2);
    }
    return out;
}

QString ordersText(const SupplyOutlook& outlook, const SeasonState& season, const Speech& speech) {
    if (outlook.plan.next.empty()) return supplyHeadline(outlook, season, speech) + "\n";
    QString out;
    for (size_t n = 0; n < outlook.plan.next.size(); ++n) {
        const PlannedOrder& planned = outlook.plan.orders[outlook.plan.next[n].order];
        out += orderText(purchaseOrder(season, draftOf(planned, season, outlook.today)), speech);
        for (const QString& reason : orderReasons(outlook, n, season, speech))
            out += wrapped(reason, 2);
        out += "\n";
    }
    return out;
}

}  // namespace laneward
