#include "core/documents/history_totals.h"

#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

QString count(const char* source, std::int64_t n, const Speech& speech) {
    // %n would be written without the locale's groups of digits; the form is chosen by it all the same.
    return QCoreApplication::translate("wording", source, nullptr, int(std::min<std::int64_t>(n, 1'000'000'000)))
        .arg(speech.locale.toString(qlonglong(n)));
}

Money moneyOf(std::int64_t minor, const SeasonState& season) { return {minor, season.centre.facts.settings.currency}; }

bool isOf(const HistoryEntry& entry, const HistoryQuery& query, const MachineId& machine) {
    return query.item.isEmpty() ? entry.machine == machine : entry.item == query.item;
}

}  // namespace

HistoryTotals totalsOf(const HistoryIndex& index, const std::vector<HistoryRow>& rows) {
    HistoryTotals totals;
    for (const HistoryRow row : rows) {
        const HistoryEntry& entry = index.at(row);
        if (!entry.stands) continue;
        ++totals.entries;
        totals.incidents += entry.kind == HistoryKind::Incident && !entry.answers;
        if (entry.kind == HistoryKind::Run) {
            ++totals.runs;
            totals.lanes += entry.lanesTreated;
            totals.conditioner += entry.conditioner;
            totals.cleaner += entry.cleaner;
            totals.runMinutes += entry.minutes.value_or(0);
        }
        if (entry.kind == HistoryKind::Service) {
            ++totals.services;
            totals.failures += entry.failed;
            totals.serviceMinutes += entry.minutes.value_or(0);
        }
        totals.costMinor += entry.costMinor.value_or(0);
        totals.partsMinor += entry.partsMinor;
    }
    return totals;
}

std::optional<ItemFigures> itemFigures(const HistoryIndex& index, const HistoryQuery& query, const SeasonState& season) {
    const ServiceItem* item = query.item.isEmpty() ? nullptr : findItem(season.items, query.item);
    const MachineId machine = item ? item->machine : query.machine;
    if (query.item.isEmpty() && machine.isEmpty()) return std::nullopt;
    HistoryQuery days;
    days.time = query.time;
    ItemFigures figures;
    std::int64_t lanes = 0;
    for (const HistoryRow row : index.find(days)) {
        const HistoryEntry& entry = index.at(row);
        if (entry.kind == HistoryKind::Run && entry.machine == machine) lanes += entry.lanesTreated;
        if (entry.kind != HistoryKind::Service || !isOf(entry, query, machine)) continue;
        figures.failures += entry.failed;
        figures.costMinor += entry.costMinor.value_or(0);
        figures.partsMinor += entry.partsMinor;
    }
    if (machine.isEmpty()) return figures;
    figures.lanes = lanes;
    if (figures.failures > 0) figures.lanesBetweenFailures = double(lanes) / double(figures.failures);
    if (lanes > 0) figures.costPerLane = double(figures.costMinor) / double(lanes);
    return figures;
}

QString historyHeadline(const HistoryTotals& totals, const DateRange& days, const Speech& speech) {
    const QString entries = count(QT_TRANSLATE_N_NOOP("wording", "%1 entry(s)"), totals.entries, speech);
    QString line = say(QT_TRANSLATE_NOOP("wording", "%1 from %2 to %3"))
                       .arg(entries, dayWithWeekday(days.first, speech), dayWithWeekday(days.last, speech));
    QStringList facts;
    if (totals.incidents > 0) facts << count(QT_TRANSLATE_N_NOOP("wording", "%1 incident(s)"), totals.incidents, speech);
    if (totals.failures > 0) facts << count(QT_TRANSLATE_N_NOOP("wording", "%1 part(s) had failed"), totals.failures, speech);
    if (facts.isEmpty()) facts << say(QT_TRANSLATE_NOOP("wording", "no incident and no failure"));
    return line + QLatin1StringView("; ") + facts.join(QLatin1StringView(", "));
}

QString totalsText(const HistoryTotals& totals, const SeasonState& season, const Speech& speech) {
    QStringList facts;
    if (totals.runs > 0) {
        facts << count(QT_TRANSLATE_N_NOOP("wording", "%1 run(s)"), totals.runs, speech)
              << count(QT_TRANSLATE_N_NOOP("wording", "%1 lane(s) treated"), totals.lanes, speech)
              << say(QT_TRANSLATE_NOOP("wording", "conditioner %1")).arg(amountText(totals.conditioner, speech))
              << say(QT_TRANSLATE_NOOP("wording", "cleaner %1")).arg(amountText(totals.cleaner, speech))
              << say(QT_TRANSLATE_NOOP("wording", "machines at work %1")).arg(durationText(minutes(totals.runMinutes), speech));
    }
    if (totals.services > 0) {
        facts << count(QT_TRANSLATE_N_NOOP("wording", "%1 service(s)"), totals.services, speech)
              << say(QT_TRANSLATE_NOOP("wording", "service work %1")).arg(durationText(minutes(totals.serviceMinutes), speech));
    }
    if (totals.costMinor > 0)
        facts << say(QT_TRANSLATE_NOOP("wording", "cost %1, of it parts %2"))
                     .arg(moneyText(moneyOf(totals.costMinor, season), speech),
                          moneyText(moneyOf(totals.partsMinor, season), speech));
    return facts.join(QLatin1StringView(", "));
}

QString figuresText(const ItemFigures& figures, const SeasonState& season, const Speech& speech) {
    constexpr double lanesOfRate = 1'000;
    QStringList facts;
    if (figures.lanes)
        facts << count(QT_TRANSLATE_N_NOOP("wording", "%1 lane(s) treated by the machine"), *figures.lanes, speech);
    if (figures.lanesBetweenFailures)
        facts << say(QT_TRANSLATE_NOOP("wording", "%1 lanes between failures on average (%2 failed)"))
                     .arg(speech.locale.toString(qlonglong(std::llround(*figures.lanesBetweenFailures))),
                          speech.locale.toString(qlonglong(figures.failures)));
    else if (figures.failures > 0)
        facts << count(QT_TRANSLATE_N_NOOP("wording", "%1 part(s) had failed"), figures.failures, speech);
    else
        facts << say(QT_TRANSLATE_NOOP("wording", "nothing had failed"));
    if (!figures.costPerLane)
        facts << say(QT_TRANSLATE_NOOP("wording", "service costs %1")).arg(moneyText(moneyOf(figures.costMinor, season), speech));
    if (figures.costPerLane) {
        const Money rate = moneyOf(std::llround(*figures.costPerLane * lanesOfRate), season);
        facts << say(QT_TRANSLATE_NOOP("wording", "service costs %1 per 1,000 lanes")).arg(moneyText(rate, speech));
    }
    facts << say(QT_TRANSLATE_NOOP("wording", "parts %1")).arg(moneyText(moneyOf(figures.partsMinor, season), speech));
    return facts.join(QLatin1StringView(", "));
}

}  // namespace laneward
