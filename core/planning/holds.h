// The demand table as one rule, for any types that name a condition and a demand by the same fields: the public ones, and the
// compact ones of the recursion, which would be slow with texts as ids.
#pragma once

#include "core/planning/demand.h"

namespace laneward::planning {

template <class Condition, class Asked>
bool holds(const Condition& condition, const Asked& demand) {
    if (demand.kind == DemandKind::AsItIs) return true;
    if (!condition.treated || condition.end > demand.playBegins) return false;
    if (demand.kind == DemandKind::Stripped) return condition.last == Treatment::CleanOnly && condition.playedSince == Seconds{0};
    // Any pattern will do, but none at all only where no more than cleaning was asked.
    const bool bare = !condition.pattern && demand.least != Treatment::CleanOnly;
    if (demand.pattern ? condition.pattern != demand.pattern : bare) return false;
    if (demand.kind == DemandKind::Pattern) return true;
    if (!isAtLeast(condition.last, demand.least) || demand.playBegins - condition.end > demand.longestAge) return false;
    return condition.playedSince <= (demand.kind == DemandKind::Fresh ? Seconds{0} : demand.longestPlay);
}

}  // namespace laneward::planning
