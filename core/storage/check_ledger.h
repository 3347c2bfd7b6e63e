// The stock ledger held against its own rules, month by month, so that ten years of it need not be in memory.
#pragma once

#include "core/storage/database.h"

namespace laneward {

/// Findings "check.…": movements that do not balance or cannot be, corrections that are not opposite, sources and supplies that
/// do not exist, places below zero that nothing flagged, balances that are not those of the movements.
Result<std::vector<Finding>> ledgerFaults(Database& database, const CentreId& centre);

}  // namespace laneward
