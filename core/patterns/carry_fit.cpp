#include "core/patterns/carry_fit.h"

#include "core/patterns/film_parts.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr size_t fewestValues = 10;

/// One tape: where it was laid, and which of its boards count.
struct Tape {
    std::vector<BrushWay> ways;
    int lane = 0;
    Micrometres distance;
    std::vector<size_t> boards;  ///< from 0
};

struct Tapes {
    std::vector<Tape> all;
    std::vector<double> observed;  ///< units, in the order of the tapes and their boards

    std::vector<double> filmAt(double carry) const {
        std::vector<double> film;
        film.reserve(observed.size());
        for (const Tape& tape : all) {
            const BoardValues units = tapeFilm(tape.ways, carry, tape.lane, tape.distance);
            for (size_t board : tape.boards)
                film.push_back(units[board]);
        }
        return film;
    }
};

bool isDosed(const std::vector<BrushWay>& ways, size_t board) {
    const int number = int(board) + 1;
    return std::any_of(ways.begin(), ways.end(), [number](const BrushWay& way) {
        return way.rate > 0 && way.firstBoard <= number && number <= way.lastBoard;
    });
}

Tapes tapesOf(std::span<const MeasuredFilm> measured) {
    Tapes tapes;
    for (const MeasuredFilm& one : measured) {
        Tape tape{brushWays(one.pattern), one.reading.laneOfRun, one.reading.distance, {}};
        for (size_t board = 0; board < one.reading.milliUnits.size(); ++board) {
            const std::optional<std::int64_t> film = one.reading.milliUnits[board];
            if (!film || !isDosed(tape.ways, board)) continue;
            tape.boards.push_back(board);
            tapes.observed.push_back(double(*film) / 1'000);
        }
        if (!tape.boards.empty()) tapes.all.push_back(std::move(tape));
    }
    return tapes;
}

Micrometres rounded(double micrometres) { return {std::llround(micrometres)}; }

}  // namespace

Result<CarryFit> fitCarry(std::span<const MeasuredFilm> measured) {
    const Tapes tapes = tapesOf(measured);
    const auto tooFew = [&] {
        return fault(ErrorKind::Invalid, "carry.too-few", QString::number(tapes.observed.size()), {std::int64_t(fewestValues)});
    };
    if (tapes.observed.size() < fewestValues) return tooFew();
    const ScaledFit fit =
        fitScaled(tapes.observed, [&](double carry) { return tapes.filmAt(carry); }, {0, double(longestCarry.value)});
    if (fit.k <= 0) return tooFew();
    CarryFit made;
    made.carry = rounded(fit.t);
    made.carryLow = rounded(fit.tInterval.low);
    made.carryHigh = rounded(fit.tInterval.high);
    made.isBounded = made.carryHigh < longestCarry;
    made.factor = fit.k;
    made.factorInterval = fit.kInterval;
    made.deviation = fit.deviation;
    made.values = fit.values;
    return made;
}

}  // namespace laneward
