// The centre is backed up once a day by itself, beside the window.
#include "app/edits/backup_keeper.h"
#include "app/window/centre_making.h"
#include "core/storage/kept_backups.h"
#include "tests/support/evening_session.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

using namespace laneward;

namespace {

constexpr int patience = 60'000;  // milliseconds: beside everything else that a machine under test does
constexpr std::chrono::milliseconds atOnce{1};

}  // namespace

class BackupKeeperTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        m_evening = std::make_unique<support::Evening>();
        m_session = support::sessionOn(*m_evening);
        m_folder = std::make_unique<QTemporaryDir>();
        m_path = m_folder->filePath("made/when needed");
    }
    void cleanup() {
        m_session.reset();
        m_evening.reset();
    }

    void onceADay() {
        look();
        QCOMPARE(backups().size(), size_t(1));
        QCOMPARE(backups()[0].made, m_session->now());
        m_evening->clock.set(m_session->now() + hours(23));
        look();
        QCOMPARE(backups().size(), size_t(1));
        m_evening->clock.set(m_session->now() + hours(2));
        look();
        QCOMPARE(backups().size(), size_t(2));
    }

    void whatIsBackedUpIsWhatIsThere() {
        const Series before = m_session->season().series.front();
        Series after = before;
        after.title = "Moved league";
        QVERIFY(m_session->apply("Rename", {RowChange<Series>{before, after}}));
        look();
        QCOMPARE(backups().size(), size_t(1));
        auto store = Store::open({Location::Kind::Sqlite, backups()[0].path, {}}, Access::ReadOnly);
        QVERIFY(store);
        const Result<SeasonState> kept = (*store)->load(m_session->now());
        QVERIFY(kept && *kept == m_session->season());
    }

    void oldOnesGo() {
        for (int day = 0; day < 30; ++day) {
            look();
            m_evening->clock.set(m_session->now() + hours(25));
        }
        // Ten days and the weeks before them.
        QVERIFY2(backups().size() >= 10 && backups().size() <= 14, qPrintable(QString::number(backups().size())));
        QVERIFY(overtaken(backups()).empty());
    }

    /// A file stands where the folder should be: said once, and tried again.
    void failureIsSaidOnce() {
        QDir().mkpath(QFileInfo(m_path).path());
        QFile inTheWay(m_path);
        QVERIFY(inTheWay.open(QIODevice::WriteOnly));
        inTheWay.close();
        QSignalSpy problem(m_session.get(), &Session::problem);
        BackupKeeper keeper(*m_session, m_path, atOnce);
        QSignalSpy looked(&keeper, &BackupKeeper::looked);
        QVERIFY(looked.wait(patience));
        QCOMPARE(problem.size(), 1);
        QVERIFY2(problem[0][0].toString().contains("daily backup was not made"), qPrintable(problem[0][0].toString()));
        QVERIFY(m_session->apply("Go on", {RowChange<Person>{m_session->season().centre.people.front(), [&] {
                                                                 Person p = m_session->season().centre.people.front();
                                                                 p.name = "Ada F.";
                                                                 return p;
                                                             }()}}));
    }

    void leavingWhileBusyIsClean() {
        {
            const BackupKeeper keeper(*m_session, m_path, atOnce);
            QTest::qWait(2);
        }
        const QStringList left = QDir(m_path).entryList(QDir::Files);
        QVERIFY2(left.filter(".partial").isEmpty(), qPrintable(left.join(' ')));
    }

    void eachCentreHasItsOwnFolder() {
        const auto folderOf = [](const QString& path) { return backupFolderOf({Location::Kind::Sqlite, path, {}}); };
        const std::optional<QString> one = folderOf(m_evening->path());
        support::Evening other;
        QVERIFY(one && folderOf(other.path()) && *one != *folderOf(other.path()));
        QCOMPARE(folderOf(QFileInfo(m_evening->path()).path() + "/./" + QFileInfo(m_evening->path()).fileName()), one);
        QVERIFY(!folderOf(demoCentrePath()));
        QVERIFY(!backupFolderOf(*Location::parse("postgresql://lanes@localhost/club")));
    }

private:
    void look() {
        BackupKeeper keeper(*m_session, m_path, atOnce);
        QSignalSpy looked(&keeper, &BackupKeeper::looked);
        QVERIFY(looked.wait(patience));
    }
    std::vector<KeptBackup> backups() const { return backupsIn(m_path); }

    std::unique_ptr<support::Evening> m_evening;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
};

QTEST_MAIN(BackupKeeperTest)
#include "tst_backup_keeper.moc"
