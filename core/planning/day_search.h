// The search for one day's best solution: a few starting points, then single changes that improve, until none does or the
// nodes run out. One node is one solution placed in time.
#pragma once

#include "core/planning/placement.h"

#include <functional>

namespace laneward::planning {

struct DaySolution {
    Solution solution;
    Placement placement;
    Score bound{};  ///< nothing can be better
    bool stopped = false;

    bool proven() const { return placement.score == bound; }
};

DaySolution solveDay(const DayProblem& problem, std::int64_t nodeLimit, const std::function<bool()>& cancelled);

/// Lanes that go together: same recipe, machines, and times at which they could be worked; no larger than tanks and pack allow.
std::vector<Block> blocksOf(const DayProblem& problem);
/// A lower bound of every component that holds whenever those before it are at theirs. `outings` are those of a known solution.
Score boundOf(const DayProblem& problem, Sec outings);

/// The latest end of `task` alone by its target, else by its gap; notPlaced = never.
Sec latestAlone(const DayProblem& problem, const DayTask& task, Sec laneTime);
bool canDo(const DayProblem& problem, int machine, const DayTask& task);

}  // namespace laneward::planning
