#include "tests/support/calendar_builders.h"

#include "core/base/limits.h"
#include "core/calendar/recurrence.h"

#include <QTest>

#include <functional>

using namespace laneward;

namespace {

using Change = std::function<void(Series&)>;

Override onDate(const char* original) {
    Override change;
    change.original = build::wall(QString::fromLatin1(original));
    return change;
}

}  // namespace

Q_DECLARE_METATYPE(Change)

class tst_series : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void soundSeriesHasNoFaults();
    void faults_data();
    void faults();
    void copyKeepsWeekdayAndLength();
    void copyLeavesHolidaysOut();
    void copyOfMonthlyRuleStartsOnOneOfItsDates();
    void copyMovesUntilInWallTime();
    void copyOfDatesWithoutRule();
};

void tst_series::soundSeriesHasNoFaults() {
    QVERIFY(faultsOf(build::league("a", "20261110T190000"), 24).empty());
    QVERIFY(faultsOf(build::league("a", "20261110T190000", "FREQ=WEEKLY;COUNT=30"), 8).empty());
    QVERIFY(faultsOf(build::closure("c", "20261224T000000", hours(48)), 24).empty());
}

void tst_series::faults_data() {
    QTest::addColumn<QByteArray>("rule");
    QTest::addColumn<Change>("change");
    const auto row = [](const char* rule, const char* name, Change change) { QTest::newRow(name) << QByteArray(rule) << change; };
    row("series.no-id", "no id", [](Series& s) { s.id = {}; });
    row("series.no-title", "no title", [](Series& s) { s.title = QStringLiteral("  "); });
    row("series.title-too-long", "title", [](Series& s) { s.title = QString(limits::nameLength + 1, QLatin1Char('x')); });
    row("series.note-too-long", "note", [](Series& s) { s.note = QString(limits::noteLength + 1, QLatin1Char('x')); });
    row("series.players", "players", [](Series& s) { s.players = -1; });
    row("series.unknown-zone", "zone", [](Series& s) { s.zone = "Mars/Phobos"; });
    row("series.bad-start", "no start", [](Series& s) { s.start = {}; });
    row("series.bad-start", "start in 1969", [](Series& s) { s.start.date = QDate(1969, 12, 31); });
    row("series.bad-start", "start in 2100", [](Series& s) { s.start.date = QDate(2100, 1, 1); });
    row("series.no-length", "no length", [](Series& s) { s.duration = {}; });
    row("series.too-long", "length", [](Series& s) { s.duration = hours(24 * 400); });
    row("series.setting-time", "settle", [](Series& s) { s.settle = Seconds{-1}; });
    row("series.setting-time", "clearing", [](Series& s) { s.clearing = hours(25); });
    row("series.bad-date", "extra", [](Series& s) { s.extraDates = {LocalTime{}}; });
    row("series.bad-date", "excluded", [](Series& s) { s.excludedDates = {build::wall("99990101T000000")}; });
    row("series.no-lanes", "lanes", [](Series& s) {
        s.lanes = {};
        s.demands = {};
    });
    row("series.lane-unknown", "lane 25", [](Series& s) { s.lanes.insert(25); });
    row("series.demand-no-lanes", "demand", [](Series& s) { s.demands[0].lanes = {}; });
    row("series.demand-lanes", "demand elsewhere", [](Series& s) { s.demands[0].lanes.insert(9); });
    row("series.demand-time", "age", [](Series& s) { s.demands[0].longestAge = {}; });
    row("rule.too-frequent", "hourly", [](Series& s) { s.rule = QStringLiteral("FREQ=HOURLY"); });
    row("rule.unreadable", "rule", [](Series& s) { s.rule = QStringLiteral("now and then"); });
    row("series.override-twice", "override twice", [](Series& s) {
        s.overrides = {onDate("20261110T190000"), onDate("20261110T190000")};
    });
    row("series.bad-date", "override", [](Series& s) { s.overrides = {Override{}}; });
    row("series.no-length", "override length", [](Series& s) {
        s.overrides = {onDate("20261110T190000")};
        s.overrides[0].duration = Seconds{0};
    });
    row("series.too-long", "override too long", [](Series& s) {
        s.overrides = {onDate("20261110T190000")};
        s.overrides[0].duration = hours(24 * 400);
    });
    row("series.no-lanes", "override lanes", [](Series& s) {
        s.overrides = {onDate("20261110T190000")};
        s.overrides[0].lanes = LaneSet();
    });
    row("series.lane-unknown", "override lane", [](Series& s) {
        s.overrides = {onDate("20261110T190000")};
        s.overrides[0].lanes = LaneSet{30};
    });
}

void tst_series::faults() {
    QFETCH(QByteArray, rule);
    QFETCH(Change, change);
    Series s = build::league("a", "20261110T190000");
    change(s);
    const std::vector<Finding> found = faultsOf(s, 24);
    QCOMPARE(found.size(), 1u);
    QCOMPARE(found[0].rule, rule);
    QCOMPARE(found[0].severity, Severity::Fault);
    QVERIFY(!found[0].subject.isEmpty());
}

