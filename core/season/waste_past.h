// What a machine's waste tank has shown: the share of the cleaner that comes back, learned from what was emptied and measured.
//
// Between two emptyings the runs say what was laid down. What they stripped is taken as what they put down themselves: lanes are
// mostly done again with the same recipe.
#pragma once

#include "core/season/season.h"
#include "core/service/waste_tank.h"

namespace laneward {

/// Learned from the open window.
WasteTank wasteTankOf(const SeasonState& season, const Machine& machine);

/// Emptyings before planning goes by them; common practice, no source.
inline constexpr int leastEmptyings = 3;
/// Waste of one lane that a whole tank's work exceeds once in a hundred times; none while too little was measured.
std::optional<Microlitres> learnedWastePerLane(const SeasonState& season, const Machine& machine);

/// The chance that the tank overflows by the end of each of those jobs, when it is not emptied in between.
std::vector<double> overflowChances(const SeasonState& season, const Machine& machine, const MachineLevels& now,
                                    const std::vector<const Job*>& jobs);

}  // namespace laneward
