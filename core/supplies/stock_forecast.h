// How long will it last? The distribution of the stock of one supply, day by day.
//
// Days are counted from 0, the first one. On each day deliveries come in, then the day's use goes out: what is planned (exact
// nominal amounts, times what the usage model has learned), what is known exactly, and chance (unplanned work, service, loss).
// The stock falls below zero by what is missing; it has run out on the first such day.
//
// Planned use by one machine and known use alone, without deliveries, have a closed form: Student's t (`exact`). Its chances of
// having run out are those of the stock at the end of a day, which is the same as long as no day gives anything back. All else
// is drawn: paths with a fixed seed, each with one draw of what is not known about a machine or a rate, since that is common to
// all its days. The standard error of a drawn chance c is sqrt(c (1 - c) / paths).
//
//     const StockForecast forecast = *forecastStock(outlook, {});
//     if (const std::optional<int> day = forecast.runOut(0.05)) warn(firstDay.addDays(*day));
#pragma once

#include "core/supplies/learned_rates.h"
#include "core/supplies/usage_model.h"

#include <functional>

namespace laneward {

struct PlannedUse {
    UseRate rate;
    std::vector<Amount> nominal;  ///< a day each, 0 or more; nothing after the last
    double share = 1;             ///< of this supply in what is used: the concentrate in diluted cleaner
};

struct ExpectedDelivery {
    Amount amount;
    DayChances arrival;  ///< days counted from the first day of the forecast; one before it counts as day 0
};

struct StockOutlook {
    SupplyId supply;
    Amount onHand;  ///< at the beginning of day 0
    int days = 0;   ///< 1 to 3,660
    std::vector<PlannedUse> planned;
    std::vector<Amount> known;  ///< a day each: parts for planned services
    std::vector<LearnedRate> chance;
    std::vector<ExpectedDelivery> deliveries;
};

struct ForecastRule {
    std::vector<double> levels{0.05, 0.25, 0.5, 0.75, 0.95};  ///< quantiles that are asked for, ascending
    std::vector<int> useHorizons;  ///< days over which the quantiles of cumulative use are asked for: 1 = day 0 alone
    int paths = 10'000;            ///< 100 to 1,000,000
    std::uint64_t seed = 1;        ///< the same for all supplies: each mixes in its id
};

struct StockForecast {
    std::vector<double> levels;
    std::vector<std::vector<double>> stock;  ///< at the end of each day, one a level; base units
    std::vector<double> outBy;               ///< for each day: probability of having run out by its end
    std::vector<std::vector<double>> use;    ///< cumulative over each of the horizons, one a level
    bool exact = false;                      ///< closed form; else drawn
    int paths = 0;                           ///< drawn

    /// The first day by whose end it has run out with probability p or more; none within the horizon.
    std::optional<int> runOut(double p) const;
    /// Probability of running out before `day` begins.
    double outBefore(int day) const;
};

/// How to stop a forecast, and hear how far it is (0 to 1). Both may be empty.
struct ForecastWatch {
    std::function<bool()> cancelled;
    std::function<void(double)> progress;
};

bool hasClosedForm(const StockOutlook& outlook);
/// In closed form where there is one, else drawn. Nothing when it was cancelled.
std::optional<StockForecast> forecastStock(const StockOutlook& outlook, const ForecastRule& rule,
                                           const ForecastWatch& watch = {});
/// Drawn in any case; time in proportion to days and paths, memory to paths.
std::optional<StockForecast> forecastByPaths(const StockOutlook& outlook, const ForecastRule& rule,
                                             const ForecastWatch& watch = {});
/// One after the other, with common progress.
std::optional<std::vector<StockForecast>> forecastStocks(std::span<const StockOutlook> outlooks, const ForecastRule& rule,
                                                         const ForecastWatch& watch = {});

}  // namespace laneward
