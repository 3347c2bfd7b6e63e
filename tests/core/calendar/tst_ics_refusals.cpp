#include "tests/support/calendar_builders.h"
#include "tests/support/calendar_text.h"

#include <QTest>

using namespace laneward;
using build::calendar;
using build::read;
using build::ruleOf;

namespace {

void columns() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QByteArray>("rule");
    QTest::addColumn<int>("line");
}

void row(const char* name, const QByteArray& bytes, const char* rule, int line) {
    QTest::newRow(name) << bytes << QByteArray(rule) << line;
}

void expectRefusal() {
    QFETCH(QByteArray, bytes);
    QFETCH(QByteArray, rule);
    QFETCH(int, line);
    const Result<IcsContents> contents = read(bytes);
    QCOMPARE(ruleOf(contents), rule);
    QCOMPARE(contents.error().kind, ErrorKind::Invalid);
    QCOMPARE(contents.error().finding.subject, QStringLiteral("a.ics:%1").arg(line));
}

}  // namespace

class tst_ics_refusals : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void brokenStructure_data();
    void brokenStructure() { expectRefusal(); }
    void brokenTimesAndRules_data();
    void brokenTimesAndRules() { expectRefusal(); }
    void brokenLaneProperties_data();
    void brokenLaneProperties() { expectRefusal(); }
    void refusedAsAWhole();
    void limits();
};

void tst_ics_refusals::brokenStructure_data() {
    columns();
    row("empty", "", "ics.not-calendar", 1);
    row("not a calendar", "Dear all,\r\n", "ics.bad-line", 1);
    row("another format", "BEGIN:VCARD\r\nEND:VCARD\r\n", "ics.not-calendar", 1);
    row("no calendar around", "BEGIN:VEVENT\r\nEND:VEVENT\r\n", "ics.not-calendar", 1);
    row("text before", "X:1\r\n" + calendar(), "ics.not-calendar", 1);
    row("no END", calendar().replace("END:VEVENT\r\nEND:VCALENDAR\r\n", ""), "ics.truncated", 3);
    row("no last END", calendar().replace("END:VCALENDAR\r\n", ""), "ics.truncated", 1);
    row("wrong END", calendar().replace("END:VEVENT", "END:VTODO"), "ics.bad-nesting", 9);
    row("NUL", calendar({QByteArray("SUMMARY:a\0b", 11)}), "ics.control-character", 8);
    row("Latin-1", calendar({"SUMMARY:M\xfcller"}), "ics.not-utf8", 8);
    row("no colon", calendar({"SUMMARY"}), "ics.bad-line", 9);
    row("no name", calendar({":x"}), "ics.bad-line", 9);
    row("bad parameter", calendar({"COMMENT;LANGUAGE:x"}), "ics.bad-line", 9);
    row("open parameter", calendar({"COMMENT;LANGUAGE=\"de:x"}), "ics.bad-line", 9);
    row("strange name", calendar({"COM MENT:x"}), "ics.bad-line", 9);
    row("end before start", calendar({"DURATION:", "DTEND;TZID=Europe/Berlin:20261112T180000"}), "ics.end-before-start", 3);
    row("end at start", calendar({"DURATION:", "DTEND;TZID=Europe/Berlin:20261112T190000"}), "ics.end-before-start", 3);
    row("negative duration", calendar({"DURATION:-PT1H"}), "ics.end-before-start", 3);
    row("no end", calendar({"DURATION:"}), "ics.no-end", 3);
    row("no start", calendar({"DTSTART:"}), "ics.no-start", 3);
    row("no uid", calendar({"UID:"}), "ics.no-uid", 3);
    row("no title", calendar({"SUMMARY:"}), "ics.no-title", 3);
    row("no lanes", calendar({"RESOURCES:"}), "ics.no-lanes", 3);
    row("lane 25", calendar({"RESOURCES:LANES 20-25"}), "ics.lane-unknown", 8);
    row("lane 9999", calendar({"RESOURCES:LANE 9999"}), "ics.lane-unknown", 8);
    row("lane x", calendar({"RESOURCES:LANE x"}), "ics.bad-value", 8);
    row("lane -1", calendar({"RESOURCES:LANES -1"}), "ics.bad-value", 8);
    const QByteArray twice = calendar() + calendar();
    row("same UID twice", twice, "ics.duplicate-uid", 13);
    const QByteArray changed = calendar({"RRULE:FREQ=WEEKLY"}) + calendar({"RECURRENCE-ID:20261112T190000"});
    row("same date twice", changed + calendar({"RECURRENCE-ID:20261112T190000"}), "ics.duplicate-uid", 25);
}

