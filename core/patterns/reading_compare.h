// A tape reading beside the film that its pattern should have laid there.
//
// All film in units, errors are read minus computed. Boards that were not read count for nothing; a figure whose boards were all
// not read has no value. Which boards are 'middle' and 'outer' is common practice, no source.
//
//     const ReadingComparison seen = compare(reading, pattern, machine.carryLength);
#pragma once

#include "core/patterns/film.h"
#include "core/patterns/tape_reading.h"

namespace laneward {

inline constexpr int firstMiddleBoard = 18;  ///< the middle: boards 18..22
inline constexpr int lastMiddleBoard = 22;
inline constexpr int firstOuterBoard = 3;  ///< the outer parts: boards 3..7 and 33..37
inline constexpr int lastOuterBoard = 7;

/// Figures of one cross-section, read or computed.
struct TapeFigures {
    std::optional<double> mean;        ///< of the boards read
    std::optional<double> right;       ///< of boards 1..19
    std::optional<double> left;        ///< of boards 21..39
    std::optional<double> unlikeness;  ///< mean of |board b - board 40-b| over the pairs of which both were read
    std::optional<double> trackRatio;  ///< mean of the middle boards over mean of the outer boards, when these have film
    std::optional<double> lowest;      ///< in the oiled part: boards that a stroke covers at the distance
    int lowestBoard = 0;               ///< the first such board; 0 = none
};

struct ReadingComparison {
    BoardValues computed{};
    std::array<std::optional<double>, size_t(boards)> error;
    int count = 0;            ///< boards read
    double meanError = 0;     ///< its sign shows too much (+) or too little
    double meanAbsolute = 0;  ///< mean size of the errors
    double largest = 0;       ///< largest error by size, with its sign
    int largestBoard = 0;     ///< 0 = nothing was read
    TapeFigures read;
    TapeFigures expected;  ///< of the computed film, on the boards that were read
};

/// `carry` is that of the machine that laid the film; the lane of the run is the reading's.
ReadingComparison compare(const TapeReading& reading, const Pattern& pattern, Micrometres carry);
/// The figures of a reading alone; without a pattern nothing counts as oiled.
TapeFigures figuresOf(const TapeReading& reading, const Pattern* pattern);

}  // namespace laneward
