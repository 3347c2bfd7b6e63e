#include "core/service/pack_lanes.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

namespace laneward {

namespace {

/// How much charges differ, and how much that is believed before the first. Common practice, no source.
struct Spread {
    double sigma;
    double belief;
};
constexpr std::array<Spread, 6> spreads{{{0.03, 0.1}, {0.06, 0.25}, {0.1, 0.25}, {0.15, 0.2}, {0.25, 0.1}, {0.4, 0.1}}};
constexpr double farthest = 1.61;    // of m, either way: a factor of 5
constexpr int stepsPerSigma = 4;     // of m
constexpr double usualDoubt = 0.3;   // standard deviation of m at first
constexpr double remembered = 0.97;  // of what was learned, at the next charge
constexpr double negligible = 1e-12;
constexpr double mostOfUsual = 100;
constexpr int shares = 32;  // of the likely range of a charge

double above(double z) { return std::erfc(z / std::numbers::sqrt2) / 2; }
/// Its logarithm, also where it is no double: far out by the leading term.
double logAbove(double z) { return z < 30 ? std::log(above(z)) : -z * z / 2 - std::log(z * std::sqrt(2 * std::numbers::pi)); }

}  // namespace

PackLanes::PackLanes(double usualLanes) : m_usual(usualLanes) {
    assert(std::isfinite(usualLanes) && usualLanes > 0);
    for (const Spread& spread : spreads) {
        const double step = spread.sigma / stepsPerSigma;
        const int steps = int(farthest / step);
        const double logSigma = std::log(spread.sigma);
        for (int i = -steps; i <= steps; ++i) {
            const double z = i * step / usualDoubt;
            m_candidates.push_back({i * step, spread.sigma, logSigma, std::log(spread.belief * step) - z * z / 2, 0, 0});
        }
    }
    weigh();
}

void PackLanes::weigh() {
    double most = -HUGE_VAL;
    for (const Candidate& one : m_candidates)
        most = std::max(most, one.belief + one.logWeight);
    double sum = 0;
    for (Candidate& one : m_candidates) {
        one.weight = std::exp(one.belief + one.logWeight - most);
        sum += one.weight;
    }
    for (Candidate& one : m_candidates)
        one.weight /= sum;
}

bool PackLanes::learn(const PackCharge& charge) { return learn(std::span(&charge, 1)) == 1; }

int PackLanes::learn(std::span<const PackCharge> charges) {
    int learned = 0;
    for (const PackCharge& charge : charges) {
        const double x = charge.lanes / m_usual;
        if (!(x > 0 && x < mostOfUsual)) continue;
        const double y = std::log(x);
        for (Candidate& one : m_candidates) {
            const double z = (y - one.m) / one.sigma;
            one.logWeight *= remembered;
            one.logWeight += charge.cutShort ? logAbove(z) : -z * z / 2 - one.logSigma;
        }
        ++learned;
        m_cutShort += charge.cutShort ? 1 : 0;
    }
    m_charges += learned;
    weigh();
    return learned;
}

double PackLanes::chanceOfMore(double lanes) const {
    if (lanes <= 0) return 1;
    const double y = std::log(lanes / m_usual);
    double chance = 0;
    for (const Candidate& one : m_candidates)
        if (one.weight > negligible) chance += one.weight * above((y - one.m) / one.sigma);
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
