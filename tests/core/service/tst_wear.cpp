// From lives of parts to an answer, or to the reason why there is none. How well intervals hold:
// tests/outside/tst_life_coverage.cpp.
#include "core/service/wear.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

const ReplacementCosts costs{40, 200};

/// Parts that fail around `middle`, and the one in use.
std::vector<Life> brushes(int failures, double middle = 3'000) {
    std::vector<Life> lives;
    for (int i = 0; i < failures; ++i)
        lives.push_back({middle * (0.7 + 0.6 * (i + 0.5) / failures), true});
    lives.push_back({middle / 3, false});
    return lives;
}

QByteArrayList rulesOf(const WearAnswer& answer) {
    QByteArrayList rules;
    for (const Finding& finding : answer.findings)
        rules << finding.rule;
    return rules;
}

}  // namespace

class WearTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void tooFewFailures();
    void answers();
    void plannedReplacementsDoNotHideWear();
    void neverAndNoGain();
    void unsureWithFewFailures();
    void badInput_data();
    void badInput();
};

void WearTest::tooFewFailures() {
    for (int failures = 0; failures < leastFailures; ++failures) {
        const WearAnswer answer = wearOf({"Cushion brush", brushes(failures), costs, {}});
        QCOMPARE(answer.parts, failures + 1);
        QCOMPARE(answer.failures, failures);
        QCOMPARE(answer.moreNeeded, leastFailures - failures);
        QVERIFY(!answer.fit && !answer.best);
        QCOMPARE(answer.points.size(), size_t(failures));
        QCOMPARE(rulesOf(answer), QByteArrayList{"wear.too-few"});
        QCOMPARE(answer.findings[0].subject, QString("Cushion brush"));
        QCOMPARE(answer.findings[0].values, (std::vector<Value>{std::int64_t{failures}, std::int64_t{leastFailures - failures}}));
    }
    QCOMPARE(wearOf({"Cushion brush", {}, costs, {}}).moreNeeded, leastFailures);
}

void WearTest::answers() {
    const WearAnswer answer = wearOf({"Cushion brush", brushes(12), costs, 3'000});
    QVERIFY(answer.fit && answer.best && answer.costs && answer.costNow);
    QCOMPARE(answer.moreNeeded, 0);
    QVERIFY(answer.findings.empty());
    QVERIFY(answer.fit->law.shape > 3 && answer.best->age > 1'000 && answer.best->age < 2'500);
    QVERIFY(answer.bestInterval.contains(answer.best->age));
    QVERIFY(answer.bestInterval.low > 500 && answer.bestInterval.high < 3'000);
    QCOMPARE(*answer.costNow, answer.costs->at(3'000));
    QVERIFY(*answer.costNow > answer.best->cost);
}

// Replaced at 2,000 as planned: nothing ever fails late, yet the parts that failed early are a minority of all.
void WearTest::plannedReplacementsDoNotHideWear() {
    std::vector<Life> lives;
    for (int i = 0; i < 6; ++i)
        lives.push_back({1'500.0 + 80 * i, true});
    for (int i = 0; i < 30; ++i)
        lives.push_back({2'000, false});
    const WearAnswer answer = wearOf({"Belt", lives, costs, 2'000});
    QVERIFY(answer.fit && answer.fit->law.scale > 2'000 && answer.fit->law.shape > 3);
}

void WearTest::neverAndNoGain() {
    std::vector<Life> early;
    for (int i = 0; i < 20; ++i)
        early.push_back({std::pow(1.8, i), true});
    const WearAnswer never = wearOf({"Filter", early, costs, {}});
    QVERIFY(never.fit && never.fit->shape.high < 1 && never.best->never);
    QVERIFY(std::isinf(never.bestInterval.low) && std::isinf(never.bestInterval.high));
    QCOMPARE(rulesOf(never), QByteArrayList{"wear.never"});
    const WearAnswer same = wearOf({"Filter", brushes(12), {40, 40}, {}});
    QVERIFY(same.best && same.best->never);
    QCOMPARE(rulesOf(same), QByteArrayList{"wear.no-gain"});
}

void WearTest::unsureWithFewFailures() {
    const std::vector<Life> lives{{300, true}, {900, true}, {1'400, true}, {2'200, true}, {3'100, true}, {1'000, false}};
    const WearAnswer answer = wearOf({"Cloth roll", lives, costs, {}});
    QVERIFY(answer.best && !answer.best->never);
    QVERIFY(std::isinf(answer.bestInterval.high) && std::isfinite(answer.bestInterval.low));
    QCOMPARE(rulesOf(answer), QByteArrayList{"wear.unsure"});
}

void WearTest::badInput_data() {
    QTest::addColumn<std::vector<Life>>("lives");
    QTest::addColumn<double>("planned");
    QTest::addColumn<double>("ageNow");
    QTest::addColumn<QByteArray>("rule");
    QTest::newRow("negative age") << std::vector<Life>{{-1, true}} << 40.0 << 1.0 << QByteArray("life.age");
    QTest::newRow("no number") << std::vector<Life>{{5, true}, {std::nan(""), false}} << 40.0 << 1.0 << QByteArray("life.age");
    QTest::newRow("all at one age") << std::vector<Life>(7, {50, true}) << 40.0 << 1.0 << QByteArray("life.no-spread");
    QTest::newRow("free parts") << brushes(12) << 0.0 << 1.0 << QByteArray("replacement.costs");
    QTest::newRow("interval of nothing") << brushes(12) << 40.0 << 0.0 << QByteArray("wear.age-now");
    QTest::newRow("interval no number") << brushes(12) << 40.0 << std::nan("") << QByteArray("wear.age-now");
}

void WearTest::badInput() {
    QFETCH(std::vector<Life>, lives);
    QFETCH(double, planned);
    QFETCH(double, ageNow);
    QFETCH(QByteArray, rule);
    const WearAnswer answer = wearOf({"Belt", lives, {planned, 200}, ageNow});
    QCOMPARE(rulesOf(answer), QByteArrayList{rule});
    QCOMPARE(answer.findings[0].severity, Severity::Fault);
    QCOMPARE(answer.findings[0].subject, QString("Belt"));
    QVERIFY(!answer.best && !answer.costNow);
}

QTEST_GUILESS_MAIN(WearTest)
#include "tst_wear.moc"
