// The carry length of a machine's brush, from tape readings: least squares on the film that the patterns should have laid.
//
// Model: reading = k x film(pattern, L), the mean film under the tape, every board a value; k is the machine's output factor
// (1 = it doses what the pattern says). Both are fitted together with their 95 % intervals (statistics/least_squares.h). Boards
// that no stroke covers at any distance tell nothing about either and are left out.
//
//     const Result<CarryFit> fit = fitCarry(measured);
//     if (fit && fit->isBounded) machine.carryLength = fit->carry;
#pragma once

#include "core/patterns/tape_reading.h"
#include "core/statistics/least_squares.h"

#include <span>

namespace laneward {

/// A reading with the pattern that was run, in its version.
struct MeasuredFilm {
    TapeReading reading;
    Pattern pattern;
};

struct CarryFit {
    Micrometres carry;
    Micrometres carryLow;   ///< 95 % interval
    Micrometres carryHigh;  ///< longestCarry (machine.h) when the readings do not bound it
    bool isBounded = true;  ///< above
    double factor = 1;      ///< k
    Interval factorInterval;
    double deviation = 0;  ///< of one board's reading from the model, in units
    int values = 0;        ///< boards read
};

/// Readings without a value are passed over. Errors (Invalid): "carry.too-few" (fewer than ten boards' values, or no film where
/// they were read), subject: their number.
Result<CarryFit> fitCarry(std::span<const MeasuredFilm> measured);

}  // namespace laneward
