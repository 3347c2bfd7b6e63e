#include "core/statistics/loss.h"
#include "core/statistics/normal.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/poisson.hpp>

#include <cassert>

namespace laneward {

double normalQuantile(double p) { return boost::math::quantile(boost::math::normal(), p); }

double normalLoss(double k) { return normalDensity(k) - k * normalBelow(-k); }

double normalLossInverse(double loss) {
    assert(loss > 0);
    // It falls, and is above both 0 and -k; beyond 38 it cannot be told from 0.
    double low = -loss - 1;
    double high = 38;
    while (high - low > 1e-13 * (1 + std::abs(low))) {
        const double middle = (low + high) / 2;
        if (middle <= low || middle >= high) break;
        (normalLoss(middle) > loss ? low : high) = middle;
    }
    return (low + high) / 2;
}

double poissonBelow(int x, double mean) { return x < 0 ? 0 : boost::math::cdf(boost::math::poisson(mean), x); }

// E[(N - x)+] = mean P(N >= x) - x P(N > x), since n P(N = n) = mean P(N = n - 1).
double poissonLoss(int x, double mean) {
    assert(mean > 0 && x >= 0);
    const boost::math::poisson demand(mean);
    const double above = boost::math::cdf(boost::math::complement(demand, x));
    return mean * (above + boost::math::pdf(demand, x)) - x * above;
}

}  // namespace laneward
