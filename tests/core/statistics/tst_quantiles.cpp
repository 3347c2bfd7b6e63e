// Quantiles by counting against sorted values, and Student's t with centre and scale.
#include "core/statistics/quantile_counter.h"
#include "core/statistics/random_numbers.h"
#include "core/statistics/student.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace laneward;

namespace {

const std::vector<double> levels{0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99};

double sorted(std::vector<double> values, double level) {
    std::sort(values.begin(), values.end());
    return values[size_t(std::ceil(level * double(values.size()))) - 1];
}

}  // namespace

class QuantilesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void manyValues_data();
    void manyValues();
    void manyEqualValues();
    void fewValues();
    void student();
};

void QuantilesTest::manyValues_data() {
    QTest::addColumn<double>("heavy");  // 0 = normal; else the power of an exponential variable
    QTest::newRow("normal") << 0.0;
    QTest::newRow("exponential") << 1.0;
    QTest::newRow("heavy tail") << 4.0;
}

void QuantilesTest::manyValues() {
    QFETCH(double, heavy);
    Draws draws(5);
    std::vector<double> values(10'000);
    for (double& value : values)
        value = 50 + (heavy > 0 ? std::pow(draws.exponential(), heavy) : draws.normal());
    const double bin =
        (*std::max_element(values.begin(), values.begin() + 256) - *std::min_element(values.begin(), values.begin() + 256)) /
        1'024;
    const std::vector<double> found = QuantileCounter(levels).of(values);
    for (size_t i = 0; i < levels.size(); ++i)
        QVERIFY(std::abs(found[i] - sorted(values, levels[i])) <= bin);
}

/// Two of three are nothing at all: that is exactly what the lower quantiles are.
void QuantilesTest::manyEqualValues() {
    Draws draws(6);
    std::vector<double> values(9'000);
    for (double& value : values)
        value = draws.uniform() < 2.0 / 3 ? 0 : 10 + draws.exponential();
    const std::vector<double> found = QuantileCounter(levels).of(values);
    QCOMPARE(found[0], 0.0);
    QCOMPARE(found[3], 0.0);
    QVERIFY(found[4] > 10);
    QCOMPARE(QuantileCounter(levels).of(std::vector<double>(500, 7.0)), std::vector<double>(levels.size(), 7.0));
}

void QuantilesTest::fewValues() {
    const std::vector<double> values{5, 1, 4, 2, 3};
    QCOMPARE(QuantileCounter({0.2, 0.5, 0.9}).of(values), (std::vector<double>{1, 3, 5}));
    QCOMPARE(QuantileCounter({0.5}).of(std::vector<double>{8}), std::vector<double>{8});
}

/// NIST/SEMATECH e-Handbook 1.3.6.7.2: t(0.95, 10) = 1.812, t(0.975, 10) = 2.228 (from memory).
void QuantilesTest::student() {
    const Student t{100, 10, 10};
    QVERIFY(std::abs(t.quantile(0.95) - 118.12) < 0.01);
    QVERIFY(std::abs(t.interval(0.95).low - 77.72) < 0.01);
    QVERIFY(std::abs(t.below(t.quantile(0.3)) - 0.3) < 1e-12);
    // The density is the slope of the distribution.
    const double slope = (t.below(93.001) - t.below(92.999)) / 0.002;
    QVERIFY(std::abs(std::exp(t.logDensity(93)) / slope - 1) < 1e-6);
    const Student certain{100, 0, 10};
    QCOMPARE(certain.quantile(0.01), 100.0);
    QCOMPARE(certain.below(99.9), 0.0);
    QCOMPARE(certain.below(100), 1.0);
}

QTEST_GUILESS_MAIN(QuantilesTest)
#include "tst_quantiles.moc"
