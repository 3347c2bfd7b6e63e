#include "core/planning/lane_runs.h"

#include "core/planning/day_search.h"

#include <algorithm>
#include <bit>

namespace laneward::planning {

namespace {

unsigned ableFor(const DayProblem& problem, const DayTask& task) {
    unsigned able = 0;
    for (int m = 0; m < int(problem.machines.size()); ++m) {
        if (canDo(problem, m, task)) able |= 1U << m;
    }
    return able;
}

Sec fastestLane(const DayProblem& problem, unsigned able, int recipe) {
    Sec fastest = problem.length;
    for (; able != 0; able &= able - 1)
        fastest = std::min(fastest, problem.machines[size_t(std::countr_zero(able))].lane[size_t(recipe)]);
    return fastest;
}

bool isAlike(const LaneRun& run, const LaneRun& other) {
    const auto asked = [](const LaneRun& r) {
        const DayTask& t = r.like;
        return std::tie(r.able, r.recipe, t.earliestEnd, t.target, t.due, t.play, t.scored, t.onlyHere, t.twice, t.stripped,
                        t.demands, t.fresh);
    };
    return asked(run) == asked(other) && run.slots == other.slots;
}

}  // namespace

std::vector<LaneRun> runsOf(const DayProblem& problem) {
    std::vector<LaneRun> runs;
    for (int t = 0; t < int(problem.tasks.size()); ++t) {
        const DayTask& task = problem.tasks[size_t(t)];
        LaneRun single{{t}, task.lane, task.recipe, problem.recipes[size_t(task.recipe)].pattern, ableFor(problem, task), task,
                       {},  0};
        if (single.able == 0) continue;
        single.cap = latestAlone(problem, task, fastestLane(problem, single.able, task.recipe));
        if (single.cap == notPlaced) continue;
        const auto slots = problem.slots.begin() + task.firstSlot;
        single.slots.assign(slots, slots + task.slotCount);
        const auto before = std::find_if(runs.begin(), runs.end(), [&](const LaneRun& run) {
            return run.firstLane + run.lanes() == task.lane && isAlike(run, single);
        });
        if (before == runs.end()) {
            runs.push_back(std::move(single));
        } else {
            before->tasks.push_back(t);
        }
    }
    std::stable_sort(runs.begin(), runs.end(), [](const LaneRun& a, const LaneRun& b) {
        return std::tie(a.firstLane, a.like.play) < std::tie(b.firstLane, b.like.play);
    });
    return runs;
}

}  // namespace laneward::planning
