#include "core/patterns/film_parts.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

/// One way, as the brush meets it: what each board of it takes up, and what is on it beyond the balance of taking and giving.
struct Working {
    BoardRow rate{};    ///< uL per um
    BoardRow excess{};  ///< m - rate L at the way's beginning
};

/// On a way of length s the brush goes from m to rate L + (m - rate L) exp(-s / L): what dm/ds = rate - m / L comes to.
Working begun(const BrushWay& way, double carry, const BoardRow& brush) {
    Working working;
    for (int board = way.firstBoard; board <= way.lastBoard; ++board)
        working.rate[size_t(board - 1)] = way.rate;
    for (size_t b = 0; b < brush.size(); ++b)
        working.excess[b] = brush[b] - working.rate[b] * carry;
    return working;
}

void end(const BrushWay& way, double carry, BoardRow& brush) {
    if (carry <= 0) return;
    const Working working = begun(way, carry, brush);
    const double kept = std::exp(-double(way.length()) / carry);
    for (size_t b = 0; b < brush.size(); ++b)
        brush[b] = working.rate[b] * carry + working.excess[b] * kept;
}

/// The brush with which the lane begins. One lane takes m to A m + B with A = exp(-S / L), S being all its ways: after n lanes
/// from clean it is B (1 - A^n) / (1 - A), after very many B / (1 - A).
BoardRow brushBefore(const std::vector<BrushWay>& ways, double carry, int lane) {
    BoardRow brush{};
    if (carry <= 0 || lane == 1) return brush;
    double length = 0;
    for (const BrushWay& way : ways) {
        end(way, carry, brush);
        length += double(way.length());
    }
    if (length <= 0) return brush;
    const double lanes = lane == 0 ? 1 : -std::expm1(-(lane - 1) * length / carry);
    const double factor = lanes / -std::expm1(-length / carry);
    for (double& amount : brush)
        amount *= factor;
    return brush;
}

/// Walks one way through the cells it crosses.
class Walk {
public:
    Walk(const BrushWay& way, const Cells& cells) : m_way(way), m_cells(cells), m_at(way.from), m_out(way.from < way.to) {}

    bool isDone() const { return m_at == m_way.to; }
    /// Goes on to the next edge; `cell` becomes the cell walked through, -1 outside. Returns the length.
    std::int64_t step(int& cell) {
        const std::int64_t next = m_out ? nextOut(cell) : nextBack(cell);
        const std::int64_t length = m_out ? next - m_at : m_at - next;
        m_at = next;
        return length;
    }

private:
    std::int64_t nextOut(int& cell) {
        cell = -1;
        if (m_at < m_cells.begin) return std::min(m_cells.begin, m_way.to);
        if (m_at >= m_cells.end) return m_way.to;
        m_cell = m_cell < 0 ? int((m_at - m_cells.begin) / m_cells.length) : m_cell + 1;
        cell = m_cell;
        return std::min({m_cells.begin + (cell + 1) * m_cells.length, m_cells.end, m_way.to});
    }

    std::int64_t nextBack(int& cell) {
        cell = -1;
        if (m_at > m_cells.end) return std::max(m_cells.end, m_way.to);
        if (m_at <= m_cells.begin) return m_way.to;
        m_cell = m_cell < 0 ? int((m_at - m_cells.begin - 1) / m_cells.length) : m_cell - 1;
        cell = m_cell;
        return std::max(m_cells.begin + cell * m_cells.length, m_way.to);
    }

    const BrushWay& m_way;
    const Cells& m_cells;
    std::int64_t m_at;
    int m_cell = -1;  ///< the last one; -1 = none yet
    bool m_out;
};

/// exp(-d / L) and 1 - exp(-d / L) of a step; whole cells are all alike and counted once.
struct Decay {
    double carry;
    double cellLength;
    double cellKept;
    double cellGiven;

    Decay(double carry_, double cell) : carry(carry_), cellLength(cell), cellKept(0), cellGiven(1) {
        if (carry <= 0) return;
        cellKept = std::exp(-cell / carry);
        cellGiven = -std::expm1(-cell / carry);
    }
    double kept(double d) const { return d == cellLength ? cellKept : std::exp(-d / carry); }
    double given(double d) const { return d == cellLength ? cellGiven : -std::expm1(-d / carry); }
};

void add(BoardRow& row, const Working& working, double length, double given) {
    for (size_t b = 0; b < row.size(); ++b)
        row[b] += working.rate[b] * length + working.excess[b] * given;
}

double sum(const BoardRow& row) {
    double total = 0;
    for (double value : row)
        total += value;
    return total;
}

}  // namespace

LaidFilm layFilm(const std::vector<BrushWay>& ways, double carry, int lane, const Cells& cells) {
    assert(cells.length > 0 && carry >= 0 && lane >= 0);
    LaidFilm laid;
    laid.rows.resize(size_t(cells.count()));
    laid.before = brushBefore(ways, carry, lane);
    BoardRow brush = laid.before;
    BoardRow outside{};
    const Decay decay(carry, double(cells.length));
    for (const BrushWay& way : ways) {
        if (carry <= 0 && way.rate <= 0) continue;
        const Working working = begun(way, carry, brush);
        double kept = 1;  // exp(-s / L) so far
        Walk walk(way, cells);
        while (!walk.isDone()) {
            int cell = 0;
            const double length = double(walk.step(cell));
            const double given = carry > 0 ? kept * decay.given(length) : 0;
            add(cell < 0 ? outside : laid.rows[size_t(cell)], working, length, given);
            if (carry > 0) kept *= decay.kept(length);
        }
        end(way, carry, brush);
    }
    laid.after = brush;
    laid.outside = sum(outside);
    return laid;
}

BoardValues tapeFilm(const std::vector<BrushWay>& ways, double carry, int lane, Micrometres distance) {
    const std::int64_t begin = std::clamp<std::int64_t>(distance.value - tapeWidth.value / 2, 0, laneLength.value - 1);
    const std::int64_t finish = std::clamp<std::int64_t>(distance.value + tapeWidth.value / 2, begin + 1, laneLength.value);
    const LaidFilm laid = layFilm(ways, carry, lane, {begin, finish, finish - begin});
    BoardValues units;
    for (size_t b = 0; b < units.size(); ++b)
        units[b] = filmUnits(laid.rows.front()[b], toFeet({finish - begin}));
    return units;
}

}  // namespace laneward
