// violationsOf(): a valid plan has none; each way to break one is found by its own rule.
#include "tests/support/planning_builders.h"

#include <QTest>

#include <algorithm>

using namespace support;

namespace {

State evening() {
    State s = house(8);
    s.series = {eventOf("before", 0, {14, 0}, 60, {1, 2, 3, 4}), eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4})};
    s.series[0].demands[0].kind = DemandKind::AsItIs;
    return s;
}

void shift(Job& job, Seconds by) {
    job.time = {job.time.begin + by, job.time.end + by};
    for (LaneTime& l : job.lanes)
        l.time = {l.time.begin + by, l.time.end + by};
    for (Step& step : job.steps)
        step.time = {step.time.begin + by, step.time.end + by};
}

/// The rule found for a valid plan's only job after `spoil` changed it or the state.
template <class Spoil>
bool finds(const char* rule, Spoil spoil) {
    State s = evening();
    Plan p = planDay(s);
    if (!violationsOf(s, p).empty()) return false;
    spoil(s, p);
    return has(violationsOf(s, p), rule);
}

}  // namespace

class TestViolations : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void lanesInPlay() {
        QVERIFY(finds("violation.lane-in-play", [](State&, Plan& p) { shift(p.jobs[0], minutes(30)); }));
        QVERIFY(finds("violation.lane-in-play", [](State&, Plan& p) { shift(p.jobs[0], at(0, 15, 5) - p.jobs[0].time.end); }));
        QVERIFY(finds("violation.partner-in-play", [](State&, Plan& p) {
            p.jobs[0].lanes = {p.jobs[0].lanes[0]};
            p.jobs[0].lanes[0].lane = 5;
            for (Occurrence& o : p.occupancy.occurrences)
                o.lanes = {6};
            shift(p.jobs[0], minutes(60));
        }));
    }

    void machinesAndLanesTwice() {
        QVERIFY(finds("violation.machine-twice", [](State&, Plan& p) {
            p.jobs.push_back(p.jobs[0]);
            p.jobs[1].outing = 2;
        }));
        QVERIFY(finds("violation.lane-twice", [](State& s, Plan& p) {
            s.centre.machines.push_back(machineOf("m2"));
            p.jobs.push_back(p.jobs[0]);
            p.jobs[1].machine = {"m2"};
        }));
        QVERIFY(finds("violation.machine-twice", [](State&, Plan& p) {
            p.jobs.push_back(p.jobs[0]);  // the same outing
            shift(p.jobs[1], minutes(1));
        }));
    }

    void times() {
        QVERIFY(finds("violation.too-short",
                      [](State&, Plan& p) { p.jobs[0].lanes[1].time.end = p.jobs[0].lanes[1].time.end - Seconds{1}; }));
        QVERIFY(finds("violation.too-short", [](State&, Plan& p) { std::swap(p.jobs[0].lanes[1], p.jobs[0].lanes[2]); }));
        QVERIFY(finds("violation.too-short", [](State&, Plan& p) { p.jobs[0].steps.erase(p.jobs[0].steps.begin()); }));
        QVERIFY(finds("violation.too-short",
                      [](State&, Plan& p) { p.jobs[0].steps[0].time.end = p.jobs[0].steps[0].time.end - Seconds{1}; }));
        QVERIFY(finds("violation.too-short", [](State& s, Plan&) { s.centre.machines[0].times.lane[0] = Seconds{101}; }));
        QVERIFY(finds("violation.before-now", [](State&, Plan& p) { p.now = p.jobs[0].time.begin + Seconds{1}; }));
    }

    void people() {
        QVERIFY(finds("violation.no-staff", [](State& s, Plan&) { s.centre.shifts.clear(); }));
        QVERIFY(finds("violation.no-staff", [](State& s, Plan&) { s.centre.shifts[0].people = 0; }));
        QVERIFY(finds("violation.no-staff", [](State& s, Plan&) {
            s.centre.shifts[0].end = QTime(17, 0);
            s.centre.shifts[0].overtimeAfter = minutes(38);  // the machine is back at 17:39
        }));
        QVERIFY(!finds("violation.no-staff", [](State& s, Plan&) {
            s.centre.shifts[0].end = QTime(17, 0);
            s.centre.shifts[0].overtimeAfter = minutes(39);
        }));
        QVERIFY(finds("violation.no-staff", [](State& s, Plan& p) {
            s.centre.machines.push_back(machineOf("m2"));
            p.jobs.push_back(p.jobs[0]);
            p.jobs[1].machine = {"m2"};
        }));
    }

    void placesAndKinds() {
        QVERIFY(finds("violation.barred-lane", [](State& s, Plan&) { s.centre.machines[0].bars.lanes = {3}; }));
        QVERIFY(
            finds("violation.barred-pattern", [](State& s, Plan&) { s.centre.machines[0].bars.patterns = {PatternId{"p1"}}; }));
        QVERIFY(finds("violation.barred-treatment",
                      [](State& s, Plan&) { s.centre.machines[0].bars.treatments = {Treatment::CleanAndCondition}; }));
        QVERIFY(finds("violation.lane-out-of-service", [](State& s, Plan&) {
            s.centre.outages.push_back({{"o"}, {2}, {}, at(0, 17), std::nullopt, {}, 0});
        }));
        QVERIFY(finds("violation.machine-out-of-service", [](State& s, Plan&) {
            s.centre.outages.push_back({{"o"}, {}, MachineId{"m1"}, at(0, 17, 38), at(0, 20), {}, 0});
        }));
        QVERIFY(finds("violation.other-pattern", [](State&, Plan& p) { p.jobs[0].treatment = Treatment::ConditionOnly; }));
        QVERIFY(finds("violation.unknown", [](State&, Plan& p) { p.jobs[0].machine = {"gone"}; }));
        QVERIFY(finds("violation.unknown", [](State&, Plan& p) { p.jobs[0].pattern = PatternId{"gone"}; }));
        QVERIFY(finds("violation.unknown", [](State&, Plan& p) { p.jobs[0].lanes[0].lane = 99; }));
    }

    void closures() {
        const auto closure = [](const LaneSet& lanes) {
            Occurrence o;
            o.kind = EventKind::Closure;
            o.noStaff = true;
            o.booked = {at(0, 17, 20), at(0, 17, 30)};
            o.lanes = lanes;
            return o;
        };
        QVERIFY(finds("violation.closed",
                      [&](State&, Plan& p) { p.occupancy.occurrences.push_back(closure(LaneSet::range(1, 8))); }));
        QVERIFY(finds("violation.closed", [&](State&, Plan& p) { p.occupancy.occurrences.push_back(closure({2})); }));
        QVERIFY(!finds("violation.closed", [&](State&, Plan& p) { p.occupancy.occurrences.push_back(closure({8})); }));
    }

    void stocks() {
        const auto levels = [](State& s) -> MachineLevels& {
            s.levels = {fullLevels(s.centre.machines[0], limitsFromSettings(s.centre.machines[0]), at(0, 6))};
            return s.levels[0];
        };
        QVERIFY(finds("violation.conditioner", [&](State& s, Plan&) { levels(s).conditioner[0] = Microlitres{4 * 3'900 - 1}; }));
        QVERIFY(finds("violation.cleaner", [&](State& s, Plan&) { levels(s).cleaner = Microlitres{439'999}; }));
        QVERIFY(finds("violation.waste",
                      [&](State& s, Plan&) { levels(s).waste = s.centre.machines[0].capacity.waste - Microlitres{399'999}; }));
        QVERIFY(finds("violation.pack", [&](State& s, Plan&) { levels(s).lanesLeft = 3; }));
        QVERIFY(!finds("violation.pack", [&](State& s, Plan&) { levels(s).lanesLeft = 4; }));
        QVERIFY(finds("violation.duty", [](State& s, Plan&) {
            s.limits = {limitsFromSettings(s.centre.machines[0])};
            s.limits[0].lanesUntilDuty = 3;
        }));
        QVERIFY(finds("violation.pack", [](State& s, Plan& p) {
            s.centre.machines[0].capacity.sparePacks = 0;
            Step swap{StepKind::SwapPack, {p.jobs[0].time.begin - minutes(5), p.jobs[0].time.begin}, {}};
            p.jobs[0].steps.insert(p.jobs[0].steps.begin(), swap);
            p.jobs[0].time.begin = swap.time.begin;
        }));
    }

    void firstPair() {
        State s = evening();
        s.series[1].firstPairTwice = true;
        Plan p = planDay(s);
        QVERIFY(violationsOf(s, p).empty());
        std::erase_if(p.jobs[0].steps, [](const Step& step) { return step.kind == StepKind::FirstPairTwice; });
        QVERIFY(has(violationsOf(s, p), "violation.too-short"));
    }

    void historyIsNotJudged() {
        State s = evening();
        Plan p = planDay(s);
        p.jobs[0].state = JobState::Done;
        shift(p.jobs[0], minutes(30));
        QVERIFY(violationsOf(s, p).empty());
    }

    void objectiveTrustsNothing() {
        const State s = evening();
        Plan p = planDay(s);
        const Objective before = objectiveOf(s, p, day0);
        QCOMPARE(before.unmet, 0);
        p.days[0].objective = {};
        p.jobs[0].late = minutes(99);
        p.jobs[0].slack = minutes(-99);
        QCOMPARE(objectiveOf(s, p, day0) <=> before, std::strong_ordering::equal);
        p.jobs[0].lanes.resize(2);
        QCOMPARE(objectiveOf(s, p, day0).unmet, 2);
        QCOMPARE(objectiveOf(s, p, day0).treatments, 2);
        p.jobs.clear();
        QCOMPARE(objectiveOf(s, p, day0).unmet, 4);
        QCOMPARE(objectiveOf(s, p, day0.addDays(9)).unmet, 0);
    }
};

QTEST_GUILESS_MAIN(TestViolations)
#include "tst_violations.moc"
