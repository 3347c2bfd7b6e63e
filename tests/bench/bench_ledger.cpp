// Ten years of the stock ledger, a million movements in a centre's file: what is on hand of everything under 10 ms, and all
// closing balances made again within 1.5 times what the bare library of the database takes for the same statements.
#include "tests/bench/ratio.h"

#include "core/storage/database.h"
#include "tests/support/temporary_centre.h"

#include <QCoreApplication>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>

using namespace laneward;

namespace {

constexpr int count = 1'000'000;
constexpr int supplies = 20;

SeasonState season() {
    SeasonState all = support::fullSeason();
    for (int n = 0; n < supplies; ++n) {
        Supply supply{{QString("s%1").arg(n)}, QString("Supply %1").arg(n), SupplyKind::Conditioner};
        supply.container = Amount{5'000'000};
        all.supplies.push_back(supply);
    }
    return all;
}

// Every fiftieth movement is a receipt of a lot, which covers the 49 uses of its supply until the next one; times ascend over ten
// years. Written by plain SQL, in one transaction.
constexpr std::array bulk{
    "CREATE TEMP TABLE made AS WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < 999999) SELECT i, "
    "printf('m-%09d', i) AS id, 1480000000 + i * 315 AS t, 's' || (i / 50 % 20) AS supply, i % 50 = 0 AS receipt, "
    "'L' || (i / 20000) AS lot FROM n",
    "INSERT INTO operations (centre_id, id, kind, person, happened_at, name, counter) SELECT 'full', id, 'movements', 'ada', t, "
    "'', "
    "1 FROM made",
    "INSERT INTO movements (centre_id, id, kind, happened_at, person, reason, source, source_id, flagged, recorded_at) SELECT "
    "'full', id, CASE WHEN receipt THEN 'received' ELSE 'used' END, t, 'ada', '', 'person', '', 0, t FROM made",
    "INSERT INTO movement_entries (centre_id, movement_id, line, month, supply, place, slot, container, lot, amount) SELECT "
    "'full', id, 0, CAST(strftime('%Y%m', t, 'unixepoch') AS integer), supply, 'shelf', 0, '', lot, CASE WHEN receipt THEN "
    "500000 "
    "ELSE -10000 END FROM made",
    "INSERT INTO movement_entries (centre_id, movement_id, line, month, supply, place, slot, container, lot, amount) SELECT "
    "'full', id, 1, CAST(strftime('%Y%m', t, 'unixepoch') AS integer), supply, CASE WHEN receipt THEN 'supplier' ELSE 'lane' "
    "END, "
    "0, '', '', CASE WHEN receipt THEN -500000 ELSE 10000 END FROM made",
    "DROP TABLE made"};

support::TemporaryCentre& centre() {
    static support::TemporaryCentre made(false);
    static const bool done = [] {
        Store& store = made.store();
        HistorySlice versions;
        versions.patternVersions = support::fullHistory().patternVersions;
        if (!store.replaceAll(season(), versions, {}, support::fullSeasonNow)) qFatal("not filled");
        Result<Transaction> writing = Transaction::begin(store.database(), Isolation::Writing);
        for (const char* sql : bulk)
            if (const auto step = store.database().change(sql); !step)
                qFatal("%s: %s", sql, step.error().finding.rule.constData());
        if (!writing->commit() || !store.rebuildClosingBalances()) qFatal("not written");
        const auto written = store.database().value("SELECT COUNT(*) FROM movements");
        if (written->toInt() != count) qFatal("not all movements");
        return true;
    }();
    Q_UNUSED(done)
    return made;
}

std::int64_t sumOf(const Balances& stock) {
    std::int64_t sum = 0;
    for (const auto& [key, amount] : stock.all())
        sum += amount.value;
    return sum;
}

void onHandOfEverything(benchmark::State& run) {
    Store& store = centre().store();
    for (auto _ : run) {
        const Result<Balances> stock = store.stock();
        if (!stock || sumOf(*stock) != std::int64_t{count} / 50 * 10'000) qFatal("wrong stock");
        benchmark::DoNotOptimize(stock);
    }
}

void rebuildBalances(benchmark::State& run) {
    Store& store = centre().store();
    for (auto _ : run)
        if (!store.rebuildClosingBalances()) qFatal("not rebuilt");
}

/// What a program without a ledger would type: the sums of all entries by month and place, and their running totals.
constexpr std::array bare{
    "BEGIN IMMEDIATE", "DELETE FROM closing_balances WHERE centre_id = 'full'",
    "INSERT INTO closing_balances (centre_id, month, supply, place, machine, slot, container, lot, amount) WITH moved AS (SELECT "
    "month, supply, place, COALESCE(machine, '') AS machine, slot, container, lot, SUM(amount) AS amount FROM movement_entries "
    "WHERE centre_id = 'full' AND place IN ('shelf', 'open', 'tank', 'waste-tank') GROUP BY month, supply, place, "
    "COALESCE(machine, ''), slot, container, lot), months AS (SELECT DISTINCT month FROM moved) SELECT 'full', e.month, "
    "m.supply, "
    "m.place, m.machine, m.slot, m.container, m.lot, SUM(m.amount) FROM months e JOIN moved m ON m.month <= e.month GROUP BY "
    "e.month, m.supply, m.place, m.machine, m.slot, m.container, m.lot HAVING SUM(m.amount) <> 0 OR MAX(m.month) = e.month",
    "COMMIT"};

void bareRebuildBalances(benchmark::State& run) {
    const QString path = centre().path();
    {
        QSqlDatabase database = QSqlDatabase::addDatabase("QSQLITE", "bare");
        database.setDatabaseName(path);
        if (!database.open()) qFatal("not opened");
        for (auto _ : run) {
            QSqlQuery query(database);
            for (const char* sql : bare)
                if (!query.exec(sql)) qFatal("%s", qPrintable(query.lastError().text()));
        }
    }
    QSqlDatabase::removeDatabase("bare");
    if (sumOf(*centre().store().stock()) != std::int64_t{count} / 50 * 10'000) qFatal("not the same balances");
}

BENCHMARK(onHandOfEverything)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(rebuildBalances)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(3)->ReportAggregatesOnly();
BENCHMARK(bareRebuildBalances)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(3)->ReportAggregatesOnly();

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    const bool fast = bench::withinLimit(times, "onHandOfEverything", 10);
    return bench::withinRatio(times, "rebuildBalances", "bareRebuildBalances", 1.5) && fast ? 0 : 1;
}
