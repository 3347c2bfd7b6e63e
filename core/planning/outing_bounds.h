// The fewest outings of a day, from times alone.
//
// Treatments that can lie nowhere but between two moments are a crowd. One machine has time for so much; the rest of the crowd
// takes further machines, and so further outings. No outing works in two crowds where the pause between them is longer than
// waiting, and all that could be worked on the way, can fill.
#pragma once

#include "core/planning/day_problem.h"

#include <span>

namespace laneward::planning {

/// A treatment that some machine can do on its own, with the kindest figures of all machines.
struct Loose {
    const DayTask* task;
    Sec earliestBegin;
    Sec cap;  ///< latest end that is not tight, or the only one there is
    Sec lane;
};

/// The longest time between two lanes of one outing: waiting, the steps on the way, and the longest move.
Sec longestPause(const DayProblem& problem);
/// The shortest time between two lanes that one person or machine works: a move, or home and out again where that is as quick.
Sec shortestMove(const DayProblem& problem);
/// The same between two of these; 0 where two are of one lane.
Sec shortestMove(const DayProblem& problem, std::span<const Loose> loose);
/// Whether what is in the machine when the day begins lasts for all of the day's work that it may do.
bool holdsEnough(const DayProblem& problem, const DayMachine& machine);

Sec leastOutings(const DayProblem& problem, std::span<const Loose> loose);

}  // namespace laneward::planning
