// Counts and price lists on their way into a centre. Internal to this room.
#pragma once

#include "app/cli/call.h"
#include "app/cli/csv_supplies.h"

namespace laneward::cli {

/// All or nothing: each fault is a line of its own, and so is each row that is hardly meant, unless the caller is sure.
Status importCounts(const Call& call, const Loaded& loaded, const CsvRows& rows);
/// What changes; an error when nothing may.
Result<std::vector<Change>> priceChanges(const Call& call, const Loaded& loaded, const CsvRows& rows);

}  // namespace laneward::cli
