// What is stocked, who sells it and for how much: what is accepted and what is not.
#include "core/supplies/movement.h"

#include "core/base/limits.h"

#include <QTest>

using namespace laneward;

namespace {

Supply amber() {
    Supply s{{"amber"}, "Amber", SupplyKind::Conditioner};
    s.container = Amount{5'000'000};
    return s;
}

Supplier lanes() {
    Supplier s{{"ls"}, "Lane Stores"};
    s.freight = {1'990, "EUR"};
    s.freeFreightFrom = Money{50'000, "EUR"};
    s.minimumOrder = {10'000, "EUR"};
    return s;
}

Offer offer() { return {{"o"}, {"ls"}, {"amber"}, "A-5", Amount{5'000'000}, {{1, {9'900, "EUR"}}, {4, {9'400, "EUR"}}}}; }

Order order() {
    Order o{{"1"}, {"ls"}, "2026-001", OrderState::Placed, {"ada"}, QDate(2026, 11, 12)};
    o.lines = {{{"amber"}, {"o"}, "A-5", Amount{5'000'000}, 4, {9'400, "EUR"}}};
    return o;
}

QByteArrayList rulesOf(const std::vector<Finding>& findings) {
    QByteArrayList rules;
    for (const Finding& finding : findings)
        rules << finding.rule;
    return rules;
}

/// The only fault of a value after `spoil`.
template <class T, class Spoil, class... More>
QByteArray faultAfter(T value, const Spoil& spoil, const More&... more) {
    spoil(value);
    return rulesOf(faultsOf(value, more...)).join(' ');
}

}  // namespace

class TestSupply : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void kindsHaveUnits();
    void suppliesAreFound();
    void soundValuesHaveNoFaults();
    void badSuppliesAreNamed();
    void namesStandOnce();
    void badSuppliersAreNamed();
    void badPricesAreNamed();
    void badOrdersAreNamed();
    void faultsSayTheNumbers();
    void aPriceThatRisesIsOdd();
};

void TestSupply::kindsHaveUnits() {
    QCOMPARE(unitOf(SupplyKind::Conditioner), BaseUnit::Microlitre);
    QCOMPARE(unitOf(SupplyKind::Cleaner), BaseUnit::Microlitre);
    QCOMPARE(unitOf(SupplyKind::ApproachCleaner), BaseUnit::Microlitre);
    QCOMPARE(unitOf(SupplyKind::Cloth), BaseUnit::Millimetre);
    QCOMPARE(unitOf(SupplyKind::Part), BaseUnit::Piece);
    QCOMPARE(unitOf(SupplyKind::Pack), BaseUnit::Piece);
    QVERIFY((valueOfAmount(Amount{5}, BaseUnit::Microlitre) == Value(Microlitres{5})));
    QVERIFY((valueOfAmount(Amount{5}, BaseUnit::Millimetre) == Value(Micrometres{5'000})));
    QVERIFY((valueOfAmount(Amount{5}, BaseUnit::Piece) == Value(std::int64_t{5})));
}

void TestSupply::suppliesAreFound() {
    const std::vector<Supply> all{amber()};
    QCOMPARE(findSupply(all, {"amber"}), &all[0]);
    QCOMPARE(supplyNamed(all, "Amber"), &all[0]);
    QVERIFY(!findSupply(all, {"Amber"}) && !supplyNamed(all, "amber"));
}

void TestSupply::soundValuesHaveNoFaults() {
    QVERIFY(faultsOf(amber()).empty());
    QVERIFY(faultsOf(lanes(), "EUR").empty());
    QVERIFY(faultsOf(offer(), "EUR").empty());
    QVERIFY(faultsOf(order(), "EUR").empty());
    Order draft = order();
    draft.state = OrderState::Draft;
    draft.placedOn.reset();
    draft.lines.clear();
    QVERIFY(faultsOf(draft, "EUR").empty());
}

void TestSupply::badSuppliesAreNamed() {
    const auto rule = [](const auto& spoil) { return faultAfter(amber(), spoil); };
    QCOMPARE(rule([](Supply& s) { s.name = "  "; }), QByteArray("supply.no-name"));
    QCOMPARE(rule([](Supply& s) { s.name = QString(201, 'x'); }), QByteArray("supply.name-too-long"));
    QCOMPARE(rule([](Supply& s) { s.id = waterId; }), QByteArray("supply.reserved"));
    QCOMPARE(rule([](Supply& s) { s.container = Amount{0}; }), QByteArray("supply.container"));
    QCOMPARE(rule([](Supply& s) { s.container = Amount{-1}; }), QByteArray("supply.container"));
    QCOMPARE(rule([](Supply& s) { s.container = Amount{limits::stockAmount + 1}; }), QByteArray("supply.container"));
    QCOMPARE(rule([](Supply& s) { s.usualUse = Amount{-1}; }), QByteArray("supply.usual-use"));
    QCOMPARE(rule([](Supply& s) { s.rules.storageLimit = Amount{-1}; }), QByteArray("supply.storage-limit"));
    QCOMPARE(rule([](Supply& s) { s.rules.shelfLifeDays = -1; }), QByteArray("supply.shelf-life"));
    QCOMPARE(rule([](Supply& s) { s.rules.serviceLevelPermille = 1'000; }), QByteArray("supply.service-level"));
    QCOMPARE(rule([](Supply& s) { s.rules.serviceLevelPermille = 0; }), QByteArray("supply.service-level"));
    QCOMPARE(rule([](Supply& s) { s.rules.holdingPermille = -1; }), QByteArray("supply.holding-cost"));
    QCOMPARE(rule([](Supply& s) { s.waterParts = 4; }), QByteArray("supply.water"));  // only cleaner is mixed
    QCOMPARE(rule([](Supply& s) { s.kind = SupplyKind::Cloth; }), QByteArray("supply.basis"));
}

void TestSupply::namesStandOnce() {
    Supply other = amber();
    other.id = {"other"};
    QCOMPARE(rulesOf(faultsOf(std::vector{amber(), other})).join(' '), QByteArray("supply.name-twice"));
    other.name = "Other";
    QVERIFY(faultsOf(std::vector{amber(), other}).empty());
}

void TestSupply::badSuppliersAreNamed() {
    const auto rule = [](const auto& spoil) { return faultAfter(lanes(), spoil, QByteArray("EUR")); };
    QCOMPARE(rule([](Supplier& s) { s.name.clear(); }), QByteArray("supplier.no-name"));
    QCOMPARE(rule([](Supplier& s) { s.name = QString(201, 'x'); }), QByteArray("supplier.name-too-long"));
    QCOMPARE(rule([](Supplier& s) { s.orderWeekdays = 0; }), QByteArray("supplier.order-days"));
    QCOMPARE(rule([](Supplier& s) { s.orderWeekdays = 0x80; }), QByteArray("supplier.order-days"));
    QCOMPARE(rule([](Supplier& s) { s.usualLeadDays = -1; }), QByteArray("supplier.lead-time"));
    QCOMPARE(rule([](Supplier& s) { s.freight.minor = -1; }), QByteArray("price.amount"));
    QCOMPARE(rule([](Supplier& s) { s.freeFreightFrom->currency = "USD"; }), QByteArray("price.currency"));
    QCOMPARE(rule([](Supplier& s) { s.minimumOrder = {limits::moneyMinor + 1, "EUR"}; }), QByteArray("price.amount"));
    QCOMPARE(rule([](Supplier& s) { s.freight = {}; }), QByteArray());  // nothing has no currency
}

void TestSupply::badPricesAreNamed() {
    const auto rule = [](const auto& spoil) { return faultAfter(offer(), spoil, QByteArray("EUR")); };
    QCOMPARE(rule([](Offer& o) { o.pack = Amount{0}; }), QByteArray("offer.pack"));
    QCOMPARE(rule([](Offer& o) { o.prices.clear(); }), QByteArray("offer.no-price"));
    QCOMPARE(rule([](Offer& o) { o.prices.erase(o.prices.begin()); }), QByteArray("offer.price-gap"));
    QCOMPARE(rule([](Offer& o) { o.prices[0].packs = 0; }), QByteArray("offer.price-order"));
    QCOMPARE(rule([](Offer& o) { o.prices[1].packs = 1; }), QByteArray("offer.price-order"));
    QCOMPARE(rule([](Offer& o) { std::swap(o.prices[0], o.prices[1]); }), QByteArray("offer.price-gap offer.price-order"));
    QCOMPARE(rule([](Offer& o) { o.prices[1].packs = limits::packs + 1; }), QByteArray("offer.packs"));
    QCOMPARE(rule([](Offer& o) { o.prices[1].each.minor = -1; }), QByteArray("price.amount"));
    QCOMPARE(rule([](Offer& o) { o.prices[1].each.currency = "USD"; }), QByteArray("price.currency"));
    QCOMPARE(rule([](Offer& o) { o.prices.assign(101, {1, {1, "EUR"}}); }), QByteArray("offer.too-many-prices"));
    QCOMPARE(rule([](Offer& o) { o.article = QString(201, 'x'); }), QByteArray("offer.article-too-long"));
    QCOMPARE(rule([](Offer& o) { o.prices[1].each.minor = 10'000; }), QByteArray());
}

void TestSupply::badOrdersAreNamed() {
    const auto rule = [](const auto& spoil) { return faultAfter(order(), spoil, QByteArray("EUR")); };
    QCOMPARE(rule([](Order& o) { o.placedOn.reset(); }), QByteArray("order.no-date"));
    QCOMPARE(rule([](Order& o) { o.lines.clear(); }), QByteArray("order.nothing"));
    QCOMPARE(rule([](Order& o) { o.lines[0].packs = 0; }), QByteArray("order.packs"));
    QCOMPARE(rule([](Order& o) { o.lines[0].pack = Amount{0}; }), QByteArray("order.pack"));
    QCOMPARE(rule([](Order& o) { o.lines[0].supply = {}; }), QByteArray("order.no-supply"));
    QCOMPARE(rule([](Order& o) { o.lines[0].each.currency = "GBP"; }), QByteArray("price.currency"));
    QCOMPARE(rule([](Order& o) { o.freight = {5, "USD"}; }), QByteArray("price.currency"));
    QCOMPARE(rule([](Order& o) { o.number = QString(201, 'x'); }), QByteArray("order.number-too-long"));
    QCOMPARE(rule([](Order& o) { o.lines.resize(1'001, o.lines[0]); }), QByteArray("order.too-long"));
}

void TestSupply::faultsSayTheNumbers() {
    Offer mixed = offer();
    mixed.prices[1].each.currency = "USD";
    QVERIFY((faultsOf(mixed, "EUR") ==
             std::vector{Finding{Severity::Fault, "price.currency", "A-5", {QString("USD"), QString("EUR")}}}));
    Offer gap = offer();
    gap.prices[0].packs = 3;
    QVERIFY((faultsOf(gap, "EUR") == std::vector{Finding{Severity::Fault, "offer.price-gap", "A-5", {std::int64_t{3}}}}));
}

void TestSupply::aPriceThatRisesIsOdd() {
    QVERIFY(doubtsOf(offer()).empty());
    Offer rising = offer();
    rising.prices[1].each.minor = 9'901;
    QVERIFY((doubtsOf(rising) == std::vector{Finding{Severity::Warning, "offer.price-rises", "A-5", {std::int64_t{4}}}}));
}

QTEST_GUILESS_MAIN(TestSupply)
#include "tst_supply.moc"
