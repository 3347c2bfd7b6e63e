// Stock forecasts, with answers worked out by hand. Distributions: tests/outside/tst_stock_forecast.cpp.
#include "core/supplies/stock_forecast.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

/// 1,000 at first, 100 a day.
StockOutlook steady(int days) {
    StockOutlook one;
    one.supply = SupplyId{"blades"};
    one.onHand = Amount{1'000};
    one.days = days;
    one.known.assign(size_t(days), Amount{100});
    return one;
}

StockOutlook uncertain() {
    StockOutlook one = steady(30);
    one.planned = {{{100, 1, 0.5, 0, 0.04, 9}, std::vector<Amount>(30, Amount{20})}};
    one.chance = {learnRate({}, 0, {1, 10, 50})};
    return one;
}

ForecastRule few() {
    ForecastRule rule;
    rule.paths = 500;
    return rule;
}

}  // namespace

class StockForecastTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void knownUse();
    void deliveryOfAKnownDay();
    void deliveryAfterTheHorizon();
    void gainsComeIn();
    void concentrate();
    void runOutDays();
    void sameSeedSamePaths();
    void cancelledAndWatched();
    void drawnWithoutChanceIsKnown();
};

void StockForecastTest::knownUse() {
    ForecastRule rule;
    rule.useHorizons = {1, 5, 99};
    const StockForecast forecast = *forecastStock(steady(12), rule);
    QVERIFY(forecast.exact);
    for (int day = 0; day < 12; ++day) {
        for (double stock : forecast.stock[size_t(day)])
            QCOMPARE(stock, 1'000.0 - 100 * (day + 1));
        QCOMPARE(forecast.outBy[size_t(day)], day < 10 ? 0.0 : 1.0);  // nothing left after the tenth day is still enough
    }
    QCOMPARE(forecast.runOut(0.05), std::optional(10));
    QCOMPARE(forecast.runOut(0.95), std::optional(10));
    QCOMPARE(forecast.outBefore(10), 0.0);
    QCOMPARE(forecast.outBefore(11), 1.0);
    QCOMPARE(forecast.outBefore(99), 1.0);
    QCOMPARE(forecast.use[0][2], 100.0);
    QCOMPARE(forecast.use[1][0], 500.0);
    QCOMPARE(forecast.use[2][4], 1'200.0);  // as far as it goes
    QCOMPARE(forecastStock(steady(9), rule)->runOut(0.05), std::optional<int>());
}

void StockForecastTest::deliveryOfAKnownDay() {
    StockOutlook one = steady(30);
    one.deliveries = {{Amount{400}, {10, {1}}}, {Amount{100}, {-2, {1}}}};
    ForecastRule rule = few();
    rule.useHorizons = {30};
    const StockForecast forecast = *forecastStock(one, rule);
    QCOMPARE(forecast.stock[0][2], 1'000.0);
    QCOMPARE(forecast.stock[9][2], 100.0);
    QCOMPARE(forecast.stock[10][0], 400.0);
    QCOMPARE(forecast.runOut(0.5), std::optional(15));
    QCOMPARE(forecast.use[0][0], 3'000.0);
}

void StockForecastTest::deliveryAfterTheHorizon() {
    StockOutlook one = steady(12);
    one.deliveries = {{Amount{400}, {12, {0.5, 0.5}}}};
    const StockForecast forecast = *forecastStock(one, few());
    QCOMPARE(forecast.stock[11][4], -200.0);
    QCOMPARE(forecast.outBy[11], 1.0);
}

void StockForecastTest::gainsComeIn() {
    StockOutlook one = uncertain();
    const double lost = forecastStock(one, few())->stock[29][2];
    one.chance[0].comesIn = true;
    const double found = forecastStock(one, few())->stock[29][2];
    one.chance.clear();
    const double neither = forecastStock(one, few())->stock[29][2];
    QVERIFY(lost < neither - 50 && neither + 50 < found);
}

void StockForecastTest::concentrate() {
    StockOutlook one = uncertain();
    one.known.clear();
    one.chance.clear();
    one.planned[0].share = 0.25;
    for (const StockForecast& forecast : {*forecastStock(one, few()), *forecastByPaths(one, few())}) {
        QVERIFY(std::abs(forecast.stock[29][2] - 850) < 10);
        QVERIFY(forecast.stock[29][0] < forecast.stock[29][1]);
    }
}

void StockForecastTest::runOutDays() {
    const StockForecast forecast = *forecastStock(uncertain(), few());
    QVERIFY(!forecast.exact);
    QVERIFY(*forecast.runOut(0.05) < *forecast.runOut(0.95));
    for (size_t day = 1; day < 30; ++day)
        QVERIFY(forecast.outBy[day] >= forecast.outBy[day - 1]);
    for (const std::vector<double>& stock : forecast.stock)
        QVERIFY(std::is_sorted(stock.begin(), stock.end()));
}

/// A supply's paths are its own, whichever others are asked with it.
void StockForecastTest::sameSeedSamePaths() {
    StockOutlook other = uncertain();
    other.supply.value.replace(0, 1, u'x');  // of one length and alike but for a letter
    QVERIFY(other.supply != uncertain().supply);
    const StockForecast alone = *forecastStock(uncertain(), few());
    const std::vector<StockForecast> both = *forecastStocks(std::vector{other, uncertain()}, few());
    QCOMPARE(both[1].stock, alone.stock);
    QVERIFY(both[0].stock != alone.stock);
    ForecastRule again = few();
    again.seed = 2;
    QVERIFY(forecastStock(uncertain(), again)->stock != alone.stock);
}

void StockForecastTest::cancelledAndWatched() {
    std::vector<double> parts;
    ForecastWatch watch;
    watch.progress = [&](double part) { parts.push_back(part); };
    QVERIFY(forecastStocks(std::vector{uncertain(), steady(3)}, few(), watch));
    QVERIFY(parts.size() > 30 && std::is_sorted(parts.begin(), parts.end()));
    QVERIFY(parts.front() > 0 && parts.front() < 0.05);
    QCOMPARE(parts.back(), 1.0);
    int asked = 0;
    watch.cancelled = [&] { return ++asked > 5; };
    parts.clear();
    QVERIFY(!forecastStocks(std::vector{uncertain(), uncertain()}, few(), watch));
    QCOMPARE(parts.size(), size_t(5));
}

void StockForecastTest::drawnWithoutChanceIsKnown() {
    const StockForecast exact = *forecastStock(steady(12), few());
    const StockForecast drawn = *forecastByPaths(steady(12), few());
    QCOMPARE(drawn.stock, exact.stock);
    QCOMPARE(drawn.outBy, exact.outBy);
}

QTEST_GUILESS_MAIN(StockForecastTest)
#include "tst_stock_forecast.moc"
