#include "tests/support/calendar_builders.h"
#include "tests/support/calendar_text.h"

#include "core/calendar/icalendar.h"
#include "core/calendar/recurrence.h"

#include <QTest>

using namespace laneward;
using build::calendar;
using build::read;
using build::ruleOf;

class tst_ics_reading : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anEvent();
    void formsOfLines_data();
    void formsOfLines();
    void foldInsideACharacter();
    void zones_data();
    void zones();
    void zoneNamedInTheFile();
    void floatingAndAllDay();
    void endInAnotherZone();
    void mapping();
    void overridesJoin();
    void overridesWithoutSeries();
    void datesInOtherForms();
    void whatIsLeftOutIsNoted();
    void longTextsAreCut();
};

void tst_ics_reading::anEvent() {
    const Result<IcsContents> contents = read(calendar({"RRULE:FREQ=WEEKLY;COUNT=30", "DESCRIPTION:a\\nb", "STATUS:CONFIRMED",
                                                        "EXDATE;TZID=Europe/Berlin:20261224T190000,20261231T190000"}));
    QVERIFY(contents);
    QCOMPARE(contents->series.size(), 1u);
    const Series& s = contents->series[0];
    QCOMPARE(s.id.value, QStringLiteral("u1"));
    QCOMPARE(s.uid, QStringLiteral("u1"));
    QCOMPARE(s.title, QStringLiteral("Thursday Fours"));
    QCOMPARE(s.note, QStringLiteral("a\nb"));
    QCOMPARE(s.zone, QByteArray("Europe/Berlin"));
    QCOMPARE(build::text(s.start), QStringLiteral("20261112T190000"));
    QCOMPARE(s.duration, hours(3));
    QCOMPARE(s.rule, QStringLiteral("FREQ=WEEKLY;COUNT=30"));
    QCOMPARE(s.lanes, LaneSet::range(1, 8));
    QCOMPARE(build::texts(s.excludedDates), (QStringList{"20261224T190000", "20261231T190000"}));
    QVERIFY(!s.cancelled);
    QVERIFY(contents->notes.empty());
}

void tst_ics_reading::formsOfLines_data() {
    QTest::addColumn<QByteArray>("bytes");
    const QByteArray plain = calendar();
    QTest::newRow("LF") << calendar({}, "\n");
    QTest::newRow("CR") << calendar({}, "\r");
    QTest::newRow("BOM") << "\xef\xbb\xbf" + plain;
    QTest::newRow("blank lines") << "\r\n" + plain + "\r\n \r\n";
    QTest::newRow("no last line end") << plain.chopped(2);
    QTest::newRow("lower case") << QByteArray(plain).replace("BEGIN:VEVENT", "begin:vevent").replace("SUMMARY", "summary");
    QTest::newRow("quoted parameter") << QByteArray(plain).replace("TZID=Europe/Berlin", "X-A=\"b;c:d\";TZID=\"Europe/Berlin\"");
    QTest::newRow("folded everywhere")
        << QByteArray(plain).replace("DTSTART;T", "DTSTART;\r\n T").replace("Fours", "\r\n\tFou\r\n rs");
}

void tst_ics_reading::formsOfLines() {
    QFETCH(QByteArray, bytes);
    const Result<IcsContents> contents = read(bytes);
    QCOMPARE(ruleOf(contents), QByteArray("read"));
    QVERIFY(contents->series == read(calendar())->series);
}

void tst_ics_reading::foldInsideACharacter() {
    QByteArray bytes = calendar({"SUMMARY:M\xc3\xbcller \xf0\x9f\x8e\xb3"});
    bytes.replace("M\xc3\xbc", "M\xc3\r\n \xbc");
    bytes.replace("\xf0\x9f\x8e", "\xf0\x9f\r\n\t\x8e");
    QCOMPARE(read(bytes)->series[0].title, QString::fromUtf8("M\xc3\xbcller \xf0\x9f\x8e\xb3"));
}

