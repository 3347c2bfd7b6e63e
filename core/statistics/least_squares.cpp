#include "core/statistics/least_squares.h"

#include <boost/math/distributions/students_t.hpp>
#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

constexpr double confidence = 0.95;
constexpr int scanned = 48;         // places looked at before the search narrows, closer together near the low end
constexpr int minimumBits = 30;     // of the place of a minimum: half of what a double has
constexpr double narrowest = 1e-9;  // of the range, for the ends of the interval
constexpr double singular = 1e-12;  // J'J below this of its diagonal says nothing about t
constexpr double rounding = 1e-12;

struct Scaled {
    double k = 0;
    double squares = 0;
};

/// The values and their shape, to ask for the sum of squares at any t.
class Profile {
public:
    Profile(std::span<const double> observed, const Shape& shape) : m_observed(observed), m_shape(shape) {}

    Scaled at(double t) const {
        const std::vector<double> f = m_shape(t);
        assert(f.size() == m_observed.size());
        double fy = 0;
        double ff = 0;
        for (size_t i = 0; i < f.size(); ++i) {
            fy += f[i] * m_observed[i];
            ff += f[i] * f[i];
        }
        Scaled scaled{ff > 0 ? fy / ff : 0, 0};
        for (size_t i = 0; i < f.size(); ++i) {
            const double error = m_observed[i] - scaled.k * f[i];
            scaled.squares += error * error;
        }
        return scaled;
    }

private:
    std::span<const double> m_observed;
    const Shape& m_shape;
};

/// Place i of the scan: quadratic, since what t does to a curve fades as t grows.
double place(const Interval& range, int i) {
    const double part = double(i) / scanned;
    return range.low + (range.high - range.low) * part * part;
}

double bestOf(const Profile& profile, const Interval& range) {
    int best = 0;
    double least = profile.at(place(range, 0)).squares;
    for (int i = 1; i <= scanned; ++i) {
        const double squares = profile.at(place(range, i)).squares;
        if (squares >= least) continue;
        best = i;
        least = squares;
    }
    const double low = place(range, std::max(best - 1, 0));
    const double high = place(range, std::min(best + 1, scanned));
    const auto squaresAt = [&](double t) { return profile.at(t).squares; };
    const double found = boost::math::tools::brent_find_minima(squaresAt, low, high, minimumBits).first;
    return squaresAt(found) < least ? found : place(range, best);
}

/// Where the sum of squares passes `limit` between `inside` and the end of the range; the end when it does not.
double crossing(const Profile& profile, double limit, double inside, double end) {
    if (profile.at(end).squares <= limit) return end;
    const double enough = std::abs(end - inside) * narrowest;
    while (std::abs(end - inside) > enough) {
        const double middle = (inside + end) / 2;
        (profile.at(middle).squares <= limit ? inside : end) = middle;
    }
    return (inside + end) / 2;
}

/// The model about (t, k): J = (k df/dt, f) and the errors r, as J'J and J'r.
struct Linear {
    double tt = 0, tk = 0, kk = 0;
    double tr = 0, kr = 0;

    double determinant() const { return tt * kk - tk * tk; }
    bool isSingular() const { return determinant() <= singular * tt * kk; }
};

Linear linearised(const ScaledFit& fit, std::span<const double> observed, const Shape& shape, const Interval& range) {
    const double step = (range.high - range.low) * 1e-5;
    const double low = std::max(range.low, fit.t - step);
    const double high = std::min(range.high, fit.t + step);
    const std::vector<double> f = shape(fit.t);
    const std::vector<double> below = shape(low);
    const std::vector<double> above = shape(high);
    Linear sums;
    for (size_t i = 0; i < f.size(); ++i) {
        const double slope = fit.k * (above[i] - below[i]) / (high - low);
        const double error = observed[i] - fit.k * f[i];
        sums.tt += slope * slope;
        sums.tk += slope * f[i];
        sums.kk += f[i] * f[i];
        sums.tr += slope * error;
        sums.kr += f[i] * error;
    }
    return sums;
}

void set(ScaledFit& fit, const Profile& profile, double t) {
    const Scaled scaled = profile.at(t);
    fit.t = t;
    fit.k = scaled.k;
    fit.sumOfSquares = scaled.squares;
}

}  // namespace

double studentQuantile(double p, double freedom) {
    assert(p > 0 && p < 1 && freedom >= 1);
    return boost::math::quantile(boost::math::students_t(freedom), p);
}

ScaledFit fitScaled(std::span<const double> observed, const Shape& shape, const Interval& range) {
    assert(observed.size() >= 3 && range.low < range.high);
    const Profile profile(observed, shape);
    ScaledFit fit;
    fit.values = int(observed.size());
    set(fit, profile, bestOf(profile, range));
    Linear sums = linearised(fit, observed, shape, range);
    // A minimum shows its place only to half the digits: one step of Gauss and Newton finds the others.
    if (!sums.isSingular()) {
        ScaledFit polished = fit;
        const double step = (sums.kk * sums.tr - sums.tk * sums.kr) / sums.determinant();
        set(polished, profile, std::clamp(fit.t + step, range.low, range.high));
        if (polished.sumOfSquares <= fit.sumOfSquares * (1 + rounding)) {
            fit = polished;
            sums = linearised(fit, observed, shape, range);
        }
    }
    const double freedom = fit.values - 2;
    fit.deviation = std::sqrt(fit.sumOfSquares / freedom);
    const double q = studentQuantile((1 + confidence) / 2, freedom);
    const double limit = fit.sumOfSquares * (1 + q * q / freedom);
    fit.tInterval = {crossing(profile, limit, fit.t, range.low), crossing(profile, limit, fit.t, range.high)};
    if (!sums.isSingular()) {
        fit.tDeviation = fit.deviation * std::sqrt(sums.kk / sums.determinant());
        fit.kDeviation = fit.deviation * std::sqrt(sums.tt / sums.determinant());
    }
    fit.kInterval = {fit.k - q * fit.kDeviation, fit.k + q * fit.kDeviation};
    return fit;
}

}  // namespace laneward
