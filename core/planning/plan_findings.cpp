#include "core/planning/plan_findings.h"

#include "core/planning/violations.h"

#include <algorithm>
#include <set>
#include <span>

namespace laneward::planning {

namespace {

void addConflicts(const Plan& plan, Instant begin, std::vector<Finding>& findings) {
    for (const Conflict& c : plan.occupancy.conflicts) {
        if (c.overlap.end <= begin) continue;
        const auto& occurrences = plan.occupancy.occurrences;
        findings.push_back({Severity::Warning,
                            "calendar.conflict",
                            occurrences[c.first].title,
                            {occurrences[c.second].title, c.lanes.text(), c.overlap.begin, c.overlap.end}});
    }
}

/// Patterns nobody knows and lanes that are out of service, once for each series.
void addOccurrences(const State& state, const Plan& plan, Instant begin, std::vector<Finding>& findings) {
    std::set<std::pair<SeriesId, PatternId>> told;
    for (const Occurrence& o : plan.occupancy.occurrences) {
        if (o.kind == EventKind::Closure || o.booked.begin < begin) continue;
        for (const SurfaceDemand& demand : o.demands) {
            if (!demand.pattern || findPattern(state.patterns, *demand.pattern)) continue;
            if (!told.insert({o.series, *demand.pattern}).second) continue;
            findings.push_back(
                {Severity::Warning, "plan.pattern-unknown", o.title, {demand.pattern->value, demand.lanes.text()}});
        }
        const LaneSet out = outOfService(state.centre, o);
        if (!out.isEmpty())
            findings.push_back({Severity::Warning, "plan.lane-out-of-service", o.title, {out.text(), o.booked.begin}});
    }
}

void addStaff(const State& state, const Plan& plan, std::vector<Finding>& findings) {
    const QString& name = state.centre.facts.name;
    if (state.centre.machines.empty() && !plan.unmet.empty())
        findings.push_back({Severity::Warning, "plan.no-machine", name, {}});
    std::set<QDate> dates;
    for (const Shortfall& s : plan.unmet)
        dates.insert(dateOf(state.centre, s.playBegins - Seconds{1}));
    for (QDate date : dates) {
        const auto shifts = shiftsOn(state.centre, date);
        const bool nobody = std::none_of(shifts.begin(), shifts.end(), [](const ShiftSpan& s) { return s.people > 0; });
        if (nobody) findings.push_back({Severity::Warning, "plan.no-shift", name, {date}});
    }
}

/// Confirmed jobs that something stands against now: an event moved onto them, a lane went out of service.
void addConfirmed(const State& state, const Plan& plan, std::vector<Finding>& findings) {
    Plan confirmed;
    confirmed.range = plan.range;
    confirmed.now = plan.now;
    confirmed.occupancy = plan.occupancy;
    std::copy_if(plan.jobs.begin(), plan.jobs.end(), std::back_inserter(confirmed.jobs),
                 [](const Job& job) { return job.state != JobState::Proposed && job.state != JobState::Dropped; });
    if (confirmed.jobs.empty()) return;
    const std::vector<Finding> broken = violationsOf(state, confirmed);
    for (const Job& job : confirmed.jobs) {
        const Machine* machine = findMachine(state.centre, job.machine);
        const QString name = machine ? machine->name : job.machine.value;
        const bool breaks = std::any_of(broken.begin(), broken.end(), [&](const Finding& f) {
            const bool names = std::any_of(f.values.begin(), f.values.end(), [&](const Value& v) {
                const Instant* t = std::get_if<Instant>(&v);
                return t && *t == job.time.begin;
            });
            return f.subject == name && names;
        });
        if (breaks)
            findings.push_back({Severity::Warning, "plan.confirmed-breaks", name, {job.laneSet().text(), job.time.begin}});
    }
}

bool sameDemand(const DemandSet& set, size_t a, size_t b) {
    const Demand& x = set.demands[a];
    const Demand& y = set.demands[b];
    return std::tie(x.kind, x.pattern, x.least, x.longestAge, x.longestPlay, x.playBegins, x.due, x.target) ==
           std::tie(y.kind, y.pattern, y.least, y.longestAge, y.longestPlay, y.playBegins, y.due, y.target);
}

/// The gaps of one lane that end on a day.
std::span<const Gap> gapsOn(const DemandSet& demands, size_t lane, const Span& day) {
    const auto& gaps = demands.gaps[lane];
    const auto endsLater = [](Instant t, const Gap& g) { return t < g.time.end; };
    const auto first = std::upper_bound(gaps.begin(), gaps.end(), day.begin, endsLater);
    return {first, std::upper_bound(first, gaps.end(), day.end, endsLater)};
}

bool same(const DemandSet& set, std::span<const Gap> a, std::span<const Gap> b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](const Gap& x, const Gap& y) {
        return x.time == y.time && x.demand.has_value() == y.demand.has_value() &&
               (!x.demand || sameDemand(set, *x.demand, *y.demand));
    });
}

bool asks(const DemandSet& set, std::span<const Gap> gaps) {
    return std::any_of(gaps.begin(), gaps.end(),
                       [&](const Gap& g) { return g.demand && set.demands[*g.demand].kind != DemandKind::AsItIs; });
}

}  // namespace

std::vector<Finding> findingsOf(const State& state, const Plan& plan, bool stopped) {
    const Instant begin = std::max(plan.now, dayOf(state.centre, plan.range.first).begin);
    std::vector<Finding> findings = plan.occupancy.findings;
    addConflicts(plan, begin, findings);
    addOccurrences(state, plan, begin, findings);
    addStaff(state, plan, findings);
    addConfirmed(state, plan, findings);
    if (stopped) findings.push_back({Severity::Note, "plan.cancelled", state.centre.facts.name, {}});
    return findings;
}

int sizeOfDay(const Ground& ground, const DemandSet& demands, int day) {
    const Span time{ground.days[size_t(day)], ground.days[size_t(day) + 1]};
    int runs = 0;
    std::span<const Gap> before;
    bool counted = false;
    for (size_t lane = 0; lane < demands.gaps.size(); ++lane) {
        const std::span<const Gap> now = gapsOn(demands, lane, time);
        const bool counts = asks(demands, now);
        if (counts && !(counted && same(demands, now, before))) ++runs;
        counted = counts;
        before = now;
    }
    return runs;
}

}  // namespace laneward::planning
