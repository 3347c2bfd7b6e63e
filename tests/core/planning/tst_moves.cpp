// What it would cost to move an outing: evenings whose answer follows by hand, and random ones judged by the plan's own checks.
#include "core/planning/moves.h"
#include "tests/support/planning_builders.h"
#include "tests/support/random_centre.h"

#include <QTest>

#include <algorithm>

using namespace support;

namespace {

/// Lanes 1-4 for 18:00: 4 x 100 s and 3 x 20 s, so from 17:27:20 to 17:35; out of the bay at 17:22:20, back at 17:39.
State fourLanes() {
    State s = house();
    s.series = {eventOf("a", 0, {18, 0}, 60, LaneSet::range(1, 4))};
    return s;
}

Series playBefore(const LaneSet& lanes) {
    Series before = eventOf("before", 0, {15, 0}, 120, lanes);  // cleared at 17:10
    before.demands = {asks(DemandKind::AsItIs, lanes, nullptr)};
    return before;
}

const Finding* find(const std::vector<Finding>& findings, const char* rule) {
    const auto found = std::find_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.rule == rule; });
    return found == findings.end() ? nullptr : &*found;
}

JobMove moved(const State& s, Seconds by, Instant now = at(0, 6)) {
    const Plan p = planDay(s, now);
    if (p.jobs.empty()) qFatal("nothing is planned");
    const auto move = moveOf(s, p, p.jobs.front(), by);
    if (!move) qFatal("cannot be moved");
    return *move;
}

/// Written apart from the code under test.
Plan withShifted(const Plan& plan, const Job& one, Seconds by) {
    Plan shifted = plan;
    for (Job& job : shifted.jobs) {
        if (job.date != one.date || job.machine != one.machine || job.outing != one.outing) continue;
        job.time.begin = job.time.begin + by;
        job.time.end = job.time.end + by;
        for (LaneTime& lane : job.lanes)
            lane.time = {lane.time.begin + by, lane.time.end + by};
        for (Step& step : job.steps)
            step.time = {step.time.begin + by, step.time.end + by};
    }
    return shifted;
}

Objective sumOf(const State& s, const Plan& p) {
    Objective sum;
    for (const DayPlan& day : p.days)
        sum = sum + objectiveOf(s, p, day.date);
    return sum;
}

}  // namespace

