// How late a crowd must be: worked by hand, against every order of random crowds, and on evenings.
//
// For jobs of one length that are free at once, earliest due date first is least tardy in all, on one machine or several (E. L.
// Lawler, A pseudopolynomial algorithm for sequencing jobs to minimize total tardiness, Annals of Discrete Mathematics 1, 1977;
// from memory): there the bound is the least itself.
#include "core/planning/crowd_bounds.h"
#include "core/planning/day_search.h"
#include "tests/support/random_evening.h"

#include <QTest>

#include <algorithm>
#include <random>

using namespace laneward::planning;

namespace {

Sec least(std::vector<Crowd> crowds, const CrowdHands& hands) {
    std::vector<Crowd> byMoment = crowds;
    std::stable_sort(crowds.begin(), crowds.end(), [](const Crowd& a, const Crowd& b) { return a.earliest < b.earliest; });
    std::stable_sort(byMoment.begin(), byMoment.end(), [](const Crowd& a, const Crowd& b) { return a.moment < b.moment; });
    return leastLateness({crowds, byMoment}, hands);
}

/// The least of every order in which the next lane goes to any machine.
Sec leastOfAll(const std::vector<Crowd>& lanes, const CrowdHands& hands, unsigned left, std::vector<Sec> free) {
    if (left == 0) return 0;
    Sec best = std::numeric_limits<Sec>::max();
    for (size_t l = 0; l < lanes.size(); ++l) {
        if (!(left & (1U << l))) continue;
        for (size_t h = 0; h < free.size(); ++h) {
            std::vector<Sec> then = free;
            const Sec end = std::max(free[h], lanes[l].earliest) + hands.lanes[h];
            then[h] = end + hands.next;
            best = std::min(best, std::max<Sec>(0, end - lanes[l].moment) + leastOfAll(lanes, hands, left & ~(1U << l), then));
        }
    }
    return best;
}

}  // namespace

class CrowdBounds : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// One machine, four lanes of 100 s and 20 s between them: they end at 100, 220, 340 and 460.
    void oneMachineByHand() {
        const CrowdHands one{{100}, 20};
        QCOMPARE(least({{0, 300, 4}}, one), Sec{40 + 160});
        QCOMPARE(least({{0, 460, 4}}, one), Sec{0});
        QCOMPARE(least({{0, 100, 1}, {0, 200, 3}}, one), Sec{20 + 140 + 260});
    }

    /// 90 s and 110 s side by side, 20 s between lanes: 90, 110, 200, 240.
    void twoPacesByHand() { QCOMPARE(least({{0, 90, 4}}, {{90, 110}, 20}), Sec{0 + 20 + 110 + 150}); }

    /// Lanes that are free late count from then on, however idle the machine was before: 1000 + 100, and 120 more.
    void lateOnesCountFromThenOn() { QCOMPARE(least({{0, 5'000, 3}, {1'000, 1'050, 2}}, {{100}, 20}), Sec{50 + 170}); }

    /// Where going home and out again is quicker than a move, that is the shortest way.
    void homeAndOutMayBeQuicker() {
        DayProblem day = support::problemOf(support::randomEvening(1, {4, 2, 3}));
        std::vector<Loose> loose;
        for (const DayTask& task : day.tasks)
            loose.push_back({&task, 0, 0, 0});
        const Sec next = day.machines.front().next;
        QVERIFY(next > 12);
        QCOMPARE(crowdHands(day, loose).next, next);
        for (DayMachine& machine : day.machines) {
            machine.leave = 7;
            machine.back = 5;
        }
        QCOMPARE(crowdHands(day, loose).next, Sec{12});
    }

    void nobodyAndNothing() {
        QCOMPARE(least({}, {{100}, 20}), Sec{0});
        QCOMPARE(least({{0, 1, 1}}, {}), Sec{0});
    }

    void neverMoreThanTheLeastOfAllOrders() {
        std::mt19937 generator(7);
        const auto pick = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(generator); };
        int late = 0;
        int equal = 0;
        int together = 0;
        for (int i = 0; i < 2'000; ++i) {
            CrowdHands hands{{}, pick(0, 3)};
            for (int m = pick(1, 2); m > 0; --m)
                hands.lanes.push_back(pick(3, 9));
            std::sort(hands.lanes.begin(), hands.lanes.end());
            std::vector<Crowd> lanes;
            const bool atOnce = i % 4 == 0;
            for (int l = pick(2, 5); l > 0; --l)
                lanes.push_back({atOnce ? 0 : pick(0, 25), pick(5, 40), 1});
            const Sec all = leastOfAll(lanes, hands, (1U << lanes.size()) - 1, std::vector<Sec>(hands.lanes.size(), 0));
            const Sec bound = least(lanes, hands);
            QVERIFY(bound <= all);
            if (atOnce) QCOMPARE(bound, all);
            late += all > 0 ? 1 : 0;
            equal += all > 0 && bound == all ? 1 : 0;
            together += atOnce && all > 0 ? 1 : 0;
        }
        qInfo("%d crowds must be late, %d by just the bound; %d of them free at once", late, equal, together);
        QVERIFY(late > 500 && together > 100);
    }

    /// A person less is a hand less, and no evening is placed better than its bound.
    void boundsEvenings() {
        int late = 0;
        for (unsigned seed = 1; seed <= 60; ++seed) {
            const DayProblem day = support::problemOf(support::randomEvening(seed, {12, 2, 3}));
            const Score bound = boundOf(day, 0);
            const Score score = solveDay(day, 200, {}).placement.score;
            QVERIFY2(bound <= score, qPrintable(QString::number(seed)));
            late += bound[score_part::Late] > 0 ? 1 : 0;
            DayProblem alone = day;
            for (DayShift& shift : alone.shifts)
                shift.people = 1;
            QVERIFY(boundOf(alone, 0)[score_part::Late] >= bound[score_part::Late]);
        }
        QVERIFY(late > 0);
    }
};

QTEST_APPLESS_MAIN(CrowdBounds)
#include "tst_crowd_bounds.moc"