void tst_ics_refusals::brokenTimesAndRules_data() {
    columns();
    row("year 0", calendar({"DTSTART:00000101T000000"}), "ics.bad-value", 8);
    row("year 9999", calendar({"DTSTART:99991231T000000"}), "series.bad-start", 3);
    row("31 February", calendar({"DTSTART:20260231T190000"}), "ics.bad-value", 8);
    row("hour 24", calendar({"DTSTART:20260228T240000"}), "ics.bad-value", 8);
    row("time cut", calendar({"DTSTART:20260228T19"}), "ics.bad-value", 8);
    row("time with colons", calendar({"DTSTART:2026-02-28T19:00:00"}), "ics.bad-value", 8);
    row("time too long", calendar({"DTSTART:20260228T190000ZZ"}), "ics.bad-value", 8);
    row("bad duration", calendar({"DURATION:3 hours"}), "ics.bad-value", 8);
    row("empty duration", calendar({"DURATION:P"}), "ics.bad-value", 8);
    row("endless duration", calendar({"DURATION:P999999999W"}), "series.too-long", 3);
    row("hourly", calendar({"RRULE:FREQ=HOURLY"}), "rule.too-frequent", 3);
    row("bad rule", calendar({"RRULE:FREQ=OFTEN"}), "rule.unreadable", 3);
    row("30 February", calendar({"RRULE:FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30"}), "rule.endless-search", 3);
    row("two rules", calendar({"RRULE:FREQ=DAILY", "RRULE:FREQ=WEEKLY"}), "ics.duplicate-property", 10);
    row("two starts", calendar({"DTSTART:20261112T190000", "DTSTART:20261113T190000"}), "ics.duplicate-property", 9);
    row("exception rule", calendar({"EXRULE:FREQ=WEEKLY"}), "ics.unsupported-rule", 9);
    row("bad EXDATE", calendar({"EXDATE:20261112T190000,x"}), "ics.bad-value", 9);
    row("bad RDATE", calendar({"RDATE:x"}), "ics.bad-value", 9);
    row("bad period", calendar({"RDATE;VALUE=PERIOD:20261112T190000"}), "ics.bad-value", 9);
    row("bad period end", calendar({"RDATE;VALUE=PERIOD:20261112T190000/x"}), "ics.bad-value", 9);
    row("backward period", calendar({"RDATE;VALUE=PERIOD:20261112T190000/20261112T180000"}), "ics.end-before-start", 9);
    row("this and future", calendar({"RECURRENCE-ID;RANGE=THISANDFUTURE:20261112T190000"}), "ics.this-and-future", 9);
}

