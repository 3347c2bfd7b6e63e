#include "core/planning/crowd_bounds.h"
#include "core/planning/day_search.h"

#include <algorithm>
#include <limits>
#include <set>

namespace laneward::planning {

namespace {

std::vector<Loose> looseTasks(const DayProblem& problem, Score& bound) {
    std::vector<Loose> loose;
    for (const DayTask& task : problem.tasks) {
        Sec lane = std::numeric_limits<Sec>::max();
        for (int m = 0; m < int(problem.machines.size()); ++m) {
            if (canDo(problem, m, task)) lane = std::min(lane, problem.machines[size_t(m)].lane[size_t(task.recipe)]);
        }
        const Sec cap = lane == std::numeric_limits<Sec>::max() ? notPlaced : latestAlone(problem, task, lane);
        if (cap == notPlaced) {
            bound[0] += task.demands;
            continue;
        }
        loose.push_back({&task, problem.slots[size_t(task.firstSlot)].begin, cap, lane});
        if (task.onlyHere && cap > task.due) bound[1] += cap - task.due;
        if (task.onlyHere && cap > task.target && cap <= task.due) bound[4] += cap - task.target;
    }
    return loose;
}

/// Adds what the crowd is late or tight for: then what could be in time alone may have to end later.
void addCrowd(const DayProblem& problem, std::vector<Loose>& loose, Score& bound) {
    const LeastTrouble crowd = leastTrouble(problem, loose);
    const bool late = crowd.late > bound[1];
    const bool tight = std::max(bound[1], crowd.late) == 0 && crowd.tight > bound[4];
    if (!late && !tight) return;
    bound[1] = std::max(bound[1], crowd.late);
    bound[4] = tight ? crowd.tight : 0;
    for (Loose& l : loose)
        l.cap = problem.slots[size_t(l.task->firstSlot + l.task->slotCount - 1)].end;
}

Sec leastFreshness(const DayProblem& problem, std::vector<Loose> loose, size_t machines) {
    std::sort(loose.begin(), loose.end(), [](const Loose& a, const Loose& b) { return a.cap > b.cap; });
    Sec spacing = std::numeric_limits<Sec>::max();
    for (const Loose& l : loose)
        spacing = std::min(spacing, l.lane);
    const Sec next = shortestMove(problem, loose);
    const bool even =
        std::all_of(loose.begin(), loose.end(), [&](const Loose& l) { return l.task->fresh == loose[0].task->fresh; });
    std::vector<Sec> ends;
    Sec sum = 0;
    for (size_t k = 0; k < loose.size(); ++k) {
        Sec end = loose[k].cap;
        if (even && k >= machines) end = std::min(end, ends[k - machines] - spacing - next);
        ends.push_back(end);
        sum += loose[k].task->fresh * (loose[k].task->play - end);
    }
    return sum;
}

}  // namespace

Score boundOf(const DayProblem& problem, Sec outings) {
    Score bound{};
    std::vector<Loose> loose = looseTasks(problem, bound);
    bound[2] = Sec(loose.size());
    if (loose.empty()) return bound;
    addCrowd(problem, loose, bound);
    bound[5] = leastOutings(problem, loose);
    const bool committed =
        std::any_of(problem.machines.begin(), problem.machines.end(), [](const DayMachine& m) { return !m.runs.empty(); });
    // One outing is one machine, and then every pattern but the first is a change and every lane in between is crossed.
    const bool oneMachine = problem.machines.size() == 1 || (outings == 1 && bound[5] == 1);
    std::set<int> patterns;
    std::set<int> lanes;
    for (const Loose& l : loose) {
        patterns.insert(problem.recipes[size_t(l.task->recipe)].pattern);
        lanes.insert(l.task->lane);
    }
    patterns.erase(-1);
    const Sec machines = oneMachine ? 1 : Sec(problem.machines.size());
    if (!committed) bound[6] = std::max<Sec>(0, Sec(patterns.size()) - machines);
    if (outings == 1 && bound[5] == 1) bound[7] = *lanes.rbegin() - *lanes.begin() + 1 - Sec(lanes.size());
    bound[8] = leastFreshness(problem, loose, size_t(machines));
    return bound;
}

}  // namespace laneward::planning
