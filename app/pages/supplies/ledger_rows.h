// The ledger of one supply as rows, newest first, read piece by piece so that years of movements are never in memory.
#pragma once

#include "app/edits/session.h"

namespace laneward {

struct LedgerRow {
    Movement movement;
    Amount moved;                     ///< what left and came in, whatever the places
    Amount change;                    ///< of what is on hand
    Amount onHand;                    ///< after it
    std::optional<OperationId> back;  ///< the movement that takes it back
};

struct LedgerReading {
    std::vector<LedgerRow> rows;
    QDate from;                ///< everything from this day on was read
    bool isWhole = true;       ///< false = `most` was reached before the range's first day
    std::optional<Error> why;  ///< it could not be read
};

/// Whole pieces of a few weeks until at least `most` rows are there.
LedgerReading readLedger(Session& session, const SupplyId& supply, const DateRange& days, size_t most);

}  // namespace laneward
