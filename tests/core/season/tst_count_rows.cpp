// Which places are counted, and what a count of them says, with amounts worked out by hand.
#include "core/season/count_rows.h"

#include "core/season/bookings.h"
#include "core/season/output_drift.h"

#include <QTest>

using namespace laneward;

namespace {

const Place shelf{Place::Kind::Shelf, {}, 0};
const Place open{Place::Kind::Open, {}, 0};
const Place amberTank{Place::Kind::Tank, MachineId{"m"}, 0};
const Place washTank{Place::Kind::Tank, MachineId{"m"}, cleanerProduct};
const Place wasteTank{Place::Kind::WasteTank, MachineId{"m"}, 0};

SeasonState house(std::map<StockKey, Amount> stock) {
    SeasonState season;
    Machine machine{MachineId{"m"}, "Heron"};
    machine.conditioners = {"Amber", ""};
    machine.cleaner = "Wash";
    season.centre.machines = {machine};
    Supply amber{{"amber"}, "Amber", SupplyKind::Conditioner};
    amber.container = Amount{5'000'000};
    Supply wash{{"wash"}, "Wash", SupplyKind::Cleaner};
    wash.waterParts = 4;
    wash.container = Amount{10'000'000};
    Supply blades{{"blades"}, "Blades", SupplyKind::Part};
    blades.basis = UseBasis::WhenServiced;
    blades.container = Amount{1};
    season.supplies = {wash, blades, amber};
    season.stock = Balances(std::move(stock));
    return season;
}

std::vector<StockKey> keysOf(const std::vector<CountRow>& rows) {
    std::vector<StockKey> keys;
    for (const CountRow& row : rows)
        keys.push_back(row.key);
    return keys;
}

}  // namespace

class CountRowsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void withoutSuppliesNothingIsCounted() {
        SeasonState season = house({});
        season.supplies.clear();
        QVERIFY(rowsToCount(season).empty());
    }

    void aNewStoreIsLookedIntoEverywhere() {
        const auto rows = rowsToCount(house({}));
        QCOMPARE(keysOf(rows), (std::vector<StockKey>{{{"amber"}, shelf, {}, {}},
                                                      {{"amber"}, open, {}, {}},
                                                      {{"amber"}, amberTank, {}, {}},
                                                      {{"wash"}, shelf, {}, {}},
                                                      {{"wash"}, open, {}, {}},
                                                      {{"wash"}, washTank, {}, {}},
                                                      {{"blades"}, shelf, {}, {}},
                                                      {wasteId, wasteTank, {}, {}}}));
        for (const CountRow& row : rows)
            QCOMPARE(row.books, Amount{0});
    }

    void knownLotsStandEachForItself() {
        const StockKey a{{"amber"}, shelf, {}, "A"};
        const StockKey b{{"amber"}, shelf, "7", "B"};
        const auto rows = rowsToCount(house({{a, {5'000}}, {b, {10'000}}}));
        QCOMPARE(rows[0].key, a);
        QCOMPARE(rows[0].books, Amount{5'000});
        QCOMPARE(rows[1].key, b);
        QCOMPARE(rows[2].key, (StockKey{{"amber"}, open, {}, {}}));
    }

    void retiredSuppliesAreCountedWhileAnyIsLeft() {
        SeasonState season = house({});
        season.supplies[2].retired = true;
        season.centre.machines.clear();
        for (const CountRow& row : rowsToCount(season))
            QVERIFY(row.key.supply != SupplyId{"amber"});
        const StockKey left{{"amber"}, open, {}, {}};
        season.stock = Balances({{left, {700}}});
        QCOMPARE(rowsToCount(season).front(), (CountRow{left, SupplyKind::Conditioner, {700}, 0}));
    }

    /// 1 of concentrate in 5: a tank with 200 mL and 800 mL of water holds 1 L; 2 L counted are 400 mL and 1.6 L of water.
    void aTankIsCountedAsItIsMixed() {
        const SeasonState season = house({{{{"wash"}, washTank, {}, {}}, {200'000}}, {{waterId, washTank, {}, {}}, {800'000}}});
        const auto rows = rowsToCount(season);
        const CountRow tank = rows[5];
        QCOMPARE(tank.books, Amount{1'000'000});
        const auto lines = linesOf(tank, {2'000'003});
        QCOMPARE(lines,
                 (std::vector<CountLine>{{{{"wash"}, washTank, {}, {}}, {400'000}}, {{waterId, washTank, {}, {}}, {1'600'003}}}));
        // Booked, the books hold what was counted.
        Books books{season.centre, season.supplies, season.patterns, season.stock, {}};
        bookingsOf(StockCount{{"count"}, {}, {}, lines, {}, {}}, books);
        QCOMPARE(inTank(books.stock, season.supplies[0], washTank), Amount{2'000'003});
        QCOMPARE(linesOf(rows[0], {7}), (std::vector<CountLine>{{rows[0].key, {7}}}));
    }

    void whatTheMachinesRecoveredIsCountedLast() {
        const auto rows = rowsToCount(house({{{wasteId, wasteTank, {}, {}}, {4'000}}}));
        QCOMPARE(rows.back(), (CountRow{{wasteId, wasteTank, {}, {}}, SupplyKind::Cleaner, {4'000}, 0}));
    }
};

QTEST_GUILESS_MAIN(CountRowsTest)
#include "tst_count_rows.moc"
