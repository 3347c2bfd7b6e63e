#include "tests/support/calendar_builders.h"

#include "core/base/limits.h"

#include <QTest>

#include <algorithm>
#include <set>

using namespace laneward;

namespace {

Override onDate(const char* original) {
    Override change;
    change.original = build::wall(QString::fromLatin1(original));
    return change;
}

QStringList begins(const Occupancy& all) {
    QStringList list;
    const Result<Zone> berlin = Zone::load("Europe/Berlin");
    for (const Occurrence& o : all.occurrences)
        list << build::text(berlin->toLocal(o.booked.begin));
    return list;
}

Occupancy of(const std::vector<Series>& series, const char* first, const char* last) {
    return occupancyOf(series, build::centre(), build::days(QString::fromLatin1(first), QString::fromLatin1(last)));
}

bool same(const Occurrence& a, const Occurrence& b) {
    return a.series == b.series && a.original == b.original && a.booked == b.booked && a.cleared == b.cleared &&
           a.lanes == b.lanes && a.demands == b.demands && a.title == b.title;
}

}  // namespace

class tst_occurrences : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void playEndsWithClearing();
    void daysRunPastMidnight();
    void movedWithinIntoAndOutOfTheRange();
    void cancelledChangedAndUnmatched();
    void demandsFollowOtherLanes();
    void closureSuppresses();
    void closureOfSomeLanes();
    void closureBeyondTheRange();
    void conflictsAreShown();
    void conflictsAreLimited();
    void lanesBeyondTheCentre();
    void whatCannotBeExpanded();
    void rangeIsCut();
    void denseSeriesIsCut();
    void orderOfSeriesDoesNotMatter();
    void daysAddUp();
};

void tst_occurrences::playEndsWithClearing() {
    Series s = build::league("a", "20261112T190000", "FREQ=WEEKLY");
    s.players = 40;
    s.firstPairTwice = true;
    const Occupancy all = of({s}, "20261112", "20261112");
    QCOMPARE(all.occurrences.size(), 1u);
    const Occurrence& o = all.occurrences[0];
    QCOMPARE(o.booked.begin, build::instant("Europe/Berlin", "20261112T190000"));
    QCOMPARE(o.booked.end, build::instant("Europe/Berlin", "20261112T220000"));
    QCOMPARE(o.cleared, build::instant("Europe/Berlin", "20261112T221000"));
    QCOMPARE(o.original, build::wall("20261112T190000"));
    QCOMPARE(o.lanes, LaneSet::range(1, 8));
    QCOMPARE(o.demands, s.demands);
    QCOMPARE(o.players, 40);
    QVERIFY(o.firstPairTwice);
    QVERIFY(all.findings.empty());
}

void tst_occurrences::daysRunPastMidnight() {
    // The centre's day runs from 05:00 to 05:00.
    const Series late = build::league("late", "20261113T020000");
    QCOMPARE(begins(of({late}, "20261112", "20261112")), QStringList{"20261113T020000"});
    QVERIFY(of({late}, "20261111", "20261111").occurrences.empty());
    const Series over = build::league("over", "20261113T030000");  // to 06:10 with clearing: on both days
    QCOMPARE(of({over}, "20261112", "20261112").occurrences.size(), 1u);
    QCOMPARE(of({over}, "20261113", "20261113").occurrences.size(), 1u);
    QVERIFY(of({over}, "20261114", "20261114").occurrences.empty());
    // Play in a zone far away falls on another date there.
    Series far = build::league("far", "20261113T080000");
    far.zone = "Pacific/Auckland";
    QCOMPARE(begins(of({far}, "20261112", "20261112")), QStringList{"20261112T200000"});
}

