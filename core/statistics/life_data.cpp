#include "core/statistics/life_data.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

constexpr double chiSquared95 = 3.841458820694124;
constexpr double smallSample = 2;      // 1 + this / lives: see the header
constexpr double leastSpread = 1e-12;  // of the logarithms of ages; below, rounding is all there is
constexpr double flatEnd = 1e4;        // stands for the logarithm of an infinite value
constexpr double tinyShare = 1e-8;     // failing by then; its square is below rounding
constexpr int scanned = 12;            // places looked at before a search narrows
constexpr int minimumBits = 18;        // of the place of a minimum: its value is then known to the square of that

double square(double x) { return x * x; }

/// The root of a function that falls from above 0 to below, looked for from `start` outwards.
template <class Function>
double fallingRoot(const Function& f, double start, double step) {
    double low = start;
    double high = start;
    if (f(start) > 0) {
        for (high = start + step; f(high) > 0; step *= 2, high += step)
            low = high;
    } else {
        for (low = start - step; f(low) <= 0; step *= 2, low -= step)
            high = low;
    }
    std::uintmax_t most = 200;
    const auto ends = boost::math::tools::toms748_solve(f, low, high, boost::math::tools::eps_tolerance<double>(48), most);
    return (ends.first + ends.second) / 2;
}

/// How far a ln(scale) may be from the best for its shape when the likelihood may fall by `drop` per failure, times the shape:
/// the roots z of z + exp(-z) - 1 = drop.
double rootAbove(double drop) {
    double z = drop + std::sqrt(2 * drop);
    for (int i = 0; i < 60 && z > 0; ++i) {
        const double step = (z + std::exp(-z) - 1 - drop) / -std::expm1(-z);
        z -= step;
        if (std::abs(step) <= 1e-14 * (1 + z)) break;
    }
    return z;
}
double rootBelow(double drop) {
    double z = -std::sqrt(2 * drop);
    for (int i = 0; i < 60 && z < 0; ++i) {
        const double step = (z + std::exp(-z) - 1 - drop) / -std::expm1(-z);
        z -= step;
        if (std::abs(step) <= 1e-14 * (1 - z)) break;
    }
    return z;
}

/// The likelihood with the best scale for a given shape. All from logarithms of ages over the greatest age, so that no sum can
/// overflow: with b the shape and y such a logarithm, S0 = sum exp(b y), and the best ln(scale) is ln(S0 / r) / b.
class Profile {
public:
    explicit Profile(std::span<const Life> lives) {
        double greatest = 0;
        for (const Life& life : lives)
            greatest = std::max(greatest, life.age);
        m_origin = std::log(greatest);
        m_y.reserve(lives.size());
        for (const Life& life : lives) {
            const double y = std::log(life.age) - m_origin;
            m_y.push_back(y);
            if (!life.failed) continue;
            m_failedSum += y;
            ++m_failures;
        }
    }

    double lives() const { return double(m_y.size()); }
    double failures() const { return m_failures; }
    double origin() const { return m_origin; }  ///< logarithm of the greatest age
    double failedSum() const { return m_failedSum; }
    bool hasSpread() const { return -m_failedSum / m_failures > leastSpread; }

    /// Its slope in the shape over the failures: falls, and passes 0 at the maximum.
    double slope(double shape) const {
        double s0 = 0;
        double s1 = 0;
        for (double y : m_y) {
            const double e = std::exp(shape * y);
            s0 += e;
            s1 += y * e;
        }
        return 1 / shape - s1 / s0 + m_failedSum / m_failures;
    }

    struct At {
        double logLikelihood = 0;  ///< of the logarithms of the ages
        double logScale = 0;       ///< over the greatest age
    };
    At at(double shape) const {
        double s0 = 0;
        for (double y : m_y)
            s0 += std::exp(shape * y);
        const double scaled = std::log(s0 / m_failures);
        return {m_failures * (std::log(shape) - scaled - 1) + shape * m_failedSum, scaled / shape};
    }

