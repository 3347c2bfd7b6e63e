// Control charts: does a process that was steady in its baseline run still run the same?
//
// Values are plain numbers in one unit of the caller's; sigma is the standard deviation of a single value. A baseline is fixed
// before the values are judged; every chart lists the indices of the values that signal.
//
// Sources: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2 (individuals and moving range 6.3.2.2, CUSUM 6.3.2.3, EWMA
// 6.3.2.4, subgroups 6.3.2.1).
//
//     const Baseline base = baselineOf(firstTwenty);
//     for (size_t i : ewmaChart(values, base).signals) say(values[i]);
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace laneward {

/// What is taken as steady: the level and the spread of single values.
struct Baseline {
    double mean = 0;
    double sigma = 0;
};

struct ControlLimits {
    double lower = 0;
    double centre = 0;
    double upper = 0;
};

/// Factors for subgroups of n values, in the notation of the handbook, 6.3.2.1.
struct ChartConstants {
    double A2, A3, c4, B3, B4, B5, B6, d2, d3, D3, D4;
};

inline constexpr int smallestSubgroup = 2;
inline constexpr int largestSubgroup = 20;

/// Computed: c4 in closed form, d2 and d3 by integration over the normal distribution (error below 1e-9). n = 2..20.
ChartConstants chartConstants(int n);

/// |x(i) - x(i-1)|, one fewer than the values.
std::vector<double> movingRanges(std::span<const double> values);
/// Mean, and mean moving range over d2(2) = 2/sqrt(pi). One value or none has sigma 0.
Baseline baselineOf(std::span<const double> values);

/// Single values within mean +- 3 sigma, and their moving ranges below D4(2) times the mean range that the baseline implies.
struct IndividualsChart {
    ControlLimits limits;
    ControlLimits rangeLimits;
    std::vector<double> ranges;        ///< of value i and the one before, one fewer than the values
    std::vector<size_t> signals;       ///< values beyond the limits
    std::vector<size_t> rangeSignals;  ///< later value of each pair whose range is beyond its limit
};
IndividualsChart individualsChart(std::span<const double> values, const Baseline& baseline);

/// How an EWMA weighs: z = weight x + (1 - weight) z, from the baseline's mean on; limits at mean +- width sigma(z).
struct EwmaRule {
    double weight = 0.2;   ///< 0 < weight <= 1
    double width = 2.962;  ///< with weight 0.2 one false signal in 500 values (Lucas and Saccucci 1990)
    bool settled = false;  ///< limits of the steady state from the first value on; else those of each value, narrower at first
};
struct EwmaChart {
    std::vector<double> averages;
    std::vector<ControlLimits> limits;  ///< one a value
    std::vector<size_t> signals;
};
EwmaChart ewmaChart(std::span<const double> values, const Baseline& baseline, const EwmaRule& rule = {});

/// Slack and decision interval in sigmas. The default has one false signal in 370 values, as 3 sigma limits have.
struct CusumRule {
    double k = 0.5;
    double h = 4.773834;
};
struct CusumChart {
    std::vector<double> high;        ///< in the values' unit; signals above `limit`
    std::vector<double> low;         ///< the same downwards, counted positive
    std::vector<double> cumulative;  ///< plain running sum of x - mean
    double limit = 0;                ///< h sigma
    std::vector<size_t> highSignals;
    std::vector<size_t> lowSignals;
};
CusumChart cusumChart(std::span<const double> values, const Baseline& baseline, const CusumRule& rule = {});

/// Means and ranges of subgroups of equal size (2..20), limits from the baseline subgroups' mean range.
struct SubgroupChart {
    double sigma = 0;  ///< mean range / d2
    ControlLimits meanLimits;
    ControlLimits rangeLimits;
    std::vector<double> means;
    std::vector<double> ranges;
    std::vector<size_t> signals;       ///< means beyond their limits
    std::vector<size_t> rangeSignals;  ///< ranges beyond theirs
};
/// The first `baselineCount` (1 or more) groups set the limits; all are judged.
SubgroupChart subgroupChart(const std::vector<std::vector<double>>& groups, size_t baselineCount);

}  // namespace laneward
