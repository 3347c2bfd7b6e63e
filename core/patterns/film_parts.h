// The ways of the brush over one lane, and what it gives off along them. Internal to this room.
#pragma once

#include "core/patterns/film.h"

namespace laneward {

/// Padded to an even number of boards, so that the compiler works on two at a time; amounts in uL.
using BoardRow = FilmRow;

/// A way with the brush down. Distances in um from the foul line.
struct BrushWay {
    std::int64_t from = 0;  ///< where it begins: the farther end when going back
    std::int64_t to = 0;
    int firstBoard = 1;
    int lastBoard = 0;  ///< no board = nothing is dosed on this way
    double rate = 0;    ///< uL per um and board, while dosed

    std::int64_t length() const { return from < to ? to - from : from - to; }
};

/// In working order, for one lane.
std::vector<BrushWay> brushWays(const Pattern& pattern);

/// Cells of equal length from `begin` to `end`, the last one shorter if need be; in um.
struct Cells {
    std::int64_t begin = 0;
    std::int64_t end = 0;
    std::int64_t length = 0;

    int count() const { return int((end - begin + length - 1) / length); }
};

/// Amounts in uL.
struct LaidFilm {
    std::vector<BoardRow> rows;  ///< one a cell
    double outside = 0;          ///< before the first cell or beyond the last
    BoardRow before{};           ///< on the brush
    BoardRow after{};
};

/// `carry` in um, 0 = none; `lane` as in Brush.
LaidFilm layFilm(const std::vector<BrushWay>& ways, double carry, int lane, const Cells& cells);
/// The mean film in units under a tape.
BoardValues tapeFilm(const std::vector<BrushWay>& ways, double carry, int lane, Micrometres distance);

}  // namespace laneward
