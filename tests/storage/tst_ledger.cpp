// The stock ledger: what may be booked, that it always balances, and that nothing changes it; on SQLite and on PostgreSQL.
#include "tests/support/two_databases.h"

#include "core/storage/centre_file.h"
#include "core/storage/database.h"

#include <QTest>

#include <random>

using namespace laneward;
using namespace support;

namespace {

using P = Place::Kind;

QByteArray ruleOf(const auto& result) { return result ? QByteArray() : result.error().finding.rule; }

const Place shelf{P::Shelf, {}, 0};
const Place ajar{P::Open, {}, 0};
const Place tank{P::Tank, MachineId{"m1"}, 0};
const Place supplier{P::Supplier, {}, 0};
const Place lane{P::Lane, {}, 0};
const Place loss{P::Loss, {}, 0};

/// An amount of amber from place to place.
Movement moved(int n, MovementKind kind, const Place& from, const Place& to, std::int64_t amount, Seconds ago = hours(1)) {
    Movement m;
    m.id = operation(n);
    m.kind = kind;
    m.at = fullSeasonNow - ago;
    m.person = PersonId{"ada"};
    m.recordedAt = fullSeasonNow;
    m.entries = {{{{"amber"}, from, {}, {}}, Amount{-amount}}, {{{"amber"}, to, {}, {}}, Amount{amount}}};
    return m;
}

Movement received(int n, std::int64_t amount, Seconds ago = hours(1)) {
    return moved(n, MovementKind::Received, supplier, shelf, amount, ago);
}

Movement counter(int n, const Movement& of) {
    Movement m = counterOf(of);
    m.id = operation(n);
    m.person = PersonId{"ben"};
    m.recordedAt = fullSeasonNow;
    return m;
}

Movement inContainer(Movement m, const QString& container) {
    for (Entry& entry : m.entries)
        if (entry.key.place.isInside()) entry.key.container = container;
    return m;
}

std::vector<Record> asRecords(const std::vector<Movement>& movements) { return {movements.begin(), movements.end()}; }

QStringList closings(Store& store) {
    const auto rows = store.database().rows(
        "SELECT month, supply, place, machine, slot, container, lot, amount FROM closing_balances ORDER BY 1, 2, 3, 4, 5, 6, 7");
    if (!rows) qFatal("%s", rows.error().finding.rule.constData());
    QStringList all;
    for (const Row& row : *rows) {
        QStringList line;
        for (const QVariant& column : row.columns)
            line << column.toString();
        if (line.last() != "0") all << line.join(' ');
    }
    return all;
}

QByteArrayList found(Store& store) {
    const Result<std::vector<Finding>> findings = store.check();
    if (!findings) qFatal("%s", findings.error().finding.rule.constData());
    QByteArrayList rules;
    for (const Finding& finding : *findings)
        if (!rules.contains(finding.rule)) rules << finding.rule;
    return rules;
}

/// Any movement over five years, mostly one of the usual ways.
Movement anyMovement(int n, std::mt19937& random) {
    const auto pick = [&](size_t count) { return random() % count; };
    const std::vector<Place> places{shelf, ajar, tank, supplier, lane, loss, {P::WasteTank, MachineId{"m2"}, 0}};
    const std::vector<std::tuple<MovementKind, size_t, size_t>> usual{
        {MovementKind::Received, 3, 0}, {MovementKind::Received, 3, 0}, {MovementKind::Opened, 0, 1},
        {MovementKind::Filled, 1, 2},   {MovementKind::Used, 2, 4},     {MovementKind::Used, 4, 6},
        {MovementKind::Counted, 5, 0},  {MovementKind::Counted, 0, 5}};
    const std::vector<SupplyId> supplies{{"amber"}, {"cloth"}, wasteId};
    const auto [kind, from, to] = usual[pick(usual.size())];
    Movement m = moved(n, kind, shelf, ajar, 1, hours(std::int64_t(24 * pick(1'800))));
    m.flagged = pick(10) == 0;
    m.entries.clear();
    const bool odd = pick(5) == 0;
    for (size_t lines = 1 + pick(3); lines > 0; --lines) {
        const SupplyId supply = supplies[pick(3)];
        const Amount amount{std::int64_t(1 + pick(900))};
        const QString lot = QString::number(pick(2));
        m.entries.push_back({{supply, places[odd ? pick(7) : from], {}, lot}, -amount});
        m.entries.push_back({{supply, places[odd ? pick(7) : to], {}, lot}, amount});
    }
    if (pick(30) == 0) m.entries[0].amount -= Amount{1};
    return m;
}

}  // namespace

class TestLedger : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_databases = std::make_unique<TwoDatabases>(); }
    void cleanupTestCase() { m_databases.reset(); }
    void stockIsLoaded_data() { TwoDatabases::rows(); }
    void stockIsLoaded();
    void nothingChangesTheLedger_data() { TwoDatabases::rows(); }
    void nothingChangesTheLedger();
    void whatIsStockedIsEdited_data() { TwoDatabases::rows(); }
    void whatIsStockedIsEdited();
    void whatTheLedgerNamesStays_data() { TwoDatabases::rows(); }
    void whatTheLedgerNamesStays();
    void badMovementsAreRefused_data() { TwoDatabases::rows(); }
    void badMovementsAreRefused();
    void badCountsAreRefused_data() { TwoDatabases::rows(); }
    void badCountsAreRefused();
    void theSameAgainHasNoEffect_data() { TwoDatabases::rows(); }
    void theSameAgainHasNoEffect();
    void aMovementIsTakenBackOnce_data() { TwoDatabases::rows(); }
    void aMovementIsTakenBackOnce();
    void recordsBookTogether_data() { TwoDatabases::rows(); }
    void recordsBookTogether();
    void lateMovementsReachLaterMonths_data() { TwoDatabases::rows(); }
    void lateMovementsReachLaterMonths();
    void rangesAreOfOneSupply_data() { TwoDatabases::rows(); }
    void rangesAreOfOneSupply();
    void whateverIsAcceptedBalances_data() { TwoDatabases::rows(); }
    void whateverIsAcceptedBalances();
    void damageIsFound_data() { TwoDatabases::rows(); }
    void damageIsFound();
    void importedLedgersMustHold_data() { TwoDatabases::rows(); }
    void importedLedgersMustHold();

private:
    /// With `history`, or without a movement.
    std::unique_ptr<Store> filled(bool history = false) {
        std::unique_ptr<Store> store = m_databases->fresh();
        HistorySlice slice = fullHistory();
        if (!history) slice.movements.clear();
        const Outcome done = store->replaceAll(fullSeason(), slice, {}, fullSeasonNow);
        if (!done) qFatal("%s", done.error().finding.rule.constData());
        return store;
    }
    Result<Edit> edited(Store& store, Change change) {
        return store.apply({operation(20'000 + ++m_edits), PersonId{"ben"}, fullSeasonNow, "Edit", {std::move(change)}});
    }
    template <class T>
    void isEdited(Store& store, const T& added, const T& changed);

    std::unique_ptr<TwoDatabases> m_databases;
    int m_edits = 0;
};

void TestLedger::stockIsLoaded() {
    const std::unique_ptr<Store> store = filled(true);
    const SeasonState read = withoutVersions(*store->load(fullSeasonNow));
    const SeasonState expected = fullSeason();
    QVERIFY(read.supplies == expected.supplies && read.suppliers == expected.suppliers);
    QVERIFY(read.offers == expected.offers && read.orders == expected.orders);
    const std::vector<Movement> movements = *store->movements(allRecords);
    QVERIFY(movements == fullHistory().movements);
    QVERIFY(*store->counts(allRecords) == fullHistory().counts);
    QVERIFY(read.stock == balancesOf(movements));
    QVERIFY(*store->stock() == read.stock);
    QCOMPARE(read.stock.onHand({"amber"}).value, 10'000'000 - 8'000);
    QCOMPARE(read.stock.at({{"amber"}, tank, {}, {}}).value, -8'000);
    QCOMPARE(found(*store), QByteArrayList());
    QVERIFY(*store->supplies() == store->load(fullSeasonNow)->supplies);
}

void TestLedger::nothingChangesTheLedger() {
    const std::unique_ptr<Store> store = filled(true);
    const std::vector<Movement> before = *store->movements(allRecords);
    for (const char* sql :
         {"UPDATE movements SET flagged = 0", "UPDATE movements SET reason = ''", "DELETE FROM movements",
          "UPDATE movement_entries SET amount = 0", "UPDATE movement_entries SET amount = amount", "DELETE FROM movement_entries",
          "DELETE FROM movement_entries WHERE amount > 0", "UPDATE stock_counts SET note = ''", "DELETE FROM stock_counts"}) {
        QVERIFY2(!store->database().change(sql), sql);
        QVERIFY(*store->movements(allRecords) == before);
    }
    // A replacement of everything does, and leaves the ledger closed again.
    HistorySlice history = fullHistory();
    history.movements.resize(1);
    QVERIFY(store->replaceAll(fullSeason(), history, {}, fullSeasonNow));
    QCOMPARE(store->movements(allRecords)->size(), size_t{1});
    QCOMPARE(store->stock()->onHand({"amber"}).value, 10'000'000);
    QVERIFY(!store->database().change("DELETE FROM movement_entries"));
    QCOMPARE(found(*store), QByteArrayList());
}

template <class T>
void TestLedger::isEdited(Store& store, const T& added, const T& changed) {
    const Result<Edit> undoAdd = edited(store, RowChange<T>{{}, added});
    QVERIFY2(undoAdd, ruleOf(undoAdd).constData());
    T before = *std::get<RowChange<T>>(undoAdd->changes.front()).before;
    QVERIFY(before.version > 0);
    const Result<Edit> undoChange = edited(store, RowChange<T>{before, changed});
    QVERIFY2(undoChange, ruleOf(undoChange).constData());
    QCOMPARE(ruleOf(edited(store, RowChange<T>{before, added})), QByteArray("edit.conflict"));
    const T after = *std::get<RowChange<T>>(undoChange->changes.front()).before;
    QVERIFY(edited(store, RowChange<T>{after, {}}));
}

void TestLedger::whatIsStockedIsEdited() {
    const std::unique_ptr<Store> store = filled();
    const SeasonState season = fullSeason();
    Supply supply = season.supplies[1];
    supply.id = {"new"};
    Supply renamed = supply;
    renamed.name = "New";
    isEdited(*store, supply, renamed);
    Supplier stores = season.suppliers[1];
    stores.id = {"new"};
    Supplier free = stores;
    free.freeFreightFrom.reset();
    isEdited(*store, stores, free);
    Offer offer = season.offers[0];
    offer.id = {"new"};
    Offer dearer = offer;
    dearer.prices[0].each.minor += 100;
    isEdited(*store, offer, dearer);
    Order order = season.orders[0];
    order.id = {"new"};
    Order closed = order;
    closed.state = OrderState::Closed;
    isEdited(*store, order, closed);
    offer.supply = {"none"};
    QCOMPARE(ruleOf(edited(*store, RowChange<Offer>{{}, offer})), QByteArray("edit.unknown-reference"));
    order.supplier = {"none"};
    QCOMPARE(ruleOf(edited(*store, RowChange<Order>{{}, order})), QByteArray("edit.unknown-reference"));
    QVERIFY(withoutVersions(*store->load(fullSeasonNow)).offers == season.offers);
    QCOMPARE(found(*store), QByteArrayList());
}

void TestLedger::whatTheLedgerNamesStays() {
    const std::unique_ptr<Store> store = filled(true);
    const SeasonState season = *store->load(fullSeasonNow);
    const Supply& amber = season.supplies[0];
    QCOMPARE(ruleOf(edited(*store, RowChange<Supply>{amber, {}})), QByteArray("edit.still-used"));
    QCOMPARE(ruleOf(edited(*store, RowChange<Order>{season.orders[0], {}})), QByteArray("edit.still-used"));
    QCOMPARE(ruleOf(edited(*store, RowChange<Supplier>{season.suppliers[1], {}})), QByteArray("edit.still-used"));
    QCOMPARE(ruleOf(edited(*store, RowChange<Machine>{season.centre.machines[0], {}})), QByteArray("edit.still-used"));
    Supply cloth = amber;
    cloth.kind = SupplyKind::Cloth;
    QCOMPARE(ruleOf(edited(*store, RowChange<Supply>{amber, cloth})), QByteArray("edit.unit-stays"));
    Supply cleaner = amber;
    cleaner.kind = SupplyKind::Cleaner;
    QVERIFY(edited(*store, RowChange<Supply>{amber, cleaner}));
    QVERIFY(edited(*store, RowChange<Order>{season.orders[1], {}}));
    QVERIFY(edited(*store, RowChange<Supply>{season.supplies[1], {}}));  // never moved
    QCOMPARE(found(*store), QByteArrayList());
}

void TestLedger::badMovementsAreRefused() {
    const std::unique_ptr<Store> store = filled();
    QVERIFY(store->append({inContainer(received(100, 5'000), "A1")}));
    const std::vector<Movement> before = *store->movements(allRecords);
    const auto bad = [](Movement m, const auto& spoil) {
        spoil(m);
        return m;
    };
    const Movement good = received(101, 700);
    const Movement emptied = inContainer(moved(102, MovementKind::Opened, shelf, ajar, 5'000), "A1");
    Movement twice = emptied;
    twice.id = operation(103);
    const std::vector<std::pair<std::vector<Movement>, QByteArray>> all{
        {{moved(101, MovementKind::Received, shelf, supplier, 700)}, "ledger.negative-receipt"},
        {{bad(good, [](Movement& m) { m.entries[0].amount = Amount{-699}; })}, "ledger.unbalanced"},
        {{bad(good, [](Movement& m) { m.entries[0].key.supply = {"cloth"}; })}, "ledger.unbalanced"},
        {{bad(good, [](Movement& m) { m.entries.clear(); })}, "ledger.empty"},
        {{bad(good, [](Movement& m) { m.entries[1].key.supply = m.entries[0].key.supply = {"none"}; })}, "ledger.unknown-supply"},
        {{emptied, twice}, "ledger.container-empty"},
        {{moved(101, MovementKind::Used, tank, lane, 1)}, "ledger.below-zero"},
        {{moved(101, MovementKind::Opened, shelf, ajar, 5'000)}, "ledger.below-zero"},  // it lies in a container
        {{bad(good, [](Movement& m) { m.at = fullSeasonNow + hours(30); })}, "ledger.time"},
        {{bad(good, [](Movement& m) { m.person = PersonId{"nobody"}; })}, "record.unknown-reference"},
        {{bad(good,
              [](Movement& m) {
                  m.entries.push_back({{{"amber"}, {P::Tank, MachineId{"none"}, 0}, {}, {}}, Amount{0}});
              })},
         "ledger.amount"},
        {{bad(moved(101, MovementKind::Counted, loss, tank, 5),
              [](Movement& m) { m.entries[1].key.place.machine = MachineId{"none"}; })},
         "record.unknown-reference"},
        {{bad(good,
              [](Movement& m) {
                  m.source = MovementSource::Order;
                  m.sourceId = "ord9";
              })},
         "record.unknown-reference"},
        {{bad(good,
              [](Movement& m) {
                  m.source = MovementSource::Run;
                  m.sourceId = operation(999).value;
              })},
         "record.unknown-reference"},
        {{bad(good, [](Movement& m) { m.corrects = operation(999); })}, "record.unknown-reference"},
        {{bad(good, [](Movement& m) { m.reason = QString(10'001, 'x'); })}, "record.unstorable"},
        {{bad(good, [](Movement& m) { m.id = {}; })}, "record.unstorable"},
    };
    for (const auto& [movements, rule] : all) {
        std::vector<Record> records = asRecords(movements);
        records.insert(records.begin(), received(150, 1));  // all or nothing
        QCOMPARE(ruleOf(store->append(records)), rule);
        QVERIFY(*store->movements(allRecords) == before);
        QVERIFY(*store->stock() == balancesOf(before));
    }
    const Error refused = store->append({emptied, twice}).error();
    QCOMPARE(refused.kind, ErrorKind::Refused);
    QCOMPARE(refused.finding.subject, QString("Amber"));
    QVERIFY((refused.finding.values == std::vector<Value>{Microlitres{5'000}, Microlitres{0}, QString("A1")}));
    twice.flagged = true;
    QVERIFY(store->append({emptied, twice}));
    QCOMPARE(store->stock()->at({{"amber"}, shelf, "A1", {}}).value, -5'000);
    QCOMPARE(found(*store), QByteArrayList());
}

void TestLedger::badCountsAreRefused() {
    const std::unique_ptr<Store> store = filled();
    const auto rule = [&](const auto& spoil) {
        StockCount count = fullHistory().counts[0];
        count.id = operation(200);
        spoil(count);
        return ruleOf(store->append({count}));
    };
    QCOMPARE(rule([](StockCount& c) { c.lines[0].key.supply = {"none"}; }), QByteArray("count.unknown-supply"));
    QCOMPARE(rule([](StockCount& c) { c.lines[0].counted = Amount{-1}; }), QByteArray("count.amount"));
    QCOMPARE(rule([](StockCount& c) { c.lines[0].key.place = lane; }), QByteArray("count.place"));
    QCOMPARE(rule([](StockCount& c) {
                 c.lines[0].key.place = {P::Tank, MachineId{"none"}, 0};
             }),
             QByteArray("record.unknown-reference"));
    QCOMPARE(rule([](StockCount& c) { c.lines.clear(); }), QByteArray("count.empty"));
    QCOMPARE(rule([](StockCount& c) { c.corrects = operation(88); }), QByteArray("record.already-corrected"));
    QCOMPARE(store->counts(allRecords)->size(), size_t{2});
    QCOMPARE(rule([](StockCount&) {}), QByteArray());
    QCOMPARE(store->counts(allRecords)->size(), size_t{3});
    QVERIFY(store->stock()->all().empty());  // what a count finds is booked by a movement
}

void TestLedger::theSameAgainHasNoEffect() {
    const std::unique_ptr<Store> store = filled();
    const Movement receipt = received(100, 5'000);
    QVERIFY(store->append({receipt}));
    const auto counterBefore = store->changeCounter();
    QVERIFY(store->append({receipt}));
    QVERIFY(store->append({receipt, receipt}));
    QCOMPARE(*store->changeCounter(), *counterBefore);
    QCOMPARE(store->stock()->onHand({"amber"}).value, 5'000);
    Movement other = receipt;
    other.entries[0].amount = Amount{-6'000};
    other.entries[1].amount = Amount{6'000};
    QCOMPARE(ruleOf(store->append({other})), QByteArray("record.id-taken"));
    const Movement used = moved(101, MovementKind::Returned, shelf, supplier, 5'000);
    QVERIFY(store->append({used}));
    QVERIFY(store->append({receipt, used}));  // though nothing would be left to return
    QVERIFY(store->stock()->all().empty());
}

void TestLedger::aMovementIsTakenBackOnce() {
    const std::unique_ptr<Store> store = filled();
    const Movement receipt = received(100, 5'000);
    Movement wrong = counter(101, receipt);
    wrong.entries[1].key.container = "A1";
    QCOMPARE(ruleOf(store->append({receipt, wrong})), QByteArray("ledger.not-opposite"));
    wrong = counter(101, receipt);
    for (Entry& entry : wrong.entries)
        entry.amount = Amount{entry.amount.value / 2};
    QCOMPARE(ruleOf(store->append({receipt, wrong})), QByteArray("ledger.not-opposite"));
    const Movement back = counter(101, receipt);
    QVERIFY(store->append({receipt, back}));
    QCOMPARE(ruleOf(store->append({counter(102, receipt)})), QByteArray("record.already-corrected"));
    QVERIFY(store->stock()->all().empty());
    QVERIFY(store->append({counter(103, back)}));  // and that may be taken back in turn
    QCOMPARE(store->stock()->onHand({"amber"}).value, 5'000);
    // What has gone on cannot be taken back without a flag.
    const Movement opening = moved(104, MovementKind::Opened, shelf, ajar, 4'000);
    QVERIFY(store->append({opening}));
    Movement again = counter(106, counter(103, back));
    again.corrects = operation(103);
    QCOMPARE(ruleOf(store->append({again})), QByteArray("ledger.below-zero"));
    again.flagged = true;
    QVERIFY(store->append({again}));
    QCOMPARE(found(*store), QByteArrayList());
}

void TestLedger::recordsBookTogether() {
    const std::unique_ptr<Store> store = filled();
    RunLog run = fullHistory().runs[2];
    run.id = operation(300);
    Movement use = moved(301, MovementKind::Used, tank, lane, 8'000);
    use.source = MovementSource::Run;
    use.sourceId = run.id.value;
    QCOMPARE(ruleOf(store->append({use, run})), QByteArray("record.unknown-reference"));  // the run comes first
    QCOMPARE(ruleOf(store->append({run, use})), QByteArray("ledger.below-zero"));
    QVERIFY(store->movementsFrom(MovementSource::Run, run.id.value)->empty());
    QCOMPARE(store->history({run.time.begin, run.time.end})->runs.size(), fullHistory().runs.size() - 4);  // nor the run
    Movement opening = moved(302, MovementKind::Counted, loss, tank, 9'000);
    QVERIFY(store->append({run, opening, use}));
    QVERIFY((*store->movementsFrom(MovementSource::Run, run.id.value) == std::vector{use}));
    const Movement back = counter(303, use);
    QVERIFY(store->append({back}));
    QVERIFY((*store->movementsFrom(MovementSource::Run, run.id.value) == std::vector{use, back}));
    QVERIFY(store->movementsFrom(MovementSource::Level, run.id.value)->empty());
    QCOMPARE(found(*store), QByteArrayList());
}

void TestLedger::lateMovementsReachLaterMonths() {
    const std::unique_ptr<Store> store = filled();
    const auto monthsAgo = [](int n) { return hours(24 * 30 * n); };
    QVERIFY(
        store->append({received(100, 5'000, monthsAgo(10)), moved(101, MovementKind::Opened, shelf, ajar, 2'000, monthsAgo(6)),
                       moved(102, MovementKind::Returned, ajar, supplier, 2'000, monthsAgo(2))}));
    QVERIFY(closings(*store).contains("202601 amber shelf  0   5000"));
    QVERIFY(closings(*store).contains("202605 amber shelf  0   3000") &&
            closings(*store).contains("202605 amber open  0   2000"));
    QVERIFY(closings(*store).contains("202609 amber shelf  0   3000"));
    QCOMPARE(closings(*store).size(), 4);
    // The clock was set back, or somebody was late: before all, between, and in the month of another.
    QVERIFY(store->append({received(110, 70, monthsAgo(30)), received(111, 600, monthsAgo(8)), received(112, 1, monthsAgo(6))}));
    const QStringList kept = closings(*store);
    QVERIFY(kept.contains("202405 amber shelf  0   70") && kept.contains("202601 amber shelf  0   5070"));
    QVERIFY(kept.contains("202603 amber shelf  0   5670") && kept.contains("202605 amber shelf  0   3671"));
    QVERIFY(kept.contains("202609 amber shelf  0   3671"));
    QCOMPARE(kept.size(), 6);
    QCOMPARE(store->stock()->onHand({"amber"}).value, 3'671);
    QVERIFY(store->rebuildClosingBalances());
    QCOMPARE(closings(*store), kept);
    QCOMPARE(found(*store), QByteArrayList());
}

void TestLedger::rangesAreOfOneSupply() {
    const std::unique_ptr<Store> store = filled(true);
    const Movement receipt = fullHistory().movements[0];
    const Movement back = counter(400, receipt);
    Movement late = back;
    late.at = fullSeasonNow;
    late.flagged = true;
    QVERIFY(store->append({late}));
    const Span that{receipt.at, receipt.at + Seconds{1}};
    QVERIFY((*store->movements(that) == std::vector{receipt, late}));  // its correction lies elsewhere
    QVERIFY((*store->movements(that, SupplyId{"amber"}) == std::vector{receipt, late}));
    QVERIFY(store->movements(that, SupplyId{"cloth"})->empty());
    QCOMPARE(store->movements(allRecords, waterId)->size(), size_t{1});
    QVERIFY(store->movements({fullSeasonNow + hours(1), fullSeasonNow + hours(2)})->empty());
    QCOMPARE(store->counts({fullSeasonNow - minutes(481), fullSeasonNow - minutes(479)})->size(), size_t{2});
}

// After any sequence of movements, entries of every supply sum to zero, and what is on hand is their sum.
void TestLedger::whateverIsAcceptedBalances() {
    const std::unique_ptr<Store> store = filled();
    std::mt19937 random(20'261'112);
    std::vector<Movement> accepted;
    Balances stock;
    const std::vector<Supply> supplies = *store->supplies();
    for (int n = 0; n < 250; ++n) {
        const Movement m = anyMovement(1'000 + n, random);
        const bool sound = faultsOf(m, stock, supplies).empty();
        QCOMPARE(bool(store->append({m})), sound);
        if (!sound) continue;
        accepted.push_back(m);
        stock.add(m);
        QVERIFY(*store->stock() == stock);
    }
    QVERIFY(accepted.size() > 90 && accepted.size() < 230);
    const auto sums = store->database().rows("SELECT supply FROM movement_entries GROUP BY supply HAVING SUM(amount) <> 0");
    QVERIFY(sums && sums->empty());
    QVERIFY(balancesOf(*store->movements(allRecords)) == stock);
    const QStringList kept = closings(*store);
    QVERIFY(store->rebuildClosingBalances());
    QCOMPARE(closings(*store), kept);
    QCOMPARE(found(*store), QByteArrayList());
    // The centre file says the same.
    const CentreFile file = *exported(*store);
    QVERIFY(store->replaceAll(file.season, file.history, {}, fullSeasonNow));
    QVERIFY(*store->stock() == stock);
    QCOMPARE(closings(*store), kept);
}

void TestLedger::damageIsFound() {
    const auto damaged = [this](const QStringList& statements) {
        const std::unique_ptr<Store> store = filled(true);
        Database& database = store->database();
        QStringList all{"INSERT INTO replacing (centre_id) VALUES ('full')"};
        all += statements;
        for (const QString& sql : all << "DELETE FROM replacing")
            if (const auto done = database.change(sql); !done)
                qFatal("%s: %s", qPrintable(sql), done.error().finding.rule.constData());
        return found(*store);
    };
    const QString id = operation(80).value;
    QCOMPARE(damaged({}), QByteArrayList());
    QVERIFY(damaged({"UPDATE movement_entries SET amount = amount + 1 WHERE line = 0 AND movement_id = '" + id + "'"})
                .contains("check.unbalanced"));
    QCOMPARE(damaged({"UPDATE movement_entries SET amount = 2 * amount WHERE movement_id = '" + id + "'"}),
             QByteArrayList({"check.closing-balance"}));
    QCOMPARE(damaged({"UPDATE closing_balances SET amount = amount - 1 WHERE supply = 'water'"}),
             QByteArrayList({"check.closing-balance"}));
    QCOMPARE(damaged({"DELETE FROM closing_balances"}), QByteArrayList({"check.closing-balance"}));
    QCOMPARE(damaged({"UPDATE movements SET flagged = 0"}), QByteArrayList({"check.below-zero"}));
    QCOMPARE(damaged({"UPDATE movements SET kind = 'received' WHERE source = 'run'"}), QByteArrayList({"check.movement"}));
    QCOMPARE(damaged({"UPDATE movements SET source_id = 'ord9' WHERE source = 'order'"}),
             QByteArrayList({"check.unknown-source"}));
    QCOMPARE(damaged({"UPDATE movements SET source_id = 'r' WHERE source = 'run'"}), QByteArrayList({"check.unknown-source"}));
    QCOMPARE(damaged({"UPDATE movement_entries SET container = 'B' WHERE movement_id = '" + operation(83).value + "'",
                      "DELETE FROM closing_balances"}),
             QByteArrayList({"check.not-opposite", "check.below-zero", "check.closing-balance"}));
    QVERIFY(
        damaged({"UPDATE movement_entries SET month = 202001 WHERE movement_id = '" + id + "'"}).contains("check.entry-month"));
    QCOMPARE(damaged({"UPDATE orders SET lines = replace(lines, 'amber', 'ember')"}), QByteArrayList({"check.unknown-supply"}));
    QCOMPARE(damaged({"UPDATE stock_counts SET lines = replace(lines, 'cloth', 'clothe')"}),
             QByteArrayList({"count.unknown-supply"}));
    QCOMPARE(damaged({"UPDATE offers SET prices = replace(prices, 'GBP', 'USD')"}), QByteArrayList({"price.currency"}));
    QCOMPARE(damaged({"UPDATE movement_entries SET place = 'attic' WHERE movement_id = '" + id + "' AND line = 1"}),
             QByteArrayList({"store.damaged"}));
}

void TestLedger::importedLedgersMustHold() {
    const std::unique_ptr<Store> store = filled(true);
    const CentreFile before = *exported(*store);
    const auto refused = [&](const auto& spoil, const char* rule) {
        CentreFile file{fullSeason(), fullHistory()};
        spoil(file);
        QCOMPARE(ruleOf(store->replaceAll(file.season, file.history, {}, fullSeasonNow)), QByteArray(rule));
    };
    refused([](CentreFile& f) { f.history.movements[0].entries[0].amount += Amount{1}; }, "check.unbalanced");
    refused([](CentreFile& f) { f.history.movements[0].entries.clear(); }, "check.movement");
    refused([](CentreFile& f) { f.history.movements[4].flagged = false; }, "check.below-zero");
    refused([](CentreFile& f) { f.history.movements[0].sourceId = "ord9"; }, "check.unknown-source");
    refused([](CentreFile& f) { f.history.movements[3].entries[0].key.lot = "L8"; }, "check.not-opposite");
    refused([](CentreFile& f) { f.season.supplies.erase(f.season.supplies.begin()); }, "import.unknown-reference");
    refused([](CentreFile& f) { f.history.movements[1].entries[0].key.supply = {"none"}; }, "check.movement");
    refused([](CentreFile& f) { f.history.movements[1].id = f.history.movements[0].id; }, "import.unstorable");
    refused([](CentreFile& f) { f.season.orders[0].supplier = {"none"}; }, "import.unknown-reference");
    refused([](CentreFile& f) { f.history.counts[1].corrects = operation(999); }, "import.unknown-reference");
    QVERIFY(*exported(*store) == before);
    QCOMPARE(found(*store), QByteArrayList());
}

QTEST_GUILESS_MAIN(TestLedger)
#include "tst_ledger.moc"
