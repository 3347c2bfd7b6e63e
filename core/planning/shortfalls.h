// What a plan leaves unmet or late: how much is missing, why, and what would help.
#pragma once

#include "core/planning/ground.h"
#include "core/planning/outcomes.h"

namespace laneward::planning {

/// Shortfalls without remedies, one for each occurrence and way to fall short, by start of play.
std::vector<Shortfall> shortfallsOf(const Ground& ground, const DemandSet& demands, const std::vector<DemandOutcome>& outcomes);

/// Plans with remedies left out: what remedies are tried with.
using Planner = std::function<Plan(const State&, Instant now, const DateRange&)>;

/// Adds remedies to the plan's shortfalls. About `tries` are planned before they are named; behind that they are only estimated.
void addRemedies(const State& state, Plan& plan, int tries, const Planner& planner);

}  // namespace laneward::planning
