// Lot sizes against published values. Sources: F. W. Harris, How many parts to make at once, Factory 10(2), Feb 1913 (reprint
// Operations Research 38(6), 1990, pp. 948-949; read in copies); C. Caplice, MIT ESD.260J Logistics Systems, Fall 2006, lecture
// 8, slides 9 and 12 (MIT OpenCourseWare; figures read second-hand); Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd
// ed., examples 3.1, 3.5, 3.6 and 3.9, in the documentation and tests of the MIT-licensed library stockpyl.
//
// The classic rules know demand as a steady flow. Here a horizon is cut into periods, each with one step of demand, and the
// holding of half a step is added, so that the cost of equal lots is that of the rule to the last digit; where the horizon holds
// a whole number of the rule's orders the dynamic plan is that of the rule, and else it is dearer by what fitting costs.
#include "core/supplies/lot_sizes.h"

#include <QTest>

#include <cmath>
#include <numeric>

using namespace laneward::ordering;

namespace {

struct Flow {
    double demand = 0;   ///< a year
    double order = 0;    ///< cost of one
    double holding = 0;  ///< of one for a year
    double step = 1;     ///< units of demand a period
    int periods = 0;
    double scale = 1e6;  ///< costs are kept in so many parts
};

struct Steady {
    int orders = 0;
    double lot = 0;         ///< mean
    double costAYear = 0;   ///< of orders and holding; and of goods where they have a price
    std::vector<int> lots;  ///< in steps
};

/// The best plan for steps of demand, every price for one unit from so many steps on.
Steady steady(const Flow& flow, std::vector<PackPrice> prices) {
    const double length = flow.step / flow.demand;
    const Cost holding = std::llround(flow.holding * flow.step * length * flow.scale);
    std::vector<LotPeriod> periods;
    for (int t = 0; t < flow.periods; ++t)
        periods.push_back({t + 1, flow.periods, holding});
    for (PackPrice& price : prices)
        price.each = std::llround(double(price.each) * flow.step * flow.scale / 1e6);
    const LotProblem problem{periods, PackCosts({{1, prices}}, flow.periods)};
    const std::vector<Cost> orders(size_t(flow.periods), std::llround(flow.order * flow.scale));
    const auto plan = bestLots(problem, orders);
    Steady made;
    for (int lot : plan->lots)
        if (lot > 0) made.lots.push_back(lot);
    made.orders = int(made.lots.size());
    made.lot = flow.step * flow.periods / made.orders;
    // What is used in a period is held for half of it on average: y_t - t - 1 is left at its end, and half a step more on
    // average.
    double used = 0;
    for (int t = 0; t < flow.periods; ++t)
        used += double(holding) * (t + 1) - double(holding) / 2;
    made.costAYear = (double(plan->cost) - used) / flow.scale / (flow.periods * length);
    return made;
}

}  // namespace

class LotSizesOutsideTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void wagnerWhitin();
    void economicOrderQuantity();
    void harris_data();
    void harris();
    void textbookQuantity();
    void allUnitsDiscount_data();
    void allUnitsDiscount();
};

/// Snyder and Shen, example 3.9: orders of 500, holding 2 a period for what is left at its end.
void LotSizesOutsideTest::wagnerWhitin() {
    const std::vector<int> demand{90, 120, 80, 70};
    std::vector<LotPeriod> periods;
    Cost heldAnyway = 0;
    int sum = 0;
    for (int d : demand) {
        sum += d;
        periods.push_back({sum, 360, 2});
        heldAnyway += 2 * sum;
    }
    const auto plan = bestLots({periods, PackCosts({{1, {{1, 0}}}}, 360)}, std::vector<Cost>(4, 500));
    QVERIFY(plan);
    QCOMPARE(plan->lots, (std::vector<int>{210, 0, 150, 0}));
    QCOMPARE(plan->cost - heldAnyway, Cost{1380});
}

/// ESD.260J lecture 8 slide 9: 2,000 a year at 50, orders of 500, a quarter of the value a year: 400 at a time, 2,500 + 2,500.
void LotSizesOutsideTest::economicOrderQuantity() {
    const Steady year = steady({2000, 500, 0.25 * 50, 10, 200}, {{1, 0}});
    QCOMPARE(year.lots, std::vector<int>(5, 40));
    QCOMPARE(year.lot, 400.0);
    QVERIFY(std::abs(year.costAYear - 5000) < 0.01);
}

