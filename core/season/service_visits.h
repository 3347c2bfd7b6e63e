// Where service fits: the machine in its bay, somebody free, inside a shift. Internal to this room.
#pragma once

#include "core/season/service_outlook.h"

namespace laneward {

/// Time of a day in which `machine` (empty = none is needed) is idle and at least one person is free, by begin.
std::vector<Span> freeTime(const Centre& centre, const Plan& ahead, const MachineId& machine, QDate day);

/// The visits for what is due, and what found no room.
void placeVisits(ServiceOutlook& outlook, const ServiceQuestion& question, const ServiceRule& rule);

}  // namespace laneward
