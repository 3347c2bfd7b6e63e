// The plan of orders: what it says of dates, costs and risks, what it does where nothing fits, and what must hold for any.
#include "tests/support/order_questions.h"

#include <QTest>

#include <algorithm>

using namespace support;

namespace {

constexpr std::int64_t effort = 200'000'000;

bool says(const OrderPlan& plan, const char* rule, const QString& subject) {
    return std::any_of(plan.findings.begin(), plan.findings.end(),
                       [&](const Finding& f) { return f.rule == rule && f.subject == subject; });
}

/// By day, whether what is needed is there; -1 = always, else the first day that fails.
int firstFailure(const OrderQuestion& question, const OrderPlan& plan, size_t supply) {
    const StockedSupply& asked = question.supplies[supply];
    for (int day = 0; day < int(asked.needed.size()); ++day) {
        std::int64_t available = asked.onHand.value;
        for (const Arrival& arrival : asked.underWay)
            available += arrival.on <= question.first.addDays(day) ? arrival.amount.value : 0;
        for (const PlannedOrder& order : plan.orders) {
            if (order.arrives > question.first.addDays(day)) continue;
            for (const PlannedLine& line : order.lines) {
                const auto offer = std::find_if(question.offers.begin(), question.offers.end(),
                                                [&](const Offer& o) { return o.id == line.offer; });
                if (line.supply == asked.supply.id) available += line.packs * offer->pack.value;
            }
        }
        if (available < asked.needed[size_t(day)].value) return day;
    }
    return -1;
}

OrderQuestion oneSupply(std::int64_t onHand = 40) {
    return orderQuestion({stocked("blades", onHand, 1)}, {sourcedFrom("north", 1000)}, {offered("north", "blades", 10, 2000)});
}

/// Cheap enough to be proven: two supplies of one supplier and one of another, over half a year.
OrderQuestion halfYear(unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](int least, int most) { return least + int(random() % unsigned(most - least + 1)); };
    OrderQuestion question =
        orderQuestion({stocked("a", between(10, 60), between(1, 3), 150), stocked("b", between(10, 60), between(1, 3), 150),
                       stocked("c", between(10, 60), between(1, 3), 150)},
                      {sourcedFrom("north", 100 * between(5, 40)), sourcedFrom("south", 100 * between(5, 40), 3)}, {});
    for (const auto& [supplier, supply] : {std::pair("north", "a"), std::pair("north", "b"), std::pair("south", "c")})
        question.offers.push_back(offered(supplier, supply, 20, 100 * between(5, 60)));
    return question;
}

}  // namespace

class OrderPlanTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void ordersInTime();
    void costsAddUp();
    void theNextOrder();
    void ordersUnderWayCount();
    void onlyOnOrderDays();
    void sharesFreight();
    void priceBreaksCountForAllPacks();
    void theCheaperSupplier();
    void tooLate();
    void nobodySells();
    void noOrderDays();
    void storeTooSmall();
    void doesNotKeep();
    void minimumNeverReached();
    void minimumDecidesTheSupplier();
    void unusableOffers();
    void tooMany();
    void emptyQuestions();
    void whateverTheOrder();
    void anotherOfferNeverCostsMore();
    void cheaperAndMoreStockNeverCostMore();
    void aYear();
    void canBeCancelled();
};

void OrderPlanTest::ordersInTime() {
    const OrderQuestion question = oneSupply();
    const OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.proven);
    QVERIFY(plan.findings.empty());
    QVERIFY(plan.orders.size() > 1);
    QCOMPARE(firstFailure(question, plan, 0), -1);
    OrderPlan without = plan;
    without.orders.pop_back();
    QVERIFY(firstFailure(question, without, 0) >= 0);
}

void OrderPlanTest::costsAddUp() {
    const OrderQuestion question = oneSupply();
    const OrderPlan plan = planOrders(question, effort, {});
    std::int64_t goods = 0, packs = 0;
    for (const PlannedOrder& order : plan.orders) {
        QCOMPARE(order.freight, (Money{1000, "EUR"}));
        QCOMPARE(order.arrives, order.on.addDays(7));
        for (const PlannedLine& line : order.lines) {
            QCOMPARE(line.cost.minor, line.packs * line.each.minor);
            goods += line.cost.minor;
            packs += line.packs;
        }
    }
    QCOMPARE(plan.goods.minor, goods);
    QCOMPARE(packs, (364 + 3 - 40 + 9) / 10);
    QCOMPARE(plan.freight.minor, 1000 * std::int64_t(plan.orders.size()));
    QCOMPARE(plan.total.minor, plan.goods.minor + plan.freight.minor + plan.holding.minor);
    QCOMPARE(plan.lowerBound, plan.total);
    // A pack of 20.00 costs 4.00 a year, 0.4 a piece. Stock over the year, by hand.
    double held = 0;
    for (int day = 0; day < 364; ++day) {
        std::int64_t stock = 40 - (day + 1);
        for (const PlannedOrder& order : plan.orders)
            stock += order.arrives <= question.first.addDays(day) ? order.lines.front().packs * 10 : 0;
        held += double(stock) * 40 / 365;
    }
    QVERIFY(std::abs(held - double(plan.holding.minor)) <= 2);
}

