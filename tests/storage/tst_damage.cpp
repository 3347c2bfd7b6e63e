// Damaged files: cut short and with flipped bits. Nothing may crash, and what is refused stays as it was.
#include "tests/support/temporary_centre.h"

#include "core/storage/centre_file.h"
#include "core/storage/database.h"

#include <QDir>
#include <QRandomGenerator>
#include <QTest>

#include <algorithm>

using namespace laneward;
using namespace support;

namespace {

constexpr quint32 seed = 20'261'112;
constexpr qsizetype page = 4'096;

}  // namespace

class TestDamage : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void cutAtPageBorders();
    void cutAnywhere();
    void flippedBits();
    void everyByteOfTheHeader();
    void examinedMeanwhile();
    void damagedRowsAreNamed();

private:
    /// True when the file was refused; else it passed the check at open and is used without a crash.
    bool refused(const QByteArray& bytes);

    QByteArray m_sound;
    QTemporaryDir m_directory;
};

void TestDamage::initTestCase() {
    TemporaryCentre centre;
    for (int n = 0; n < 60; ++n) {
        HandOver note{
            operation(1'000 + n), QDate(2026, 11, 12), fullSeasonNow, PersonId{"ada"}, QString(4'000, QChar('a' + n % 26)), {}};
        if (!centre.store().append({note})) qFatal("not appended");
    }
    centre.close();
    m_sound = bytesOf(centre.path());
    QVERIFY(m_sound.size() > 64 * page);
    QVERIFY(!refused(m_sound));
}

bool TestDamage::refused(const QByteArray& bytes) {
    Location location;
    location.path = m_directory.filePath("club.laneward");
    writeBytes(location.path, bytes);
    bool isRefused = false;
    {
        const Result<std::unique_ptr<Store>> store = Store::open(location, Access::ReadWrite);
        isRefused = !store;
        if (store) {
            if ((*store)->database().value("PRAGMA quick_check(1)")->toString() != "ok")
                qFatal("used although quick_check fails");
            (void)(*store)->load(fullSeasonNow);
            (void)(*store)->check();
            (void)exported(**store);
        } else {
            const QByteArray rule = store.error().finding.rule;
            if (rule != "store.damaged" && rule != "store.not-a-database" && rule != "store.newer-schema")
                qFatal("unexpected %s", rule.constData());
        }
    }
    if (isRefused && bytesOf(location.path) != bytes) qFatal("a refused file was changed");
    for (const QString& left : QDir(m_directory.path()).entryList(QDir::Files)) {
        if (isRefused && left != "club.laneward") qFatal("left behind: %s", qPrintable(left));
        QFile::remove(m_directory.filePath(left));
    }
    return isRefused;
}

void TestDamage::cutAtPageBorders() {
    for (qsizetype pages = 0; pages <= 64; ++pages)
        QVERIFY2(refused(m_sound.left(pages * page)), qPrintable(QString::number(pages)));
}

void TestDamage::cutAnywhere() {
    QRandomGenerator random(seed);
    for (int i = 0; i < 100; ++i) {
        const qsizetype length = random.bounded(int(m_sound.size() - 1)) + 1;
        QVERIFY2(refused(m_sound.left(length)), qPrintable(QString::number(length)));
    }
}

void TestDamage::flippedBits() {
    QRandomGenerator random(seed);
    int stopped = 0;
    constexpr int files = 300;
    for (int i = 0; i < files; ++i) {
        QByteArray bytes = m_sound;
        for (int flips = std::array{1, 8, 64}[size_t(i % 3)]; flips > 0; --flips) {
            const qsizetype where = random.bounded(int(bytes.size()));
            bytes[where] = char(bytes[where] ^ (1 << random.bounded(8)));
        }
        stopped += refused(bytes);
    }
    qInfo("seed %u: %d of %d files with flipped bits refused", seed, stopped, files);
    QVERIFY(stopped > 0);
}

void TestDamage::everyByteOfTheHeader() {
    int stopped = 0;
    for (qsizetype i = 0; i < 100; ++i) {
        QByteArray bytes = m_sound;
        bytes[i] = char(~bytes[i]);
        stopped += refused(bytes);
    }
    QVERIFY(stopped > 30);
}

