// Use that nobody plans: how often it happens and how large it is, learned from dated records. Unplanned treatments, service use,
// spills and what counts find missing are all such: a compound Poisson process.
//
// Events come at a rate r per day, each of an amount that is Gamma(c, b), b being its inverse scale:
//     r ~ Gamma(events + prior, days + prior)          conjugate to the Poisson counts
//     b ~ Gamma(1 + c (1 + n), size0 + sum of sizes)   conjugate to n gamma sizes of known shape c
// (Fink 1997, A Compendium of Conjugate Priors, from memory). c comes from the sizes by moments, and is then taken as known.
//
//     const LearnedRate spills = learnRate(found, 365, {0.5, 30, 2e5});
#pragma once

#include "core/supplies/supply.h"

#include <span>

namespace laneward {

struct DatedAmount {
    QDate day;
    Amount amount;
};

/// What is believed before anything happened: so many events in so many days, each about `size` (base units, above 0).
/// Common practice, no source.
struct RatePrior {
    double events = 0.5;
    double days = 60;
    double size = 1;
};

struct LearnedRate {
    double shape = 0.5;  ///< r ~ Gamma(shape, days); days is also the inverse scale
    double days = 60;
    double sizeShape = 1;   ///< c
    double scaleShape = 2;  ///< b ~ Gamma(scaleShape, scaleRate); scaleShape above 1
    double scaleRate = 1;
    bool comesIn = false;  ///< adds to the stock instead: what counts find too much
    int events = 0;        ///< behind it

    double ratePerDay() const { return shape / days; }
    double meanSize() const { return sizeShape * scaleRate / (scaleShape - 1); }
    double meanPerDay() const { return ratePerDay() * meanSize(); }
};

/// From the events of `observedDays` (0 or more) days; amounts of nothing or below do not count.
LearnedRate learnRate(std::span<const DatedAmount> events, int observedDays, const RatePrior& prior = {});

/// Chances of days in a row, the first for `firstDay`. They sum to 1.
struct DayChances {
    int firstDay = 0;
    std::vector<double> chances;

    double until(int day) const;   ///< P(on `day` or before)
    int at(double uniform) const;  ///< the day below which the chances sum to at most `uniform` (0 <= uniform < 1)
};

/// Days from order to receipt, for the next order: the usual ones with the weight of two orders, as a Poisson distribution, and
/// every order of the history with its own (posterior predictive of a Dirichlet process, Ferguson 1973, from memory). Days below
/// 0 do not count.
DayChances leadTimes(std::span<const int> history, int usualDays);

/// When an order placed `daysAgo` will arrive, counted from today = 0, knowing that it has not yet. One later than all that is
/// thought possible is expected today.
DayChances arrivalOf(const DayChances& lead, int daysAgo);

}  // namespace laneward
