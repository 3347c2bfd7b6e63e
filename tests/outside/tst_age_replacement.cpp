// Age replacement against data/reliability.json (AR01 ReliaWiki, AR02 and AR04 Barlow and Proschan 1965, AR05 Jardine and Tsang,
// chapter 2, problem 2), and against plain numerical integration and a walk over all ages.
#include "core/service/age_replacement.h"
#include "core/statistics/random_numbers.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

bool near(double ours, double theirs, double tolerance) {
    if (std::abs(ours - theirs) <= tolerance) return true;
    qWarning("%.12g instead of %.12g", ours, theirs);
    return false;
}
bool nearly(double ours, double theirs, double share) { return near(ours, theirs, share * std::abs(theirs)); }

/// Cost per unit of age by the midpoint rule.
double plainCost(const Weibull& law, const ReplacementCosts& costs, double age) {
    constexpr int steps = 20'000;
    double life = 0;
    for (int i = 0; i < steps; ++i)
        life += std::exp(-std::pow((i + 0.5) * age / steps / law.scale, law.shape)) * age / steps;
    const double living = std::exp(-std::pow(age / law.scale, law.shape));
    return (costs.planned * living + costs.failed * (1 - living)) / life;
}

}  // namespace

class AgeReplacementTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void publishedWeibull_data();
    void publishedWeibull();
    void neverWithoutWear();
    void uniformLife();
    void drawnLawsByIntegration();
    void renewalsOverALongTime();

private:
    QJsonValue example(const QString& id) const {
        for (const QJsonValue& one : m_examples)
            if (one["id"].toString() == id) return one;
        qFatal("%s is missing", qPrintable(id));
        return {};
    }
    QJsonArray m_examples;
};

