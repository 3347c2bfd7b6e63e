// Tape readings: the film that was measured across the boards of a lane at one distance.
//
// Film is counted in thousandths of a unit; 1 unit = 0.0167 mL per square foot. A reading keeps what was measured and where;
// what should have been there is computed from the pattern, in the version that was run.
#pragma once

#include "core/patterns/pattern.h"

#include <optional>

namespace laneward {

/// Film in thousandths of a unit, board 1 first; a board that was not measured has none.
using TapeValues = std::array<std::optional<std::int64_t>, size_t(boards)>;

struct TapeReading {
    OperationId id;
    Instant at;
    PersonId person;
    MachineId machine;  ///< that laid the film; empty = not known
    PatternId pattern;
    std::int64_t patternVersion = 0;  ///< 0 = not known
    int lane = 0;
    int laneOfRun = 0;     ///< the how manieth lane of its run, from 1; 0 = not known, taken as far into a long run
    Micrometres distance;  ///< from the foul line
    TapeValues milliUnits;
    QString note;
    std::optional<OperationId> corrects;  ///< replaces that earlier one; without any value it only withdraws it
    friend bool operator==(const TapeReading&, const TapeReading&) = default;
};

/// Whether any board was measured.
bool isMeasured(const TapeReading& reading);
/// Film below nothing or beyond reason, nothing measured (and nothing withdrawn), a lane or distance that does not exist.
/// Subject: the lane's number. Empty when sound. `lanes` is how many lanes the centre has.
std::vector<Finding> faultsOf(const TapeReading& reading, int lanes);

inline constexpr std::int64_t mostMilliUnits =
    500'000;  ///< of film that is taken for a reading; common practice: below 100 units
inline constexpr int mostLanesOfRun = 1'000;

}  // namespace laneward