void tst_series::copyKeepsWeekdayAndLength() {
    Series old = build::league("old", "20250904T190000", "FREQ=WEEKLY;UNTIL=20260326T180000Z");  // Thursdays
    old.version = 7;
    old.overrides = {onDate("20250911T190000")};
    old.excludedDates = {build::wall("20251225T190000")};
    const Series copy = copiedToSeason(old, QDate(2026, 9, 1), {}, SeriesId{QStringLiteral("new")});
    QCOMPARE(copy.id.value, QStringLiteral("new"));
    QCOMPARE(copy.uid, QStringLiteral("new"));
    QCOMPARE(copy.version, 0);
    QVERIFY(copy.overrides.empty());
    QVERIFY(copy.excludedDates.empty());
    QCOMPARE(build::text(copy.start), QStringLiteral("20260903T190000"));
    const auto count = [](const Series& s) { return startsOf(s, build::days("20250101", "20281231"))->starts.size(); };
    QCOMPARE(count(copy), count(old) + 1);  // Christmas had been left out of the old one
    Series counted = build::league("old", "20250904T190000", "FREQ=WEEKLY;COUNT=12");
    QCOMPARE(count(copiedToSeason(counted, QDate(2026, 9, 3), {}, SeriesId{QStringLiteral("n")})), 12u);
    QCOMPARE(copiedToSeason(counted, QDate(2026, 9, 3), {}, SeriesId{QStringLiteral("n")}).start.date, QDate(2026, 9, 3));
}

void tst_series::copyLeavesHolidaysOut() {
    const Series old = build::league("old", "20250904T190000", "FREQ=WEEKLY;COUNT=30");
    const std::vector<QDate> holidays{QDate(2026, 12, 24), QDate(2026, 12, 25), QDate(2026, 12, 31)};
    const Series copy = copiedToSeason(old, QDate(2026, 9, 1), holidays, SeriesId{QStringLiteral("new")});
    // 24 and 31 December 2026 are Thursdays, the 25th is not.
    QCOMPARE(build::texts(copy.excludedDates), (QStringList{"20261224T190000", "20261231T190000"}));
    const std::vector<LocalTime> starts = startsOf(copy, build::days("20260101", "20281231"))->starts;
    QCOMPARE(starts.size(), 28u);
    for (const LocalTime& t : starts)
        QVERIFY(std::find(holidays.begin(), holidays.end(), t.date) == holidays.end());
}

void tst_series::copyOfMonthlyRuleStartsOnOneOfItsDates() {
    const Series old = build::league("old", "20250909T190000", "FREQ=MONTHLY;BYDAY=2TU;COUNT=6");
    const Series copy = copiedToSeason(old, QDate(2026, 8, 20), {}, SeriesId{QStringLiteral("new")});
    QCOMPARE(build::text(copy.start), QStringLiteral("20260908T190000"));
}

void tst_series::copyMovesUntilInWallTime() {
    const Series winter = build::league("w", "20250904T190000", "FREQ=WEEKLY;UNTIL=20251030T180000Z");
    QCOMPARE(copiedToSeason(winter, QDate(2026, 9, 1), {}, SeriesId{QStringLiteral("n")}).rule,
             QStringLiteral("FREQ=WEEKLY;UNTIL=20261029T180000Z"));
    const Series shift = build::league("s", "20250330T190000", "FREQ=WEEKLY;UNTIL=20250330T170000Z");
    const Series copy = copiedToSeason(shift, QDate(2026, 3, 15), {}, SeriesId{QStringLiteral("n")});
    QCOMPARE(build::text(copy.start), QStringLiteral("20260315T190000"));
    QCOMPARE(copy.rule, QStringLiteral("FREQ=WEEKLY;UNTIL=20260315T180000Z"));  // CET on 15 March, CEST on 30 March
    const Series date = build::league("d", "20250904T190000", "FREQ=WEEKLY;UNTIL=20251030");
    QCOMPARE(copiedToSeason(date, QDate(2026, 9, 1), {}, SeriesId{QStringLiteral("n")}).rule,
             QStringLiteral("FREQ=WEEKLY;UNTIL=20261029"));
    const Series floating = build::league("f", "20250904T190000", "FREQ=WEEKLY;UNTIL=20251030T190000");
    QCOMPARE(copiedToSeason(floating, QDate(2026, 9, 1), {}, SeriesId{QStringLiteral("n")}).rule,
             QStringLiteral("FREQ=WEEKLY;UNTIL=20261029T190000"));
}

void tst_series::copyOfDatesWithoutRule() {
    Series squads = build::league("old", "20251011T090000");
    squads.extraDates = {build::wall("20251011T140000"), build::wall("20251012T090000")};
    const Series copy = copiedToSeason(squads, QDate(2026, 10, 5), {QDate(2026, 10, 11)}, SeriesId{QStringLiteral("new")});
    QCOMPARE(build::text(copy.start), QStringLiteral("20261010T090000"));
    QCOMPARE(build::texts(copy.extraDates), (QStringList{"20261010T140000", "20261011T090000"}));
    QCOMPARE(build::texts(copy.excludedDates), QStringList{"20261011T090000"});
}

QTEST_GUILESS_MAIN(tst_series)
#include "tst_series.moc"
