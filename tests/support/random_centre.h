// Random centres for planning: made by a fixed generator from a seed, small enough to check, odd enough to find faults.
#pragma once

#include "core/planning/state.h"

#include <random>

namespace support {

/// The range that randomCentre() fills with events begins here.
inline QDate randomBegins() { return {2026, 11, 9}; }

/// 1..64 lanes, 1..3 machines, 1..3 people a shift; events, closures, outages, bars, small tanks and packs, history and levels.
laneward::State randomCentre(unsigned seed);

/// A number in [low, high] from a generator, the same on every platform.
int between(std::mt19937& generator, int low, int high);

}  // namespace support
