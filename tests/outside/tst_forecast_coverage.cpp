// Simulated centres whose truth is known: 50 seeds, two years each. Do the 50 % and 90 % ranges of cumulative use hold as often
// as they promise, within three standard errors (binomial)? From fill to fill in closed form, and over four weeks as kept
// forecasts are scored, beside the two plain guesses. Spans do not overlap. The truth is not the prior.
#include "core/supplies/forecast_scores.h"
#include "tests/support/simulated_house.h"

#include <QTest>

#include <cmath>

using namespace laneward;
using namespace support;

namespace {

constexpr int seeds = 50;
constexpr int days = simulatedDays;
constexpr int warmUp = 84;
const QDate firstDay = firstSimulatedDay;
const SupplyId amber{"amber"};

void count(Coverage& half, Coverage& most, double below) {
    ++half.spans, ++most.spans;
    half.inside += 0.25 <= below && below <= 0.75;
    most.inside += 0.05 <= below && below <= 0.95;
}

void print(const QByteArray& what, const Coverage& half, const Coverage& most) {
    qInfo("%-44s %5d spans: 50 %% range held %.1f %% (+- %.1f), 90 %% range %.1f %% (+- %.1f)", what.constData(), half.spans,
          100 * half.share(), 100 * half.standardError(), 100 * most.share(), 100 * most.standardError());
}

/// The forecast of a day as it would have been kept: only what was known by then, and the plan.
KeptForecast forecastOf(const SimulatedHouse& house, int day, std::uint64_t seed) {
    StockOutlook outlook;
    outlook.supply = amber;
    outlook.onHand = Amount{30'000'000};
    outlook.days = 28;
    outlook.planned = {{learnUsage(house.fillsBefore(day), simulatedUsageRule()).rate(),
                        {house.nominal.begin() + day, house.nominal.begin() + day + 28}}};
    outlook.chance = {learnRate(house.eventsBefore(day), day, simulatedEventPrior)};
    ForecastRule rule = keptRule();
    rule.paths = 2'000;
    rule.seed = seed;
    return {firstDay.addDays(day), {kept(amber, *forecastStock(outlook, rule), outlook.days)}};
}

ForecastScore scoreOf(const SimulatedHouse& house, std::uint64_t seed) {
    std::vector<KeptForecast> all;
    std::vector<KnownUse> known;
    double sum = 0;
    for (int day = 0; day < days; ++day) {
        if (day % 28 == 0) {
            known.push_back({firstDay.addDays(day), Amount{std::llround(sum)}});
            sum = 0;
            if (day >= warmUp && day + 28 <= days) all.push_back(forecastOf(house, day, seed));
        }
        sum += house.used[size_t(day)];
    }
    known.push_back({firstDay.addDays(days), Amount{std::llround(sum)}});
    return scoreForecasts(all, amber, known, 28);
}

void add(Coverage& sum, const Coverage& one) {
    sum.inside += one.inside;
    sum.spans += one.spans;
}

void add(PlainScore& sum, const PlainScore& one) {
    sum.ours += one.ours * one.spans;
    sum.plain += one.plain * one.spans;
    sum.oursMedian += one.oursMedian * one.spans;
    sum.plainMedian += one.plainMedian * one.spans;
    sum.spans += one.spans;
}

void print(const QByteArray& what, const PlainScore& s) {
    qInfo("%-44s %5d spans: pinball loss %.0f mL against %.0f, of the median %.0f against %.0f", what.constData(), s.spans,
          s.ours / s.spans / 1e3, s.plain / s.spans / 1e3, s.oursMedian / s.spans / 1e3, s.plainMedian / s.spans / 1e3);
}

}  // namespace

class ForecastCoverageTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void fillToFill_data();
    void fillToFill();
    void keptForecasts_data() { fillToFill_data(); }
    void keptForecasts();
};

void ForecastCoverageTest::fillToFill_data() {
    QTest::addColumn<double>("walk");  // of the factor, standard deviation in a tank
    QTest::newRow("steady machines") << 0.0;
    QTest::newRow("drifting machines") << 0.004;
}

/// What is poured from one line to another, about four weeks later.
void ForecastCoverageTest::fillToFill() {
    QFETCH(double, walk);
    Coverage half{0.5}, most{0.9};
    for (int seed = 0; seed < seeds; ++seed) {
        const SimulatedHouse house = simulatedHouse(seed, walk);
        std::vector<UsageFill> fills;
        for (size_t i = 0; i < house.fills.size();) {
            fills.push_back(house.fills[i]);
            size_t next = i + 1;
            if (house.fillDays[i] < warmUp) {
                i = next;
                continue;
            }
            double nominal = 0, poured = 0;
            while (next < house.fills.size()) {
                nominal += double(house.fills[next].nominal.value);
                poured += double(house.fills[next].poured.value);
                if (house.fillDays[next] >= house.fillDays[i] + 28) break;
                ++next;
            }
            if (next == house.fills.size()) break;
            count(half, most, learnUsage(fills, simulatedUsageRule()).poured(nominal).below(poured));
            fills.insert(fills.end(), house.fills.begin() + std::ptrdiff_t(i) + 1, house.fills.begin() + std::ptrdiff_t(next));
            i = next;
        }
    }
    print(QByteArray(QTest::currentDataTag()) + ", fill to fill", half, most);
    QVERIFY(half.spans > 900);
    QVERIFY(!half.isOff());
    QVERIFY(!most.isOff());
}

void ForecastCoverageTest::keptForecasts() {
    QFETCH(double, walk);
    ForecastScore sum;
    for (int seed = 0; seed < seeds; ++seed) {
        const ForecastScore one = scoreOf(simulatedHouse(seed, walk), std::uint64_t(seed));
        QCOMPARE(one.missing, warmUp / 28);
        add(sum.half, one.half);
        add(sum.most, one.most);
        add(sum.lastMonth, one.lastMonth);
        add(sum.lastYear, one.lastYear);
    }
    const QByteArray tag = QTest::currentDataTag();
    print(tag + ", 28 days", sum.half, sum.most);
    print(tag + ", beside last month's average", sum.lastMonth);
    print(tag + ", beside the same weeks last year", sum.lastYear);
    QVERIFY(sum.half.spans > 1'000);
    QVERIFY(!sum.half.isOff());
    QVERIFY(!sum.most.isOff());
    QVERIFY(sum.lastMonth.ours < sum.lastMonth.plain && sum.lastMonth.oursMedian < sum.lastMonth.plainMedian);
    QVERIFY(sum.lastYear.ours < sum.lastYear.plain && sum.lastYear.oursMedian < sum.lastYear.plainMedian);
}

QTEST_GUILESS_MAIN(ForecastCoverageTest)
#include "tst_forecast_coverage.moc"
