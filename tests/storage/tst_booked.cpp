// Records with what they book, on a real store: the ledger follows corrections, late entries and repeats.
#include "core/storage/booked.h"
#include "tests/support/temporary_centre.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

const Instant now{1'794'236'400};  // 2026-11-09T15:00Z
const Place tank{Place::Kind::Tank, {"m"}, 0};
const Place shelf{Place::Kind::Shelf, {}, 0};

/// 20 mL a lane.
Pattern pattern() {
    Pattern p{PatternId{"p"}, "P", {}, feet(40)};
    p.strokes = {{Direction::Out, 1, 20, 10, Microlitres{100}, feet(0), feet(20), 0}};
    return p;
}

SeasonState centre() {
    SeasonState season;
    season.centre.facts.id = {"c"};
    season.centre.facts.name = "House";
    season.centre.facts.lanes = 8;
    Machine m{{"m"}, "Heron"};
    m.conditioners = {"Amber", ""};
    season.centre.machines = {m};
    season.centre.people = {{{"nell"}, "Nell", Role::Manager}};
    season.patterns = {pattern()};
    Supply amber{{"amber"}, "Amber", SupplyKind::Conditioner};
    amber.container = Amount{5'000'000};
    season.supplies = {amber};
    return season;
}

RunLog run(const char* id, int lanes, Instant ends) {
    RunLog r;
    r.id = {id};
    r.machine = {"m"};
    r.person = {"nell"};
    r.time = {ends - minutes(30), ends};
    r.pattern = PatternId{"p"};
    r.patternVersion = 1;
    r.result = RunResult::Unplanned;
    r.use.laneRuns = lanes;
    for (int lane = 1; lane <= lanes; ++lane)
        r.lanes.push_back({lane, {r.time.begin, r.time.end}});
    r.recordedAt = ends;
    return r;
}

LevelReading level(const char* id, std::int64_t ml, Instant at) {
    LevelReading r;
    r.id = {id};
    r.person = {"nell"};
    r.levels.machine = {"m"};
    r.levels.at = at;
    r.levels.conditioner = {millilitres(ml), {}};
    return r;
}

}  // namespace

class BookedTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() {
        m_centre = std::make_unique<TemporaryCentre>(false);
        QVERIFY(store().replaceAll(centre(), {}, {"nell"}, now - hours(48)));
        Movement receipt;
        receipt.id = {"receipt"};
        receipt.kind = MovementKind::Received;
        receipt.at = receipt.recordedAt = now - hours(24);
        receipt.person = {"nell"};
        receipt.entries = {{{{"amber"}, {Place::Kind::Supplier, {}, 0}, {}, {}}, Amount{-10'000'000}},
                           {{{"amber"}, shelf, {}, {}}, Amount{10'000'000}}};
        QVERIFY(store().append({receipt}));
        keep(level("full", 2'000, now - hours(20)));
        QCOMPARE(in(tank), Amount{2'000'000});
    }

    void aRunIsBookedWithItsRecord() {
        keep(run("r", 4, now - hours(3)));
        QCOMPARE(in(tank), Amount{1'920'000});
        QCOMPARE(store().movementsFrom(MovementSource::Run, "r")->size(), size_t(1));
        QVERIFY(store().check()->empty());
    }

    void aCorrectionBooksTheDifference() {
        keep(run("r", 4, now - hours(3)));
        RunLog other = run("r2", 6, now - hours(3));
        other.corrects = OperationId{"r"};
        keep(other);
        QCOMPARE(in(tank), Amount{1'880'000});
        RunLog never = other;
        never.id = {"r3"};
        never.corrects = OperationId{"r2"};
        never.result = RunResult::Void;
        keep(never);
        QCOMPARE(in(tank), Amount{2'000'000});
        QVERIFY(store().check()->empty());
    }

    void theSameAgainBooksNothing() {
        keep(run("r", 4, now - hours(3)));
        keep(run("r", 4, now - hours(3)));
        QCOMPARE(in(tank), Amount{1'920'000});
    }

    /// The tank was read before the run, and written down after it: the difference is found as of then.
    void aLateEntryIsBookedAsOfItsTime() {
        keep(run("r", 4, now - hours(3)));
        keep(level("late", 1'990, now - hours(5)));
        QCOMPARE(in(tank), Amount{1'910'000});
        QVERIFY(store().check()->empty());
    }

    void aLateCountAsWell() {
        const StockKey key{{"amber"}, shelf, {}, {}};
        const Amount sealed = store().stock()->at(key);
        keep(level("filled", 2'000, now - hours(1)));
        keep(run("r", 4, now - hours(2)));
        StockCount count{{"count"}, now - hours(3), {"nell"}, {{key, sealed - Amount{1'000'000}}}, {}, {}};
        keep(count);
        QCOMPARE(store().stock()->at(key), sealed - Amount{1'000'000});
        StockCount withdrawn{{"never"}, now - hours(3), {"nell"}, {}, {}, OperationId{"count"}};
        keep(withdrawn);
        QCOMPARE(store().stock()->at(key), sealed);
    }

    void severalRecordsSeeEachOther() {
        keepAll({level("a", 1'000, now - hours(4)), run("b", 5, now - hours(3)), level("c", 2'000, now - hours(2))});
        QCOMPARE(in(tank), Amount{2'000'000});
        QVERIFY(store().check()->empty());
    }

    void moreThanThereIsIsFlagged() {
        keepAll({level("empty", 0, now - hours(4)), run("b", 5, now - hours(3))});
        QCOMPARE(in(tank), Amount{-100'000});
        QVERIFY(store().movementsFrom(MovementSource::Run, "b")->front().flagged);
        QVERIFY(store().check()->empty());
    }

    void withoutSuppliesNothingIsBooked() {
        SeasonState bare = centre();
        bare.supplies.clear();
        QVERIFY(store().replaceAll(bare, {}, {"nell"}, now));
        keep(run("r", 4, now - hours(3)));
        QVERIFY(store().movements(allRecords)->empty());
    }

    void theHistoryThatUseIsLearnedFrom() {
        keepAll({run("b", 8, now - hours(3)), level("c", 2'000, now - hours(2))});
        const auto history = supplyHistory(store(), season(), now);
        QVERIFY(history);
        QCOMPARE(history->stock.runs.size(), size_t(1));
        QCOMPARE(history->days.first, dateOf(season().centre, now - hours(24)));
        const auto factors = learnedFactors(store(), season(), now);
        QVERIFY(factors);
        QVERIFY(std::abs(factors->at({{"m"}, 0}) - 1.0) < 1e-12);  // no fill said how much was poured
    }

private:
    Store& store() { return m_centre->store(); }
    SeasonState season() { return *store().load(now); }
    Amount in(const Place& place) { return store().stock()->in({"amber"}, place); }
    void keep(const Record& record) { keepAll({record}); }
    void keepAll(const std::vector<Record>& records) {
        const auto all = withBookings(store(), season(), {}, records);
        QVERIFY(all);
        const Outcome done = store().append(*all);
        QVERIFY2(done, done ? "" : done.error().finding.rule.constData());
    }

    std::unique_ptr<TemporaryCentre> m_centre;
};

QTEST_GUILESS_MAIN(BookedTest)
#include "tst_booked.moc"
