// A large centre for measuring: 64 lanes, two machines and 60 series over a year, made by rule and free of conflicts.
#pragma once

#include "core/planning/state.h"

namespace support {

/// Every evening leagues on blocks of lanes, school and practice by day, open play between, a Sunday tournament.
laneward::State bigSeason();

/// The year that bigSeason() covers begins here.
inline QDate bigSeasonBegins() { return {2026, 9, 1}; }

}  // namespace support
