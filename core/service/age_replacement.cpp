#include "core/service/age_replacement.h"

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

constexpr double allGone = 50;   // (age / scale)^shape at which exp(-it) of the parts live: nothing later can be told apart
constexpr int panels = 256;      // of the quadrature, 15 nodes each
constexpr int scanned = 256;     // ages looked at before the search narrows
constexpr int minimumBits = 30;  // of the place of a minimum: half of what a double has
constexpr double narrow = 1e-10;

bool isAboveNothing(double x) { return std::isfinite(x) && x > 0; }

Outcome check(const ReplacementCosts& costs) {
    if (isAboveNothing(costs.planned) && isAboveNothing(costs.failed)) return Nothing{};
    return fault(ErrorKind::Invalid, "replacement.costs", {});
}

/// The integral of a survival function from 0 on: sums of whole panels kept, the rest of the last one added.
class Integral {
public:
    Integral(std::function<double(double)> f, double longest) : m_f(std::move(f)), m_width(longest / panels) {
        m_sums.push_back(0);
        for (int i = 0; i < panels; ++i)
            m_sums.push_back(m_sums.back() + over(i * m_width, (i + 1) * m_width));
    }
    double operator()(double age) const {
        if (age <= 0) return 0;
        const auto whole = size_t(std::min(age / m_width, double(panels)));
        return m_sums[whole] + (whole < panels ? over(double(whole) * m_width, age) : 0);
    }

private:
    double over(double from, double to) const {
        return to > from ? boost::math::quadrature::gauss<double, 15>::integrate(m_f, from, to) : 0;
    }

    std::function<double(double)> m_f;
    double m_width;
    std::vector<double> m_sums;
};

double bestByScan(const AgeCosts& costs, double longest) {
    const auto place = [&](int i) { return longest * i / scanned; };
    int best = scanned;
    for (int i = scanned - 1; i > 0; --i)
        if (costs.at(place(i)) < costs.at(place(best))) best = i;
    if (best == scanned) return HUGE_VAL;
    const auto costAt = [&](double age) { return costs.at(age); };
    return boost::math::tools::brent_find_minima(costAt, place(best - 1), place(best + 1), minimumBits).first;
}

/// Between an age that costs more than `cost` and one that does not.
double passing(const AgeCosts& costs, double cost, double above, double notAbove) {
    while (std::abs(above - notAbove) > narrow * std::max(above, notAbove)) {
        const double middle = (above + notAbove) / 2;
        (costs.at(middle) > cost ? above : notAbove) = middle;
    }
    return notAbove;
}

}  // namespace

Result<AgeCosts> AgeCosts::of(const Weibull& law, const ReplacementCosts& costs) {
    if (const Outcome sound = check(costs); !sound) return sound.error();
    if (!isAboveNothing(law.shape) || !isAboveNothing(law.scale) || !isAboveNothing(law.mean()))
        return fault(ErrorKind::Invalid, "replacement.law", {});
    AgeCosts all;
    all.m_costs = costs;
    all.m_survival = [law](double age) { return law.survival(age); };
    all.m_meanUntil = [law](double age) { return law.meanUntil(age); };
    all.m_mean = law.mean();
    all.m_longest = law.scale;
    all.m_best = law.scale * bestAgePerScale(law.shape, costs);
    return all;
}

Result<AgeCosts> AgeCosts::of(std::function<double(double)> survival, double longest, const ReplacementCosts& costs) {
    if (const Outcome sound = check(costs); !sound) return sound.error();
    if (!isAboveNothing(longest)) return fault(ErrorKind::Invalid, "replacement.law", {});
    AgeCosts all;
    all.m_costs = costs;
    all.m_meanUntil = Integral(survival, longest);
    all.m_survival = std::move(survival);
    all.m_mean = all.m_meanUntil(longest);
    all.m_longest = longest;
    if (!isAboveNothing(all.m_mean)) return fault(ErrorKind::Invalid, "replacement.law", {});
    all.m_best = bestByScan(all, longest);
    return all;
}

double AgeCosts::at(double age) const {
    if (age <= 0) return HUGE_VAL;
    if (std::isinf(age)) return m_costs.failed / m_mean;
    const double living = m_survival(age);
    return (m_costs.planned * living + m_costs.failed * (1 - living)) / m_meanUntil(age);
}

BestAge AgeCosts::best() const {
    BestAge best;
    best.age = m_best;
    best.never = std::isinf(m_best);
    best.cost = at(m_best);
    best.runToFailure = at(HUGE_VAL);
    const double most = best.cost * (1 + flatness);
    double within = best.never ? m_longest : m_best;
    while (at(within) > most)
        within *= 2;
    best.flat.low = passing(*this, most, 0, within);
    best.flat.high = HUGE_VAL;
    if (best.runToFailure > most) {
        double beyond = within;
        while (at(beyond) <= most)
            beyond *= 2;
        best.flat.high = passing(*this, most, beyond, within);
    }
    return best;
}

std::vector<CostPoint> AgeCosts::curve(const Interval& ages, int points) const {
    assert(points >= 2 && ages.low > 0 && ages.high > ages.low);
    std::vector<CostPoint> all;
    for (int i = 0; i < points; ++i) {
        const double age = ages.low + (ages.high - ages.low) * i / (points - 1);
        all.push_back({age, at(age)});
    }
    return all;
}

// With x = u^shape, u being the age over the scale: h = shape x / u, F = 1 - exp(-x), and integral R = mean P(1 / shape, x). What
// is to reach cp / (cf - cp) rises with x from 0, and is below shape x.
double bestAgePerScale(double shape, const ReplacementCosts& costs) {
    if (shape <= 1 || costs.failed <= costs.planned) return HUGE_VAL;
    const double ratio = costs.planned / (costs.failed - costs.planned);
    const double mean = Weibull{shape, 1}.mean();
    const auto missing = [&](double logX) {
        const double x = std::exp(logX);
        const double u = std::exp(logX / shape);
        return shape * x / u * mean * boost::math::gamma_p(1 / shape, x) + std::expm1(-x) - ratio;
    };
    const double low = std::log(ratio / shape);
    const double high = std::log(allGone);
    if (low >= high || missing(high) <= 0) return HUGE_VAL;
    if (missing(low) >= 0) return std::exp(low / shape);  // no wear before the end: rounding decides
    std::uintmax_t most = 200;
    const auto ends = boost::math::tools::toms748_solve(missing, low, high, boost::math::tools::eps_tolerance<double>(48), most);
    return std::exp((ends.first + ends.second) / 2 / shape);
}

}  // namespace laneward
