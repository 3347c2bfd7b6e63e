#include "core/statistics/failure_band.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double normal95 = 1.959963984540054;  // quantile of the normal law at 97.5 %

double shareAt(double height) { return -std::expm1(-std::exp(height)); }

}  // namespace

double plotHeight(double share) { return std::log(-std::log1p(-share)); }

std::vector<BandPoint> failureBand(const WeibullFit& fit, const Interval& ages, int points) {
    const double from = std::log(ages.low);
    const double step = (std::log(ages.high) - from) / (points - 1);
    std::vector<BandPoint> band;
    band.reserve(size_t(points));
    for (int n = 0; n < points; ++n) {
        const double x = from + n * step;
        const double y = fit.law.shape * (x - std::log(fit.law.scale));
        // dy / d ln shape = y, dy / d ln scale = -shape
        const double variance = y * y * fit.covariance.shape + fit.law.shape * fit.law.shape * fit.covariance.scale -
                                2 * y * fit.law.shape * fit.covariance.both;
        const double reach = normal95 * std::sqrt(std::max(0.0, variance));
        band.push_back({std::exp(x), shareAt(y - reach), shareAt(y), shareAt(y + reach)});
    }
    return band;
}

}  // namespace laneward
