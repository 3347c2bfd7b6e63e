#include "core/statistics/control_charts.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>
#include <numeric>

namespace laneward {

namespace {

/// d2(2) and d3(2) in closed form: the range of two normal values is a half-normal value times sqrt(2).
const double d2OfPairs = 2 / std::sqrt(std::numbers::pi);
const double d3OfPairs = std::sqrt(2 - 4 / std::numbers::pi);

double meanOf(std::span<const double> values) {
    return values.empty() ? 0 : std::accumulate(values.begin(), values.end(), 0.0) / double(values.size());
}

bool isBeyond(double value, const ControlLimits& limits) { return value < limits.lower || value > limits.upper; }

}  // namespace

std::vector<double> movingRanges(std::span<const double> values) {
    std::vector<double> ranges;
    for (size_t i = 1; i < values.size(); ++i)
        ranges.push_back(std::abs(values[i] - values[i - 1]));
    return ranges;
}

Baseline baselineOf(std::span<const double> values) { return {meanOf(values), meanOf(movingRanges(values)) / d2OfPairs}; }

IndividualsChart individualsChart(std::span<const double> values, const Baseline& baseline) {
    IndividualsChart chart;
    chart.limits = {baseline.mean - 3 * baseline.sigma, baseline.mean, baseline.mean + 3 * baseline.sigma};
    const double range = baseline.sigma * d2OfPairs;
    chart.rangeLimits = {0, range, range + 3 * baseline.sigma * d3OfPairs};
    chart.ranges = movingRanges(values);
    for (size_t i = 0; i < values.size(); ++i) {
        if (isBeyond(values[i], chart.limits)) chart.signals.push_back(i);
        if (i > 0 && isBeyond(chart.ranges[i - 1], chart.rangeLimits)) chart.rangeSignals.push_back(i);
    }
    return chart;
}

EwmaChart ewmaChart(std::span<const double> values, const Baseline& baseline, const EwmaRule& rule) {
    assert(rule.weight > 0 && rule.weight <= 1);
    EwmaChart chart;
    const double settled = rule.weight / (2 - rule.weight);  // variance of z over that of x
    double average = baseline.mean;
    double forgotten = 1;  // (1 - weight)^(2i)
    for (size_t i = 0; i < values.size(); ++i) {
        average = rule.weight * values[i] + (1 - rule.weight) * average;
        forgotten *= (1 - rule.weight) * (1 - rule.weight);
        const double variance = rule.settled ? settled : settled * (1 - forgotten);
        const double width = rule.width * baseline.sigma * std::sqrt(variance);
        chart.averages.push_back(average);
        chart.limits.push_back({baseline.mean - width, baseline.mean, baseline.mean + width});
        if (isBeyond(average, chart.limits.back())) chart.signals.push_back(i);
    }
    return chart;
}

CusumChart cusumChart(std::span<const double> values, const Baseline& baseline, const CusumRule& rule) {
    CusumChart chart;
    chart.limit = rule.h * baseline.sigma;
    const double slack = rule.k * baseline.sigma;
    double high = 0;
    double low = 0;
    double sum = 0;
    for (size_t i = 0; i < values.size(); ++i) {
        const double departure = values[i] - baseline.mean;
        high = std::max(0.0, high + departure - slack);
        low = std::max(0.0, low - departure - slack);
        sum += departure;
        chart.high.push_back(high);
        chart.low.push_back(low);
        chart.cumulative.push_back(sum);
        if (high > chart.limit) chart.highSignals.push_back(i);
        if (low > chart.limit) chart.lowSignals.push_back(i);
    }
    return chart;
}

SubgroupChart subgroupChart(const std::vector<std::vector<double>>& groups, size_t baselineCount) {
    assert(baselineCount >= 1 && baselineCount <= groups.size());
    SubgroupChart chart;
    for (const std::vector<double>& group : groups) {
        assert(group.size() == groups.front().size());
        const auto [least, most] = std::minmax_element(group.begin(), group.end());
        chart.means.push_back(meanOf(group));
        chart.ranges.push_back(*most - *least);
    }
    const ChartConstants constants = chartConstants(int(groups.front().size()));
    const double mean = meanOf(std::span(chart.means).first(baselineCount));
    const double range = meanOf(std::span(chart.ranges).first(baselineCount));
    chart.sigma = range / constants.d2;
    chart.meanLimits = {mean - constants.A2 * range, mean, mean + constants.A2 * range};
    chart.rangeLimits = {constants.D3 * range, range, constants.D4 * range};
    for (size_t i = 0; i < groups.size(); ++i) {
        if (isBeyond(chart.means[i], chart.meanLimits)) chart.signals.push_back(i);
        if (isBeyond(chart.ranges[i], chart.rangeLimits)) chart.rangeSignals.push_back(i);
    }
    return chart;
}

}  // namespace laneward
