// What keeping an edited event would change on the next day on which it takes place: shown before it is kept.
#pragma once

#include "core/documents/wording.h"
#include "core/season/event_costs.h"

namespace laneward {

struct Consequence {
    QString words;
    bool bad = false;
};

/// The first occurrence of `series` from `today` on, within a year; nothing when there is none.
std::optional<LocalTime> nextStart(const Series& series, QDate today);
/// The next `count` starts from `today` on.
std::vector<LocalTime> nextStarts(const Series& series, QDate today, size_t count);

struct EventPreview {
    std::vector<Consequence> consequences;
    std::optional<QDate> day;       ///< that they and the cost are of
    std::optional<EventCost> cost;  ///< none when no job of that day is needed by it
};

/// `before` is what stands there now, nothing for a new event. Plans that one day twice.
EventPreview previewOf(const SeasonState& season, const std::optional<Series>& before, const Series& after, Instant now,
                       const Speech& speech);

}  // namespace laneward
