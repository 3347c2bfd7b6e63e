// What was really done. Run logs are appended and never changed; a mistake is corrected by a new one that names the old.
#pragma once

#include "core/planning/job.h"

namespace laneward {

enum class RunResult {
    AsPlanned,
    Changed,    ///< other lanes, machine or pattern than planned
    CutShort,   ///< stopped before its last lane
    Unplanned,  ///< a run without a job
    Void,       ///< never happened: only as a correction
};

struct RunLog {
    OperationId id;
    JobId job;  ///< empty = unplanned
    int planVersion = 0;
    std::optional<OperationId> corrects;  ///< replaces that earlier log
    MachineId machine;
    PersonId person;
    Span time;
    Treatment treatment = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;
    std::int64_t patternVersion = 0;  ///< the pattern's edition that was run; 0 = not known
    std::vector<LaneTime> lanes;      ///< really done, in order
    RunResult result = RunResult::AsPlanned;
    JobUse use;  ///< booked as used; from the plan unless stated otherwise
    QString note;
    Instant recordedAt;
    friend bool operator==(const RunLog&, const RunLog&) = default;
};

/// The last treatment of a lane.
struct LaneTreatment {
    int lane = 0;
    Treatment treatment = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;  ///< none = stripped
    Instant end;
    friend bool operator==(const LaneTreatment&, const LaneTreatment&) = default;
};

/// The logs that stand: without those that a later one corrects, and without Void. Order: by end, then id.
std::vector<RunLog> standing(std::vector<RunLog> logs);
/// The last treatment of each lane by `until`. Condition only keeps the lane's pattern.
std::vector<LaneTreatment> lastTreatments(const std::vector<RunLog>& standingLogs, Instant until);

}  // namespace laneward
