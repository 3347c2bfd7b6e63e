#include "core/patterns/carry_fit.h"
#include "core/patterns/reading_checks.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

Pattern flat() {
    Pattern pattern;
    pattern.id = {"flat"};
    pattern.name = "Flat";
    pattern.strokes = {{Direction::Out, 3, 37, 2, Microlitres{100}, feet(0), feet(40), 0}};
    return pattern;
}

TapeReading readingOf(std::int64_t milliUnits) {
    TapeReading reading;
    reading.lane = 1;
    reading.distance = feet(20);
    reading.milliUnits.fill(milliUnits);
    return reading;
}

}  // namespace

class ReadingsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void errorsByBoard();
    void missingBoardsCountForNothing();
    void trackRatioAndSides();
    void lowestOnOiledBoardsOnly();
    void theSuspendedRuleIsHistory();
    void theCentresOwnLimits();
    void nothingReadNothingJudged();
    void geometryTolerances();
    void tooFewTapesFitNothing();
};

void ReadingsTest::errorsByBoard() {
    TapeReading reading = readingOf(4'000);
    reading.milliUnits[10] = 1'000;
    const double computed = filmUnits(200.0 / 40, 1);
    const ReadingComparison seen = compare(reading, flat(), {});
    QCOMPARE(seen.count, boards);
    QVERIFY(std::abs(*seen.error[19] - (4 - computed)) < 1e-12);
    QCOMPARE(*seen.error[0], 4.0);
    QVERIFY(std::abs(seen.meanError - ((4 * 38 + 1.0) - 35 * computed) / boards) < 1e-12);
    QCOMPARE(seen.largestBoard, 1);
    QCOMPARE(seen.largest, 4.0);
    QVERIFY(std::abs(*seen.expected.mean - 35 * computed / boards) < 1e-12);
}

void ReadingsTest::missingBoardsCountForNothing() {
    TapeReading reading = readingOf(5'000);
    for (size_t b = 0; b < 30; ++b)
        reading.milliUnits[b].reset();
    const ReadingComparison seen = compare(reading, flat(), {});
    QCOMPARE(seen.count, 9);
    QVERIFY(!seen.error[3]);
    QVERIFY(!seen.read.right && !seen.read.trackRatio && !seen.read.unlikeness && !seen.expected.right);
    QCOMPARE(*seen.read.left, 5.0);
    QCOMPARE(seen.read.lowestBoard, 31);
}

void ReadingsTest::trackRatioAndSides() {
    TapeReading reading = readingOf(10'000);
    for (int board = firstMiddleBoard; board <= lastMiddleBoard; ++board)
        reading.milliUnits[size_t(board - 1)] = 40'000;
    reading.milliUnits[size_t(firstOuterBoard - 1)] = 15'000;
    reading.milliUnits[0] = 99'000;  // neither middle nor outer
    const TapeFigures seen = figuresOf(reading, nullptr);
    QVERIFY(std::abs(*seen.trackRatio - 40 / 10.5) < 1e-12);
    QVERIFY(std::abs(*seen.right - (19 * 10 + 2 * 30 + 5 + 89) / 19.0) < 1e-12);
    QVERIFY(std::abs(*seen.left - (19 * 10 + 2 * 30) / 19.0) < 1e-12);
    QVERIFY(std::abs(*seen.unlikeness - (89 + 5) / 19.0) < 1e-12);
    QVERIFY(!seen.lowest);
    QVERIFY(!figuresOf(readingOf(0), nullptr).trackRatio);
}

void ReadingsTest::lowestOnOiledBoardsOnly() {
    TapeReading reading = readingOf(6'000);
    reading.milliUnits[0] = 0;       // board 1: no stroke covers it
    reading.milliUnits[36] = 2'500;  // board 37: the last one that is covered
    const Pattern pattern = flat();
    const TapeFigures seen = figuresOf(reading, &pattern);
    QCOMPARE(*seen.lowest, 2.5);
    QCOMPARE(seen.lowestBoard, 37);
    reading.distance = feet(50);
    QVERIFY(!figuresOf(reading, &pattern).lowest);
}

void ReadingsTest::theSuspendedRuleIsHistory() {
    // At least three units on each board from 1992, suspended in 2019: the governing body's page of about 2007 and a reposted
    // notice.
    const std::vector<CheckResult> results = checkReading(compare(readingOf(2'999), flat(), {}), {});
    QCOMPARE(results.size(), size_t(1));
    QCOMPARE(results[0].check.id, CheckId::ThreeUnits);
    QCOMPARE(results[0].check.status, CheckStatus::Suspended);
    QCOMPARE(results[0].check.since, 1992);
    QCOMPARE(results[0].check.suspendedIn, 2019);
    QCOMPARE(*results[0].least, 3.0);
    QVERIFY(results[0].isBroken());
    QVERIFY(checkReading(compare(readingOf(3'000), flat(), {}), {})[0].holds);
    for (const CheckResult& result : results)
        QVERIFY(result.check.status != CheckStatus::InForce);
}

void ReadingsTest::theCentresOwnLimits() {
    ReadingLimits own;
    own.lowestMilliUnits = 2'000;
    own.largestErrorMilliUnits = 500;
    own.leastTrackPermille = 900;
    own.mostTrackPermille = 1'100;
    const std::vector<CheckResult> results = checkReading(compare(readingOf(2'500), flat(), {}), own);
    QCOMPARE(results.size(), size_t(4));
    for (size_t i = 1; i < results.size(); ++i)
        QCOMPARE(results[i].check.status, CheckStatus::CentresOwn);
    QVERIFY(results[1].holds);
    QVERIFY(results[2].isBroken());  // computed film is 3.38 units
    QCOMPARE(*results[2].least, -0.5);
    QVERIFY(results[3].holds);
    QCOMPARE(*results[3].value, 1.0);
    own.leastTrackPermille = 1'001;
    own.mostTrackPermille.reset();
    QVERIFY(checkReading(compare(readingOf(2'500), flat(), {}), own)[3].isBroken());
}

void ReadingsTest::nothingReadNothingJudged() {
    TapeReading reading = readingOf(0);
    reading.milliUnits.fill(std::nullopt);
    ReadingLimits own;
    own.lowestMilliUnits = own.largestErrorMilliUnits = 1;
    own.leastTrackPermille = 1;
    const ReadingComparison seen = compare(reading, flat(), {});
    QCOMPARE(seen.count, 0);
    QCOMPARE(seen.largestBoard, 0);
    for (const CheckResult& result : checkReading(seen, own)) {
        QVERIFY(!result.value);
        QVERIFY(!result.isBroken());
    }
}

void ReadingsTest::geometryTolerances() {
    // 40/1000 in for level and depression: a general sports reference; tilt and crown: from memory.
    Inspection inspection;
    inspection.values = {{GeometryFeature::Tilt, feet(10), Micrometres{1'016}},
                         {GeometryFeature::Tilt, feet(20), Micrometres{-1'017}},
                         {GeometryFeature::Depression, feet(30), Micrometres{1'017}},
                         {GeometryFeature::Level, feet(40), Micrometres{0}}};
    const std::vector<GeometryResult> results = checkInspection(inspection);
    QCOMPARE(results.size(), size_t(4));
    QVERIFY(results[0].holds && !results[1].holds && !results[2].holds && results[3].holds);
    QCOMPARE(results[0].tolerance.check.source, CheckSource::ReferenceAndMemory);
    QCOMPARE(results[2].tolerance.check.source, CheckSource::SportsReference);
    QCOMPARE(laneward::geometryTolerances().size(), size_t(4));
    QCOMPARE(laneward::geometryTolerances()[0].most.value, std::int64_t(0.040 * 25'400));
}

void ReadingsTest::tooFewTapesFitNothing() {
    MeasuredFilm one{readingOf(3'000), flat()};
    for (size_t b = 9; b < size_t(boards); ++b)
        one.reading.milliUnits[b].reset();
    const std::vector<MeasuredFilm> few{one};  // boards 3 to 9
    const Result<CarryFit> fit = fitCarry(few);
    QVERIFY(!fit);
    QCOMPARE(fit.error().finding.rule, QByteArray("carry.too-few"));
    QCOMPARE(fit.error().finding.subject, QString("7"));
    MeasuredFilm beyond{readingOf(0), flat()};
    beyond.reading.distance = feet(55);
    QVERIFY(!fitCarry(std::vector<MeasuredFilm>{beyond}));
    // One even tape in the middle says nothing about the carry length.
    MeasuredFilm even{readingOf(3'400), flat()};
    for (size_t b = 0; b < size_t(boards); b += 2)
        even.reading.milliUnits[b] = 3'500;
    const Result<CarryFit> loose = fitCarry(std::vector<MeasuredFilm>{even});
    QVERIFY(loose);
    QCOMPARE(loose->carryLow.value, 0);
    QVERIFY(!loose->isBounded);
}

QTEST_GUILESS_MAIN(ReadingsTest)
#include "tst_readings.moc"
