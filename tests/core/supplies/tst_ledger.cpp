// Movements and balances: what may be booked, what it leaves, and what takes it back.
#include "core/supplies/ledger.h"

#include "core/base/limits.h"

#include <QTest>

#include <random>

using namespace laneward;

namespace {

constexpr Instant start{1'790'000'000};
const Place shelf{Place::Kind::Shelf, {}, 0};
const Place opened{Place::Kind::Open, {}, 0};
const Place tank{Place::Kind::Tank, {"m"}, 0};
const Place wasteTank{Place::Kind::WasteTank, {"m"}, 0};
Place outside(Place::Kind kind) { return {kind, {}, 0}; }

std::vector<Supply> supplies() {
    Supply amber{{"amber"}, "Amber", SupplyKind::Conditioner};
    amber.container = Amount{5'000'000};
    Supply cloth{{"cloth"}, "Cloth", SupplyKind::Cloth};
    cloth.basis = UseBasis::PerLaneCleaned;
    cloth.container = Amount{200'000};
    return {amber, cloth};
}

Movement movement(MovementKind kind, std::vector<Entry> entries) {
    Movement m;
    m.id = {"1"};
    m.kind = kind;
    m.at = start;
    m.recordedAt = start;
    m.entries = std::move(entries);
    return m;
}

Movement moved(MovementKind kind, const Place& from, const Place& to, std::int64_t amount, const QString& container = {}) {
    const auto key = [&](const Place& place) { return StockKey{{"amber"}, place, place.isInside() ? container : QString(), {}}; };
    return movement(kind, {{key(from), Amount{-amount}}, {key(to), Amount{amount}}});
}

Movement receipt(std::int64_t amount, const QString& container = {}) {
    return moved(MovementKind::Received, outside(Place::Kind::Supplier), shelf, amount, container);
}

QByteArray rulesOf(const std::vector<Finding>& findings) {
    QByteArrayList rules;
    for (const Finding& finding : findings)
        rules << finding.rule;
    return rules.join(' ');
}

/// Any movement, mostly one of the usual ways.
Movement randomMovement(std::mt19937& random) {
    using P = Place::Kind;
    const auto pick = [&](size_t n) { return random() % n; };
    const std::vector<Place> places{
        shelf, opened, tank, wasteTank, outside(P::Supplier), outside(P::Lane), outside(P::Drain), outside(P::Loss)};
    const std::vector<std::tuple<MovementKind, size_t, size_t>> usual{
        {MovementKind::Received, 4, 0}, {MovementKind::Received, 4, 0}, {MovementKind::Opened, 0, 1},
        {MovementKind::Filled, 1, 2},   {MovementKind::Used, 2, 5},     {MovementKind::Used, 5, 3},
        {MovementKind::Counted, 7, 0},  {MovementKind::Counted, 0, 7},  {MovementKind::Disposed, 3, 6},
        {MovementKind::Returned, 0, 4}, {MovementKind::Spilled, 1, 7}};
    const auto [kind, from, to] = usual[pick(usual.size())];
    Movement m = movement(kind, {});
    m.id = {QString::number(random())};
    m.at = m.recordedAt = start + minutes(std::int64_t(pick(100'000)));
    m.flagged = pick(20) == 0;
    const bool odd = pick(5) == 0;
    for (size_t n = 1 + pick(3); n > 0; --n) {
        const SupplyId supply{pick(2) == 0 ? "amber" : "cloth"};
        const Amount amount{std::int64_t(1 + pick(500))};
        const QString container = QString::number(pick(2));
        m.entries.push_back({{supply, places[odd ? pick(8) : from], container, {}}, -amount});
        m.entries.push_back({{supply, places[odd ? pick(8) : to], container, {}}, amount});
    }
    if (pick(30) == 0) m.entries[0].amount += Amount{1};
    return m;
}

}  // namespace

class TestLedger : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void stockIsTheSumOfMovements();
    void emptyPlacesAreForgotten();
    void kindsHaveTheirWays_data();
    void kindsHaveTheirWays();
    void badMovementsAreNamed();
    void moreThanIsThereIsRefused();
    void entriesOfOnePlaceCountTogether();
    void aCounterMovementTakesBack();
    void aNegativePlaceMayBeFilled();
    void badCountsAreNamed();
    void whateverIsAcceptedBalances();
};

void TestLedger::stockIsTheSumOfMovements() {
    const std::vector<Movement> all{receipt(5'000, "a"), receipt(3'000, "b"),
                                    moved(MovementKind::Opened, shelf, opened, 5'000, "a"),
                                    moved(MovementKind::Filled, opened, tank, 2'000, "a")};
    const Balances stock = balancesOf(all);
    QCOMPARE(stock.onHand({"amber"}).value, 8'000);
    QCOMPARE(stock.in({"amber"}, shelf).value, 3'000);
    QCOMPARE(stock.in({"amber"}, opened).value, 3'000);
    QCOMPARE(stock.at({{"amber"}, tank, "a", {}}).value, 2'000);
    QCOMPARE(stock.at({{"amber"}, tank, "b", {}}).value, 0);
    QCOMPARE(stock.onHand({"cloth"}).value, 0);
    QCOMPARE(stock.onHand({"amb"}).value, 0);
}

void TestLedger::emptyPlacesAreForgotten() {
    Balances stock =
        balancesOf(std::vector{receipt(5'000), moved(MovementKind::Returned, shelf, outside(Place::Kind::Supplier), 5'000)});
    QVERIFY(stock.all().empty());
    QVERIFY(stock == Balances());
}

void TestLedger::kindsHaveTheirWays_data() {
    QTest::addColumn<int>("kind");
    QTest::addColumn<int>("from");
    QTest::addColumn<int>("to");
    QTest::addColumn<QByteArray>("rule");
    using P = Place::Kind;
    const auto row = [](MovementKind kind, P from, P to, const char* rule) {
        QTest::addRow("%d %d %d", int(kind), int(from), int(to)) << int(kind) << int(from) << int(to) << QByteArray(rule);
    };
    row(MovementKind::Received, P::Supplier, P::Shelf, "");
    row(MovementKind::Received, P::Opening, P::Open, "");
    row(MovementKind::Received, P::Shelf, P::Supplier, "ledger.negative-receipt ledger.wrong-way");
    row(MovementKind::Received, P::Supplier, P::Tank, "ledger.wrong-way");
    row(MovementKind::Opened, P::Shelf, P::Open, "");
    row(MovementKind::Opened, P::Open, P::Shelf, "ledger.wrong-way ledger.wrong-way");
    row(MovementKind::Filled, P::Open, P::Tank, "");
    row(MovementKind::Filled, P::Tank, P::Open, "ledger.wrong-way ledger.wrong-way");
    row(MovementKind::Used, P::Tank, P::Lane, "");
    row(MovementKind::Used, P::Lane, P::Tank, "");
    row(MovementKind::Used, P::Lane, P::WasteTank, "");
    row(MovementKind::Used, P::Supplier, P::Lane, "ledger.wrong-way");
    row(MovementKind::Spilled, P::Shelf, P::Loss, "");
    row(MovementKind::Spilled, P::Loss, P::Shelf, "ledger.wrong-way ledger.wrong-way");
    row(MovementKind::Counted, P::Loss, P::Shelf, "");
    row(MovementKind::Counted, P::Shelf, P::Loss, "");
    row(MovementKind::Counted, P::Opening, P::Tank, "");
    row(MovementKind::Counted, P::Supplier, P::Shelf, "ledger.wrong-way");
    row(MovementKind::Returned, P::Shelf, P::Supplier, "");
    row(MovementKind::Returned, P::Tank, P::Supplier, "ledger.wrong-way");
    row(MovementKind::Disposed, P::WasteTank, P::Drain, "");
    row(MovementKind::Disposed, P::Shelf, P::Lane, "ledger.wrong-way");
}

void TestLedger::kindsHaveTheirWays() {
    QFETCH(int, kind);
    QFETCH(int, from);
    QFETCH(int, to);
    QFETCH(QByteArray, rule);
    const auto place = [](int n) {
        const auto p = Place::Kind(n);
        const bool machine = p == Place::Kind::Tank || p == Place::Kind::WasteTank;
        return Place{p, machine ? MachineId{"m"} : MachineId{}, 0};
    };
    const Movement m = moved(MovementKind(kind), place(from), place(to), 10);
    QCOMPARE(rulesOf(faultsOf(m, supplies())), rule);
    if (rule.isEmpty())
        QCOMPARE(rulesOf(faultsOf(
                     [&] {
                         Movement counter = counterOf(m);
                         counter.recordedAt = start;
                         return counter;
                     }(),
                     supplies())),
                 QByteArray());
}

void TestLedger::badMovementsAreNamed() {
    const auto rule = [](const auto& spoil) {
        Movement m = receipt(5'000);
        spoil(m);
        return rulesOf(faultsOf(m, supplies()));
    };
    QCOMPARE(rule([](Movement&) {}), QByteArray());
    QCOMPARE(rule([](Movement& m) { m.entries.clear(); }), QByteArray("ledger.empty"));
    QCOMPARE(rule([](Movement& m) { m.entries.resize(1'001, m.entries[0]); }), QByteArray("ledger.too-long"));
    QCOMPARE(rule([](Movement& m) { m.entries[1].amount = Amount{5'001}; }), QByteArray("ledger.unbalanced"));
    QCOMPARE(rule([](Movement& m) { m.entries[1].key.supply = {"cloth"}; }), QByteArray("ledger.unbalanced ledger.unbalanced"));
    QCOMPARE(rule([](Movement& m) { m.entries[0].key.supply = {"none"}; }), QByteArray("ledger.unknown-supply"));
    QCOMPARE(rule([](Movement& m) { m.entries[0].amount = Amount{0}; }), QByteArray("ledger.amount"));
    QCOMPARE(rule([](Movement& m) { m.entries[1].amount = Amount{limits::stockAmount + 1}; }), QByteArray("ledger.amount"));
    QCOMPARE(rule([](Movement& m) { m.entries[1].amount = Amount{INT64_MAX}; }), QByteArray("ledger.amount"));
    QCOMPARE(rule([](Movement& m) { m.entries[1].key.place.machine = {"m"}; }), QByteArray("ledger.place"));
    QCOMPARE(rule([](Movement& m) { m.entries[1].key.place.slot = 1; }), QByteArray("ledger.place"));
    QCOMPARE(rule([](Movement& m) { m.at = m.recordedAt + hours(25); }), QByteArray("ledger.time"));
    QCOMPARE(rule([](Movement& m) { m.at = m.recordedAt - hours(24 * 3'000); }), QByteArray());  // entered late
}

void TestLedger::moreThanIsThereIsRefused() {
    const Balances stock = balancesOf(std::vector{receipt(5'000, "a")});
    const Movement once = moved(MovementKind::Opened, shelf, opened, 5'000, "a");
    QVERIFY(faultsOf(once, stock, supplies()).empty());
    Balances after = stock;
    after.add(once);
    const std::vector<Finding> twice = faultsOf(once, after, supplies());
    QVERIFY(
        (twice == std::vector{Finding{
                      Severity::Fault, "ledger.container-empty", "Amber", {Microlitres{5'000}, Microlitres{0}, QString("a")}}}));
    QVERIFY(overdraws(once, after) && !overdraws(once, stock));
    Movement flagged = once;
    flagged.flagged = true;
    QVERIFY(faultsOf(flagged, after, supplies()).empty());
    const Movement loose = moved(MovementKind::Used, tank, outside(Place::Kind::Lane), 1);
    QVERIFY((faultsOf(loose, stock, supplies()) ==
             std::vector{Finding{Severity::Fault, "ledger.below-zero", "Amber", {Microlitres{1}, Microlitres{0}}}}));
}

void TestLedger::entriesOfOnePlaceCountTogether() {
    const StockKey on{{"amber"}, shelf, {}, {}};
    const Movement m = movement(MovementKind::Counted, {{on, Amount{-5}}, {on, Amount{5}}});
    QVERIFY(!overdraws(m, {}));
    QVERIFY(faultsOf(m, Balances(), supplies()).empty());
    const Movement half =
        movement(MovementKind::Spilled,
                 {{on, Amount{-3}}, {on, Amount{-3}}, {{{"amber"}, outside(Place::Kind::Loss), {}, {}}, Amount{6}}});
    QVERIFY(overdraws(half, Balances({{on, Amount{5}}})));
    QVERIFY(!overdraws(half, Balances({{on, Amount{6}}})));
}

void TestLedger::aCounterMovementTakesBack() {
    Movement first = receipt(5'000, "a");
    first.flagged = true;
    first.person = {"ada"};
    first.sourceId = "order";
    first.source = MovementSource::Order;
    const Movement counter = counterOf(first);
    QVERIFY(counter.id.isEmpty() && counter.person.isEmpty() && !counter.flagged && counter.recordedAt == Instant{});
    QCOMPARE(counter.corrects, std::optional(first.id));
    QVERIFY(counter.at == first.at && counter.kind == first.kind && counter.sourceId == "order");
    QVERIFY(balancesOf(std::vector{first, counter}) == Balances());
    Movement again = counterOf(counter);
    QVERIFY(again.entries == first.entries);
}

void TestLedger::aNegativePlaceMayBeFilled() {
    const Balances stock({{{{"amber"}, shelf, {}, {}}, Amount{-700}}});
    QVERIFY(!overdraws(receipt(500), stock));
    QVERIFY(faultsOf(receipt(500), stock, supplies()).empty());
    QVERIFY(overdraws(moved(MovementKind::Opened, shelf, opened, 1), stock));
}

void TestLedger::badCountsAreNamed() {
    const auto rule = [](const auto& spoil) {
        StockCount c{{"c"}, start, {"ada"}, {{{{"amber"}, shelf, {}, {}}, Amount{5}}}, "", {}};
        spoil(c);
        return rulesOf(faultsOf(c, supplies()));
    };
    QCOMPARE(rule([](StockCount&) {}), QByteArray());
    QCOMPARE(rule([](StockCount& c) { c.lines[0].counted = Amount{0}; }), QByteArray());
    QCOMPARE(rule([](StockCount& c) { c.lines[0].counted = Amount{-1}; }), QByteArray("count.amount"));
    QCOMPARE(rule([](StockCount& c) { c.lines[0].counted = Amount{limits::stockAmount + 1}; }), QByteArray("count.amount"));
    QCOMPARE(rule([](StockCount& c) { c.lines[0].key.supply = {"none"}; }), QByteArray("count.unknown-supply"));
    QCOMPARE(rule([](StockCount& c) { c.lines[0].key.place = outside(Place::Kind::Drain); }), QByteArray("count.place"));
    QCOMPARE(rule([](StockCount& c) { c.lines[0].key.place.kind = Place::Kind::Tank; }), QByteArray("count.place"));
    QCOMPARE(rule([](StockCount& c) { c.lines.push_back(c.lines[0]); }), QByteArray("count.place-twice"));
    QCOMPARE(rule([](StockCount& c) { c.lines.clear(); }), QByteArray("count.empty"));
    QCOMPARE(rule([](StockCount& c) {
                 c.lines.clear();
                 c.corrects = OperationId{"d"};
             }),
             QByteArray());
}

// Whatever was accepted, entries of a supply sum to zero over inside and outside, and nothing unflagged lies below zero.
void TestLedger::whateverIsAcceptedBalances() {
    std::mt19937 random(20'261'112);
    int accepted = 0;
    int refused = 0;
    for (int round = 0; round < 50; ++round) {
        Balances stock;
        std::map<SupplyId, Amount> sums;
        bool flagged = false;
        for (int n = 0; n < 200; ++n) {
            const Movement m = randomMovement(random);
            if (!faultsOf(m, stock, supplies()).empty()) {
                ++refused;
                continue;
            }
            ++accepted;
            flagged = flagged || m.flagged;
            stock.add(m);
            for (const Entry& entry : m.entries)
                sums[entry.key.supply] += entry.amount;
            for (const auto& [supply, sum] : sums)
                QCOMPARE(sum.value, 0);
            for (const auto& [key, amount] : stock.all())
                QVERIFY(amount > Amount{0} || (flagged && amount < Amount{0}));
        }
    }
    QVERIFY(accepted > 300 && refused > 300);
}

QTEST_GUILESS_MAIN(TestLedger)
#include "tst_ledger.moc"