    LogCovariance covariance(const Weibull& best) const {
        const double logScale = std::log(best.scale) - m_origin;
        double s1 = 0;
        double s2 = 0;
        for (double y : m_y) {
            const double z = best.shape * (y - logScale);
            const double e = std::exp(z);
            s1 += z * e;
            s2 += z * z * e;
        }
        // Information of (ln shape, ln scale) = (r + s2, -b s1; -b s1, b^2 r).
        const double determinant = square(best.shape) * (m_failures * (m_failures + s2) - s1 * s1);
        return {square(best.shape) * m_failures / determinant, (m_failures + s2) / determinant, best.shape * s1 / determinant};
    }

private:
    std::vector<double> m_y;
    double m_origin = 0;
    double m_failedSum = 0;
    double m_failures = 0;
};

double allowedDrop(const Profile& profile) { return chiSquared95 / 2 * (1 + smallSample / profile.lives()); }

Interval shapeInterval(const Profile& profile, double shape, double deviation) {
    const double least = profile.at(shape).logLikelihood - allowedDrop(profile);
    const auto above = [&](double logShape) { return profile.at(std::exp(logShape)).logLikelihood - least; };
    const double start = std::log(shape);
    const double high = fallingRoot(above, start, 2 * deviation);
    const double low = -fallingRoot([&](double negative) { return above(-negative); }, -start, 2 * deviation);
    return {std::exp(low), std::exp(high)};
}

/// A shape that the profile allows, with what costs most to know about it: going through all lives.
struct Place {
    double logShape = 0;
    Profile::At at;
};

Place placeAt(const Profile& profile, double logShape) { return {logShape, profile.at(std::exp(logShape))}; }

/// The least of f over places: the best of those that were looked at, then Brent between its neighbours.
template <class Function>
double leastOf(const Function& f, const std::vector<Place>& places, const Profile& profile) {
    size_t best = 0;
    double least = f(places[0]);
    for (size_t i = 1; i < places.size(); ++i) {
        const double value = f(places[i]);
        if (value >= least) continue;
        least = value;
        best = i;
    }
    const double low = places[best == 0 ? 0 : best - 1].logShape;
    const double high = places[std::min(best + 1, places.size() - 1)].logShape;
    const auto narrowed = [&](double logShape) { return f(placeAt(profile, logShape)); };
    return std::min(least, boost::math::tools::brent_find_minima(narrowed, low, high, minimumBits).second);
}

/// Range of ln(scale) + extra(shape) over the pairs that the profile allows.
template <class Extra>
Interval logRange(const Profile& profile, const WeibullFit& fit, const Extra& extra) {
    const double r = profile.failures();
    const double least = profile.at(fit.law.shape).logLikelihood - allowedDrop(profile);
    const auto end = [&](const Place& place, bool upper) {
        const double shape = std::exp(place.logShape);
        const double drop = std::max((place.at.logLikelihood - least) / r, 0.0);
        return place.at.logScale + (upper ? rootAbove(drop) : rootBelow(drop)) / shape + extra(shape);
    };
    const double from = std::log(fit.shape.low);
    const double to = std::log(fit.shape.high);
    std::vector<Place> places;
    for (int i = 0; i <= scanned; ++i)
        places.push_back(placeAt(profile, from + (to - from) * i / scanned));
    const double low = leastOf([&](const Place& place) { return end(place, false); }, places, profile);
    const double high = -leastOf([&](const Place& place) { return -end(place, true); }, places, profile);
    return {low + profile.origin(), high >= flatEnd / 2 ? HUGE_VAL : high + profile.origin()};
}

Interval exponentials(const Interval& logs) { return {std::exp(logs.low), std::exp(logs.high)}; }

}  // namespace

double Weibull::survival(double age) const { return std::exp(-std::pow(age / scale, shape)); }
double Weibull::below(double age) const { return -std::expm1(-std::pow(age / scale, shape)); }
double Weibull::hazard(double age) const { return shape / scale * std::pow(age / scale, shape - 1); }
double Weibull::density(double age) const { return hazard(age) * survival(age); }
double Weibull::quantile(double p) const { return scale * std::pow(-std::log1p(-p), 1 / shape); }

