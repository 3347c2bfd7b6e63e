// Joint orders: small cases by hand, everything tried, and what must hold for any.
#include "core/supplies/joint_search.h"
#include "tests/support/random_orders.h"

#include <QTest>

#include <algorithm>

using namespace laneward::ordering;
using support::OrderCase;

namespace {

constexpr std::int64_t effort = 100'000'000;

/// One unit a pack, at `each`.
LotProblem plainSupply(std::vector<LotPeriod> periods, Cost each, int mostUnits) {
    return {std::move(periods), PackCosts({{1, {{1, each}}}}, mostUnits)};
}

bool keepsBounds(const JointProblem& problem, const JointPlan& plan) {
    for (size_t i = 0; i < plan.lots.size(); ++i) {
        int bought = 0;
        for (size_t t = 0; t < plan.lots[i].size(); ++t) {
            bought += plan.lots[i][t];
            const LotPeriod& period = problem.supplies[i].periods[t];
            if (plan.lots[i][t] < 0 || bought < period.least || bought > period.most) return false;
        }
    }
    return true;
}

class Everything {
public:
    explicit Everything(const JointProblem& problem) : m_problem(problem) {
        m_lots.assign(problem.supplies.size(), std::vector<int>(problem.supplies.front().periods.size(), 0));
    }
    Cost best(size_t supply = 0, size_t period = 0, int bought = 0) {
        if (supply == m_lots.size()) return costOf(m_problem, m_lots);
        if (period == m_lots[supply].size()) return best(supply + 1);
        Cost least = impossible;
        const LotProblem& own = m_problem.supplies[supply];
        const int most = std::min(own.periods[period].most, own.purchase.mostUnits());
        for (int y = std::max(bought, own.periods[period].least); y <= most; ++y) {
            m_lots[supply][period] = y - bought;
            if (isPossible(own.purchase.of(y - bought))) least = std::min(least, best(supply, period + 1, y));
        }
        m_lots[supply][period] = 0;
        return least;
    }

private:
    const JointProblem& m_problem;
    std::vector<std::vector<int>> m_lots;
};

JointProblem small(unsigned seed) {
    JointProblem problem = support::randomOrders(seed, {2, 3, 3}).problem;
    for (LotProblem& supply : problem.supplies) {
        for (LotPeriod& period : supply.periods)
            period.most = std::min(period.most, 7);
    }
    problem.terms.freeFrom = isPossible(problem.terms.freeFrom) ? problem.terms.freeFrom / 3 : impossible;
    problem.terms.minimum /= 3;
    return problem;
}

}  // namespace

class JointOrdersTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void freightIsShared();
    void freightFallsAway();
    void theMinimumIsKept();
    void noPlanBelowTheMinimum();
    void nothingToOrder();
    void likeEverythingTried();
    void cheaperNeverCostsMore();
    void moreStockNeverCostsMore();
    void orderOfSuppliesDoesNotMatter();
    void aNarrowPassSaysWhatItMissed();
    void boundsNeverCross();
    void lessEffortKeepsTheBounds();
    void canBeCancelled();
};

void JointOrdersTest::freightIsShared() {
    // Each alone would order when it needs; together the later one comes along.
    const JointProblem problem{{plainSupply({{1, 9, 1}, {1, 9, 1}}, 10, 9), plainSupply({{0, 9, 1}, {1, 9, 1}}, 10, 9)},
                               {5, impossible, 0}};
    const JointPlan plan = bestOrders(problem, effort, {});
    QVERIFY(plan.isProven());
    QCOMPARE(plan.lots, (std::vector<std::vector<int>>{{1, 0}, {1, 0}}));
    QCOMPARE(plan.cost, Cost{20 + 5 + 2 + 2});
}

