// Packs: will they finish what is planned, how do they fade, and which should be on the charger now?
//
// A pack's lanes per charge are learned from its log in the open window (PackLanes). What is left of its charge follows from the
// rested volts that were read since it was charged; without them from the lanes it has run since: the chance of n + x lanes given
// that n are done. Tonight's lanes are those planned for its machine until the first swap or charge.
//
//     const PackOutlook outlook = packOutlook(season, planAhead, now);
#pragma once

#include "core/season/season.h"
#include "core/service/charging.h"

namespace laneward {

struct PackLine {
    PackState state;
    int charges = 0;                 ///< behind what was learned
    int cutShort = 0;                ///< among them
    double usual = 0;                ///< lanes that a full charge runs as often more as less, …
    double sure = 0;                 ///< … and in 19 of 20 cases
    std::optional<Charge> charge;    ///< by volts
    std::optional<double> left;      ///< lanes still to run, likely; none = nobody knows how full it is
    int tonight = 0;                 ///< lanes planned for it
    std::optional<double> finishes;  ///< chance that it runs them; none when nothing is planned or nobody knows
};

struct PackOutlook {
    std::vector<PackLine> packs;    ///< by id
    std::vector<ChargeTurn> turns;  ///< on the one outlet, from now on
};

PackOutlook packOutlook(const SeasonState& season, const Plan& ahead, Instant now);

/// Packs of the centre as they are, by the log of the open window.
std::vector<PackState> packsOf(const SeasonState& season, Instant now);

/// Lanes that the machine treated on its busiest day of the open window; 0 when it did nothing.
int busiestNight(const SeasonState& season, const MachineId& machine);

/// Charges behind a pack before planning goes by what was learned of it; common practice, no source.
inline constexpr int leastChargesForLimit = 5;
/// Lanes per charge that all packs of the machine run in 19 of 20 cases; none while too few charges are known of one of them.
std::optional<int> learnedLanesPerCharge(const std::vector<PackState>& packs, const Machine& machine);

}  // namespace laneward
