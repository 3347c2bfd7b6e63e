#include "core/planning/plan.h"

#include "core/planning/job_builder.h"
#include "core/planning/plan_findings.h"
#include "core/planning/shortfalls.h"
#include "core/planning/stretch_planner.h"

#include <algorithm>

namespace laneward {

using namespace planning;

namespace {

// Remedies are looked for by planning changed days: this many for a whole plan, so that a hopeless season stays quick.
constexpr int remediesTried = 24;
constexpr int fewestTried = 4;
constexpr std::int64_t remedyWork = 150'000;
constexpr std::int64_t remedyNodes = 120;
// For a day of a first plan: little more than one placement where nothing is known of it.
constexpr std::int64_t firstNodes = 64;

Plan withoutRemedies(const PlanTask& task, PlannedRange planned) {
    Plan plan;
    plan.range = task.range;
    plan.now = task.now;
    plan.occupancy = std::move(planned.occupancy);
    bool stopped = false;
    for (const StretchPlanPtr& part : planned.plans) {
        plan.jobs.insert(plan.jobs.end(), part->jobs.begin(), part->jobs.end());
        plan.unmet.insert(plan.unmet.end(), part->unmet.begin(), part->unmet.end());
        plan.days.insert(plan.days.end(), part->days.begin(), part->days.end());
        stopped = stopped || part->stopped;
    }
    if (!std::is_sorted(plan.jobs.begin(), plan.jobs.end(), comesBefore))
        std::sort(plan.jobs.begin(), plan.jobs.end(), comesBefore);
    if (task.range.days() > 0) plan.findings = findingsOf(task.state, plan, stopped);
    return plan;
}

/// On a day of very many treatments each try takes longer, about as their square, and nobody reads that many.
int triesFor(const Plan& plan) {
    std::int64_t most = 1;
    for (const DayPlan& day : plan.days)
        most = std::max(most, day.objective.treatments + day.objective.unmet);
    return int(std::clamp<std::int64_t>(remedyWork / (most * most), fewestTried, remediesTried));
}

}  // namespace

Plan planning::wholePlan(const PlanTask& task, PlannedRange planned, PlanMemo& memo) {
    Plan result = withoutRemedies(task, std::move(planned));
    if (!result.unmet.empty() && !(task.cancelled && task.cancelled())) {
        addRemedies(task.state, result, triesFor(result), [&](const State& changed, Instant at, const DateRange& days) {
            const PlanTask small{changed, at, days, std::min(task.nodeLimit, remedyNodes), task.cancelled};
            return withoutRemedies(small, plannedRange(small, memo.data()));
        });
    }
    return result;
}

Plan plan(const PlanTask& task, PlanMemo& memo) { return wholePlan(task, plannedRange(task, memo.data()), memo); }

Plan firstPlan(const PlanTask& task, PlanMemo& memo, const PlanMemo* searched) {
    const Standing standing{searched ? &searched->data() : nullptr, nodesPerDay(task.nodeLimit, task.range)};
    PlanTask few = task;
    few.nodeLimit = std::min(task.nodeLimit, firstNodes * std::clamp(task.range.days(), 1, nodesFor));
    return withoutRemedies(few, plannedRange(few, memo.data(), standing));
}

bool isLastWord(const Plan& first) {
    return first.unmet.empty() &&
           std::all_of(first.days.begin(), first.days.end(), [](const DayPlan& day) { return day.proven; });
}

Plan plan(const State& state, Instant now, const DateRange& range, std::int64_t nodeLimit, const Cancelled& cancelled) {
    PlanMemo memo;
    return plan(PlanTask{state, now, range, nodeLimit, cancelled}, memo);
}

}  // namespace laneward