void JointOrdersTest::freightFallsAway() {
    JointProblem problem{{plainSupply({{1, 9, 1}, {3, 9, 1}}, 10, 9)}, {50, 30, 0}};
    JointPlan plan = bestOrders(problem, effort, {});
    QVERIFY(plan.isProven());
    QCOMPARE(plan.lots, (std::vector<std::vector<int>>{{3, 0}}));  // 30 and no freight
    problem.terms.freeFrom = 31;
    plan = bestOrders(problem, effort, {});
    QCOMPARE(plan.lots, (std::vector<std::vector<int>>{{4, 0}}));  // one more than is needed is cheaper than the freight
    QCOMPARE(plan.cost, Cost{40 + 4 + 4});
}

void JointOrdersTest::theMinimumIsKept() {
    const JointProblem problem{{plainSupply({{1, 9, 1}, {2, 9, 1}}, 10, 9), plainSupply({{0, 1, 1}, {0, 1, 1}}, 7, 9)},
                               {0, impossible, 25}};
    const JointPlan plan = bestOrders(problem, effort, {});
    QVERIFY(plan.isProven());
    QCOMPARE(plan.lots, (std::vector<std::vector<int>>{{2, 0}, {1, 0}}));  // the cheaper way to reach 25
}

void JointOrdersTest::noPlanBelowTheMinimum() {
    const JointPlan plan = bestOrders({{plainSupply({{1, 2, 1}}, 10, 9)}, {0, impossible, 25}}, effort, {});
    QVERIFY(!plan.isFound());
    QVERIFY(plan.isProven());
    QVERIFY(!bestOrders({{plainSupply({{2, 1, 1}}, 10, 9)}, {}}, effort, {}).isFound());
}

void JointOrdersTest::nothingToOrder() {
    QCOMPARE(bestOrders({{}, {5, impossible, 0}}, effort, {}).cost, Cost{0});
    const JointPlan plan = bestOrders({{plainSupply({{0, 5, 1}, {0, 5, 1}}, 10, 5)}, {5, impossible, 20}}, effort, {});
    QCOMPARE(plan.cost, Cost{0});
    QVERIFY(plan.isProven());
}

void JointOrdersTest::likeEverythingTried() {
    int possible = 0;
    for (unsigned seed = 1; seed <= 150; ++seed) {
        const JointProblem problem = small(seed);
        const JointPlan plan = bestOrders(problem, effort, {});
        const Cost best = Everything(problem).best();
        QVERIFY2(plan.isProven(), qPrintable(QString::number(seed)));
        QCOMPARE(plan.isFound(), isPossible(best));
        if (!plan.isFound()) continue;
        ++possible;
        QVERIFY(keepsBounds(problem, plan));
        QCOMPARE(plan.cost, best);
    }
    QVERIFY(possible > 60);
}

void JointOrdersTest::cheaperNeverCostsMore() {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        OrderCase given = support::randomOrders(seed, {3, 6, 8});
        const JointPlan before = bestOrders(given.problem, effort, {});
        for (PackPrice& price : given.offers[seed % 3].front().prices)
            price.each = price.each * 9 / 10;
        given.problem.terms.minimum = 0;
        LotProblem& supply = given.problem.supplies[seed % 3];
        supply.purchase = PackCosts(given.offers[seed % 3], supply.purchase.mostUnits());
        given.problem.terms.freeFrom = impossible;  // a cheaper price may lose free freight, and the minimum
        JointProblem dearer = support::randomOrders(seed, {3, 6, 8}).problem;
        dearer.terms = given.problem.terms;
        const JointPlan plain = bestOrders(dearer, effort, {});
        const JointPlan after = bestOrders(given.problem, effort, {});
        QVERIFY(after.isProven() && plain.isProven());
        QVERIFY(after.cost <= plain.cost);
        QVERIFY(!before.isFound() || before.isProven());
    }
}

