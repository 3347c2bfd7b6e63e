#include "tests/support/calendar_builders.h"
#include "tests/support/cpu_limit.h"

#include "core/base/limits.h"
#include "core/calendar/recurrence.h"

#include <QTest>

using namespace laneward;

namespace {

QStringList dates(const QString& rule, const QString& start, const DateRange& range) {
    const Result<Rule> parsed = parseRule(rule, Zone());
    return parsed ? build::texts(datesOf(*parsed, build::wall(start), range).starts) : QStringList{"unreadable"};
}

/// Rules that hang or stall libical 3.0.16, and their kin.
const QByteArrayList tooFrequent{"FREQ=SECONDLY;BYMONTH=2;BYMONTHDAY=30",
                                 "FREQ=MINUTELY;BYMONTH=2;BYMONTHDAY=30",
                                 "FREQ=HOURLY;BYMONTH=2;BYMONTHDAY=31",
                                 "FREQ=HOURLY",
                                 "FREQ=SECONDLY;INTERVAL=30000",
                                 "FREQ=DAILY;BYHOUR=9,10;BYMINUTE=0,5,10,15,20,25,30,35,40,45,50,55;BYSECOND=0,30",
                                 "FREQ=WEEKLY;BYMINUTE=0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23,24"};
const QByteArrayList neverADate{
    "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
    "FREQ=MONTHLY;BYMONTH=2;BYMONTHDAY=30",
    "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30,31",
    "FREQ=YEARLY;BYMONTH=4,6,9,11;BYMONTHDAY=31",
    "FREQ=YEARLY;BYWEEKNO=1;BYMONTH=6",
    "FREQ=YEARLY;BYYEARDAY=1;BYMONTH=6",
    "FREQ=MONTHLY;BYDAY=MO;BYSETPOS=6",
    "FREQ=DAILY;BYHOUR=1;BYSETPOS=2",
    "FREQ=WEEKLY;BYDAY=MO;BYSETPOS=-2",
    "FREQ=MONTHLY;BYMONTHDAY=8;BYDAY=1MO",
    "FREQ=YEARLY;BYMONTH=2;BYDAY=5MO;BYMONTHDAY=1",
    "FREQ=DAILY;BYHOUR=0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23;BYMONTH=2;BYMONTHDAY=30",
    "FREQ=YEARLY;BYYEARDAY=366;BYMONTHDAY=30"};
const QByteArrayList unreadable{"",
                                "FREQ",
                                "WEEKLY",
                                "FREQ=",
                                "FREQ=SOMETIMES",
                                "INTERVAL=2",
                                "FREQ=WEEKLY;",
                                "FREQ=WEEKLY;INTERVAL=0",
                                "FREQ=WEEKLY;INTERVAL=-1",
                                "FREQ=DAILY;INTERVAL=32768",
                                "FREQ=WEEKLY;INTERVAL=99999999999",
                                "FREQ=WEEKLY;COUNT=0",
                                "FREQ=WEEKLY;COUNT=x",
                                "FREQ=WEEKLY;COUNT=2;UNTIL=20260101",
                                "FREQ=WEEKLY;COUNT=1;COUNT=2",
                                "FREQ=WEEKLY;BYDAY=2MO",
                                "FREQ=WEEKLY;BYDAY=XX",
                                "FREQ=WEEKLY;BYDAY=",
                                "FREQ=WEEKLY;BYMONTHDAY=3",
                                "FREQ=MONTHLY;BYYEARDAY=3",
                                "FREQ=DAILY;BYWEEKNO=3",
                                "FREQ=DAILY;BYDAY=1MO",
                                "FREQ=YEARLY;BYWEEKNO=3;BYDAY=1MO",
                                "FREQ=MONTHLY;BYMONTHDAY=0",
                                "FREQ=MONTHLY;BYMONTHDAY=32",
                                "FREQ=YEARLY;BYDAY=54MO",
                                "FREQ=YEARLY;BYDAY=0MO",
                                "FREQ=YEARLY;BYMONTH=13",
                                "FREQ=YEARLY;BYMONTH=-1",
                                "FREQ=MONTHLY;BYSETPOS=1",
                                "FREQ=WEEKLY;UNTIL=2026",
                                "FREQ=WEEKLY;UNTIL=20260231",
                                "FREQ=WEEKLY;UNTIL=20260101T250000",
                                "FREQ=WEEKLY;UNTIL=00000101",
                                "FREQ=WEEKLY;WKST=XX",
                                "FREQ=WEEKLY;FOO=1",
                                "RSCALE=CHINESE;FREQ=YEARLY",
                                "RRULE:FREQ=DAILY",
                                "FREQ=DAILY;BYHOUR=24",
                                "FREQ=DAILY;BYHOUR=1,,2",
                                "FREQ=DAILY;BYHOUR=0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0"};

/// A hang is what these rules cause elsewhere; two seconds leave room for a slow machine under a sanitizer.
constexpr double secondsAllowed = 2;

}  // namespace

