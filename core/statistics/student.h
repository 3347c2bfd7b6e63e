// Student's t with a centre and a scale: what is said about a mean, or the next value, when the spread had to be learned too.
//
//     const Student next{100, 5, 12};
//     next.quantile(0.95);       // 108.9
#pragma once

#include "core/statistics/least_squares.h"

namespace laneward {

/// centre + scale t, t with `freedom` (above 0) degrees of freedom. Scale 0 is the centre for certain.
struct Student {
    double centre = 0;
    double scale = 0;
    double freedom = 1;

    double quantile(double p) const;  ///< 0 < p < 1
    double below(double x) const;     ///< P(value <= x); of a certain value 0 or 1
    double logDensity(double x) const;
    Interval interval(double share) const;  ///< holds `share` of the probability, as much on either side left out
    friend bool operator==(const Student&, const Student&) = default;
};

}  // namespace laneward
