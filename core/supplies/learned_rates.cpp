#include "core/supplies/learned_rates.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace laneward {

namespace {

constexpr double leastShape = 0.5;
constexpr double mostShape = 25;
constexpr double usualLeadWeight = 2;  // orders
constexpr double leastChance = 1e-9;   // of a lead time that is thought possible
constexpr int longestLeadDays = 3'660;

/// mean^2 / variance, with one size more that varies as an exponential variable does (1): few sizes seem too equal.
double shapeOf(const std::vector<double>& sizes) {
    if (sizes.empty()) return 1;
    const double n = double(sizes.size());
    const double mean = std::accumulate(sizes.begin(), sizes.end(), 0.0) / n;
    double squares = 0;
    for (double size : sizes)
        squares += (size - mean) * (size - mean);
    return std::clamp(n / (1 + squares / (mean * mean)), leastShape, mostShape);
}

}  // namespace

LearnedRate learnRate(std::span<const DatedAmount> events, int observedDays, const RatePrior& prior) {
    assert(observedDays >= 0 && prior.events > 0 && prior.days > 0 && prior.size > 0);
    std::vector<double> sizes;
    for (const DatedAmount& event : events)
        if (event.amount > Amount{0}) sizes.push_back(double(event.amount.value));
    LearnedRate rate;
    rate.events = int(sizes.size());
    rate.shape = prior.events + double(sizes.size());
    rate.days = prior.days + observedDays;
    rate.sizeShape = shapeOf(sizes);
    rate.scaleShape = 1 + rate.sizeShape * (1 + double(sizes.size()));
    rate.scaleRate = std::accumulate(sizes.begin(), sizes.end(), prior.size);
    return rate;
}

double DayChances::until(int day) const {
    double sum = 0;
    for (int i = 0; i < int(chances.size()) && firstDay + i <= day; ++i)
        sum += chances[size_t(i)];
    return sum;
}

int DayChances::at(double uniform) const {
    assert(!chances.empty());
    size_t i = 0;
    while (i + 1 < chances.size() && uniform >= chances[i])
        uniform -= chances[i++];
    return firstDay + int(i);
}

DayChances leadTimes(std::span<const int> history, int usualDays) {
    const double mean = std::clamp(usualDays, 0, longestLeadDays);
    DayChances lead;
    double total = usualLeadWeight;
    // Poisson, up to where it is as good as nothing.
    double left = 1;
    for (int day = 0; left > leastChance && day < 2 * longestLeadDays; ++day) {
        const double chance = mean > 0 ? std::exp(day * std::log(mean) - mean - std::lgamma(day + 1.0)) : double(day == 0);
        left -= chance;
        lead.chances.push_back(usualLeadWeight * chance);
    }
    for (int days : history) {
        if (days < 0 || days > longestLeadDays) continue;
        if (size_t(days) >= lead.chances.size()) lead.chances.resize(size_t(days) + 1);
        lead.chances[size_t(days)] += 1;
        total += 1;
    }
    total -= usualLeadWeight * std::max(left, 0.0);
    for (double& chance : lead.chances)
        chance /= total;
    return lead;
}

DayChances arrivalOf(const DayChances& lead, int daysAgo) {
    DayChances left;
    double total = 0;
    for (size_t i = 0; i < lead.chances.size(); ++i) {
        const int day = lead.firstDay + int(i) - daysAgo;
        if (day < 0) continue;
        if (left.chances.empty()) left.firstDay = day;
        left.chances.push_back(lead.chances[i]);
        total += lead.chances[i];
    }
    if (total <= 0) return {0, {1}};
    for (double& chance : left.chances)
        chance /= total;
    return left;
}

}  // namespace laneward
