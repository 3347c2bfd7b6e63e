// Least squares for y = k f(t): one parameter t inside a function, and a factor k in front of it.
//
// For every t the best k has a closed form; t is then searched in one dimension. The interval of t is the exact one of the
// profile: all t whose sum of squares is at most S (1 + q^2 / (n - 2)), q being the quantile of Student's t with n - 2 degrees
// of freedom (Bates and Watts 1988, ch. 6, from memory). The interval of k is that of the linearised model. Errors of the values
// are taken as independent, normal and of one size.
//
//     const ScaledFit fit = fitScaled(observed, [&](double t) { return curve(t, at); }, {0, 20});
#pragma once

#include <functional>
#include <span>
#include <vector>

namespace laneward {

struct Interval {
    double low = 0;
    double high = 0;

    bool contains(double value) const { return low <= value && value <= high; }
    friend bool operator==(const Interval&, const Interval&) = default;
};

struct ScaledFit {
    double t = 0;
    Interval tInterval;  ///< 95 %; ends at the range that was searched when the values do not bound t
    double k = 1;
    Interval kInterval;     ///< 95 %
    double kDeviation = 0;  ///< standard deviation of k
    double tDeviation = 0;  ///< of t, by the linearised model
    double sumOfSquares = 0;
    double deviation = 0;  ///< of one value: sqrt(S / (n - 2))
    int values = 0;
};

/// The value that Student's t with `freedom` (1 or more) degrees of freedom stays below with probability p (0 < p < 1).
double studentQuantile(double p, double freedom);

/// f(t) for all places at once.
using Shape = std::function<std::vector<double>(double t)>;

/// Needs three values or more and a range that is not empty; searches t in it, errors below 1e-8 of its length.
ScaledFit fitScaled(std::span<const double> observed, const Shape& shape, const Interval& range);

}  // namespace laneward
