// What a machine has done: from logs, put right by its counters. Values by hand.
#include "core/service/service_record.h"

#include <QTest>

using namespace laneward;

namespace {

const MachineId heron{"heron"};
constexpr Instant day(int n) { return {std::int64_t{86'400} * n}; }

MachineWork run(int onDay, int lanes, const MachineId& machine = heron) {
    return {machine, day(onDay), {lanes, 1, minutes(2) * lanes, millilitres(30) * lanes}};
}

MeterReading shown(const char* id, int onDay, std::int64_t lanes, bool replaced = false) {
    MeterReading reading{{id}, day(onDay), {"ada"}, heron, MeterKind::Lanes, lanes};
    reading.replaced = replaced;
    return reading;
}

bool has(const std::vector<Finding>& faults, const char* rule) {
    return std::any_of(faults.begin(), faults.end(), [&](const Finding& f) { return f.rule == rule; });
}

}  // namespace

class MetersTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void logsAlone();
    void theFirstReadingKnowsWhatWasBefore();
    void aCounterPutsLogsRight();
    void aNewCounterLosesNothing();
    void orderDoesNotMatter();
    void backwardsIsRefused();
    void correctionsAndWithdrawals();
};

void MetersTest::logsAlone() {
    const std::vector<MachineWork> work{run(1, 8), run(2, 10), run(3, 4), run(2, 100, {"wren"})};
    const Meters meters = metersAt({}, work, heron, day(2));
    QCOMPARE(meters, (Meters{18, 2, minutes(36), millilitres(540)}));
    QCOMPARE(valueOf(meters, MeterKind::Minutes), 36);
    QCOMPARE(valueOf(meters, MeterKind::Volume), 540'000);
    QCOMPARE(valueOf(meters, MeterKind::Days), 0);
}

void MetersTest::theFirstReadingKnowsWhatWasBefore() {
    const std::vector<MachineWork> work{run(1, 8), run(5, 10)};
    const std::vector<MeterReading> readings{shown("r1", 3, 12'000)};
    QCOMPARE(metersAt(readings, work, heron, day(2)).lanes, 8);
    QCOMPARE(metersAt(readings, work, heron, day(4)).lanes, 12'000);
    QCOMPARE(metersAt(readings, work, heron, day(5)).lanes, 12'010);
    QCOMPARE(metersAt(readings, work, heron, day(5)).runs, 2);  // no counter of runs was read
}

void MetersTest::aCounterPutsLogsRight() {
    const std::vector<MachineWork> work{run(4, 10), run(6, 5)};
    const std::vector<MeterReading> readings{shown("r1", 3, 100), shown("r2", 5, 125)};  // 15 lanes were never logged
    QCOMPARE(metersAt(readings, work, heron, day(4)).lanes, 110);
    QCOMPARE(metersAt(readings, work, heron, day(5)).lanes, 125);
    QCOMPARE(metersAt(readings, work, heron, day(7)).lanes, 130);
}

void MetersTest::aNewCounterLosesNothing() {
    const std::vector<MachineWork> work{run(4, 10), run(6, 5), run(8, 7)};
    const std::vector<MeterReading> readings{shown("r1", 3, 100), shown("r2", 5, 0, true), shown("r3", 7, 6)};
    QCOMPARE(metersAt(readings, work, heron, day(5)).lanes, 110);
    QCOMPARE(metersAt(readings, work, heron, day(6)).lanes, 115);
    QCOMPARE(metersAt(readings, work, heron, day(7)).lanes, 116);  // it counted one more than was logged
    QCOMPARE(metersAt(readings, work, heron, day(9)).lanes, 123);
}

void MetersTest::orderDoesNotMatter() {
    std::vector<MachineWork> work{run(4, 10), run(6, 5), run(8, 7)};
    std::vector<MeterReading> readings{shown("r1", 3, 100), shown("r2", 5, 0, true), shown("r3", 7, 6)};
    const Meters there = metersAt(readings, work, heron, day(9));
    std::reverse(work.begin(), work.end());
    std::reverse(readings.begin(), readings.end());
    QCOMPARE(metersAt(readings, work, heron, day(9)), there);
}

void MetersTest::backwardsIsRefused() {
    const std::vector<MeterReading> readings{shown("r1", 3, 100), shown("r2", 7, 200)};
    QVERIFY(faultsOf(shown("n", 5, 150), readings, day(9)).empty());
    QVERIFY(has(faultsOf(shown("n", 5, 99), readings, day(9)), "meter.backwards"));
    QVERIFY(has(faultsOf(shown("n", 5, 201), readings, day(9)), "meter.backwards"));  // more than was read later
    QVERIFY(faultsOf(shown("n", 8, 3, true), readings, day(9)).empty());
    QVERIFY(has(faultsOf(shown("n", 10, 300), readings, day(9)), "meter.in-future"));
    QVERIFY(has(faultsOf(shown("n", 8, -1), readings, day(9)), "meter.value"));
    MeterReading right = shown("n", 7, 150);
    right.corrects = OperationId{"r2"};
    QVERIFY(faultsOf(right, readings, day(9)).empty());
    MeterReading volume = shown("n", 8, 300);
    volume.meter = MeterKind::Volume;
    QVERIFY(has(faultsOf(volume, readings, day(9)), "meter.kind"));
}

void MetersTest::correctionsAndWithdrawals() {
    MeterReading right = shown("r2", 3, 110);
    right.corrects = OperationId{"r1"};
    const std::vector<MeterReading> kept = standing({shown("r1", 3, 100), right});
    QCOMPARE(kept.size(), size_t(1));
    QCOMPARE(kept.front().shown, 110);
    right.withdrawn = true;
    QVERIFY(standing({shown("r1", 3, 100), right}).empty());
    ServiceRecord first;
    first.id = {"s1"};
    ServiceRecord gone = first;
    gone.id = {"s2"};
    gone.corrects = first.id;
    gone.result = ServiceResult::Withdrawn;
    QVERIFY(standing({first, gone}).empty());
    QCOMPARE(standing({first}).size(), size_t(1));
}

QTEST_GUILESS_MAIN(MetersTest)
#include "tst_meters.moc"
