// Several programs at one centre, and programs that die in the middle of a write. This program starts itself as the writer.
#include "tests/support/two_databases.h"

#include "core/storage/database.h"

#include <QCoreApplication>
#include <QProcess>
#include <QRandomGenerator>
#include <QTest>
#include <QUuid>

#include <cstdio>
#include <set>

using namespace laneward;
using namespace support;

namespace {

constexpr int transactions = 200;
constexpr quint32 seed = 14'072'026;

LevelReading newReading(int lanes) {
    LevelReading r{{QUuid::createUuid().toString(QUuid::WithoutBraces)}, PersonId{"ada"}, {}, {}};
    r.levels = {MachineId{"m1"}, fullSeasonNow + Seconds{lanes}, {}, {}, {}, lanes, {}};
    return r;
}

/// Reads a number and writes the next one, in one transaction.
bool countedUp(Database& db) {
    Result<Transaction> writing = Transaction::begin(db, Isolation::Writing);
    if (!writing) return false;
    // On the server the row is locked by reading it; SQLite holds the whole file since the transaction began.
    const QString lock = db.dialect() == Dialect::Postgres ? " FOR UPDATE" : "";
    const auto players = db.value("SELECT players FROM series WHERE centre_id = ? AND id = ?" + lock, {"full", "league"});
    if (!players) return false;
    const auto changed =
        db.change("UPDATE series SET players = ? WHERE centre_id = ? AND id = ?", {players->toInt() + 1, "full", "league"});
    return changed && writing->commit();
}

int countUp(Store& store) {
    int failures = 0;
    for (int i = 0; i < transactions; ++i)
        failures += !countedUp(store.database());
    return failures;
}

int appendMany(Store& store) {
    int failures = 0;
    for (int i = 0; i < transactions; ++i)
        failures += !store.append({newReading(i)});
    return failures;
}

/// Appends two records and edits a row, for ever, saying aloud each id that the store has acknowledged.
int writeForEver(Store& store) {
    for (int i = 0;; ++i) {
        const LevelReading first = newReading(i);
        const LevelReading second = newReading(i);
        if (!store.append({first, second})) return 1;
        std::printf("%s\n%s\n", qPrintable(first.id.value), qPrintable(second.id.value));
        const Result<SeasonState> season = store.load(fullSeasonNow);
        if (!season) return 1;
        Person person = season->centre.people.front();
        person.name = QString("Name %1").arg(i);
        const OperationId id{QUuid::createUuid().toString(QUuid::WithoutBraces)};
        if (!store.apply({id, person.id, fullSeasonNow, "Rename", {RowChange<Person>{season->centre.people.front(), person}}}))
            return 1;
        std::printf("%s\n", qPrintable(id.value));
        std::fflush(stdout);
    }
}

int asWriter(const QStringList& arguments) {
    const Result<Location> location = Location::parse(arguments[2]);
    if (!location) return 100;
    const std::unique_ptr<Store> store = opened(*location, Access::ReadWrite);
    if (arguments[1] == "--count-up") return countUp(*store);
    return arguments[1] == "--append" ? appendMany(*store) : writeForEver(*store);
}

}  // namespace

class TestProcesses : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_databases = std::make_unique<TwoDatabases>(); }
    void cleanupTestCase() { m_databases.reset(); }
    void twoWritersWaitForEachOther_data() { TwoDatabases::rows(); }
    void twoWritersWaitForEachOther();
    void twoProgramsAppend_data() { TwoDatabases::rows(); }
    void twoProgramsAppend();
    void aKilledWriterLosesNothing_data() { TwoDatabases::rows(); }
    void aKilledWriterLosesNothing();

private:
    static void start(QProcess& process, const char* what, const Location& location) {
        const QString place = location.kind == Location::Kind::Sqlite ? location.path : location.server.toString();
        process.start(QCoreApplication::applicationFilePath(), {what, place});
    }
    static int failuresOfTwo(const char* what, const Location& location);
    static std::set<QString> idsIn(Store& store);

    std::unique_ptr<TwoDatabases> m_databases;
};

int TestProcesses::failuresOfTwo(const char* what, const Location& location) {
    QProcess one;
    QProcess other;
    start(one, what, location);
    start(other, what, location);
    const bool finished = one.waitForFinished(120'000) && other.waitForFinished(120'000);
    return finished ? one.exitCode() + other.exitCode() : 1'000;
}

void TestProcesses::twoWritersWaitForEachOther() {
    const std::unique_ptr<Store> store = m_databases->fresh();
    fill(*store);
    const auto players = [&] { return store->database().value("SELECT players FROM series WHERE id = 'league'")->toInt(); };
    const int before = players();
    QCOMPARE(failuresOfTwo("--count-up", store->location()), 0);
    QCOMPARE(players(), before + 2 * transactions);
}

void TestProcesses::twoProgramsAppend() {
    const std::unique_ptr<Store> store = m_databases->fresh();
    fill(*store);
    const size_t before = store->history({Instant{0}, fullSeasonNow + hours(100)})->readings.size();
    QCOMPARE(failuresOfTwo("--append", store->location()), 0);
    QCOMPARE(store->history({Instant{0}, fullSeasonNow + hours(100)})->readings.size(), before + 2 * transactions);
    QVERIFY(store->check()->empty());
}

std::set<QString> TestProcesses::idsIn(Store& store) {
    const Result<std::vector<Row>> rows = store.database().rows("SELECT id FROM operations");
    if (!rows) qFatal("no answer is not 'no rows'");
    std::set<QString> ids;
    for (const Row& row : *rows)
        ids.insert(row.value(0).toString());
    return ids;
}

void TestProcesses::aKilledWriterLosesNothing() {
    QFETCH(bool, postgres);
    std::unique_ptr<Store> store = m_databases->fresh();
    fill(*store);
    const Location location = store->location();
    QRandomGenerator random(seed);
    size_t acknowledged = 0;
    const int kills = postgres ? 10 : 40;
    for (int i = 0; i < kills; ++i) {
        store.reset();
        QProcess writer;
        start(writer, "--for-ever", location);
        QStringList ids;
        for (const int lines = 1 + random.bounded(25); ids.size() < lines;) {
            if (!writer.canReadLine()) QVERIFY2(writer.waitForReadyRead(30'000), writer.readAllStandardError().constData());
            while (writer.canReadLine())
                ids << QString::fromLatin1(writer.readLine().trimmed());
        }
        writer.kill();
        QVERIFY(writer.waitForFinished(30'000));
        while (writer.canReadLine())
            ids << QString::fromLatin1(writer.readLine().trimmed());
        store = opened(location, Access::ReadWrite);
        const std::set<QString> stored = idsIn(*store);
        for (const QString& id : ids)
            QVERIFY2(stored.contains(id), qPrintable(id));
        acknowledged += size_t(ids.size());
        const Result<std::vector<Finding>> findings = store->check();
        QVERIFY(findings);
        QVERIFY2(findings->empty(), findings->empty() ? "" : findings->front().rule.constData());
        // Records of one call come together or not at all.
        QCOMPARE(store->database().value("SELECT count(*) FROM level_readings")->toInt() % 2, 0);
    }
    qInfo("seed %u: %d kills, %zu acknowledged operations, none lost, none half", seed, kills, acknowledged);
}

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3 && arguments[2].contains('/')) return asWriter(arguments);
    TestProcesses test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_processes.moc"
