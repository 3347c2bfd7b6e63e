#include "core/calendar/conflicts.h"

#include <algorithm>

namespace laneward {

void addConflicts(Occupancy& occupancy) {
    const std::vector<Occurrence>& all = occupancy.occurrences;
    std::vector<size_t> playing;
    for (size_t i = 0; i < all.size(); ++i) {
        if (all[i].kind == EventKind::Closure || all[i].lanes.isEmpty()) continue;
        std::erase_if(playing, [&](size_t j) { return all[j].cleared <= all[i].booked.begin; });
        for (size_t j : playing) {
            const LaneSet lanes = all[i].lanes & all[j].lanes;
            if (lanes.isEmpty()) continue;
            if (occupancy.conflicts.size() == size_t(limits::conflictsAtOnce)) {
                occupancy.findings.push_back(
                    {Severity::Warning, "calendar.conflicts-cut", all[i].title, {std::int64_t{limits::conflictsAtOnce}}});
                return;
            }
            occupancy.conflicts.push_back({j, i, lanes, {all[i].booked.begin, std::min(all[i].cleared, all[j].cleared)}});
        }
        playing.push_back(i);
    }
}

}  // namespace laneward
