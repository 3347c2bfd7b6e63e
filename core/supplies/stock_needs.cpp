#include "core/supplies/stock_needs.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr int firstDailyHorizons = 28;

double serviceLevel(const StockRules& rules) { return std::clamp(rules.serviceLevelPermille / 1'000.0, 0.5, 0.999); }

size_t placeOf(const std::vector<double>& levels, double level) {
    return size_t(std::lower_bound(levels.begin(), levels.end(), level) - levels.begin());
}

/// A use at each of the horizons, for every day.
std::vector<Amount> byDay(const std::vector<int>& horizons, const std::vector<std::vector<double>>& use, size_t level) {
    std::vector<Amount> days;
    double before = 0;
    int from = 0;
    for (size_t n = 0; n < horizons.size(); ++n) {
        const double there = std::max(before, use[n][level]);
        for (int day = from + 1; day <= horizons[n]; ++day)
            days.push_back({std::llround(std::ceil(before + (there - before) * (day - from) / (horizons[n] - from)))});
        before = there;
        from = horizons[n];
    }
    return days;
}

}  // namespace

ForecastRule orderingRule(int days, const StockRules& rules, int paths) {
    ForecastRule rule{{rangeLevels.begin(), rangeLevels.end()}, {}, paths, 1};
    const double service = serviceLevel(rules);
    const size_t place = placeOf(rule.levels, service);
    if (place == rule.levels.size() || rule.levels[place] != service)
        rule.levels.insert(rule.levels.begin() + std::ptrdiff_t(place), service);
    for (int day = 1; day <= std::min(days, firstDailyHorizons); ++day)
        rule.useHorizons.push_back(day);
    for (int day = firstDailyHorizons + 7; day < days; day += 7)
        rule.useHorizons.push_back(day);
    if (rule.useHorizons.back() < days) rule.useHorizons.push_back(days);
    return rule;
}

StockNeeds needsOf(const StockForecast& forecast, const ForecastRule& rule, const StockRules& rules) {
    constexpr double likely = 0.5;
    return {byDay(rule.useHorizons, forecast.use, placeOf(rule.levels, serviceLevel(rules))),
            byDay(rule.useHorizons, forecast.use, placeOf(rule.levels, likely))};
}

}  // namespace laneward
