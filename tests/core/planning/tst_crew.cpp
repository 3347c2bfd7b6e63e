// Spans, and people given to outings: exact, against trying every way.
#include "core/planning/ground.h"
#include "core/planning/outcomes.h"

#include <QTest>

#include <random>

using namespace laneward;
using namespace laneward::planning;

namespace {

Span span(std::int64_t a, std::int64_t b) { return {{a}, {b}}; }

ShiftSpan shiftOf(std::int64_t a, std::int64_t b, int people, std::int64_t over = 0) {
    return {{"s"}, span(a, b), span(a - over, b + over), people};
}

/// Every way to give outings to shifts.
std::optional<Seconds> bruteForce(const std::vector<Span>& outings, const std::vector<ShiftSpan>& shifts) {
    std::optional<Seconds> best;
    size_t ways = 1;
    for (size_t i = 0; i < outings.size(); ++i)
        ways *= shifts.size();
    for (size_t way = 0; way < ways; ++way) {
        Seconds cost;
        bool possible = true;
        std::vector<size_t> given;
        for (size_t i = 0, rest = way; i < outings.size(); ++i, rest /= shifts.size())
            given.push_back(rest % shifts.size());
        for (size_t i = 0; i < outings.size(); ++i) {
            const ShiftSpan& s = shifts[given[i]];
            possible = possible && s.allowance.begin <= outings[i].begin && outings[i].end <= s.allowance.end;
            int busy = 0;
            for (size_t j = 0; j < outings.size(); ++j)
                busy += given[j] == given[i] && outings[j].contains(outings[i].begin) ? 1 : 0;
            possible = possible && busy <= s.people;
            for (std::int64_t t = outings[i].begin.seconds; t < outings[i].end.seconds; ++t)
                cost += s.work.contains({t}) ? Seconds{0} : Seconds{1};
        }
        if (possible && (!best || cost < *best)) best = cost;
    }
    return best;
}

}  // namespace

class TestCrew : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void spans() {
        QCOMPARE(merged({span(5, 7), span(1, 3), span(3, 4), span(9, 9)}), (Spans{span(1, 4), span(5, 7)}));
        QCOMPARE(without({span(0, 10)}, {span(2, 3), span(5, 20)}), (Spans{span(0, 2), span(3, 5)}));
        QCOMPARE(without({span(0, 10), span(20, 30)}, {span(8, 22)}), (Spans{span(0, 8), span(22, 30)}));
        QCOMPARE(without({span(3, 4)}, {span(0, 9)}), Spans{});
        QCOMPARE(common({span(0, 5), span(8, 12)}, {span(3, 9)}), (Spans{span(3, 5), span(8, 9)}));
    }

    void oneAtATime() {
        const std::vector<ShiftSpan> one{shiftOf(0, 100, 1)};
        QVERIFY(leastOvertime({span(0, 10), span(10, 20)}, one));
        QVERIFY(!leastOvertime({span(0, 11), span(10, 20)}, one));
        QVERIFY(leastOvertime({span(0, 11), span(10, 20)}, {shiftOf(0, 100, 2)}));
        QVERIFY(!leastOvertime({span(95, 101)}, one));
        QCOMPARE(*leastOvertime({span(95, 101)}, {shiftOf(0, 100, 1, 5)}), Seconds{1});
        QCOMPARE(*leastOvertime({}, {}), Seconds{0});
    }

    void sameAsTryingEveryWay() {
        std::mt19937 g(7);
        const auto pick = [&](int low, int high) { return low + int(g() % unsigned(high - low + 1)); };
        int possible = 0;
        for (int k = 0; k < 2'000; ++k) {
            std::vector<Span> outings;
            for (int n = pick(1, 5); n > 0; --n) {
                const int begin = pick(0, 40);
                outings.push_back(span(begin, begin + pick(1, 15)));
            }
            std::vector<ShiftSpan> shifts;
            for (int n = pick(1, 3); n > 0; --n) {
                const int begin = pick(0, 25);
                shifts.push_back(shiftOf(begin, begin + pick(5, 40), pick(1, 2), pick(0, 10)));
            }
            const auto exact = leastOvertime(outings, shifts);
            const auto tried = bruteForce(outings, shifts);
            QCOMPARE(exact.has_value(), tried.has_value());
            if (exact) QCOMPARE(*exact, *tried);
            possible += exact ? 1 : 0;
        }
        QVERIFY(possible > 200);
    }
};

QTEST_GUILESS_MAIN(TestCrew)
#include "tst_crew.moc"