class TestMoves : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void earlierCostsFreshness() {
        const JobMove move = moved(fourLanes(), -minutes(15));
        QVERIFY(move.possible);
        QCOMPARE(move.what.rule, QByteArray("job.earlier"));
        QCOMPARE(std::get<Instant>(move.what.values[1]), at(0, 17, 7, 20));
        QCOMPARE(move.change.freshness_s, 4 * 15 * 60);
        QCOMPARE(move.change.late_s + move.change.tight_s + move.change.overtime_s + move.change.unmet, 0);
        const Finding* older = find(move.why, "job.move-older");
        QVERIFY(older);
        QCOMPARE(older->subject, QString("1-4"));
        QCOMPARE(std::get<std::int64_t>(older->values[0]), 4);
        QCOMPARE(std::get<Seconds>(older->values[1]), minutes(15));
    }

    void laterIsTightAndLate() {
        // The lanes would end at 17:44, 17:46, 17:48 and 17:50; met until 17:45, with the reserve until 17:35.
        const JobMove move = moved(fourLanes(), minutes(15));
        QVERIFY(move.possible);
        QCOMPARE(move.change.late_s, (1 + 3 + 5) * 60);
        QCOMPARE(move.change.tight_s, 9 * 60);
        QCOMPARE(move.change.freshness_s, -4 * 15 * 60);
        const Finding* late = find(move.why, "job.move-late");
        const Finding* tight = find(move.why, "job.move-tight");
        QVERIFY(late && tight);
        QCOMPARE(std::get<std::int64_t>(late->values[0]), 3);
        QCOMPARE(std::get<Seconds>(late->values[1]), minutes(5));
        QCOMPARE(std::get<std::int64_t>(tight->values[0]), 1);
        QCOMPARE(std::get<Seconds>(tight->values[1]), minutes(9));
        QVERIFY(find(move.why, "job.move-fresher"));
        QVERIFY(!find(move.why, "job.move-free"));
        QVERIFY(move.why.front().rule == "job.move-late");  // what costs most comes first
    }

    void fiveMinutesLaterIsOnlyTight() {
        const JobMove move = moved(fourLanes(), minutes(5));
        QCOMPARE(move.change.late_s, 0);
        QCOMPARE(move.change.tight_s, (5 + 3 + 1) * 60);  // ends at 17:34, 17:36, 17:38, 17:40
    }

    void playBeforeStandsInTheWay() {
        State s = fourLanes();
        s.series.push_back(playBefore({3, 4}));
        QVERIFY(moved(s, -minutes(15)).possible);  // from 17:12:20
        const JobMove move = moved(s, -minutes(30));
        QVERIFY(!move.possible);
        QCOMPARE(move.what.rule, QByteArray("job.not-earlier"));
        const Finding* why = find(move.why, "job.blocked-by-play-before");
        QVERIFY(why);
        QCOMPARE(move.why.size(), size_t(1));
        QCOMPARE(why->subject, QString("Event before"));
        QCOMPARE(std::get<QString>(why->values[0]), QString("3-4"));
        QCOMPARE(std::get<Instant>(why->values[1]), at(0, 17, 10));
    }

    void thePairPartnerStandsInTheWay() {
        State s = fourLanes();
        s.series[0] = eventOf("a", 0, {18, 0}, 60, {1, 2, 3});
        s.series.push_back(playBefore({4}));
        const JobMove move = moved(s, -minutes(30));
        const Finding* why = find(move.why, "job.blocked-by-partner-before");
        QVERIFY(why);
        QCOMPARE(std::get<QString>(why->values[0]), QString("3"));
        QCOMPARE(std::get<Instant>(why->values[1]), at(0, 17, 10));
        s.centre.facts.settings.pairPartnerRule = false;
        QVERIFY(moved(s, -minutes(30)).possible);
    }

    void playBehindStandsInTheWay() {
        const JobMove move = moved(fourLanes(), minutes(30));  // 17:57:20 to 18:05
        QVERIFY(!move.possible);
        const Finding* why = find(move.why, "job.blocked-by-play-after");
        QVERIFY(why);
        QCOMPARE(why->subject, QString("Event a"));
        QCOMPARE(std::get<Instant>(why->values[1]), at(0, 18));
    }

    void theShiftEnds() {
        State s = fourLanes();
        s.centre.shifts[0].end = QTime(17, 41);
        JobMove move = moved(s, minutes(15));  // back at 17:54
        QVERIFY(move.possible);
        QCOMPARE(move.change.overtime_s, 13 * 60);
        QVERIFY(find(move.why, "job.move-overtime"));
        s.centre.shifts[0].overtimeAfter = minutes(5);
        move = moved(s, minutes(15));
        QVERIFY(!move.possible);
        const Finding* why = find(move.why, "job.blocked-by-shift-after");
        QVERIFY(why);
        QCOMPARE(why->subject, QString("Shift s1"));
        QCOMPARE(std::get<Instant>(why->values[0]), at(0, 17, 46));
    }

    void theShiftBegins() {
        State s = fourLanes();
        s.centre.shifts[0].begin = QTime(17, 20);
        s.centre.shifts[0].overtimeBefore = minutes(10);
        const JobMove move = moved(s, -minutes(15));
        const Finding* why = find(move.why, "job.blocked-by-shift-before");
        QVERIFY(why);
        QCOMPARE(std::get<Instant>(why->values[0]), at(0, 17, 10));
    }

    void nowStandsInTheWay() {
        const JobMove move = moved(fourLanes(), -minutes(15), at(0, 17, 20));
        const Finding* why = find(move.why, "job.blocked-by-now");
        QVERIFY(why);
        QCOMPARE(std::get<Instant>(why->values[0]), at(0, 17, 20));
    }

    void theMachineIsWantedElsewhere() {
        State s = fourLanes();
        Plan p = planDay(s);
        Job other = withShifted(p, p.jobs.front(), minutes(20)).jobs.front();  // leaves at 17:42:20, a minute before the other …
        other.id = {"other"};
        other.outing = 7;
        for (LaneTime& lane : other.lanes)
            lane.lane += 4;
        for (Step& step : other.steps)
            if (!step.lanes.isEmpty()) step.lanes = LaneSet::range(5, 8);
        other.state = JobState::Confirmed;
        s.committed = {other};
        p.jobs.push_back(other);
        QVERIFY(violationsOf(s, p).empty());
        const auto move = moveOf(s, p, p.jobs.front(), minutes(5));  // … would be back, at 17:44
        QVERIFY(move && !move->possible);
        const Finding* why = find(move->why, "job.blocked-by-machine-after");
        QVERIFY(why);
        QCOMPARE(std::get<Instant>(why->values[0]), at(0, 17, 42, 20));
        QVERIFY(moveOf(s, p, p.jobs.front(), minutes(3))->possible);
    }

    void everybodyIsAtWork() {
        // Two machines, one person: lanes 1-4 for 18:00 and, by the other machine, 5-8 right behind.
        State s = fourLanes();
        s.centre.machines.push_back(machineOf("m2"));
        Plan p = planDay(s);
        Job other = withShifted(p, p.jobs.front(), minutes(20)).jobs.front();
        other.id = {"other"};
        other.machine = {p.jobs.front().machine.value == "m1" ? "m2" : "m1"};
        for (LaneTime& lane : other.lanes)
            lane.lane += 4;
        for (Step& step : other.steps)
            if (!step.lanes.isEmpty()) step.lanes = LaneSet::range(5, 8);
        other.state = JobState::Confirmed;
        s.committed = {other};
        p.jobs.push_back(other);
        const auto move = moveOf(s, p, p.jobs.front(), minutes(5));
        QVERIFY(move && !move->possible);
        QVERIFY(find(move->why, "job.blocked-by-person"));
        s.centre.shifts[0].people = 2;
        QVERIFY(moveOf(s, p, p.jobs.front(), minutes(5))->possible);
    }

    void tooOldIsNoLongerMet() {
        State s = fourLanes();
        s.series[0].demands[0].longestAge = minutes(40);  // lane 1 would be 31 + 15 min old, lane 4 25 + 15
        const JobMove move = moved(s, -minutes(15));
        QVERIFY(move.possible);
        QVERIFY(move.change.unmet > 0);
        const Finding* unmet = find(move.why, "job.move-unmet");
        QVERIFY(unmet);
        QCOMPARE(std::get<std::int64_t>(unmet->values[0]), move.change.unmet);
    }

    void whatHasBegunStays() {
        State s = fourLanes();
        Plan p = planDay(s);
        p.jobs.front().state = JobState::UnderWay;
        QVERIFY(movesOf(s, p, p.jobs.front()).empty());
        p.jobs.front().state = JobState::Done;
        QVERIFY(movesOf(s, p, p.jobs.front()).empty());
    }

    void theUsualThree() {
        State s = fourLanes();
        Plan p = planDay(s);
        QCOMPARE(movesOf(s, p, p.jobs.front()).size(), size_t(2));  // nothing to spare
        p = withShifted(p, p.jobs.front(), -Seconds{20 * 60 + 30});
        p.jobs.front().slack = Seconds{20 * 60 + 30};
        const std::vector<JobMove> moves = movesOf(s, p, p.jobs.front());
        QCOMPARE(moves.size(), size_t(3));
        QCOMPARE(moves[2].by, minutes(20));
        QVERIFY(find(moves[2].why, "job.move-free"));
        QCOMPARE(moves[2].change.late_s + moves[2].change.tight_s + moves[2].change.overtime_s, 0);
    }

    void judgedAsAnyPlan() {
        int possible = 0;
        int impossible = 0;
        for (unsigned seed = 1; seed <= 60; ++seed) {
            const State s = randomCentre(seed);
            const DateRange range{randomBegins(), randomBegins().addDays(2)};
            const Plan p = plan(s, dayOf(s.centre, range.first).begin, range, 300);
            QVERIFY(violationsOf(s, p).empty());
            for (const Job& job : p.jobs) {
                for (Seconds by : {-minutes(15), minutes(15), minutes(90)}) {
                    const auto move = moveOf(s, p, job, by);
                    if (!move || job.state != JobState::Proposed) continue;
                    const Plan shifted = withShifted(p, job, by);
                    const bool allowed = violationsOf(s, shifted).empty();
                    QVERIFY2(move->possible == allowed, qPrintable(QString("seed %1, %2 s").arg(seed).arg(by.value)));
                    QVERIFY(!move->why.empty());
                    (allowed ? possible : impossible) += 1;
                    if (!allowed) continue;
                    const Objective after = sumOf(s, shifted);
                    QCOMPARE(sumOf(s, p) + move->change, after);
                }
            }
        }
        QVERIFY2(possible > 50 && impossible > 50, qPrintable(QString("%1 and %2").arg(possible).arg(impossible)));
    }
};

QTEST_GUILESS_MAIN(TestMoves)
#include "tst_moves.moc"
