// Lots of one supply: small cases by hand, and everything tried.
#include "core/supplies/lot_sizes.h"

#include <QTest>

#include <random>

using namespace laneward::ordering;

namespace {

LotProblem problemOf(std::vector<LotPeriod> periods, const std::vector<PackOffer>& offers, int mostUnits) {
    return {std::move(periods), PackCosts(offers, mostUnits)};
}

/// Every sequence of lots.
Cost tryEverything(const LotProblem& problem, const std::vector<Cost>& orderCosts, size_t t = 0, int bought = 0) {
    if (t == problem.periods.size()) return 0;
    Cost best = impossible;
    const LotPeriod& period = problem.periods[t];
    for (int y = std::max(bought, period.least); y <= std::min(period.most, problem.purchase.mostUnits()); ++y) {
        const Cost purchase = problem.purchase.of(y - bought);
        const Cost rest = tryEverything(problem, orderCosts, t + 1, y);
        if (!isPossible(purchase) || !isPossible(rest)) continue;
        best = std::min(best, purchase + (y > bought ? orderCosts[t] : 0) + period.holding * y + rest);
    }
    return best;
}

}  // namespace

class LotSizesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void packsMakeUpUnits();
    void aBreakMayMakeMoreCheaper();
    void boundsAreKept();
    void noneWhereBoundsCross();
    void likeEverythingTried();
    void narrowingKeepsTheBest();
};

void LotSizesTest::packsMakeUpUnits() {
    const PackCosts costs({{2, {{1, 10}, {3, 8}}}, {5, {{1, 21}}}}, 11);
    QVERIFY(!isPossible(costs.of(1)) && !isPossible(costs.of(3)));
    QCOMPARE(costs.of(0), Cost{0});
    QCOMPARE(costs.of(2), Cost{10});
    QCOMPARE(costs.of(5), Cost{21});
    QCOMPARE(costs.of(6), Cost{24});  // three of two: the break counts for all
    QCOMPARE(costs.of(11), Cost{45});
    QCOMPARE(costs.packsFor(11), (std::vector<int>{3, 1}));
    QCOMPARE(costs.packsFor(10), (std::vector<int>{5, 0}));  // 40 against 42
}

void LotSizesTest::aBreakMayMakeMoreCheaper() {
    // 4 are needed at 10; 5 cost 8 each.
    const LotProblem problem = problemOf({{4, 9, 0}}, {{1, {{1, 10}, {5, 8}}}}, 9);
    const auto plan = bestLots(problem, std::vector<Cost>{1});
    QVERIFY(plan);
    QCOMPARE(plan->lots, std::vector<int>{4});  // 40 either way: the smaller
    QCOMPARE(bestLots(problemOf({{4, 9, 0}}, {{1, {{1, 10}, {5, 7}}}}, 9), std::vector<Cost>{1})->lots, std::vector<int>{5});
}

void LotSizesTest::boundsAreKept() {
    // One order would be cheapest; no more than 3 fit in the first period.
    const auto plan = bestLots(problemOf({{1, 3, 1}, {4, 9, 1}, {4, 9, 1}}, {{1, {{1, 10}}}}, 9), std::vector<Cost>{50, 50, 50});
    QVERIFY(plan);
    QCOMPARE(plan->lots, (std::vector<int>{1, 3, 0}));
    QCOMPARE(plan->cost, Cost{40 + 100 + 1 + 4 + 4});
}

void LotSizesTest::noneWhereBoundsCross() {
    QVERIFY(!bestLots(problemOf({{2, 1, 0}}, {{1, {{1, 10}}}}, 9), std::vector<Cost>{0}));
    QVERIFY(!bestLots(problemOf({{1, 3, 0}, {4, 2, 0}}, {{1, {{1, 10}}}}, 9), std::vector<Cost>{0, 0}));
    QVERIFY(!bestLots(problemOf({{1, 2, 0}}, {{3, {{1, 10}}}}, 9), std::vector<Cost>{0}));  // packs of three
    QVERIFY(bestLots(problemOf({}, {{1, {{1, 10}}}}, 9), {}));
}

void LotSizesTest::likeEverythingTried() {
    int possible = 0;
    for (unsigned seed = 1; seed <= 400; ++seed) {
        std::mt19937 random(seed);
        const auto between = [&](int least, int most) { return least + int(random() % unsigned(most - least + 1)); };
        std::vector<LotPeriod> periods;
        std::vector<Cost> orderCosts;
        int least = -between(0, 2);
        for (int t = 0; t < 4; ++t) {
            least += between(0, 3);
            periods.push_back({std::max(0, least), least + between(0, 5), between(0, 4)});
            orderCosts.push_back(between(0, 30));
        }
        const PackOffer small{1, {{1, between(8, 12)}, {3, between(5, 8)}}};
        const PackOffer large{between(2, 3), {{1, between(10, 30)}}};
        const LotProblem problem = problemOf(periods, seed % 3 == 0 ? std::vector{large} : std::vector{small, large}, 12);
        const auto plan = bestLots(problem, orderCosts);
        const Cost best = tryEverything(problem, orderCosts);
        QCOMPARE(bool(plan), isPossible(best));
        if (!plan) continue;
        ++possible;
        QCOMPARE(plan->cost, best);
    }
    QVERIFY(possible > 150);
}

void LotSizesTest::narrowingKeepsTheBest() {
    const LotProblem problem = problemOf({{1, 40, 2}, {9, 40, 2}, {20, 40, 2}}, {{1, {{1, 10}, {12, 9}}}}, 40);
    CostToGo costs(problem.periods, 40);
    OrderCosts prices(3, std::vector<Cost>(41, 0));
    for (std::vector<Cost>& price : prices) {
        for (int x = 1; x <= 40; ++x)
            price[size_t(x)] = problem.purchase.of(x) + 25;
    }
    costs.solve(prices);
    const Cost best = costs.least();
    const std::int64_t before = costs.work();
    costs.narrow(best);
    costs.solve(prices);
    QCOMPARE(costs.least(), best);
    QVERIFY(costs.work() < before / 2);
    costs.narrow(best - 1);
    costs.solve(prices);
    QVERIFY(!isPossible(costs.least()));
}

QTEST_GUILESS_MAIN(LotSizesTest)
#include "tst_lot_sizes.moc"
