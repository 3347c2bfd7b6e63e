// What a plan of orders must know of a supply, out of its forecast: what is used up by each day, at the service level and as
// expected.
//
//     const ForecastRule rule = orderingRule(days, supply.rules, paths);
//     const StockNeeds needs = needsOf(*forecastStock(outlook, rule), rule, supply.rules);
//
// A delivery is counted on for the day by which it is there with probability `sureArrival`.
#pragma once

#include "core/supplies/stock_forecast.h"
#include "core/supplies/supply.h"

namespace laneward {

/// How sure a plan wants to be that a delivery is there; common practice, no source.
inline constexpr double sureArrival = 0.9;
/// The usual ranges of a forecast: five levels, among which the service level is put where it is another.
inline constexpr std::array<double, 5> rangeLevels{0.05, 0.25, 0.5, 0.75, 0.95};

/// Asks for the use up to each of the first 28 days, then by the week, and up to the last of `days`.
ForecastRule orderingRule(int days, const StockRules& rules, int paths);

struct StockNeeds {
    std::vector<Amount> needed;    ///< by day: of all use up to its end, at the service level
    std::vector<Amount> expected;  ///< the same for the median
};

/// From a forecast by orderingRule(); between its horizons on straight lines, never falling.
StockNeeds needsOf(const StockForecast& forecast, const ForecastRule& rule, const StockRules& rules);

}  // namespace laneward
