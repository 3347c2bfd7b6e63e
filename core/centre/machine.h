// A lane machine: how fast it works, what it holds, what it may not do.
//
// Every number is a setting of the centre; the machine's own instructions decide. Times in seconds, amounts in
// microlitres, volts in millivolts, weight in grams.
#pragma once

#include "core/base/ids.h"
#include "core/centre/lane_set.h"
#include "core/centre/treatment.h"

#include <QSet>

#include <array>
#include <optional>
#include <vector>

namespace laneward {

inline constexpr Micrometres longestCarry = feet(60);
inline constexpr Grams heaviestMachine{2'000'000};
inline constexpr int conditionerSlots = 2;  ///< conditioners that one machine can carry at once

/// Work that the machine will not or must not do.
struct Bars {
    LaneSet lanes;
    std::vector<PatternId> patterns;
    std::vector<Treatment> treatments;
    friend bool operator==(const Bars&, const Bars&) = default;
};

/// Seconds for the parts of a run.
struct MachineTimes {
    std::array<Seconds, 3> lane{Seconds{90}, Seconds{80}, Seconds{60}};  ///< per lane, by Treatment, for a 40 ft pattern
    Seconds perTenFeet{6};     ///< more (less) for each 10 ft of pattern beyond (short of) 40 ft, when conditioning
    Seconds nextLane{20};      ///< moving to the neighbouring lane
    Seconds crossLane{4};      ///< for every further lane crossed in between
    Seconds leaveBay{300};     ///< readying and bringing the machine to the lanes
    Seconds returnToBay{240};  ///< bringing it back
    Seconds refill{360};       ///< conditioner and cleaner tanks filled to their lines
    Seconds emptyWaste{300};
    Seconds swapPack{300};
    Seconds charge{4 * 3600};  ///< a break to charge, when there is no spare pack
    Seconds duty{600};         ///< a service duty that falls due between jobs
    friend bool operator==(const MachineTimes&, const MachineTimes&) = default;
};

/// What it holds and what a lane takes. Per-lane figures are the cautious ones that planning uses.
struct MachineCapacity {
    std::array<Microlitres, conditionerSlots> conditioner{millilitres(2'000), Microlitres{0}};
    Microlitres cleaner = millilitres(7'500);
    Microlitres waste = millilitres(9'000);
    Microlitres cleanerPerLane = millilitres(110);
    Microlitres wastePerLane = millilitres(100);  ///< recovered by one lane's clean
    int conditionerPermille = 1'080;              ///< real use per 1,000 of the pattern's volume
    int lanesPerCharge = 40;
    int sparePacks = 1;
    std::optional<int> lanesUntilDuty;  ///< lanes before a service duty stops the machine
    friend bool operator==(const MachineCapacity&, const MachineCapacity&) = default;
};

struct Machine {
    MachineId id;
    QString name;
    bool attended = true;  ///< needs one person of the shift while it is out
    Bars bars;
    MachineTimes times;
    MachineCapacity capacity;
    Millivolts fullAt{25'600};                           ///< rested pack counts as full at or above this
    Millivolts attachSpareAt{24'200};                    ///< below this, attach the spare pack
    std::array<QString, conditionerSlots> conditioners;  ///< names of the products in its tanks
    QString cleaner;
    Micrometres carryLength;      ///< how far the brush carries conditioner on (first-order lag); 0 = no carry
    std::optional<Grams> weight;  ///< as it is lifted, tanks and pack as usual; none = nobody has said
    std::int64_t version = 0;     ///< row version; 0 = not stored yet
    friend bool operator==(const Machine&, const Machine&) = default;
};

}  // namespace laneward