void tst_occurrences::movedWithinIntoAndOutOfTheRange() {
    Series s = build::league("a", "20261105T190000", "FREQ=WEEKLY;COUNT=20");
    Override within = onDate("20261112T190000");
    within.start = build::wall("20261113T170000");
    Override into = onDate("20270211T190000");
    into.start = build::wall("20261114T100000");
    Override out = onDate("20261119T190000");
    out.start = build::wall("20270301T190000");
    s.overrides = {within, into, out};
    QCOMPARE(begins(of({s}, "20261110", "20261122")), (QStringList{"20261113T170000", "20261114T100000"}));
    QVERIFY(of({s}, "20270211", "20270211").occurrences.empty());
    QCOMPARE(begins(of({s}, "20270301", "20270301")), QStringList{"20270301T190000"});
    // One that the rule never gives does not become an event, even if it says it was moved here.
    s.overrides[1].original = build::wall("20290212T190000");
    QCOMPARE(begins(of({s}, "20261110", "20261122")), QStringList{"20261113T170000"});
}

void tst_occurrences::cancelledChangedAndUnmatched() {
    Series s = build::league("a", "20261105T190000", "FREQ=WEEKLY");
    Override cancelled = onDate("20261105T190000");
    cancelled.cancelled = true;
    Override changed = onDate("20261112T190000");
    changed.title = QStringLiteral("Final");
    changed.duration = hours(5);
    Override unmatched = onDate("20261113T190000");
    unmatched.title = QStringLiteral("Nothing");
    s.overrides = {cancelled, changed, unmatched};
    const Occupancy all = of({s}, "20261105", "20261118");
    QCOMPARE(begins(all), QStringList{"20261112T190000"});
    QCOMPARE(all.occurrences[0].title, QStringLiteral("Final"));
    QCOMPARE(all.occurrences[0].booked.length(), hours(5));
    QCOMPARE(build::rules(all.findings), QList<QByteArray>{"calendar.override-unmatched"});
    s.cancelled = true;
    QVERIFY(of({s}, "20261105", "20261118").occurrences.empty());
}

void tst_occurrences::demandsFollowOtherLanes() {
    Series s = build::league("a", "20261112T190000");
    Override change = onDate("20261112T190000");
    change.lanes = LaneSet::range(5, 12);
    s.overrides = {change};
    Occupancy all = of({s}, "20261112", "20261112");
    QCOMPARE(all.occurrences[0].lanes, LaneSet::range(5, 12));
    QCOMPARE(all.occurrences[0].demands[0].lanes, LaneSet::range(5, 12));  // one demand: for all lanes
    SurfaceDemand other = s.demands[0];
    s.demands[0].lanes = LaneSet::range(1, 4);
    other.lanes = LaneSet::range(5, 8);
    other.pattern = PatternId{QStringLiteral("sport")};
    s.demands.push_back(other);
    all = of({s}, "20261112", "20261112");
    QCOMPARE(all.occurrences[0].demands.size(), 1u);  // several: each for those of its lanes that are left
    QCOMPARE(all.occurrences[0].demands[0].lanes, LaneSet::range(5, 8));
    QCOMPARE(all.occurrences[0].demands[0].pattern->value, QStringLiteral("sport"));
}

void tst_occurrences::closureSuppresses() {
    const Series league = build::league("a", "20261105T190000", "FREQ=WEEKLY");
    Series stubborn = build::league("b", "20261112T100000");
    stubborn.yieldsToClosure = false;
    Series closure = build::closure("c", "20261112T080000", hours(12));
    closure.noStaff = true;
    const Occupancy all = of({league, stubborn, closure}, "20261110", "20261121");
    QCOMPARE(begins(all), (QStringList{"20261112T080000", "20261112T100000", "20261119T190000"}));
    QCOMPARE(build::rules(all.findings), QList<QByteArray>{"calendar.suppressed"});
    QCOMPARE(all.findings[0].subject, league.title);
    const Occurrence& closed = all.occurrences[0];
    QCOMPARE(closed.kind, EventKind::Closure);
    QCOMPARE(closed.lanes, LaneSet::range(1, 24));  // none named: the house
    QCOMPARE(closed.cleared, closed.booked.end);    // nobody plays, nothing to clear
    QVERIFY(closed.noStaff);
    QVERIFY(all.conflicts.empty());
    // Booked to 22:00; a closure from then on does not touch it although lanes are cleared until 22:10.
    const Series after = build::closure("d", "20261105T220000", hours(2));
    QCOMPARE(of({league, after}, "20261105", "20261105").occurrences.size(), 2u);
}

