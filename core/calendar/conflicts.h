// Lanes that two occurrences claim at one time.
#pragma once

#include "core/calendar/occurrences.h"

namespace laneward {

/// Fills `conflicts` from the sorted `occurrences`; closures claim nothing. Stops at limits::conflictsAtOnce, with a finding.
void addConflicts(Occupancy& occupancy);

}  // namespace laneward
