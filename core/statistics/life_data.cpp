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
constexpr int minimumBits = 26;        // of the place of a minimum

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

/// The least of f between `from` and `to`: the best place of a scan, then Brent.
template <class Function>
double leastOf(const Function& f, double from, double to) {
    const auto place = [&](int i) { return from + (to - from) * i / scanned; };
    int best = 0;
    double least = f(place(0));
    for (int i = 1; i <= scanned; ++i) {
        const double value = f(place(i));
        if (value >= least) continue;
        least = value;
        best = i;
    }
    const double low = place(std::max(best - 1, 0));
    const double high = place(std::min(best + 1, scanned));
    return std::min(least, boost::math::tools::brent_find_minima(f, low, high, minimumBits).second);
}

/// Range of ln(scale) + extra(shape) over the pairs that the profile allows.
template <class Extra>
Interval logRange(const Profile& profile, const WeibullFit& fit, const Extra& extra) {
    const double r = profile.failures();
    const double least = profile.at(fit.law.shape).logLikelihood - allowedDrop(profile);
    const auto end = [&](double logShape, bool upper) {
        const double shape = std::exp(logShape);
        const Profile::At at = profile.at(shape);
        const double drop = std::max((at.logLikelihood - least) / r, 0.0);
        return at.logScale + (upper ? rootAbove(drop) : rootBelow(drop)) / shape + extra(shape);
    };
    const double from = std::log(fit.shape.low);
    const double to = std::log(fit.shape.high);
    const double low = leastOf([&](double a) { return end(a, false); }, from, to);
    const double high = -leastOf([&](double a) { return -end(a, true); }, from, to);
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
