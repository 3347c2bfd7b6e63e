#include "core/planning/objective.h"
#include "core/planning/outcomes.h"

#include <algorithm>
#include <map>

namespace laneward {

using namespace planning;

namespace {

std::vector<ShiftSpan> shiftsAround(const Centre& centre, QDate date) {
    std::vector<ShiftSpan> shifts;
    for (int offset : {-1, 0, 1}) {
        const std::vector<ShiftSpan> more = shiftsOn(centre, date.addDays(offset));
        shifts.insert(shifts.end(), more.begin(), more.end());
    }
    return shifts;
}

/// Lanes that the machine passes between one lane and the next within an outing.
std::int64_t crossedIn(const JobOuting& outing) {
    std::int64_t crossed = 0;
    int before = 0;
    for (const Job* job : outing.jobs) {
        for (const LaneTime& lane : job->lanes) {
            if (before > 0) crossed += std::max(0, std::abs(lane.lane - before) - 1);
            before = lane.lane;
        }
    }
    return crossed;
}

std::int64_t overtimeOn(const State& state, QDate date, const std::vector<const JobOuting*>& outings) {
    std::vector<Span> attended;
    for (const JobOuting* outing : outings) {
        if (!outing->over && !outing->attended.isEmpty()) attended.push_back(outing->attended);
    }
    if (attended.empty()) return 0;
    const std::vector<ShiftSpan> shifts = shiftsAround(state.centre, date);
    if (const auto least = leastOvertime(attended, shifts)) return least->value;
    // Nobody can attend this: all time outside every shift counts. violationsOf() says so too.
    Seconds overtime;
    for (const Span& span : attended) {
        Seconds inside;
        for (const ShiftSpan& shift : shifts) {
            inside = std::max(inside, std::min(span.end, shift.work.end) - std::max(span.begin, shift.work.begin));
        }
        overtime += span.length() - inside;
    }
    return overtime.value;
}

/// Work of one day, whatever comes of it.
void addWork(const State& state, QDate date, const std::vector<const JobOuting*>& outings, Objective& sum) {
    std::map<MachineId, std::vector<const Job*>> byMachine;
    for (const JobOuting* outing : outings) {
        ++sum.outings;
        sum.lanes_crossed += crossedIn(*outing);
        for (const Job* job : outing->jobs) {
            sum.treatments += std::int64_t(job->lanes.size());
            byMachine[job->machine].push_back(job);
        }
    }
    for (auto& [machine, jobs] : byMachine) {
        std::stable_sort(jobs.begin(), jobs.end(), [](const Job* a, const Job* b) { return a->time < b->time; });
        std::optional<PatternId> last;
        for (const Job* job : jobs) {
            if (!job->pattern) continue;
            if (last && *last != *job->pattern) ++sum.changes;
            last = job->pattern;
        }
    }
    sum.overtime_s += overtimeOn(state, date, outings);
}

void addOutcome(const DemandOutcome& outcome, Objective& sum) {
    sum.unmet += outcome.met == Met::Unmet ? 1 : 0;
    sum.late_s += outcome.late.value;
    sum.tight_s += outcome.tight.value;
    sum.freshness_s += outcome.freshness.value;
}

}  // namespace

Objective operator+(const Objective& a, const Objective& b) {
    return {a.unmet + b.unmet,
            a.late_s + b.late_s,
            a.treatments + b.treatments,
            a.overtime_s + b.overtime_s,
            a.tight_s + b.tight_s,
            a.outings + b.outings,
            a.changes + b.changes,
            a.lanes_crossed + b.lanes_crossed,
            a.freshness_s + b.freshness_s};
}

Objective Plan::objective() const {
    Objective sum;
    for (const DayPlan& day : days)
        sum = sum + day.objective;
    return sum;
}

int planning::dayOfDemand(const std::vector<Instant>& bounds, const Demand& demand) {
    // The end of a day at which a lane is to be stripped still belongs to that day.
    const Instant at = demand.kind == DemandKind::Stripped ? demand.playBegins - Seconds{1} : demand.playBegins;
    return int(std::upper_bound(bounds.begin(), bounds.end(), at) - bounds.begin()) - 1;
}

std::vector<Objective> planning::objectivesOf(const State& state, const DateRange& range, const DemandSet& demands,
                                              const std::vector<DemandOutcome>& outcomes, const std::vector<Job>& jobs) {
    std::vector<Objective> days(size_t(range.days()));
    const std::vector<Instant> bounds = dayBounds(state.centre, range);
    for (size_t d = 0; d < outcomes.size(); ++d) {
        const int day = dayOfDemand(bounds, demands.demands[d]);
        if (day >= 0 && day < int(days.size())) addOutcome(outcomes[d], days[size_t(day)]);
    }
    const std::vector<JobOuting> outings = outingsOf(state, jobs);
    std::map<QDate, std::vector<const JobOuting*>> byDate;
    for (const JobOuting& outing : outings)
        byDate[outing.date].push_back(&outing);
    for (const auto& [date, list] : byDate) {
        const int day = dayIndex(range, date);
        if (day >= 0 && day < int(days.size())) addWork(state, date, list, days[size_t(day)]);
    }
    return days;
}

Objective objectiveOf(const State& state, const Plan& plan, QDate date) {
    if (!plan.range.contains(date)) return {};
    const DemandSet demands = demandsOf(state, plan.occupancy, plan.now, plan.range);
    const std::vector<DemandOutcome> outcomes = outcomesOf(state, plan.occupancy, demands, plan.jobs);
    return objectivesOf(state, plan.range, demands, outcomes, plan.jobs)[size_t(dayIndex(plan.range, date))];
}

}  // namespace laneward
