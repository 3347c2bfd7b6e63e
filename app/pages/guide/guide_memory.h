// What was ticked on an evening, kept on this PC, so that it is still ticked when the window opens again the same evening.
#pragma once

#include "core/documents/guide.h"

namespace laneward {

/// Of one day; those of another day are forgotten with the first tick of a new one.
std::vector<GuideTick> keptTicks(const CentreId& centre, QDate day);
void keepTicks(const CentreId& centre, QDate day, const std::vector<GuideTick>& ticks);

}  // namespace laneward
