// Questions about a season: what is supposed, and what planning makes of it.
#include "core/season/season_questions.h"
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

const DateRange fourWeeks{day0, day0.addDays(27)};

Plan planned(const State& s) { return plan(s, at(0, 6), fourWeeks, 20'000); }

Series openPlay() {
    Series open = eventOf("open", 0, {12, 0}, 120, LaneSet::range(1, 2));
    open.kind = EventKind::OpenPlay;
    open.rule = "FREQ=DAILY";
    return open;
}

}  // namespace

class TestSeasonQuestions : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void tournamentsTakeTheirLanes() {
        const State s = house();
        const Supposed more = withTournaments(s, {2, 6, LaneSet::range(1, 8), PatternId{"p1"}}, fourWeeks);
        QCOMPARE(more.count, 2);
        QCOMPARE(planned(s).objective().treatments, 0);
        const Plan p = planned(more.state);
        QCOMPARE(p.objective().treatments, 16);
        QCOMPARE(p.objective().unmet, 0);
        QVERIFY(violationsOf(more.state, p).empty());
        for (const Job& job : p.jobs)
            QCOMPARE(job.neededBy.front().playBegins, at(int(day0.daysTo(job.date)), 10));
    }

    void tournamentsSpread() {
        // Saturdays of the four weeks: day 2, 9, 16, 23.
        const Supposed two = withTournaments(house(), {2, 6, {1}, {}}, fourWeeks);
        QCOMPARE(two.state.series[0].start.date, day0.addDays(9));
        QCOMPARE(two.state.series[1].start.date, day0.addDays(23));
        QCOMPARE(withTournaments(house(), {9, 6, {1}, {}}, fourWeeks).count, 4);
        QCOMPARE(withTournaments(house(), {0, 6, {1}, {}}, fourWeeks).count, 0);
        QCOMPARE(withTournaments(house(), {1, 6, {}, {}}, fourWeeks).count, 0);
    }

    void tournamentsKeepOutOfTheWay() {
        State s = house();
        s.series = {eventOf("a", 2, {9, 0}, 240, {1, 2}), eventOf("closed", 9, {6, 0}, 900, {})};
        s.series[1].kind = EventKind::Closure;
        s.series[1].demands.clear();
        const Supposed more = withTournaments(s, {4, 6, {2, 3}, {}}, fourWeeks);
        QCOMPARE(more.count, 2);
        QCOMPARE(more.state.series[2].start.date, day0.addDays(16));
        QVERIFY(planned(more.state).occupancy.conflicts.empty());
        // Other lanes are free that day.
        QCOMPARE(withTournaments(s, {4, 6, {3, 4}, {}}, fourWeeks).count, 3);
    }

    void openPlayGivesWay() {
        State s = house();
        s.series = {openPlay()};  // lanes 1 and 2, every day from 12:00 to 14:00
        const Supposed half = withTournaments(s, {1, 6, {2, 3}, PatternId{"p2"}}, fourWeeks);
        QCOMPARE(half.count, 1);
        const Plan p = planned(half.state);
        QVERIFY(p.occupancy.conflicts.empty());
        QCOMPARE(p.objective().unmet, 0);
        QCOMPARE(p.objective().treatments, 28 * 2 - 1 + 2);  // one lane of open play less, two for the tournament
        const Supposed all = withTournaments(s, {1, 6, {1, 2}, {}}, fourWeeks);
        QCOMPARE(planned(all.state).objective().treatments, 27 * 2 + 2);
        QCOMPARE(int(planned(all.state).occupancy.occurrences.size()), int(planned(s).occupancy.occurrences.size()));
    }

    void theFirstQuestionHasRoom() {
        State s = house();
        const TournamentQuestion empty = suggestedTournament(s, fourWeeks);
        QCOMPARE(empty.weekday, 6);
        QCOMPARE(empty.lanes, LaneSet::range(1, 8));
        // Saturdays are full by day; in the evening there is room.
        Series full = eventOf("full", 2, {9, 0}, 480, LaneSet::range(1, 8));
        full.rule = "FREQ=WEEKLY;BYDAY=SA";
        s.series = {full};
        const TournamentQuestion later = suggestedTournament(s, fourWeeks);
        QCOMPARE(later.begins, QTime(18, 0));
        QCOMPARE(withTournaments(s, later, fourWeeks).count, 1);
        s.series[0].rule = "FREQ=DAILY";
        s.series[0].duration = hours(20);
        QCOMPARE(withTournaments(s, suggestedTournament(s, fourWeeks), fourWeeks).count, 0);
    }

    void aMachineIsOut() {
        State s = house();
        s.series = {eventOf("a", 1, {18, 0}, 60, {1, 2}), eventOf("b", 3, {18, 0}, 60, {1, 2})};
        const Supposed out = withMachineOut(s, {"m1"}, day0.addDays(1), 2);
        const Plan p = planned(out.state);
        QCOMPARE(p.objective().unmet, 2);  // day 1; on day 3 it is back
        QCOMPARE(p.objective().treatments, 2);
        QCOMPARE(withMachineOut(s, {"gone"}, day0, 2).state, s);
        QCOMPARE(withMachineOut(s, {"m1"}, day0, 0).state, s);
    }

    void openPlayEveryFewDays() {
        State s = house();
        s.series = {openPlay()};
        QCOMPARE(planned(s).objective().treatments, 28 * 2);
        const Supposed seldom = withOpenPlayEvery(s, 7);
        QCOMPARE(seldom.count, 1);
        const Plan p = planned(seldom.state);
        QCOMPARE(p.objective().unmet, 0);
        QCOMPARE(p.objective().treatments, 4 * 2);
        QVERIFY(violationsOf(seldom.state, p).empty());
    }

    void whatIsAskedSeldomStays() {
        State s = house();
        s.series = {openPlay(), eventOf("league", 0, {18, 0}, 60, {1})};
        s.series[0].demands[0].kind = DemandKind::Recent;
        s.series[0].demands[0].longestAge = hours(24 * 10);
        const Supposed same = withOpenPlayEvery(s, 7);
        QCOMPARE(same.count, 0);
        QCOMPARE(same.state, s);
    }
};

QTEST_GUILESS_MAIN(TestSeasonQuestions)
#include "tst_season_questions.moc"