void tst_occurrences::closureOfSomeLanes() {
    Series closure = build::closure("c", "20261112T080000", hours(15));
    closure.lanes = LaneSet::range(9, 12);
    const Series beside = build::league("a", "20261112T190000");
    QCOMPARE(of({closure, beside}, "20261112", "20261112").occurrences.size(), 2u);
    closure.lanes.insert(8);
    QCOMPARE(of({closure, beside}, "20261112", "20261112").occurrences.size(), 1u);
}

void tst_occurrences::closureBeyondTheRange() {
    // Play from 03:00 reaches into the next day; the closure that suppresses it ended before that day began.
    const Series night = build::league("night", "20261113T030000");
    const Series closure = build::closure("c", "20261113T020000", hours(2));
    QVERIFY(of({night, closure}, "20261113", "20261113").occurrences.empty());
}

void tst_occurrences::conflictsAreShown() {
    const Series first = build::league("a", "20261112T190000");
    Series second = build::league("b", "20261112T220500");  // 5 minutes before the lanes are cleared
    second.lanes = LaneSet::range(7, 10);
    second.demands = {};
    const Occupancy all = of({second, first}, "20261112", "20261112");
    QCOMPARE(all.occurrences.size(), 2u);
    QCOMPARE(all.conflicts.size(), 1u);
    QCOMPARE(all.occurrences[all.conflicts[0].first].series, first.id);
    QCOMPARE(all.occurrences[all.conflicts[0].second].series, second.id);
    QCOMPARE(all.conflicts[0].lanes, LaneSet::range(7, 8));
    QCOMPARE(all.conflicts[0].overlap.length(), minutes(5));
    second.start.time = QTime(22, 10);
    QVERIFY(of({first, second}, "20261112", "20261112").conflicts.empty());
}

void tst_occurrences::conflictsAreLimited() {
    std::vector<Series> crowd;
    for (int i = 0; i < 200; ++i)
        crowd.push_back(build::league(QStringLiteral("s%1").arg(i, 3, 10, QLatin1Char('0')), "20261112T190000"));
    const Occupancy all = of(crowd, "20261112", "20261112");
    QCOMPARE(all.occurrences.size(), 200u);
    QCOMPARE(all.conflicts.size(), size_t(limits::conflictsAtOnce));
    QCOMPARE(build::rules(all.findings), QList<QByteArray>{"calendar.conflicts-cut"});
}

void tst_occurrences::lanesBeyondTheCentre() {
    Series s = build::league("a", "20261112T190000");
    s.lanes = LaneSet::range(3, 8);
    const Occupancy all = occupancyOf({s}, build::centre(6), build::days("20261112", "20261112"));
    QCOMPARE(all.occurrences[0].lanes, LaneSet::range(3, 6));
    QCOMPARE(all.occurrences[0].demands[0].lanes, LaneSet::range(3, 6));
    QCOMPARE(build::rules(all.findings), QList<QByteArray>{"calendar.lanes-beyond"});
    QCOMPARE(std::get<QString>(all.findings[0].values[0]), QStringLiteral("7-8"));
}

void tst_occurrences::whatCannotBeExpanded() {
    Series strange = build::league("a", "20261112T190000", "FREQ=HOURLY");
    Series lost = build::league("b", "20261112T190000");
    lost.zone = "Mars/Phobos";
    lost.lanes = LaneSet::range(9, 16);
    const Occupancy all = of({strange, lost}, "20261112", "20261112");
    QCOMPARE(begins(all), QStringList{"20261112T190000"});  // an unknown zone is read as the centre's
    QCOMPARE(build::rules(all.findings), (QList<QByteArray>{"rule.too-frequent", "calendar.unknown-zone"}));
    QCOMPARE(all.findings[0].subject, strange.title);
}