void JointOrdersTest::moreStockNeverCostsMore() {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        JointProblem problem = support::randomOrders(seed, {3, 6, 8}).problem;
        for (LotProblem& supply : problem.supplies) {
            for (LotPeriod& period : supply.periods)
                period.most = 100;
        }
        problem.terms.minimum = 0;  // a smaller need may fall below it, and below free freight
        problem.terms.freeFrom = impossible;
        const JointPlan before = bestOrders(problem, effort, {});
        for (LotPeriod& period : problem.supplies[seed % 3].periods)
            period.least = std::max(0, period.least - 1);
        const JointPlan after = bestOrders(problem, effort, {});
        QVERIFY(before.isProven() && after.isProven());
        QVERIFY(after.cost <= before.cost);
    }
}

void JointOrdersTest::orderOfSuppliesDoesNotMatter() {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        JointProblem problem = support::randomOrders(seed, {3, 6, 8}).problem;
        const JointPlan before = bestOrders(problem, effort, {});
        std::rotate(problem.supplies.begin(), problem.supplies.begin() + 1, problem.supplies.end());
        const JointPlan after = bestOrders(problem, effort, {});
        QCOMPARE(after.isFound(), before.isFound());
        QVERIFY(before.isProven() && after.isProven());
        QCOMPARE(after.cost, before.cost);
    }
}

void JointOrdersTest::aNarrowPassSaysWhatItMissed() {
    int missed = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        JointProblem problem = support::randomOrders(seed, {3, 6, 8}).problem;
        problem.terms.minimum = 0;
        const JointPlan best = bestOrders(problem, effort, {});
        if (!best.isFound() || problem.terms.freeFrom < 1) continue;
        const FreightShares shares(problem);
        std::int64_t gos = 1'000'000;
        const JointSearch::Result narrow = JointSearch(problem, shares).run(2 * best.cost, 1, gos, {});
        QVERIFY(std::min(narrow.cost, narrow.missed) <= best.cost);
        QVERIFY(narrow.cost >= best.cost);
        missed += narrow.cost > best.cost ? 1 : 0;
    }
    QVERIFY(missed > 10);
}

/// What is said of one problem, its supplies in any order: no bound above what another found.
void JointOrdersTest::boundsNeverCross() {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        JointProblem problem = support::randomOrders(seed, {4, 14, 20}).problem;
        Cost cost = impossible, bound = 0;
        for (int turn = 0; turn < 4; ++turn) {
            const JointPlan plan = bestOrders(problem, effort / 20, {});
            cost = std::min(cost, plan.cost);
            bound = std::max(bound, plan.lowerBound);
            std::rotate(problem.supplies.begin(), problem.supplies.begin() + 1, problem.supplies.end());
        }
        QVERIFY2(bound <= cost, qPrintable(QString("seed %1: %2 above %3").arg(seed).arg(bound).arg(cost)));
    }
}

void JointOrdersTest::lessEffortKeepsTheBounds() {
    int open = 0;
    for (unsigned seed = 1; seed <= 15; ++seed) {
        const JointProblem problem = support::randomOrders(seed, {4, 12, 14}).problem;
        const JointPlan quick = bestOrders(problem, 1, {});
        const JointPlan slow = bestOrders(problem, effort, {});
        open += quick.isProven() ? 0 : 1;
        QVERIFY(quick.lowerBound <= slow.cost);
        QVERIFY(slow.cost <= quick.cost && slow.lowerBound >= quick.lowerBound);
        if (!quick.isFound()) continue;
        QVERIFY(keepsBounds(problem, quick));
        QCOMPARE(quick.cost, costOf(problem, quick.lots));
        QCOMPARE(bestOrders(problem, 1, {}).lots, quick.lots);
    }
    QVERIFY(open > 0);
}

void JointOrdersTest::canBeCancelled() {
    const JointProblem problem = support::randomOrders(3, {4, 26, 20}).problem;
    const JointPlan plan = bestOrders(problem, effort, [] { return true; });
    QVERIFY(plan.stopped);
    QVERIFY(plan.lowerBound <= bestOrders(problem, effort, {}).cost);
}

QTEST_GUILESS_MAIN(JointOrdersTest)
#include "tst_joint_orders.moc"
