#include "core/planning/plan.h"

#include "core/planning/job_builder.h"
#include "core/planning/objective.h"
#include "core/planning/plan_findings.h"
#include "core/planning/shortfalls.h"

#include <algorithm>

namespace laneward {

using namespace planning;

namespace {

// Remedies are looked for by planning changed days: this many for a whole plan, so that a hopeless season stays quick.
constexpr int remediesTried = 24;
constexpr std::int64_t remedyNodes = 120;
constexpr std::int64_t longestLookBack = 31;
constexpr int roundsToFill = 6;

/// Days before the range whose play still matters: as far back as a treatment can count as fresh or recent.
int lookBack(const State& state) {
    Seconds longest = hours(24);
    for (const Series& series : state.series) {
        for (const SurfaceDemand& demand : series.demands)
            longest = std::max(longest, demand.longestAge);
    }
    return int(std::min(longestLookBack, longest.value / hours(24).value + 1));
}

/// Bounds of the day's whole objective: what is given and cannot change, and the bound of what was searched.
void addProof(const SolvedDay& solved, const std::set<int>& doubtful, DayPlan& day) {
    const Objective& o = day.objective;
    const Score& score = solved.solution.placement.score;
    const Score& bound = solved.solution.bound;
    // Work that might as well be done the evening before belongs to no day alone, and a treatment that was given up may have
    // been placed by a better search: then only the plainest bound holds.
    const bool alone = !solved.problem.movable && !solved.gaveUp;
    const auto least = [&](std::int64_t value, size_t i) {
        return alone ? std::max<std::int64_t>(0, value - (score[i] - bound[i])) : std::int64_t{0};
    };
    day.bound = {least(o.unmet, 0),   least(o.late_s, 1),  least(o.treatments, 2),    least(o.overtime_s, 3), least(o.tight_s, 4),
                 least(o.outings, 5), least(o.changes, 6), least(o.lanes_crossed, 7), least(o.freshness_s, 8)};
    const bool sure = std::none_of(solved.treatments.begin(), solved.treatments.end(),
                                   [&](const OpenTreatment& t) { return doubtful.contains(t.what.lane); });
    if (!sure) day.bound.treatments = 0;
    day.proven = day.bound == day.objective;
}

std::vector<Outing> outingsOn(const State& state, const std::vector<Job>& jobs, QDate date) {
    std::vector<Outing> outings;
    std::vector<Job> ofDay;
    std::copy_if(jobs.begin(), jobs.end(), std::back_inserter(ofDay), [&](const Job& j) { return j.date == date; });
    for (const JobOuting& o : outingsOf(state, ofDay)) {
        Outing outing{o.jobs.front()->machine, o.number, o.time, {}};
        for (const Job* job : o.jobs)
            outing.jobs.push_back(job->id);
        outings.push_back(std::move(outing));
    }
    std::sort(outings.begin(), outings.end(), [](const Outing& a, const Outing& b) {
        return std::tie(a.time.begin, a.machine, a.number) < std::tie(b.time.begin, b.machine, b.number);
    });
    return outings;
}

struct Attempt {
    Plan plan;
    bool gaveUp = false;  ///< some treatment found no place on its day
};

Attempt planOnce(const State& state, Instant now, const DateRange& range, std::int64_t nodeLimit, const Cancelled& cancelled) {
    Attempt attempt;
    Plan& plan = attempt.plan;
    plan.range = range;
    plan.now = now;
    if (range.days() == 0) return attempt;
    plan.occupancy = occupancyOf(state.series, state.centre, {range.first.addDays(-lookBack(state)), range.last});
    const DemandSet demands = demandsOf(state, plan.occupancy, now, range);
    const Ground ground = groundOf(state, plan.occupancy, now, range);
    const Solved solved = RangePlanner(ground, demands, nodeLimit, cancelled).solve();
    for (const Job& job : state.committed) {
        if (range.contains(job.date)) plan.jobs.push_back(job);
    }
    JobBuilder builder(ground, demands);
    for (int day = 0; day < range.days(); ++day) {
        std::vector<Job> jobs = builder.jobsOf(solved.days[size_t(day)], day);
        std::move(jobs.begin(), jobs.end(), std::back_inserter(plan.jobs));
    }
    std::sort(plan.jobs.begin(), plan.jobs.end(), comesBefore);
    explainJobs(ground, demands, plan.jobs);
    const std::vector<DemandOutcome> outcomes = outcomesOf(state, plan.occupancy, demands, plan.jobs);
    const std::vector<Objective> objectives = objectivesOf(state, range, demands, outcomes, plan.jobs);
    plan.unmet = shortfallsOf(ground, demands, outcomes);
    for (int day = 0; day < range.days(); ++day) {
        DayPlan dayPlan;
        dayPlan.date = range.first.addDays(day);
        dayPlan.objective = objectives[size_t(day)];
        addProof(solved.days[size_t(day)], solved.doubtful, dayPlan);
        dayPlan.size = sizeOfDay(ground, demands, day);
        dayPlan.outings = outingsOn(state, plan.jobs, dayPlan.date);
        plan.days.push_back(std::move(dayPlan));
    }
    plan.findings = findingsOf(ground, plan, solved.stopped);
    attempt.gaveUp = std::any_of(solved.days.begin(), solved.days.end(), [](const SolvedDay& day) { return day.gaveUp; });
    return attempt;
}

State withConfirmed(State state, const Plan& plan) {
    for (const Job& job : plan.jobs) {
        if (job.state != JobState::Proposed) continue;
        state.committed.push_back(job);
        state.committed.back().state = JobState::Confirmed;
    }
    return state;
}

/// Days are planned one after the other, so what found no place on a crowded day may still fit between the jobs that did. They
/// are kept and the rest is planned around them until nothing more fits: just as it would be if they were confirmed, and so a
/// plan that is confirmed is not added to afterwards.
Plan planWithout(const State& state, Instant now, const DateRange& range, std::int64_t nodeLimit, const Cancelled& cancelled) {
    Attempt attempt = planOnce(state, now, range, nodeLimit, cancelled);
    const std::vector<DayPlan> first = attempt.plan.days;
    for (int round = 0; attempt.gaveUp && round < roundsToFill; ++round) {
        Attempt more = planOnce(withConfirmed(state, attempt.plan), now, range, nodeLimit, cancelled);
        if (more.plan.jobs.size() == attempt.plan.jobs.size()) break;
        for (Job& job : more.plan.jobs) {
            const bool given =
                std::any_of(state.committed.begin(), state.committed.end(), [&](const Job& c) { return c.id == job.id; });
            if (!given) job.state = JobState::Proposed;
        }
        attempt = std::move(more);
    }
    for (size_t day = 0; day < first.size(); ++day) {
        // Bounds of the first attempt hold for the whole task, those of a later one only for what was left.
        attempt.plan.days[day].bound = first[day].bound;
        attempt.plan.days[day].proven = first[day].bound == attempt.plan.days[day].objective;
    }
    return std::move(attempt.plan);
}

}  // namespace

Plan plan(const State& state, Instant now, const DateRange& range, std::int64_t nodeLimit, const Cancelled& cancelled) {
    Plan result = planWithout(state, now, range, nodeLimit, cancelled);
    if (!result.unmet.empty() && !(cancelled && cancelled())) {
        addRemedies(state, result, remediesTried, [&](const State& changed, Instant at, const DateRange& days) {
            return planWithout(changed, at, days, std::min(nodeLimit, remedyNodes), cancelled);
        });
    }
    return result;
}

}  // namespace laneward
