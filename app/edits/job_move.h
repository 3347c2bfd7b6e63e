// A proposed job at another time, as it would be confirmed there.
#pragma once

#include "core/planning/state.h"

namespace laneward {

/// The job moved by `by` as a whole, confirmed, and on an outing of its own: other jobs of its outing stay where they are, so it
/// leaves the bay and returns for itself. `state` knows the machine's times and the outings that are taken.
Job confirmedElsewhere(const Job& job, Seconds by, const State& state);

}  // namespace laneward
