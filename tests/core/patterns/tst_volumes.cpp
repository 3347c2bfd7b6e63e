// Volumes of patterns by rows computed by hand, and faults of strokes.
#include "core/patterns/pattern.h"

#include <QTest>

#include <functional>

using namespace laneward;

namespace {

Pattern threeStrokes() {
    // By hand: 3 x (37 - 3 + 1 = 35) x 50 = 5,250; 2 x (30 - 10 + 1 = 21) x 45 = 1,890; 1 x (39 - 1 + 1 = 39) x 40 = 1,560 uL.
    Pattern p{PatternId{"p"}, "Heron", {}, feet(42)};
    p.strokes = {{Direction::Out, 3, 37, 3, Microlitres{50}, feet(0), feet(20), 0},
                 {Direction::Out, 10, 30, 2, Microlitres{45}, feet(20), feet(42), 1},
                 {Direction::Back, 1, 39, 1, Microlitres{40}, feet(5), feet(30), 0}};
    return p;
}

}  // namespace

class TestVolumes : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void addsStrokes();
    void oneBoardOneLap();
    void wholeLaneDose();
    void emptyPatternTakesNothing();
    void findsFaults_data();
    void findsFaults();
};

void TestVolumes::addsStrokes() {
    const Volumes v = volumes(threeStrokes());
    QCOMPARE(v.out.value, 7'140);
    QCOMPARE(v.back.value, 1'560);
    QCOMPARE(v.lane.value, 8'700);
    QCOMPARE(v.bySlot[0].value, 6'810);
    QCOMPARE(v.bySlot[1].value, 1'890);
    QVERIFY(faultsOf(threeStrokes()).empty());
}

void TestVolumes::oneBoardOneLap() {
    QCOMPARE(volume({Direction::Back, 20, 20, 1, Microlitres{37}, feet(0), feet(1), 0}).value, 37);
}

void TestVolumes::wholeLaneDose() {
    // 1 unit of film over 41.5 in x 40 ft is 2.310167 mL (one unit = 0.0167 mL per square foot; the unit is from memory, the
    // product exact arithmetic). Spread over 39 boards in one lap that is 59.235 uL a board: a dose of 59 gives 2.301 mL.
    QCOMPARE(volume({Direction::Out, 1, 39, 1, Microlitres{59}, feet(0), feet(40), 0}).value, 2'301);
}

void TestVolumes::emptyPatternTakesNothing() { QCOMPARE(volumes(Pattern{}), Volumes{}); }

void TestVolumes::findsFaults_data() {
    QTest::addColumn<std::function<void(Pattern&)>>("spoil");
    QTest::addColumn<QByteArray>("rule");
    const auto row = [](const char* name, const char* rule, std::function<void(Pattern&)> spoil) {
        QTest::newRow(name) << spoil << QByteArray(rule);
    };
    row("board 0", "stroke.boards", [](Pattern& p) { p.strokes[0].firstBoard = 0; });
    row("board 40", "stroke.boards", [](Pattern& p) { p.strokes[0].lastBoard = 40; });
    row("boards reversed", "stroke.boards", [](Pattern& p) { p.strokes[0].firstBoard = 38; });
    row("no laps", "stroke.laps", [](Pattern& p) { p.strokes[1].laps = 0; });
    row("dose", "stroke.dose", [](Pattern& p) { p.strokes[1].dose = Microlitres{-1}; });
    row("before the foul line", "stroke.distance", [](Pattern& p) { p.strokes[0].from = Micrometres{-1}; });
    row("ends reversed", "stroke.distance", [](Pattern& p) { p.strokes[0].to = feet(0); });
    row("beyond the head pin", "stroke.distance", [](Pattern& p) { p.strokes[0].to = feet(61); });
    row("beyond its end", "stroke.beyond-end", [](Pattern& p) { p.strokes[1].to = feet(43); });
    row("slot", "stroke.slot", [](Pattern& p) { p.strokes[2].slot = 2; });
    row("no strokes", "pattern.no-strokes", [](Pattern& p) { p.strokes.clear(); });
    row("no name", "pattern.no-name", [](Pattern& p) { p.name.clear(); });
    row("no id", "pattern.no-id", [](Pattern& p) { p.id = {}; });
    row("long name", "pattern.name-too-long", [](Pattern& p) { p.name = QString(201, 'x'); });
}

void TestVolumes::findsFaults() {
    QFETCH(std::function<void(Pattern&)>, spoil);
    QFETCH(QByteArray, rule);
    Pattern p = threeStrokes();
    spoil(p);
    const std::vector<Finding> faults = faultsOf(p);
    QCOMPARE(faults.size(), size_t{1});
    QCOMPARE(faults[0].rule, rule);
    Pattern end = threeStrokes();
    end.end = Micrometres{0};
    QCOMPARE(faultsOf(end)[0].rule, QByteArray("pattern.end"));
    QVERIFY(findPattern({end}, end.id) && !findPattern({end}, PatternId{"q"}));
}

QTEST_GUILESS_MAIN(TestVolumes)
#include "tst_volumes.moc"
