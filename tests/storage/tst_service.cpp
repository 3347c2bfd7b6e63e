// Service in both databases: items as rows, records that are never changed, meters that follow from the runs, parts in the
// ledger.
#include "core/season/service_state.h"
#include "core/storage/booked.h"
#include "core/storage/database.h"
#include "core/storage/run_work.h"
#include "tests/support/full_season.h"
#include "tests/support/two_databases.h"

#include <QTest>

#include <algorithm>

using namespace laneward;
using namespace support;

namespace {

const MachineId m1{"m1"};

RunLog run(int n, Instant ends, int lanes) {
    RunLog r;
    r.id = operation(n);
    r.machine = m1;
    r.person = {"ada"};
    r.time = {ends - minutes(30), ends};
    r.lanes = {{1, {ends - minutes(20), ends - minutes(10)}}, {2, {ends - minutes(9), ends}}};
    r.treatment = Treatment::CleanOnly;
    r.use.laneRuns = lanes;
    r.use.cleaner = millilitres(100);
    r.recordedAt = ends;
    return r;
}

ServiceRecord turned(int n, Instant when) {
    ServiceRecord record;
    record.id = operation(n);
    record.at = when;
    record.person = {"ada"};
    record.item = {"brush"};
    record.duty = {"brush-turn"};
    return record;
}

MeterReading shown(int n, Instant when, std::int64_t lanes) { return {operation(n), when, {"ada"}, m1, MeterKind::Lanes, lanes}; }

constexpr Instant day(int n) { return fullSeasonNow - hours(24) * n; }

}  // namespace

class ServiceStorageTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void metersSurviveTheWindow_data() { TwoDatabases::rows(); }
    void metersSurviveTheWindow();
    void correctionsOfRunsCount_data() { TwoDatabases::rows(); }
    void correctionsOfRunsCount();
    void lastServicesAreLoadedHoweverOld_data() { TwoDatabases::rows(); }
    void lastServicesAreLoadedHoweverOld();
    void refusesWhatCannotBe_data() { TwoDatabases::rows(); }
    void refusesWhatCannotBe();
    void partsAreBooked_data() { TwoDatabases::rows(); }
    void partsAreBooked();
    void packsAreRead_data() { TwoDatabases::rows(); }
    void packsAreRead();
    void damageIsFound();
    void olderSchemasGetTheirWork();

private:
    std::unique_ptr<Store> house() {
        std::unique_ptr<Store> store = m_databases.fresh();
        SeasonState season = fullSeason();
        if (!store->replaceAll(season, {}, {"ada"}, day(400))) qFatal("not made");
        return store;
    }
    static Meters metersOf(Store& store) {
        const Result<SeasonState> season = store.load(fullSeasonNow);
        return season ? metersNow(*season, m1, fullSeasonNow) : Meters{-1, -1, {}, {}};
    }

    TwoDatabases m_databases;
};

