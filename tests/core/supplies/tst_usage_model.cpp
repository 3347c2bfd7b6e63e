// What is learned from fills, with answers worked out by hand. Posteriors and forgetting: tests/outside/tst_usage_model.cpp.
#include "core/supplies/usage_model.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace laneward;

namespace {

constexpr std::int64_t tank = 1'000'000;

UsageRule rule() {
    UsageRule one;
    one.tank = Amount{tank};
    return one;
}

UsageFill fill(int n, std::int64_t nominal, std::int64_t poured) {
    UsageFill one{{QString("fill %1").arg(n, 3, 10, QChar('0'))}, Instant{1'000 * (n + 1)}, Amount{nominal}, Amount{poured}};
    one.lanes = int(nominal / 20'000);
    return one;
}

/// 800 mL nominal, 5 % more and 10 mL in each fill, up to a line that is met `error` off, now above, now below.
std::vector<UsageFill> fills(int count, std::int64_t error = 0) {
    std::vector<UsageFill> all;
    for (int n = 0; n < count; ++n)
        all.push_back(fill(n, 800'000, 850'000 + (n % 2 ? -2 : 2) * error));
    return all;
}

bool near(double a, double b, double tolerance) {
    if (std::abs(a - b) <= tolerance) return true;
    qWarning("%.9g instead of %.9g", a, b);
    return false;
}

}  // namespace

class UsageTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void priorAlone();
    void learnsTheRate();
    void millilitresPerLane();
    void orderDoesNotMatter();
    void leavesOutWhatCannotBe();
    void lineErrorComesBack();
    void brokenChains();
    void pouredIsWhatTheNextFillSays();
    void driftsAfterTheMachine();
    void usedAndCountedWithoutPurge();
};

void UsageTest::priorAlone() {
    const Usage usage = learnUsage({}, rule());
    QVERIFY(usage.fills().empty());
    QVERIFY(near(usage.factor().centre, 1, 1e-12));
    QVERIFY(near(usage.factor().scale, 0.1, 1e-12));
    QVERIFY(near(usage.factor().freedom, 3, 0));
    QVERIFY(near(usage.purge().scale, 20'000, 1e-6));
    QCOMPARE(usage.nominalPerLane(), 0.0);
    QCOMPARE(usage.use(0).scale, 0.0);
    // A tank: k 0.1, purge 0.02, noise 0.02, all in tanks, and a little drift.
    const double still = std::sqrt(0.01 + 0.0004 + 0.0004);
    QVERIFY(usage.use(tank).scale > still * tank && usage.use(tank).scale < 1.01 * still * tank);
}

void UsageTest::learnsTheRate() {
    const Usage usage = learnUsage(fills(40), rule());
    QCOMPARE(usage.fills().size(), size_t(40));
    QVERIFY(near(usage.tanksPerFill(), 0.8, 1e-12));
    QVERIFY(near(usage.rate().mean, 850.0 / 800, 0.002));
    QVERIFY(near(usage.use(8'000'000).centre, 8'500'000, 16'000));
    QVERIFY(usage.use(8'000'000).interval(0.9).contains(8'500'000));
    QVERIFY(usage.rate().scale < 0.0004);
    // Fills of one size cannot tell k from purge: each alone is less certain than both together.
    QVERIFY(usage.factor().scale > 2 * usage.perLane(1).scale);
}

void UsageTest::millilitresPerLane() {
    std::vector<UsageFill> all = fills(40);
    all[7].lanes = 0;  // not known: does not count
    const Usage usage = learnUsage(all, rule());
    QVERIFY(near(usage.nominalPerLane(), 20'000, 1e-9));
    const Student lane = usage.perLane(usage.nominalPerLane());
    QVERIFY(near(lane.centre, 21'250, 50));
    QVERIFY(lane.interval(0.9).contains(21'250));
    QVERIFY(lane.interval(0.9).high - lane.interval(0.9).low < 500);
}

void UsageTest::orderDoesNotMatter() {
    std::vector<UsageFill> all = fills(9, 3'000);
    const Usage usage = learnUsage(all, rule());
    std::swap(all[1], all[6]);
    std::swap(all[0], all[8]);
    const Usage again = learnUsage(all, rule());
    QVERIFY(usage.fills() == again.fills());
    QCOMPARE(usage.factor(), again.factor());
}

void UsageTest::leavesOutWhatCannotBe() {
    std::vector<UsageFill> all = fills(10);
    const Usage clean = learnUsage(all, rule());
    all.push_back(fill(20, 0, 850'000));
    all.push_back(fill(21, 800'000, 0));
    all.push_back(fill(22, 800'000, 80'000'000));  // a hundred times too much
    all.push_back(fill(23, 800'000, 100'000));
    const Usage usage = learnUsage(all, rule());
    QCOMPARE(usage.leftOut(), 4);
    QVERIFY(usage.fills() == clean.fills());
    QCOMPARE(usage.factor(), clean.factor());
}

/// The same spread of fills, once as the error of a line that comes back, once as noise: the sum of many is far surer in the
/// first.
void UsageTest::lineErrorComesBack() {
    std::vector<UsageFill> line = fills(60, 20'000);
    std::vector<UsageFill> noise = fills(60);
    std::mt19937 coin(1);
    for (UsageFill& one : noise)
        one.poured += Amount{coin() % 2 ? -40'000 : 40'000};
    const Usage back = learnUsage(line, rule());
    const Usage apart = learnUsage(noise, rule());
    QVERIFY(back.lineShare() > 2);
    QVERIFY(apart.lineShare() < 1);
    QVERIFY(back.use(20 * tank).scale < apart.use(20 * tank).scale / 2);
}

void UsageTest::brokenChains() {
    std::vector<UsageFill> all = fills(12, 5'000);
    UsageRule fixed = rule();
    fixed.lineShare = 1;
    const Usage chained = learnUsage(all, fixed);
    for (UsageFill& one : all)
        one.follows = false;
    const Usage apart = learnUsage(all, fixed);
    QVERIFY(chained.rate().variance < apart.rate().variance);
    // One that is left out breaks it as well.
    all = fills(12, 5'000);
    all.push_back(fill(5, 0, 1));
    all.back().at = Instant{6'500};
    const Usage broken = learnUsage(all, fixed);
    all = fills(12, 5'000);
    all[6].follows = false;
    QCOMPARE(broken.factor(), learnUsage(all, fixed).factor());
}

void UsageTest::pouredIsWhatTheNextFillSays() {
    UsageRule fixed = rule();
    fixed.lineShare = 2;
    fixed.discount = fixed.scaleDiscount = 1;
    for (bool follows : {true, false}) {
        Usage usage(fixed);
        QVERIFY(!usage.learn(fill(0, 0, 0)));
        for (const UsageFill& one : fills(7, 4'000))
            QVERIFY(usage.learn(one));
        if (!follows) QVERIFY(!usage.learn(fill(8, 0, 0)));
        const double before = usage.logLikelihood();
        const double said = usage.poured(800'000).logDensity(861'000) + std::log(double(tank));  // as of tanks
        QVERIFY(usage.learn(fill(9, 800'000, 861'000)));
        QVERIFY(near(usage.logLikelihood() - before, said, 1e-9));
    }
}

void UsageTest::driftsAfterTheMachine() {
    std::vector<UsageFill> all = fills(60);
    for (int n = 60; n < 90; ++n)
        all.push_back(fill(n, 800'000, 850'000 + (n - 60) * 3'000));
    const Usage usage = learnUsage(all, rule());
    QVERIFY(usage.discount() < learnUsage(fills(60), rule()).discount());
    const double latest = (850'000.0 + 29 * 3'000) / 800'000;
    QVERIFY(near(usage.rate().mean, latest, 0.02));
    UsageRule stubborn = rule();
    stubborn.discount = 1;
    QVERIFY(learnUsage(all, stubborn).rate().mean < latest - 0.04);
    // What may still change widens what is far more than what is near.
    const UseRate rate = usage.rate();
    UseRate still = rate;
    still.drift = 0;
    QVERIFY(rate.use(20 * tank).scale / still.use(20 * tank).scale > rate.use(tank).scale / still.use(tank).scale);
}

/// Cloth by the lane: 400 mm each as planned, 10 % more really; counted, so there is neither line nor purge.
void UsageTest::usedAndCountedWithoutPurge() {
    UsageRule cloth;
    cloth.tank = Amount{40'000};
    cloth.purgeDeviation = 0;
    cloth.lineShare = 0;
    std::vector<UsageFill> counts;
    for (int n = 0; n < 12; ++n)
        counts.push_back(fill(n, 40'000, n % 2 ? 44'400 : 43'600));
    const Usage usage = learnUsage(counts, cloth);
    QVERIFY(near(usage.factor().centre, 1.1, 0.005));
    QVERIFY(near(usage.rate().mean, usage.factor().centre, 1e-12));
    QVERIFY(near(usage.perLane(400).centre, 440, 2));
}

QTEST_GUILESS_MAIN(UsageTest)
#include "tst_usage_model.moc"
