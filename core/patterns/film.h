// The film that a pattern lays: how much conditioner lies on every board at every distance.
//
// A stroke takes up laps x dose on each of its boards, evenly over its way. The brush m over a board gives off m / L a foot
// (L = carry length), so that laid film = dose convolved with exp(-s / L) / L along the way s; L = 0 lays what is dosed where
// it is dosed. There is one brush over all boards. It is down
//   - along every stroke,
//   - on from a stroke to the next of the same direction that begins at its end or ahead of it, and
//   - on from the last stroke out of a run to the end of the pattern, from the last stroke back to the foul line;
// it is up on every other way and keeps what it carries. What is on it after one lane goes on with the next.
//
// Cells are integrals in closed form, never samples. Doubles are used here and in statistics only; unit: 0.0167 mL a square
// foot (governing body's definition, from memory), a board being 41.5 in / 39 wide. Limits: patterns that faultsOf() accepts;
// mass is conserved to 1e-11 of what is dosed.
//
//     const Film made = film(wren, {machine.carryLength});
//     made.units(20, made.cellAt(feet(15)));      // on the middle board, 15 ft out
#pragma once

#include "core/patterns/pattern.h"

#include <algorithm>

namespace laneward {

/// Film of one cross-section in units, board 1 first.
using BoardValues = std::array<double, size_t(boards)>;

inline constexpr double microlitresPerSquareFoot = 16.7;                ///< of one unit
inline constexpr double boardWidthFeet = 41.5 / 12 / boards;            ///< 1.0641 in
inline constexpr double micrometresPerUnit = 16.7 / 92'903.04 * 1'000;  ///< uL = mm3, 1 ft2 = 92,903.04 mm2 (16 CFR 500.19)
inline constexpr Micrometres tapeWidth{25'400};                         ///< along the lane: 1 in, common practice, no source

constexpr double toFeet(Micrometres length) { return double(length.value) / double(feet(1).value); }
/// Film in units of an amount on one board over a length.
constexpr double filmUnits(double microlitres, double lengthFeet) {
    return microlitres / (microlitresPerSquareFoot * boardWidthFeet * lengthFeet);
}

/// The brush with which a lane begins.
struct Brush {
    Micrometres carry;  ///< carry length; 0 = no carry
    int lane = 0;       ///< the how manieth lane since the brush was clean, from 1; 0 = as far into a long run
};

/// Microlitres on all boards: brushBefore + dosed = laid + offLane + brushAfter. In a long run the brush is the same before
/// and after, so that laid + offLane = dosed.
struct FilmBalance {
    double dosed = 0;
    double laid = 0;     ///< summed over the cells
    double offLane = 0;  ///< given off before the foul line or beyond 60 ft; 0 for sound patterns
    double brushBefore = 0;
    double brushAfter = 0;
};

/// Units on the boards of one row of cells, board 1 first; what follows board 39 only makes the number even and is 0.
using FilmRow = std::array<double, 40>;

struct Film {
    Micrometres cell;           ///< length of a cell; the last one may be shorter
    int cells = 0;              ///< from the foul line to 60 ft
    std::vector<FilmRow> rows;  ///< one a cell
    FilmBalance balance;

    double units(int board, int cellIndex) const { return rows[size_t(cellIndex)][size_t(board - 1)]; }
    double micrometres(int board, int cellIndex) const { return units(board, cellIndex) * micrometresPerUnit; }
    Micrometres begin(int cellIndex) const { return cell * cellIndex; }
    Micrometres end(int cellIndex) const { return std::min(cell * (cellIndex + 1), laneLength); }
    /// The cell that holds a distance; distances beyond the lane are taken as its ends.
    int cellAt(Micrometres distance) const;
    double most() const;  ///< largest value, 0 when there is none
};

/// `cell` is 1 um to 60 ft. The same on every machine up to rounding.
Film film(const Pattern& pattern, const Brush& brush, Micrometres cell = Micrometres{feet(1).value / 2});
/// a - b, cell by cell; both with cells of the same length. The balance is the difference too.
Film difference(const Film& a, const Film& b);

/// Units across the boards of the cell at a distance.
BoardValues crossSection(const Film& film, Micrometres distance);
/// Units along a board (1..39), one value a cell.
std::vector<double> boardProfile(const Film& film, int board);

/// What a tape of tapeWidth would read across the lane at a distance: the mean film under it, in units.
BoardValues tapeFilm(const Pattern& pattern, const Brush& brush, Micrometres distance);
/// Whether a stroke covers each board at a distance: the oiled part of that cross-section.
std::array<bool, size_t(boards)> oiledBoards(const Pattern& pattern, Micrometres distance);

}  // namespace laneward
