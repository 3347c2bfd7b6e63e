// Fits of lives where the answer is known by itself, and input that cannot be. Published values: tests/outside/tst_life_data.cpp.
#include "core/statistics/life_data.h"
#include "core/statistics/rank_regression.h"
#include "core/statistics/survival_curve.h"

#include <QTest>

#include <cmath>
#include <limits>

using namespace laneward;

namespace {

const std::vector<Life> rivets{{30, true}, {49, true},  {82, true},  {90, true},
                               {96, true}, {10, false}, {45, false}, {100, false}};

std::vector<Life> times(const std::vector<Life>& lives, double factor) {
    std::vector<Life> all = lives;
    for (Life& life : all)
        life.age *= factor;
    return all;
}

bool nearly(double ours, double theirs, double share = 1e-9) {
    if (std::abs(ours - theirs) <= share * std::abs(theirs)) return true;
    qWarning("%.15g instead of %.15g", ours, theirs);
    return false;
}

double logLikelihood(const std::vector<Life>& lives, const Weibull& law) {
    double sum = 0;
    for (const Life& life : lives)
        sum += std::log(life.failed ? law.density(life.age) : law.survival(life.age));
    return sum;
}

QByteArray refusal(const std::vector<Life>& lives) {
    const auto fit = fitWeibull(lives);
    return fit ? QByteArray() : fit.error().finding.rule;
}

}  // namespace

class LifeDataTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void isTheMaximum();
    void endsOfIntervalsAreOnTheContour();
    void unitsDoNotMatter_data();
    void unitsDoNotMatter();
    void orderDoesNotMatter();
    void twoFailures();
    void intervalOfAFunction();
    void refusals_data();
    void refusals();
    void tiedFailuresThatOthersOutlived();
    void nearlyNoSpread();
    void meanUntilAnAge();
    void exponential();
    void survivalOfNobody();
    void survivalAtOneHalf();
    void censoredAtTheAgeOfAFailure();
    void ranks();
};

void LifeDataTest::isTheMaximum() {
    const auto fit = fitWeibull(rivets);
    QVERIFY(bool(fit));
    QCOMPARE(fit->lives, 8);
    QCOMPARE(fit->failures, 5);
    QVERIFY(nearly(fit->logLikelihood, logLikelihood(rivets, fit->law)));
    for (double shape : {0.999, 1.0, 1.001})
        for (double scale : {0.999, 1.0, 1.001})
            QVERIFY(logLikelihood(rivets, {fit->law.shape * shape, fit->law.scale * scale}) <= fit->logLikelihood + 1e-12);
}

void LifeDataTest::endsOfIntervalsAreOnTheContour() {
    const auto fit = fitWeibull(rivets);
    QVERIFY(bool(fit));
    const double least = fit->logLikelihood - 3.841458820694124 / 2 * (1 + 2.0 / 8);
    for (double shape : {fit->shape.low, fit->shape.high}) {
        double sum = 0;
        for (const Life& life : rivets)
            sum += std::pow(life.age, shape);
        QVERIFY(nearly(logLikelihood(rivets, {shape, std::pow(sum / 5, 1 / shape)}), least, 1e-9));
    }
    for (double scale : {fit->scale.low, fit->scale.high}) {
        double most = -HUGE_VAL;
        for (double shape = 0.2; shape < 12; shape += 1e-3)
            most = std::max(most, logLikelihood(rivets, {shape, scale}));
        QVERIFY(nearly(most, least, 1e-6));
    }
}

void LifeDataTest::unitsDoNotMatter_data() {
    QTest::addColumn<double>("factor");
    for (double factor : {1e-290, 1e-100, 1e-9, 60.0, 1e12, 1e100, 1e290})
        QTest::addRow("times %g", factor) << factor;
}

void LifeDataTest::unitsDoNotMatter() {
    QFETCH(double, factor);
    const auto fit = fitWeibull(rivets);
    const auto other = fitWeibull(times(rivets, factor));
    QVERIFY(fit && other);
    QVERIFY(nearly(other->law.shape, fit->law.shape));
    QVERIFY(nearly(other->law.scale / factor, fit->law.scale));
    QVERIFY(nearly(other->shape.low, fit->shape.low) && nearly(other->shape.high, fit->shape.high));
    QVERIFY(nearly(other->scale.low / factor, fit->scale.low) && nearly(other->scale.high / factor, fit->scale.high));
    QVERIFY(nearly(other->covariance.both, fit->covariance.both, 1e-7));
    QVERIFY(nearly(other->logLikelihood, fit->logLikelihood - 5 * std::log(factor)));
    const auto line = fitByRanks(times(rivets, factor), Regression::XOnY);
    QVERIFY(line && nearly(line->scale / factor, fitByRanks(rivets, Regression::XOnY)->scale));
}

