#include "app/pages/calendar/consequences.h"

#include "core/calendar/recurrence.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Consequences)
};

constexpr int daysAhead = 366;
constexpr std::int64_t nodes = 20'000;  // an answer while one types; the plan that is kept takes its time

State withSeries(State state, const std::optional<Series>& before, const Series& after) {
    if (before) std::erase_if(state.series, [&](const Series& s) { return s.id == before->id; });
    state.series.push_back(after);
    return state;
}

void addConflicts(const Occupancy& occupancy, const Series& series, std::vector<Consequence>& list) {
    for (const Conflict& conflict : occupancy.conflicts) {
        const Occurrence& a = occupancy.occurrences[conflict.first];
        const Occurrence& b = occupancy.occurrences[conflict.second];
        if (a.series != series.id && b.series != series.id) continue;
        const Occurrence& other = a.series == series.id ? b : a;
        list.push_back({Words::tr("Conflicts with %1 on lanes %2.").arg(shown(other.title), conflict.lanes.text()), true});
    }
}

using LackKey = std::tuple<QString, QString, bool>;

LackKey lackKey(const Shortfall& lack) { return {lack.series.value, lack.lanes.text(), lack.unmet}; }

void addShortfalls(const Plan& before, const Plan& after, const Speech& speech, std::vector<Consequence>& list) {
    std::set<LackKey> known;
    for (const Shortfall& lack : before.unmet)
        known.insert(lackKey(lack));
    for (const Shortfall& lack : after.unmet) {
        if (known.contains(lackKey(lack))) continue;
        const QString words =
            lack.unmet ? Words::tr("%1 on lanes %2 can no longer be met.") : Words::tr("%1 on lanes %2 would be ready late.");
        list.push_back({words.arg(QStringLiteral("%1: %2").arg(shown(lack.title), text(lack.demand)), lack.lanes.text()), true});
        if (lack.missing.value > 0)
            list.back().words += u' ' + Words::tr("%1 are missing.").arg(durationText(lack.missing, speech));
    }
    const auto gone = [&](const Shortfall& lack) {
        return std::none_of(after.unmet.begin(), after.unmet.end(),
                            [&](const Shortfall& s) { return lackKey(s) == lackKey(lack); });
    };
    const auto met = std::count_if(before.unmet.begin(), before.unmet.end(), gone);
    if (met > 0) list.push_back({Words::tr("%n demand(s) that were missed would be met.", nullptr, int(met)), false});
}

void addWork(const PlanDifference& change, const Speech& speech, std::vector<Consequence>& list) {
    const auto lanes = change.after.treatments - change.before.treatments;
    if (lanes > 0) list.push_back({Words::tr("%n more lane(s) to treat.", nullptr, int(lanes)), false});
    if (lanes < 0) list.push_back({Words::tr("%n lane(s) fewer to treat.", nullptr, int(-lanes)), false});
    if (change.conditioner.value > 0) {
        list.push_back({Words::tr("Takes %1 more conditioner.").arg(amountText(change.conditioner, speech)), false});
    } else if (change.conditioner.value < 0) {
        list.push_back({Words::tr("Takes %1 less conditioner.").arg(amountText(-change.conditioner, speech)), false});
    }
    if (!change.moved.empty())
        list.push_back({Words::tr("%n job(s) move to another time.", nullptr, int(change.moved.size())), false});
}

}  // namespace

std::vector<LocalTime> nextStarts(const Series& series, QDate today, size_t count) {
    const Result<Dates> dates = startsOf(series, {today, today.addDays(daysAhead)});
    if (!dates) return {};
    std::vector<LocalTime> starts;
    for (const LocalTime& start : dates->starts) {
        const bool cancelled = std::any_of(series.overrides.begin(), series.overrides.end(),
                                           [&](const Override& o) { return o.cancelled && o.original == start; });
        if (!cancelled && starts.size() < count) starts.push_back(start);
    }
    return starts;
}

std::optional<LocalTime> nextStart(const Series& series, QDate today) {
    const std::vector<LocalTime> next = nextStarts(series, today, 1);
    return next.empty() ? std::nullopt : std::optional(next.front());
}

EventPreview previewOf(const SeasonState& season, const std::optional<Series>& before, const Series& after, Instant now,
                       const Speech& speech) {
    const QDate today = dateOf(season.centre, now);
    const std::optional<LocalTime> next = nextStart(after, today);
    if (!next) return {{{Words::tr("It does not take place within a year from today."), false}}, {}, {}};
    const Result<Zone> zone = Zone::load(after.zone);
    const QDate day = std::max(today, zone ? dateOf(season.centre, zone->toInstant(*next)) : next->date);
    const State state = planningState(season, now);
    const Plan old = plan(state, now, {day, day}, nodes);
    const Plan fresh = plan(withSeries(state, before, after), now, {day, day}, nodes);
    EventPreview preview;
    preview.day = day;
    std::vector<Consequence>& list = preview.consequences;
    addConflicts(fresh.occupancy, after, list);
    addShortfalls(old, fresh, speech, list);
    addWork(difference(old, fresh), speech, list);
    if (list.empty()) list.push_back({Words::tr("No change to the work of that day."), false});
    list.front().words = Words::tr("On %1: %2").arg(dayText(day, speech), list.front().words);
    for (EventCost& cost : eventCosts(season, fresh).events) {
        if (cost.series == after.id && !preview.cost) preview.cost = std::move(cost);
    }
    return preview;
}

}  // namespace laneward
