#include "core/patterns/film.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

Stroke stroke(Direction direction, int first, int last, int from, int to) {
    return {direction, first, last, 1, Microlitres{100}, feet(from), feet(to), 0};
}

Pattern patternOf(std::vector<Stroke> strokes, int end = 40) {
    Pattern pattern;
    pattern.id = {"p"};
    pattern.name = "P";
    pattern.end = feet(end);
    pattern.strokes = std::move(strokes);
    return pattern;
}

bool isNear(double a, double b) { return std::abs(a - b) <= 1e-12 * std::max({1.0, std::abs(a), std::abs(b)}); }

}  // namespace

class FilmRoomTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void withoutCarryAStrokeLiesWhereItIsDosed();
    void cellsThatDoNotDivideTheLane();
    void strokesAddUp();
    void theBrushGoesOnInsideTheLane();
    void theBrushGoesOnToTheEndAndNoFurther();
    void theBrushIsUpOnTheWayBack();
    void theNextLaneBeginsWithWhatWasLeft();
    void lanesApproachTheLongRun();
    void beyondTheLaneIsOffTheLane();
    void aStrokeWithoutDoseSpreads();
    void sectionsAndProfiles();
    void differencesOfTwo();
    void tapesReadTheMeanUnderThem();
    void oiledIsWhatAStrokeCovers();
    void noStrokesNoFilm();
};

void FilmRoomTest::withoutCarryAStrokeLiesWhereItIsDosed() {
    const Film made = film(patternOf({stroke(Direction::Out, 10, 12, 5, 15)}), {});
    QCOMPARE(made.cells, 120);
    const double units = filmUnits(100.0 / 10, 1);
    for (int board = 1; board <= boards; ++board) {
        for (int cell = 0; cell < made.cells; ++cell) {
            const bool inside = board >= 10 && board <= 12 && cell >= 10 && cell < 30;
            QVERIFY(isNear(made.units(board, cell), inside ? units : 0));
        }
    }
    QVERIFY(isNear(made.micrometres(11, 20), units * 0.179757304 * (micrometresPerUnit / 0.179757304)));
    QVERIFY(isNear(made.balance.laid, 300));
    QCOMPARE(made.balance.brushAfter, 0.0);
    QVERIFY(isNear(made.most(), units));
}

