// From the exact search back to a day's solution, and the proof.
#pragma once

#include "core/planning/day_search.h"

namespace laneward::planning {

/// Searches the whole of a day that is small enough and improves `best` to the optimum, or as far as `nodes` go. Where the search
/// ends before that, the day's bound becomes its score: it is proven.
void searchExactly(const DayProblem& problem, DaySolution& best, std::int64_t nodes, const std::function<bool()>& cancelled);

}  // namespace laneward::planning
