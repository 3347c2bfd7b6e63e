// From series to dated occurrences in instants, with conflicts shown and closures applied.
#pragma once

#include "core/calendar/series.h"
#include "core/centre/centre.h"

namespace laneward {

struct Occurrence {
    SeriesId series;
    LocalTime original;  ///< start that the rule gives: with `series` the identity of this instance
    QString title;
    EventKind kind = EventKind::Other;
    Span booked;      ///< start (includes warm-up) to the booked end
    Instant cleared;  ///< booked end plus the clearing time (none after a closure): lanes are free from here
    LaneSet lanes;    ///< lanes of the centre only; a closure that names none has them all
    std::vector<SurfaceDemand> demands;
    Seconds settle;
    bool firstPairTwice = false;
    bool noStaff = false;
    int players = 0;

    Span play() const { return {booked.begin, cleared}; }
    friend bool operator==(const Occurrence&, const Occurrence&) = default;
};

/// Two occurrences that claim a lane at one time; `first` began first.
struct Conflict {
    size_t first = 0;  ///< indexes into Occupancy::occurrences
    size_t second = 0;
    LaneSet lanes;
    Span overlap;
    friend bool operator==(const Conflict&, const Conflict&) = default;
};

struct Occupancy {
    std::vector<Occurrence> occurrences;  ///< by start, then lowest lane, then series id; closures included
    std::vector<Conflict> conflicts;
    std::vector<Finding> findings;  ///< unknown zone read as the centre's, expansion cut, suppressed by a closure
    friend bool operator==(const Occupancy&, const Occupancy&) = default;
};

/// Occurrences whose play overlaps the days of `range`. Series that cannot be expanded are listed in `findings`.
/// Ranges longer than limits::expansionYears are cut, with a finding. The order of `series` does not matter.
Occupancy occupancyOf(const std::vector<Series>& series, const Centre& centre, const DateRange& range);

}  // namespace laneward
