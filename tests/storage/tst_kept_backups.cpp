// Which of the backups that are made by themselves stay: the newest of each of ten days and eight weeks.
#include "core/storage/kept_backups.h"

#include "tests/support/temporary_centre.h"

#include <QDateTime>
#include <QDir>
#include <QTest>

#include <map>
#include <random>
#include <set>

using namespace laneward;

namespace {

Instant utc(int year, int month, int day, int hour = 12) {
    return {QDateTime(QDate(year, month, day), QTime(hour, 0), Qt::UTC).toSecsSinceEpoch()};
}

std::set<std::int64_t> stay(const std::vector<KeptBackup>& all) {
    std::set<std::int64_t> left;
    for (const KeptBackup& backup : all)
        left.insert(backup.made.seconds);
    for (const KeptBackup& old : overtaken(all))
        left.erase(old.made.seconds);
    return left;
}

std::vector<KeptBackup> madeAt(std::vector<Instant> times) {
    std::sort(times.begin(), times.end(), std::greater<>());
    std::vector<KeptBackup> backups;
    for (const Instant t : times)
        backups.push_back({QString::number(t.seconds), t});
    return backups;
}

}  // namespace

class TestKeptBackups : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aYearOfDays() {
        std::vector<Instant> times;
        for (int day = 0; day < 365; ++day)
            times.push_back(utc(2026, 1, 1) + hours(24) * day);
        const std::set<std::int64_t> left = stay(madeAt(times));
        // 31 December 2026 is a Thursday: ten days back to the 22nd, and the Sundays before that week's and the next one's, back
        // to eight weeks: 28 December's week and 21 December's are among the days.
        std::set<std::int64_t> expected;
        for (int day = 22; day <= 31; ++day)
            expected.insert(utc(2026, 12, day).seconds);
        for (const auto& [month, day] : {std::pair{12, 20}, {12, 13}, {12, 6}, {11, 29}, {11, 22}, {11, 15}})
            expected.insert(utc(2026, month, day).seconds);
        QCOMPARE(left, expected);
    }

    void onlyTheNewestOfADay() {
        const std::set<std::int64_t> left = stay(madeAt({utc(2026, 5, 4, 8), utc(2026, 5, 4, 20), utc(2026, 5, 5, 7)}));
        QCOMPARE(left, (std::set<std::int64_t>{utc(2026, 5, 4, 20).seconds, utc(2026, 5, 5, 7).seconds}));
    }

    /// A house that is closed for the summer keeps what it has.
    void daysThatHaveNoneDoNotCount() {
        std::vector<Instant> times;
        for (int week = 0; week < 9; ++week)
            times.push_back(utc(2026, 1, 5) + hours(24 * 30) * week);
        QVERIFY(overtaken(madeAt(times)).empty());
    }

    /// As groups by day and by week say.
    void randomTimes() {
        std::mt19937 generator(20261126);
        for (int round = 0; round < 300; ++round) {
            std::set<std::int64_t> seconds;
            const int count = int(generator() % 60);
            for (int n = 0; n < count; ++n)
                seconds.insert(utc(2026, 1, 1).seconds + std::int64_t(generator() % (120 * 86'400)));
            std::map<QDate, std::int64_t, std::greater<>> days;
            std::map<std::pair<int, int>, std::int64_t, std::greater<>> weeks;  // year and number by ISO 8601, as Qt counts them
            std::vector<Instant> times;
            for (const std::int64_t s : seconds) {
                times.push_back({s});
                const QDate day = QDateTime::fromSecsSinceEpoch(s, Qt::UTC).date();
                days[day] = s;
                int year = 0;
                const int week = day.weekNumber(&year);
                weeks[{year, week}] = s;
            }
            std::set<std::int64_t> expected;
            int n = 0;
            for (const auto& [day, s] : days)
                if (n++ < dailyBackups) expected.insert(s);
            n = 0;
            for (const auto& [week, s] : weeks)
                if (n++ < weeklyBackups) expected.insert(s);
            QCOMPARE(stay(madeAt(times)), expected);
        }
    }

    void onlyOurOwnFilesAreBackups() {
        support::TemporaryCentre centre;
        QTemporaryDir folder;
        const Result<QString> first = centre.store().backup(folder.path(), utc(2026, 5, 4));
        const Result<QString> second = centre.store().backup(folder.path(), utc(2026, 5, 5));
        const Result<QString> again = centre.store().backup(folder.path(), utc(2026, 5, 5));
        QVERIFY(first && second && again);
        for (const char* other :
             {"notes.txt", "centre.laneward", "Quill-20260504-120000Z.laneward.partial", "x-20269999-000000Z.laneward"})
            support::writeBytes(folder.filePath(other), "x");
        const std::vector<KeptBackup> found = backupsIn(folder.path());
        QCOMPARE(found.size(), size_t(3));
        QVERIFY(found[0].made == utc(2026, 5, 5) && found[1].made == utc(2026, 5, 5) && found[2].made == utc(2026, 5, 4));
        QCOMPARE(found[2].path, *first);
        QVERIFY(backupsIn(folder.filePath("nowhere")).empty());
    }
};

QTEST_GUILESS_MAIN(TestKeptBackups)
#include "tst_kept_backups.moc"
