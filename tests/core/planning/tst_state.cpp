#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

class TestState : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void laneTimeGrowsWithThePattern() {
        const Machine m = machineOf("m");
        Pattern p = patternOf("p");
        QCOMPARE(laneTime(m, Treatment::CleanAndCondition, &p), Seconds{100});
        p.end = feet(50);
        QCOMPARE(laneTime(m, Treatment::CleanAndCondition, &p), Seconds{106});
        p.end = feet(41);  // 0.6 s more, rounded up
        QCOMPARE(laneTime(m, Treatment::ConditionOnly, &p), Seconds{81});
        p.end = feet(30);
        QCOMPARE(laneTime(m, Treatment::CleanAndCondition, &p), Seconds{94});
        p.end = feet(39);  // 0.6 s less, rounded up
        QCOMPARE(laneTime(m, Treatment::CleanAndCondition, &p), Seconds{100});
        QCOMPARE(laneTime(m, Treatment::CleanOnly, nullptr), Seconds{60});
    }

    void movingCountsLanesInBetween() {
        const Machine m = machineOf("m");
        QCOMPARE(moveTime(m, 3, 4), Seconds{20});
        QCOMPARE(moveTime(m, 4, 3), Seconds{20});
        QCOMPARE(moveTime(m, 1, 5), Seconds{32});
        QCOMPARE(moveTime(m, 7, 7), Seconds{0});
    }

    void useIsRoundedUpAndOfTheTreatment() {
        const Machine m = machineOf("m");
        MachineLimits limits = limitsFromSettings(m);
        limits.conditionerPermille = 1'001;
        const Pattern p = patternOf("p");  // 3,900 uL
        const JobUse both = laneUse(m, limits, Treatment::CleanAndCondition, &p);
        QCOMPARE(both.conditionerTotal(), Microlitres{3'904});
        QCOMPARE(both.cleaner, m.capacity.cleanerPerLane);
        QCOMPARE(both.waste, m.capacity.wastePerLane);
        QCOMPARE(both.laneRuns, 1);
        QCOMPARE(laneUse(m, limits, Treatment::ConditionOnly, &p).cleaner, Microlitres{0});
        QCOMPARE(laneUse(m, limits, Treatment::CleanOnly, nullptr).conditionerTotal(), Microlitres{0});
    }

    void limitsAndLevelsFromSettings() {
        Machine m = machineOf("m");
        m.capacity.lanesUntilDuty = 500;
        const MachineLimits limits = limitsFromSettings(m);
        QCOMPARE(limits.machine, m.id);
        QCOMPARE(limits.lanesPerCharge, m.capacity.lanesPerCharge);
        QCOMPARE(limits.lanesUntilDuty, std::optional<int>(500));
        const MachineLevels full = fullLevels(m, limits, at(0, 9));
        QCOMPARE(full.conditioner[0], m.capacity.conditioner[0]);
        QCOMPARE(full.waste, Microlitres{0});
        QCOMPARE(full.lanesLeft, limits.lanesPerCharge);
        QCOMPARE(full.at, at(0, 9));
    }
};

QTEST_GUILESS_MAIN(TestState)
#include "tst_state.moc"
