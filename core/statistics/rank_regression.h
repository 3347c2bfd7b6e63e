// Points of a Weibull plot, and straight lines through them: what is drawn beside a fit, and the older way of fitting.
//
// Each failure gets an adjusted rank among all lives, censored ones included (Johnson 1964), and from it a median rank by
// Benard's approximation (rank - 0.3) / (lives + 0.4). On the plot x = ln(age) and y = ln(-ln(1 - median rank)) a Weibull law is
// the line y = shape (x - ln scale). Regression of x on y and of y on x give different lines, and maximum likelihood
// (life_data.h) a third: name the method. (Abernethy and others 1983, Weibull Analysis Handbook, AFWAL-TR-83-2079, from memory.)
//
//     const std::vector<PlotPoint> points = plotPoints(lives);
#pragma once

#include "core/statistics/life_data.h"

namespace laneward {

struct PlotPoint {
    double age = 0;
    double adjustedRank = 0;
    double medianRank = 0;  ///< estimate of P(life <= age)
    friend bool operator==(const PlotPoint&, const PlotPoint&) = default;
};

/// Of every failure, by age; a life last seen at the age of a failure outlived it. Ages above 0 and finite.
std::vector<PlotPoint> plotPoints(std::span<const Life> lives);

enum class Regression {
    XOnY,  ///< least squares of ln(age), usual in reliability
    YOnX,  ///< least squares of the median rank's y
};
/// Errors as fitWeibull; "life.no-spread" also when all failures are at one age.
Result<Weibull> fitByRanks(std::span<const Life> lives, Regression regression);

}  // namespace laneward
