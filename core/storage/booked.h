// Records together with what they book in the stock ledger, for one append().
//
//     Result<std::vector<Record>> all = withBookings(store, season, factors, {run});
//     if (all) store.append(*all);
#pragma once

#include "core/season/bookings.h"
#include "core/season/supply_outlook.h"
#include "core/storage/store.h"

namespace laneward {

/// Behind each run, level reading and count stand its movements, before a correction's own those that take back what was booked
/// before. Records that are stored already book nothing again. `season.stock` is what is there now; a record that is dated
/// earlier is booked as of its time. Errors: those of the store.
Result<std::vector<Record>> withBookings(Store& store, const SeasonState& season, const UseFactors& factors,
                                         const std::vector<Record>& records);

/// What machines really take, learned from the fills up to `now`.
Result<UseFactors> learnedFactors(Store& store, const SeasonState& season, Instant now);

/// Days of history that use is learned from.
inline constexpr int learningDays = 400;
/// What is known of the past for learning use, up to `now`.
Result<SupplyHistory> supplyHistory(Store& store, const SeasonState& season, Instant now);

}  // namespace laneward
