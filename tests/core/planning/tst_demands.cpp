// The demand table, row by row, to the second; demands and gaps of a lane.
#include "tests/support/planning_builders.h"

#include <QTest>

using namespace support;

namespace {

Demand demandOf(DemandKind kind, const char* pattern = "p1") {
    Demand d;
    d.kind = kind;
    d.lane = 1;
    if (pattern) d.pattern = PatternId{QString::fromLatin1(pattern)};
    d.longestAge = hours(12);
    d.longestPlay = hours(3);
    d.playBegins = at(0, 18);
    return d;
}

LaneCondition conditionOf(Treatment t, const char* pattern, Instant end, Seconds played = {}) {
    LaneCondition c;
    c.treated = true;
    c.last = t;
    if (pattern) c.pattern = PatternId{QString::fromLatin1(pattern)};
    c.end = end;
    c.playedSince = played;
    return c;
}

constexpr Treatment both = Treatment::CleanAndCondition;
constexpr Treatment condition = Treatment::ConditionOnly;
constexpr Treatment clean = Treatment::CleanOnly;

DemandSet demandsFor(const State& s, Instant now = at(0, 6), int days = 1) {
    const DateRange range{day0, day0.addDays(days - 1)};
    return demandsOf(s, occupancyOf(s.series, s.centre, range), now, range);
}

}  // namespace

