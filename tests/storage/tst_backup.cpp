// Backups that have been opened, and restores that keep what they replace.
#include "tests/support/two_databases.h"

#include "core/storage/centre_file.h"
#include "core/storage/database.h"
#include "core/storage/operations.h"

#include <QDir>
#include <QFileInfo>
#include <QTest>

#include <sys/stat.h>

using namespace laneward;
using namespace support;

namespace {

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

Location at(const QString& path) {
    Location location;
    location.path = path;
    return location;
}

void rename(Store& store, const QString& name, int n) {
    const Person before = store.load(fullSeasonNow)->centre.people.front();
    Person after = before;
    after.name = name;
    if (!store.apply({operation(30'000 + n), {}, fullSeasonNow, "Rename", {RowChange<Person>{before, after}}}))
        qFatal("not renamed");
}

QString nameIn(Store& store) { return store.load(fullSeasonNow)->centre.people.front().name; }

}  // namespace

class TestBackup : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_databases = std::make_unique<TwoDatabases>(); }
    void cleanupTestCase() { m_databases.reset(); }
    void aBackupHoldsEverything_data() { TwoDatabases::rows(); }
    void aBackupHoldsEverything();
    void namesStayInTheFolder_data() { TwoDatabases::rows(); }
    void namesStayInTheFolder();
    void nothingIsLeftOfAFailedBackup_data() { TwoDatabases::rows(); }
    void nothingIsLeftOfAFailedBackup();
    void readOnlyStoresAreBackedUp_data() { TwoDatabases::rows(); }
    void readOnlyStoresAreBackedUp();
    void restoreKeepsTheReplacedFile();
    void restoreThroughALink();
    void restoreWhereNothingWas();
    void restoreInPlaceOfADamagedFile();
    void badBackupsRestoreNothing();
    void restoreRefusesAFileInUse();
    void serversTakeCentreFiles();

private:
    std::unique_ptr<TwoDatabases> m_databases;
};

void TestBackup::aBackupHoldsEverything() {
    QFETCH(bool, postgres);
    const std::unique_ptr<Store> store = m_databases->fresh();
    fill(*store);
    rename(*store, "Only in the journal", 1);
    QTemporaryDir directory;
    const Result<QString> path = store->backup(directory.path(), fullSeasonNow);
    QVERIFY2(path, ruleOf(path).constData());
    QCOMPARE(QFileInfo(*path).fileName(), QString("Quillmarsh-Bowl-20261112-160000Z.") + (postgres ? "json" : "laneward"));
    struct stat found {};
    QVERIFY(::stat(qPrintable(*path), &found) == 0);
    QCOMPARE(found.st_mode & 0777, mode_t{0600});
    const Result<CentreFile> original = exported(*store);
    QVERIFY(original);
    if (postgres) {
        QFile file(*path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const Result<CentreFile> copy = readCentreFile(file, "copy");
        QVERIFY(copy);
        QVERIFY(copy->season == withoutVersions(original->season) && copy->history == withoutVersions(original->history));
    } else {
        QVERIFY(*exported(*opened(at(*path), Access::ReadOnly)) == *original);
    }
    const Result<QString> second = store->backup(directory.path(), fullSeasonNow);
    QVERIFY(second);
    QVERIFY(*second != *path);
    QCOMPARE(QDir(directory.path()).entryList(QDir::Files).size(), 2);
}

void TestBackup::namesStayInTheFolder() {
    const std::unique_ptr<Store> store = m_databases->fresh();
    QTemporaryDir outer;
    QDir(outer.path()).mkdir("inner");
    int n = 0;
    for (const char* name : {"../../x", "/etc/passwd", "a/b\\c:d", "CON", "..", " ", "\u202ename", "\U0001F3B3"}) {
        SeasonState season = fullSeason();
        season.centre.facts.name = QString::fromUtf8(name);
        QVERIFY(store->replaceAll(season, {}, {}, fullSeasonNow));
        QVERIFY(store->backup(outer.filePath("inner"), fullSeasonNow + Seconds{n++}));
    }
    QCOMPARE(QDir(outer.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot), QStringList{"inner"});
    QCOMPARE(QDir(outer.filePath("inner")).entryList(QDir::Files | QDir::Hidden).size(), n);
}

void TestBackup::nothingIsLeftOfAFailedBackup() {
    const std::unique_ptr<Store> store = m_databases->fresh();
    QTemporaryDir directory;
    QCOMPARE(ruleOf(store->backup(directory.filePath("none"), fullSeasonNow)), QByteArray("file.no-directory"));
    QVERIFY(!store->backup(directory.path(), fullSeasonNow));  // no centre yet
    QVERIFY(QDir(directory.path()).isEmpty());
    fill(*store);
    QVERIFY(store->database().change("UPDATE people SET role = 'emperor'"));
    QCOMPARE(ruleOf(store->backup(directory.path(), fullSeasonNow)), QByteArray("store.damaged"));
    QVERIFY(QDir(directory.path()).isEmpty());
}

void TestBackup::readOnlyStoresAreBackedUp() {
    const std::unique_ptr<Store> store = m_databases->fresh();
    fill(*store);
    QTemporaryDir directory;
    const std::unique_ptr<Store> reader = opened(store->location(), Access::ReadOnly);
    const Result<QString> path = reader->backup(directory.path(), fullSeasonNow);
    QVERIFY2(path, ruleOf(path).constData());
}

void TestBackup::restoreKeepsTheReplacedFile() {
    TemporaryCentre centre;
    QTemporaryDir directory;
    const Result<QString> backup = centre.store().backup(directory.path(), fullSeasonNow);
    QVERIFY(backup);
    rename(centre.store(), "Later", 1);
    centre.close();
    const Outcome restored = restore(*backup, centre.location(), fullSeasonNow + hours(1));
    QVERIFY2(restored, ruleOf(restored).constData());
    QCOMPARE(nameIn(*centre.another()), QString("Ada"));
    QCOMPARE(nameIn(*opened(at(centre.directory() + "/club-replaced-20261112-170000Z.laneward"), Access::ReadOnly)),
             QString("Later"));
    QCOMPARE(QDir(centre.directory()).entryList(QDir::Files).size(), 2);
    struct stat found {};
    QVERIFY(::stat(qPrintable(centre.path()), &found) == 0);
    QCOMPARE(found.st_mode & 0777, mode_t{0600});
    QVERIFY(centre.another()->check()->empty());
}

void TestBackup::restoreThroughALink() {
    TemporaryCentre centre;
    QTemporaryDir directory;
    const Result<QString> backup = centre.store().backup(directory.path(), fullSeasonNow);
    rename(centre.store(), "Later", 1);
    centre.close();
    const QString link = directory.filePath("link");
    QVERIFY(QFile::link(centre.path(), link));
    QVERIFY(restore(*backup, at(link), fullSeasonNow));
    QVERIFY(QFileInfo(link).isSymLink());
    QCOMPARE(nameIn(*centre.another()), QString("Ada"));
}

void TestBackup::restoreWhereNothingWas() {
    TemporaryCentre centre;
    QTemporaryDir directory;
    const Result<QString> backup = centre.store().backup(directory.path(), fullSeasonNow);
    QVERIFY(restore(*backup, at(directory.filePath("new.laneward")), fullSeasonNow));
    QCOMPARE(nameIn(*opened(at(directory.filePath("new.laneward")), Access::ReadWrite)), QString("Ada"));
    QCOMPARE(QDir(directory.path()).entryList(QDir::Files).size(), 2);
}

void TestBackup::restoreInPlaceOfADamagedFile() {
    TemporaryCentre centre;
    QTemporaryDir directory;
    const Result<QString> backup = centre.store().backup(directory.path(), fullSeasonNow);
    centre.close();
    const QByteArray damaged = bytesOf(centre.path()).left(20'000);
    writeBytes(centre.path(), damaged);
    writeBytes(centre.path() + "-wal", "journal of the damaged file");
    QCOMPARE(ruleOf(Store::open(centre.location(), Access::ReadWrite)), QByteArray("store.damaged"));
    const Outcome restored = restore(*backup, centre.location(), fullSeasonNow);
    QVERIFY2(restored, ruleOf(restored).constData());
    QCOMPARE(nameIn(*centre.another()), QString("Ada"));
    const QString kept = centre.directory() + "/club-replaced-20261112-160000Z.laneward";
    QCOMPARE(bytesOf(kept), damaged);
    QCOMPARE(bytesOf(kept + "-wal"), QByteArray("journal of the damaged file"));
}

void TestBackup::badBackupsRestoreNothing() {
    TemporaryCentre centre;
    centre.close();
    QTemporaryDir directory;
    writeBytes(directory.filePath("text"), QByteArray(10'000, 'x'));
    writeBytes(directory.filePath("cut"), bytesOf(centre.path()).left(30'000));
    const QByteArray before = bytesOf(centre.path());
    for (const auto& [name, rule] :
         {std::pair{"missing", "store.missing"}, {"text", "store.not-a-database"}, {"cut", "store.damaged"}})
        QCOMPARE(ruleOf(restore(directory.filePath(name), centre.location(), fullSeasonNow)), QByteArray(rule));
    QCOMPARE(bytesOf(centre.path()), before);
    QCOMPARE(QDir(centre.directory()).entryList(QDir::Files).size(), 1);
}

void TestBackup::restoreRefusesAFileInUse() {
    TemporaryCentre centre;
    QTemporaryDir directory;
    const Result<QString> backup = centre.store().backup(directory.path(), fullSeasonNow);
    rename(centre.store(), "Later", 1);
    QCOMPARE(ruleOf(restore(*backup, centre.location(), fullSeasonNow)), QByteArray("store.locked"));
    rename(centre.store(), "Still at work", 2);
    QCOMPARE(nameIn(*centre.another()), QString("Still at work"));
    QCOMPARE(QDir(centre.directory()).entryList({"*.laneward", "*.restoring*"}, QDir::Files).size(), 1);
}

void TestBackup::serversTakeCentreFiles() {
    const Location server = m_databases->server().newDatabase();
    QCOMPARE(ruleOf(restore("any", server, fullSeasonNow)), QByteArray("restore.files-only"));
}

QTEST_GUILESS_MAIN(TestBackup)
#include "tst_backup.moc"
