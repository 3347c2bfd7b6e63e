// What falls short says why, how much is missing and what would help; a remedy that is called verified really helps.
#include "tests/support/planning_builders.h"

#include <QTest>

#include <algorithm>

using namespace support;

namespace {

/// 24 lanes between two events: too many for one machine and one person.
State crowded() {
    State s = house(24);
    s.series = {eventOf("before", 0, {13, 0}, 250, LaneSet::range(1, 24)), eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 24))};
    s.series[0].demands[0].kind = DemandKind::AsItIs;
    return s;
}

const Remedy* remedy(const Plan& p, const char* rule) {
    for (const Shortfall& s : p.unmet) {
        for (const Remedy& r : s.remedies) {
            if (r.what.rule == rule) return &r;
        }
    }
    return nullptr;
}

}  // namespace

class TestShortfalls : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void crowdedGap() {
        const State s = crowded();
        const Plan p = planDay(s);
        QVERIFY(!p.unmet.empty());
        int lanes = 0;
        for (const Shortfall& shortfall : p.unmet) {
            QVERIFY(shortfall.missing > Seconds{0});
            QCOMPARE(shortfall.title, QString("Event a"));
            lanes += shortfall.unmet ? shortfall.lanes.count() : 0;
        }
        QCOMPARE(p.objective().unmet, lanes);
        QVERIFY(violationsOf(s, p).empty());
    }

    void movingTheEventHelpsAsSaid() {
        const State s = crowded();
        const Plan p = planDay(s);
        const Remedy* r = remedy(p, "remedy.move-event");
        QVERIFY(r && r->verified);
        State moved = s;
        moved.series[1].start = shifted(moved.series[1].start, r->by);
        QCOMPARE(planDay(moved).objective().unmet, 0);
        QCOMPARE(planDay(moved).objective().late_s, 0);
    }

    void secondMachineNeedsASecondPerson() {
        State s = crowded();
        QVERIFY(!remedy(planDay(s), "remedy.second-machine"));
        QVERIFY(!remedy(planDay(s), "remedy.second-person"));
        s.centre.shifts[0].people = 2;
        const Remedy* machine = nullptr;
        const Plan withPerson = planDay(s);
        machine = remedy(withPerson, "remedy.second-machine");
        QVERIFY(machine && machine->verified);
        s.centre.shifts[0].people = 1;
        s.centre.machines.push_back(machineOf("m2"));
        const Plan withMachine = planDay(s);
        QVERIFY(remedy(withMachine, "remedy.second-person"));
    }

    void fewerLanesAreThoseThatFit() {
        const State s = crowded();
        const Plan p = planDay(s);
        const Remedy* r = remedy(p, "remedy.fewer-lanes");
        QVERIFY(r && r->verified);
        QVERIFY(std::get<std::int64_t>(r->what.values.front()) < 24);
    }

    void overtimeWhenNobodyIsThere() {
        State s = house(2);
        s.centre.shifts[0].overtimeBefore = Seconds{0};
        s.series = {eventOf("a", 0, {9, 5}, 60, {1, 2})};
        const Plan p = planDay(s);
        QVERIFY(has(p.unmet[0].reasons, "short.no-staff") || has(p.unmet[0].reasons, "short.no-time"));
        const Remedy* r = remedy(p, "remedy.overtime");
        QVERIFY(r && r->verified);
        QCOMPARE(r->by, minutes(30));
        s.centre.shifts[0].overtimeBefore = r->by;
        QCOMPARE(planDay(s).objective().unmet, 0);
        s.centre.shifts[0].overtimeBefore = minutes(15);
        QVERIFY(planDay(s).objective().late_s > 0 || planDay(s).objective().unmet > 0);
    }

    void shorterTreatment() {
        // Two lanes, 200 s of room behind play on each side: conditioning alone fits twice, cleaning as well does not.
        State s = house(2);
        s.series = {eventOf("before", 0, {15, 0}, 60, {1, 2}), eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        s.series[0].duration = at(0, 17, 45) - Seconds{190} - minutes(10) - at(0, 15);
        lastTreated(s, {1, 2}, at(-1, 20));
        const Plan p = planDay(s);
        QVERIFY(p.objective().late_s > 0);
        const Remedy* r = remedy(p, "remedy.shorter-treatment");
        QVERIFY(r && r->verified);
    }

    void causesAreTold() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.centre.machines.clear();
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.no-machine"));
        QVERIFY(has(planDay(s).findings, "plan.no-machine"));
        s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.series[0].demands[0].pattern = PatternId{"gone"};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.pattern-unknown"));
        QVERIFY(has(planDay(s).findings, "plan.pattern-unknown"));
        s.series[0].demands[0].pattern = PatternId{"p1"};
        s.centre.shifts.clear();
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.no-staff"));
        QVERIFY(has(planDay(s).findings, "plan.no-shift"));
        s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2})};
        s.centre.outages.push_back({{"o"}, {1}, {}, at(0, 5), at(0, 18), {}, 0});
        const Plan out = planDay(s);
        QCOMPARE(out.unmet.size(), size_t(1));
        QCOMPARE(out.unmet[0].lanes, LaneSet{1});
        QVERIFY(has(out.unmet[0].reasons, "short.out-of-service"));
        s.centre.outages[0].end.reset();
        QVERIFY(has(planDay(s).findings, "plan.lane-out-of-service"));
        QVERIFY(planDay(s).unmet.empty());
    }

    void conditionOnlyWithoutAnythingBelow() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].least = Treatment::ConditionOnly;
        s.centre.machines[0].bars.treatments = {Treatment::CleanAndCondition};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.condition-only"));
        s.centre.machines[0].bars.treatments = {Treatment::CleanAndCondition, Treatment::ConditionOnly};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.barred"));
    }

    void tanksTooSmallForALane() {
        State s = house(1);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1})};
        s.centre.machines[0].capacity.conditioner[0] = Microlitres{3'000};
        QVERIFY(has(planDay(s).unmet[0].reasons, "short.too-big"));
    }
};

QTEST_GUILESS_MAIN(TestShortfalls)
#include "tst_shortfalls.moc"
