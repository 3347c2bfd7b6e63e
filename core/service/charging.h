// Which pack should be on the charger now: packs that share one outlet, charged one after another.
//
// Each pack is to be full by its time and can be charged from when it is there. Charging may be broken off and taken up again.
// At every moment the pack with the earliest time is on (earliest due date with release dates and preemption), which makes the
// greatest lateness as small as it can be: Jackson (1955) and Horn (1974), cited from memory; held against trying every order.
//
//     for (const ChargeTurn& turn : chargingTurns(needs)) …
#pragma once

#include "core/base/ids.h"
#include "core/base/quantities.h"

#include <vector>

namespace laneward {

struct ChargeNeed {
    ItemId pack;
    Instant from;    ///< it is there
    Seconds length;  ///< above 0: until it is full
    Instant by;      ///< when it is to be full
};

struct ChargeTurn {
    ItemId pack;
    Span time;
    bool isLast = false;  ///< after it the pack is full
    Seconds late;         ///< of the last: by how much it is full too late; 0 = in time
    friend bool operator==(const ChargeTurn&, const ChargeTurn&) = default;
};

/// By time. Packs of one time go by id.
std::vector<ChargeTurn> chargingTurns(const std::vector<ChargeNeed>& needs);

}  // namespace laneward
