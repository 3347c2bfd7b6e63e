// The work ahead of a machine, as ranges: what is planned, and what has lately come besides or was planned and not done.
//
// Work besides the plan comes as a compound Poisson process X over t days: a rate r ~ Gamma(n + a, T + b) of runs a day, n of
// them seen in T days, each of a size S. With V = Var(r) and the third central moment w of r,
//     mean   t E[r] E[S]
//     var    t E[r] E[S^2] + t^2 E[S]^2 V + t^2 E[r]^2 Var(S) / (n + 1)
//     third  t E[r] E[S^3] + 3 t^2 E[S] E[S^2] V + t^3 E[S]^3 w
// (law of total cumulance; the last of the variance is that E[S] is known from n sizes only). What was planned and not done is
// another such process, taken off. Quantiles follow from the three by the expansion of Cornish and Fisher (1938; from memory),
// which is meant for sums that are not too skew: with few days and few runs a quantile is a little off, by less than one run.
#pragma once

#include "core/season/service_state.h"

namespace laneward {

/// Sizes are in lanes.
struct StrayWork {
    int events = 0;
    double days = 0;  ///< in which they were seen
    double size = 0;  ///< E[S], …
    double square = 0;
    double cube = 0;
};

/// What is believed before anything was seen; common practice, no source.
struct StrayPrior {
    double events = 0.5;  ///< a (Jeffreys' prior has this and no days) and …
    double days = 0.5;    ///< … b
    double size = 4;      ///< lanes, with …
    double weight = 0.5;  ///< … so much of a size that was seen
    double square = 1;    ///< E[S^2] over E[S]^2: 1 = always the same size, …
    double cube = 1;      ///< … and E[S^3] over E[S]^3
};
inline constexpr StrayPrior besidesPrior{0.5, 0.5, 4, 0.5, 1.5, 3};  // sizes as of a gamma law of shape 2
inline constexpr StrayPrior missedPrior{1, 25, 4, 0.5};  ///< what is planned is mostly done: one run in a month is not

StrayWork strayWork(const std::vector<std::int64_t>& sizes, double days, const StrayPrior& prior);

/// Days for which confirmed jobs are kept in memory: what is before has been run, and its logs say how.
inline constexpr int openJobDays = 7;

/// What a machine did besides the plan in the open window, and did not do of the jobs that are in memory.
struct StrayRates {
    StrayWork besides;
    StrayWork missed;
};
StrayRates strayRates(const SeasonState& season, const MachineId& machine, QDate today);

/// Lanes besides the plan over so many days at a level (0 < level < 1); below 0 when less than planned is done.
double strayQuantile(const StrayRates& rates, double days, double level);

/// Of the days from `today` on that the plan covers. Minutes and volume of work that nobody planned follow from its lanes.
WorkAhead workAhead(const SeasonState& season, const Plan& ahead, const MachineId& machine, QDate today);

}  // namespace laneward
