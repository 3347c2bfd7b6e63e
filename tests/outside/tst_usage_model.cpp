// What is learned from fills against the same posterior by dense matrices (numpy and scipy.stats of python3-scipy 1.10.1,
// tools/usage_posterior.py), and forgetting against weighted least squares in closed form.
#include "core/supplies/usage_model.h"
#include "tests/support/python.h"

#include <QJsonObject>
#include <QTest>

#include <cmath>
#include <random>

using namespace laneward;

namespace {

constexpr double tank = 1'800'000;

struct Case {
    UsageRule rule;
    std::vector<UsageFill> fills;
    double next = 0;  // tanks
};

QJsonArray list(std::initializer_list<double> values) {
    QJsonArray all;
    for (double value : values)
        all.append(value);
    return all;
}

Case randomCase(std::mt19937_64& dice) {
    const auto between = [&](double low, double high) { return std::uniform_real_distribution<double>(low, high)(dice); };
    Case one;
    one.rule.tank = Amount{std::int64_t(tank)};
    one.rule.discount = one.rule.scaleDiscount = 1;
    one.rule.lineShare = dice() % 3 == 0 ? 0 : between(0, 4);
    one.rule.factor = between(0.9, 1.1);
    one.rule.purge = between(0, 0.05);
    one.rule.noise = between(0.01, 0.1);
    one.rule.weight = between(1, 8);
    one.next = between(0.1, 20);
    const int count = 1 + int(dice() % 40);
    for (int n = 0; n < count; ++n) {
        UsageFill fill{{QString("fill %1").arg(n, 3, 10, QChar('0'))}, Instant{1'000 * (n + 1)}};
        fill.nominal = Amount{std::int64_t(between(0.3, 1) * tank)};
        fill.poured = Amount{std::int64_t(double(fill.nominal.value) * between(0.8, 1.3) + between(0, 0.05) * tank)};
        fill.follows = dice() % 5 != 0;
        one.fills.push_back(fill);
    }
    return one;
}

QJsonObject asJson(const Case& one) {
    QJsonArray x, y, chained;
    for (size_t i = 0; i < one.fills.size(); ++i) {
        x.append(double(one.fills[i].nominal.value) / tank);
        y.append(double(one.fills[i].poured.value) / tank);
        chained.append(i > 0 && one.fills[i].follows);
    }
    const double s = one.rule.noise * one.rule.noise;
    return {{"x", x},
            {"y", y},
            {"chained", chained},
            {"share", *one.rule.lineShare},
            {"mean", list({one.rule.factor, one.rule.purge})},
            {"variance", list({std::pow(one.rule.factorDeviation, 2) / s, std::pow(one.rule.purgeDeviation, 2) / s})},
            {"scale", s},
            {"freedom", one.rule.weight},
            {"next", one.next}};
}

}  // namespace

class UsageModelTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void posteriorOfDenseMatrices();
    void forgettingIsWeighting();
};

void UsageModelTest::posteriorOfDenseMatrices() {
    std::mt19937_64 dice(20262);
    std::vector<Case> cases;
    QJsonArray asked;
    for (int n = 0; n < 200; ++n) {
        cases.push_back(randomCase(dice));
        asked.append(asJson(cases.back()));
    }
    QByteArray complaint;
    const QJsonArray answers = support::answersOf("usage_posterior.py", asked, complaint);
    QVERIFY2(answers.size() == asked.size(), complaint.constData());
    double largest = 0;
    const auto compare = [&largest](double ours, double theirs) {
        largest = std::max(largest, std::abs(ours - theirs) / std::max(1e-3, std::abs(theirs)));
    };
    for (size_t n = 0; n < cases.size(); ++n) {
        const QJsonObject theirs = answers[int(n)].toObject();
        const Usage usage = learnUsage(cases[n].fills, cases[n].rule);
        QCOMPARE(usage.fills().size(), cases[n].fills.size());
        const QJsonArray covariance = theirs["covariance"].toArray();
        const double scale = theirs["scale"].toDouble();
        compare(usage.factor().centre, theirs["mean"][0].toDouble());
        compare(usage.purge().centre / tank, theirs["mean"][1].toDouble());
        compare(usage.factor().scale, std::sqrt(scale * covariance[0][0].toDouble()));
        compare(usage.purge().scale / tank, std::sqrt(scale * covariance[1][1].toDouble()));
        compare(usage.factor().freedom, theirs["freedom"].toDouble());
        compare(usage.rate().scale, scale);
        compare(usage.logLikelihood(), theirs["log_likelihood"].toDouble());
        // Ours spreads the purge over the nominal: a fill of its usual size has one.
        const double share = 1 / usage.tanksPerFill();
        const UseRate rate = usage.rate();
        compare(rate.mean, theirs["mean"][0].toDouble() + share * theirs["mean"][1].toDouble());
        compare(rate.variance, covariance[0][0].toDouble() + 2 * share * covariance[0][1].toDouble() +
                                   share * share * covariance[1][1].toDouble());
        // For one fill of that size both say the same.
        cases[n].next = usage.tanksPerFill();
    }
    QJsonArray again;
    for (const Case& one : cases)
        again.append(asJson(one));
    const QJsonArray next = support::answersOf("usage_posterior.py", again, complaint);
    QVERIFY2(next.size() == again.size(), complaint.constData());
    int predicted = 0;
    for (size_t n = 0; n < cases.size(); ++n) {
        const Student use = learnUsage(cases[n].fills, cases[n].rule).use(cases[n].next * tank);
        const QJsonArray quantiles = next[int(n)].toObject()["quantiles"].toArray();
        for (const auto& [i, level] : {std::pair{0, 0.05}, {1, 0.5}, {2, 0.95}})
            compare(use.quantile(level) / tank, quantiles[i].toDouble());
        ++predicted;
    }
    qInfo("200 posteriors and %d predictions from fills: at most %.1e off those of scipy", predicted, largest);
    QCOMPARE(predicted, 200);
    QVERIFY(largest < 1e-8);
}

/// One tank a fill, no purge, no error of the line: in the long run k is the exponentially weighted mean of the ratios, of weight
/// 1 - D, and its variance 1 - D in units of s (West and Harrison 1997, 2.4, from memory).
void UsageModelTest::forgettingIsWeighting() {
    std::mt19937_64 dice(7);
    UsageRule rule;
    rule.tank = Amount{std::int64_t(tank)};
    rule.discount = 0.9;
    rule.lineShare = 0;
    rule.purgeDeviation = 0;
    std::vector<UsageFill> fills;
    double mean = 1;
    double freedom = rule.weight;
    for (int n = 0; n < 400; ++n) {
        UsageFill fill{{QString("fill %1").arg(n, 3, 10, QChar('0'))}, Instant{1'000 * (n + 1)}};
        fill.nominal = rule.tank;
        fill.poured = Amount{std::uniform_int_distribution<std::int64_t>(1'700'000, 2'000'000)(dice)};
        mean += 0.1 * (double(fill.poured.value) / tank - mean);
        freedom = freedom * rule.scaleDiscount + 1;
        fills.push_back(fill);
    }
    const Usage usage = learnUsage(fills, rule);
    QVERIFY(std::abs(usage.factor().centre - mean) < 1e-9);
    QVERIFY(std::abs(usage.rate().variance - 0.1) < 1e-9);
    QVERIFY(std::abs(usage.rate().drift - 0.01 / 0.9) < 1e-12);
    QVERIFY(std::abs(usage.factor().freedom - freedom) < 1e-9);
    QCOMPARE(usage.purge().centre, 0.0);
    QCOMPARE(usage.purge().scale, 0.0);
}

QTEST_GUILESS_MAIN(UsageModelTest)
#include "tst_usage_model.moc"