void tst_ics_reading::zones_data() {
    QTest::addColumn<QByteArray>("tzid");
    QTest::addColumn<QByteArray>("zone");
    QTest::addColumn<QByteArray>("note");
    QTest::newRow("plain") << QByteArray("America/New_York") << QByteArray("America/New_York") << QByteArray();
    QTest::newRow("prefix") << QByteArray("/vendor/America/New_York") << QByteArray("America/New_York") << QByteArray();
    QTest::newRow("prefix and version") << QByteArray("/a.example/2026a_1/America/New_York") << QByteArray("America/New_York")
                                        << QByteArray();
    QTest::newRow("fixed offset") << QByteArray("Etc/GMT+5") << QByteArray("Etc/GMT+5") << QByteArray();
    QTest::newRow("alias") << QByteArray("W. Europe Standard Time") << QByteArray("Europe/Berlin")
                           << QByteArray("ics.zone-read-as");
    QTest::newRow("unknown") << QByteArray("Mars/Phobos") << QByteArray("Europe/Berlin") << QByteArray("ics.unknown-zone");
}

void tst_ics_reading::zones() {
    QFETCH(QByteArray, tzid);
    QFETCH(QByteArray, zone);
    QFETCH(QByteArray, note);
    const Result<IcsContents> contents = read(calendar({"DTSTART;TZID=" + tzid + ":20261112T190000"}));
    QCOMPARE(contents->series[0].zone, zone);
    QCOMPARE(build::text(contents->series[0].start), QStringLiteral("20261112T190000"));
    QCOMPARE(build::rules(contents->notes), note.isEmpty() ? QList<QByteArray>() : QList<QByteArray>{note});
    if (note.isEmpty()) return;
    QCOMPARE(contents->notes[0].subject, QStringLiteral("a.ics:8"));
    IcsMapping mapping;
    mapping.zone = "Asia/Tokyo";
    const bool unknown = note == "ics.unknown-zone";
    QCOMPARE(read(calendar({"DTSTART;TZID=" + tzid + ":20261112T190000"}), mapping)->series[0].zone,
             unknown ? mapping.zone : zone);
}

void tst_ics_reading::zoneNamedInTheFile() {
    // The VTIMEZONE may stand after the event that uses it.
    const QByteArray zone =
        "BEGIN:VTIMEZONE\r\nTZID:Our zone\r\nX-LIC-LOCATION:America/Denver\r\nBEGIN:STANDARD\r\n"
        "DTSTART:19700101T000000\r\nEND:STANDARD\r\nEND:VTIMEZONE\r\n";
    const QByteArray bytes = calendar({"DTSTART;TZID=Our zone:20261112T190000"}).replace("END:VCALENDAR", zone + "END:VCALENDAR");
    QCOMPARE(read(bytes)->series[0].zone, QByteArray("America/Denver"));
}

void tst_ics_reading::floatingAndAllDay() {
    const Result<IcsContents> floating = read(calendar({"DTSTART:20261112T190000"}));
    QCOMPARE(floating->series[0].zone, QByteArray("Europe/Berlin"));
    QCOMPARE(build::rules(floating->notes), QList<QByteArray>{"ics.floating-time"});
    const Result<IcsContents> day = read(calendar({"DTSTART;VALUE=DATE:20261112", "DURATION:"}));
    QCOMPARE(build::text(day->series[0].start), QStringLiteral("20261112T000000"));
    QCOMPARE(day->series[0].duration, hours(24));
    QCOMPARE(build::rules(day->notes), QList<QByteArray>{"ics.all-day"});
    const Result<IcsContents> days = read(calendar({"DTSTART;VALUE=DATE:20261112", "DURATION:", "DTEND;VALUE=DATE:20261115"}));
    QCOMPARE(days->series[0].duration, hours(72));
}

