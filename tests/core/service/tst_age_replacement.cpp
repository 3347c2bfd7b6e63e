// When never to replace early, costs and laws that cannot be, and ends of scales. Published values:
// tests/outside/tst_age_replacement.cpp.
#include "core/service/age_replacement.h"

#include <QTest>

#include <cmath>

using namespace laneward;

class AgeCostsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void neverWhenAFailureCostsNoMore();
    void flatRangeReachesRunToFailure();
    void unitsDoNotMatter();
    void verySteepAndVeryFlatLaws();
    void endsOfTheCurve();
    void lifeThatEndsAtOneAge();
    void refusals_data();
    void refusals();
};

void AgeCostsTest::neverWhenAFailureCostsNoMore() {
    for (double failed : {0.5, 1.0}) {
        const auto costs = AgeCosts::of(Weibull{4, 100}, {1, failed});
        QVERIFY(costs && costs->best().never);
        QVERIFY(std::isinf(costs->best().flat.high) && std::isfinite(costs->best().flat.low));
        QVERIFY(costs->at(costs->best().flat.low) <= costs->best().cost * 1.02);
        QVERIFY(costs->at(costs->best().flat.low * 0.99) > costs->best().cost * 1.02);
    }
}

void AgeCostsTest::flatRangeReachesRunToFailure() {
    const auto little = AgeCosts::of(Weibull{1.3, 100}, {1, 2});
    QVERIFY(little && !little->best().never);
    QVERIFY(little->best().runToFailure <= 1.02 * little->best().cost);
    QVERIFY(std::isinf(little->best().flat.high));
    const auto much = AgeCosts::of(Weibull{3, 100}, {1, 10});
    QVERIFY(much && std::isfinite(much->best().flat.high) && much->best().flat.contains(much->best().age));
}

void AgeCostsTest::unitsDoNotMatter() {
    const double best = AgeCosts::of(Weibull{2.5, 1'000}, {1, 5})->best().age;
    for (double factor : {1e-200, 1e-6, 3'600.0, 1e200}) {
        const auto other = AgeCosts::of(Weibull{2.5, 1'000 * factor}, {100, 500});
        QVERIFY(other && std::abs(other->best().age / factor - best) < 1e-9 * best);
    }
}

void AgeCostsTest::verySteepAndVeryFlatLaws() {
    const auto steep = AgeCosts::of(Weibull{1e6, 100}, {1, 5});
    QVERIFY(steep && steep->best().age < 100 && steep->best().age > 99.9);
    QVERIFY(std::abs(steep->best().cost - 0.01) < 1e-6);
    QVERIFY(AgeCosts::of(Weibull{1.0001, 100}, {1, 5})->best().never);  // no part would live to that age
    const auto low = AgeCosts::of(Weibull{0.05, 100}, {1, 5});
    QVERIFY(low && low->best().never);
    const double sooner = bestAgePerScale(2, {1, 1e9});
    QVERIFY(sooner > 0 && sooner < 1e-4);
}

void AgeCostsTest::endsOfTheCurve() {
    const auto costs = AgeCosts::of(Weibull{2.5, 1'000}, {1, 5});
    QVERIFY(std::isinf(costs->at(0)) && std::isinf(costs->at(-1)));
    QCOMPARE(costs->at(HUGE_VAL), costs->best().runToFailure);
    const auto curve = costs->curve({100, 2'000}, 20);
    QCOMPARE(curve.size(), size_t(20));
    QCOMPARE(curve.front().age, 100.0);
    QCOMPARE(curve.back().age, 2'000.0);
    QCOMPARE(curve.back().cost, costs->at(2'000));
}

void AgeCostsTest::lifeThatEndsAtOneAge() {
    const auto costs = AgeCosts::of([](double age) { return age < 50 ? 1.0 : 0.0; }, 100, {1, 5});
    QVERIFY(costs && !costs->best().never);
    QVERIFY(std::abs(costs->best().age - 50) < 0.5);
    const auto forever = AgeCosts::of([](double) { return 1.0; }, 100, {1, 5});
    QVERIFY(forever && forever->best().never);  // the longer the better, up to all that is known
}

void AgeCostsTest::refusals_data() {
    QTest::addColumn<double>("shape");
    QTest::addColumn<double>("planned");
    QTest::addColumn<double>("failed");
    QTest::addColumn<QByteArray>("rule");
    QTest::newRow("free") << 2.0 << 0.0 << 5.0 << QByteArray("replacement.costs");
    QTest::newRow("negative") << 2.0 << 1.0 << -5.0 << QByteArray("replacement.costs");
    QTest::newRow("no number") << 2.0 << std::nan("") << 5.0 << QByteArray("replacement.costs");
    QTest::newRow("endless") << 2.0 << 1.0 << HUGE_VAL << QByteArray("replacement.costs");
    QTest::newRow("shape of nothing") << 0.0 << 1.0 << 5.0 << QByteArray("replacement.law");
    QTest::newRow("shape no number") << std::nan("") << 1.0 << 5.0 << QByteArray("replacement.law");
    QTest::newRow("mean beyond doubles") << 0.001 << 1.0 << 5.0 << QByteArray("replacement.law");
}

void AgeCostsTest::refusals() {
    QFETCH(double, shape);
    QFETCH(double, planned);
    QFETCH(double, failed);
    QFETCH(QByteArray, rule);
    const auto costs = AgeCosts::of(Weibull{shape, 100}, {planned, failed});
    QVERIFY(!costs);
    QCOMPARE(costs.error().finding.rule, rule);
    QVERIFY(!AgeCosts::of([](double) { return 1.0; }, std::nan(""), {1, 5}));
    QVERIFY(!AgeCosts::of([](double) { return 0.0; }, 10, {1, 5}));
}

QTEST_GUILESS_MAIN(AgeCostsTest)
#include "tst_age_replacement.moc"
