// Film against what can be said of it without its code: the unit in exact arithmetic (0.0167 mL a square foot, from memory; its
// thickness and the conversions by 16 CFR 500.19), the convolution of dose and lag integrated by Boost.Math, a brush stepped
// through its differential equation, and mass, which is conserved.
#include "core/patterns/film.h"
#include "tests/support/random_patterns.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <QTest>

#include <cmath>
#include <numeric>

using namespace laneward;

namespace {

using support::randomPattern;

double near(double a, double b) { return std::abs(a / b - 1); }

/// uL that lie on the lane, from the units of its cells.
double laidOn(const Film& film) {
    double sum = 0;
    for (int cell = 0; cell < film.cells; ++cell) {
        const double squareFeet = 41.5 / 39 / 12 * toFeet(film.end(cell) - film.begin(cell));
        for (int board = 1; board <= boards; ++board)
            sum += film.units(board, cell) * 16.7 * squareFeet;
    }
    return sum;
}

Pattern oneStroke(Direction direction) {
    Pattern pattern;
    pattern.end = feet(40);
    pattern.strokes = {{direction, 10, 30, 2, Microlitres{50}, feet(5), feet(25), 0}};
    return pattern;
}

/// The dose of `oneStroke` at a distance of its way, convolved with the lag, in uL a foot.
double convolved(double way, double lag) {
    const auto carried = [&](double dosedAt) { return 100.0 / 20 * std::exp(-(way - dosedAt) / lag) / lag; };
    if (way <= 0) return 0;
    return boost::math::quadrature::gauss_kronrod<double, 61>::integrate(carried, 0.0, std::min(way, 20.0), 10, 1e-13);
}

/// uL on one board from the way's distance a to b.
double convolvedBetween(double a, double b, double lag) {
    const auto density = [&](double way) { return convolved(way, lag); };
    return boost::math::quadrature::gauss_kronrod<double, 31>::integrate(density, a, b, 5, 1e-12);
}

/// A stretch of the lane over which the brush is down.
struct Stretch {
    std::int64_t from, to;
    const Stroke* stroke;  ///< none = nothing is dosed
};

/// The header's rule of where the brush is down, put otherwise: by runs of strokes of one direction.
std::vector<Stretch> stretches(const Pattern& pattern) {
    std::vector<Stretch> all;
    for (size_t i = 0; i < pattern.strokes.size(); ++i) {
        const Stroke& stroke = pattern.strokes[i];
        const Stroke* next = i + 1 < pattern.strokes.size() ? &pattern.strokes[i + 1] : nullptr;
        if (stroke.direction == Direction::Out) {
            all.push_back({stroke.from.value, stroke.to.value, &stroke});
            const bool on = next && next->direction == Direction::Out;
            const std::int64_t until = on ? next->from.value : pattern.end.value;
            if (until > stroke.to.value) all.push_back({stroke.to.value, until, nullptr});
        } else {
            all.push_back({stroke.to.value, stroke.from.value, &stroke});
            const bool on = next && next->direction == Direction::Back;
            const std::int64_t until = on ? next->to.value : 0;
            if (until < stroke.from.value) all.push_back({stroke.from.value, until, nullptr});
        }
    }
    return all;
}

/// uL by cell of half a foot and board, `lanes` lanes from a clean brush on, in steps of the midpoint rule.
std::vector<double> stepped(const Pattern& pattern, double lag, int lanes) {
    constexpr std::int64_t step = 254;  // um: 600 to a cell
    std::vector<double> laid(size_t(120 * boards));
    std::vector<double> brush(static_cast<size_t>(boards));
    const double h = double(step) / 304'800;
    for (int lane = 1; lane <= lanes; ++lane) {
        std::fill(laid.begin(), laid.end(), 0);
        for (const Stretch& stretch : stretches(pattern)) {
            const bool out = stretch.from < stretch.to;
            for (std::int64_t at = stretch.from; at != stretch.to; at += out ? step : -step) {
                const std::int64_t cell = (out ? at : at - step) / 152'400;
                for (int b = 0; b < boards; ++b) {
                    const Stroke* s = stretch.stroke;
                    const bool dosed = s && s->firstBoard <= b + 1 && b + 1 <= s->lastBoard;
                    const double rate =
                        dosed ? double(s->dose.value * s->laps) * 304'800 / double(s->to.value - s->from.value) : 0;
                    double& m = brush[size_t(b)];
                    const double middle = m + h / 2 * (rate - m / lag);
                    laid[size_t(cell) * boards + size_t(b)] += h * middle / lag;
                    m += h * (rate - middle / lag);
                }
            }
        }
    }
    return laid;
}

}  // namespace

class FilmTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theUnitInExactArithmetic();
    void oneStrokeWithCarry_data();
    void oneStrokeWithCarry();
    void aLongRunOfOneStroke();
    void theBrushStepByStep();
    void massIsConserved();
};

void FilmTest::theUnitInExactArithmetic() {
    // 0.0167 mL = 16.7 mm3 on 1 ft2 = (304.8 mm)^2 = 92,903.04 mm2: all integers in 1e-4 mm3 and 1e-2 mm2.
    const std::int64_t cubic = 167'000;
    const std::int64_t square = 9'290'304;
    QCOMPARE(square * 10'000, std::int64_t{3'048} * 3'048 * 10'000);
    const double millimetres = double(cubic) / double(square) / 100;
    QVERIFY(near(micrometresPerUnit, millimetres * 1'000) < 1e-15);
    QVERIFY(std::abs(micrometresPerUnit - 0.179757304) < 5e-10);             // um
    QVERIFY(std::abs(micrometresPerUnit / 25'400 - 7.07705921e-6) < 5e-15);  // in: 'about 7 millionths'
    // 1 unit over 41.5 in x 40 ft is 16.7 x 41.5 / 12 x 40 = 13,861 / 6 uL (2.310167 mL); 10 mL there are 60,000 / 13,861 units
    // (4.32869), 0.7781140060272088 um thick.
    QVERIFY(near(boards / filmUnits(1, 40), 13'861.0 / 6) < 1e-14);
    QVERIFY(near(filmUnits(10'000.0 / boards, 40), 60'000.0 / 13'861) < 1e-14);
    QVERIFY(near(filmUnits(10'000.0 / boards, 40) * micrometresPerUnit, 0.7781140060272088) < 1e-14);
    // 1 unit on one board (41.5/39 in) over 1 ft: 0.00148087607 mL. 1 mL a square foot: 10.76391042 um.
    QVERIFY(std::abs(1 / filmUnits(1, 1) - 1.48087607) < 5e-9);
    QVERIFY(std::abs(micrometresPerUnit / 0.0167 - 10.76391042) < 5e-9);
}

void FilmTest::oneStrokeWithCarry_data() {
    QTest::addColumn<bool>("out");
    QTest::addColumn<double>("lag");
    for (double lag : {0.5, 3.0, 10.0}) {
        QTest::addRow("out, %g ft", lag) << true << lag;
        QTest::addRow("back, %g ft", lag) << false << lag;
    }
}

void FilmTest::oneStrokeWithCarry() {
    QFETCH(bool, out);
    QFETCH(double, lag);
    const Pattern pattern = oneStroke(out ? Direction::Out : Direction::Back);
    const Film made = film(pattern, {Micrometres{std::llround(lag * 304'800)}, 1}, Micrometres{feet(1).value / 4});
    QCOMPARE(made.cells, 240);
    double largest = 0;
    for (int cell = 0; cell < made.cells; ++cell) {
        // Out from 5 ft to the pattern's end at 40 ft, or back from 25 ft to the foul line.
        const double begin = toFeet(made.begin(cell));
        const double a = out ? begin - 5 : 24.75 - begin;
        const bool down = a >= 0 && a < (out ? 35 : 25);
        const double units = down ? filmUnits(convolvedBetween(a, a + 0.25, lag), 0.25) : 0;
        QCOMPARE(made.units(9, cell), 0.0);
        QCOMPARE(made.units(31, cell), 0.0);
        if (!down) QCOMPARE(made.units(20, cell), 0.0);
        if (down) largest = std::max(largest, near(made.units(20, cell), units));
        QCOMPARE(made.units(10, cell), made.units(30, cell));
    }
    qInfo("one stroke, %s: at most %.1e from the convolution", QTest::currentDataTag(), largest);
    QVERIFY(largest < 1e-9);
}

/// In a long run the brush carries, before a lane, M = B / (1 - A): what one lane leaves on it, over and over.
void FilmTest::aLongRunOfOneStroke() {
    const double lag = 6;
    const Film made = film(oneStroke(Direction::Out), {feet(6)});
    const double left = 5 * lag * (1 - std::exp(-20 / lag)) * std::exp(-15 / lag);  // of one lane, uL a board
    const double before = left / (1 - std::exp(-35 / lag));
    QVERIFY(near(made.balance.brushBefore, before * 21) < 1e-13);
    QVERIFY(near(made.balance.brushAfter, before * 21) < 1e-13);
    const double first = before * (1 - std::exp(-0.5 / lag)) + 5 * (0.5 - lag * (1 - std::exp(-0.5 / lag)));
    QVERIFY(near(made.units(20, 10), filmUnits(first, 0.5)) < 1e-12);
    QVERIFY(near(laidOn(made), made.balance.dosed) < 1e-13);
}

void FilmTest::theBrushStepByStep() {
    std::mt19937 generator(777);
    double largest = 0;
    for (int round = 0; round < 40; ++round) {
        Pattern pattern = randomPattern(generator, 8);
        // On half feet, so that the steps end where strokes and cells do.
        const auto onGrid = [](Micrometres d) { return Micrometres{std::max<std::int64_t>(d.value / 152'400, 0) * 152'400}; };
        pattern.end = onGrid(pattern.end + feet(1));
        for (Stroke& stroke : pattern.strokes) {
            stroke.from = onGrid(stroke.from);
            stroke.to = std::min(std::max(onGrid(stroke.to), stroke.from + onGrid(feet(1))), pattern.end);
            if (stroke.from >= stroke.to) stroke.from = stroke.to - onGrid(feet(1));
        }
        const int lane = 1 + round % 3;
        const double lag = 0.5 + double(generator() % 1'000) / 100;
        const Film made = film(pattern, {Micrometres{std::llround(lag * 304'800)}, lane});
        const std::vector<double> steps = stepped(pattern, double(std::llround(lag * 304'800)) / 304'800, lane);
        for (int i = 0; i < int(steps.size()); ++i) {
            const double off = made.units(i % boards + 1, i / boards) - filmUnits(steps[size_t(i)], 0.5);
            largest = std::max(largest, std::abs(off) / std::max(1.0, made.most()));
        }
    }
    qInfo("40 patterns against a brush stepped through its equation: at most %.1e of the most film", largest);
    QVERIFY(largest < 1e-6);
}

void FilmTest::massIsConserved() {
    constexpr int patterns = 10'000;
    std::mt19937 generator(4711);
    double largest = 0;
    double carried = 0;
    for (int round = 0; round < patterns; ++round) {
        const Pattern pattern = randomPattern(generator, 40);
        QVERIFY2(faultsOf(pattern).empty(), faultsOf(pattern).empty() ? "" : faultsOf(pattern)[0].rule.constData());
        const std::int64_t carry = generator() % 5 == 0 ? 0 : std::int64_t(generator() % 18'288'001) >> (generator() % 20);
        const int lane = int(generator() % 4);
        const Micrometres cell{76'200 + std::int64_t(generator() % 500'000)};
        const Film made = film(pattern, {Micrometres{carry}, lane}, cell);
        std::int64_t dosed = 0;
        for (const Stroke& s : pattern.strokes)
            dosed += s.laps * (s.lastBoard - s.firstBoard + 1) * s.dose.value;
        QCOMPARE(made.balance.dosed, double(dosed));
        QCOMPARE(made.balance.offLane, 0.0);
        const double off = made.balance.brushBefore + double(dosed) - laidOn(made) - made.balance.brushAfter;
        largest = std::max(largest, std::abs(off) / std::max(1.0, double(dosed)));
        QVERIFY(near(made.balance.laid + 1, laidOn(made) + 1) < 1e-12);
        if (lane == 0) QVERIFY(std::abs(made.balance.brushBefore - made.balance.brushAfter) <= 1e-9 * double(dosed));
        if (lane == 1) QCOMPARE(made.balance.brushBefore, 0.0);
        if (dosed > 0) carried = std::max(carried, made.balance.brushAfter / double(dosed));
    }
    qInfo("mass of %d random patterns: at most %.1e of the dose amiss (1e-9 allowed); on a brush up to %.2f of a lane's dose",
          patterns, largest, carried);
    QVERIFY(largest <= 1e-9);
    QVERIFY(carried > 0.5);
}

QTEST_GUILESS_MAIN(FilmTest)
#include "tst_film.moc"