void tst_ics_reading::endInAnotherZone() {
    const Result<IcsContents> contents = read(calendar({"DURATION:", "DTEND:20261112T203000Z"}));
    QCOMPARE(contents->series[0].duration, minutes(150));  // 19:00 in Berlin is 18:00Z in November
    // An exact duration across a change of offset: 23:00 to 05:00 with a repeated hour are 7 hours.
    const Result<IcsContents> night =
        read(calendar({"DURATION:", "DTSTART;TZID=Europe/Berlin:20261024T230000", "DTEND;TZID=Europe/Berlin:20261025T050000"}));
    QCOMPARE(night->series[0].duration, hours(7));
    QCOMPARE(read(calendar({"DTSTART:20261112T190000Z"}))->series[0].zone, QByteArray("UTC"));
    QCOMPARE(read(calendar({"DURATION:P1W"}))->series[0].duration, hours(168));
}

void tst_ics_reading::mapping() {
    IcsMapping mapping;
    mapping.lanes = LaneSet::range(1, 4);
    mapping.kind = EventKind::School;
    SurfaceDemand everywhere;
    everywhere.kind = DemandKind::Recent;
    SurfaceDemand some = everywhere;
    some.lanes = LaneSet::range(4, 9);
    SurfaceDemand none = everywhere;
    none.lanes = LaneSet{20};
    mapping.demands = {everywhere, some, none};
    const Series mapped = read(calendar({"RESOURCES:"}), mapping)->series[0];
    QCOMPARE(mapped.kind, EventKind::School);
    QCOMPARE(mapped.lanes, LaneSet::range(1, 4));
    QCOMPARE(mapped.demands.size(), 2u);
    QCOMPARE(mapped.demands[0].lanes, LaneSet::range(1, 4));
    QCOMPARE(mapped.demands[1].lanes, LaneSet{4});
    QCOMPARE(read(calendar(), mapping)->series[0].lanes, LaneSet::range(1, 8));
    // A file that says what it asks is not overruled.
    const Series own =
        read(calendar({"X-LANEWARD-KIND:league", "X-LANEWARD-DEMAND:SURFACE=FRESH;PATTERN=house\\;2"}), mapping)->series[0];
    QCOMPARE(own.kind, EventKind::League);
    QCOMPARE(own.demands.size(), 1u);
    QCOMPARE(own.demands[0].kind, DemandKind::Fresh);
    QCOMPARE(own.demands[0].pattern->value, QStringLiteral("house;2"));
    QCOMPARE(own.demands[0].lanes, LaneSet::range(1, 8));
    mapping.kind = EventKind::Closure;
    mapping.lanes = {};
    mapping.demands = {};
    QVERIFY(read(calendar({"RESOURCES:"}), mapping)->series[0].lanes.isEmpty());
}

void tst_ics_reading::overridesJoin() {
    const QByteArray bytes = calendar({"RRULE:FREQ=WEEKLY"}) +
                             calendar({"RECURRENCE-ID:20261119T180000Z", "DTSTART:20261120T170000Z", "DURATION:PT2H",
                                       "SUMMARY:Final", "RESOURCES:LANES 1-4"}) +
                             calendar({"RECURRENCE-ID;VALUE=DATE:20261126", "DTSTART;TZID=Europe/Berlin:20261126T190000"}) +
                             calendar({"RECURRENCE-ID;TZID=Europe/Berlin:20261203T190000", "STATUS:CANCELLED",
                                       "SUMMARY:", "DURATION:", "RESOURCES:", "DTSTART;TZID=Europe/Berlin:20261203T190000"});
    const Result<IcsContents> contents = read(bytes);
    QCOMPARE(ruleOf(contents), QByteArray("read"));
    QCOMPARE(contents->series.size(), 1u);
    const std::vector<Override>& changes = contents->series[0].overrides;
    QCOMPARE(changes.size(), 3u);
    QCOMPARE(build::text(changes[0].original), QStringLiteral("20261119T190000"));
    QCOMPARE(build::text(*changes[0].start), QStringLiteral("20261120T180000"));
    QCOMPARE(*changes[0].duration, hours(2));
    QCOMPARE(*changes[0].title, QStringLiteral("Final"));
    QCOMPARE(*changes[0].lanes, LaneSet::range(1, 4));
    Override untouched;
    untouched.original = build::wall("20261126T190000");
    QVERIFY(changes[1] == untouched);
    untouched.original = build::wall("20261203T190000");
    untouched.cancelled = true;
    QVERIFY(changes[2] == untouched);
}

