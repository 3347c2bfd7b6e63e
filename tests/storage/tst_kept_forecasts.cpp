// Forecasts are kept once a day and for ever; on SQLite and on PostgreSQL.
#include "tests/support/two_databases.h"

#include "core/base/limits.h"
#include "core/storage/centre_file.h"
#include "core/storage/database.h"

#include <QBuffer>
#include <QTest>

#include <thread>

using namespace laneward;
using namespace support;

namespace {

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

KeptForecast forecastOf(QDate day, std::int64_t scale = 1'000) {
    KeptForecast forecast{day, {{{"amber"}, {}}, {{"cloth"}, {}}}};
    for (KeptSupply& supply : forecast.supplies)
        for (const int days : {1, 7, 28})
            supply.horizons.push_back(
                {days, {Amount{-scale}, Amount{0}, Amount{scale * days}, Amount{2 * scale * days}, Amount{3 * scale * days}}});
    return forecast;
}

const QDate monday(2026, 11, 9);
const DateRange always{QDate(2000, 1, 1), QDate(2100, 1, 1)};

}  // namespace

class TestKeptForecasts : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_databases = std::make_unique<TwoDatabases>(); }
    void cleanupTestCase() { m_databases.reset(); }
    void daysComeBackAsKept_data() { TwoDatabases::rows(); }
    void daysComeBackAsKept();
    void theFirstOfADayStays_data() { TwoDatabases::rows(); }
    void theFirstOfADayStays();
    void twoComputersRace_data() { TwoDatabases::rows(); }
    void twoComputersRace();
    void nothingChangesThem_data() { TwoDatabases::rows(); }
    void nothingChangesThem();
    void badOnesAreRefused_data() { TwoDatabases::rows(); }
    void badOnesAreRefused();
    void aReaderKeepsNone_data() { TwoDatabases::rows(); }
    void aReaderKeepsNone();
    void theCentreFileTakesThemAlong_data() { TwoDatabases::rows(); }
    void theCentreFileTakesThemAlong();
    void damageIsFound_data() { TwoDatabases::rows(); }
    void damageIsFound();

private:
    std::unique_ptr<Store> filled() {
        std::unique_ptr<Store> store = m_databases->fresh();
        HistorySlice history = fullHistory();
        history.forecasts.clear();
        const Outcome done = store->replaceAll(fullSeason(), history, {}, fullSeasonNow);
        if (!done) qFatal("%s", done.error().finding.rule.constData());
        return store;
    }

    std::unique_ptr<TwoDatabases> m_databases;
};

