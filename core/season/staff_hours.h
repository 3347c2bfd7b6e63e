// Staff hours: how long people are bound to lane care, day by day and week by week, from a plan.
//
// An attended machine binds one person from the moment it is readied until it is back. Time outside every shift's paid time is
// overtime. A machine that works alone binds nobody. A plan has no outings of days that are over: there the runs count that were
// recorded, from the begin of each to its end, as far as the open window reaches.
#pragma once

#include "core/season/season.h"

namespace laneward {

struct StaffDay {
    QDate date;
    Seconds bound;  ///< overtime included
    Seconds overtime;
    int outings = 0;
    std::optional<Instant> first;  ///< an outing begins
    std::optional<Instant> last;   ///< an outing ends
    friend bool operator==(const StaffDay&, const StaffDay&) = default;
};

/// Weeks of ISO 8601, cut where the range begins and ends.
struct StaffWeek {
    QDate first;
    int number = 0;
    Seconds bound;
    Seconds overtime;
    std::vector<StaffDay> days;
    friend bool operator==(const StaffWeek&, const StaffWeek&) = default;
};

std::vector<StaffWeek> staffHours(const Centre& centre, const Plan& plan);
/// With the runs of days before the plan's own today.
std::vector<StaffWeek> staffHours(const SeasonState& season, const Plan& plan);

}  // namespace laneward
