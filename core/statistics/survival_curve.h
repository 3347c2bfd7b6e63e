// The share that lives on at each age, without assuming any law: the product-limit estimate (Kaplan and Meier 1958), with
// standard errors after Greenwood (1926), intervals on the logarithm of the survival and the median's interval read off their
// curves (Brookmeyer and Crowley 1982), as survfit of the R package survival 3.5 gives by default.
//
//     const Result<SurvivalCurve> curve = survivalCurve(lives);
//     if (curve && curve->median.estimate) say(*curve->median.estimate);
#pragma once

#include "core/statistics/life_data.h"

#include <optional>

namespace laneward {

/// One age at which lives ended or were last seen. A life that was last seen at an age at which others failed outlived them.
struct SurvivalStep {
    double age = 0;
    int atRisk = 0;  ///< had reached this age
    int failed = 0;
    int leftAlive = 0;                ///< last seen at this age
    double survival = 1;              ///< P(life > age)
    double standardError = 0;         ///< of the survival, by Greenwood
    std::optional<double> low, high;  ///< 95 %, at most 1; none once nobody survives
};

/// Of the median life. None: the curve, or the limit, does not come down to one half.
struct MedianLife {
    std::optional<double> estimate;
    std::optional<double> low, high;  ///< 95 %
};

struct SurvivalCurve {
    std::vector<SurvivalStep> steps;  ///< by age
    MedianLife median;

    double survivalAt(double age) const;  ///< 1 before the first step
};

/// Error Invalid "life.age" as fitWeibull. No lives give no steps.
Result<SurvivalCurve> survivalCurve(std::span<const Life> lives);

}  // namespace laneward
