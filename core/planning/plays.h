// Who plays on which lane when, and which lanes are out of service: the ground that demands and times stand on.
//
// Instants are whole seconds; lanes are indexes lane - 1. In a conflict the occurrence that began first counts; the other still
// blocks the lane, because nobody knows who will really play.
#pragma once

#include "core/calendar/occurrences.h"
#include "core/planning/state.h"

namespace laneward::planning {

struct Play {
    size_t occurrence = 0;
    Span booked;
    Instant cleared;
    bool counts = true;  ///< false: lost a conflict on this lane, so its demand is left out
    Instant reach = {};  ///< by when it and all plays before it are cleared
};

using LanePlays = std::vector<Play>;  ///< of one lane, by start

/// Plays of every lane. Closures are no play; neither is an event on a lane that is out of service when it begins.
std::vector<LanePlays> playsOf(const State& state, const Occupancy& occupancy);

/// Lanes of `occurrence` that are out of service at its start.
LaneSet outOfService(const Centre& centre, const Occurrence& occurrence);

/// The first play that is not cleared by `t`; all before it are.
LanePlays::const_iterator firstAfter(const LanePlays& plays, Instant t);
bool isPlayed(const LanePlays& plays, const Span& during);
/// Booked play in `during`; overlapping plays are counted once.
Seconds playedIn(const LanePlays& plays, Span during);

/// One treatment that is settled already: a committed job's on one lane.
struct FixedTreatment {
    Span time;
    Treatment treatment = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;
};

/// Committed treatments of every lane, by end.
std::vector<std::vector<FixedTreatment>> fixedTreatments(const State& state);

/// The begins of the days of `range` and the end of its last: days() + 1 instants.
std::vector<Instant> dayBounds(const Centre& centre, const DateRange& range);

}  // namespace laneward::planning