void FilmRoomTest::cellsThatDoNotDivideTheLane() {
    // 7 ft: eight cells and one of 4 ft; the stroke covers half a foot of the last one.
    const Film made = film(patternOf({{Direction::Back, 1, 39, 1, Microlitres{100}, feet(55), feet(60), 0}}, 60), {}, feet(7));
    QCOMPARE(made.cells, 9);
    QCOMPARE(made.end(8) - made.begin(8), feet(4));
    QVERIFY(isNear(made.units(1, 8), filmUnits(20, 1)));
    QVERIFY(isNear(made.units(1, 7), filmUnits(20, 7)));
    QVERIFY(isNear(made.balance.laid, 3'900));
}

void FilmRoomTest::strokesAddUp() {
    const Stroke out = stroke(Direction::Out, 5, 35, 0, 30);
    const Stroke back = stroke(Direction::Back, 10, 30, 5, 20);
    const Film both = film(patternOf({out, back}), {});
    const Film first = film(patternOf({out}), {});
    const Film second = film(patternOf({back}), {});
    for (int cell = 0; cell < both.cells; ++cell) {
        for (int board = 1; board <= boards; ++board)
            QVERIFY(isNear(both.units(board, cell), first.units(board, cell) + second.units(board, cell)));
    }
}

void FilmRoomTest::theBrushGoesOnInsideTheLane() {
    // Board 12 is dosed first, then boards 20 to 22; the brush over board 12 still gives off while these are dosed.
    const Film made =
        film(patternOf({stroke(Direction::Out, 12, 12, 0, 10), stroke(Direction::Out, 20, 22, 10, 20)}), {feet(4), 1});
    QVERIFY(made.units(12, made.cellAt(feet(15))) > 0);
    QCOMPARE(made.units(20, made.cellAt(feet(5))), 0.0);
    for (int cell = made.cellAt(feet(10)); cell < made.cellAt(feet(40)); ++cell)
        QVERIFY(made.units(12, cell) < made.units(12, cell - 1));
    // Also where the next stroke begins further on.
    const Film gap =
        film(patternOf({stroke(Direction::Out, 12, 12, 0, 10), stroke(Direction::Out, 20, 22, 14, 20)}), {feet(4), 1});
    for (int cell = 0; cell < gap.cells; ++cell)
        QVERIFY(isNear(gap.units(12, cell), made.units(12, cell)));
}

void FilmRoomTest::theBrushGoesOnToTheEndAndNoFurther() {
    const Film out = film(patternOf({stroke(Direction::Out, 20, 20, 0, 30)}, 38), {feet(5), 1});
    QVERIFY(out.units(20, out.cellAt(feet(37))) > 0);
    QCOMPARE(out.units(20, out.cellAt(feet(38))), 0.0);
    const double kept = 100.0 / 30 * 5 * (1 - std::exp(-6)) * std::exp(-8.0 / 5);
    QVERIFY(isNear(out.balance.brushAfter, kept));
    const Film back = film(patternOf({stroke(Direction::Back, 20, 20, 10, 30)}, 38), {feet(5), 1});
    QVERIFY(back.units(20, 0) > 0);
    QCOMPARE(back.units(20, back.cellAt(feet(30))), 0.0);
}

void FilmRoomTest::theBrushIsUpOnTheWayBack() {
    // The second stroke begins behind the end of the first: the brush is lifted over the way there, and keeps what it has.
    const Film made = film(patternOf({stroke(Direction::Out, 20, 20, 0, 20), stroke(Direction::Out, 5, 5, 30, 35),
                                      stroke(Direction::Out, 6, 6, 32, 34)},
                                     40),
                           {feet(5), 1});
    const Film same =
        film(patternOf({stroke(Direction::Out, 20, 20, 0, 20), stroke(Direction::Out, 5, 5, 30, 35)}, 35), {feet(5), 1});
    for (int cell = 0; cell < made.cellAt(feet(32)); ++cell)
        QVERIFY(isNear(made.units(20, cell), same.units(20, cell)));
    // Over 32 to 34 ft it passes twice.
    const double passedOnce = same.units(20, same.cellAt(feet(33)));
    QVERIFY(made.units(20, made.cellAt(feet(33))) > passedOnce);
}

void FilmRoomTest::theNextLaneBeginsWithWhatWasLeft() {
    const Pattern pattern = patternOf({stroke(Direction::Out, 3, 37, 0, 30), stroke(Direction::Back, 10, 30, 10, 25)});
    for (int lane = 1; lane < 5; ++lane) {
        const FilmBalance now = film(pattern, {feet(30), lane}).balance;
        const FilmBalance next = film(pattern, {feet(30), lane + 1}).balance;
        QVERIFY(isNear(now.brushAfter, next.brushBefore));
        QVERIFY(isNear(now.brushBefore + now.dosed, now.laid + now.brushAfter));
    }
}

void FilmRoomTest::lanesApproachTheLongRun() {
    const Pattern pattern = patternOf({stroke(Direction::Out, 3, 37, 0, 30), stroke(Direction::Back, 10, 30, 10, 25)});
    const Film longRun = film(pattern, {feet(30)});
    const Film late = film(pattern, {feet(30), 200});
    const Film first = film(pattern, {feet(30), 1});
    for (int cell = 0; cell < longRun.cells; ++cell) {
        for (int board = 1; board <= boards; ++board) {
            QVERIFY(isNear(late.units(board, cell), longRun.units(board, cell)));
            QVERIFY(first.units(board, cell) <= longRun.units(board, cell) + 1e-12);
        }
    }
    QVERIFY(isNear(longRun.balance.laid, longRun.balance.dosed));
    QVERIFY(first.balance.laid < 0.9 * longRun.balance.laid);
}

void FilmRoomTest::beyondTheLaneIsOffTheLane() {
    // Not a sound pattern: that is where the balance would show it.
    Pattern pattern = patternOf({stroke(Direction::Out, 1, 10, 50, 70)}, 70);
    QVERIFY(!faultsOf(pattern).empty());
    const FilmBalance plain = film(pattern, {}).balance;
    QVERIFY(isNear(plain.offLane, 500));
    QVERIFY(isNear(plain.laid, 500));
    const FilmBalance carried = film(pattern, {feet(5), 1}).balance;
    QVERIFY(carried.offLane > 0);
    QVERIFY(carried.brushAfter > 0);
    QVERIFY(isNear(carried.laid + carried.offLane + carried.brushAfter, 1'000));
}

void FilmRoomTest::aStrokeWithoutDoseSpreads() {
    Stroke empty = stroke(Direction::Out, 1, 39, 20, 30);
    empty.dose = Microlitres{0};
    const Film made = film(patternOf({stroke(Direction::Out, 20, 20, 0, 20), empty}, 30), {feet(5), 1});
    QVERIFY(made.units(20, made.cellAt(feet(29))) > 0);
    QVERIFY(isNear(made.balance.dosed, 100));
    QCOMPARE(film(patternOf({empty}), {feet(5)}).most(), 0.0);
}

void FilmRoomTest::sectionsAndProfiles() {
    const Film made = film(patternOf({stroke(Direction::Out, 5, 35, 0, 30), stroke(Direction::Back, 10, 30, 5, 20)}), {feet(2)});
    const BoardValues section = crossSection(made, feet(12));
    const std::vector<double> profile = boardProfile(made, 12);
    QCOMPARE(profile.size(), size_t(120));
    QCOMPARE(section[11], made.units(12, 24));
    QCOMPARE(profile[24], made.units(12, 24));
    QCOMPARE(made.cellAt(feet(0) - feet(3)), 0);
    QCOMPARE(made.cellAt(feet(60)), 119);
    QCOMPARE(made.cellAt(feet(99)), 119);
    QCOMPARE(made.cellAt(Micrometres{152'399}), 0);
    QCOMPARE(made.cellAt(Micrometres{152'400}), 1);
}

void FilmRoomTest::differencesOfTwo() {
    const Film a = film(patternOf({stroke(Direction::Out, 5, 35, 0, 30)}), {});
    const Film b = film(patternOf({stroke(Direction::Out, 10, 30, 0, 30)}), {});
    const Film less = difference(a, b);
    QVERIFY(less.units(7, 3) > 0);
    QCOMPARE(less.units(20, 3), 0.0);
    QCOMPARE(difference(b, a).units(7, 3), -less.units(7, 3));
    QVERIFY(isNear(less.balance.dosed, 1'000));
}

void FilmRoomTest::tapesReadTheMeanUnderThem() {
    const Pattern pattern = patternOf({stroke(Direction::Out, 5, 35, 0, 30), stroke(Direction::Back, 10, 30, 5, 20)});
    const Brush brush{feet(3), 4};
    const Film fine = film(pattern, brush, tapeWidth);
    // 12 ft less half a tape is an edge of inch cells only when the tape lies over one of them.
    const Micrometres middle = fine.begin(150) + Micrometres{tapeWidth.value / 2};
    const BoardValues tape = tapeFilm(pattern, brush, middle);
    for (int board = 1; board <= boards; ++board)
        QVERIFY(isNear(tape[size_t(board - 1)], fine.units(board, 150)));
    // At the end of a dose without carry the tape is half on it; at the foul line it is cut off.
    QVERIFY(isNear(tapeFilm(pattern, {}, feet(30))[6], filmUnits(100.0 / 30 / 2, 1)));
    QVERIFY(isNear(tapeFilm(pattern, {}, feet(0))[6], filmUnits(100.0 / 30, 1)));
    QCOMPARE(tapeFilm(pattern, {}, laneLength)[6], 0.0);
}

void FilmRoomTest::oiledIsWhatAStrokeCovers() {
    const Pattern pattern = patternOf({stroke(Direction::Out, 5, 35, 0, 30), stroke(Direction::Back, 3, 30, 5, 20)});
    const auto oiled = oiledBoards(pattern, feet(12));
    QVERIFY(!oiled[1] && oiled[2] && oiled[34] && !oiled[35]);
    QVERIFY(!oiledBoards(pattern, feet(25))[2]);
    QVERIFY(!oiledBoards(pattern, feet(31))[19]);
}

void FilmRoomTest::noStrokesNoFilm() {
    const Film made = film(patternOf({}), {feet(3)});
    QCOMPARE(made.most(), 0.0);
    QCOMPARE(made.balance.laid, 0.0);
    QCOMPARE(made.balance.brushBefore, 0.0);
}

QTEST_GUILESS_MAIN(FilmRoomTest)
#include "tst_film.moc"