void LifeDataTest::orderDoesNotMatter() {
    std::vector<Life> turned(rivets.rbegin(), rivets.rend());
    QVERIFY(nearly(fitWeibull(turned)->law.shape, fitWeibull(rivets)->law.shape, 1e-12));
    QCOMPARE(plotPoints(turned), plotPoints(rivets));
}

void LifeDataTest::twoFailures() {
    const auto fit = fitWeibull(std::vector<Life>{{100, true}, {200, true}});
    QVERIFY(bool(fit));
    // Scaled by their geometric mean the ages are q and 1/q: 1/shape = ln(q) tanh(shape ln q).
    const double half = std::log(2.0) / 2;
    QVERIFY(nearly(1 / fit->law.shape, half * std::tanh(fit->law.shape * half)));
    QVERIFY(fit->shape.low < 1 && fit->shape.high > 3 * fit->law.shape / 2);
}

void LifeDataTest::intervalOfAFunction() {
    const auto fit = fitWeibull(rivets);
    QVERIFY(bool(fit));
    const Interval scale = profileOf(rivets, *fit, [](double) { return 1.0; });
    QVERIFY(nearly(scale.low, fit->scale.low, 1e-8) && nearly(scale.high, fit->scale.high, 1e-8));
    // The age by which a tenth fail, against a walk around the contour.
    const auto tenth = [](double shape) { return Weibull{shape, 1}.quantile(0.1); };
    const Interval ours = profileOf(rivets, *fit, tenth);
    const double least = fit->logLikelihood - 3.841458820694124 / 2 * (1 + 2.0 / 8);
    Interval walked{HUGE_VAL, 0};
    for (double shape = fit->shape.low; shape <= fit->shape.high; shape *= 1.002) {
        for (double scaleNow = 60; scaleNow < 170; scaleNow += 0.2) {
            if (logLikelihood(rivets, {shape, scaleNow}) < least) continue;
            walked.low = std::min(walked.low, scaleNow * tenth(shape));
            walked.high = std::max(walked.high, scaleNow * tenth(shape));
        }
    }
    QVERIFY(nearly(ours.low, walked.low, 5e-3) && nearly(ours.high, walked.high, 5e-3));
    const Interval open = profileOf(rivets, *fit, [](double shape) { return shape <= 2 ? HUGE_VAL : 1 / (shape - 2); });
    QVERIFY(std::isinf(open.high) && std::isfinite(open.low));
}