void tst_ics_reading::overridesWithoutSeries() {
    const QByteArray one = calendar({"RECURRENCE-ID;TZID=Europe/Berlin:20261119T190000"});
    const QByteArray two = calendar({"RECURRENCE-ID;TZID=Europe/Berlin:20261126T190000"});
    const Result<IcsContents> contents = read(one + two);
    QCOMPARE(ruleOf(contents), QByteArray("read"));
    QCOMPARE(contents->series.size(), 2u);
    QCOMPARE(contents->series[0].uid, QStringLiteral("u1/20261119T190000"));
    QCOMPARE(build::rules(contents->notes), QList<QByteArray>{"ics.single-date"});
    QCOMPARE(ruleOf(read(one + one)), QByteArray("ics.duplicate-uid"));
    QCOMPARE(ruleOf(read(calendar({"RECURRENCE-ID:20261119T190000", "SUMMARY:"}))), QByteArray("ics.no-title"));
    QCOMPARE(ruleOf(read(calendar({"RECURRENCE-ID:20261119T190000", "DURATION:"}))), QByteArray("ics.no-end"));
}

void tst_ics_reading::datesInOtherForms() {
    const Series s = read(calendar({"RRULE:FREQ=WEEKLY;COUNT=4", "EXDATE;VALUE=DATE:20261119", "EXDATE:20261126T180000Z",
                                    "RDATE;VALUE=PERIOD:20261201T180000Z/PT1H,20261202T180000Z/20261202T210000Z"}))
                         ->series[0];
    QCOMPARE(build::texts(startsOf(s, build::days("20260101", "20271231"))->starts),
             (QStringList{"20261112T190000", "20261201T190000", "20261202T190000", "20261203T190000"}));
    QCOMPARE(s.overrides.size(), 1u);  // the second period is as long as the event
    QCOMPARE(*s.overrides[0].duration, hours(1));
}

void tst_ics_reading::whatIsLeftOutIsNoted() {
    QByteArray bytes =
        calendar({"LOCATION:Hall", "LOCATION:Hall 2", "X-LANEWARD-FUTURE:1", "RESOURCES:LANES 1-8,Projector", "SEQUENCE:3"});
    bytes.replace("END:VEVENT", "BEGIN:VALARM\r\nTRIGGER:-PT15M\r\nSUMMARY:x\r\nEND:VALARM\r\nEND:VEVENT");
    bytes.replace("END:VCALENDAR", "BEGIN:VTODO\r\nUID:t\r\nEND:VTODO\r\nEND:VCALENDAR");
    const Result<IcsContents> contents = read(bytes);
    QCOMPARE(ruleOf(contents), QByteArray("read"));
    QCOMPARE(build::rules(contents->notes), (QList<QByteArray>{"ics.unsupported-property", "ics.unsupported-property",
                                                               "ics.other-resource", "ics.skipped-component"}));
    QCOMPARE(contents->series[0].title, QStringLiteral("Thursday Fours"));
}

void tst_ics_reading::longTextsAreCut() {
    const QByteArray bowling = "\xf0\x9f\x8e\xb3";  // two UTF-16 units
    const Result<IcsContents> contents = read(calendar({"SUMMARY:x" + bowling.repeated(120)}));
    QCOMPARE(contents->series[0].title.size(), laneward::limits::nameLength - 1);  // not half a character
    QCOMPARE(build::rules(contents->notes), QList<QByteArray>{"ics.text-cut"});
}

QTEST_GUILESS_MAIN(tst_ics_reading)
#include "tst_ics_reading.moc"
