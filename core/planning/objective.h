// The objective of all days at once; objectiveOf() in plan.h asks for one.
#pragma once

#include "core/planning/outcomes.h"

namespace laneward::planning {

/// The day that a demand belongs to, as an index into the day begins.
int dayOfDemand(const std::vector<Instant>& bounds, const Demand& demand);

std::vector<Objective> objectivesOf(const State& state, const DateRange& range, const DemandSet& demands,
                                    const std::vector<DemandOutcome>& outcomes, const std::vector<Job>& jobs);

}  // namespace laneward::planning