void TestKeptForecasts::daysComeBackAsKept() {
    const std::unique_ptr<Store> store = filled();
    QVERIFY(store->keptForecasts(always)->empty());
    const std::int64_t before = *store->changeCounter();
    for (const int day : {3, 0, 1})
        QVERIFY(store->keepForecast(forecastOf(monday.addDays(day), 1'000 + day)));
    QVERIFY((*store->keptForecasts(always) ==
             std::vector{forecastOf(monday, 1'000), forecastOf(monday.addDays(1), 1'001), forecastOf(monday.addDays(3), 1'003)}));
    QVERIFY((*store->keptForecasts({monday.addDays(1), monday.addDays(2)}) == std::vector{forecastOf(monday.addDays(1), 1'001)}));
    QVERIFY(store->keptForecasts({monday.addDays(4), monday.addDays(9)})->empty());
    QCOMPARE(*store->changeCounter(), before);  // no other window has to read again
    QVERIFY(store->history(allRecords)->forecasts.empty());
    QVERIFY(store->check()->empty());
}

void TestKeptForecasts::theFirstOfADayStays() {
    const std::unique_ptr<Store> store = filled();
    QVERIFY(store->keepForecast(forecastOf(monday)));
    QVERIFY(store->keepForecast(forecastOf(monday, 7)));
    QVERIFY(store->keepForecast(forecastOf(monday)));
    QVERIFY((*store->keptForecasts(always) == std::vector{forecastOf(monday)}));
}

/// Each on a connection of its own, all at once: all are told that it is kept, and one of theirs is.
void TestKeptForecasts::twoComputersRace() {
    const std::unique_ptr<Store> store = filled();
    constexpr int computers = 4;
    constexpr int days = 12;
    std::vector<std::thread> threads;
    std::vector<QByteArray> faults(computers);
    for (int n = 0; n < computers; ++n)
        threads.emplace_back([&, n] {
            const Result<std::unique_ptr<Store>> own = Store::open(store->location(), Access::ReadWrite);
            for (int day = 0; own && day < days; ++day) {
                const Outcome kept = (*own)->keepForecast(forecastOf(monday.addDays(day), 100 + n));
                if (!kept) faults[size_t(n)] += ruleOf(kept) + ' ';
            }
            if (!own) faults[size_t(n)] = ruleOf(own);
        });
    for (std::thread& thread : threads)
        thread.join();
    for (const QByteArray& fault : faults)
        QCOMPARE(fault, QByteArray());
    const std::vector<KeptForecast> all = *store->keptForecasts(always);
    QCOMPARE(all.size(), size_t{days});
    for (const KeptForecast& one : all) {
        const std::int64_t scale = -one.supplies[0].horizons[0].use[0].value;
        QVERIFY(100 <= scale && scale < 100 + computers);
        QVERIFY(one == forecastOf(one.day, scale));
    }
}

void TestKeptForecasts::nothingChangesThem() {
    const std::unique_ptr<Store> store = filled();
    QVERIFY(store->keepForecast(forecastOf(monday)));
    for (const char* sql :
         {"UPDATE kept_forecasts SET supplies = '[]'", "UPDATE kept_forecasts SET day = day", "DELETE FROM kept_forecasts"})
        QVERIFY2(!store->database().change(sql), sql);
    QVERIFY((*store->keptForecasts(always) == std::vector{forecastOf(monday)}));
    // A replacement of everything does.
    HistorySlice history = fullHistory();
    history.forecasts = {forecastOf(monday, 5)};
    QVERIFY(store->replaceAll(fullSeason(), history, {}, fullSeasonNow));
    QVERIFY((*store->keptForecasts(always) == history.forecasts));
    QVERIFY(!store->database().change("DELETE FROM kept_forecasts"));
}

void TestKeptForecasts::badOnesAreRefused() {
    const std::unique_ptr<Store> store = filled();
    const auto refused = [&](auto spoil) {
        KeptForecast forecast = forecastOf(monday);
        spoil(forecast);
        const QByteArray rule = ruleOf(store->keepForecast(forecast));
        HistorySlice history = fullHistory();
        history.forecasts = {forecast};
        const QByteArray imported = ruleOf(store->replaceAll(fullSeason(), history, {}, fullSeasonNow));
        return imported == rule ? rule : rule + " but imported: " + imported;
    };
    QCOMPARE(refused([](KeptForecast& f) { f.supplies[1].supply = {"amber"}; }), QByteArray("forecast.supplies"));
    QCOMPARE(refused([](KeptForecast& f) { f.supplies[1].supply = {}; }), QByteArray("forecast.supplies"));
    QCOMPARE(refused([](KeptForecast& f) { f.supplies[0].horizons[1].days = 1; }), QByteArray("forecast.horizons"));
    QCOMPARE(refused([](KeptForecast& f) { f.supplies[0].horizons[0].days = 0; }), QByteArray("forecast.horizons"));
    QCOMPARE(refused([](KeptForecast& f) { f.supplies[0].horizons[2].use[3] = Amount{1}; }), QByteArray("forecast.quantiles"));
    QCOMPARE(refused([](KeptForecast& f) { f.supplies[0].horizons[2].use[4] = Amount{limits::stockAmount + 1}; }),
             QByteArray("forecast.quantiles"));
    QCOMPARE(ruleOf(store->keepForecast(forecastOf({}))), QByteArray("forecast.day"));
    QVERIFY(store->keptForecasts(always)->empty());
    HistorySlice twice = fullHistory();
    twice.forecasts = {forecastOf(monday), forecastOf(monday, 5)};
    QCOMPARE(ruleOf(store->replaceAll(fullSeason(), twice, {}, fullSeasonNow)), QByteArray("import.id-twice"));
    QCOMPARE(ruleOf(m_databases->fresh()->keepForecast(forecastOf(monday))), QByteArray("store.no-centre"));
}

void TestKeptForecasts::aReaderKeepsNone() {
    const std::unique_ptr<Store> store = filled();
    QVERIFY(store->keepForecast(forecastOf(monday)));
    const std::unique_ptr<Store> reader = opened(store->location(), Access::ReadOnly);
    QCOMPARE(ruleOf(reader->keepForecast(forecastOf(monday.addDays(1)))), QByteArray("edit.read-only"));
    QVERIFY((*reader->keptForecasts(always) == std::vector{forecastOf(monday)}));
}

void TestKeptForecasts::theCentreFileTakesThemAlong() {
    const std::unique_ptr<Store> store = filled();
    for (int day = 0; day < 3; ++day)
        QVERIFY(store->keepForecast(forecastOf(monday.addDays(day), 10 + day)));
    const Result<CentreFile> file = exported(*store);
    QVERIFY(file);
    QCOMPARE(file->history.forecasts.size(), size_t{3});
    QBuffer bytes;
    QVERIFY(bytes.open(QIODevice::ReadWrite));
    QVERIFY(writeCentreFile(bytes, *file));
    QVERIFY(bytes.data().contains("\"kept_forecasts\": ["));
    bytes.seek(0);
    const Result<CentreFile> read = readCentreFile(bytes, "club.json");
    QVERIFY2(read, read ? "" : qPrintable(read.error().finding.subject));
    QVERIFY(read->history.forecasts == file->history.forecasts);
    const std::unique_ptr<Store> other = m_databases->fresh();
    QVERIFY(other->replaceAll(read->season, read->history, {}, fullSeasonNow));
    QVERIFY(*other->keptForecasts(always) == *store->keptForecasts(always));
    QVERIFY(other->check()->empty());
}

void TestKeptForecasts::damageIsFound() {
    const auto found = [&](const QString& supplies) {
        const std::unique_ptr<Store> store = filled();
        const Result<int> done = store->database().change(
            QString("INSERT INTO kept_forecasts (centre_id, day, supplies) VALUES ('full', '2026-11-09', '%1')").arg(supplies));
        if (!done) return QByteArray("not written");
        const Result<std::vector<Finding>> findings = store->check();
        return findings && findings->size() == 1 ? findings->front().rule : QByteArray("something else");
    };
    QCOMPARE(found(R"([{"supply":"amber","horizons":[{"days":7,"use":[5,4,3,2,1]}]}])"), QByteArray("forecast.quantiles"));
    QCOMPARE(found(R"([{"supply":"amber","horizons":[{"days":7,"use":[1,2,3,4]}]}])"), QByteArray("store.damaged"));
    QCOMPARE(found("soup"), QByteArray("store.damaged"));
}

QTEST_GUILESS_MAIN(TestKeptForecasts)
#include "tst_kept_forecasts.moc"
