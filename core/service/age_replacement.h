// When to replace a part that is still good: age replacement, each part at a set age or when it fails, whichever comes first.
//
// Ages are in the unit of the life law (lanes, hours, days), costs in one unit of money. A failure costs more than the part: the
// run that stops, the work that is done twice. With R the survival, F = 1 - R, cp and cf the costs of a planned and of a failed
// replacement, the long-run cost per unit of age is (renewal reward)
//
//     C(t) = (cp R(t) + cf F(t)) / integral of R from 0 to t
//
// (Barlow and Proschan 1965, Mathematical Theory of Reliability, 3.2 and 4.2, from memory). It is least where
// h(t) integral R - F(t) = cp / (cf - cp), h being the hazard. Where the hazard does not rise (Weibull shape 1 or less), or a
// failure costs no more than a planned replacement, running to failure is best: never. Limits: parts are renewed fully, costs do
// not change with age, and the law is known; what it is to be learned adds stands in wear.h.
//
//     const Result<AgeCosts> costs = AgeCosts::of(Weibull{2.5, 1000}, {1, 5});
//     costs->best().age                                                  // 493
#pragma once

#include "core/statistics/life_data.h"

namespace laneward {

/// Of one replacement, work and part; in one unit of money, above 0 and finite.
struct ReplacementCosts {
    double planned = 1;
    double failed = 1;  ///< parts, work and all that the stopped run costs
};

struct BestAge {
    bool never = false;       ///< run to failure
    double age = 0;           ///< infinite when never
    double cost = 0;          ///< per unit of age, at that age
    double runToFailure = 0;  ///< cost per unit of age without planned replacements
    Interval flat;            ///< ages that cost at most 2 % more than the least; high is infinite when run to failure is one
};

inline constexpr double flatness = 0.02;

struct CostPoint {
    double age = 0;
    double cost = 0;
};

class AgeCosts {
public:
    /// Closed form by the incomplete gamma function. Error Invalid: "replacement.costs" (not above 0 and finite),
    /// "replacement.law" (shape or scale likewise).
    static Result<AgeCosts> of(const Weibull& law, const ReplacementCosts& costs);
    /// Any law, by quadrature: survival falls from 1 at age 0; no life is longer than `longest`, or nothing later matters. The
    /// best is looked for up to there, to 1e-6 of it. Errors as above.
    static Result<AgeCosts> of(std::function<double(double age)> survival, double longest, const ReplacementCosts& costs);

    double at(double age) const;  ///< C(age); infinite at 0; at infinity the cost of running to failure
    BestAge best() const;
    /// Equally spaced from ages.low (above 0) to ages.high; points 2 or more.
    std::vector<CostPoint> curve(const Interval& ages, int points) const;

private:
    AgeCosts() = default;

    ReplacementCosts m_costs;
    std::function<double(double)> m_survival;
    std::function<double(double)> m_meanUntil;
    double m_mean = 0;
    double m_longest = 0;  ///< a usual life at least; what is looked for on a scale of ages begins here
    double m_best = 0;     ///< infinite when never
};

/// The best age over the scale, which depends on the shape and the ratio of costs alone; infinite when never.
double bestAgePerScale(double shape, const ReplacementCosts& costs);

}  // namespace laneward
