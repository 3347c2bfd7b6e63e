// A page of one supply's ledger: the movements of a range, and what was on hand before them. Years of movements are never read
// for it: closing balances say what a month began with.
#pragma once

#include "core/storage/store.h"

namespace laneward {

struct LedgerPage {
    std::vector<Movement> movements;  ///< of the range, corrections included, by time
    Amount before;                    ///< on hand when the range began
};

/// Reads at most a month more than `time`. Errors: those of the store.
Result<LedgerPage> ledgerPage(Store& store, const CentreId& centre, const SupplyId& supply, const Span& time);

}  // namespace laneward
