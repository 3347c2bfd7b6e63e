// A long range is planned in stretches: seven days at a time, seeing seven days beyond them, each from the condition in which
// the one before leaves lanes and machines. So planning grows with the length of the range and no faster, a change touches the
// stretches around it alone, and weeks that are alike are planned once. A range of up to fourteen days is one stretch. A
// treatment that would only pay for itself more than seven days behind its stretch is not seen.
#pragma once

#include "core/planning/known_days.h"
#include "core/planning/plan.h"

#include <memory>

namespace laneward::planning {

struct Stretch {
    DateRange days;  ///< that are planned
    QDate sight;     ///< the last day whose demands are seen
    friend bool operator==(const Stretch&, const Stretch&) = default;
};

std::vector<Stretch> stretchesOf(const DateRange& range);

/// What goes over from one stretch to the next.
struct Carried {
    std::vector<LaneTreatment> lanes;    ///< the last treatment of each lane that has one, by lane
    std::vector<std::int64_t> dutyLeft;  ///< by machine, in order of ids
    std::string next;                    ///< the next day's problem, where nothing of it is better done the evening before
    friend bool operator==(const Carried&, const Carried&) = default;
};

struct StretchPlan {
    DateRange range;
    Instant begins;
    std::vector<Job> jobs;  ///< committed and proposed, in order
    std::vector<Shortfall> unmet;
    std::vector<DayPlan> days;
    Carried after;
    bool stopped = false;
};

/// The same plan for a stretch that begins on another date and moment.
StretchPlan shiftedTo(const StretchPlan& plan, QDate first, Instant begins);

/// What a stretch is planned from.
struct StretchTask {
    const State& state;  ///< series are not looked at
    const Stretch& stretch;
    const Carried& before;
    Occupancy occupancy;  ///< what overlaps the days that are seen
    Instant now;
};

/// Everything that planning the stretch depends on but nodes, with times relative to its begin; empty when the stretch is one of
/// its kind: now lies in it, or committed jobs do.
std::string keyOf(const StretchTask& task);

/// `solver` bounds what is spent on a day.
StretchPlan planStretch(const StretchTask& task, const DaySolver& solver);

/// Conditions when `range` begins.
Carried carriedInto(const State& state, const DateRange& range);

/// Committed jobs that have to do with days of `range`.
std::vector<Job> committedAround(const State& state, const DateRange& range);

}  // namespace laneward::planning
