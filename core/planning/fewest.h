// The least number of treatments a lane needs, by an exact recursion over its gaps.
//
// State: the lane's condition (pattern, age, play since). In each gap: no treatment, or one treatment of a useful kind and
// pattern. Minimised lexicographically: demands unmet, then treatments; among equals the latest treatments. The number is a
// bound and a starting point for placement, not a cage: a crowded gap may cost a treatment elsewhere.
#pragma once

#include "core/planning/demand.h"

namespace laneward {

struct PlannedTreatment {
    int lane = 0;
    size_t gap = 0;  ///< index into DemandSet::gaps[lane - 1]
    Treatment treatment = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;
    std::vector<size_t> serves;  ///< demands that hold because of it
};

struct Fewest {
    int unmet = 0;  ///< demands that no treatment of the lane alone could meet
    int treatments = 0;
    std::vector<PlannedTreatment> chosen;  ///< by lane, gap
    std::vector<size_t> unmetDemands;
};

/// One lane. `before` is its condition when the first gap begins.
Fewest fewestTreatments(const State& state, const DemandSet& demands, int lane, const LaneCondition& before);
/// All lanes.
Fewest fewestTreatments(const State& state, const DemandSet& demands, const Occupancy& occupancy, Instant now);

}  // namespace laneward
