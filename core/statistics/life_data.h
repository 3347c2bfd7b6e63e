// Life data: how long things last, learned from those that failed and from those that had not yet when they were last seen.
//
// Ages are in one unit of the caller's (lanes, hours, days), above 0. A life that did not end in failure is right censored: all
// that is known is that it would have lasted longer. Why it was not followed further must have nothing to do with how soon it
// would have failed. Results follow the unit: lives a thousand times as long give a scale a thousand times as large and the
// same shape.
//
// Weibull: P(life > t) = exp(-(t / scale)^shape). Shape below 1: infants die; 1: age does not matter; above 1: wear. The fit is
// the maximum of the likelihood (Meeker and Escobar 1998, Statistical Methods for Reliability Data, 8.2 and 8.3, from memory).
// Rank regression (rank_regression.h) gives other values: name the method beside a number.
//
// Intervals are those of the profile likelihood: a value belongs to the interval unless some other pair of shape and scale is
// more likely by a factor of exp(q (1 + 2/n) / 2), q = 3.841 being the 95 % quantile of chi-squared with 1 degree of freedom and
// n the lives. 1 + 2/n lengthens them for small samples (a Bartlett factor, its size found by simulation, no source): without it
// 5 failures without censoring are covered in 89 of 100 samples. With it the intervals held in all that was tried (20 to 100 % of
// the lives fail, censored at one age or at random): as they should from 20 failures on; with 5 to 19 in 93 to 97 of 100 samples
// (tests/outside/tst_life_coverage.cpp). For fewer nothing is claimed.
//
//     const Result<WeibullFit> fit = fitWeibull(lives);
//     if (fit) say(fit->law.shape, fit->shape.low, fit->shape.high);
#pragma once

#include "core/base/result.h"
#include "core/statistics/least_squares.h"

#include <functional>
#include <span>
#include <vector>

namespace laneward {

struct Life {
    double age = 0;       ///< at failure, or when last seen
    bool failed = false;  ///< false: lasted longer than `age`
    friend bool operator==(const Life&, const Life&) = default;
};

/// A law of life; shape and scale above 0, ages 0 or more.
struct Weibull {
    double shape = 1;
    double scale = 1;  ///< 63.2 % have failed by then

    double density(double age) const;
    double below(double age) const;  ///< P(life <= age)
    double survival(double age) const;
    double hazard(double age) const;     ///< failures per unit of age among those that reached it
    double quantile(double p) const;     ///< 0 <= p < 1
    double mean() const;                 ///< infinite when too large for a double
    double meanUntil(double age) const;  ///< integral of the survival from 0 to age: mean life when all are taken off at `age`
    friend bool operator==(const Weibull&, const Weibull&) = default;
};

/// Variances and the covariance of ln(shape) and ln(scale): the inverse of the observed information.
struct LogCovariance {
    double shape = 0;
    double scale = 0;
    double both = 0;
};

struct WeibullFit {
    Weibull law;
    double logLikelihood = 0;  ///< of the ages themselves, in the caller's unit
    LogCovariance covariance;
    Interval shape;  ///< 95 %
    Interval scale;  ///< 95 %
    int lives = 0;
    int failures = 0;
};

/// Two failures or more, and not all at one age that no life outlived. Relative error of shape and scale below 1e-9, of the ends
/// of intervals below 1e-7. Errors, all Invalid: "life.age" with the life's number when an age is not above 0 and finite,
/// "life.too-few-failures" with their number, "life.no-spread" with the failures, "life.beyond-range" when a scale is no double.
Result<WeibullFit> fitWeibull(std::span<const Life> lives);

/// The 95 % interval of scale times perScale(shape), such as a quantile or the mean: its range over all pairs that the profile
/// allows. `fit` is that of `lives`. perScale is above 0 and continuous, and may be infinite: then the interval has no upper end.
Interval profileOf(std::span<const Life> lives, const WeibullFit& fit, const std::function<double(double shape)>& perScale);

/// Shape 1: nothing but the mean life.
struct ExponentialFit {
    double mean = 0;    ///< all ages together, over the failures
    Interval interval;  ///< 95 % or more, after Epstein and Sobel, as in MIL-HDBK-338B 8.3.2.5 (from memory)
    double logLikelihood = 0;
    int lives = 0;
    int failures = 0;
};
/// One failure or more; errors as fitWeibull.
Result<ExponentialFit> fitExponential(std::span<const Life> lives);

/// Whether all ages are above 0 and finite; else the error of the first that is not.
Outcome checkAges(std::span<const Life> lives);
int failuresAmong(std::span<const Life> lives);

}  // namespace laneward
