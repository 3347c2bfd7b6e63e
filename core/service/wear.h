// How an item's parts wear, and when to replace the next one: from the lives of its parts to an answer.
//
// A life is the meter's advance (lanes, runs, hours, days: one unit throughout) from the fitting of a part to its failure; or,
// right censored, to its planned replacement, or up to now for the part in use. A part that was taken off because it looked
// about to fail counts as failed.
//
// A fit is shown from 5 failures on, before that how many are missing. The number is this project's own: from there on the 95 %
// intervals of life_data.h held in 93 to 97 of 100 simulated samples, and that of the best age in 93 to 99. What 5 failures can
// say is little, and the width of the intervals says so: of the best ages four in ten then have no upper end, which means that
// running to failure cannot be ruled out yet; with 12 failures one in ten (shape 2.5, a failure five times as dear).
//
//     const WearAnswer answer = wearOf({"Cushion brush", lives, {40, 200}, 3'000});
//     if (answer.moreNeeded > 0) say(answer.moreNeeded);
#pragma once

#include "core/service/age_replacement.h"
#include "core/statistics/rank_regression.h"

#include <QString>

#include <optional>

namespace laneward {

inline constexpr int leastFailures = 5;  ///< before a fit is shown

struct WearQuestion {
    QString item;
    std::vector<Life> lives;
    ReplacementCosts costs;
    std::optional<double> ageNow;  ///< the interval that is set now, above 0
};

struct WearAnswer {
    int parts = 0;
    int failures = 0;
    int moreNeeded = 0;             ///< failures, before a fit is shown
    std::vector<PlotPoint> points;  ///< of the failures, to be drawn beside the fit
    std::optional<WeibullFit> fit;  ///< none: too few failures, or a fault among the findings
    std::optional<AgeCosts> costs;  ///< with the law that was fitted: the curve to draw
    std::optional<BestAge> best;    ///< likewise
    Interval bestInterval;          ///< 95 % for the best age, by the profile; high is infinite when 'never' is within it
    std::optional<double> costNow;  ///< per unit of age at ageNow
    /// "wear.too-few" (failures, and how many more), "wear.never" (it does not wear), "wear.no-gain" (a failure costs no more
    /// than a planned replacement), "wear.unsure" (bestInterval has no upper end); faults "life.…", "replacement.costs",
    /// "wear.age-now".
    std::vector<Finding> findings;
};

WearAnswer wearOf(const WearQuestion& question);

}  // namespace laneward
