// A season as figures, on days whose sums follow by hand.
#include "core/season/season_figures.h"
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

/// Lanes 1-4 for 18:00 on day 0, 2 and 4: 4 x 100 s and 3 x 20 s of work, 5 min out and 4 min back.
State threeEvenings() {
    State s = house();
    for (int day : {0, 2, 4})
        s.series.push_back(eventOf(QString::number(day), day, {18, 0}, 60, LaneSet::range(1, 4)));
    return s;
}

Series playUntil(int day, QTime end, const LaneSet& lanes) {
    Series before = eventOf("before", day, end.addSecs(-7'200), 120, lanes);
    before.demands = {asks(DemandKind::AsItIs, lanes, nullptr)};
    return before;
}

SeasonFigures figures(const State& s, int days) { return seasonFigures(s, planDay(s, at(0, 6), days)); }

}  // namespace

class TestSeasonFigures : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void sumsByHand() {
        const State s = threeEvenings();
        const Plan p = planDay(s, at(0, 6), 5);
        const SeasonFigures season = seasonFigures(s, p);
        QCOMPARE(season.days.size(), size_t(5));
        const Seconds outing = minutes(5) + Seconds{460} + minutes(4);
        QCOMPARE(season.days[0].work.treatments, 4);
        QCOMPARE(season.days[0].work.outings, 1);
        QCOMPARE(season.days[0].work.jobs, 1);
        QCOMPARE(season.days[0].work.machineTime, outing);
        QCOMPARE(season.days[0].work.conditioner, Microlitres{4 * 39 * 10 * 10});  // 39 boards x 10 laps x 10 uL, four lanes
        QCOMPARE(season.days[0].work.cleaner, p.jobs.front().use.cleaner);
        QCOMPARE(season.days[1].work.treatments, 0);
        QVERIFY(!season.days[1].work.spare);
        QCOMPARE(season.total.treatments, 12);
        QCOMPARE(season.total.outings, 3);
        QCOMPARE(season.total.machineTime, outing * 3);
        QCOMPARE(season.total.days, 5);
        QCOMPARE(season.total.proven, 5);
        QCOMPARE(season.total.overtime, Seconds{0});
        QCOMPARE(season.total.unmet, 0);
    }

    void weeksBeginOnMonday() {
        const SeasonFigures season = figures(threeEvenings(), 5);  // Thursday to Monday
        QCOMPARE(season.weeks.size(), size_t(2));
        QCOMPARE(season.weeks[0].number, 46);
        QCOMPARE(season.weeks[0].first, day0);
        QCOMPARE(season.weeks[0].work.days, 4);
        QCOMPARE(season.weeks[0].work.treatments, 8);
        QCOMPARE(season.weeks[1].first, day0.addDays(4));
        QCOMPARE(season.weeks[1].work.treatments, 4);
    }

    void whatIsLeftBetweenPlayAndTarget() {
        // Clear at 17:20, to be done by 17:35: 15 minutes for 7 min 40 s of work.
        State s = threeEvenings();
        s.series.push_back(playUntil(2, {17, 10}, LaneSet::range(1, 4)));
        const SeasonFigures season = figures(s, 5);
        QCOMPARE(*season.days[2].work.spare, minutes(15) - Seconds{460});
        QCOMPARE(*season.days[2].work.leastSlack, Seconds{0});
        QVERIFY(season.days[2].work.isTight());  // less than ten minutes
        QVERIFY(!season.days[0].work.isTight());
        QCOMPARE(season.tight, std::vector<size_t>{2});
        QCOMPARE(season.total.spare, season.days[2].work.spare);
        QCOMPARE(narrowestDays(season, 2).front(), size_t(2));
        QCOMPARE(narrowestDays(season, 9).size(), size_t(3));  // days without work are not narrow
        QCOMPARE(season.weeks[0].tightDays, 1);
    }

    void spareIsWhatPlayMayOverrun() {
        State s = threeEvenings();
        s.series.push_back(playUntil(2, {17, 10}, LaneSet::range(1, 4)));
        const Seconds spare = *figures(s, 5).days[2].work.spare;
        s.series.back().duration += spare;
        const SeasonFigures full = figures(s, 5);
        QCOMPARE(*full.days[2].work.spare, Seconds{0});
        QCOMPARE(full.total.tightBy, Seconds{0});
        s.series.back().duration += Seconds{60};
        const SeasonFigures over = figures(s, 5);
        QVERIFY(over.total.tightBy > Seconds{0} || over.total.treatments > full.total.treatments);
        QVERIFY(*over.days[2].work.spare < Seconds{0});
    }

    void theHardestDayComesFirst() {
        State s = threeEvenings();
        s.series.push_back(playUntil(0, {17, 10}, LaneSet::range(1, 4)));  // tight
        s.series.push_back(playUntil(2, {17, 45}, LaneSet::range(1, 4)));  // five minutes before play: most lanes unmet
        s.series.back().id = {"late"};
        const SeasonFigures season = figures(s, 5);
        QVERIFY(season.days[2].work.unmet > 0);
        QCOMPARE(season.tight, (std::vector<size_t>{2, 0}));
        QCOMPARE(season.total.unmet, planDay(s, at(0, 6), 5).objective().unmet);
    }

    void anEventThatIsLateCountsOnce() {
        State s = threeEvenings();
        s.series.push_back(playUntil(0, {17, 30}, LaneSet::range(1, 4)));  // clear at 17:40, done by 17:47:40 at the earliest
        const SeasonFigures season = figures(s, 1);
        QCOMPARE(season.days[0].work.late, 1);
        QVERIFY(season.days[0].work.lateBy > Seconds{0});
        QCOMPARE(season.tight, std::vector<size_t>{0});
    }

    void overtimeIsThePlans() {
        State s = threeEvenings();
        s.centre.shifts[0].end = QTime(17, 0);
        s.centre.shifts[0].overtimeAfter = minutes(60);
        const Plan p = planDay(s, at(0, 6), 5);
        QCOMPARE(seasonFigures(s, p).total.overtime.value, p.objective().overtime_s);
    }

    void emptyPlan() {
        const SeasonFigures season = seasonFigures(house(), Plan());
        QVERIFY(season.days.empty() && season.weeks.empty() && season.tight.empty());
    }
};

QTEST_GUILESS_MAIN(TestSeasonFigures)
#include "tst_season_figures.moc"