double Weibull::mean() const {
    const double logMean = std::lgamma(1 + 1 / shape) + std::log(scale);
    return std::exp(logMean);
}

// With x = (t / scale)^shape the integral is scale / shape times the lower incomplete gamma function of 1 / shape up to x.
double Weibull::meanUntil(double age) const {
    if (age <= 0) return 0;
    const double x = std::pow(age / scale, shape);
    if (x < tinyShare) return age * (1 - x / (shape + 1));
    return std::isfinite(x) ? mean() * boost::math::gamma_p(1 / shape, x) : mean();
}

int failuresAmong(std::span<const Life> lives) {
    return int(std::count_if(lives.begin(), lives.end(), [](const Life& life) { return life.failed; }));
}

Outcome checkAges(std::span<const Life> lives) {
    for (size_t i = 0; i < lives.size(); ++i)
        if (!std::isfinite(lives[i].age) || lives[i].age <= 0)
            return fault(ErrorKind::Invalid, "life.age", {}, {std::int64_t(i + 1)});
    return Nothing{};
}

Result<WeibullFit> fitWeibull(std::span<const Life> lives) {
    if (const Outcome ages = checkAges(lives); !ages) return ages.error();
    WeibullFit fit;
    fit.lives = int(lives.size());
    fit.failures = failuresAmong(lives);
    if (fit.failures < 2) return fault(ErrorKind::Invalid, "life.too-few-failures", {}, {std::int64_t{fit.failures}});
    const Profile profile(lives);
    if (!profile.hasSpread()) return fault(ErrorKind::Invalid, "life.no-spread", {}, {std::int64_t{fit.failures}});
    const auto slope = [&](double logShape) { return profile.slope(std::exp(logShape)); };
    const double spread = -profile.failedSum() / profile.failures();
    fit.law.shape = std::exp(fallingRoot(slope, -std::log(spread), 1));
    const Profile::At best = profile.at(fit.law.shape);
    fit.law.scale = std::exp(best.logScale + profile.origin());
    if (!std::isfinite(fit.law.scale)) return fault(ErrorKind::Invalid, "life.beyond-range", {});
    fit.logLikelihood = best.logLikelihood - profile.failedSum() - profile.failures() * profile.origin();
    fit.covariance = profile.covariance(fit.law);
    fit.shape = shapeInterval(profile, fit.law.shape, std::sqrt(fit.covariance.shape));
    fit.scale = exponentials(logRange(profile, fit, [](double) { return 0.0; }));
    return fit;
}

Interval profileOf(std::span<const Life> lives, const WeibullFit& fit, const std::function<double(double)>& perScale) {
    assert(!lives.empty());
    return exponentials(logRange(Profile(lives), fit, [&](double shape) {
        const double value = perScale(shape);
        return std::isfinite(value) ? std::log(value) : flatEnd;
    }));
}

Result<ExponentialFit> fitExponential(std::span<const Life> lives) {
    if (const Outcome ages = checkAges(lives); !ages) return ages.error();
    ExponentialFit fit;
    fit.lives = int(lives.size());
    fit.failures = failuresAmong(lives);
    if (fit.failures < 1) return fault(ErrorKind::Invalid, "life.too-few-failures", {}, {std::int64_t{0}});
    double all = 0;
    for (const Life& life : lives)
        all += life.age;
    if (!std::isfinite(all)) return fault(ErrorKind::Invalid, "life.beyond-range", {});
    const double r = fit.failures;
    fit.mean = all / r;
    fit.logLikelihood = -r * (std::log(fit.mean) + 1);
    // Watching ended at a time, not at a failure: the lower end counts one failure more.
    const auto quantile = [](double p, double freedom) { return boost::math::quantile(boost::math::chi_squared(freedom), p); };
    fit.interval = {2 * all / quantile(0.975, 2 * r + 2), 2 * all / quantile(0.025, 2 * r)};
    return fit;
}

}  // namespace laneward
