// Random evenings: a house full of events of one day, as many runs of lanes as asked, each free of play for a while before its
// event. Most leave time enough; some are crowded, short of people, or more than a tank holds.
#pragma once

#include "core/planning/day_problem.h"

#include <random>

namespace support {

struct EveningSize {
    int runs = 12;
    int machines = 2;
    int mostPairs = 3;  ///< of one run
};

laneward::State randomEvening(unsigned seed, const EveningSize& size);

/// What that evening asks a day's search to place: the fewest treatments of every lane.
laneward::planning::DayProblem problemOf(const laneward::State& state);

}  // namespace support
