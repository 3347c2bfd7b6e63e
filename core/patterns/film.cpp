#include "core/patterns/film.h"

#include "core/patterns/film_parts.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace laneward {

namespace {

double sum(const BoardRow& row) { return std::accumulate(row.begin(), row.end(), 0.0); }

}  // namespace

int Film::cellAt(Micrometres distance) const { return int(std::clamp<std::int64_t>(distance.value / cell.value, 0, cells - 1)); }

double Film::most() const {
    double most = 0;
    for (const FilmRow& row : rows)
        most = std::max(most, *std::max_element(row.begin(), row.end()));
    return most;
}

Film film(const Pattern& pattern, const Brush& brush, Micrometres cell) {
    assert(cell > Micrometres{0} && cell <= laneLength);
    const Cells cells{0, laneLength.value, cell.value};
    LaidFilm laid = layFilm(brushWays(pattern), double(brush.carry.value), brush.lane, cells);
    Film made;
    made.cell = cell;
    made.cells = cells.count();
    made.rows = std::move(laid.rows);
    BoardRow onBoards{};
    for (int k = 0; k < made.cells; ++k) {
        FilmRow& row = made.rows[size_t(k)];
        const double perMicrolitre = filmUnits(1, toFeet(made.end(k) - made.begin(k)));
        for (size_t b = 0; b < row.size(); ++b) {
            onBoards[b] += row[b];
            row[b] *= perMicrolitre;
        }
    }
    made.balance = {double(volumes(pattern).lane.value), sum(onBoards), laid.outside, sum(laid.before), sum(laid.after)};
    return made;
}

Film difference(const Film& a, const Film& b) {
    assert(a.cell == b.cell);
    Film made = a;
    for (size_t k = 0; k < made.rows.size(); ++k) {
        for (size_t board = 0; board < made.rows[k].size(); ++board)
            made.rows[k][board] -= b.rows[k][board];
    }
    made.balance = {a.balance.dosed - b.balance.dosed, a.balance.laid - b.balance.laid, a.balance.offLane - b.balance.offLane,
                    a.balance.brushBefore - b.balance.brushBefore, a.balance.brushAfter - b.balance.brushAfter};
    return made;
}

BoardValues crossSection(const Film& film, Micrometres distance) {
    BoardValues units;
    const int cell = film.cellAt(distance);
    for (int board = 1; board <= boards; ++board)
        units[size_t(board - 1)] = film.units(board, cell);
    return units;
}

std::vector<double> boardProfile(const Film& film, int board) {
    std::vector<double> units;
    for (int cell = 0; cell < film.cells; ++cell)
        units.push_back(film.units(board, cell));
    return units;
}

BoardValues tapeFilm(const Pattern& pattern, const Brush& brush, Micrometres distance) {
    return tapeFilm(brushWays(pattern), double(brush.carry.value), brush.lane, distance);
}

std::array<bool, size_t(boards)> oiledBoards(const Pattern& pattern, Micrometres distance) {
    std::array<bool, size_t(boards)> oiled{};
    for (const Stroke& stroke : pattern.strokes) {
        const bool here = stroke.from <= distance && distance <= stroke.to && stroke.dose > Microlitres{0};
        if (here) std::fill(oiled.begin() + stroke.firstBoard - 1, oiled.begin() + stroke.lastBoard, true);
    }
    return oiled;
}

}  // namespace laneward
