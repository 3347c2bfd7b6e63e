// Scores of kept forecasts, with answers worked out by hand.
#include "core/supplies/forecast_scores.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

const QDate start(2026, 3, 2);
const SupplyId amber{"amber"};

bool near(double a, double b) { return std::abs(a - b) < 1e-9; }

/// `a day`: 50, 80, 100, 120 and 150 % of so much, at horizons of 7 and 14 days.
KeptForecast forecast(int day, std::int64_t aDay) {
    KeptSupply supply{amber, {}};
    for (int days : {7, 14})
        supply.horizons.push_back({days,
                                   {Amount{aDay * days / 2}, Amount{aDay * days * 8 / 10}, Amount{aDay * days},
                                    Amount{aDay * days * 12 / 10}, Amount{aDay * days * 15 / 10}}});
    return {start.addDays(day), {{SupplyId{"cloth"}, {}}, supply}};
}

}  // namespace

class ForecastScoresTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void pinball();
    void coverage();
    void spansDoNotOverlap();
    void betweenHorizons();
    void betweenWeeksByTheCourseOfTheFirst();
    void plainGuesses();
    void againstPlainGuesses();
    void nothingToScore();
    void keptFromAForecast();
};

void ForecastScoresTest::pinball() {
    QVERIFY(near(pinballLoss(0.9, 10, 12), 1.8));
    QVERIFY(near(pinballLoss(0.9, 10, 8), 0.2));
    QVERIFY(near(pinballLoss(0.5, 10, 7), 1.5));
    QVERIFY(near(pinballLoss(0.3, 10, 10), 0));
}

void ForecastScoresTest::coverage() {
    Coverage half{0.5, 40, 100};
    QVERIFY(near(half.standardError(), 0.05));
    QVERIFY(!half.isOff());
    half.inside = 34;  // 3.2 standard errors
    QVERIFY(half.isOff());
    half.inside = 66;
    QVERIFY(half.isOff());
    QVERIFY(!Coverage{0.9}.isOff());
}

/// Known after 3, 7, 10, 20 and 21 days: scored 0 to 7 and 7 to 20; the last day alone is too short.
void ForecastScoresTest::spansDoNotOverlap() {
    const std::vector<KeptForecast> kept{forecast(0, 10), forecast(3, 1), forecast(7, 10), forecast(10, 1)};
    const std::vector<KnownUse> known{{start, {}},
                                      {start.addDays(3), Amount{30}},
                                      {start.addDays(7), Amount{50}},
                                      {start.addDays(10), Amount{30}},
                                      {start.addDays(20), Amount{150}},
                                      {start.addDays(21), Amount{9}}};
    const ForecastScore score = scoreForecasts(kept, amber, known);
    QCOMPARE(score.most.spans, 2);
    QCOMPARE(score.half.inside, 1);  // 80 of 56 .. 84; 180 of 104 .. 156 is beyond
    QCOMPARE(score.most.inside, 2);
    QCOMPARE(score.missing, 0);
    // 80: 35, 56, 70, 84, 105; 180: 65, 104, 130, 156, 195.
    const double first = 0.05 * 45 + 0.25 * 24 + 0.5 * 10 + 0.25 * 4 + 0.05 * 25;
    const double second = 0.05 * 115 + 0.25 * 76 + 0.5 * 50 + 0.75 * 24 + 0.05 * 15;
    QVERIFY(near(score.pinball, (first + second) / 10));
}

/// From nothing to the horizon of 7 days, and from there to 14.
void ForecastScoresTest::betweenHorizons() {
    const std::vector<KeptForecast> kept{forecast(0, 10)};
    for (const auto& [days, used, inside] :
         {std::tuple{3, 24, 1}, {3, 23, 0}, {10, 80, 1}, {10, 79, 0}, {14, 168, 1}, {14, 169, 0}}) {
        const ForecastScore score =
            scoreForecasts(kept, amber, std::vector<KnownUse>{{start, {}}, {start.addDays(days), Amount{used}}}, 1);
        QCOMPARE(score.half.spans, 1);
        QCOMPARE(score.half.inside, inside);
    }
}