void tst_occurrences::rangeIsCut() {
    const Series s = build::league("a", "20260101T190000", "FREQ=WEEKLY");
    const Occupancy all = of({s}, "20260101", "20451231");
    QCOMPARE(build::rules(all.findings), QList<QByteArray>{"calendar.range-cut"});
    QCOMPARE(all.occurrences.size(), 574u);  // Thursdays from 1 January 2026 to 31 December 2036
    QVERIFY(of({s}, "20260102", "20260101").occurrences.empty());
}

void tst_occurrences::denseSeriesIsCut() {
    Series s =
        build::league("a", "20260101T000000", "FREQ=DAILY;BYHOUR=0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23");
    s.duration = minutes(20);
    const Occupancy all = of({s}, "20260101", "20281231");
    QVERIFY(build::rules(all.findings).contains("calendar.cut"));
    QVERIFY(all.occurrences.size() <= size_t(limits::occurrencesPerRule));
}

void tst_occurrences::orderOfSeriesDoesNotMatter() {
    std::vector<Series> series;
    for (int i = 0; i < 12; ++i) {
        Series s = build::league(QStringLiteral("s%1").arg(i), QStringLiteral("202611%1T%2").arg(10 + i % 4).arg("190000"),
                                 i % 2 ? "FREQ=WEEKLY;COUNT=4" : "FREQ=DAILY;COUNT=9");
        s.lanes = LaneSet::range(1 + i, 6 + i);
        s.demands = {};
        series.push_back(s);
    }
    series.push_back(build::closure("c", "20261113T000000", hours(24)));
    const Occupancy expected = of(series, "20261110", "20261130");
    QVERIFY(expected.conflicts.size() > 20);
    for (int turn = 0; turn < 13; ++turn) {
        std::rotate(series.begin(), series.begin() + 5, series.end());
        const Occupancy all = of(series, "20261110", "20261130");
        QCOMPARE(all.occurrences.size(), expected.occurrences.size());
        for (size_t i = 0; i < all.occurrences.size(); ++i)
            QVERIFY(same(all.occurrences[i], expected.occurrences[i]));
        QVERIFY(all.findings == expected.findings);
        QCOMPARE(all.conflicts.size(), expected.conflicts.size());
        for (size_t i = 0; i < all.conflicts.size(); ++i)
            QVERIFY(all.conflicts[i].first == expected.conflicts[i].first &&
                    all.conflicts[i].second == expected.conflicts[i].second);
    }
}

void tst_occurrences::daysAddUp() {
    // Asked day by day, the same occurrences come out as asked at once; those across 05:00 on both days.
    Series late = build::league("late", "20261020T233000", "FREQ=DAILY;COUNT=20");
    late.duration = hours(7);
    Series moved = build::league("moved", "20261021T190000", "FREQ=WEEKLY");
    Override change = onDate("20261028T190000");
    change.start = build::wall("20261030T190000");
    moved.overrides = {change};
    const std::vector<Series> series{late, moved, build::closure("c", "20261101T120000", hours(30))};
    std::set<std::pair<SeriesId, LocalTime>> daily;
    for (QDate day(2026, 10, 15); day <= QDate(2026, 11, 20); day = day.addDays(1)) {
        for (const Occurrence& o : occupancyOf(series, build::centre(), {day, day}).occurrences)
            daily.insert({o.series, o.original});
    }
    std::set<std::pair<SeriesId, LocalTime>> whole;
    for (const Occurrence& o : of(series, "20261015", "20261120").occurrences)
        whole.insert({o.series, o.original});
    QVERIFY(whole.size() > 20);
    QVERIFY(daily == whole);
}

QTEST_GUILESS_MAIN(tst_occurrences)
#include "tst_occurrences.moc"
