#include "core/service/pack_lanes.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

constexpr std::array alikeness{2.0, 4.0, 7.0, 12.0, 20.0, 32.0};  // k
constexpr double remembered = 0.97;                               // of the weight of a charge, at the next one
constexpr double usualCounts = 2;                                 // charges
constexpr double mostOfUsual = 100;
constexpr int shares = 32;  // of the likely range of a charge

}  // namespace

PackLanes::PackLanes(double usualLanes) : m_usual(usualLanes) {
    assert(std::isfinite(usualLanes) && usualLanes > 0);
    // The median of the next charge is the usual number: (b / (b + 1))^a = 1/2.
    const double b = 1 / std::expm1(std::log(2.0) / usualCounts);
    for (double k : alikeness)
        m_candidates.push_back({k, usualCounts, b, 0});
}

bool PackLanes::learn(const PackCharge& charge) {
    const double x = charge.lanes / m_usual;
    if (!(x > 0 && x < mostOfUsual)) return false;
    for (Candidate& one : m_candidates) {
        one.a *= remembered;
        one.b *= remembered;
        const double power = std::pow(x, one.k);
        one.logWeight += one.a * std::log(one.b / (one.b + power));
        if (!charge.cutShort) {
            one.logWeight += std::log(one.a * one.k / x) + std::log(power / (one.b + power));
            one.a += 1;
        }
        one.b += power;
    }
    ++m_charges;
    m_cutShort += charge.cutShort ? 1 : 0;
    return true;
}

std::vector<double> PackLanes::weights() const {
    double most = -HUGE_VAL;
    for (const Candidate& one : m_candidates)
        most = std::max(most, one.logWeight);
    std::vector<double> all;
    double sum = 0;
    for (const Candidate& one : m_candidates) {
        all.push_back(std::exp(one.logWeight - most));
        sum += all.back();
    }
    for (double& weight : all)
        weight /= sum;
    return all;
}

double PackLanes::chanceOfMore(double lanes) const {
    if (lanes <= 0) return 1;
    const std::vector<double> weight = weights();
    double chance = 0;
    for (size_t i = 0; i < m_candidates.size(); ++i) {
        const Candidate& one = m_candidates[i];
        const double power = std::pow(lanes / m_usual, one.k);
        chance += weight[i] * std::exp(-one.a * std::log1p(power / one.b));
    }
    return chance;
}

double PackLanes::quantile(double p) const {
    assert(p > 0 && p < 1);
    double low = 0;
    double high = m_usual;
    while (chanceOfMore(high) > 1 - p)
        high *= 2;
    while (high - low > 1e-9 * high) {
        const double middle = (low + high) / 2;
        (chanceOfMore(middle) > 1 - p ? low : high) = middle;
    }
    return (low + high) / 2;
}

double PackLanes::chanceToFinish(const Charge& charge, double lanes) const {
    if (lanes <= 0) return 1;
    double chance = 0;
    for (int i = 0; i < shares; ++i) {
        const double share = charge.likely.low + (charge.likely.high - charge.likely.low) * (i + 0.5) / shares;
        if (share > 0) chance += chanceOfMore(lanes / share) / shares;
    }
    return chance;
}

// Lanes above what is needed are k (day of reaching it - day): least squares with that day inside and the fading in front.
Result<PackTrend> trendOf(std::span<const PackCharge> log, double needed) {
    std::vector<double> days;
    std::vector<double> above;
    for (const PackCharge& charge : log) {
        if (!std::isfinite(charge.day) || !std::isfinite(charge.lanes) || charge.lanes <= 0 || !std::isfinite(needed))
            return fault(ErrorKind::Invalid, "pack.trend-log", {});
        if (charge.cutShort) continue;
        days.push_back(charge.day);
        above.push_back(charge.lanes - needed);
    }
    const int charges = int(days.size());
    const auto [first, last] = std::minmax_element(days.begin(), days.end());
    if (charges < leastTrendCharges || *first >= *last)
        return fault(ErrorKind::Invalid, "pack.trend-few", {}, {std::int64_t{charges}, std::int64_t{leastTrendCharges}});
    const Interval range{*first, *last + trendHorizon};
    const auto line = [&](double day) {
        std::vector<double> f;
        for (double at : days)
            f.push_back(day - at);
        return f;
    };
    const ScaledFit fit = fitScaled(above, line, range);
    const double narrow = 1e-6 * (range.high - range.low);
    if (fit.k <= 0 || fit.t >= range.high - narrow) return fault(ErrorKind::Invalid, "pack.trend-steady", {});
    PackTrend trend{-fit.k, fit.t, fit.tInterval, fit.deviation, charges};
    if (trend.dayInterval.high >= range.high - narrow) trend.dayInterval.high = HUGE_VAL;
    return trend;
}

}  // namespace laneward