void LotSizesOutsideTest::harris_data() {
    QTest::addColumn<double>("aMonth");
    QTest::addColumn<double>("order");
    QTest::addColumn<double>("unitCost");
    QTest::addColumn<double>("printed");
    QTest::addColumn<double>("within");
    // Interest and depreciation are 10 % a year of the unit's cost: sqrt(240 M S / C).
    QTest::newRow("p. 948") << 1000.0 << 2.0 << 0.1 << 2190.0 << 1.0;
    QTest::newRow("figure II") << 1230.0 << 2.15 << 0.0135 << 6850.0 << 10.0;
    QTest::newRow("figure III") << 30.0 << 1.85 << 5.65 << 48.5 << 0.1;
}

/// A horizon of eight of the printed lots is best served in eight orders of that size, and neither in seven nor in nine.
void LotSizesOutsideTest::harris() {
    QFETCH(double, aMonth);
    QFETCH(double, order);
    QFETCH(double, unitCost);
    QFETCH(double, printed);
    QFETCH(double, within);
    const Steady made = steady({12 * aMonth, order, 0.1 * unitCost, printed / 40, 320, 1e9}, {{1, 0}});
    QCOMPARE(made.lots, std::vector<int>(8, 40));
    QVERIFY(std::abs(made.lot - printed) < 1e-6 * printed);
    // At the best quantity orders and holding cost the same: Q = 2 K D / cost of both.
    const double quantity = 2 * order * 12 * aMonth / made.costAYear;
    QVERIFY2(std::abs(quantity - printed) <= within, qPrintable(QString::number(quantity)));
}

/// Snyder and Shen, example 3.1: 304.04678 at 68.410526 a year.
void LotSizesOutsideTest::textbookQuantity() {
    const Steady made = steady({1300, 8, 0.225, 304.0467800264368 / 50, 400, 1e9}, {{1, 0}});
    QCOMPARE(made.lots, std::vector<int>(8, 50));
    QVERIFY2(std::abs(made.costAYear - 68.41052550594829) < 1e-4, qPrintable(QString::number(made.costAYear, 'g', 12)));
    // No other horizon is cheaper by the year.
    for (const int periods : {130, 222, 275, 333, 390})
        QVERIFY(steady({1300, 8, 0.225, 304.0467800264368 / 50, periods, 1e9}, {{1, 0}}).costAYear > 68.4105);
}

void LotSizesOutsideTest::allUnitsDiscount_data() {
    QTest::addColumn<double>("demand");
    QTest::addColumn<double>("order");
    QTest::addColumn<double>("rate");
    QTest::addColumn<QList<double>>("from");
    QTest::addColumn<QList<double>>("prices");
    QTest::addColumn<double>("step");
    QTest::addColumn<double>("quantity");
    QTest::addColumn<double>("cost");
    QTest::newRow("examples 3.5, 3.6") << 1300.0 << 8.0 << 0.3 << QList<double>{0, 400, 800} << QList<double>{0.75, 0.72, 0.68}
                                       << 20.0 << 800.0 << 978.60;
    QTest::newRow("library documentation") << 1000.0 << 200.0 << 0.2 << QList<double>{0, 200, 500} << QList<double>{500, 475, 450}
                                           << 12.5 << 500.0 << 472'900.0;
    QTest::newRow("lecture 8, slide 12") << 2000.0 << 500.0 << 0.25 << QList<double>{0, 500} << QList<double>{50, 49} << 12.5
                                         << 500.0 << 103'062.50;
}

/// Holding is a part of the price that is paid; the plan knows one price, that of the published quantity, so the other tiers look
/// no dearer than they are, and the published one must win all the same.
void LotSizesOutsideTest::allUnitsDiscount() {
    QFETCH(double, demand);
    QFETCH(double, order);
    QFETCH(double, rate);
    QFETCH(QList<double>, from);
    QFETCH(QList<double>, prices);
    QFETCH(double, step);
    QFETCH(double, quantity);
    QFETCH(double, cost);
    std::vector<PackPrice> tiers;
    for (qsizetype i = 0; i < from.size(); ++i)
        tiers.push_back({std::max(1, int(std::lround(from[i] / step))), std::llround(prices[i] * 1e6)});
    const double paid = prices.back();
    const int lot = int(std::lround(quantity / step));
    const Steady made = steady({demand, order, rate * paid, step, 5 * lot}, tiers);
    QCOMPARE(made.lots, std::vector<int>(5, lot));
    QVERIFY2(std::abs(made.costAYear - cost) < 0.01, qPrintable(QString::number(made.costAYear, 'f', 4)));
}

QTEST_GUILESS_MAIN(LotSizesOutsideTest)
#include "tst_lot_sizes.moc"
