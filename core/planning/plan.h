// From events to jobs: one pure function. The same input gives the same plan, byte for byte.
//
//     Plan p = plan(state, now, {today, today.addDays(6)}, defaultNodeLimit);
//
// `nodeLimit` bounds the search by nodes, never by time; `cancelled` may stop it early (the plan then says so by its gap).
// Ties are told apart by the smallest (start, machine, first lane). Times are whole seconds. Ranges of more than fourteen days
// are planned in stretches of seven, each with a view of the seven days behind it (stretch.h); plan_memo.h makes it quick again.
#pragma once

#include "core/planning/demand.h"
#include "core/planning/job.h"
#include "core/planning/state.h"

#include <array>
#include <functional>

namespace laneward {

inline constexpr std::int64_t defaultNodeLimit = 200'000;
/// The limit is for so many days at the most: in a longer range most weeks are like others, and a day is solved once.
inline constexpr int nodesFor = 14;

/// Compared in this order, smaller is better; keys as in the JSON.
struct Objective {
    std::int64_t unmet = 0;
    std::int64_t late_s = 0;
    std::int64_t treatments = 0;
    std::int64_t overtime_s = 0;
    std::int64_t tight_s = 0;
    std::int64_t outings = 0;
    std::int64_t changes = 0;
    std::int64_t lanes_crossed = 0;
    std::int64_t freshness_s = 0;
    friend auto operator<=>(const Objective&, const Objective&) = default;
    friend Objective operator+(const Objective& a, const Objective& b);
};

/// A change that would meet a demand, with its cost; verified by planning it where `verified` says so.
struct Remedy {
    Finding what;  ///< "remedy.overtime", "remedy.second-machine", "remedy.second-person", "remedy.shorter-treatment",
                   ///< "remedy.fewer-lanes", "remedy.move-event"
    Seconds by;    ///< overtime, or how far the event moves
    bool verified = false;
    friend bool operator==(const Remedy&, const Remedy&) = default;
};

/// Demands of one occurrence that are unmet or late.
struct Shortfall {
    SeriesId series;
    LocalTime original;
    QString title;
    Instant playBegins;
    LaneSet lanes;
    DemandKind demand = DemandKind::Fresh;
    bool unmet = true;  ///< false = late: ends in the settle time
    Seconds missing;    ///< how much earlier it would have to end, or how much time is missing
    std::vector<Finding> reasons;
    std::vector<Remedy> remedies;
    friend bool operator==(const Shortfall&, const Shortfall&) = default;
};

struct Outing {
    MachineId machine;
    int number = 0;
    Span time;  ///< leaving the bay to being back
    std::vector<JobId> jobs;
    friend bool operator==(const Outing&, const Outing&) = default;
};

struct DayPlan {
    QDate date;
    Objective objective;
    bool proven = false;
    Objective bound;  ///< nothing can be better than this
    int size = 0;     ///< maximal runs of adjacent lanes with equal demands and gaps
    std::vector<Outing> outings;
    friend bool operator==(const DayPlan&, const DayPlan&) = default;
};

struct Plan {
    DateRange range;
    Instant now;
    std::vector<Job> jobs;         ///< committed and proposed, by (start, machine, first lane)
    std::vector<Shortfall> unmet;  ///< unmet and late, by start of play
    std::vector<DayPlan> days;
    std::vector<Finding> findings;  ///< conflicts, unknown zones, machines without people …
    Occupancy occupancy;            ///< what it was made from, for those who show it

    Objective objective() const;  ///< sum over the days
    friend bool operator==(const Plan&, const Plan&) = default;
};

using Cancelled = std::function<bool()>;

Plan plan(const State& state, Instant now, const DateRange& range, std::int64_t nodeLimit = defaultNodeLimit,
          const Cancelled& cancelled = {});

/// The objective of given jobs, computed from nothing but the demands: no trust in the plan's own numbers.
Objective objectiveOf(const State& state, const Plan& plan, QDate date);

/// Every hard constraint that `plan` breaks: lanes or pair partners in play, a machine or person in two places, barred or
/// out of service, tanks, waste, pack or duty overrun, outside shifts and allowance. Empty when valid.
std::vector<Finding> violationsOf(const State& state, const Plan& plan);

}  // namespace laneward
