// Wall time to instants. The instants were read with date(1) of GNU coreutils and agree with RFC 5545, section 3.3.5.
#include "core/base/zone.h"

#include <QTest>

using namespace laneward;

class TestZone : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsWallTime_data();
    void readsWallTime();
    void gapTimeIsShownAfterTheGap();
    void goesThereAndBack();
    void stripsVendorPrefix();
    void refusesUnknownZone();
    void keepsSecondsAcrossMidnight();
    void utcHasNoOffset();
};

void TestZone::readsWallTime_data() {
    QTest::addColumn<QByteArray>("zone");
    QTest::addColumn<QDateTime>("local");
    QTest::addColumn<QString>("utc");
    const auto at = [](int y, int m, int d, int h, int min) { return QDateTime(QDate(y, m, d), QTime(h, min), Qt::UTC); };
    QTest::newRow("RFC 5545 fold: first of two")
        << QByteArray("America/New_York") << at(2007, 11, 4, 1, 30) << "2007-11-04T05:30:00Z";
    QTest::newRow("RFC 5545 gap: offset before")
        << QByteArray("America/New_York") << at(2007, 3, 11, 2, 30) << "2007-03-11T07:30:00Z";
    QTest::newRow("RFC 5545 winter") << QByteArray("America/New_York") << at(1998, 1, 19, 2, 0) << "1998-01-19T07:00:00Z";
    QTest::newRow("RFC 5545 summer") << QByteArray("America/New_York") << at(1997, 7, 14, 13, 30) << "1997-07-14T17:30:00Z";
    QTest::newRow("half hour DST") << QByteArray("Australia/Lord_Howe") << at(2026, 10, 4, 2, 15) << "2026-10-03T15:45:00Z";
    QTest::newRow("Berlin gap") << QByteArray("Europe/Berlin") << at(2026, 3, 29, 2, 30) << "2026-03-29T01:30:00Z";
    QTest::newRow("Berlin fold") << QByteArray("Europe/Berlin") << at(2026, 10, 25, 2, 30) << "2026-10-25T00:30:00Z";
    QTest::newRow("skipped day") << QByteArray("Pacific/Apia") << at(2011, 12, 30, 12, 0) << "2011-12-30T22:00:00Z";
    QTest::newRow("before the table") << QByteArray("Europe/Berlin") << at(1969, 7, 1, 12, 0) << "1969-07-01T11:00:00Z";
}

void TestZone::readsWallTime() {
    QFETCH(QByteArray, zone);
    QFETCH(QDateTime, local);
    QFETCH(QString, utc);
    const Instant t = Zone::load(zone)->toInstant({local.date(), local.time()});
    QCOMPARE(QDateTime::fromSecsSinceEpoch(t.seconds, Qt::UTC).toString(Qt::ISODate), utc);
}

void TestZone::gapTimeIsShownAfterTheGap() {
    const Zone zone = *Zone::load("Europe/Berlin");
    const LocalTime shown = zone.toLocal(zone.toInstant({QDate(2026, 3, 29), QTime(2, 30)}));
    QCOMPARE(shown.time, QTime(3, 30));
    QCOMPARE(shown.date, QDate(2026, 3, 29));
}

void TestZone::goesThereAndBack() {
    const Zone zone = *Zone::load("America/Sao_Paulo");
    for (std::int64_t s = 1'500'000'000; s < 1'560'000'000; s += 86'399) {
        const LocalTime local = zone.toLocal({s});
        const Instant back = zone.toInstant(local);
        // In a fold the first of two is taken: then the same wall time an hour earlier.
        QVERIFY(back.seconds == s || (back.seconds == s - 3600 && zone.toLocal(back) == local));
    }
}

void TestZone::stripsVendorPrefix() {
    QCOMPARE(Zone::load("/some.vendor/20260101_1/Europe/Berlin")->id(), QByteArray("Europe/Berlin"));
}

void TestZone::refusesUnknownZone() {
    const Result<Zone> zone = Zone::load("Mars/Olympus");
    QVERIFY(!zone);
    QCOMPARE(zone.error().finding.rule, QByteArray("zone.unknown"));
    QVERIFY(!Zone::load(""));
}

void TestZone::keepsSecondsAcrossMidnight() {
    const LocalTime t = shifted({QDate(2024, 2, 28), QTime(23, 59, 30)}, Seconds{40});
    QCOMPARE(t.date, QDate(2024, 2, 29));
    QCOMPARE(t.time, QTime(0, 0, 10));
    QCOMPARE(shifted(t, Seconds{-40}).date, QDate(2024, 2, 28));
    QVERIFY(shifted(t, Seconds{-1}) < t);
}

void TestZone::utcHasNoOffset() {
    QCOMPARE(Zone().offsetAt({0}).value, 0);
    QCOMPARE(Zone().toInstant({QDate(1970, 1, 2), QTime(0, 0, 1)}).seconds, 86'401);
}

QTEST_GUILESS_MAIN(TestZone)
#include "tst_zone.moc"
