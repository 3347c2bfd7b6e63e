// What records move in the stock ledger, with amounts worked out by hand.
#include "core/season/bookings.h"

#include "core/season/output_drift.h"

#include <QTest>

using namespace laneward;

namespace {

constexpr Instant start{1'790'000'000};

/// 20 mL a lane.
Pattern pattern() {
    Pattern p{PatternId{"p"}, "P", {}, feet(40)};
    p.strokes = {{Direction::Out, 1, 20, 10, Microlitres{100}, feet(0), feet(20), 0}};
    p.edition = 1;
    return p;
}

struct House {
    Centre centre;
    std::vector<Supply> supplies;
    std::vector<Pattern> patterns{pattern()};

    House() {
        Machine m{MachineId{"m"}, "Heron"};
        m.capacity.cleanerPerLane = millilitres(100);
        m.conditioners = {"Amber", ""};
        m.cleaner = "Wash";
        centre.machines = {m};
        Supply amber{{"amber"}, "Amber", SupplyKind::Conditioner};
        amber.container = Amount{5'000'000};
        Supply wash{{"wash"}, "Wash", SupplyKind::Cleaner};
        wash.waterParts = 4;
        wash.container = Amount{10'000'000};
        Supply cloth{{"cloth"}, "Cloth", SupplyKind::Cloth};
        cloth.basis = UseBasis::PerLaneCleaned;
        cloth.usualUse = Amount{150};
        supplies = {amber, wash, cloth};
    }
    Books books(Balances stock = {}) const { return {centre, supplies, patterns, std::move(stock), {}}; }
};

RunLog run(int lanes) {
    RunLog r;
    r.id = {"run"};
    r.machine = MachineId{"m"};
    r.person = PersonId{"idris"};
    r.time = {start, start + hours(1)};
    r.pattern = PatternId{"p"};
    r.patternVersion = 1;
    r.use.laneRuns = lanes;
    r.use.waste = millilitres(90) * lanes;
    return r;
}

const Place shelf{Place::Kind::Shelf, {}, 0};
const Place open{Place::Kind::Open, {}, 0};
const Place amberTank{Place::Kind::Tank, MachineId{"m"}, 0};
const Place washTank{Place::Kind::Tank, MachineId{"m"}, cleanerProduct};
const Place wasteTank{Place::Kind::WasteTank, MachineId{"m"}, 0};

LevelReading reading(std::int64_t amberMl, std::int64_t washMl, std::int64_t wasteMl) {
    LevelReading r;
    r.id = {"reading"};
    r.levels.machine = MachineId{"m"};
    r.levels.at = start + hours(2);
    r.levels.conditioner = {millilitres(amberMl), {}};
    r.levels.cleaner = millilitres(washMl);
    r.levels.waste = millilitres(wasteMl);
    return r;
}

Balances with(std::initializer_list<std::pair<StockKey, std::int64_t>> amounts) {
    std::map<StockKey, Amount> all;
    for (const auto& [key, ml] : amounts)
        all[key] = Amount{ml * 1'000};
    return Balances(std::move(all));
}

/// Sums of entries by supply over all places: all must be nothing.
bool balances(const std::vector<Movement>& movements) {
    for (const Movement& movement : movements) {
        std::map<SupplyId, Amount> sums;
        for (const Entry& entry : movement.entries)
            sums[entry.key.supply] += entry.amount;
        for (const auto& [supply, sum] : sums) {
            if (sum != Amount{0}) return false;
        }
    }
    return true;
}

std::vector<MovementKind> kindsOf(const std::vector<Movement>& movements) {
    std::vector<MovementKind> kinds;
    for (const Movement& movement : movements)
        kinds.push_back(movement.kind);
    return kinds;
}

}  // namespace

class BookingsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// 10 lanes: 200 mL of conditioner, 1 L of cleaner = 200 mL of concentrate and 800 mL of water, 1.5 m of cloth.
    void aRunUsesWhatItsRecipeSays() {
        House house;
        Books books = house.books(with({{{{"amber"}, amberTank, {}, {}}, 1'000},
                                        {{{"wash"}, washTank, {}, {}}, 500},
                                        {{waterId, washTank, {}, {}}, 2'000},
                                        {{{"cloth"}, open, {}, {}}, 2}}));
        const auto movements = bookingsOf(run(10), books);
        QVERIFY(balances(movements));
        QCOMPARE(books.stock.in({"amber"}, amberTank), Amount{800'000});
        QCOMPARE(books.stock.in({"wash"}, washTank), Amount{300'000});
        QCOMPARE(books.stock.in(waterId, washTank), Amount{1'200'000});
        QCOMPARE(books.stock.in(wasteId, wasteTank), Amount{900'000});
        QCOMPARE(books.stock.in({"cloth"}, open), Amount{500});
        QCOMPARE(movements.size(), size_t(2));
        QVERIFY(!movements.front().flagged);
        QCOMPARE(movements.front().sourceId, QString("run"));
    }

    void aRunIsBookedWithWhatTheMachineReallyTakes() {
        House house;
        Books books = house.books(with({{{{"amber"}, amberTank, {}, {}}, 1'000}}));
        books.factors[{MachineId{"m"}, 0}] = 1.05;
        bookingsOf(run(10), books);
        QCOMPARE(books.stock.in({"amber"}, amberTank), Amount{790'000});
    }

    void whatIsNotThereIsFlagged() {
        House house;
        Books books = house.books();
        const auto movements = bookingsOf(run(10), books);
        QVERIFY(balances(movements));
        QVERIFY(movements.front().flagged);
        QCOMPARE(books.stock.in({"amber"}, amberTank), Amount{-200'000});
    }

    void aVoidRunBooksNothing() {
        House house;
        Books books = house.books();
        RunLog never = run(10);
        never.result = RunResult::Void;
        QVERIFY(bookingsOf(never, books).empty());
    }

    void theSameRecordBooksTheSame() {
        House house;
        Books once = house.books();
        Books again = house.books();
        QCOMPARE(bookingsOf(run(3), once).front(), bookingsOf(run(3), again).front());
    }

    /// 800 mL are booked in the tank; 1,150 mL were poured to reach 2,000: 50 mL less than booked... 800 + 1,150 - 2,000 = -50
    /// are given back. The open can holds 400 mL of lot A, then a sealed one of 5 L of lot B is opened.
    void aFillOpensWhatItNeedsAndBooksTheDifference() {
        House house;
        Books books = house.books(with(
            {{{{"amber"}, amberTank, {}, {}}, 800}, {{{"amber"}, open, {}, "A"}, 400}, {{{"amber"}, shelf, {}, "B"}, 10'000}}));
        LevelReading fill = reading(2'000, 0, 0);
        fill.poured = Poured{{millilitres(1'150), {}}, {}, true};
        const auto movements = bookingsOf(fill, books);
        QVERIFY(balances(movements));
        QCOMPARE(kindsOf(movements), (std::vector{MovementKind::Opened, MovementKind::Filled, MovementKind::Used}));
        QCOMPARE(books.stock.in({"amber"}, amberTank), Amount{2'000'000});
        QCOMPARE(books.stock.at({{"amber"}, open, {}, "A"}), Amount{0});
        QCOMPARE(books.stock.at({{"amber"}, open, {}, "B"}), Amount{4'250'000});
        QCOMPARE(books.stock.at({{"amber"}, shelf, {}, "B"}), Amount{5'000'000});
        QCOMPARE(movements.back().entries.front().amount, Amount{50'000});
    }

    void aLevelThatRoseWasFilled() {
        House house;
        Books books = house.books(with({{{{"amber"}, amberTank, {}, {}}, 500}, {{{"amber"}, open, {}, {}}, 3'000}}));
        const auto movements = bookingsOf(reading(1'500, 0, 0), books);
        QCOMPARE(kindsOf(movements), std::vector{MovementKind::Filled});
        QCOMPARE(books.stock.in({"amber"}, open), Amount{2'000'000});
    }

    void aLevelThatFellWasUsed() {
        House house;
        Books books = house.books(with(
            {{{{"amber"}, amberTank, {}, {}}, 500}, {{{"wash"}, washTank, {}, {}}, 200}, {{waterId, washTank, {}, {}}, 800}}));
        const auto movements = bookingsOf(reading(400, 500, 0), books);
        QVERIFY(balances(movements));
        QCOMPARE(kindsOf(movements), (std::vector{MovementKind::Used, MovementKind::Used}));
        QCOMPARE(books.stock.in({"wash"}, washTank), Amount{100'000});
        QCOMPARE(books.stock.in(waterId, washTank), Amount{400'000});
    }

    /// One fill of cleaner takes concentrate and water in the supply's ratio.
    void cleanerIsMixedInTheTank() {
        House house;
        Books books = house.books(with({{{{"wash"}, open, {}, {}}, 10'000}}));
        LevelReading fill = reading(0, 5'000, 0);
        fill.poured = Poured{{}, millilitres(5'000), true};
        const auto movements = bookingsOf(fill, books);
        QVERIFY(balances(movements));
        QCOMPARE(books.stock.in({"wash"}, washTank), Amount{1'000'000});
        QCOMPARE(books.stock.in(waterId, washTank), Amount{4'000'000});
        QCOMPARE(books.stock.in({"wash"}, open), Amount{9'000'000});
    }

    void fillingFromNothingIsFlagged() {
        House house;
        Books books = house.books();
        LevelReading fill = reading(1'000, 0, 0);
        fill.poured = Poured{{millilitres(1'000), {}}, {}, true};
        const auto movements = bookingsOf(fill, books);
        QVERIFY(movements.front().flagged);
        QCOMPARE(books.stock.in({"amber"}, open), Amount{-1'000'000});
    }

    void emptiedWasteWentDownTheDrain() {
        House house;
        Books books = house.books(with({{{wasteId, wasteTank, {}, {}}, 4'000}}));
        const auto movements = bookingsOf(reading(0, 0, 0), books);
        QCOMPARE(kindsOf(movements), std::vector{MovementKind::Disposed});
        QCOMPARE(books.stock.in(wasteId, wasteTank), Amount{0});
    }

    void aCountBooksTheDifference() {
        House house;
        const StockKey key{{"amber"}, shelf, {}, "B"};
        Books books = house.books(with({{key, 10'000}}));
        StockCount count{{"count"}, start, {}, {{key, Amount{9'000'000}}}, {}, {}};
        const auto movements = bookingsOf(count, books);
        QVERIFY(balances(movements));
        QCOMPARE(movements.size(), size_t(1));
        QCOMPARE(movements.front().kind, MovementKind::Counted);
        QCOMPARE(books.stock.at(key), Amount{9'000'000});
        count.lines.front().counted = Amount{9'000'000};
        QVERIFY(bookingsOf(count, books).empty());
    }

    /// 5 L counted as 5,000 L: somebody typed millilitres.
    void aCountInTheWrongUnitIsDoubted() {
        House house;
        const StockKey key{{"amber"}, shelf, {}, {}};
        Books books = house.books(with({{key, 5'000}}));
        const auto doubted = [&](std::int64_t ml) {
            return !doubtsOf({{"count"}, start, {}, {{key, Amount{ml * 1'000}}}, {}, {}}, books).empty();
        };
        QVERIFY(doubted(5'000'000));
        QVERIFY(!doubted(20'000));
        QVERIFY(!doubted(0));  // no more than one container is missing
    }

    /// A first count has nothing to be compared with but the size of a container (5 L).
    void aFirstCountInTheWrongUnitIsDoubted() {
        House house;
        const Books books = house.books();
        const auto doubted = [&](Place place, std::int64_t ml) {
            return !doubtsOf({{"count"}, start, {}, {{{{"amber"}, place, {}, {}}, Amount{ml * 1'000}}}, {}, {}}, books).empty();
        };
        QVERIFY(!doubted(shelf, 40'000));
        QVERIFY(doubted(shelf, 4'000'000));  // 4,000 mL taken for litres
        QVERIFY(doubted(shelf, 40));         // 40 L taken for millilitres: no sealed container holds that little
        QVERIFY(!doubted(open, 40));
        QVERIFY(!doubted(shelf, 0));
    }

    void aCorrectionTakesBackWhatWasBooked() {
        House house;
        const Balances before = with({{{{"amber"}, amberTank, {}, {}}, 1'000}});
        Books books = house.books(before);
        const auto booked = bookingsOf(run(10), books);
        const auto back = takenBack(booked, {{"correction"}, {"nell"}, start + hours(3)}, books);
        QCOMPARE(books.stock, before);
        QCOMPARE(back.size(), booked.size());
        QCOMPARE(back.front().corrects, std::optional(booked.front().id));
        QVERIFY(balances(back));
        std::vector<Movement> all = booked;
        all.insert(all.end(), back.begin(), back.end());
        QVERIFY(takenBack(all, {{"another"}, {}, start + hours(4)}, books).empty());
    }

    void anOpeningSaysWhatIsInTheTanks() {
        House house;
        Books books = house.books();
        openingOf(house.supplies[1], {reading(700, 2'500, 0).levels}, books);
        QCOMPARE(books.stock.in({"wash"}, washTank), Amount{500'000});
        QCOMPARE(books.stock.in(waterId, washTank), Amount{2'000'000});
        QCOMPARE(books.stock.onHand({"amber"}), Amount{0});
    }
};

QTEST_GUILESS_MAIN(BookingsTest)
#include "tst_bookings.moc"