void AgeReplacementTest::initTestCase() {
    QFile file(qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/data/reliability.json");
    QVERIFY(file.open(QIODevice::ReadOnly));
    m_examples = QJsonDocument::fromJson(file.readAll())["age_replacement"].toArray();
    QCOMPARE(m_examples.size(), 4);
}

void AgeReplacementTest::publishedWeibull_data() {
    QTest::addColumn<QString>("id");
    QTest::newRow("AR01") << "AR01";
    QTest::newRow("AR02") << "AR02";
}

void AgeReplacementTest::publishedWeibull() {
    QFETCH(QString, id);
    const QJsonValue published = example(id);
    const Weibull law{published["beta"].toDouble(), published["eta"].toDouble()};
    const ReplacementCosts costs{published["cost_planned"].toDouble(), published["cost_failure"].toDouble()};
    const auto closed = AgeCosts::of(law, costs);
    QVERIFY(bool(closed));
    const BestAge best = closed->best();
    QVERIFY(!best.never);
    QVERIFY(near(best.age, published["t_opt"].toDouble(), 1e-6));
    QVERIFY(near(best.cost, published["rate_at_opt"].toDouble(), 5e-12));
    if (id == "AR01") {
        QVERIFY(near(best.age, published["printed"]["t"].toDouble(), 0.5));
        QVERIFY(near(best.cost, published["printed"]["rate"].toDouble(), 5e-5));
        QVERIFY(near(best.runToFailure, published["run_to_failure_rate"].toDouble(), 5e-12));
    }
    const auto summed = AgeCosts::of([law](double age) { return law.survival(age); }, 10 * law.scale, costs);
    QVERIFY(bool(summed));
    QVERIFY(near(summed->best().age, published["t_opt"].toDouble(), 0.01));
    QVERIFY(near(summed->best().cost, published["rate_at_opt"].toDouble(), 5e-12));
    QVERIFY(nearly(summed->best().flat.low, best.flat.low, 1e-8) && nearly(summed->best().flat.high, best.flat.high, 1e-8));
}

void AgeReplacementTest::neverWithoutWear() {
    for (double shape : {example("AR04")["beta"].toDouble(), 0.999, 0.5}) {
        const auto costs = AgeCosts::of(Weibull{shape, 1'000}, {1, 50});
        QVERIFY(costs && costs->best().never && std::isinf(costs->best().age));
        QCOMPARE(costs->best().cost, costs->best().runToFailure);
        double before = HUGE_VAL;
        for (const CostPoint& point : costs->curve({50, 5'000}, 100)) {
            QVERIFY(point.cost < before);
            before = point.cost;
        }
        QVERIFY(costs->best().runToFailure < before);
    }
}

void AgeReplacementTest::uniformLife() {
    const QJsonValue published = example("AR05");
    const auto costs = AgeCosts::of([](double km) { return std::max(0.0, 1 - km / 40'000); }, 40'000,
                                    {published["cost_planned"].toDouble(), published["cost_failure"].toDouble()});
    QVERIFY(bool(costs));
    const QJsonObject listed = published["C"].toObject();
    QString cheapest;
    for (auto it = listed.begin(); it != listed.end(); ++it) {
        QVERIFY(near(costs->at(it.key().toDouble()), it.value().toDouble(), published["tol"].toDouble()));
        if (cheapest.isEmpty() || costs->at(it.key().toDouble()) < costs->at(cheapest.toDouble())) cheapest = it.key();
    }
    QCOMPARE(listed.size(), 4);
    QCOMPARE(cheapest.toInt(), published["best_of_listed"].toInt());
    QVERIFY(near(costs->best().age, published["exact_t_opt"].toDouble(), 0.01));
    QVERIFY(near(costs->best().cost, published["exact_rate"].toDouble(), 5e-12));
}

void AgeReplacementTest::drawnLawsByIntegration() {
    Draws draws(4);
    double largest = 0;
    for (int n = 0; n < 60; ++n) {
        const Weibull law{1.1 + 5 * draws.uniform(), std::exp(10 * draws.uniform())};
        const ReplacementCosts costs{1 + draws.uniform(), 2 + 20 * draws.uniform()};
        const auto closed = AgeCosts::of(law, costs);
        QVERIFY(bool(closed));
        for (double part : {0.05, 0.3, 0.8, 1.5, 3.0}) {
            const double plain = plainCost(law, costs, part * law.scale);
            largest = std::max(largest, std::abs(closed->at(part * law.scale) / plain - 1));
        }
        const BestAge best = closed->best();
        // No age of a walk is cheaper, and those within 2 % are the flat ones.
        for (double age = law.scale / 200; age < 8 * law.scale; age *= 1.01) {
            QVERIFY(closed->at(age) >= best.cost * (1 - 1e-12));
            const bool within = closed->at(age) <= best.cost * 1.02;
            const bool edge = std::abs(age - best.flat.low) <= 1e-6 * age || std::abs(age - best.flat.high) <= 1e-6 * age;
            QVERIFY(edge || within == best.flat.contains(age));
        }
    }
    qInfo("closed form against plain integration: at most %.1e off", largest);
    QVERIFY(largest < 1e-6);
}

// The reward theorem itself: parts replaced by the rule over a long time cost what C says.
void AgeReplacementTest::renewalsOverALongTime() {
    Draws draws(5);
    const Weibull law{2.5, 1'000};
    const ReplacementCosts costs{1, 5};
    const auto closed = AgeCosts::of(law, costs);
    constexpr int parts = 200'000;
    for (double age : {300.0, 493.0, 1'200.0}) {
        double time = 0;
        double money = 0;
        double squares = 0;
        for (int i = 0; i < parts; ++i) {
            const double life = law.scale * std::pow(draws.exponential(), 1 / law.shape);
            const double lasted = std::min(life, age);
            const double cost = life < age ? costs.failed : costs.planned;
            time += lasted;
            money += cost;
            const double off = cost - closed->at(age) * lasted;
            squares += off * off;
        }
        const double error = std::sqrt(squares) / time;  // of the ratio, by the delta method
        QVERIFY2(std::abs(money / time - closed->at(age)) <= 3 * error, qPrintable(QString::number(age)));
    }
}

QTEST_GUILESS_MAIN(AgeReplacementTest)
#include "tst_age_replacement.moc"
