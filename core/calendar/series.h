// Series of events as RFC 5545 sees them, with what each asks of the lanes.
//
// Times are wall time in the series' own zone; durations are exact. The recurrence rule is kept as RFC 5545 text, already
// validated by parseRule() (recurrence.h): daily or slower only.
#pragma once

#include "core/base/ids.h"
#include "core/base/zone.h"
#include "core/centre/lane_set.h"
#include "core/centre/treatment.h"

#include <optional>
#include <vector>

namespace laneward {

enum class EventKind { League, Practice, School, Tournament, OpenPlay, Party, Closure, Other };

enum class DemandKind {
    Fresh,     ///< treated after the last play on the lane, no longer ago than longestAge
    Recent,    ///< at most longestAge old and at most longestPlay played since
    Pattern,   ///< the last treatment has the pattern, whatever its age
    Stripped,  ///< clean only after the last play of the day
    AsItIs,
};

/// What one event asks of some of its lanes.
struct SurfaceDemand {
    LaneSet lanes;
    DemandKind kind = DemandKind::AsItIs;
    std::optional<PatternId> pattern;  ///< none = any pattern
    Treatment least = Treatment::CleanAndCondition;
    Seconds longestAge = hours(12);  ///< fresh and recent
    Seconds longestPlay = hours(3);  ///< recent
    friend bool operator==(const SurfaceDemand&, const SurfaceDemand&) = default;
};

/// One dated instance that differs from its series (RECURRENCE-ID).
struct Override {
    LocalTime original;  ///< the start that the rule gives
    bool cancelled = false;
    std::optional<LocalTime> start;  ///< moved to
    std::optional<Seconds> duration;
    std::optional<QString> title;
    std::optional<LaneSet> lanes;  ///< other lanes; demands then apply to those of them they name, or to all if one
    friend bool operator==(const Override&, const Override&) = default;
};

struct Series {
    SeriesId id;
    QString uid;  ///< iCalendar UID; equals id for events made here
    QString title;
    EventKind kind = EventKind::Other;
    QByteArray zone = "UTC";
    LocalTime start;
    Seconds duration = hours(2);
    QString rule;                          ///< RRULE value; empty = once
    std::vector<LocalTime> extraDates;     ///< RDATE
    std::vector<LocalTime> excludedDates;  ///< EXDATE
    std::vector<Override> overrides;
    LaneSet lanes;
    std::vector<SurfaceDemand> demands;  ///< lanes of the event that none names are 'as it is'
    Seconds settle = minutes(15);        ///< between the end of a treatment and play
    Seconds clearing = minutes(10);      ///< after the booked end
    bool firstPairTwice = false;         ///< work the outing's first pair twice
    bool yieldsToClosure = true;         ///< suppressed while a closure lasts
    bool noStaff = false;                ///< closures only: nobody is there to treat lanes
    bool cancelled = false;              ///< STATUS:CANCELLED
    int players = 0;
    QString note;
    std::int64_t version = 0;
    friend bool operator==(const Series&, const Series&) = default;
};

/// Empty title, no lanes (closures may have none), lanes beyond `laneCount`, no length, unreadable rule, unknown zone,
/// demands on lanes that the event does not have. Empty when sound.
std::vector<Finding> faultsOf(const Series& series, int laneCount);

/// The same series for a new season: starts at the first date not before `firstDate` that keeps its weekday, runs for as
/// many weeks as before, without overrides, and with `holidays` excluded. The copy has the given id.
Series copiedToSeason(const Series& series, QDate firstDate, const std::vector<QDate>& holidays, const SeriesId& id);

}  // namespace laneward
