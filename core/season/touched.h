// Which stretches of a planned range an edit can touch. Errs on the side of touching too many.
#pragma once

#include "core/planning/stretch_planner.h"

namespace laneward {

struct Edited {
    const State& before;
    const State& after;
};

/// One flag for each of `stretches`, which are those of `range`.
std::vector<bool> touchedStretches(const Edited& edited, const DateRange& range, const std::vector<planning::Stretch>& stretches);

}  // namespace laneward