void OrderPlanTest::theNextOrder() {
    const OrderQuestion question = oneSupply(40);
    const OrderPlan plan = planOrders(question, effort, {});
    QCOMPARE(plan.next.size(), size_t(1));
    const NextOrder& next = plan.next.front();
    const PlannedOrder& order = plan.orders[next.order];
    // Day k needs k + 4: 40 last up to the end of day 36, so the order must come on day 37, and leave a week before, on a
    // Wednesday.
    QCOMPARE(next.orderBy, orderDay0.addDays(30));
    QVERIFY(order.on <= next.orderBy);
    QCOMPARE(order.lines.front().covers, orderDay0.addDays(36 + 10 * order.lines.front().packs));
    const int on = int(orderDay0.daysTo(order.on));
    QCOMPARE(bool(next.weekEarlier), on >= 7);
    if (next.weekEarlier) {
        const double cost = 400.0 / 365 * order.lines.front().packs * 7;
        QVERIFY(std::abs(cost - double(next.weekEarlier->minor)) <= 1);
    }
    QCOMPARE(next.lateArrival, order.on.addDays(14));
    const bool isShort = next.lateArrival > orderDay0.addDays(37);
    QCOMPARE(next.late.size(), size_t(isShort ? 1 : 0));
    if (isShort) {
        QCOMPARE(next.late.front().from, orderDay0.addDays(37));
        QCOMPARE(next.late.front().missing.value, orderDay0.daysTo(next.lateArrival) - 37);
    }
}

void OrderPlanTest::ordersUnderWayCount() {
    OrderQuestion question = oneSupply(40);
    question.supplies[0].underWay = {{orderDay0.addDays(20), {400}}};
    QVERIFY(planOrders(question, effort, {}).orders.empty());
    QVERIFY(planOrders(question, effort, {}).next.empty());
    question.supplies[0].underWay = {{orderDay0.addDays(37), {400}}};  // 40 last up to the day before
    QVERIFY(planOrders(question, effort, {}).orders.empty());
    question.supplies[0].underWay = {{orderDay0.addDays(38), {400}}};
    QCOMPARE(planOrders(question, effort, {}).orders.size(), size_t(1));
    question.supplies[0].underWay = {{orderDay0.addDays(200), {400}}};
    QVERIFY(!planOrders(question, effort, {}).orders.empty());
}

void OrderPlanTest::onlyOnOrderDays() {
    OrderQuestion question = oneSupply();
    question.suppliers[0].supplier.orderWeekdays = 0x08;  // Thursdays
    const OrderPlan plan = planOrders(question, effort, {});
    QCOMPARE(firstFailure(question, plan, 0), -1);
    for (const PlannedOrder& order : plan.orders)
        QCOMPARE(order.on.dayOfWeek(), 4);
    QCOMPARE(plan.next.front().orderBy.dayOfWeek(), 4);
}

void OrderPlanTest::sharesFreight() {
    const OrderQuestion question = orderQuestion({stocked("a", 30, 1), stocked("b", 50, 1)}, {sourcedFrom("north", 10'000)},
                                                 {offered("north", "a", 10, 100), offered("north", "b", 10, 100)});
    const OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.proven);
    QCOMPARE(plan.orders.size(), size_t(1));  // 100 a freight, and a year's stock costs less to hold
    QCOMPARE(plan.orders[0].lines.size(), size_t(2));
}

void OrderPlanTest::priceBreaksCountForAllPacks() {
    OrderQuestion question = oneSupply();
    question.offers[0].prices.push_back({8, {1500, "EUR"}});
    const OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.proven);
    for (const PlannedOrder& order : plan.orders) {
        QVERIFY(order.lines.front().packs >= 8);
        QCOMPARE(order.lines.front().each.minor, std::int64_t{1500});
        QCOMPARE(order.goods.minor, 1500 * std::int64_t(order.lines.front().packs));
    }
}

void OrderPlanTest::theCheaperSupplier() {
    OrderQuestion question = oneSupply();
    question.suppliers.push_back(sourcedFrom("south", 1000));
    question.offers.push_back(offered("south", "blades", 10, 1900));
    OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.proven);
    for (const PlannedOrder& order : plan.orders)
        QCOMPARE(order.supplier.value, QString("south"));
    question.suppliers[1].supplier.freight = {90'000, "EUR"};
    plan = planOrders(question, effort, {});
    for (const PlannedOrder& order : plan.orders)
        QCOMPARE(order.supplier.value, QString("north"));
}

