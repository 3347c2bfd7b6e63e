#include "core/planning/run_log.h"

#include <algorithm>
#include <map>
#include <set>

namespace laneward {

std::vector<RunLog> standing(std::vector<RunLog> logs) {
    // A correction of a correction takes both earlier ones away: each names only the one before it.
    std::set<OperationId> corrected;
    for (const RunLog& log : logs) {
        if (log.corrects) corrected.insert(*log.corrects);
    }
    std::erase_if(logs, [&](const RunLog& log) { return log.result == RunResult::Void || corrected.contains(log.id); });
    std::sort(logs.begin(), logs.end(),
              [](const RunLog& a, const RunLog& b) { return a.time.end != b.time.end ? a.time.end < b.time.end : a.id < b.id; });
    return logs;
}

std::vector<LaneTreatment> lastTreatments(const std::vector<RunLog>& standingLogs, Instant until) {
    struct Done {
        LaneTime lane;
        const RunLog* log;
    };
    std::vector<Done> done;
    for (const RunLog& log : standingLogs) {
        for (const LaneTime& lane : log.lanes) {
            if (lane.time.end <= until) done.push_back({lane, &log});
        }
    }
    std::stable_sort(done.begin(), done.end(), [](const Done& a, const Done& b) { return a.lane.time.end < b.lane.time.end; });
    std::map<int, LaneTreatment> last;
    for (const Done& d : done) {
        LaneTreatment& lane = last[d.lane.lane];
        const bool keepsPattern = d.log->treatment == Treatment::ConditionOnly && lane.pattern;
        const std::optional<PatternId> laid =
            cleans(d.log->treatment) && !conditions(d.log->treatment) ? std::nullopt : d.log->pattern;
        lane = {d.lane.lane, d.log->treatment, keepsPattern ? lane.pattern : laid, d.lane.time.end};
    }
    std::vector<LaneTreatment> treatments;
    for (auto& [lane, treatment] : last)
        treatments.push_back(std::move(treatment));
    return treatments;
}

}  // namespace laneward