void LifeDataTest::refusals_data() {
    QTest::addColumn<std::vector<Life>>("lives");
    QTest::addColumn<QByteArray>("rule");
    const auto row = [](const char* name, std::vector<Life> lives, const char* rule) {
        QTest::newRow(name) << std::move(lives) << QByteArray(rule);
    };
    row("nothing", {}, "life.too-few-failures");
    row("one failure", {{5, true}, {7, false}}, "life.too-few-failures");
    row("all censored", {{5, false}, {7, false}, {9, false}}, "life.too-few-failures");
    row("one age", {{5, true}, {5, true}, {5, true}, {4, false}, {5, false}}, "life.no-spread");
    row("age of nothing", {{0, true}, {5, true}, {6, true}}, "life.age");
    row("negative", {{5, true}, {-1, false}, {6, true}}, "life.age");
    row("no number", {{5, true}, {6, true}, {std::nan(""), true}}, "life.age");
    row("without end", {{5, true}, {6, true}, {HUGE_VAL, false}}, "life.age");
    std::vector<Life> beyond(20'000, {1e300, false});
    beyond.push_back({1e-300, true});
    beyond.push_back({1e300, true});
    row("beyond doubles", beyond, "life.beyond-range");
}

void LifeDataTest::refusals() {
    QFETCH(std::vector<Life>, lives);
    QFETCH(QByteArray, rule);
    QCOMPARE(refusal(lives), rule);
    if (rule == "life.age") QCOMPARE(survivalCurve(lives).error().finding.rule, rule);
    if (rule != "life.beyond-range") QVERIFY(!fitByRanks(lives, Regression::YOnX));
    if (rule == "life.age") QVERIFY(!fitExponential(lives));
}

void LifeDataTest::tiedFailuresThatOthersOutlived() {
    const auto fit = fitWeibull(std::vector<Life>{{5, true}, {5, true}, {9, false}});
    QVERIFY(fit && std::isfinite(fit->law.shape) && fit->law.scale > 5);
    QCOMPARE(fitByRanks(std::vector<Life>{{5, true}, {5, true}, {9, false}}, Regression::XOnY).error().finding.rule,
             QByteArray("life.no-spread"));
}

void LifeDataTest::nearlyNoSpread() {
    std::vector<Life> close;
    for (int i = 0; i < 30; ++i)
        close.push_back({1e6 + i * 1e-3, true});
    const auto fit = fitWeibull(close);
    QVERIFY(fit && fit->law.shape > 1e7 && fit->shape.contains(fit->law.shape) && fit->scale.contains(fit->law.scale));
    std::vector<Life> wide;
    for (int i = -10; i <= 10; ++i)
        wide.push_back({std::pow(10.0, i * 10), true});
    const auto flat = fitWeibull(wide);
    QVERIFY(flat && flat->law.shape < 0.05 && flat->shape.contains(flat->law.shape));
}

void LifeDataTest::meanUntilAnAge() {
    const Weibull even{1, 10};
    QVERIFY(nearly(even.meanUntil(10), 10 * (1 - std::exp(-1.0))));
    QVERIFY(nearly(even.meanUntil(1e9), 10) && nearly(even.mean(), 10));
    QCOMPARE(even.meanUntil(0), 0.0);
    const Weibull wearing{3.3, 700};
    double sum = 0;
    for (int i = 0; i < 100'000; ++i)
        sum += wearing.survival((i + 0.5) * 0.01) * 0.01;
    QVERIFY(nearly(wearing.meanUntil(1'000), sum, 1e-8));
    QVERIFY(nearly(Weibull{1e7, 5}.meanUntil(4), 4) && nearly(Weibull{0.2, 5}.meanUntil(HUGE_VAL), Weibull{0.2, 5}.mean()));
}

void LifeDataTest::exponential() {
    const auto fit = fitExponential(std::vector<Life>{{10, true}, {30, false}});
    QVERIFY(bool(fit));
    QCOMPARE(fit->mean, 40.0);
    // Chi-squared with 2 degrees of freedom is exponential: its upper end is 40 / -ln(0.975).
    QVERIFY(nearly(fit->interval.high, 40 / -std::log(0.975)));
    QVERIFY(fit->interval.low < 10 && fit->interval.low > 5);
    QCOMPARE(fitExponential(std::vector<Life>{{10, false}}).error().finding.rule, QByteArray("life.too-few-failures"));
}

void LifeDataTest::survivalOfNobody() {
    const auto none = survivalCurve({});
    QVERIFY(none && none->steps.empty() && !none->median.estimate);
    QCOMPARE(none->survivalAt(3), 1.0);
    const auto allAlive = survivalCurve(std::vector<Life>{{3, false}, {4, false}});
    QVERIFY(allAlive && !allAlive->median.estimate);
    QCOMPARE(allAlive->survivalAt(9), 1.0);
    const auto one = survivalCurve(std::vector<Life>{{3, true}});
    QCOMPARE(*one->median.estimate, 3.0);
    QVERIFY(!one->median.low && !one->steps[0].high);
    QCOMPARE(one->survivalAt(3), 0.0);
}

void LifeDataTest::survivalAtOneHalf() {
    const auto curve = survivalCurve(std::vector<Life>{{1, true}, {2, true}, {5, true}, {9, true}});
    QCOMPARE(*curve->median.estimate, 3.5);
    QVERIFY(nearly(curve->steps[0].standardError, std::sqrt(0.75 * 0.25 / 4)));
}

void LifeDataTest::censoredAtTheAgeOfAFailure() {
    const auto curve = survivalCurve(std::vector<Life>{{2, false}, {2, true}, {4, true}});
    QCOMPARE(curve->steps.size(), size_t(2));
    QCOMPARE(curve->steps[0].atRisk, 3);
    QVERIFY(nearly(curve->steps[0].survival, 2.0 / 3));
    QCOMPARE(curve->steps[1].survival, 0.0);
    QVERIFY(nearly(plotPoints(std::vector<Life>{{2, false}, {2, true}, {4, true}})[0].adjustedRank, 1));
}

void LifeDataTest::ranks() {
    const std::vector<PlotPoint> points = plotPoints(std::vector<Life>{{3, true}, {1, true}, {2, true}});
    QCOMPARE(points.size(), size_t(3));
    for (int i = 0; i < 3; ++i) {
        QVERIFY(nearly(points[size_t(i)].adjustedRank, i + 1));
        QVERIFY(nearly(points[size_t(i)].medianRank, (i + 0.7) / 3.4));
    }
}

QTEST_GUILESS_MAIN(LifeDataTest)
#include "tst_life_data.moc"
