// Simulated centres whose truth is known: 50 seeds, two years each, three supplies of one supplier. Does ordering by the plan
// keep the service level (one-sided binomial test at 1 %), and what does it cost beside three plain policies? Those are of
// handbooks (tests/support/plain_stock_rules.h): a reorder point with a fixed lot, filling up every month, and what the last
// month used.
#include "core/supplies/order_plan.h"
#include "core/supplies/stock_needs.h"
#include "tests/support/plain_stock_rules.h"
#include "tests/support/simulated_store.h"

#include <QTest>

#include <cmath>

using namespace laneward;
using namespace support;

namespace {

constexpr int seeds = 50;
constexpr int horizon = 84;
constexpr int paths = 600;
constexpr int month = 28;
constexpr int reviewDays = 7;
constexpr double service = 0.98;

SupplyId supplyOf(size_t i) { return {QString("supply %1").arg(i)}; }

/// As the program does: learned rates and chances, the plan ahead, needs at the service level, the cheapest orders.
std::vector<int> byThePlan(const StoreView& view) {
    const DayChances lead = leadTimes(view.leadDays, view.supplier.usualLeadDays);
    const QDate today = firstSimulatedDay.addDays(view.day);
    OrderQuestion question{today, "EUR", {}, {{view.supplier, lead.at(sureArrival)}}, view.offers};
    const int days = std::min(horizon, simulatedDays - view.day);
    for (size_t i = 0; i < view.onHand.size(); ++i) {
        const SimulatedHouse& house = view.houses[i];
        StockOutlook outlook{supplyOf(i), view.onHand[i], days, {}, {}, {}, {}};
        outlook.planned = {{view.rates[i], {house.nominal.begin() + view.day, house.nominal.begin() + view.day + days}}};
        outlook.chance = {learnRate(house.eventsBefore(view.day), view.day, simulatedEventPrior)};
        StockedSupply stocked;
        stocked.supply = {supplyOf(i), supplyOf(i).value, SupplyKind::Conditioner};
        stocked.onHand = view.onHand[i];
        for (const StoreOrder& order : view.underWay) {
            if (order.packs[i] == 0) continue;
            const int arrival = arrivalOf(lead, view.day - order.on).at(sureArrival);
            stocked.underWay.push_back({today.addDays(arrival), view.offers[i].pack * order.packs[i]});
        }
        const ForecastRule rule = orderingRule(days, stocked.supply.rules, paths);
        const StockNeeds needs = needsOf(*forecastStock(outlook, rule), rule, stocked.supply.rules);
        stocked.needed = needs.needed;
        stocked.expected = needs.expected;
        question.supplies.push_back(stocked);
    }
    std::vector<int> packs(view.onHand.size(), 0);
    for (const PlannedOrder& order : planOrders(question, usualOrderEffort, {}).orders) {
        for (size_t i = 0; order.on == today && i < packs.size(); ++i)
            for (const PlannedLine& line : order.lines)
                packs[i] += line.supply == supplyOf(i) ? line.packs : 0;
    }
    return packs;
}

double packOf(const StoreView& view, size_t i) { return double(view.offers[i].pack.value); }

int packsFor(double amount, double pack) { return std::max(0, int(std::ceil(amount / pack))); }

/// Whenever the position is below what the time to the delivery after the next look may take.
std::vector<int> byReorderPoint(const StoreView& view) {
    std::vector<int> packs;
    for (size_t i = 0; i < view.onHand.size(); ++i) {
        const auto [mean, deviation] = view.daily(i);
        const NormalDemand overLead = demandOver({mean, deviation}, view.supplier.usualLeadDays + reviewDays);
        const double point = overLead.mean + safetyStockFor(overLead, service);
        const double value = double(view.offers[i].prices.front().each.minor) / packOf(view, i);
        const double holding = StockRules().holdingPermille / 1'000.0 * value;
        const double lot = std::sqrt(2 * double(view.supplier.freight.minor) * mean * 365 / holding);
        const int lotPacks = std::max(1, int(std::lround(lot / packOf(view, i))));
        int ordered = 0;
        while (view.position(i) + ordered * packOf(view, i) < point)
            ordered += lotPacks;
        packs.push_back(ordered);
    }
    return packs;
}

bool isMonthly(const StoreView& view) { return (view.day - storeWarmUp) / reviewDays % (month / reviewDays) == 0; }

std::vector<int> byFillingUp(const StoreView& view) {
    std::vector<int> packs;
    for (size_t i = 0; i < view.onHand.size(); ++i) {
        const auto [mean, deviation] = view.daily(i);
        const NormalDemand covered = demandOver({mean, deviation}, month + view.supplier.usualLeadDays);
        const double upTo = covered.mean + safetyStockFor(covered, service);
        packs.push_back(isMonthly(view) ? packsFor(upTo - view.position(i), packOf(view, i)) : 0);
    }
    return packs;
}

std::vector<int> byLastMonth(const StoreView& view) {
    std::vector<int> packs;
    for (size_t i = 0; i < view.onHand.size(); ++i)
        packs.push_back(isMonthly(view) ? int(std::lround(view.used(i, month) / packOf(view, i))) : 0);
    return packs;
}

StoreYears sumOf(const OrderPolicy& policy, double walk) {
    StoreYears sum;
    for (int seed = 0; seed < seeds; ++seed) {
        const StoreYears one = yearsOf(seed, walk, policy);
        sum.goods += one.goods / seeds;
        sum.freight += one.freight / seeds;
        sum.holding += one.holding / seeds;
        sum.orders += one.orders / seeds;
        sum.cycles += one.cycles;
        sum.runOuts += one.runOuts;
    }
    return sum;
}

double runOutShare(const StoreYears& years) { return double(years.runOuts) / years.cycles; }

/// More run-outs than a share of 1 - service makes likely: P(at least so many) below 1 %, by the binomial distribution.
bool breaksService(const StoreYears& years) {
    const double p = 1 - service;
    double fewer = 0;
    for (int k = 0; k < years.runOuts; ++k)
        fewer += std::exp(std::lgamma(years.cycles + 1.0) - std::lgamma(k + 1.0) - std::lgamma(years.cycles - k + 1.0) +
                          k * std::log(p) + (years.cycles - k) * std::log(1 - p));
    return 1 - fewer < 0.01;
}

void print(const QByteArray& what, const StoreYears& y) {
    qInfo(
        "%-42s %5.1f orders a year, goods %7.2f, freight %6.2f, holding %6.2f, in all %7.2f; ran out in %4d of %5d cycles, "
        "%4.1f %%%s",
        what.constData(), y.orders, y.goods / 100, y.freight / 100, y.holding / 100, y.total() / 100, y.runOuts, y.cycles,
        100 * runOutShare(y), breaksService(y) ? ": more than promised" : "");
}

}  // namespace

class OrderPoliciesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void twoYears_data();
    void twoYears();
};

void OrderPoliciesTest::twoYears_data() {
    QTest::addColumn<double>("walk");
    QTest::newRow("steady machines") << 0.0;
    QTest::newRow("drifting machines") << 0.004;
}

void OrderPoliciesTest::twoYears() {
    QFETCH(double, walk);
    const QByteArray tag = QTest::currentDataTag();
    const StoreYears ours = sumOf(byThePlan, walk);
    print(tag + ", by the plan", ours);
    QVERIFY(ours.cycles > 1'500);
    for (const auto& [name, policy] :
         {std::pair("reorder point and lot", OrderPolicy(byReorderPoint)),
          std::pair("filled up monthly", OrderPolicy(byFillingUp)), std::pair("as last month", OrderPolicy(byLastMonth))}) {
        const StoreYears plain = sumOf(policy, walk);
        print(tag + ", " + name, plain);
        QVERIFY(ours.total() < plain.total());
    }
    QVERIFY(!breaksService(ours));
}

QTEST_GUILESS_MAIN(OrderPoliciesTest)
#include "tst_order_policies.moc"