void OrderPlanTest::tooLate() {
    const OrderQuestion question = oneSupply(5);
    const OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.too-late", "blades"));
    QCOMPARE(plan.orders.front().on, orderDay0);
    QCOMPARE(plan.next.front().orderBy, orderDay0);
    QCOMPARE(firstFailure(question, plan, 0), 2);
    OrderPlan later = plan;
    later.orders.erase(later.orders.begin());
    QVERIFY(firstFailure(question, later, 0) >= 0);
}

void OrderPlanTest::nobodySells() {
    OrderQuestion question = oneSupply();
    question.offers.clear();
    const OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.orders.empty());
    QVERIFY(says(plan, "orders.no-offer", "blades"));
    question.supplies[0].onHand = {1000};  // needs none
    QVERIFY(planOrders(question, effort, {}).findings.empty());
    question = oneSupply();
    question.suppliers[0].supplier.retired = true;
    QVERIFY(says(planOrders(question, effort, {}), "orders.no-offer", "blades"));
}

void OrderPlanTest::noOrderDays() {
    OrderQuestion question = oneSupply();
    question.suppliers[0].supplier.orderWeekdays = 0;
    QVERIFY(says(planOrders(question, effort, {}), "orders.no-days", "blades"));
    question = oneSupply();
    question.suppliers[0].leadDays = 5000;
    QVERIFY(says(planOrders(question, effort, {}), "orders.no-days", "blades"));
}

void OrderPlanTest::storeTooSmall() {
    OrderQuestion question = oneSupply();
    question.supplies[0].supply.rules.storageLimit = {60};
    OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.findings.empty());
    for (const PlannedOrder& order : plan.orders)
        QVERIFY(order.lines.front().packs <= 6);
    question.supplies[0].supply.rules.storageLimit = {8};
    plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.pack-over-storage", "blades"));
    QCOMPARE(firstFailure(question, plan, 0), -1);
    question.supplies[0].supply.rules.storageLimit = {11};  // a week's use and three days more do not fit beside a pack
    plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.storage", "blades"));
    QCOMPARE(firstFailure(question, plan, 0), -1);
}

void OrderPlanTest::doesNotKeep() {
    OrderQuestion question = oneSupply();
    question.supplies[0].supply.rules.shelfLifeDays = 60;
    OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.findings.empty());
    for (const PlannedOrder& order : plan.orders)
        QVERIFY(order.lines.front().packs <= 6);
    QVERIFY(plan.orders.size() > planOrders(oneSupply(), effort, {}).orders.size());
    question.supplies[0].supply.rules.shelfLifeDays = 4;
    plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.shelf-life", "blades"));
    QCOMPARE(firstFailure(question, plan, 0), -1);
}

