// Reading a centre: parts of it by range, or all of it. Callers hold the transaction.
#pragma once

#include "core/storage/centre_file.h"
#include "core/storage/operations.h"

namespace laneward {

Result<Centre> storedFacts(Database& database, const CentreId& centre);
Result<HistorySlice> storedHistory(Database& database, const CentreId& centre, const Span& time);
/// Each lane's last treatment that ended before `until`.
Result<std::vector<LaneTreatment>> treatmentsBefore(Database& database, const CentreId& centre, int lanes, Instant until);
/// Centre, series, patterns and all records.
Result<CentreFile> everything(Database& database, const CentreId& centre);

/// All time: half of what 64 bits hold, so that durations between its ends still fit.
inline constexpr Span allTime{{std::int64_t{-1} << 60}, {std::int64_t{1} << 60}};

}  // namespace laneward
