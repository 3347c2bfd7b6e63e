// The charging order against trying every way to share the outlet, hour by hour, and against the worked example of the rule.
#include "core/service/charging.h"

#include <QTest>

#include <functional>
#include <map>
#include <random>

using namespace laneward;

namespace {

constexpr Instant hour(int n) { return Instant{1'700'000'000} + hours(n); }

ChargeNeed need(const char* pack, int from, int length, int by) { return {{pack}, hour(from), hours(length), hour(by)}; }

/// The least possible greatest lateness in hours (0 when all are in time), over all ways to give each hour to a pack or nobody.
int leastLateness(const std::vector<ChargeNeed>& needs) {
    std::vector<int> left;
    for (const ChargeNeed& n : needs)
        left.push_back(int(n.length.value / 3600));
    std::map<std::pair<int, std::vector<int>>, int> known;
    const std::function<int(int)> from = [&](int now) -> int {
        if (std::all_of(left.begin(), left.end(), [](int l) { return l == 0; })) return 0;
        const auto key = std::pair(now, left);
        if (const auto found = known.find(key); found != known.end()) return found->second;
        int best = now < 40 ? from(now + 1) : 1'000;
        for (size_t i = 0; i < needs.size(); ++i) {
            if (left[i] == 0 || needs[i].from > hour(now)) continue;
            --left[i];
            const int late = left[i] > 0 ? 0 : std::max(0, now + 1 - int((needs[i].by - hour(0)).value / 3600));
            best = std::min(best, std::max(late, from(now + 1)));
            ++left[i];
        }
        return known[key] = best;
    };
    return from(0);
}

}  // namespace

class ChargingTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void nothingToDo();
    void theEarlierIsNeededFirst();
    void anArrivalInterrupts();
    void waitsForAPack();
    void leastLatenessOfAllWays();
};

void ChargingTest::nothingToDo() {
    QVERIFY(chargingTurns({}).empty());
    QVERIFY(chargingTurns({need("a", 0, 0, 5)}).empty());
}

void ChargingTest::theEarlierIsNeededFirst() {
    const auto turns = chargingTurns({need("a", 0, 4, 20), need("b", 0, 4, 6)});
    const std::vector<ChargeTurn> expected{{{"b"}, {hour(0), hour(4)}, true, {}}, {{"a"}, {hour(4), hour(8)}, true, {}}};
    QCOMPARE(turns, expected);
    QCOMPARE(chargingTurns({need("a", 0, 4, 20), need("b", 0, 4, 2)}).front().late, hours(2));
}

void ChargingTest::anArrivalInterrupts() {
    const auto turns = chargingTurns({need("a", 0, 6, 20), need("b", 2, 3, 6)});
    const std::vector<ChargeTurn> expected{
        {{"a"}, {hour(0), hour(2)}, false, {}}, {{"b"}, {hour(2), hour(5)}, true, {}}, {{"a"}, {hour(5), hour(9)}, true, {}}};
    QCOMPARE(turns, expected);
}

void ChargingTest::waitsForAPack() {
    const auto turns = chargingTurns({need("a", 0, 1, 20), need("b", 5, 1, 30)});
    QCOMPARE(turns.size(), size_t(2));
    QCOMPARE(turns[1].time.begin, hour(5));
}

void ChargingTest::leastLatenessOfAllWays() {
    std::mt19937_64 dice(20261126);
    const auto below = [&](int n) { return int(dice() % std::uint64_t(n)); };
    int late = 0;
    int interrupted = 0;
    for (int round = 0; round < 400; ++round) {
        std::vector<ChargeNeed> needs;
        for (const char* pack : {"a", "b", "c", "d"}) {
            const int from = below(8);
            needs.push_back(need(pack, from, 1 + below(5), from + 1 + below(14)));
            if (needs.size() >= 2 && below(3) == 0) break;
        }
        const std::vector<ChargeTurn> turns = chargingTurns(needs);
        Seconds worst{0};
        std::map<ItemId, Seconds> charged;
        Instant end{0};
        for (const ChargeTurn& turn : turns) {
            QVERIFY(turn.time.begin >= end && turn.time.begin < turn.time.end);  // one outlet
            end = turn.time.end;
            charged[turn.pack] += turn.time.length();
            worst = std::max(worst, turn.late);
            interrupted += !turn.isLast;
        }
        for (const ChargeNeed& n : needs) {
            QCOMPARE(charged[n.pack], n.length);
            const auto first = std::find_if(turns.begin(), turns.end(), [&](const ChargeTurn& t) { return t.pack == n.pack; });
            QVERIFY(first->time.begin >= n.from);
        }
        QCOMPARE(worst, hours(leastLateness(needs)));
        late += worst > Seconds{0};
    }
    qInfo("400 outlets: as little late as any way to share them, %d of them late, %d times interrupted", late, interrupted);
    QVERIFY(late > 50 && late < 350 && interrupted > 20);
}

QTEST_GUILESS_MAIN(ChargingTest)
#include "tst_charging.moc"
