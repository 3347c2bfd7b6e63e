// What a plan says besides its jobs: conflicts, what is unknown or missing, and how large each day's problem is.
#pragma once

#include "core/planning/ground.h"
#include "core/planning/plan.h"

namespace laneward::planning {

std::vector<Finding> findingsOf(const State& state, const Plan& plan, bool stopped);

/// Maximal runs of adjacent lanes with equal demands and gaps; lanes without a demand that asks for anything do not count.
int sizeOfDay(const Ground& ground, const DemandSet& demands, int day);

}  // namespace laneward::planning
