// What is said about a machine's weight. Published values: tests/outside/tst_lifting.cpp.
#include "core/service/lifting.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

QByteArray ruleOf(double kilograms, const Lift& lift = machineLift) {
    const auto found = liftingFindings("Machine 1", kilograms, lift);
    return found.empty() ? QByteArray() : found[0].rule;
}

}  // namespace

class LiftingFindingsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void byWeight();
    void inBothUnits();
    void cannotBe();
};

void LiftingFindingsTest::byWeight() {
    const double limit = *recommendedWeightLimit(machineLift);
    QVERIFY(limit > 10 && limit < 15);
    QCOMPARE(ruleOf(0), QByteArray());
    QCOMPARE(ruleOf(limit), QByteArray());
    QCOMPARE(ruleOf(limit + 0.01), QByteArray("lifting.two"));
    QCOMPARE(ruleOf(2 * limit), QByteArray("lifting.two"));
    QCOMPARE(ruleOf(2 * limit + 0.01), QByteArray("lifting.lift"));
    QCOMPARE(ruleOf(1, {LiftUnits::Metric, 80}), QByteArray("lifting.lift"));  // out of reach: nothing may be lifted so
}

void LiftingFindingsTest::inBothUnits() {
    const auto found = liftingFindings("Machine 1", 24.2, Lift{});
    QCOMPARE(found.size(), size_t(1));
    QCOMPARE(found[0].severity, Severity::Warning);
    QCOMPARE(found[0].subject, QString("Machine 1"));
    QCOMPARE(found[0].values, (std::vector<Value>{std::int64_t{25}, std::int64_t{23}, std::int64_t{54}, std::int64_t{50}}));
    const auto pounds = liftingFindings("Machine 1", 24.2, {LiftUnits::Inches, 10, 30, 10});
    QCOMPARE(pounds[0].values, (std::vector<Value>{std::int64_t{25}, std::int64_t{23}, std::int64_t{54}, std::int64_t{51}}));
}

void LiftingFindingsTest::cannotBe() {
    for (double weight : {-1.0, std::nan(""), HUGE_VAL, 1e9})
        QCOMPARE(ruleOf(weight), QByteArray("lifting.measure"));
    QCOMPARE(ruleOf(20, {LiftUnits::Metric, -1}), QByteArray("lifting.measure"));
    QCOMPARE(ruleOf(20, {LiftUnits::Metric, 25, std::nan("")}), QByteArray("lifting.measure"));
    QCOMPARE(recommendedWeightLimit({LiftUnits::Metric, HUGE_VAL}).error().finding.rule, QByteArray("lifting.measure"));
}

QTEST_GUILESS_MAIN(LiftingFindingsTest)
#include "tst_lifting.moc"
