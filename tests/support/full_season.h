// A small centre with every field of every kind set to something that no default has: for round trips.
#pragma once

#include "core/storage/store.h"

namespace support {

/// The moment that the season below is about: 2026-11-12T16:00:00Z.
inline constexpr laneward::Instant fullSeasonNow{1'794'499'200};

/// Eight lanes, two machines, two people, a shift, outages, two patterns, three series, supplies and what buys them; no history.
laneward::SeasonState fullSeason();

/// Records of every kind within the 35 days before fullSeasonNow, one run older than that, with a correction each.
laneward::HistorySlice fullHistory();

/// Row versions set to 0, as values have them that were never stored.
laneward::SeasonState withoutVersions(laneward::SeasonState season);
laneward::HistorySlice withoutVersions(laneward::HistorySlice history);

laneward::OperationId operation(int n);  ///< a fixed UUID for each number

}  // namespace support
