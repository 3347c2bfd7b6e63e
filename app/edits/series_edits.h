// What a gesture in the calendar makes of a series: pure functions from a series to the series after it.
//
//     Series later = movedOnce(series, {original, {friday, QTime(19, 0)}, hours(3)});
#pragma once

#include "core/calendar/series.h"

namespace laneward {

struct Move {
    LocalTime original;  ///< the instance, by the start that its rule gives
    LocalTime start;     ///< where it goes, in the series' zone
    Seconds duration;
};

bool isRecurring(const Series& series);
/// Where an instance stands now, its override applied.
LocalTime startOf(const Series& series, const LocalTime& original);
Seconds durationOf(const Series& series, const LocalTime& original);

/// Only this instance; a series without recurrence moves itself.
Series movedOnce(const Series& series, const Move& move);
/// Every instance by as much as this one; nothing when the rule cannot follow (a daily or custom rule to another day, a weekday
/// that the series has already).
std::optional<Series> movedWhole(const Series& series, const Move& move);
/// This instance does not take place.
Series cancelledOnce(const Series& series, const LocalTime& original);
/// Takes place after all.
Series restoredOnce(const Series& series, const LocalTime& original);

}  // namespace laneward
