// What it would cost to move a job: its whole outing shifted as it is, all else as planned, judged by the same checks and the
// same objective as any plan.
//
//     for (const JobMove& move : movesOf(state, plan, job)) ...   // 15 min earlier, 15 min later, later by its slack
//
// Nothing is searched: what moves is the machine's whole trip, because its lanes, steps and person move together. Limits: effects
// are looked for on the job's day and the six days behind it, within the plan's range. Not part of plan(): asked for the jobs
// that somebody looks at.
#pragma once

#include "core/planning/plan.h"

namespace laneward {

inline constexpr Seconds moveStep = minutes(15);

struct JobMove {
    Seconds by;                ///< negative = earlier
    Finding what;              ///< "job.earlier", "job.later", "job.not-earlier", "job.not-later"
    bool possible = false;     ///< breaks no hard constraint that holds now
    Objective change;          ///< after - before; of no meaning when impossible
    std::vector<Finding> why;  ///< possible: "job.move-…", costs before gains; else "job.blocked-by-…"
};

/// `state` is what `plan` was made from and `job` one of its jobs. Empty for a job whose outing has begun or is over.
std::vector<JobMove> movesOf(const State& state, const Plan& plan, const Job& job);

/// The same for one shift of any length.
std::optional<JobMove> moveOf(const State& state, const Plan& plan, const Job& job, Seconds by);

}  // namespace laneward
