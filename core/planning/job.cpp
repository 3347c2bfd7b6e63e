#include "core/planning/job.h"

namespace laneward {

LaneSet Job::laneSet() const {
    LaneSet set;
    for (const LaneTime& lane : lanes)
        set.insert(lane.lane);
    return set;
}

bool isAhead(const Job& job) {
    return job.state == JobState::Proposed || job.state == JobState::Confirmed || job.state == JobState::UnderWay;
}

}  // namespace laneward
