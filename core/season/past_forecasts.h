// Forecasts that were kept, beside what was really used since.
//
// The ledger says what left the house, but it knows only at fills and counts: between them a run is booked by what it usually
// takes. What machines use is known when each of them was filled up to its line, or stood still, since it was known before; what
// one took after its own last fill stands as booked then. Cloth and approach cleaner are known when they are counted. Parts are
// not scored: ranges of few whole pieces hold more often than they promise.
//
//     const auto scores = scoresOf(season, history, *store.keptForecasts(history.days));
#pragma once

#include "core/season/supply_outlook.h"
#include "core/supplies/forecast_scores.h"

#include <map>

namespace laneward {

/// Days ascending; a fill or count stands for the beginning of the nearest day, less or more what runs took between both.
std::vector<KnownUse> knownUse(const SeasonState& season, const SupplyHistory& history, const Supply& supply);

/// Of each supply that is kept and scored.
std::map<SupplyId, ForecastScore> scoresOf(const SeasonState& season, const SupplyHistory& history,
                                           std::span<const KeptForecast> kept);

/// What to keep of today: none when work of today is recorded already (a forecast comes before it), when the plan ahead is
/// shorter than what is kept, without supplies, or cancelled.
std::optional<KeptForecast> forecastToKeep(const OutlookQuestion& question, const ForecastRule& rule = keptRule(),
                                           const std::function<bool()>& cancelled = {});

}  // namespace laneward