void OrderPlanTest::minimumNeverReached() {
    OrderQuestion question = oneSupply();
    question.suppliers[0].supplier.minimumOrder = {10'000, "EUR"};
    OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.findings.empty());
    for (const PlannedOrder& order : plan.orders)
        QVERIFY(order.goods.minor >= 10'000);
    question.supplies[0].supply.rules.storageLimit = {40};
    question.supplies[0].onHand = {20};
    plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.below-minimum", "north"));
    QCOMPARE(firstFailure(question, plan, 0), -1);
}

/// Better the dearer supplier than one whose minimum cannot be reached.
void OrderPlanTest::minimumDecidesTheSupplier() {
    OrderQuestion question = oneSupply(20);
    question.supplies[0].supply.rules.storageLimit = {40};
    question.suppliers[0].supplier.minimumOrder = {10'000, "EUR"};
    question.suppliers.push_back(sourcedFrom("south", 1000));
    question.offers.push_back(offered("south", "blades", 10, 4000));
    const OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(plan.findings.empty());
    for (const PlannedOrder& order : plan.orders)
        QCOMPARE(order.supplier.value, QString("south"));
}

void OrderPlanTest::unusableOffers() {
    for (int fault = 0; fault < 6; ++fault) {
        OrderQuestion question = oneSupply();
        Offer& offer = question.offers[0];
        if (fault == 0) offer.pack = {0};
        if (fault == 1) offer.prices.clear();
        if (fault == 2) offer.prices[0].packs = 2;
        if (fault == 3) offer.prices[0].each.currency = "USD";
        if (fault == 4) offer.prices[0].each.minor = -1;
        if (fault == 5) offer.prices.push_back({1, {100, "EUR"}});
        const OrderPlan plan = planOrders(question, effort, {});
        QVERIFY(says(plan, "orders.offer-unusable", "blades"));
        QVERIFY(plan.orders.empty());
    }
}

void OrderPlanTest::tooMany() {
    OrderQuestion question =
        orderQuestion({stocked("tips", 100, 10)}, {sourcedFrom("north", 1000)}, {offered("north", "tips", 7, 100)});
    OrderPlan plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.several-packs", "tips"));
    QCOMPARE(firstFailure(question, plan, 0), -1);
    question.offers.push_back(offered("north", "tips", 50, 600));
    plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.packs-not-mixed", "tips"));
    QCOMPARE(firstFailure(question, plan, 0), -1);
    question.supplies[0].needed.back() = {std::int64_t{1} << 60};
    plan = planOrders(question, effort, {});
    QVERIFY(says(plan, "orders.beyond-reason", "tips"));
}

void OrderPlanTest::emptyQuestions() {
    QVERIFY(planOrders({}, effort, {}).orders.empty());
    QVERIFY(planOrders(orderQuestion({}, {sourcedFrom("north", 5)}, {}), effort, {}).proven);
    OrderQuestion question = oneSupply();
    question.supplies[0].needed.clear();
    question.supplies[0].expected.clear();
    QVERIFY(planOrders(question, effort, {}).orders.empty());
    question = oneSupply();
    question.supplies[0].expected.resize(3);
    QCOMPARE(firstFailure(question, planOrders(question, effort, {}), 0), -1);
}

void OrderPlanTest::whateverTheOrder() {
    for (unsigned seed = 1; seed <= 5; ++seed) {
        OrderQuestion question = halfYear(seed);
        const OrderPlan plan = planOrders(question, effort, {});
        std::reverse(question.supplies.begin(), question.supplies.end());
        std::reverse(question.suppliers.begin(), question.suppliers.end());
        std::reverse(question.offers.begin(), question.offers.end());
        const OrderPlan other = planOrders(question, effort, {});
        QCOMPARE(other.orders, plan.orders);
        QCOMPARE(other.next, plan.next);
        QCOMPARE(other.total, plan.total);
    }
}

void OrderPlanTest::anotherOfferNeverCostsMore() {
    int cheaper = 0;
    for (unsigned seed = 1; seed <= 12; ++seed) {
        OrderQuestion question = halfYear(seed);
        const OrderPlan before = planOrders(question, effort, {});
        question.offers.push_back(offered("south", "a", 20, 100 * (5 + 5 * seed)));
        const OrderPlan after = planOrders(question, effort, {});
        QVERIFY(before.proven && after.proven);
        QVERIFY(after.total.minor <= before.total.minor + 1);  // rounded to whole minor units
        cheaper += after.total.minor < before.total.minor ? 1 : 0;
    }
    QVERIFY(cheaper > 0);
}

void OrderPlanTest::cheaperAndMoreStockNeverCostMore() {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        OrderQuestion question = halfYear(seed);
        const OrderPlan before = planOrders(question, effort, {});
        question.offers[seed % 3].prices[0].each.minor = question.offers[seed % 3].prices[0].each.minor * 9 / 10;
        const OrderPlan cheaper = planOrders(question, effort, {});
        QVERIFY(before.proven && cheaper.proven);
        QVERIFY(cheaper.total.minor <= before.total.minor + 1);  // rounded to whole minor units
        // A pack more is there from the first day on, and nothing else.
        question.supplies[seed % 3].onHand.value += 20;
        const OrderPlan richer = planOrders(question, effort, {});
        const double held = 0.2 * double(question.offers[seed % 3].prices[0].each.minor) * 150 / 365;
        QVERIFY(richer.proven);
        QVERIFY(double(richer.total.minor) <= double(cheaper.total.minor) + held + 1);
        QVERIFY(richer.goods.minor < cheaper.goods.minor);
    }
}

void OrderPlanTest::aYear() {
    OrderQuestion question = yearOfOrders(1, 3);
    const OrderPlan plan = planOrders(question, usualOrderEffort, {});
    for (size_t i = 0; i < question.supplies.size(); ++i)
        QCOMPARE(firstFailure(question, plan, i), -1);
    QVERIFY(plan.lowerBound.minor <= plan.total.minor);
    QVERIFY(plan.lowerBound.minor > plan.total.minor * 97 / 100);
    QCOMPARE(plan.next.size(), size_t(4));
    QCOMPARE(planOrders(question, usualOrderEffort, {}).orders, plan.orders);
}

void OrderPlanTest::canBeCancelled() {
    const OrderPlan plan = planOrders(yearOfOrders(1, 3), usualOrderEffort, [] { return true; });
    QVERIFY(plan.stopped);
    QVERIFY(!plan.proven);
}

QTEST_GUILESS_MAIN(OrderPlanTest)
#include "tst_order_plan.moc"
