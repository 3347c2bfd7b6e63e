#include "tests/support/calendar_builders.h"
#include "tests/support/random_calendars.h"

#include "core/calendar/icalendar.h"
#include "core/calendar/recurrence.h"

#include <QTest>

using namespace laneward;

namespace {

constexpr Instant stamp{1'794'506'400};  // 2026-11-12T18:00:00Z

Result<IcsContents> read(const QByteArray& bytes) { return readIcs(bytes, QStringLiteral("a.ics"), {}, "Europe/Berlin", 24); }

}  // namespace

class tst_ics_writing : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void randomSeriesComeBack();
    void untilBecomesUtc_data();
    void untilBecomesUtc();
    void linesAreWellFormed();
    void zonesAreDescribed();
    void entriesForPhones();
    void theSameBytesAgain();
};

void tst_ics_writing::randomSeriesComeBack() {
    build::RandomCalendars random(4'711);
    std::vector<Series> all;
    for (int i = 0; i < 1'000; ++i) {
        all.push_back(random.next());
        const std::vector<Finding> faults = faultsOf(all.back(), 24);
        QVERIFY2(faults.empty(), faults.empty() ? "" : faults[0].rule.constData());
    }
    const Result<IcsContents> contents = read(writeIcs(all, stamp));
    QVERIFY2(contents,
             contents ? "" : qPrintable(contents.error().finding.subject + QString::fromLatin1(contents.error().finding.rule)));
    QCOMPARE(contents->series.size(), all.size());
    for (size_t i = 0; i < all.size(); ++i)
        QVERIFY2(contents->series[i] == all[i], qPrintable(QStringLiteral("series %1: %2").arg(i).arg(all[i].title)));
    QVERIFY(contents->notes.empty());
}

void tst_ics_writing::untilBecomesUtc_data() {
    QTest::addColumn<QString>("rule");
    QTest::addColumn<QString>("written");
    QTest::newRow("date") << "FREQ=WEEKLY;UNTIL=20270325"
                          << "FREQ=WEEKLY;UNTIL=20270325T225959Z";
    QTest::newRow("wall time") << "FREQ=WEEKLY;UNTIL=20270701T190000;BYDAY=TH"
                               << "FREQ=WEEKLY;UNTIL=20270701T170000Z;BYDAY=TH";
    QTest::newRow("UTC") << "FREQ=WEEKLY;UNTIL=20270701T170000Z"
                         << "FREQ=WEEKLY;UNTIL=20270701T170000Z";
    QTest::newRow("none") << "FREQ=WEEKLY;COUNT=3"
                          << "FREQ=WEEKLY;COUNT=3";
}

void tst_ics_writing::untilBecomesUtc() {
    // RFC 5545, 3.3.10: with DTSTART in a zone, UNTIL must be in UTC. The dates stay the same.
    QFETCH(QString, rule);
    QFETCH(QString, written);
    const Series s = build::league("a", "20261112T190000", rule);
    const Series back = read(writeIcs({s}, stamp))->series[0];
    QCOMPARE(back.rule, written);
    QVERIFY(startsOf(back, build::days("20260101", "20281231"))->starts ==
            startsOf(s, build::days("20260101", "20281231"))->starts);
}

void tst_ics_writing::linesAreWellFormed() {
    build::RandomCalendars random(12);
    std::vector<Series> all;
    for (int i = 0; i < 50; ++i)
        all.push_back(random.next());
    const QByteArray bytes = writeIcs(all, stamp);
    QVERIFY(bytes.endsWith("END:VCALENDAR\r\n"));
    const QByteArrayList lines = bytes.chopped(2).split('\n');
    for (const QByteArray& line : lines) {
        QVERIFY(line.endsWith('\r') || line == lines.back());
        QVERIFY(line.size() <= 76);  // 75 octets and the CR
    }
    QCOMPARE(bytes.count("\r\nBEGIN:VEVENT"), bytes.count("\r\nDTSTAMP:20261112T180000Z"));
}

void tst_ics_writing::zonesAreDescribed() {
    Series berlin = build::league("a", "20261112T190000", "FREQ=WEEKLY");
    Series utc = build::league("b", "20261112T190000");
    utc.zone = "UTC";
    Series lost = build::league("c", "20261112T190000");
    lost.zone = "Mars/Phobos";
    Series fixed = build::league("d", "20261112T190000");
    fixed.zone = "Etc/GMT+5";
    const QByteArray bytes = unfolded(writeIcs({berlin, utc, lost, fixed}, stamp));
    QCOMPARE(bytes.count("BEGIN:VTIMEZONE"), 2);
    QVERIFY(bytes.contains("TZID:Europe/Berlin\r\n"));
    // 25 October 2026, 03:00 summer time, and 28 March 2027, 02:00 winter time, are onsets in the time before the change.
    const QByteArray winter = bytes.mid(bytes.indexOf("BEGIN:STANDARD\r\nDTSTART:20251026T030000"));
    QVERIFY(winter.left(400).contains("20261025T030000"));
    QVERIFY(winter.contains("TZOFFSETFROM:+0200\r\nTZOFFSETTO:+0100\r\nTZNAME:CET\r\nEND:STANDARD"));
    const QByteArray summer = bytes.mid(bytes.indexOf("BEGIN:DAYLIGHT"));
    QVERIFY(summer.contains("20270328T020000"));
    QVERIFY(summer.contains("TZOFFSETFROM:+0100\r\nTZOFFSETTO:+0200\r\nTZNAME:CEST"));
    QVERIFY(bytes.contains("TZOFFSETFROM:-0500\r\nTZOFFSETTO:-0500"));
    QVERIFY(bytes.contains("UID:b\r\nDTSTAMP:20261112T180000Z\r\nDTSTART:20261112T190000Z\r\n"));
    QVERIFY(bytes.contains("DTSTART;TZID=Mars/Phobos:20261112T190000"));
}

void tst_ics_writing::entriesForPhones() {
    IcsEntry job;
    job.uid = QStringLiteral("job-1");
    job.summary = QStringLiteral("Lanes 1-8; house");
    job.description = QStringLiteral("Start by 17:17\nReady at 17:41");
    job.time = {build::instant("Europe/Berlin", "20261112T171700"), build::instant("Europe/Berlin", "20261112T174100")};
    job.lanes = LaneSet{1, 2, 3, 7};
    IcsEntry bare = job;
    bare.uid = QStringLiteral("job-2");
    bare.description.clear();
    bare.lanes = {};
    const QByteArray bytes = unfolded(writeIcs(QStringLiteral("Quillmarsh Bowl"), {job, bare}, stamp));
    QVERIFY(bytes.contains("\r\nNAME:Quillmarsh Bowl\r\n"));
    QVERIFY(bytes.contains("DTSTART:20261112T161700Z\r\nDTEND:20261112T164100Z\r\nSUMMARY:Lanes 1-8\\; house\r\n"));
    QVERIFY(bytes.contains("DESCRIPTION:Start by 17:17\\nReady at 17:41\r\nRESOURCES:LANES 1-3,LANE 7\r\nEND:VEVENT"));
    QCOMPARE(bytes.count("DESCRIPTION"), 1);
    QCOMPARE(bytes.count("BEGIN:VEVENT"), 2);
}

void tst_ics_writing::theSameBytesAgain() {
    build::RandomCalendars random(99);
    std::vector<Series> all;
    for (int i = 0; i < 30; ++i)
        all.push_back(random.next());
    const QByteArray bytes = writeIcs(all, stamp);
    QCOMPARE(writeIcs(read(bytes)->series, stamp), bytes);
    Series made = all[0];
    made.uid.clear();
    QCOMPARE(read(writeIcs({made}, stamp))->series[0].uid, made.id.value);
}

QTEST_GUILESS_MAIN(tst_ics_writing)
#include "tst_ics_writing.moc"