class tst_recurrence : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void refused_data();
    void refused();
    void accepted_data();
    void accepted();
    void rareRulesReturnFast_data();
    void rareRulesReturnFast();
    void expansionIsCut();
    void startCountsEvenIfItDoesNotMatch();
    void untilIsInclusive();
    void untilInUtcIsWallTime();
    void untilAsDateMeansTheWholeDay();
    void rangeAnywhereGivesTheSameDates_data();
    void rangeAnywhereGivesTheSameDates();
    void extraAndExcludedDates();
    void once();
    void crashOfTheLibrary();
};

void tst_recurrence::refused_data() {
    QTest::addColumn<QString>("rule");
    QTest::addColumn<QByteArray>("fault");
    const auto rows = [](const QByteArray& fault, const QByteArrayList& rules) {
        for (const QByteArray& rule : rules)
            QTest::newRow(rule.isEmpty() ? "empty" : rule.constData()) << QString::fromLatin1(rule) << fault;
    };
    rows("rule.too-frequent", tooFrequent);
    rows("rule.endless-search", neverADate);
    rows("rule.unreadable", unreadable);
}

void tst_recurrence::refused() {
    QFETCH(QString, rule);
    QFETCH(QByteArray, fault);
    const build::CpuLimit limit(secondsAllowed);
    const Result<Rule> parsed = parseRule(rule, Zone());
    QVERIFY(!limit.isExceeded());
    QVERIFY(!parsed);
    QCOMPARE(parsed.error().finding.rule, fault);
    QCOMPARE(parsed.error().finding.subject, rule);
    QCOMPARE(parsed.error().kind, ErrorKind::Invalid);
}

void tst_recurrence::accepted_data() {
    QTest::addColumn<QString>("rule");
    for (const char* rule :
         {"FREQ=WEEKLY", "freq=weekly;byday=th", "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29", "FREQ=YEARLY;BYYEARDAY=-366",
          "FREQ=YEARLY;BYWEEKNO=53;BYDAY=MO", "FREQ=MONTHLY;BYDAY=MO,TU;BYSETPOS=10", "FREQ=MONTHLY;BYDAY=+1MO,-1FR",
          "FREQ=DAILY;BYHOUR=9,21;BYSETPOS=-1", "FREQ=DAILY;BYSECOND=60", "FREQ=YEARLY;BYDAY=53SU",
          "FREQ=DAILY;BYHOUR=0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23", "FREQ=DAILY;COUNT=2147483647",
          "FREQ=DAILY;INTERVAL=32767"})
        QTest::newRow(rule) << QString::fromLatin1(rule);
}

void tst_recurrence::accepted() {
    QFETCH(QString, rule);
    QVERIFY(parseRule(rule, Zone()));
}

