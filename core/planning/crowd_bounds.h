// How late a crowd of treatments must be, from times alone, however they are ordered.
//
// Take any treatments, none of which may begin before its lane is free. The first k of them to end have ended no sooner than the
// first k of equal lanes on as many machines would, each lane as short as the shortest and the way to the next no longer than the
// shortest. Of all ways to pair these ends E(k) with the moments by which the treatments should have ended, that of both in
// ascending order, M(k), is late for the least in all (earliest due date first, for jobs of one length). So
//
//     sum of max(0, end - moment)  >=  sum over k of max(0, E(k) - M(k))
//
// This holds for every part of the crowd, and for parts that share no treatment the sums add up.
#pragma once

#include "core/planning/outing_bounds.h"

#include <span>
#include <vector>

namespace laneward::planning {

/// So many treatments that begin no earlier and should have ended by one moment.
struct Crowd {
    Sec earliest = 0;
    Sec moment = 0;
    int count = 1;
};

/// What can be worked at one time: the shortest lane of each machine, of as many machines as there are people for.
struct CrowdHands {
    static constexpr size_t most = 16;

    std::vector<Sec> lanes;  ///< the shortest first; none = nothing is said
    Sec next = 0;            ///< shortest way to another lane
};

CrowdHands crowdHands(const DayProblem& problem, std::span<const Loose> loose);

/// The same crowds in the order in which they are free and in that of their moments.
struct CrowdOrders {
    std::span<const Crowd> byEarliest;
    std::span<const Crowd> byMoment;
};

/// The least sum, in seconds, of what they end behind their moments: that of those free last, from whichever on it is most.
Sec leastLateness(const CrowdOrders& crowds, const CrowdHands& hands);

/// Late and tight seconds of those that can be placed in no other gap. Those that are tight hold where nothing is late.
struct LeastTrouble {
    Sec late = 0;
    Sec tight = 0;
};
LeastTrouble leastTrouble(const DayProblem& problem, std::span<const Loose> loose);

}  // namespace laneward::planning
