// When a duty falls due: by what has been done since the last time, by what is ahead, and by the calendar, whichever comes first.
//
// What is ahead is known as a curve: for each day the work reached by its end, at three levels of certainty. A duty falls due
// early where much work comes, late where little does. All meters of a machine follow the same work, so the early day of a duty
// is the earliest of its triggers' early days, and so on. Without a last time a duty counts from the item's first reading: it is
// due when nobody knows better.
//
//     const DueRange due = dueOf(duty, last, {metersNow, &ahead, today});
//     if (due.isDue(today)) …
#pragma once

#include "core/service/service_record.h"

#include <array>

namespace laneward {

/// Levels of a due day: earlier than the first in one of twenty cases, later than the last likewise.
inline constexpr std::array<double, 3> dueLevels{0.05, 0.5, 0.95};

/// Work of one machine ahead of a day, in units of its meters.
struct WorkAhead {
    MachineId machine;
    QDate from;
    /// By meter (Lanes to Volume), then day: reached by its end when much, as expected, and when little comes. Never falling.
    std::array<std::vector<std::array<double, 3>>, 4> reached;
};

/// When a duty was last done; a failure that was put right counts as well.
struct LastDone {
    Instant at;
    QDate day;
    Meters meters;
};

struct DueRange {
    std::optional<QDate> early;      ///< due by that day at 5 %, …
    std::optional<QDate> likely;     ///< … 50 % …
    std::optional<QDate> late;       ///< … and 95 %; none = not within what is ahead
    bool neverDone = false;          ///< nobody has said when it was last done
    double used = 0;                 ///< share of the interval that is over, of the trigger that is furthest; above 1 = overdue
    MeterKind by = MeterKind::Days;  ///< that trigger
    std::int64_t left = 0;           ///< of it, in its unit; below 0 = over

    /// On that day or before, as expected.
    bool isDue(QDate day) const { return likely && *likely <= day; }
};

struct DueQuestion {
    Meters now;
    const WorkAhead* ahead = nullptr;  ///< of the item's machine; none for what belongs to no machine
    QDate today;
    int days = 366;  ///< how far calendar intervals are followed
};

DueRange dueOf(const Duty& duty, const std::optional<LastDone>& last, const DueQuestion& question);

/// Lanes that the machine may still treat before the duty is due, below 0 when that is past; none when it does not count lanes.
std::optional<std::int64_t> lanesLeft(const Duty& duty, const std::optional<LastDone>& last, const Meters& now);

}  // namespace laneward
