// What service knows of the past, out of the state of a centre: what machines have done, and when each duty was last done.
#pragma once

#include "core/season/season.h"
#include "core/service/due_dates.h"

#include <map>

namespace laneward {

/// What a run counts for: lanes with the first pair twice, one run, from its first lane to its last, what was used.
Meters metersOf(const RunLog& run);
/// The same of a job that is still to be done.
Meters metersOf(const Job& job);

/// All that machines have done: before the open window, and the runs that stand since.
std::vector<MachineWork> workOf(const SeasonState& season);
Meters metersNow(const SeasonState& season, const MachineId& machine, Instant now);

/// Of each duty that was ever done, by the record that stands; meters as counted_meters.h has them.
std::map<DutyId, LastDone> lastDone(const SeasonState& season);

}  // namespace laneward