void tst_recurrence::rareRulesReturnFast_data() {
    QTest::addColumn<QString>("rule");
    // Readable, but from this start without any later date in reach, or with more dates than anybody wants.
    for (const char* rule :
         {"FREQ=YEARLY;INTERVAL=4;BYMONTH=2;BYMONTHDAY=29", "FREQ=DAILY;INTERVAL=7;BYDAY=WE",
          "FREQ=MONTHLY;INTERVAL=12;BYMONTH=5", "FREQ=YEARLY;INTERVAL=2;BYYEARDAY=366", "FREQ=WEEKLY;INTERVAL=32767;BYMONTH=1",
          "FREQ=DAILY;INTERVAL=32000;BYMONTHDAY=31", "FREQ=YEARLY;INTERVAL=1000;BYMONTH=2;BYMONTHDAY=29",
          "FREQ=DAILY;COUNT=2147483647",
          "FREQ=DAILY;COUNT=2000000000;BYHOUR=0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23",
          "FREQ=YEARLY;BYWEEKNO=7;BYHOUR=1,8,9", "FREQ=YEARLY;BYMONTH=1,2,3,4,5,6,7,8,9,10,11,12;BYDAY=MO;BYSETPOS=-52,52"})
        QTest::newRow(rule) << QString::fromLatin1(rule);
}

void tst_recurrence::rareRulesReturnFast() {
    QFETCH(QString, rule);
    const build::CpuLimit limit(secondsAllowed);
    const Result<Rule> parsed = parseRule(rule, Zone());
    QVERIFY(parsed);
    const Dates found = datesOf(*parsed, build::wall("19700101T190000"), build::days("20250101", "20291231"));
    QVERIFY(found.starts.size() <= size_t(limits::occurrencesPerRule));
    QVERIFY(!limit.isExceeded());
}

void tst_recurrence::expansionIsCut() {
    const Result<Rule> hourly =
        parseRule("FREQ=DAILY;BYHOUR=0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23", Zone());
    const Dates some = datesOf(*hourly, build::wall("20260101T000000"), build::days("20260101", "20270101"));
    QCOMPARE(some.starts.size(), 366u * 24);
    QVERIFY(!some.cut);
    const Dates many = datesOf(*hourly, build::wall("20260101T000000"), build::days("20260101", "20300101"));
    QCOMPARE(many.starts.size(), size_t(limits::occurrencesPerRule));
    QVERIFY(many.cut);
}

void tst_recurrence::startCountsEvenIfItDoesNotMatch() {
    QCOMPARE(dates("FREQ=WEEKLY;BYDAY=TH;COUNT=3", "20261110T190000", build::days("20260101", "20271231")),
             (QStringList{"20261110T190000", "20261112T190000", "20261119T190000"}));
    QCOMPARE(dates("FREQ=WEEKLY;BYDAY=TU;COUNT=3", "20261110T190000", build::days("20260101", "20271231")),
             (QStringList{"20261110T190000", "20261117T190000", "20261124T190000"}));
}

void tst_recurrence::untilIsInclusive() {
    QCOMPARE(dates("FREQ=DAILY;UNTIL=20261112T190000", "20261110T190000", build::days("20260101", "20271231")).size(), 3);
    QCOMPARE(dates("FREQ=DAILY;UNTIL=20261112T185959", "20261110T190000", build::days("20260101", "20271231")).size(), 2);
    QCOMPARE(dates("FREQ=DAILY;UNTIL=20251112T185959", "20261110T190000", build::days("20260101", "20271231")),
             QStringList{"20261110T190000"});
}

void tst_recurrence::untilInUtcIsWallTime() {
    const Result<Zone> berlin = Zone::load("Europe/Berlin");
    const auto last = [&](const char* until) {
        const Result<Rule> rule = parseRule(QStringLiteral("FREQ=DAILY;UNTIL=") + QLatin1String(until), *berlin);
        return build::text(datesOf(*rule, build::wall("20261110T190000"), build::days("20260101", "20271231")).starts.back());
    };
    QCOMPARE(last("20261120T180000Z"), QStringLiteral("20261120T190000"));
    QCOMPARE(last("20261120T175959Z"), QStringLiteral("20261119T190000"));
    QCOMPARE(last("20270620T170000Z"), QStringLiteral("20270620T190000"));  // summer time
    QCOMPARE(last("20270620T165959Z"), QStringLiteral("20270619T190000"));
}

