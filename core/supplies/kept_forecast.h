// A forecast that is kept as it was made, to be scored when it is known what happened (forecast_scores.h).
//
// Quantiles of the cumulative use of each supply, from the beginning of the day that it was made on. The forecast of a centre's
// day is kept at the first start of that day, once; a day without one is missing. Use may be below nothing where counts found
// more than the books had.
#pragma once

#include "core/supplies/supply.h"

#include <QDate>

#include <array>

namespace laneward {

inline constexpr std::array<double, 5> keptLevels{0.05, 0.25, 0.5, 0.75, 0.95};

struct KeptUse {
    int days = 0;                               ///< horizon, from the beginning of the forecast's day
    std::array<Amount, keptLevels.size()> use;  ///< at the kept levels
    friend bool operator==(const KeptUse&, const KeptUse&) = default;
};

struct KeptSupply {
    SupplyId supply;
    std::vector<KeptUse> horizons;  ///< ascending
    friend bool operator==(const KeptSupply&, const KeptSupply&) = default;
};

/// All forecasts of a centre's day, as they were at its first start.
struct KeptForecast {
    QDate day;
    std::vector<KeptSupply> supplies;
    friend bool operator==(const KeptForecast&, const KeptForecast&) = default;
};

/// Rules "forecast.day", "forecast.supplies" (a supply twice or without id), "forecast.horizons", "forecast.quantiles"; the
/// subject is the day.
std::vector<Finding> faultsOf(const KeptForecast& forecast);

}  // namespace laneward
