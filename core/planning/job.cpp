#include "core/planning/job.h"

namespace laneward {

LaneSet Job::laneSet() const {
    LaneSet set;
    for (const LaneTime& lane : lanes)
        set.insert(lane.lane);
    return set;
}

}  // namespace laneward
