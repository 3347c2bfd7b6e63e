#include "core/planning/outcomes.h"

#include "core/planning/recursion.h"

#include <algorithm>
#include <map>
#include <set>

namespace laneward::planning {

namespace {

std::vector<std::vector<FixedTreatment>> treatmentsOf(const State& state, const std::vector<Job>& jobs) {
    std::set<JobId> named;
    State all;
    all.centre.facts.lanes = state.centre.facts.lanes;
    for (const Job& job : jobs) {
        named.insert(job.id);
        all.committed.push_back(job);
        // Only the times count here; a proposed job counts as if it were confirmed.
        if (job.state == JobState::Proposed) all.committed.back().state = JobState::Confirmed;
    }
    for (const Job& job : state.committed) {
        if (!named.contains(job.id)) all.committed.push_back(job);
    }
    return fixedTreatments(all);
}

DemandOutcome outcomeOf(const Demand& demand, const LaneCondition& condition) {
    DemandOutcome outcome;
    outcome.condition = condition;
    if (demand.kind == DemandKind::AsItIs) return outcome;
    if (!satisfies(condition, demand)) {
        outcome.met = Met::Unmet;
        return outcome;
    }
    if (demand.kind == DemandKind::Stripped) return outcome;
    outcome.freshness = demand.playBegins - condition.end;
    if (condition.playedSince > Seconds{0} || condition.end <= demand.target) return outcome;
    outcome.met = condition.end > demand.due ? Met::Late : Met::Tight;
    (outcome.met == Met::Late ? outcome.late : outcome.tight) =
        condition.end - (outcome.met == Met::Late ? demand.due : demand.target);
    return outcome;
}

}  // namespace

std::vector<DemandOutcome> outcomesOf(const State& state, const Occupancy& occupancy, const DemandSet& demands,
                                      const std::vector<Job>& jobs) {
    return outcomesUntil({INT64_MAX}, state, playsOf(state, occupancy), demands, jobs);
}

std::vector<DemandOutcome> outcomesUntil(Instant until, const State& state, const std::vector<LanePlays>& plays,
                                         const DemandSet& demands, const std::vector<Job>& jobs) {
    const auto treatments = treatmentsOf(state, jobs);
    const auto last = lastByLane(state);
    std::vector<LaneCondition> conditions;
    std::vector<size_t> next(treatments.size(), 0);
    for (size_t lane = 0; lane < treatments.size(); ++lane) {
        // What the history knows already is not applied again.
        conditions.push_back(conditionBefore(last[lane], {}, {}, {}));
        while (last[lane] && next[lane] < treatments[lane].size() && treatments[lane][next[lane]].time.end <= last[lane]->end) {
            ++next[lane];
        }
    }
    std::vector<DemandOutcome> outcomes;
    outcomes.reserve(demands.demands.size());
    for (const Demand& demand : demands.demands) {
        if (demand.playBegins > until) break;
        const size_t lane = size_t(demand.lane - 1);
        LaneCondition& condition = conditions[lane];
        for (; next[lane] < treatments[lane].size() && treatments[lane][next[lane]].time.end <= demand.playBegins; ++next[lane]) {
            const FixedTreatment& t = treatments[lane][next[lane]];
            condition = conditionAfter(condition, {t.treatment, t.pattern}, t.time.end);
        }
        if (condition.treated) condition.playedSince = playedIn(plays[lane], {condition.end, demand.playBegins});
        outcomes.push_back(outcomeOf(demand, condition));
    }
    return outcomes;
}

std::vector<JobOuting> outingsOf(const State& state, const std::vector<Job>& jobs) {
    std::map<std::tuple<QDate, MachineId, int>, std::vector<const Job*>> byOuting;
    for (const Job& job : jobs) {
        if (job.state != JobState::Dropped) byOuting[{job.date, job.machine, job.outing}].push_back(&job);
    }
    std::vector<JobOuting> outings;
    for (auto& [key, list] : byOuting) {
        std::stable_sort(list.begin(), list.end(), [](const Job* a, const Job* b) { return a->time < b->time; });
        JobOuting outing{
            findMachine(state.centre, std::get<1>(key)), std::get<0>(key), std::get<2>(key), list, list[0]->time, {}, true};
        bool back = false;
        Instant charged = outing.time.begin;
        for (const Job* job : list) {
            outing.time.end = std::max(outing.time.end, job->time.end);
            outing.over = outing.over && (job->state == JobState::Done || job->state == JobState::CutShort);
            for (const Step& step : job->steps) {
                outing.time = {std::min(outing.time.begin, step.time.begin), std::max(outing.time.end, step.time.end)};
                back = back || step.kind == StepKind::ReturnToBay;
                if (step.kind == StepKind::Charge && job == list[0]) charged = step.time.end;
            }
        }
        if (outing.machine && !back) outing.time.end = outing.time.end + outing.machine->times.returnToBay;
        if (outing.machine && outing.machine->attended) outing.attended = {std::max(outing.time.begin, charged), outing.time.end};
        outings.push_back(std::move(outing));
    }
    return outings;
}

int dayIndex(const DateRange& range, QDate date) { return int(range.first.daysTo(date)); }

}  // namespace laneward::planning
