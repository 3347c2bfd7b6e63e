#include "core/supplies/stock_forecast.h"

#include <algorithm>
#include <cassert>

namespace laneward {

namespace {

double on(const std::vector<Amount>& days, int day) { return size_t(day) < days.size() ? double(days[size_t(day)].value) : 0; }

/// Use up to the end of a day, in closed form.
Student scaled(const Student& use, double share) { return {use.centre * share, use.scale * share, use.freedom}; }

StockForecast inClosedForm(const StockOutlook& outlook, const ForecastRule& rule) {
    StockForecast forecast;
    forecast.exact = true;
    forecast.levels = rule.levels;
    const PlannedUse none;
    const PlannedUse& planned = outlook.planned.empty() ? none : outlook.planned.front();
    const Student standard{0, 1, planned.rate.freedom};
    std::vector<double> t;
    for (double level : rule.levels)
        t.push_back(standard.quantile(level));
    double nominal = 0;
    double known = 0;
    double out = 0;
    std::vector<std::vector<double>> useUpTo;
    for (int day = 0; day < outlook.days; ++day) {
        nominal += on(planned.nominal, day);
        known += on(outlook.known, day);
        const Student use = scaled(planned.rate.use(nominal), planned.share);
        const double left = double(outlook.onHand.value) - known;
        out = std::max(out, 1 - use.below(left));
        forecast.outBy.push_back(out);
        std::vector<double>& stock = forecast.stock.emplace_back();
        std::vector<double>& used = useUpTo.emplace_back();
        for (double quantile : t) {
            stock.push_back(left - use.centre + use.scale * quantile);
            used.push_back(known + use.centre + use.scale * quantile);
        }
    }
    for (int horizon : rule.useHorizons)
        forecast.use.push_back(useUpTo[size_t(std::clamp(horizon, 1, outlook.days) - 1)]);
    return forecast;
}

}  // namespace

std::optional<int> StockForecast::runOut(double p) const {
    const auto day = std::find_if(outBy.begin(), outBy.end(), [p](double chance) { return chance >= p; });
    return day == outBy.end() ? std::nullopt : std::optional(int(day - outBy.begin()));
}

double StockForecast::outBefore(int day) const {
    if (day <= 0 || outBy.empty()) return 0;
    return outBy[std::min(size_t(day), outBy.size()) - 1];
}

bool hasClosedForm(const StockOutlook& outlook) {
    return outlook.planned.size() <= 1 && outlook.chance.empty() && outlook.deliveries.empty();
}

std::optional<StockForecast> forecastStock(const StockOutlook& outlook, const ForecastRule& rule, const ForecastWatch& watch) {
    assert(outlook.days >= 1 && !rule.levels.empty());
    return hasClosedForm(outlook) ? inClosedForm(outlook, rule) : forecastByPaths(outlook, rule, watch);
}

std::optional<std::vector<StockForecast>> forecastStocks(std::span<const StockOutlook> outlooks, const ForecastRule& rule,
                                                         const ForecastWatch& watch) {
    std::vector<StockForecast> forecasts;
    for (const StockOutlook& outlook : outlooks) {
        ForecastWatch one{watch.cancelled, {}};
        if (watch.progress)
            one.progress = [&](double part) { watch.progress((double(forecasts.size()) + part) / double(outlooks.size())); };
        std::optional<StockForecast> forecast = forecastStock(outlook, rule, one);
        if (!forecast) return std::nullopt;
        forecasts.push_back(std::move(*forecast));
        if (watch.progress) watch.progress(double(forecasts.size()) / double(outlooks.size()));
    }
    return forecasts;
}

}  // namespace laneward
