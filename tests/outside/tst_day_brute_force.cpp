// One day's search against trying everything: every order of the lanes on every machine, every way to part them into outings,
// every refill and every second, on small random days; the same score in all nine components.
//
// Runs of equal lanes are worked in one go unless dividing them saves an unmet demand, a late, overtime or tight second or an
// outing. Trying everything therefore answers twice: with whole runs, and with lanes in any order. Where the second is better in
// those six components, the search must reach the same six, by dividing.
#include "core/planning/day_search.h"
#include "tests/support/small_day.h"

#include <QTest>

#include <algorithm>

using namespace laneward::planning;

namespace {

constexpr std::int64_t nodes = 20'000;

struct Tally {
    int days = 0;
    int proven = 0;
    int crowded = 0;
    int divided = 0;
    int bounded = 0;  ///< late or tight by the bound alone
};

QByteArray text(const Score& score) {
    QByteArray line;
    for (Sec value : score)
        line += QByteArray::number(qlonglong(value)) + ' ';
    return line;
}

void compare(unsigned seed, int lanes, Tally& tally) {
    const DayProblem day = support::smallDay(seed, lanes);
    const auto any = support::bestByTrying(day, true);
    if (!any) return;
    const auto whole = support::bestByTrying(day, false);
    const bool divided =
        !whole || std::lexicographical_compare(any->begin(), any->begin() + 6, whole->begin(), whole->begin() + 6);
    const DaySolution found = solveDay(day, nodes, {});
    const Score& ours = found.placement.score;
    const Score& want = divided ? *any : *whole;
    const auto* end = divided ? ours.begin() + 6 : ours.end();
    const QByteArray both = QByteArray("seed ") + QByteArray::number(seed) + ": " + text(ours) + "against " + text(want);
    QVERIFY2(std::equal(ours.begin(), end, want.begin()), both.constData());
    const Score bound = boundOf(day, 0);
    QVERIFY2(bound <= *any, qPrintable("bound " + text(bound) + both));
    tally.bounded += bound[1] + bound[4] > 0 ? 1 : 0;
    ++tally.days;
    tally.proven += found.proven() ? 1 : 0;
    tally.crowded += want[1] + want[3] + want[4] > 0 ? 1 : 0;
    tally.divided += divided ? 1 : 0;
}

void print(const char* what, const Tally& t) {
    qInfo("%s: %d days equal, %d proven, %d of them late, tight or in overtime (%d by the bound alone), %d divided", what, t.days,
          t.proven, t.crowded, t.bounded, t.divided);
}

}  // namespace

class DayBruteForce : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void threeLanes() {
        Tally tally;
        for (unsigned seed = 2'001; seed <= 2'300; ++seed)
            compare(seed, 3, tally);
        print("3 lanes", tally);
        QVERIFY(tally.proven == tally.days);
    }

    void fourLanes() {
        Tally tally;
        for (unsigned seed = 1; seed <= 1'000; ++seed)
            compare(seed, 4, tally);
        print("4 lanes", tally);
        QVERIFY(tally.days > 900);
        QVERIFY(tally.proven == tally.days);
        QVERIFY(tally.crowded > 100 && tally.divided > 20 && tally.bounded > 20);
    }

    void fiveLanes() {
        Tally tally;
        for (unsigned seed = 1; seed <= 60; ++seed)
            compare(seed, 5, tally);
        print("5 lanes", tally);
        QVERIFY(tally.proven == tally.days);
    }
};

QTEST_APPLESS_MAIN(DayBruteForce)
#include "tst_day_brute_force.moc"