void ServiceStorageTest::metersSurviveTheWindow() {
    const auto store = house();
    QVERIFY(store->append({run(100, day(300), 8), run(101, day(200), 6), run(102, day(3), 4)}));
    QCOMPARE(metersOf(*store), (Meters{18, 3, minutes(60), millilitres(300)}));
    QVERIFY(store->append({shown(103, day(250), 5'000), shown(104, day(100), 5'010)}));  // four lanes were not logged
    QCOMPARE(metersOf(*store).lanes, 5'014);
    QCOMPARE(store->load(fullSeasonNow)->workBefore.size(), size_t(2));
    const auto late = run(105, day(220), 7);  // entered late: the counter had it already
    QVERIFY(store->append({late}));
    QCOMPARE(metersOf(*store).lanes, 5'014);
    QCOMPARE(metersOf(*store).runs, 4);
}

void ServiceStorageTest::correctionsOfRunsCount() {
    const auto store = house();
    QVERIFY(store->append({run(100, day(300), 8), run(101, day(200), 6)}));
    RunLog right = run(102, day(200), 10);
    right.corrects = operation(101);
    QVERIFY(store->append({right}));
    QCOMPARE(metersOf(*store).lanes, 18);
    RunLog gone = run(103, day(300), 8);
    gone.corrects = operation(100);
    gone.result = RunResult::Void;
    QVERIFY(store->append({gone}));
    QCOMPARE(metersOf(*store), (Meters{10, 1, minutes(20), millilitres(100)}));
    QVERIFY(store->check()->empty());
    QVERIFY(store->append({gone}));  // once more changes nothing
    QCOMPARE(metersOf(*store).lanes, 10);
}

void ServiceStorageTest::lastServicesAreLoadedHoweverOld() {
    const auto store = house();
    ServiceRecord wrong = turned(112, day(150));
    ServiceRecord withdrawn = turned(113, day(149));
    withdrawn.corrects = wrong.id;
    withdrawn.result = ServiceResult::Withdrawn;
    ServiceRecord looked = turned(114, day(100));
    looked.result = ServiceResult::Found;
    QVERIFY(store->append({turned(110, day(300)), turned(111, day(200)), wrong, withdrawn, looked}));
    const SeasonState season = *store->load(fullSeasonNow);
    QCOMPARE(lastDone(season).at({"brush-turn"}).at, day(200));
    QCOMPARE(season.services.size(), size_t(1));
    QCOMPARE(store->services(allRecords)->size(), size_t(5));
    QCOMPARE(season.items.size(), size_t(3));
}

void ServiceStorageTest::refusesWhatCannotBe() {
    const auto store = house();
    const auto ruleOf = [&](const Record& record) {
        const Outcome done = store->append({record});
        return done ? QByteArray("done") : done.error().finding.rule;
    };
    ServiceRecord record = turned(120, day(5));
    record.duty = {"other"};
    QCOMPARE(ruleOf(record), QByteArray("service.unknown-duty"));
    record.item = {"nothing"};
    QCOMPARE(ruleOf(record), QByteArray("service.unknown-item"));
    QVERIFY(store->append({shown(121, day(9), 500)}));
    QCOMPARE(ruleOf(shown(122, day(8), 499)), QByteArray("meter.backwards"));
    MeterReading fresh = shown(123, day(7), 0);
    fresh.replaced = true;
    QCOMPARE(ruleOf(fresh), QByteArray("done"));
    QCOMPARE(ruleOf(shown(124, day(6), 12)), QByteArray("done"));
    QCOMPARE(metersOf(*store).lanes, 512);
    ServiceItem item = *findItem(store->load(fullSeasonNow)->items, {"brush"});
    QVERIFY(store->append({turned(125, day(5))}));
    const Result<Edit> removed =
        store->apply({operation(126), {"ada"}, fullSeasonNow, "Remove", {RowChange<ServiceItem>{item, {}}}});
    QVERIFY(!removed && removed.error().finding.rule == "edit.still-used");
    QCOMPARE(ruleOf(PackReading{operation(127), day(5), {"ada"}, {"pack"}, PackDeed::Charged}), QByteArray("done"));
    for (const char* sql :
         {"UPDATE service_records SET note = 'x'", "DELETE FROM meter_readings", "UPDATE pack_readings SET note = 'x'"})
        QVERIFY2(!store->database().change(sql), sql);
}

void ServiceStorageTest::partsAreBooked() {
    const auto store = house();
    const SupplyId cloth{"cloth"};
    Movement receipt;
    receipt.id = operation(130);
    receipt.at = receipt.recordedAt = day(10);
    receipt.person = {"ada"};
    receipt.entries = {{{cloth, {Place::Kind::Supplier, {}, 0}, {}, {}}, Amount{-90'000}},
                       {{cloth, {Place::Kind::Shelf, {}, 0}, {}, {}}, Amount{90'000}}};
    QVERIFY(store->append({receipt}));
    ServiceRecord record = turned(131, day(5));
    record.parts = {{cloth, Amount{1'500}, {}}};
    const auto booked = [&](const ServiceRecord& one) {
        const Result<std::vector<Record>> with = withBookings(*store, *store->load(fullSeasonNow), {}, {one});
        return with && store->append(*with);
    };
    QVERIFY(booked(record));
    QCOMPARE(store->stock()->onHand(cloth), Amount{88'500});
    QCOMPARE(store->movementsFrom(MovementSource::Service, record.id.value)->size(), size_t(2));  // opened, then used
    ServiceRecord withdrawn = turned(132, day(4));
    withdrawn.corrects = record.id;
    withdrawn.result = ServiceResult::Withdrawn;
    QVERIFY(booked(withdrawn));
    QCOMPARE(store->stock()->onHand(cloth), Amount{90'000});
    QVERIFY(store->check()->empty());
}

void ServiceStorageTest::packsAreRead() {
    const auto store = house();
    const auto reading = [](int n, Instant when, const char* pack) {
        return PackReading{operation(n), when, {"ada"}, {pack}, PackDeed::OnCharge};
    };
    QVERIFY(
        store->append({run(100, day(90), 8), run(101, day(3), 4), reading(102, day(80), "pack"), reading(103, day(2), "pack")}));
    const Result<PackHistory> all = store->packs(allRecords);
    QVERIFY(all);
    QCOMPARE(all->readings, (std::vector<PackReading>{reading(102, day(80), "pack"), reading(103, day(2), "pack")}));
    QCOMPARE(all->work.size(), size_t(2));
    QCOMPARE(all->work.front(), (MachineWork{m1, day(90), {8, 1, minutes(20), millilitres(100)}}));
    QCOMPARE(store->packs({day(5), day(0)})->work.size(), size_t(1));
    // Only the open window is in memory.
    QCOMPARE(store->load(fullSeasonNow)->packReadings, (std::vector<PackReading>{reading(103, day(2), "pack")}));
    // What cannot be is refused, and nothing stays of it.
    const auto refused = [&](const PackReading& wrong) {
        const Outcome done = store->append({wrong});
        return done ? QByteArray() : done.error().finding.rule;
    };
    QCOMPARE(refused(reading(110, day(1), "brush")), QByteArray("pack.unknown"));
    QCOMPARE(refused(reading(111, day(1), "nowhere")), QByteArray("pack.unknown"));
    PackReading wild = reading(112, day(1), "pack");
    wild.volts = Millivolts{61'000};
    QCOMPARE(refused(wild), QByteArray("pack.volts"));
    PackReading gone = reading(113, day(1), "pack");
    gone.corrects = operation(103);
    gone.withdrawn = true;
    QVERIFY(store->append({gone}));
    QCOMPARE(standing(store->packs(allRecords)->readings).size(), size_t(1));
    gone.id = operation(114);
    QCOMPARE(refused(gone), QByteArray("record.already-corrected"));
    QVERIFY(store->check()->empty());
}

void ServiceStorageTest::damageIsFound() {
    for (const auto& [sql, rule] :
         {std::pair("DELETE FROM run_work", "check.run-work"),
          std::pair("UPDATE service_items SET duties = replace(duties, '\"cloth\"', '\"silk\"')", "check.unknown-supply"),
          std::pair("UPDATE service_items SET duties = '[]x'", "store.damaged")}) {
        TemporaryCentre centre;
        QVERIFY(centre.store().append({run(100, day(300), 8)}));
        QVERIFY(centre.store().database().change(sql));
        const auto findings = centre.store().check();
        QVERIFY(findings &&
                std::any_of(findings->begin(), findings->end(), [rule = rule](const Finding& f) { return f.rule == rule; }));
    }
}

/// Runs that were kept before their work was.
void ServiceStorageTest::olderSchemasGetTheirWork() {
    TemporaryCentre centre;
    QVERIFY(centre.store().append({run(100, day(300), 8), run(101, day(2), 5)}));
    const Meters before = metersOf(centre.store());
    QVERIFY(before.lanes > 0);
    QVERIFY(centre.store().database().change("DELETE FROM run_work"));
    QVERIFY(metersOf(centre.store()).lanes < before.lanes);
    QVERIFY(rebuildWork(centre.store().database(), {"full"}));
    QCOMPARE(metersOf(centre.store()), before);
}

QTEST_GUILESS_MAIN(ServiceStorageTest)
#include "tst_service.moc"
