// How many lanes a pack runs on one charge: learned from its log, so that tonight's plan can be held against it.
//
// A charge that ran until the pack was done counts in full; one that was cut short (charged or swapped early) says that it would
// have run at least that many: right censored. The logarithm of the lanes of a charge is taken as normal,
//
//     ln(lanes) ~ N(m, sigma^2)
//
// with neither known. Belief is kept as weights on a grid of pairs: m in quarters of sigma within a factor of 5 of the usual
// number, sigma at 3, 6, 10, 15, 25 and 40 %; a charge multiplies each weight by its density, or by the chance of more when it
// was cut short (Bayes' rule; no approximation but the grid's). What is predicted is the mixture. Older charges fade: a charge
// ago counts 0.97 times as much, so that about 33 are remembered. Before the first charge m is the usual number within 30 %
// or so, common practice, no source. In simulated logs what was called 90 in 100 came true in 89 to 93, also where charges follow
// another law; where they differ by a quarter and half are cut short, chances near 50 in 100 may then be 6 off.
//
//     PackLanes lanes(40);
//     for (const PackCharge& charge : log) lanes.learn(charge);
//     lanes.chanceToFinish(*chargeNow, tonight);
#pragma once

#include "core/service/pack_charge.h"

#include <span>
#include <vector>

namespace laneward {

/// One discharge of one pack, from full.
struct PackCharge {
    double day = 0;         ///< of its end, counted from any day; for the trend
    double lanes = 0;       ///< above 0
    bool cutShort = false;  ///< charged or swapped before the pack was done
    friend bool operator==(const PackCharge&, const PackCharge&) = default;
};

class PackLanes {
public:
    explicit PackLanes(double usualLanes);  ///< above 0: the machine's setting
    /// One more, in order of time; false, and nothing learned, when its lanes are no number above 0 and below 100 times the
    /// usual.
    bool learn(const PackCharge& charge);
    /// Several, in order of time; how many were learned.
    int learn(std::span<const PackCharge> charges);

    /// P(the next full charge runs more than so many lanes).
    double chanceOfMore(double lanes) const;
    /// Lanes that the next full charge exceeds with chance 1 - p; 0 < p < 1.
    double quantile(double p) const;
    /// P(a pack with this charge runs `lanes` more): the chance above at lanes over the charge, averaged over its likely range.
    double chanceToFinish(const Charge& charge, double lanes) const;
    int charges() const { return m_charges; }    ///< behind it
    int cutShort() const { return m_cutShort; }  ///< among them

private:
    struct Candidate {
        double m;  ///< ln of lanes over the usual
        double sigma;
        double logSigma;
        double belief;     ///< before the first charge, as a logarithm
        double logWeight;  ///< of what was learned
        double weight;     ///< both, summing to 1
    };
    void weigh();

    double m_usual;
    std::vector<Candidate> m_candidates;
    int m_charges = 0;
    int m_cutShort = 0;
};

/// How a pack fades: lanes per charge as a straight line over days, by least squares.
struct PackTrend {
    double lanesPerDay = 0;  ///< below 0: it fades
    double day = 0;          ///< when the line reaches the lanes that are needed
    Interval dayInterval;    ///< 95 %; high is infinite when the log cannot exclude that it lasts beyond the horizon
    double deviation = 0;    ///< of one charge from the line, lanes
    int charges = 0;         ///< behind it
};

inline constexpr int leastTrendCharges = 5;          ///< common practice, no source
inline constexpr double trendHorizon = 10 * 365.25;  ///< days after the last charge

/// The day on which a charge gives fewer than `needed` lanes. Charges cut short are left out, which errs to the early side when
/// long charges are the ones that are cut. Errors Invalid: "pack.trend-few" (charges that ran until the pack was done, and how
/// many are needed), "pack.trend-steady" (no fading that would reach it within the horizon), "pack.trend-log" (a number that
/// cannot be).
Result<PackTrend> trendOf(std::span<const PackCharge> log, double needed);

}  // namespace laneward
