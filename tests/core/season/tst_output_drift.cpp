// Fills against nominal on control charts, with answers worked out by hand.
#include "core/season/output_drift.h"

#include <QTest>

using namespace laneward;

namespace {

constexpr Instant start{1'790'000'000};
constexpr int lanesOfRun = 50;

/// 20 mL a lane from the first conditioner, 4 mL from the second.
Pattern pattern() {
    Pattern p{PatternId{"p"}, "P", {}, feet(40)};
    p.strokes = {{Direction::Out, 1, 20, 10, Microlitres{100}, feet(0), feet(20), 0},
                 {Direction::Out, 1, 20, 2, Microlitres{100}, feet(20), feet(40), 1}};
    p.edition = 1;
    return p;
}

Machine machine() {
    Machine m{MachineId{"m"}, "Heron"};
    m.capacity.cleanerPerLane = millilitres(100);
    m.conditioners = {"Amber", "Clear"};
    m.cleaner = "Wash";
    return m;
}

RunLog run(int n, const char* on = "m") {
    RunLog r;
    r.id = {QString("run %1").arg(n, 3, 10, QChar('0'))};
    r.machine = MachineId{on};
    r.time = {start + hours(24 * n), start + hours(24 * n + 1)};
    r.pattern = PatternId{"p"};
    r.patternVersion = 1;
    r.use.laneRuns = lanesOfRun;
    return r;
}

LevelReading fill(int n, Microlitres amber, bool toLine = true) {
    LevelReading f;
    f.id = {QString("fill %1").arg(n, 3, 10, QChar('0'))};
    f.levels.machine = MachineId{"m"};
    f.levels.at = start + hours(24 * n + 2);
    f.poured = Poured{{amber, Microlitres{0}}, Microlitres{0}, toLine};
    return f;
}

/// A run a day and a fill after it that takes `permille[n]` of 1,000 mL; the first fill only begins to count.
DriftHistory daily(const std::vector<int>& permille) {
    DriftHistory h;
    h.versions = {{pattern(), start - hours(24 * 30), {}}};
    h.readings = {fill(0, millilitres(700))};
    for (size_t n = 0; n < permille.size(); ++n) {
        h.runs.push_back(run(int(n) + 1));
        h.readings.push_back(fill(int(n) + 1, millilitres(permille[n])));
    }
    return h;
}

/// 20 fills that alternate between 1,010 and 990: mean 1, mean moving range 0.02, sigma 0.02 sqrt(pi) / 2 = 0.017725.
std::vector<int> steady() {
    std::vector<int> all;
    for (int n = 0; n < 20; ++n)
        all.push_back(n % 2 ? 990 : 1'010);
    return all;
}

std::vector<int> after(std::vector<int> first, std::vector<int> then) {
    first.insert(first.end(), then.begin(), then.end());
    return first;
}

QByteArrayList rules(const std::vector<Finding>& findings) {
    QByteArrayList all;
    for (const Finding& f : findings)
        all << f.rule;
    return all;
}

const DriftSignal* signalOf(const OutputDrift& drift, DriftChart chart) {
    for (const DriftSignal& s : drift.signals)
        if (s.chart == chart) return &s;
    return nullptr;
}

}  // namespace

class OutputDriftTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void pointsAreFillsOverNominal();
    void onlyFullLinesCloseAnInterval();
    void shortIntervalsJoinTheNext();
    void theVersionThatWasRunCounts();
    void cleanerCountsTheLanesCleaned();
    void correctionsCount();
    void unknownPatternsAreLeftOut();
    void aSteadyMachineIsSilent();
    void aShiftIsFoundWhereItBegan_data();
    void aShiftIsFoundWhereItBegan();
    void oneOddFillIsASingleSignal();
    void theLeadSetsTheBaseline();
    void tooLittleIsNotJudged();
};

void OutputDriftTest::pointsAreFillsOverNominal() {
    DriftHistory h = daily({1'010, 960});
    h.runs.push_back(run(2, "other"));
    h.runs.back().id = {"elsewhere"};
    const std::vector<FillPoint> points = fillPoints(h, machine(), 0).points;
    QCOMPARE(points.size(), size_t(2));
    QCOMPARE(points[0].fill.value, QString("fill 001"));
    QCOMPARE(points[0].at.seconds, (start + hours(26)).seconds);
    QCOMPARE(points[0].nominal.value, millilitres(1'000).value);
    QCOMPARE(points[0].ratio, 1.01);
    QVERIFY((points[0].runs == std::vector{OperationId{"run 001"}}));
    QCOMPARE(points[1].ratio, 0.96);
    QVERIFY((points[1].runs == std::vector{OperationId{"run 002"}}));
    QVERIFY(fillPoints(h, machine(), 1).points.empty());  // nothing was poured of the second
}

void OutputDriftTest::onlyFullLinesCloseAnInterval() {
    DriftHistory h = daily({1'000, 1'000, 1'000, 1'000});
    h.readings[2].poured->toLine = false;
    h.readings[3].poured.reset();  // measured, nothing poured
    const std::vector<FillPoint> points = fillPoints(h, machine(), 0).points;
    QCOMPARE(points.size(), size_t(2));
    QCOMPARE(points[1].poured.value, millilitres(2'000).value);
    QCOMPARE(points[1].nominal.value, millilitres(3'000).value);
    QCOMPARE(points[1].runs.size(), size_t(3));
    h.readings[0].poured->toLine = false;  // then the first full line is the next one
    QCOMPARE(fillPoints(h, machine(), 0).points.size(), size_t(1));
}

void OutputDriftTest::shortIntervalsJoinTheNext() {
    DriftHistory h = daily({1'000, 300, 800, 1'000});
    h.runs[1].use.laneRuns = 20;  // 400 mL, where a quarter of the tank is 500 mL
    const std::vector<FillPoint> points = fillPoints(h, machine(), 0).points;
    QCOMPARE(points.size(), size_t(3));
    QCOMPARE(points[1].poured.value, millilitres(1'100).value);
    QCOMPARE(points[1].nominal.value, millilitres(1'400).value);
    QVERIFY((points[1].runs == std::vector{OperationId{"run 002"}, OperationId{"run 003"}}));
    h.runs[1].use.laneRuns = 25;  // exactly a quarter
    QCOMPARE(fillPoints(h, machine(), 0).points.size(), size_t(4));
}

void OutputDriftTest::theVersionThatWasRunCounts() {
    DriftHistory h = daily({1'000, 1'000, 1'000});
    Pattern second = pattern();
    second.edition = 2;
    second.strokes[0].laps = 20;  // 40 mL a lane
    h.versions.push_back({second, start + hours(24 * 3) - minutes(1), {}});
    h.runs[0].patternVersion = 2;  // stated
    h.runs[1].patternVersion = 0;  // by time: still the first
    h.runs[2].patternVersion = 0;  // by time: the second
    const std::vector<FillPoint> points = fillPoints(h, machine(), 0).points;
    QCOMPARE(points[0].nominal.value, millilitres(2'000).value);
    QCOMPARE(points[1].nominal.value, millilitres(1'000).value);
    QCOMPARE(points[2].nominal.value, millilitres(2'000).value);
    h.versions.clear();  // all that is known is what the pattern says now
    h.patterns = {second};
    QCOMPARE(fillPoints(h, machine(), 0).points[1].nominal.value, millilitres(2'000).value);
}

void OutputDriftTest::cleanerCountsTheLanesCleaned() {
    DriftHistory h = daily({1'000, 1'000});
    for (LevelReading& reading : h.readings)
        reading.poured->cleaner = millilitres(5'500);
    h.runs.push_back(run(2));
    h.runs.back().id = {"more"};
    h.runs.back().treatment = Treatment::ConditionOnly;
    h.runs.push_back(run(2));
    h.runs.back().id = {"stripped"};
    h.runs.back().treatment = Treatment::CleanOnly;
    h.runs.back().pattern.reset();
    h.runs.back().use.laneRuns = 0;
    h.runs.back().lanes.resize(10);  // counted when nothing was booked
    const std::vector<FillPoint> points = fillPoints(h, machine(), cleanerProduct).points;
    QCOMPARE(points[0].ratio, 1.1);
    QCOMPARE(points[1].nominal.value, millilitres(6'000).value);
    QCOMPARE(fillPoints(h, machine(), 0).points[1].nominal.value, millilitres(2'000).value);
}

void OutputDriftTest::correctionsCount() {
    DriftHistory h = daily({1'000, 1'000});
    RunLog never = run(2);
    never.id = {"never"};
    never.corrects = h.runs[1].id;
    never.result = RunResult::Void;
    h.runs.push_back(never);
    LevelReading right = fill(1, millilitres(1'030));
    right.id = {"right"};
    right.corrects = h.readings[1].id;
    h.readings.push_back(right);
    const std::vector<FillPoint> points = fillPoints(h, machine(), 0).points;
    QCOMPARE(points.size(), size_t(1));  // no run before the second: nothing to compare with
    QCOMPARE(points[0].ratio, 1.03);
    QCOMPARE(points[0].fill.value, QString("right"));
}

void OutputDriftTest::unknownPatternsAreLeftOut() {
    DriftHistory h = daily(steady());
    h.runs[3].patternVersion = 9;
    h.runs[5].pattern = PatternId{"gone"};
    const OutputDrift drift = outputDrift(h, machine(), 0);
    QCOMPARE(drift.points.size(), size_t(18));
    QCOMPARE(rules(drift.notes), (QByteArrayList{"drift.left-out", "drift.too-few"}));
    QVERIFY((drift.notes[0].values == std::vector<Value>{QString("Amber"), std::int64_t(2)}));
    QVERIFY(!drift.isJudged());
}

void OutputDriftTest::aSteadyMachineIsSilent() {
    const OutputDrift drift = outputDrift(daily(after(steady(), steady())), machine(), 0);
    QVERIFY(drift.isJudged() && drift.signals.empty() && drift.notes.empty());
    QCOMPARE(drift.baselineEnd, size_t(20));
    QCOMPARE(drift.baseline.mean, 1.0);
    QVERIFY(std::abs(drift.baseline.sigma - 0.017724538509) < 1e-12);  // 0.02 sqrt(pi) / 2
    QVERIFY(std::abs(drift.individuals.limits.upper - 1.053173615528) < 1e-12);
    QCOMPARE(drift.average.averages.size(), size_t(40));
}

void OutputDriftTest::aShiftIsFoundWhereItBegan_data() {
    QTest::addColumn<int>("by");
    QTest::addColumn<QByteArray>("average");
    QTest::addColumn<QByteArray>("sum");
    QTest::newRow("more") << 50 << QByteArray("drift.average-high") << QByteArray("drift.sum-high");
    QTest::newRow("less") << -50 << QByteArray("drift.average-low") << QByteArray("drift.sum-low");
}

// Up by 0.05 = 2.82 sigma: within 3 sigma. The sum grows by 0.05 - sigma / 2 = 0.041138 a fill and passes 4.773834 sigma =
// 0.084614 with the third. The average goes 0.0091, 0.0173, 0.0238 and passes 2.962 sigma / 3 = 0.0175 with the third. Downwards
// the last of the baseline, 990, begins both one fill earlier: the sum holds 0.01 - sigma / 2 = 0.0011 of it, the average too.
void OutputDriftTest::aShiftIsFoundWhereItBegan() {
    QFETCH(int, by);
    QFETCH(QByteArray, average);
    QFETCH(QByteArray, sum);
    const std::vector<int> shifted(5, 1'000 + by);
    const OutputDrift drift = outputDrift(daily(after(steady(), shifted)), machine(), 0);
    QCOMPARE(drift.signals.size(), size_t(2));
    for (const auto& [chart, rule] : {std::pair(DriftChart::Average, average), {DriftChart::Sum, sum}}) {
        const DriftSignal* found = signalOf(drift, chart);
        QVERIFY(found);
        QCOMPARE(found->finding.rule, rule);
        QCOMPARE(found->finding.subject, QString("Heron"));
        QCOMPARE(found->high, by > 0);
        QCOMPARE(found->began, size_t(20));
        const size_t first = by > 0 || chart == DriftChart::Sum ? 22 : 21;
        QCOMPARE(found->first, first);
        QCOMPARE(found->last, size_t(24));
        QVERIFY(found->isNow);
        QCOMPARE(found->runs.size(), first - 20 + 1);
        QCOMPARE(found->runs.front().value, QString("run 021"));
        QVERIFY(found->finding.values[0] == Value(QString("Amber")));
        QVERIFY(found->finding.values[1] == Value(drift.points[first].at));
        QVERIFY(found->finding.values[2] == Value(std::int64_t(1'000 + by)));
        QVERIFY(found->finding.values[3] == Value(std::int64_t(1'000)));
    }
}

void OutputDriftTest::oneOddFillIsASingleSignal() {
    // 1,080 is 4.5 sigma up; from 990 it is a range of 0.09, above D4 x 0.02 = 0.0653; back to 990 likewise.
    const OutputDrift drift = outputDrift(daily(after(steady(), {1'080, 990, 1'010, 990, 1'010})), machine(), 0);
    const DriftSignal* single = signalOf(drift, DriftChart::Single);
    QVERIFY(single);
    QCOMPARE(single->finding.rule, QByteArray("drift.single-high"));
    QCOMPARE(single->first, size_t(20));
    QCOMPARE(single->last, size_t(20));
    QVERIFY(!single->isNow);
    QVERIFY((single->runs == std::vector{OperationId{"run 021"}}));
    const DriftSignal* range = signalOf(drift, DriftChart::Range);
    QVERIFY(range);
    QCOMPARE(range->finding.rule, QByteArray("drift.range"));
}

void OutputDriftTest::theLeadSetsTheBaseline() {
    std::vector<int> shifted = steady();
    for (int& one : shifted)
        one += 50;
    const DriftHistory h = daily(after(steady(), shifted));
    QVERIFY(!outputDrift(h, machine(), 0).signals.empty());
    const Span since{start + hours(24 * 21), start + hours(24 * 41)};  // after the parts were changed
    const OutputDrift drift = outputDrift(h, machine(), 0, since);
    QCOMPARE(drift.baselineBegin, size_t(20));
    QCOMPARE(drift.baselineEnd, size_t(40));
    QCOMPARE(drift.baseline.mean, 1.05);
    QCOMPARE(drift.individuals.ranges.size(), size_t(19));
    QVERIFY(drift.signals.empty());
}

void OutputDriftTest::tooLittleIsNotJudged() {
    std::vector<int> few = steady();
    few.pop_back();
    const OutputDrift drift = outputDrift(daily(few), machine(), 0);
    QVERIFY(!drift.isJudged() && drift.signals.empty());
    QCOMPARE(drift.points.size(), size_t(19));
    QVERIFY((drift.notes[0].values == std::vector<Value>{QString("Amber"), std::int64_t(19), std::int64_t(20)}));
    const Span week{start, start + hours(24 * 7)};
    QCOMPARE(rules(outputDrift(daily(steady()), machine(), 0, week).notes), QByteArrayList{"drift.too-few"});
    const OutputDrift equal = outputDrift(daily(std::vector<int>(30, 1'000)), machine(), 0);
    QCOMPARE(rules(equal.notes), QByteArrayList{"drift.no-spread"});
    QVERIFY(!equal.isJudged());
    QVERIFY(outputDrift({}, machine(), cleanerProduct).points.empty());
}

QTEST_GUILESS_MAIN(OutputDriftTest)
#include "tst_output_drift.moc"
