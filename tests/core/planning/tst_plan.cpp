// Where jobs are put, to the second: met, tight and late, just in time, what is chained and what is not.
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

class TestPlan : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void justInTime() {
        State s = house();
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4})};
        const Plan p = planDay(s);
        QCOMPARE(p.jobs.size(), size_t(1));
        const Job& job = p.jobs.front();
        QCOMPARE(job.time.end, at(0, 17, 35));
        QCOMPARE(job.lanes.front().time.begin, at(0, 17, 35) - Seconds{4 * 100 + 3 * 20});
        QCOMPARE(job.time.begin, job.lanes.front().time.begin - minutes(5));
        QCOMPARE(job.slack, Seconds{0});
        QCOMPARE(job.id.value, QString("2026-11-12-m1-1722"));
        QCOMPARE(job.date, day0);
        QCOMPARE(job.steps.front().kind, StepKind::LeaveBay);
        QCOMPARE(job.steps.back().kind, StepKind::ReturnToBay);
        QCOMPARE(job.steps.back().time, (Span{at(0, 17, 35), at(0, 17, 39)}));
        QVERIFY(p.unmet.empty());
        QVERIFY(p.days.front().proven);
        QCOMPARE(p.days.front().size, 1);
        QCOMPARE(p.days.front().outings.size(), size_t(1));
        QCOMPARE(p.days.front().outings.front().time, (Span{job.time.begin, at(0, 17, 39)}));
    }

    void useAndNeeds() {
        State s = house();
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4})};
        const Job job = planDay(s).jobs.front();
        QCOMPARE(job.use.conditionerTotal(), Microlitres{4 * 3'900});
        QCOMPARE(job.use.cleaner, s.centre.machines[0].capacity.cleanerPerLane * 4);
        QCOMPARE(job.use.laneRuns, 4);
        QCOMPARE(job.neededBy.size(), size_t(1));
        QCOMPARE(job.neededBy[0].title, QString("Event a"));
        QCOMPARE(job.neededBy[0].lanes, (LaneSet{1, 2, 3, 4}));
        QCOMPARE(job.window.end, at(0, 17, 35));
        QCOMPARE(job.window.begin, at(0, 6));
    }

    void aNeedOfAnotherDayNamesIt() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2}), eventOf("b", 1, {17, 0}, 60, {1, 2})};
        s.series[1].demands[0].kind = DemandKind::Pattern;
        const Plan p = plan(s, at(0, 6), {day0, day0.addDays(1)});
        QCOMPARE(p.jobs.size(), size_t(1));
        QCOMPARE(p.jobs[0].neededBy.size(), size_t(2));
        QCOMPARE(p.jobs[0].reasons[0].rule, QByteArray("job.needed"));
        QCOMPARE(p.jobs[0].reasons[1].rule, QByteArray("job.needed-later"));
        QCOMPARE(p.jobs[0].reasons[1].subject, QString("Event b"));
        QVERIFY(p.jobs[0].reasons[1].values[0] == Value(at(1, 17)));
    }

    void metTightLateUnmetToTheSecond() {
        // The lane is cleared so late that its one treatment of 100 s ends exactly at the limit, then one second behind it.
        State s = house(1);
        s.series = {eventOf("before", 0, {15, 0}, 60, {1}), eventOf("a", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        const auto ending = [&](Instant end) {
            s.series[0].duration = end - Seconds{100} - minutes(10) - at(0, 15);
            return planDay(s).objective();
        };
        QCOMPARE(ending(at(0, 17, 35)).tight_s, 0);
        QCOMPARE(ending(at(0, 17, 35, 1)).tight_s, 1);
        QCOMPARE(ending(at(0, 17, 45)).tight_s, 600);
        QCOMPARE(ending(at(0, 17, 45)).late_s, 0);
        QCOMPARE(ending(at(0, 17, 45, 1)).late_s, 1);
        QCOMPARE(ending(at(0, 17, 45, 1)).tight_s, 0);
        QCOMPARE(ending(at(0, 18)).late_s, 900);
        QCOMPARE(ending(at(0, 18)).unmet, 0);
        QCOMPARE(ending(at(0, 18, 0, 1)).unmet, 1);
        QCOMPARE(ending(at(0, 18, 0, 1)).treatments, 0);
    }

    void lateIsSaid() {
        State s = house(1);
        s.series = {eventOf("before", 0, {15, 0}, 160, {1}), eventOf("a", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        const Plan p = planDay(s);  // cleared at 17:50, done at 17:51:40
        QCOMPARE(p.jobs.front().late, Seconds{400});
        QCOMPARE(p.jobs.front().slack, Seconds{-1'000});
        QCOMPARE(p.unmet.size(), size_t(1));
        QVERIFY(!p.unmet[0].unmet);
        QCOMPARE(p.unmet[0].missing, Seconds{400});
        QVERIFY(has(p.unmet[0].reasons, "short.no-time"));
        QVERIFY(has(p.jobs.front().reasons, "job.late"));
        QVERIFY(has(p.jobs.front().reasons, "job.fixed-by-play-before"));
    }

    void onePatternOneOuting() {
        State s = house();
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2}), eventOf("b", 0, {18, 30}, 120, {5, 6})};
        const Plan p = planDay(s);
        QCOMPARE(p.objective().outings, 1);
        QCOMPARE(p.jobs.back().steps.back().kind, StepKind::ReturnToBay);
    }

    void longWaitsAreTwoOutings() {
        State s = house(4);
        s.series = {eventOf("a", 0, {11, 0}, 120, {1, 2, 3, 4}), eventOf("b", 0, {18, 0}, 120, {1, 2, 3, 4})};
        QCOMPARE(planDay(s).objective().outings, 2);
    }

    void lanesInARowAreOneJob() {
        State s = house(8);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2, 3, 4}), eventOf("b", 0, {18, 0}, 120, {5, 6, 7, 8})};
        const Plan p = planDay(s);
        QCOMPARE(p.jobs.size(), size_t(1));
        QCOMPARE(p.jobs[0].neededBy.size(), size_t(2));
        QCOMPARE(p.objective().lanes_crossed, 0);
    }

    void twoMachinesWhenTimeIsShort() {
        State s = house(24);
        s.centre.machines.push_back(machineOf("m2"));
        s.centre.shifts[0].people = 2;
        s.series = {eventOf("before", 0, {13, 0}, 220, LaneSet::range(1, 24)),
                    eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 24))};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        // 16:50 to 17:35 is 45 minutes; 24 lanes take one machine 48.
        const Plan both = planDay(s);
        QCOMPARE(both.objective().tight_s, 0);
        QCOMPARE(both.objective().late_s, 0);
        s.centre.shifts[0].people = 1;
        const Plan one = planDay(s);
        QVERIFY(one.objective().tight_s > 0);
        QCOMPARE(one.objective().unmet, 0);
    }

    void oneMachineWhenThereIsTime() {
        State s = house(8);
        s.centre.machines.push_back(machineOf("m2"));
        s.centre.shifts[0].people = 2;
        s.series = {eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 8))};
        QCOMPARE(planDay(s).objective().outings, 1);
    }

    void eveningBeforeRatherThanOvertime() {
        State s = house(24);
        s.series = {eventOf("a", 1, {9, 30}, 60, LaneSet::range(1, 24))};
        const Plan p = planDay(s, at(0, 6), 2);
        QCOMPARE(p.objective().overtime_s, 0);
        QCOMPARE(p.objective().late_s, 0);
        QCOMPARE(p.jobs.front().date, day0);
        // Without an evening before, overtime comes before being late, and being tight before overtime.
        const Plan morning = plan(s, at(1, 5), {day0.addDays(1), day0.addDays(1)}, 20'000);
        QCOMPARE(morning.objective().late_s, 0);
        QVERIFY(morning.objective().overtime_s > 0);
        QVERIFY(has(morning.jobs.front().reasons, "job.overtime"));
        s.centre.shifts[0].overtimeBefore = Seconds{0};
        QVERIFY(plan(s, at(1, 5), {day0.addDays(1), day0.addDays(1)}, 20'000).objective().late_s > 0);
    }

    void oneOfTwoGroupsGoesToTheEveningBefore() {
        // Each alone is ready in paid time of the morning, together they are not.
        State s = house(24);
        s.series = {eventOf("a", 1, {9, 55}, 60, LaneSet::range(1, 12)), eventOf("b", 1, {10, 5}, 60, LaneSet::range(13, 24))};
        s.series[1].demands[0].pattern = PatternId{"p2"};
        const Plan p = planDay(s, at(0, 6), 2);
        QCOMPARE(p.objective().overtime_s, 0);
        QCOMPARE(p.objective().tight_s, 0);
        QVERIFY(p.days[0].objective.treatments >= 12);
        QVERIFY(violationsOf(s, p).empty());
    }

    void tightRatherThanOvertime() {
        State s = house(2);
        s.series = {eventOf("a", 0, {9, 30}, 60, {1, 2})};
        const Objective o = planDay(s).objective();  // 9:00 + 5 min + 220 s = 9:08:40; target 9:05, due 9:15
        QCOMPARE(o.overtime_s, 0);
        QCOMPARE(o.tight_s, (8 * 60 + 40 - 5 * 60) + (6 * 60 + 40 - 5 * 60));
    }

    void anEarlierGapMayDo() {
        // The evening gap is too short for all; what only asks for a pattern is done before the afternoon's play instead.
        State s = house(16);
        s.series = {eventOf("noon", 0, {14, 0}, 170, LaneSet::range(1, 16)),
                    eventOf("a", 0, {17, 30}, 60, LaneSet::range(1, 16))};
        s.series[0].demands[0].kind = DemandKind::AsItIs;
        s.series[1].demands[0].kind = DemandKind::Pattern;
        const Plan p = planDay(s);
        QCOMPARE(p.objective().late_s, 0);
        QCOMPARE(p.objective().unmet, 0);
        QCOMPARE(p.objective().treatments, 16);
    }

    void midnightBelongsToTheEvening() {
        State s = house(2);
        s.centre.shifts[0] = shiftOf("s1", {18, 0}, {2, 0});
        s.series = {eventOf("a", 1, {0, 45}, 60, {1, 2})};
        const Plan p = planDay(s);
        QCOMPARE(p.jobs.size(), size_t(1));
        QCOMPARE(p.jobs[0].date, day0);
        QCOMPARE(p.jobs[0].time.end, at(1, 0, 20));
        QCOMPARE(p.days[0].objective.treatments, 1 * 2);
        QCOMPARE(p.days[0].objective.freshness_s, (25 * 60) + (25 * 60 + 120));
    }

    void strippedAfterTheLastPlay() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2})};
        s.series[0].demands = {asks(DemandKind::Stripped, {1, 2}, nullptr)};
        const Plan p = planDay(s);
        QCOMPARE(p.jobs.size(), size_t(1));
        QCOMPARE(p.jobs[0].treatment, Treatment::CleanOnly);
        QVERIFY(!p.jobs[0].pattern);
        QCOMPARE(p.jobs[0].lanes.front().time.begin, at(0, 20, 10));  // as soon as it can be
        QCOMPARE(p.objective().freshness_s, 0);
        QVERIFY(has(p.jobs[0].reasons, "job.fixed-by-closing"));
    }

    void conditionOnlyOnTheSamePattern() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2})};
        s.series[0].demands[0].least = Treatment::ConditionOnly;
        lastTreated(s, {1}, at(-1, 20), "p1");
        lastTreated(s, {2}, at(-1, 20), "p2");
        const Plan p = planDay(s);
        QCOMPARE(p.jobs.size(), size_t(2));
        for (const Job& job : p.jobs) {
            QCOMPARE(job.treatment, job.laneSet().contains(1) ? Treatment::ConditionOnly : Treatment::CleanAndCondition);
        }
    }

    void emptyAndPastRanges() {
        State s = house();
        s.series = {eventOf("a", 0, {18, 0}, 120, {1})};
        QVERIFY(plan(s, at(0, 6), {day0, day0.addDays(-1)}).days.empty());
        const Plan past = plan(s, at(5, 6), {day0, day0});
        QVERIFY(past.jobs.empty());
        QCOMPARE(past.objective().unmet, 0);
        QVERIFY(planDay(house()).jobs.empty());
    }

    void cancelledPlansAreValid() {
        State s = house(24);
        s.series = {eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 24))};
        const Plan p = plan(s, at(0, 6), {day0, day0}, 1'000, [] { return true; });
        QVERIFY(has(p.findings, "plan.cancelled"));
        QVERIFY(violationsOf(s, p).empty());
    }

    void sizeCountsRunsOfEqualLanes() {
        State s = house(8);
        s.series = {eventOf("a", 0, {18, 0}, 60, {1, 2, 3}), eventOf("b", 0, {18, 0}, 60, {4, 5}),
                    eventOf("c", 0, {19, 0}, 60, {8})};
        s.series[1].demands[0].pattern = PatternId{"p2"};
        QCOMPARE(planDay(s).days[0].size, 3);
        s.series[1].demands[0].pattern = PatternId{"p1"};
        QCOMPARE(planDay(s).days[0].size, 2);
        s.series[2].demands[0].kind = DemandKind::AsItIs;
        QCOMPARE(planDay(s).days[0].size, 1);
    }

    void conflictsAreListed() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2}), eventOf("b", 0, {19, 0}, 60, {2})};
        const Plan p = planDay(s);
        QVERIFY(has(p.findings, "calendar.conflict"));
        QCOMPARE(lanesOf(p), (LaneSet{1, 2}));
        QCOMPARE(p.objective().unmet, 0);
    }
};

QTEST_GUILESS_MAIN(TestPlan)
#include "tst_plan.moc"
