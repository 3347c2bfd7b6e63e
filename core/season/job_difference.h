// The difference of two lists of jobs, each in order of time: difference() in season.h without the plans' objectives.
#pragma once

#include "core/season/season.h"

namespace laneward {

PlanDifference differenceOfJobs(std::vector<const Job*> before, std::vector<const Job*> after);

}  // namespace laneward
