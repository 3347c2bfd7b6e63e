#include "core/statistics/control_charts.h"
#include "core/statistics/least_squares.h"
#include "core/statistics/run_lengths.h"

#include <QTest>

#include <cmath>

using namespace laneward;

class ChartsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void baselines();
    void individualsSignalBothWays();
    void rangesSignalAtTheLaterValue();
    void onTheLimitIsNoSignal();
    void ewmaLimitsWidenToTheSettledOnes();
    void cusumFindsSlowDrift();
    void nothingComesOfNothing();
    void constantsOfPairs();
    void subgroupsJudgeAllByTheFirst();
    void intervalsThatNothingBounds();
};

void ChartsTest::baselines() {
    const std::vector<double> values{1, 3, 2, 4};
    const Baseline base = baselineOf(values);
    QCOMPARE(base.mean, 2.5);
    QCOMPARE(base.sigma, 5.0 / 3 * std::sqrt(std::acos(-1.0)) / 2);
    QCOMPARE(baselineOf(std::span(values).first(1)).sigma, 0.0);
    QCOMPARE(baselineOf({}).mean, 0.0);
}

void ChartsTest::individualsSignalBothWays() {
    const std::vector<double> values{0, 3.5, 1, -3.5, -3};
    const IndividualsChart chart = individualsChart(values, {0, 1});
    QCOMPARE(chart.signals, (std::vector<size_t>{1, 3}));
    QCOMPARE(chart.limits.lower, -3.0);
    QCOMPARE(chart.limits.upper, 3.0);
}

void ChartsTest::rangesSignalAtTheLaterValue() {
    const std::vector<double> values{-2, 2, 2};
    const IndividualsChart chart = individualsChart(values, {0, 1});
    QCOMPARE(chart.ranges, (std::vector<double>{4, 0}));
    QCOMPARE(chart.rangeSignals, (std::vector<size_t>{1}));
    QVERIFY(chart.signals.empty());
    QVERIFY(std::abs(chart.rangeLimits.upper - 3.686) < 1e-3);  // D4 d2 = 3.2665 * 1.1284
}

void ChartsTest::onTheLimitIsNoSignal() {
    const std::vector<double> values{3, -3};
    QVERIFY(individualsChart(values, {0, 1}).signals.empty());
    const std::vector<double> steps{5, 0};
    QVERIFY(cusumChart(steps, {0, 1}, {1, 4}).highSignals.empty());
}

void ChartsTest::ewmaLimitsWidenToTheSettledOnes() {
    const std::vector<double> values(200, 10.0);
    const EwmaChart chart = ewmaChart(values, {10, 2}, {0.25, 3, false});
    QCOMPARE(chart.limits.front().upper, 10 + 3 * 2 * 0.25);
    for (size_t i = 1; i < chart.limits.size(); ++i)
        QVERIFY(chart.limits[i].upper >= chart.limits[i - 1].upper);
    const EwmaChart settled = ewmaChart(values, {10, 2}, {0.25, 3, true});
    QVERIFY(std::abs(chart.limits.back().upper - settled.limits.front().upper) < 1e-12);
    QVERIFY(chart.signals.empty());
    QCOMPARE(chart.averages.back(), 10.0);
}

void ChartsTest::cusumFindsSlowDrift() {
    std::vector<double> values;
    for (int i = 0; i < 20; ++i)
        values.push_back(i < 10 ? 0 : -1);
    const CusumChart chart = cusumChart(values, {0, 1}, {0.5, 4});
    QCOMPARE(chart.lowSignals, (std::vector<size_t>{18, 19}));
    QVERIFY(chart.highSignals.empty());
    QCOMPARE(chart.cumulative.back(), -10.0);
    QVERIFY(individualsChart(values, {0, 1}).signals.empty());
}

void ChartsTest::nothingComesOfNothing() {
    QVERIFY(individualsChart({}, {0, 1}).ranges.empty());
    QVERIFY(ewmaChart({}, {0, 1}).averages.empty());
    QVERIFY(cusumChart({}, {0, 1}).high.empty());
}

void ChartsTest::constantsOfPairs() {
    const ChartConstants pairs = chartConstants(2);
    QVERIFY(std::abs(pairs.d2 - 2 / std::sqrt(std::acos(-1.0))) < 1e-9);
    QVERIFY(std::abs(pairs.d3 - std::sqrt(2 - 4 / std::acos(-1.0))) < 1e-9);
    QCOMPARE(pairs.D3, 0.0);
    QCOMPARE(pairs.B3, 0.0);
}

void ChartsTest::subgroupsJudgeAllByTheFirst() {
    const SubgroupChart chart = subgroupChart({{0, 1}, {1, 0}, {0, 1}, {9, 9}, {0, 9}}, 3);
    QCOMPARE(chart.meanLimits.centre, 0.5);
    QCOMPARE(chart.rangeLimits.centre, 1.0);
    QCOMPARE(chart.signals, (std::vector<size_t>{3, 4}));
    QCOMPARE(chart.rangeSignals, (std::vector<size_t>{4}));
}

void ChartsTest::intervalsThatNothingBounds() {
    // Noise about a level that every t explains as well as another.
    const std::vector<double> values{1, 1.1, 0.9, 1, 1.05};
    const auto level = [](double) { return std::vector<double>(5, 1.0); };
    const ScaledFit fit = fitScaled(values, level, {0, 10});
    QCOMPARE(fit.tInterval, (Interval{0, 10}));
    QVERIFY(std::abs(fit.k - 1.01) < 1e-12);
    // Not even a factor, where the curve is nothing.
    QCOMPARE(fitScaled(values, [](double) { return std::vector<double>(5, 0.0); }, {0, 10}).k, 0.0);
}

QTEST_GUILESS_MAIN(ChartsTest)
#include "tst_charts.moc"
