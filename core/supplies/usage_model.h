// What a machine really takes of a product, learned from its fills: the posterior of real over nominal use.
//
// A tank is filled up to its line, so what is poured is what the lanes since the last full line took. In units of a tank,
//
//     poured(i) = k nominal(i) + p + e(i) - e(i-1) + noise(i),   noise ~ N(0, s nominal(i)),   e ~ N(0, L s)
//
// k: real over nominal; p: purge of a fill; e: error of meeting the line, which comes back in the next fill; s: variance of the
// noise of one tank. It is a dynamic linear model with unknown scale (core/statistics/dynamic_model.h). k may drift: with every
// tank it walks on at random, its variance being s (1 - D)^2 / D. D is the discount of what is known: in the long run the fills
// of a tank ago count D times as much as now (West and Harrison 1997, 2.4). L and D are learned too: each pair of a few values
// has its own model, weighed by how well it predicted every fill (12.2), and the mixture is given as one Student's t of the same
// mean and variance. The same holds for what is known to be used and counted now and then, such as cloth by the lane; its tank is
// then a usual amount between counts.
//
// Future use of a nominal amount N is N k, the share p has in it at the usual size of a fill, noise, and the drift until then. It
// is taken as normal, so that a tiny N has a tiny chance of a negative use.
//
//     const Usage usage = learnUsage(fills, {tank});
//     const Interval likely = usage.use(nominalOfTheWeek).interval(0.9);
#pragma once

#include "core/statistics/dynamic_model.h"
#include "core/supplies/supply.h"

#include <span>

namespace laneward {

/// One fill up to the line, or one count.
struct UsageFill {
    OperationId fill;
    Instant at;
    Amount nominal;       ///< of the runs since the last full line, repeated first pairs included
    Amount poured;        ///< since the last full line, toppings-up included
    int lanes = 0;        ///< lanes run in that time
    bool follows = true;  ///< began at the line of the fill before it in time; false after one that could not be judged
};

/// What is believed before the first fill, and how fast it is forgotten. Common practice, no source.
struct UsageRule {
    Amount tank;                      ///< up to its line; above 0
    std::optional<double> lineShare;  ///< L, 0 or more; none = learned
    std::optional<double> discount;   ///< D, 0 < D <= 1; none = learned
    double scaleDiscount = 0.99;      ///< how fast the noise is forgotten: about 100 tanks are remembered
    double factor = 1;                ///< mean of k, and its standard deviation
    double factorDeviation = 0.1;
    double purge = 0;  ///< mean of p, in tanks, and its standard deviation; 0 = no purge
    double purgeDeviation = 0.02;
    double noise = 0.02;  ///< root of s
    double weight = 3;    ///< fills that this is worth: degrees of freedom
};

inline constexpr double leastRatio = 1.0 / 3;  ///< poured over nominal: beyond these some work was not recorded, or
inline constexpr double mostRatio = 3;         ///< an amount is wrong; common practice, no source

/// The rate of use and all that future use needs; `tank` and rates in the supply's base unit, variances in units of s.
struct UseRate {
    double tank = 1;
    double mean = 1;      ///< use per nominal, purge included
    double variance = 0;  ///< of the mean, in units of s
    double drift = 0;     ///< variance by which the mean walks on with every tank, in units of s
    double scale = 0;     ///< estimate of s
    double freedom = 1;   ///< n: 1/s ~ Gamma(n/2, n scale/2)

    /// Real use of future nominal work. With x tanks its variance is s (x + x^2 variance + x^3/3 drift).
    Student use(double nominal) const;
};

class Usage {
public:
    explicit Usage(const UsageRule& rule);
    /// Learns one more, by time; false when it is left out.
    bool learn(const UsageFill& fill);

    Student factor() const;                                            ///< k
    Student purge() const;                                             ///< of one fill, base units
    UseRate rate() const;                                              ///< for forecasts
    Student use(double nominal) const { return rate().use(nominal); }  ///< real use of future nominal work
    /// What will have been poured since the last fill when a line is met again after nominal work.
    Student poured(double nominal) const;
    /// Measured use per lane of so much nominal, its share of purge included.
    Student perLane(double nominalPerLane) const;
    double nominalPerLane() const;  ///< of the fills behind it; 0 without lanes
    double tanksPerFill() const;    ///< nominal between fills; 1 before the first
    double lineShare() const;       ///< L, on average
    double discount() const;        ///< D, on average

    const std::vector<OperationId>& fills() const { return m_fills; }  ///< behind it, by time
    int leftOut() const { return m_leftOut; }                          ///< nothing nominal or poured, or beyond the ratios
    double logLikelihood() const;  ///< of all that was poured, in tanks, each fill predicted from those before

private:
    /// One pair of L and D.
    struct Candidate {
        DynamicModel model;  ///< state: k, p, e(i-1), e(i)
        double lineShare;
        double discount;
        double logWeight;  ///< belief at first times likelihood
    };

    template <class Value>
    double average(Value of) const;
    /// The mixture of what each candidate says.
    template <class Says>
    Student mixed(Says says) const;

    std::vector<Candidate> m_candidates;
    double m_tank;
    double m_scaleDiscount;
    std::vector<OperationId> m_fills;
    bool m_chained = false;  ///< the last fill was learned
    int m_leftOut = 0;
    double m_nominal = 0;           ///< of the fills, in tanks
    double m_nominalWithLanes = 0;  ///< of those whose lanes are known
    std::int64_t m_lanes = 0;
};

/// From fills in any order. Without fills the rule alone.
Usage learnUsage(std::vector<UsageFill> fills, const UsageRule& rule);

}  // namespace laneward
