#include "core/planning/placer.h"

#include <algorithm>
#include <cstdlib>

namespace laneward::planning {

namespace {

using namespace score_part;

/// Demands met late or tight, and those lost with lanes that found no place.
void scoreLanes(const DayProblem& problem, const Placement& placement, Score& score) {
    for (const DayTask& task : problem.tasks)
        score[Unmet] += task.demands;
    for (const BlockTimes& block : placement.blocks) {
        for (size_t i = 0; i < block.tasks.size(); ++i) {
            const DayTask& task = problem.tasks[size_t(block.tasks[i])];
            const Sec end = block.begins[i] + block.lane;
            score[Unmet] -= task.demands;
            ++score[Treatments];
            if (task.scored && end > task.due) score[Late] += end - task.due;
            if (task.scored && end > task.target && end <= task.due) score[Tight] += end - task.target;
            score[Freshness] += task.fresh * (task.play - end);
            if (i > 0) {
                const int crossed = std::abs(task.lane - problem.tasks[size_t(block.tasks[i - 1])].lane) - 1;
                score[Crossed] += std::max(0, crossed);
            }
        }
    }
}

struct Laid {
    Sec begin;
    int pattern;
};

int changesOn(const DayProblem& problem, const Solution& solution, const Placement& placement, int machine) {
    std::vector<Laid> laid;
    for (const FixedRun& run : problem.machines[size_t(machine)].runs)
        laid.push_back({run.begin, run.pattern});
    for (size_t b = 0; b < solution.size(); ++b) {
        if (solution[b].machine != machine || placement.blocks[b].tasks.empty()) continue;
        laid.push_back({placement.blocks[b].begins.front(), problem.recipes[size_t(solution[b].recipe)].pattern});
    }
    std::stable_sort(laid.begin(), laid.end(), [](const Laid& a, const Laid& b) { return a.begin < b.begin; });
    int changes = 0;
    int last = -1;
    for (const Laid& l : laid) {
        if (l.pattern < 0) continue;
        if (last >= 0 && l.pattern != last) ++changes;
        last = l.pattern;
    }
    return changes;
}

}  // namespace

Score scoreOf(const DayProblem& problem, const Solution& solution, const Placement& placement, const DayCrew& crew) {
    Score score{};
    scoreLanes(problem, placement, score);
    for (const Trip& trip : placement.trips) {
        if (trip.shift >= 0) score[Overtime] += crew.overtimeOf(trip.attended, trip.shift);
        ++score[Outings];
        for (size_t k = 1; k < trip.blocks.size(); ++k) {
            const int from = problem.tasks[size_t(placement.blocks[size_t(trip.blocks[k - 1])].tasks.back())].lane;
            const int to = problem.tasks[size_t(placement.blocks[size_t(trip.blocks[k])].tasks.front())].lane;
            score[Crossed] += std::max(0, std::abs(to - from) - 1);
        }
    }
    for (int m = 0; m < int(problem.machines.size()); ++m)
        score[Changes] += changesOn(problem, solution, placement, m);
    return score;
}

}  // namespace laneward::planning
