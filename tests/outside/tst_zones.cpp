// Daily events around every change of offset, against the instants of Python's zoneinfo (an independent reader of the tz
// database; tools/zone_table.py). The rules are RFC 5545, section 3.3.5: a time in a gap is read with the offset before it, a
// repeated time is the first.
#include "tests/support/calendar_builders.h"

#include <QProcess>
#include <QTest>

#include <map>

using namespace laneward;

namespace {

struct Row {
    QString local;
    std::int64_t instant = 0;
    QString shown;
};

const QStringList zones{"Europe/Berlin,2020,2037", "Europe/London,2020,2037", "Europe/Dublin,2020,2037",
                        "America/New_York,2020,2037", "America/Denver,2020,2037", "America/St_Johns,2020,2037",
                        "America/Santiago,2020,2037", "Australia/Sydney,2020,2037", "Australia/Lord_Howe,2020,2037",
                        "Pacific/Auckland,2020,2037", "Africa/Casablanca,2020,2037", "Asia/Jerusalem,2020,2037",
                        // Besides the twelve: changes at midnight, and a day that did not exist.
                        "America/Sao_Paulo,2012,2019", "Pacific/Apia,2011,2021"};

}  // namespace

class tst_zones : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void oneEventEachDay_data();
    void oneEventEachDay();
    void skippedDayKeepsItsEvent();

private:
    std::map<QString, std::vector<Row>> m_rows;
};

void tst_zones::initTestCase() {
    QProcess python;
    const QString script = qEnvironmentVariable("LANEWARD_SOURCE") + QStringLiteral("/tests/outside/tools/zone_table.py");
    python.start(QStringLiteral("/usr/bin/python3"), QStringList{script} + zones);
    QVERIFY2(python.waitForFinished(60'000), "python3 is needed: apt-get install python3");
    QVERIFY2(python.exitCode() == 0, python.readAllStandardError().constData());
    for (const QString& line : QString::fromLatin1(python.readAllStandardOutput()).split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const QStringList fields = line.split(QLatin1Char(' '));
        m_rows[fields[0]].push_back({fields[1], fields[2].toLongLong(), fields[3]});
    }
    QCOMPARE(m_rows.size(), size_t(zones.size()));
}

void tst_zones::oneEventEachDay_data() {
    QTest::addColumn<QString>("zone");
    for (const QString& zone : zones)
        QTest::newRow(qPrintable(zone)) << zone.section(QLatin1Char(','), 0, 0);
}

void tst_zones::oneEventEachDay() {
    QFETCH(QString, zone);
    const std::vector<Row>& rows = m_rows[zone];
    const size_t perChange = 4 * 6;  // days and times of day in the table
    QVERIFY2(rows.size() >= 8 * perChange, "too few changes to mean anything");
    int moved = 0;
    int repeated = 0;
    for (const Row& row : rows) {
        Series daily = build::league(QStringLiteral("daily"), QStringLiteral("20100101T") + row.local.mid(9), "FREQ=DAILY");
        daily.zone = zone.toLatin1();
        daily.duration = minutes(20);
        daily.clearing = Seconds{0};
        const QDate date = build::wall(row.local).date;
        const Centre centre = build::centre(24, zone.toLatin1());
        const Occupancy all = occupancyOf({daily}, centre, {date.addDays(-3), date.addDays(3)});
        int found = 0;
        for (const Occurrence& o : all.occurrences) {
            if (o.original != build::wall(row.local)) continue;
            ++found;
            QCOMPARE(o.booked.begin.seconds, row.instant);
            QCOMPARE(build::text(Zone::load(zone.toLatin1())->toLocal(o.booked.begin)), row.shown);
            const Result<Zone> z = Zone::load(zone.toLatin1());
            if (z->toLocal({row.instant + 3'600}) == o.original || z->toLocal({row.instant + 1'800}) == o.original) ++repeated;
        }
        // On the day that did not exist the event shares the next day's.
        const bool skippedDay = zone == QLatin1String("Pacific/Apia") && date == QDate(2011, 12, 31);
        QCOMPARE(found, skippedDay ? 0 : 1);
        moved += row.shown != row.local;
    }
    qInfo("%s: %zu wall times around %zu changes, %d moved out of a gap, %d repeated", qPrintable(zone), rows.size(),
          rows.size() / perChange, moved, repeated);
}

void tst_zones::skippedDayKeepsItsEvent() {
    // Samoa had no 30 December 2011. A weekly event on that Friday is held when the clocks first show its time again.
    Series weekly = build::league(QStringLiteral("friday"), QStringLiteral("20111202T190000"), "FREQ=WEEKLY");
    weekly.zone = "Pacific/Apia";
    const Occupancy all = occupancyOf({weekly}, build::centre(24, "Pacific/Apia"), {QDate(2011, 12, 28), QDate(2012, 1, 3)});
    QCOMPARE(all.occurrences.size(), 1u);
    QCOMPARE(build::text(Zone::load("Pacific/Apia")->toLocal(all.occurrences[0].booked.begin)),
             QStringLiteral("20111231T190000"));
    QCOMPARE(all.conflicts.size(), 0u);
}

QTEST_GUILESS_MAIN(tst_zones)
#include "tst_zones.moc"
