// A second checker of whole plans, written from the planning rules alone: plain loops over intervals, and no function of the
// planning room but its value types. What it finds is in plain words, for tests to print.
#pragma once

#include "core/planning/plan.h"

#include <QStringList>

namespace support {

/// Every hard constraint that `plan` breaks; empty when valid. Judges all its jobs as if they were still to be done.
QStringList faultsOf(const laneward::State& state, const laneward::Plan& plan);

}  // namespace support
