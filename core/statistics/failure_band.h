// What a Weibull fit says of the share that has failed by each age, with how sure it is: what is drawn beside the points of a
// Weibull plot.
//
// On the plot y = ln(-ln(1 - share)) = shape (ln age - ln scale). The band is y ± 1.96 of its standard error, by the delta method
// from the covariance of ln shape and ln scale: pointwise, 95 % for large samples (Meeker and Escobar 1998, 8.4, from memory).
// It is wider than none and narrower than the intervals of the profile: it is drawn, and nothing is decided by it.
#pragma once

#include "core/statistics/life_data.h"

#include <vector>

namespace laneward {

/// Shares between 0 and 1.
struct BandPoint {
    double age = 0;
    double low = 0;
    double likely = 0;
    double high = 0;
};

/// The height of a share on the plot; of 0 < share < 1.
double plotHeight(double share);
/// Equally spaced by the logarithm of age, from ages.low (above 0) to ages.high; points 2 or more.
std::vector<BandPoint> failureBand(const WeibullFit& fit, const Interval& ages, int points);

}  // namespace laneward
