// What really comes of given jobs, demand by demand and outing by outing. Looks at jobs alone and trusts no number that planning
// wrote beside them, so that it can judge a plan.
#pragma once

#include "core/planning/plan.h"
#include "core/planning/plays.h"

namespace laneward::planning {

enum class Met { Unmet, Late, Tight, Well };

struct DemandOutcome {
    Met met = Met::Well;
    Seconds late;       ///< end after due
    Seconds tight;      ///< end after target, by due
    Seconds freshness;  ///< from the treatment to play; 0 where it does not matter
    LaneCondition condition;
};

/// One outcome for each demand. Committed jobs of `state` that `jobs` does not name count as well.
std::vector<DemandOutcome> outcomesOf(const State& state, const Occupancy& occupancy, const DemandSet& demands,
                                      const std::vector<Job>& jobs);

/// The same for demands up to `until`, with plays that are known already.
std::vector<DemandOutcome> outcomesUntil(Instant until, const State& state, const std::vector<LanePlays>& plays,
                                         const DemandSet& demands, const std::vector<Job>& jobs);

/// Jobs of one machine that make one outing.
struct JobOuting {
    const Machine* machine = nullptr;  ///< null when the centre has none of that id
    QDate date;
    int number = 0;
    std::vector<const Job*> jobs;  ///< by begin
    Span time;                     ///< first step to being back
    Span attended;                 ///< without charging; empty when nobody is bound
    bool over = false;             ///< all of it is done or cut short
};

std::vector<JobOuting> outingsOf(const State& state, const std::vector<Job>& jobs);

/// The least overtime with which the shifts can attend all of `outings`, found exactly; nothing when they cannot.
std::optional<Seconds> leastOvertime(const std::vector<Span>& outings, const std::vector<ShiftSpan>& shifts);

/// The index of the day of `date` in the plan's range.
int dayIndex(const DateRange& range, QDate date);

}  // namespace laneward::planning
