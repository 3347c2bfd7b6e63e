// Lane care shared out over events, and people's hours, by hand and by what must hold for every plan.
#include "core/season/event_costs.h"
#include "core/season/staff_hours.h"
#include "tests/support/big_season.h"
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

/// One outing of an hour for lanes 1 to 4: two events share lanes 1 and 2, one has 3 and 4 alone.
Plan planOfOne() {
    Plan p;
    Job job;
    job.id = {"j"};
    job.date = day0;
    job.machine = {"m1"};
    job.time = {at(0, 16), at(0, 16, 50)};
    for (int lane = 1; lane <= 4; ++lane)
        job.lanes.push_back({lane, {at(0, 16, 10 * lane - 5), at(0, 16, 10 * lane)}});
    job.use.conditioner[0] = Microlitres{80'002};
    job.use.laneRuns = 4;
    job.neededBy = {{{"a"}, {day0, QTime(18, 0)}, "A", at(0, 18), LaneSet::range(1, 4)},
                    {{"b"}, {day0, QTime(20, 0)}, "B", at(0, 20), LaneSet::range(1, 2)}};
    p.jobs = {job};
    p.days = {{day0, {}, true, {}, 0, {{{"m1"}, 1, {at(0, 16), at(0, 17)}, {{"j"}}}}}};
    return p;
}

SeasonState seasonWithPrice() {
    SeasonState s;
    s.centre = house().centre;
    s.centre.machines.front().conditioners[0] = "Amber";
    s.supplies = {Supply{{"amber"}, "Amber"}};
    Offer offer;
    offer.supply = {"amber"};
    offer.pack = Amount{5'000'000};
    offer.prices = {{1, {10'000, "EUR"}}};
    s.offers = {offer};
    return s;
}

}  // namespace

class EventCostsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void lanesAreSharedByThoseWhoNeedThem() {
        const EventCosts costs = eventCosts(seasonWithPrice(), planOfOne());
        QCOMPARE(costs.events.size(), size_t(2));
        const EventCost& a = costs.events[0];
        const EventCost& b = costs.events[1];
        // Lanes 3 and 4 and half of 1 and 2: 45 of 60 min, 60 of 80 mL.
        QCOMPARE(a.care.time, minutes(45));
        QCOMPARE(b.care.time, minutes(15));
        QVERIFY(std::abs(a.care.use.conditioner[0].value - 60'001) <= 2);
        QCOMPARE(a.care.use.conditioner[0] + b.care.use.conditioner[0], Microlitres{80'002});
        QCOMPARE(costs.nobody, LaneCare{});
        // 100.00 for 5 L: 0.02 a millilitre.
        QCOMPARE(a.product, (Money{120, "EUR"}));
        QCOMPARE(b.product, (Money{40, "EUR"}));
        QVERIFY(a.withoutPrice.isEmpty());
    }

    void withoutAPriceItSaysSo() {
        SeasonState season = seasonWithPrice();
        season.offers.clear();
        const EventCosts costs = eventCosts(season, planOfOne());
        QCOMPARE(costs.events.front().withoutPrice, QStringList("Amber"));
        QVERIFY(costs.events.front().product.isZero());
    }

    void theCheapestOfferForOnePackCounts() {
        Offer small;
        small.supply = {"amber"};
        small.pack = Amount{1'000'000};
        small.prices = {{1, {2'500, "EUR"}}, {10, {1'000, "EUR"}}};
        Offer drum = small;
        drum.pack = Amount{20'000'000};
        drum.prices = {{1, {30'000, "EUR"}}};
        const auto price = unitPriceOf({small, drum}, {"amber"});
        QVERIFY(price);
        QCOMPARE(price->per, drum.pack);
        QCOMPARE(costOf(Amount{1'000'000}, *price), (Money{1'500, "EUR"}));
        drum.retired = true;
        QCOMPARE(unitPriceOf({small, drum}, {"amber"})->per, small.pack);
        QVERIFY(!unitPriceOf({small}, {"other"}));
    }

    /// Whatever the plan: shares add up to the jobs and to the outings, to the second and the microlitre.
    void sharesAddUp() {
        const State state = bigSeason();
        const DateRange week{bigSeasonBegins(), bigSeasonBegins().addDays(6)};
        const Plan p = plan(state, dayOf(state.centre, week.first).begin, week);
        LaneCare jobs;
        for (const Job& job : p.jobs)
            jobs.add({{}, job.use});
        for (const DayPlan& day : p.days) {
            for (const Outing& outing : day.outings)
                jobs.time += outing.time.length();
        }
        SeasonState season;
        season.centre = state.centre;
        const EventCosts costs = eventCosts(season, p);
        LaneCare sum = costs.nobody;
        for (const EventCost& event : costs.events)
            sum.add(event.care);
        QVERIFY(costs.events.size() > 20);
        QCOMPARE(sum, jobs);
    }

    void staffHoursCountPaidTimeAndOvertime() {
        const Centre centre = house().centre;  // one shift from 9 to 23
        Plan p;
        p.days = {
            {day0, {}, true, {}, 0, {{{"m1"}, 1, {at(0, 8, 30), at(0, 9, 30)}, {}}, {{"m1"}, 2, {at(0, 20), at(0, 21)}, {}}}},
            {day0.addDays(4), {}, true, {}, 0, {{{"m1"}, 1, {at(4, 22, 45), at(4, 23, 15)}, {}}}}};
        const auto weeks = staffHours(centre, p);
        QCOMPARE(weeks.size(), size_t(2));  // Thursday, and the Monday after
        QCOMPARE(weeks[0].bound, hours(2));
        QCOMPARE(weeks[0].overtime, minutes(30));
        QCOMPARE(weeks[1].overtime, minutes(15));
        QCOMPARE(weeks[0].days.front().first, std::optional(at(0, 8, 30)));
        Centre alone = centre;
        alone.machines.front().attended = false;
        QCOMPARE(staffHours(alone, p).front().bound, Seconds{0});
    }

    /// A plan knows nothing of days that are over; the runs do. What was corrected counts once.
    void daysThatAreOverCountTheirRuns() {
        SeasonState season;
        season.centre = house().centre;
        const auto run = [](const char* id, Span time) {
            RunLog log;
            log.id = {id};
            log.machine = {"m1"};
            log.time = time;
            return log;
        };
        RunLog corrected = run("b", {at(-1, 20), at(-1, 21)});
        RunLog better = run("c", {at(-1, 22, 45), at(-1, 23, 15)});
        better.corrects = corrected.id;
        season.runs = {run("a", {at(-1, 10), at(-1, 10, 20)}), corrected, better, run("night", {at(0, 1), at(0, 1, 10)}),
                       run("today", {at(0, 10), at(0, 11)})};
        Plan p;
        p.now = at(0, 12);
        p.days = {{day0.addDays(-1)}, {day0, {}, true, {}, 0, {{{"m1"}, 1, {at(0, 20), at(0, 21)}, {}}}}};
        const StaffWeek week = staffHours(season, p).front();
        QCOMPARE(week.days[0].bound, minutes(20 + 30 + 10));  // the night belongs to the evening before
        QCOMPARE(week.days[0].overtime, minutes(15 + 10));
        QCOMPARE(week.days[0].outings, 3);
        QCOMPARE(week.days[1].bound, hours(1));
        QCOMPARE(week.bound, hours(2));
        season.centre.machines.front().attended = false;
        QCOMPARE(staffHours(season, p).front().bound, Seconds{0});
    }
};

QTEST_GUILESS_MAIN(EventCostsTest)
#include "tst_event_costs.moc"
