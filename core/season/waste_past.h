// What a machine's waste tank has shown: the share of the cleaner that comes back, learned from what was emptied and measured.
//
// Between two emptyings the runs say what was laid down. What they stripped is taken as what they put down themselves: lanes are
// mostly done again with the same recipe.
#pragma once

#include "core/season/season.h"
#include "core/service/waste_tank.h"

namespace laneward {

/// What a run or job of this use leaves to the tank.
Cleaning cleaningOf(const JobUse& use, Treatment treatment);
/// Learned from the open window; without what emptiedFindings() doubts.
WasteTank learnedWasteTank(const SeasonState& season, const Machine& machine);

/// Emptyings before planning goes by them; common practice, no source.
inline constexpr int leastEmptyings = 3;
/// Waste of one lane that a whole tank's work exceeds once in a hundred times; none while too little was measured.
std::optional<Microlitres> learnedWastePerLane(const SeasonState& season, const Machine& machine);

/// What was last measured in the tank today (a day starts empty), and what was cleaned since.
WasteLevel wasteLevel(const SeasonState& season, const Machine& machine, Instant now);
/// Of the machine's jobs of today that are still to run, emptied where the plan has it.
std::vector<OverflowChance> overflowTonight(const SeasonState& season, const Machine& machine, const Plan& plan, Instant now);

/// More than that is said, with its job; common practice, no source.
inline constexpr double worthSaying = 0.01;
/// The first job that is not worth risking: "readiness.overflow" (Warning; begin, per cent, lanes); none when there is none.
std::vector<Finding> overflowFindings(const std::vector<OverflowChance>& chances, const Plan& plan, const QString& machine);

/// Times its capacity that a tank may be found to have held: lines are not exact. Common practice, no source.
inline constexpr double fullestTank = 1.25;
/// "waste.negative" (Fault), "waste.beyond-tank" (Warning: it is kept, but nothing is learned from it); values: emptied,
/// capacity.
std::vector<Finding> emptiedFindings(Microlitres emptied, const Machine& machine);

/// A machine's waste tank as the page Service tells it.
struct WasteLine {
    MachineId machine;
    Microlitres level;  ///< likely now
    Microlitres capacity;
    double share = 0;   ///< of the cleaner that comes back
    int emptyings = 0;  ///< behind it
    std::vector<OverflowChance> overflow;
};
/// Of all machines.
std::vector<WasteLine> wasteOutlook(const SeasonState& season, const Plan& plan, Instant now);

}  // namespace laneward
