// Stretch after stretch, with what is known from before: plan() and 'what if' (core/season) are made of this.
#pragma once

#include "core/planning/plan_memo.h"
#include "core/planning/stretch.h"

#include <unordered_map>

namespace laneward {

/// What is known of one kind of centre stays apart from what is known of another.
struct PlanMemo::Data {
    struct Context {
        Centre centre;  ///< without what is dated: outages, days off
        std::vector<Pattern> patterns;
        std::vector<MachineLimits> limits;
        friend bool operator==(const Context&, const Context&) = default;
    };
    using Stretches = std::unordered_map<std::string, std::shared_ptr<const planning::StretchPlan>>;

    Keeps keeps = Keeps::Everything;
    planning::KnownDays days;
    std::vector<Context> contexts;
    Stretches stretches;  ///< by index of the context, nodes of a day, and key
};

namespace planning {

using StretchPlanPtr = std::shared_ptr<const StretchPlan>;

/// Occurrences in order of time, of which parts are wanted.
class OccupancyParts {
public:
    explicit OccupancyParts(const Occupancy& all);
    /// What is played or closed in `span`, with the conflicts in it.
    Occupancy within(const Span& span) const;

private:
    const Occupancy& m_all;
    Seconds m_longest;
};

/// A memo that stands: what was found with its nodes is taken, whatever is spent now.
struct Standing {
    const PlanMemo::Data* memo = nullptr;
    std::int64_t nodesPerDay = 0;
};

class StretchPlanner {
public:
    StretchPlanner(const PlanTask& task, PlanMemo::Data& memo, const Standing& standing = {});

    /// Days whose occurrences matter for the stretch: those before it as far back as a treatment can count as fresh or recent.
    DateRange seen(const Stretch& stretch) const;
    Span spanSeen(const Stretch& stretch) const;
    StretchPlanPtr plan(const Stretch& stretch, const Carried& before, Occupancy occupancy);

private:
    StretchPlanPtr known(const std::string& key, const Stretch& stretch) const;

    const PlanTask& m_task;
    PlanMemo::Data& m_memo;
    Standing m_standing;
    std::int64_t m_nodesPerDay;
    std::string m_name;          ///< of context and nodes in the memo
    std::string m_standingName;  ///< empty = nothing stands
    DaySolver m_solver;
};

/// Days before a day whose play still matters on it.
int lookBack(const std::vector<Series>& series);
std::int64_t nodesPerDay(std::int64_t nodeLimit, const DateRange& range);

/// A whole range, stretch by stretch.
struct PlannedRange {
    Occupancy occupancy;
    std::vector<Stretch> stretches;
    std::vector<Carried> before;  ///< each stretch
    std::vector<StretchPlanPtr> plans;
};

PlannedRange plannedRange(const PlanTask& task, PlanMemo::Data& memo, const Standing& standing = {});
/// As one plan, with remedies.
Plan wholePlan(const PlanTask& task, PlannedRange planned, PlanMemo& memo);

}  // namespace planning
}  // namespace laneward
