#include "core/statistics/student.h"

#include <boost/math/distributions/students_t.hpp>

#include <cassert>
#include <cmath>

namespace laneward {

double Student::quantile(double p) const {
    assert(p > 0 && p < 1 && freedom > 0);
    return scale > 0 ? centre + scale * boost::math::quantile(boost::math::students_t(freedom), p) : centre;
}

double Student::below(double x) const {
    if (scale <= 0) return x >= centre ? 1 : 0;
    return boost::math::cdf(boost::math::students_t(freedom), (x - centre) / scale);
}

double Student::logDensity(double x) const {
    assert(scale > 0);
    const double z = (x - centre) / scale;
    return std::lgamma((freedom + 1) / 2) - std::lgamma(freedom / 2) - std::log(freedom * std::acos(-1.0)) / 2 - std::log(scale) -
           (freedom + 1) / 2 * std::log1p(z * z / freedom);
}

Interval Student::interval(double share) const { return {quantile((1 - share) / 2), quantile((1 + share) / 2)}; }

}  // namespace laneward
