// Why a shifted outing cannot be carried out: violations as the constraint that stands in the way, told once.
#pragma once

#include "core/planning/outcomes.h"

namespace laneward::planning {

struct Shifted {
    const State& state;
    const Plan& plan;  ///< with the outing shifted
    QDate date;
    MachineId machine;
    int outing = 0;
    Seconds by;
};

/// `violations` are those that the shift adds; never empty when they are not.
std::vector<Finding> obstaclesOf(const Shifted& shifted, const std::vector<Finding>& violations);

}  // namespace laneward::planning
