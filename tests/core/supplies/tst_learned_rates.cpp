// Rates and lead times, with answers worked out by hand.
#include "core/supplies/learned_rates.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

bool near(double a, double b, double tolerance) {
    if (std::abs(a - b) <= tolerance) return true;
    qWarning("%.9g instead of %.9g", a, b);
    return false;
}

std::vector<DatedAmount> events(std::initializer_list<std::int64_t> amounts) {
    std::vector<DatedAmount> all;
    for (std::int64_t amount : amounts)
        all.push_back({QDate(2026, 3, 1).addDays(qint64(all.size())), Amount{amount}});
    return all;
}

}  // namespace

class LearnedRatesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void nothingYet();
    void eventsOfAYear();
    void equalSizesKeepSomeSpread();
    void leadTimesBeforeAnyOrder();
    void leadTimesOfOrders();
    void arrivals();
};

void LearnedRatesTest::nothingYet() {
    const LearnedRate rate = learnRate({}, 0, {0.5, 60, 200'000});
    QCOMPARE(rate.events, 0);
    QVERIFY(near(rate.ratePerDay(), 0.5 / 60, 1e-15));
    QVERIFY(near(rate.meanSize(), 200'000, 1e-9));
    QVERIFY(near(rate.sizeShape, 1, 0));
}

/// 0.5 + 4 events in 60 + 390 days; sizes 1, 2, 3 and 6, and the prior's 3: mean 3. Variation: 1 + (4 + 1 + 0 + 9) / 9 over 4.
void LearnedRatesTest::eventsOfAYear() {
    const LearnedRate rate = learnRate(events({1'000, 2'000, 0, 3'000, -50, 6'000}), 390, {0.5, 60, 3'000});
    QCOMPARE(rate.events, 4);
    QVERIFY(near(rate.ratePerDay(), 0.01, 1e-15));
    QVERIFY(near(rate.meanSize(), 3'000, 1e-9));
    QVERIFY(near(rate.meanPerDay(), 30, 1e-9));
    QVERIFY(near(rate.sizeShape, 4 / (1 + 14.0 / 9), 1e-12));
    QVERIFY(near(rate.scaleShape, 1 + 5 * rate.sizeShape, 1e-12));
}

void LearnedRatesTest::equalSizesKeepSomeSpread() {
    QVERIFY(near(learnRate(events({500}), 10).sizeShape, 1, 1e-12));
    QVERIFY(near(learnRate(events({500, 500, 500}), 10).sizeShape, 3, 1e-12));
    QVERIFY(near(learnRate(std::vector<DatedAmount>(400, {QDate(2026, 1, 1), Amount{500}}), 10).sizeShape, 25, 1e-12));
}

/// Poisson: P(7 days) = 7^7 e^-7 / 7!.
void LearnedRatesTest::leadTimesBeforeAnyOrder() {
    const DayChances lead = leadTimes({}, 7);
    QVERIFY(near(lead.until(100'000), 1, 1e-12));
    QVERIFY(near(lead.until(7) - lead.until(6), 0.1490028, 1e-6));
    const DayChances atOnce = leadTimes({}, 0);
    QCOMPARE(atOnce.chances, std::vector<double>{1});
}

void LearnedRatesTest::leadTimesOfOrders() {
    const std::vector<int> history{10, 10, 11, -3, 90, 10};
    const DayChances lead = leadTimes(history, 7);
    QVERIFY(near(lead.until(100'000), 1, 1e-12));
    QVERIFY(near(lead.until(10) - lead.until(9), (3 + 2 * 0.0709833) / 7, 1e-6));
    QVERIFY(near(lead.until(90) - lead.until(89), 1.0 / 7, 1e-9));
    QCOMPARE(lead.at(0.9999), 90);
    QCOMPARE(lead.at(0), 0);
    QCOMPARE(lead.at(0.5), 10);
}

void LearnedRatesTest::arrivals() {
    const DayChances lead{3, {0.2, 0.5, 0.3}};  // after 3, 4 or 5 days
    const DayChances today = arrivalOf(lead, 0);
    QCOMPARE(today.firstDay, 3);
    QVERIFY(near(today.until(4), 0.7, 1e-12));
    const DayChances later = arrivalOf(lead, 4);  // today or tomorrow, 5 to 3
    QCOMPARE(later.firstDay, 0);
    QVERIFY(near(later.until(0), 0.625, 1e-12));
    QCOMPARE(later.at(0.6), 0);
    QCOMPARE(later.at(0.63), 1);
    const DayChances overdue = arrivalOf(lead, 9);
    QCOMPARE(overdue.firstDay, 0);
    QCOMPARE(overdue.chances, std::vector<double>{1});
}

QTEST_GUILESS_MAIN(LearnedRatesTest)
#include "tst_learned_rates.moc"
