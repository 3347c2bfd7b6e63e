// The work that machines have done, one row for each run that stands: meters are summed from it without reading runs. It follows
// from the runs, and whoever appends one keeps it.
#pragma once

#include "core/storage/rows.h"

namespace laneward {

/// After the run itself was written: what it did counts, what it corrects no longer does.
Outcome takeWork(Database& database, const CentreId& centre, const RunLog& run);
/// From all runs that stand.
Outcome rebuildWork(Database& database, const CentreId& centre);

/// Before `until`, summed from one reading of a machine's counters to the next.
Result<std::vector<MachineWork>> workBefore(Database& database, const CentreId& centre, const std::vector<MeterReading>& counters,
                                            Instant until);

/// Of each run that stands and ended within `time`, by end.
Result<std::vector<MachineWork>> workWithin(Database& database, const CentreId& centre, const Span& time);

/// Runs whose work is missing, and work of runs that do not stand ("check.run-work").
inline constexpr const char* wrongWork =
    "SELECT id FROM (SELECT r.id AS id, CASE WHEN r.result <> 'void' AND r.machine IS NOT NULL AND NOT EXISTS (SELECT 1 FROM "
    "runs c "
    "WHERE c.centre_id = r.centre_id AND c.corrects = r.id) THEN 1 ELSE 0 END AS stands, CASE WHEN EXISTS (SELECT 1 FROM "
    "run_work w "
    "WHERE w.centre_id = r.centre_id AND w.run_id = r.id AND w.ends = r.ends AND w.machine = r.machine) THEN 1 ELSE 0 END AS "
    "counts "
    "FROM runs r) v WHERE stands <> counts";

}  // namespace laneward
