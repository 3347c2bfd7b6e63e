// Every hard constraint: a plan that would break it without, and keeps it with it.
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

State evening() {
    State s = house(4);
    s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4})};
    return s;
}

Span workOf(const Plan& p) { return {p.jobs.front().time.begin, p.jobs.back().steps.back().time.end}; }

bool workedDuring(const Plan& p, int lane, Span time) {
    for (const Job& job : p.jobs) {
        for (const LaneTime& l : job.lanes) {
            if (l.lane == lane && l.time.overlaps(time)) return true;
        }
    }
    return false;
}

}  // namespace

class TestConstraints : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void pairPartnerInPlay() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1}), eventOf("b", 0, {17, 0}, 60, {2})};
        s.series[1].demands[0].kind = DemandKind::AsItIs;
        const Span partner{at(0, 17), at(0, 18, 10)};
        QVERIFY(!workedDuring(planDay(s), 1, partner));
        QCOMPARE(planDay(s).jobs.front().time.end, at(0, 17));
        QVERIFY(has(planDay(s).jobs.front().reasons, "job.fixed-by-partner"));
        s.centre.facts.settings.pairPartnerRule = false;
        QVERIFY(workedDuring(planDay(s), 1, partner));
    }

    void laneOutOfService() {
        State s = evening();
        s.centre.outages.push_back({{"o"}, {2}, {}, at(0, 17), at(0, 17, 50), {}, 0});
        const Plan p = planDay(s);
        QVERIFY(!workedDuring(p, 2, {at(0, 17), at(0, 17, 50)}));
        QVERIFY(violationsOf(s, p).empty());
        QCOMPARE(p.objective().unmet, 0);
    }

    void machineOutOfService() {
        State s = evening();
        s.centre.outages.push_back({{"o"}, {}, MachineId{"m1"}, at(0, 17), std::nullopt, {}, 0});
        const Plan p = planDay(s);
        QVERIFY(workOf(p).end <= at(0, 17));
        s.centre.outages[0].begin = at(0, 5);
        QVERIFY(planDay(s).jobs.empty());
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.out-of-service"));
    }

    void closureWithoutStaff() {
        State s = evening();
        Series closure = eventOf("shut", 0, {16, 0}, 110, {});
        closure.kind = EventKind::Closure;
        closure.demands.clear();
        closure.noStaff = true;
        s.series.push_back(closure);
        const Plan p = planDay(s);
        QVERIFY(workOf(p).end <= at(0, 16));
        s.series.back().noStaff = false;
        QVERIFY(workOf(planDay(s)).end > at(0, 17));
    }

    void bars() {
        State s = evening();
        s.centre.machines.push_back(machineOf("m2"));
        s.centre.machines[0].bars.lanes = {1, 2};
        for (const Job& job : planDay(s).jobs)
            QVERIFY(job.machine.value == "m2" || !job.laneSet().intersects({1, 2}));
        s.centre.machines[0].bars = {{}, {PatternId{"p1"}}, {}};
        for (const Job& job : planDay(s).jobs)
            QCOMPARE(job.machine.value, QString("m2"));
        s.centre.machines[0].bars = {{}, {}, {Treatment::CleanAndCondition}};
        for (const Job& job : planDay(s).jobs)
            QCOMPARE(job.machine.value, QString("m2"));
        s.centre.machines.pop_back();
        QVERIFY(planDay(s).jobs.empty());
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.barred"));
    }

    void shiftAndAllowance() {
        State s = evening();
        s.centre.shifts[0] = shiftOf("s1", {9, 0}, {16, 0});
        QVERIFY(workOf(planDay(s)).end <= at(0, 16));
        s.centre.shifts[0] = shiftOf("s1", {18, 0}, {23, 0});
        const Plan over = planDay(s);
        QVERIFY(over.objective().overtime_s > 0);
        QVERIFY(workOf(over).begin >= at(0, 17));
        s.centre.shifts[0].overtimeBefore = Seconds{0};
        const Plan none = planDay(s);
        QVERIFY(none.jobs.empty());
        QCOMPARE(none.objective().unmet, 4);
        QVERIFY(has(none.unmet[0].reasons, "short.no-staff"));
        s.centre.machines[0].attended = false;
        QCOMPARE(planDay(s).objective().unmet, 0);
        QCOMPARE(planDay(s).objective().overtime_s, 0);
    }

    void onePersonIsWithOneMachine() {
        State s = house(24);
        s.centre.machines.push_back(machineOf("m2"));
        s.series = {eventOf("before", 0, {13, 0}, 220, LaneSet::range(1, 24)),
                    eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 24))};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        const Plan p = planDay(s);
        for (const Outing& a : p.days[0].outings) {
            for (const Outing& b : p.days[0].outings)
                QVERIFY(&a == &b || !a.time.overlaps(b.time));
        }
    }

    void nothingBeforeNow() {
        State s = evening();
        const Plan p = planDay(s, at(0, 17, 30));
        QVERIFY(p.jobs.front().time.begin >= at(0, 17, 30));
        QVERIFY(p.objective().tight_s > 0);
        QVERIFY(has(p.jobs.front().reasons, "job.fixed-by-now"));
    }

    void refill() {
        State s = evening();
        s.levels = {fullLevels(s.centre.machines[0], limitsFromSettings(s.centre.machines[0]), at(0, 6))};
        s.levels[0].conditioner[0] = Microlitres{4 * 3'900};
        QVERIFY(!hasStep(planDay(s).jobs[0], StepKind::Refill));
        s.levels[0].conditioner[0] = Microlitres{4 * 3'900 - 1};
        const Plan p = planDay(s);
        QVERIFY(hasStep(p.jobs[0], StepKind::Refill));
        QVERIFY(has(p.jobs[0].reasons, "job.refill-before"));
        QCOMPARE(p.jobs[0].time.begin, p.jobs[0].lanes[0].time.begin - minutes(5) - minutes(6));
        s.levels[0].conditioner[0] = millilitres(2'000);
        s.levels[0].cleaner = s.centre.machines[0].capacity.cleanerPerLane * 4 - Microlitres{1};
        QVERIFY(hasStep(planDay(s).jobs[0], StepKind::Refill));
        QVERIFY(!hasStep(plan(s, at(-1, 6), {day0, day0}).jobs[0], StepKind::Refill));  // a later day begins full
    }

    void wasteIsEmptied() {
        State s = evening();
        s.levels = {fullLevels(s.centre.machines[0], limitsFromSettings(s.centre.machines[0]), at(0, 6))};
        s.levels[0].waste = s.centre.machines[0].capacity.waste - s.centre.machines[0].capacity.wastePerLane * 4;
        QVERIFY(!hasStep(planDay(s).jobs[0], StepKind::EmptyWaste));
        s.levels[0].waste += Microlitres{1};
        QVERIFY(hasStep(planDay(s).jobs[0], StepKind::EmptyWaste));
        QVERIFY(has(planDay(s).jobs[0].reasons, "job.empty-before"));
    }

    void packIsSwappedThenCharged() {
        State s = evening();
        s.levels = {fullLevels(s.centre.machines[0], limitsFromSettings(s.centre.machines[0]), at(0, 6))};
        s.levels[0].lanesLeft = 4;
        QVERIFY(!hasStep(planDay(s).jobs[0], StepKind::SwapPack));
        s.levels[0].lanesLeft = 3;
        QVERIFY(hasStep(planDay(s).jobs[0], StepKind::SwapPack));
        s.centre.machines[0].capacity.sparePacks = 0;
        const Plan charged = planDay(s);
        QVERIFY(hasStep(charged.jobs[0], StepKind::Charge));
        QVERIFY(has(charged.jobs[0].reasons, "job.charge-before"));
        QCOMPARE(charged.jobs[0].time.begin, charged.jobs[0].lanes[0].time.begin - minutes(5) - hours(4));
        QCOMPARE(charged.objective().overtime_s, 0);
    }

    void chargingBindsNobody() {
        State s = evening();
        s.levels = {fullLevels(s.centre.machines[0], limitsFromSettings(s.centre.machines[0]), at(0, 6))};
        s.levels[0].lanesLeft = 0;
        s.centre.machines[0].capacity.sparePacks = 0;
        s.centre.shifts[0] = shiftOf("s1", {17, 0}, {23, 0});
        const Plan p = planDay(s);
        QCOMPARE(p.objective().overtime_s, 0);
        QCOMPARE(p.objective().unmet, 0);
        QVERIFY(p.jobs[0].time.begin < at(0, 14));
    }

    void dutyIsNeverPassed() {
        State s = evening();
        s.centre.machines[0].capacity.lanesUntilDuty = 100;
        MachineLimits limits = limitsFromSettings(s.centre.machines[0]);
        limits.lanesUntilDuty = 4;
        s.limits = {limits};
        QVERIFY(!hasStep(planDay(s).jobs[0], StepKind::Duty));
        s.series.push_back(eventOf("b", 1, {18, 0}, 60, {1}));
        const Plan days = planDay(s, at(0, 6), 2);
        QVERIFY(!hasStep(days.jobs[0], StepKind::Duty));
        QVERIFY(hasStep(days.jobs[1], StepKind::Duty));  // it runs on from day to day
        s.limits[0].lanesUntilDuty = 3;
        QVERIFY(hasStep(planDay(s).jobs[0], StepKind::Duty));
    }

    void jobsFitTheTanks() {
        State s = house(24);
        s.centre.machines[0].capacity.conditioner[0] = Microlitres{10 * 3'900};
        s.series = {eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 24))};
        const Plan p = planDay(s);
        QCOMPARE(p.objective().treatments, 24);
        QVERIFY(p.jobs.size() >= 3);
        QVERIFY(violationsOf(s, p).empty());
        s.centre.machines[0].capacity.conditioner[0] = Microlitres{3'899};
        QCOMPARE(planDay(s).objective().unmet, 24);
    }

    void firstPairTwice() {
        State s = evening();
        s.series[0].firstPairTwice = true;
        const Plan p = planDay(s);
        QVERIFY(hasStep(p.jobs[0], StepKind::FirstPairTwice));
        QCOMPARE(p.jobs[0].use.laneRuns, 6);
        QCOMPARE(p.jobs[0].use.conditionerTotal(), Microlitres{6 * 3'900});
        QCOMPARE(p.objective().treatments, 4);
        // Two lanes, one move between them and one back.
        QCOMPARE(p.jobs[0].time.begin, p.jobs[0].lanes[0].time.begin - minutes(5) - Seconds{2 * 100 + 2 * 20});
        s.series.push_back(eventOf("b", 0, {18, 40}, 60, {7, 8}));
        s.centre.facts.lanes = 8;
        const Plan two = planDay(s);
        QCOMPARE(two.objective().outings, 1);
        int steps = 0;
        for (const Job& job : two.jobs)
            steps += hasStep(job, StepKind::FirstPairTwice) ? 1 : 0;
        QCOMPARE(steps, 1);  // once an outing
    }

    void firstPairTwiceCountsOnThePack() {
        State s = evening();
        s.series[0].firstPairTwice = true;
        s.levels = {fullLevels(s.centre.machines[0], limitsFromSettings(s.centre.machines[0]), at(0, 6))};
        s.levels[0].lanesLeft = 6;
        QVERIFY(!hasStep(planDay(s).jobs[0], StepKind::SwapPack));
        s.levels[0].lanesLeft = 5;
        QVERIFY(hasStep(planDay(s).jobs[0], StepKind::SwapPack));
    }

    void twoMachinesNeverOnOneLane() {
        State s = house(2);
        s.centre.machines.push_back(machineOf("m2"));
        s.centre.shifts[0].people = 2;
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2})};
        QCOMPARE(planDay(s).objective().treatments, 2);
        QVERIFY(violationsOf(s, planDay(s)).empty());
    }
};

QTEST_GUILESS_MAIN(TestConstraints)
#include "tst_constraints.moc"