class TestDemands : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void fresh() {
        const Demand d = demandOf(DemandKind::Fresh);
        QVERIFY(satisfies(conditionOf(both, "p1", at(0, 17)), d));
        QVERIFY(!satisfies(conditionOf(both, "p2", at(0, 17)), d));
        QVERIFY(!satisfies(conditionOf(condition, "p1", at(0, 17)), d));
        QVERIFY(!satisfies(conditionOf(clean, nullptr, at(0, 17)), d));
        QVERIFY(!satisfies(conditionOf(both, "p1", at(0, 17), Seconds{1}), d));
        QVERIFY(satisfies(conditionOf(both, "p1", at(0, 6)), d));
        QVERIFY(!satisfies(conditionOf(both, "p1", at(0, 5, 59, 59)), d));
        QVERIFY(satisfies(conditionOf(both, "p1", at(0, 18)), d));
        QVERIFY(!satisfies(conditionOf(both, "p1", at(0, 18, 0, 1)), d));
        QVERIFY(!satisfies({}, d));
    }

    void leastKindIsTheLeast() {
        Demand d = demandOf(DemandKind::Fresh);
        d.least = condition;
        QVERIFY(satisfies(conditionOf(condition, "p1", at(0, 17)), d));
        QVERIFY(satisfies(conditionOf(both, "p1", at(0, 17)), d));
        QVERIFY(!satisfies(conditionOf(clean, nullptr, at(0, 17)), d));
        d = demandOf(DemandKind::Fresh, nullptr);
        d.least = clean;
        QVERIFY(satisfies(conditionOf(clean, nullptr, at(0, 17)), d));
        QVERIFY(satisfies(conditionOf(both, "p2", at(0, 17)), d));
        QVERIFY(!satisfies(conditionOf(condition, "p2", at(0, 17)), d));
    }

    void anyPatternIsSomePattern() {
        const Demand d = demandOf(DemandKind::Pattern, nullptr);
        QVERIFY(satisfies(conditionOf(both, "p2", at(-9, 1)), d));
        QVERIFY(!satisfies(conditionOf(clean, nullptr, at(0, 17)), d));
    }

    void recent() {
        const Demand d = demandOf(DemandKind::Recent);
        QVERIFY(satisfies(conditionOf(both, "p1", at(0, 6), hours(3)), d));
        QVERIFY(!satisfies(conditionOf(both, "p1", at(0, 6), hours(3) + Seconds{1}), d));
        QVERIFY(!satisfies(conditionOf(both, "p1", at(0, 5, 59, 59), {}), d));
        QVERIFY(!satisfies(conditionOf(both, "p2", at(0, 17), {}), d));
    }

    void patternWhateverItsAge() {
        const Demand d = demandOf(DemandKind::Pattern);
        QVERIFY(satisfies(conditionOf(both, "p1", at(-100, 0), hours(200)), d));
        QVERIFY(satisfies(conditionOf(condition, "p1", at(-100, 0), hours(200)), d));
        QVERIFY(!satisfies(conditionOf(both, "p2", at(0, 17)), d));
    }

    void strippedAndAsItIs() {
        const Demand stripped = demandOf(DemandKind::Stripped, nullptr);
        QVERIFY(satisfies(conditionOf(clean, nullptr, at(0, 17)), stripped));
        QVERIFY(!satisfies(conditionOf(clean, nullptr, at(0, 17), Seconds{1}), stripped));
        QVERIFY(!satisfies(conditionOf(both, "p1", at(0, 17)), stripped));
        QVERIFY(satisfies({}, demandOf(DemandKind::AsItIs)));
    }

    void gapsLieBetweenPlays() {
        State s = house(2);
        s.series = {eventOf("a", 0, {10, 0}, 120, {1, 2}), eventOf("b", 0, {18, 0}, 120, {1})};
        const DemandSet set = demandsFor(s);
        QCOMPARE(set.demands.size(), size_t(3));
        const auto& gaps = set.gaps[0];
        QCOMPARE(gaps.size(), size_t(3));
        QCOMPARE(gaps[0].time, (Span{at(0, 6), at(0, 10)}));
        QCOMPARE(gaps[1].time, (Span{at(0, 12, 10), at(0, 18)}));  // cleared ten minutes after the booked end
        QCOMPARE(gaps[1].playBefore, hours(2));
        QCOMPARE(gaps[2].time, (Span{at(0, 20, 10), at(1, 5)}));
        const Demand& d = set.demands[*gaps[1].demand];
        QCOMPARE(d.due, at(0, 17, 45));
        QCOMPARE(d.target, at(0, 17, 35));
        QCOMPARE(set.gaps[1].size(), size_t(2));
    }

    void strippedIsDueAtTheEndOfTheDay() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2}), eventOf("b", 0, {21, 0}, 60, {1})};
        s.series[0].demands.push_back(asks(DemandKind::Stripped, {1}, nullptr));
        const DemandSet set = demandsFor(s);
        const auto& gaps = set.gaps[0];
        QCOMPARE(gaps[2].time, (Span{at(0, 22, 10), at(1, 5)}));  // after the last play, not after the event itself
        QCOMPARE(set.demands[*gaps[2].demand].kind, DemandKind::Stripped);
        QCOMPARE(set.demands[*gaps[2].demand].due, at(1, 5));
    }

    void conflictLeavesOutTheLater() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2}), eventOf("b", 0, {19, 0}, 120, {1})};
        s.series[1].demands[0].pattern = PatternId{"p2"};
        const DemandSet set = demandsFor(s);
        QCOMPARE(set.demands.size(), size_t(2));
        for (const Demand& d : set.demands)
            QCOMPARE(d.playBegins, at(0, 18));
        QCOMPARE(set.gaps[0].back().time.begin, at(0, 21, 10));  // nobody knows who plays, so the lane stays blocked
    }

    void lanesOutOfServiceAskForNothing() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2})};
        s.centre.outages.push_back({{"o"}, {1}, {}, at(0, 17), at(0, 19), {}, 0});
        QCOMPARE(demandsFor(s).demands.size(), size_t(1));
        s.centre.outages[0].end = at(0, 18);
        QCOMPARE(demandsFor(s).demands.size(), size_t(2));
    }

    void nothingIsAskedOfThePast() {
        State s = house(2);
        s.series = {eventOf("a", 0, {10, 0}, 120, {1}), eventOf("b", 0, {18, 0}, 120, {1})};
        const DemandSet set = demandsFor(s, at(0, 11));
        QCOMPARE(set.demands.size(), size_t(1));
        QCOMPARE(set.gaps[0].front().time.begin, at(0, 12, 10));
    }

    void lanesOfOneEventMayDiffer() {
        State s = house(2);
        s.series = {eventOf("a", 0, {18, 0}, 120, {1, 2})};
        s.series[0].demands = {asks(DemandKind::Fresh, {1}, "p1"), asks(DemandKind::Recent, {2}, "p2")};
        const DemandSet set = demandsFor(s);
        QCOMPARE(set.demands[0].kind, DemandKind::Fresh);
        QCOMPARE(set.demands[1].kind, DemandKind::Recent);
        QCOMPARE(*set.demands[1].pattern, PatternId{"p2"});
    }
};

QTEST_GUILESS_MAIN(TestDemands)
#include "tst_demands.moc"