/// All of a week is used on its third and fifth day, 100 and 300; the second takes twice as much, the next two together 1,600.
void ForecastScoresTest::betweenWeeksByTheCourseOfTheFirst() {
    KeptSupply supply{amber, {}};
    const auto keep = [&](int days, std::int64_t use) {
        supply.horizons.push_back({days, {Amount{use - 2}, Amount{use - 1}, Amount{use}, Amount{use + 1}, Amount{use + 2}}});
    };
    for (const auto& [days, use] :
         {std::pair{1, 0}, {2, 0}, {3, 100}, {4, 100}, {5, 400}, {6, 400}, {7, 400}, {14, 1'200}, {28, 2'800}})
        keep(days, use);
    const KeptForecast forecast{start, {supply}};
    for (const auto& [days, use] : {std::pair{4, 100},
                                    {7, 400},
                                    {8, 400},
                                    {10, 600},
                                    {11, 600},
                                    {12, 1'200},
                                    {14, 1'200},
                                    {16, 1'200},
                                    {17, 1'400},
                                    {21, 2'000},
                                    {23, 2'000},
                                    {24, 2'200},
                                    {26, 2'800},
                                    {28, 2'800}}) {
        for (const int off : {-3, 0, 3}) {
            const ForecastScore score = scoreForecasts(
                std::vector{forecast}, amber, std::vector<KnownUse>{{start, {}}, {start.addDays(days), Amount{use + off}}}, 1);
            QCOMPARE(score.most.spans, 1);
            QVERIFY2(score.most.inside == (off == 0), qPrintable(QString("%1 days, %2").arg(days).arg(use + off)));
        }
    }
}

void ForecastScoresTest::plainGuesses() {
    std::vector<KnownUse> known{{start, {}}};
    for (int week = 1; week <= 60; ++week)
        known.push_back({start.addDays(7 * week), Amount{week}});
    const UseCurve curve(known);
    QCOMPARE(curve.used(start, start.addDays(14)), std::optional(3.0));
    QVERIFY(near(*curve.used(start.addDays(7), start.addDays(8)), 2.0 / 7));
    QCOMPARE(curve.used(start.addDays(-1), start.addDays(7)), std::optional<double>());
    QCOMPARE(curve.used(start, start.addDays(421)), std::optional<double>());
    // Weeks 49 to 52 used 202 in 28 days.
    QVERIFY(near(*lastMonthsAverage(curve, start.addDays(364), 14), 101));
    QCOMPARE(lastMonthsAverage(curve, start.addDays(27), 14), std::optional<double>());
    QVERIFY(near(*sameWeeksLastYear(curve, start.addDays(371), 14), 2 + 3));
    QCOMPARE(sameWeeksLastYear(curve, start.addDays(363), 14), std::optional<double>());
}

void ForecastScoresTest::againstPlainGuesses() {
    std::vector<KnownUse> known{{start, {}}};
    std::vector<KeptForecast> kept;
    for (int week = 1; week <= 6; ++week)
        known.push_back({start.addDays(7 * week), Amount{week <= 4 ? 70 : 140}});
    kept = {forecast(28, 20), forecast(35, 20)};
    const ForecastScore score = scoreForecasts(kept, amber, known);
    QCOMPARE(score.missing, 4);
    QCOMPARE(score.lastMonth.spans, 2);
    QCOMPARE(score.lastYear.spans, 0);
    QVERIFY(near(score.lastMonth.oursMedian, 0));
    // Last month says 70, then (3 x 70 + 140) / 4 = 87.5, of 140.
    QVERIFY(near(score.lastMonth.plainMedian, (35 + 26.25) / 2));
    QVERIFY(near(score.lastMonth.plain, (70 + 52.5) / 2 * 0.5));  // mean of the levels
    QVERIFY(score.lastMonth.ours < score.lastMonth.plain);
    QVERIFY(near(score.lastMonth.ours, score.pinball));
}

void ForecastScoresTest::nothingToScore() {
    const ForecastScore none = scoreForecasts({}, amber, {});
    QCOMPARE(none.half.spans, 0);
    QCOMPARE(none.pinball, 0.0);
    // Longer than the forecast went.
    const std::vector<KeptForecast> kept{forecast(0, 10)};
    const ForecastScore tooLong = scoreForecasts(kept, amber, std::vector<KnownUse>{{start, {}}, {start.addDays(15), Amount{9}}});
    QCOMPARE(tooLong.missing, 1);
    QCOMPARE(tooLong.half.spans, 0);
}

void ForecastScoresTest::keptFromAForecast() {
    StockOutlook outlook;
    outlook.supply = amber;
    outlook.days = 10;
    outlook.known.assign(10, Amount{3});
    const KeptSupply supply = kept(amber, *forecastStock(outlook, keptRule()), outlook.days);
    QCOMPARE(supply.supply, amber);
    QCOMPARE(supply.horizons.size(), size_t(7));
    for (const KeptUse& use : supply.horizons)
        for (const Amount& amount : use.use)
            QCOMPARE(amount, Amount{3 * use.days});
    QCOMPARE(supply.horizons.back().days, 7);
}

QTEST_GUILESS_MAIN(ForecastScoresTest)
#include "tst_forecast_scores.moc"