void tst_recurrence::untilAsDateMeansTheWholeDay() {
    QCOMPARE(dates("FREQ=DAILY;UNTIL=20261112", "20261110T235959", build::days("20260101", "20271231")).size(), 3);
}

void tst_recurrence::rangeAnywhereGivesTheSameDates_data() {
    QTest::addColumn<QString>("rule");
    for (const char* rule :
         {"FREQ=DAILY;INTERVAL=3", "FREQ=WEEKLY;INTERVAL=2;BYDAY=MO,TH;WKST=SU", "FREQ=MONTHLY;INTERVAL=5;BYDAY=-1FR",
          "FREQ=YEARLY;INTERVAL=2;BYWEEKNO=1,52,53;BYDAY=MO,SU", "FREQ=WEEKLY;COUNT=90;BYDAY=TU,SA",
          "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-1;UNTIL=20280101T000000", "FREQ=MONTHLY;BYMONTHDAY=31"})
        QTest::newRow(rule) << QString::fromLatin1(rule);
}

void tst_recurrence::rangeAnywhereGivesTheSameDates() {
    QFETCH(QString, rule);
    const QString start = QStringLiteral("20260827T190000");
    const QStringList all = dates(rule, start, build::days("20260101", "20291231"));
    QVERIFY(all.size() > 5);
    QStringList pieces;
    for (QDate first(2026, 1, 1); first.year() < 2030; first = first.addDays(17)) {
        const DateRange piece{first, std::min(first.addDays(16), QDate(2029, 12, 31))};
        pieces += dates(rule, start, piece);
    }
    QCOMPARE(pieces, all);
    QVERIFY(dates(rule, start, build::days("20250101", "20260826")).isEmpty());
    QVERIFY(dates(rule, start, {QDate(2027, 1, 2), QDate(2027, 1, 1)}).isEmpty());
}

void tst_recurrence::extraAndExcludedDates() {
    Series s = build::league("a", "20261110T190000", "FREQ=WEEKLY;COUNT=4");
    s.extraDates = {build::wall("20261113T190000"), build::wall("20261117T190000"), build::wall("20300101T190000")};
    s.excludedDates = {build::wall("20261110T190000"), build::wall("20261124T190000"), build::wall("20261124T180000")};
    // A date given twice counts once, and exclusion wins (RFC 5545, 3.8.5.1 and 3.8.5.2).
    QCOMPARE(build::texts(startsOf(s, build::days("20260101", "20271231"))->starts),
             (QStringList{"20261113T190000", "20261117T190000", "20261201T190000"}));
    s.rule = "FREQ=HOURLY";
    QVERIFY(!startsOf(s, build::days("20260101", "20271231")));
}

void tst_recurrence::once() {
    const Series s = build::league("a", "20261110T190000");
    QCOMPARE(startsOf(s, build::days("20261110", "20261110"))->starts.size(), 1u);
    QVERIFY(startsOf(s, build::days("20261111", "20271110"))->starts.empty());
}

void tst_recurrence::crashOfTheLibrary() {
    // libical 3.0.16's own iterator crashes the process on this rule. Expected dates by the definition of ISO 8601 weeks:
    // week 7 of 2026 is 9 to 15 February; the start is a Monday.
    QCOMPARE(dates("FREQ=YEARLY;BYWEEKNO=7;BYHOUR=1,8,9", "20250728T080000", build::days("20260101", "20261231")),
             (QStringList{"20260209T010000", "20260209T080000", "20260209T090000"}));
}

QTEST_GUILESS_MAIN(tst_recurrence)
#include "tst_recurrence.moc"