/// Opened at once and examined beside: what fails quick_check is never written to.
void TestDamage::examinedMeanwhile() {
    QRandomGenerator random(seed);
    Location location;
    location.path = m_directory.filePath("club.laneward");
    const HandOver note{operation(2'000), QDate(2026, 11, 12), fullSeasonNow, PersonId{"ada"}, "Lane 3 sounds rough.", {}};
    int opened = 0;
    int stopped = 0;
    int written = 0;
    for (int i = 0; i < 100; ++i) {
        QByteArray bytes = m_sound;
        for (int flips = i == 0 ? 0 : std::array{1, 8, 64}[size_t(i % 3)]; flips > 0; --flips) {
            const qsizetype where = i < 20 ? 18 + i % 2 : random.bounded(int(bytes.size()));  // 18, 19: the file's way of writing
            bytes[where] = char(bytes[where] ^ (1 << random.bounded(8)));
        }
        writeBytes(location.path, bytes);
        bool wasSound = false;
        if (const Result<std::unique_ptr<Store>> store = Store::open(location, Access::ReadWrite, Examination::Meanwhile)) {
            ++opened;
            wasSound = (*store)->database().value("PRAGMA quick_check(1)")->toString() == "ok";
            const Outcome done = (*store)->append({note});
            QVERIFY(wasSound || !done);
            QCOMPARE((*store)->damage().has_value(), !wasSound);
            if (!wasSound) QCOMPARE((*store)->damage()->finding.rule, QByteArray("store.damaged"));
            stopped += !wasSound;
            written += bool(done);
        }
        if (!wasSound) QVERIFY(bytesOf(location.path) == bytes);
        for (const QString& left : QDir(m_directory.path()).entryList(QDir::Files))
            QFile::remove(m_directory.filePath(left));
    }
    qInfo("seed %u: of 100 files %d opened at once, %d stopped before the first write, %d written", seed, opened, stopped,
          written);
    QVERIFY(stopped > 0 && written > 0);
}

void TestDamage::damagedRowsAreNamed() {
    const std::vector<std::pair<const char*, QByteArray>> damages{
        {"UPDATE people SET role = 'emperor'", "store.damaged"},
        {"UPDATE people SET active = 7", "store.damaged"},
        {"UPDATE shifts SET begins = '25:00:00'", "store.damaged"},
        {"UPDATE shifts SET days_off = '[1'", "store.damaged"},
        {"UPDATE series SET lanes = '900'", "store.damaged"},
        {"UPDATE machines SET times = '{}'", "store.damaged"},
        {"UPDATE centres SET lanes = 'many'", "store.damaged"},
        {"UPDATE series SET demands = replace(demands, 'house', 'gone')", "check.unknown-pattern"},
        {"UPDATE machines SET bars = replace(bars, 'short', 'gone')", "check.unknown-pattern"},
        {"UPDATE series SET version = 99", "check.version-ahead"},
        {"INSERT INTO centres SELECT 'b', 'b', name, zone, lanes, settings, version, reading_limits FROM centres",
         "check.centres"},
        {"UPDATE patterns SET edition = 7", "check.pattern-without-version"},
        {"UPDATE centres SET reading_limits = '{}'", "store.damaged"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE runs SET pattern_version = 9 WHERE pattern IS NOT NULL",
         "check.unknown-pattern-version"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE tape_readings SET pattern_version = 9", "check.unknown-pattern-version"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE tape_readings SET lane = 9", "reading.lane"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE tape_readings SET milli_units = '[1]'", "store.damaged"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE tape_readings SET distance_um = -1", "reading.distance"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE inspections SET lane = 0", "inspection.lane"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE inspections SET geometry = replace(geometry, 'tilt', 'lean')",
         "store.damaged"},
        {"PRAGMA foreign_keys = OFF; INSERT INTO replacing VALUES ('full'); DELETE FROM inspections",
         "check.operation-without-record"},
        {"PRAGMA foreign_keys = OFF; INSERT INTO replacing VALUES ('full'); DELETE FROM operations WHERE kind = 'tape_readings'",
         "check.record-without-operation"},
        {"INSERT INTO replacing VALUES ('full'); UPDATE incidents SET answers = 'gone' WHERE answers IS NOT NULL",
         "check.unknown-answered"},
        {"UPDATE centres SET lanes = 4", "check.unknown-lane"},
        {"PRAGMA foreign_keys = OFF; DELETE FROM patterns", "check.reference"},
        {"PRAGMA foreign_keys = OFF; INSERT INTO replacing VALUES ('full'); DELETE FROM incidents",
         "check.operation-without-record"},
        {"PRAGMA foreign_keys = OFF; INSERT INTO replacing VALUES ('full'); DELETE FROM operations",
         "check.record-without-operation"},
        {"PRAGMA foreign_keys = OFF; INSERT INTO replacing VALUES ('full'); DELETE FROM runs", "check.lane-without-run"},
    };
    for (const auto& [sql, rule] : damages) {
        TemporaryCentre centre;
        for (const QString& statement : QString(sql).split(';'))
            QVERIFY2(centre.store().database().change(statement), sql);
        const Result<std::vector<Finding>> findings = centre.store().check();
        QVERIFY2(findings, sql);
        const auto isThat = [rule = rule](const Finding& f) { return f.rule == rule; };
        QVERIFY2(std::any_of(findings->begin(), findings->end(), isThat), sql);
    }
}

QTEST_GUILESS_MAIN(TestDamage)
#include "tst_damage.moc"
