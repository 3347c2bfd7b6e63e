// What a change does to stock and cost, by hand.
#include "core/season/supply_difference.h"
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

SupplyLine lineOf(const char* supply, std::optional<QDate> likely, std::optional<QDate> orderBy) {
    SupplyLine line;
    line.supply = {supply};
    line.outLikely = likely;
    line.orderBy = orderBy;
    return line;
}

SeasonState pricedSeason() {
    SeasonState s;
    s.centre = house().centre;
    s.centre.facts.settings.currency = "EUR";
    Machine& machine = s.centre.machines.front();
    machine.conditioners = {"Amber", "Clear"};
    machine.cleaner = "Wash";
    Supply wash{{"wash"}, "Wash", SupplyKind::Cleaner};
    wash.waterParts = 4;
    s.supplies = {Supply{{"amber"}, "Amber"}, Supply{{"clear"}, "Clear"}, wash};
    const auto offer = [](const char* supply, std::int64_t each) {
        Offer o;
        o.supply = {supply};
        o.pack = Amount{5'000'000};
        o.prices = {{1, {each, "EUR"}}};
        return o;
    };
    s.offers = {offer("amber", 10'000), offer("wash", 5'000)};
    return s;
}

Job jobOf(const char* id, std::int64_t amber, std::int64_t clear, std::int64_t wash) {
    Job job;
    job.id = {id};
    job.machine = {"m1"};
    job.use.conditioner = {Microlitres{amber}, Microlitres{clear}};
    job.use.cleaner = {wash};
    return job;
}

}  // namespace

class SupplyDifferenceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void daysThatChangeAreTold() {
        const QDate d = day0;
        SupplyOutlook before, after;
        before.lines = {lineOf("a", d.addDays(30), d.addDays(20)), lineOf("b", d.addDays(9), d.addDays(20)), lineOf("c", {}, {}),
                        lineOf("same", d.addDays(5), d.addDays(2)), lineOf("gone", d, d)};
        after.lines = {lineOf("b", d.addDays(12), d.addDays(17)), lineOf("c", d.addDays(7), d.addDays(1)),
                       lineOf("a", {}, d.addDays(17)), lineOf("same", d.addDays(5), d.addDays(2)), lineOf("new", d, d)};
        const SupplyDifference change = supplyDifference(before, after);
        const std::vector<SupplyShift> runOut{
            {{"c"}, {}, d.addDays(7)}, {{"b"}, d.addDays(9), d.addDays(12)}, {{"a"}, d.addDays(30), {}}};
        QVERIFY(change.runOut == runOut);
        const std::vector<OrderShift> orders{{{{"c"}}, {}, d.addDays(1)}, {{{"b"}, {"a"}}, d.addDays(20), d.addDays(17)}};
        QVERIFY(change.orders == orders);
        QVERIFY(supplyDifference(after, after).isEmpty());
    }

    /// 1 L of Amber at 20.00, 1 L of mixed Wash, a fifth of it concentrate at 10.00 a litre.
    void productsArePriced() {
        const SeasonState season = pricedSeason();
        QCOMPARE(costOf({jobOf("j", 1'000'000, 0, 1'000'000)}, season, {}), (ProductCost{{2'200, "EUR"}, {}}));
        QCOMPARE(costOf({jobOf("j", 1'000'000, 0, 0)}, season, {{{{"m1"}, 0}, 1.1}}), (ProductCost{{2'200, "EUR"}, {}}));
        QCOMPARE(costOf({jobOf("j", 1'000'000, 500, 0)}, season, {}), (ProductCost{{2'000, "EUR"}, {"Clear"}}));
        Job dropped = jobOf("j", 1'000'000, 0, 0);
        dropped.state = JobState::Dropped;
        QCOMPARE(costOf({dropped}, season, {}), (ProductCost{{0, "EUR"}, {}}));
    }

    void differencesAreNet() {
        const SeasonState season = pricedSeason();
        PlanDifference change;
        change.added = {jobOf("a", 1'500'000, 300, 0)};
        change.removed = {jobOf("b", 2'000'000, 300, 0)};
        change.moved = {{jobOf("c", 700, 0, 0), jobOf("d", 700, 0, 0)}};
        // Half a litre less; Clear nets out, and needs no price.
        QCOMPARE(costOf(change, season, {}), (ProductCost{{-1'000, "EUR"}, {}}));
        QCOMPARE(costOf(PlanDifference{}, season, {}), (ProductCost{{0, "EUR"}, {}}));
    }

    void foreignPricesAreNone() {
        SeasonState season = pricedSeason();
        season.offers[0].prices[0].each.currency = "GBP";
        QCOMPARE(costOf({jobOf("j", 1'000'000, 0, 1'000'000)}, season, {}), (ProductCost{{200, "EUR"}, {"Amber"}}));
    }
};

QTEST_APPLESS_MAIN(SupplyDifferenceTest)
#include "tst_supply_difference.moc"