void tst_ics_refusals::brokenLaneProperties_data() {
    columns();
    row("kind", calendar({"X-LANEWARD-KIND:FEAST"}), "ics.bad-value", 9);
    row("settle", calendar({"X-LANEWARD-SETTLE:15"}), "ics.bad-value", 9);
    row("settle below 0", calendar({"X-LANEWARD-SETTLE:-PT15M"}), "series.setting-time", 3);
    row("clearing", calendar({"X-LANEWARD-CLEARING:x"}), "ics.bad-value", 9);
    row("flag", calendar({"X-LANEWARD-NO-STAFF:maybe"}), "ics.bad-value", 9);
    row("other flag", calendar({"X-LANEWARD-FIRST-PAIR-TWICE:1"}), "ics.bad-value", 9);
    row("third flag",
        calendar({"X-LANEWARD-YIELDS-TO-CLOSURE:"}).replace("END:VEVENT", "X-LANEWARD-YIELDS-TO-CLOSURE:\r\nEND:VEVENT"),
        "ics.bad-value", 9);
    row("players", calendar({"X-LANEWARD-PLAYERS:many"}), "ics.bad-value", 9);
    row("demand", calendar({"X-LANEWARD-DEMAND:oily"}), "ics.bad-value", 9);
    row("demand without surface", calendar({"X-LANEWARD-DEMAND:LANES=1"}), "ics.bad-value", 9);
    row("demand surface", calendar({"X-LANEWARD-DEMAND:SURFACE=OILY"}), "ics.bad-value", 9);
    row("demand treatment", calendar({"X-LANEWARD-DEMAND:SURFACE=FRESH;TREATMENT=WAX"}), "ics.bad-value", 9);
    row("demand pattern", calendar({"X-LANEWARD-DEMAND:SURFACE=FRESH;PATTERN="}), "ics.bad-value", 9);
    row("demand lanes", calendar({"X-LANEWARD-DEMAND:SURFACE=FRESH;LANES=x"}), "ics.bad-value", 9);
    row("demand elsewhere", calendar({"X-LANEWARD-DEMAND:SURFACE=FRESH;LANES=9"}), "series.demand-lanes", 3);
}

void tst_ics_refusals::refusedAsAWhole() {
    const QByteArray good = calendar();
    const QByteArray bad = calendar({"UID:u2", "DTSTART:20260231T190000"});
    QCOMPARE(ruleOf(read(good + bad)), QByteArray("ics.bad-value"));
    QCOMPARE(read(good + calendar({"UID:u2"}))->series.size(), 2u);
}

void tst_ics_refusals::limits() {
    const QByteArray padding(int(laneward::limits::importBytes), 'x');
    const Result<IcsContents> large = read(calendar({"DESCRIPTION:" + padding}));
    QCOMPARE(ruleOf(large), QByteArray("ics.too-large"));
    QCOMPARE(large.error().finding.subject, QStringLiteral("a.ics"));
    QCOMPARE(ruleOf(read(calendar({"DESCRIPTION:" + padding.left(1'000'001)}))), QByteArray("ics.line-too-long"));
    QCOMPARE(ruleOf(read(calendar({"DESCRIPTION:" + QByteArray("x\r\n ").repeated(1'000'001)}))),
             QByteArray("ics.line-too-long"));
    // Deep nesting overflows the stack of libical.
    for (int depth : {9, 2'000, 200'000}) {
        const QByteArray deep = "BEGIN:VCALENDAR\r\n" + QByteArray("BEGIN:X\r\n").repeated(depth) +
                                QByteArray("END:X\r\n").repeated(depth) + "END:VCALENDAR\r\n";
        QCOMPARE(ruleOf(read(deep)), QByteArray("ics.too-deep"));
    }
    const QByteArray seven =
        "BEGIN:VCALENDAR\r\n" + QByteArray("BEGIN:X\r\n").repeated(7) + QByteArray("END:X\r\n").repeated(7) + "END:VCALENDAR\r\n";
    QCOMPARE(ruleOf(read(seven)), QByteArray("read"));
    const QByteArray many = "BEGIN:VCALENDAR\r\n" + QByteArray("BEGIN:X\r\nEND:X\r\n").repeated(100'001) + "END:VCALENDAR\r\n";
    QCOMPARE(ruleOf(read(many)), QByteArray("ics.too-many"));
}

QTEST_GUILESS_MAIN(tst_ics_refusals)
#include "tst_ics_refusals.moc"
