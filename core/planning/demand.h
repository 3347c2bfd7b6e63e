// Demands: what an occurrence asks of one lane at the start of play, and the gaps between plays in which it can be met.
#pragma once

#include "core/calendar/occurrences.h"
#include "core/planning/state.h"

namespace laneward {

struct Demand {
    size_t occurrence = 0;  ///< index into Occupancy::occurrences
    int lane = 0;
    DemandKind kind = DemandKind::AsItIs;
    std::optional<PatternId> pattern;
    Treatment least = Treatment::CleanAndCondition;
    Seconds longestAge;
    Seconds longestPlay;
    Instant playBegins;  ///< stripped: end of the centre's day
    Instant due;         ///< playBegins - settle: the latest end that is still met
    Instant target;      ///< due - reserve: the latest end that is not tight
};

/// Time between two plays on one lane, in which at most one treatment is useful.
struct Gap {
    int lane = 0;
    Span time;                     ///< from the moment the lane was cleared to the next start of play (or the range's end)
    Seconds playBefore;            ///< length of booked play that ended it; 0 at the range's begin
    std::optional<size_t> demand;  ///< index of what is asked at its end: by a start of play, or by a day that leaves it stripped
};

struct DemandSet {
    std::vector<Demand> demands;         ///< by playBegins, lane
    std::vector<std::vector<Gap>> gaps;  ///< by lane number - 1, in order of time
};

/// Demands and gaps of `occupancy` over `range`, from `now` on. In a conflict the occurrence that began first counts; the other's
/// demands on those lanes are left out here and stay listed as conflicts.
DemandSet demandsOf(const State& state, const Occupancy& occupancy, Instant now, const DateRange& range);

/// The state of a lane as the recursion over gaps sees it.
struct LaneCondition {
    bool treated = false;  ///< false = nothing is known
    Treatment last = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;
    Instant end;
    Seconds playedSince;
};

/// Whether a lane in `condition` satisfies `demand` at its start of play (met or late, not unmet).
bool satisfies(const LaneCondition& condition, const Demand& demand);

}  // namespace laneward
