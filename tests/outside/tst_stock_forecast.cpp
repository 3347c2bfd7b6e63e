// Drawn paths against exact distributions: the closed form (Student's t), and those of scipy.stats (python3-scipy 1.10.1,
// tools/stock_distributions.py) for chance and for sums. A quantile at level p of n paths lies within standard errors
// sqrt(p (1 - p) / n) of p in the exact distribution; four are allowed, and the width of a bin of the counter. And the generator
// against numbers of its authors' reference code (as quoted in the tests of the library rand_xoshiro, from memory).
#include "core/statistics/random_numbers.h"
#include "core/supplies/stock_forecast.h"
#include "tests/support/python.h"

#include <QJsonObject>
#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

constexpr int paths = 40'000;
constexpr double allowedErrors = 4;
constexpr double bin = 0.0003;  // straight lines within bins of 6 deviations / 1,024

UseRate machineRate(double scale = 0.0016) { return {1'800'000, 1.03, 0.08, 0.002, scale, 14}; }

/// Nominal use of days, more on some weekdays.
std::vector<Amount> planned(int days) {
    std::vector<Amount> all;
    for (int day = 0; day < days; ++day)
        all.push_back(day % 7 == 2 ? Amount{0} : Amount{250'000 + 60'000 * (day % 7)});
    return all;
}

double sumOf(const std::vector<Amount>& days, int until) {
    double sum = 0;
    for (int day = 0; day < until; ++day)
        sum += double(days[size_t(day)].value);
    return sum;
}

LearnedRate spills() {
    const std::vector<DatedAmount> found{{QDate(2026, 1, 3), Amount{300'000}},
                                         {QDate(2026, 1, 30), Amount{120'000}},
                                         {QDate(2026, 3, 3), Amount{700'000}},
                                         {QDate(2026, 4, 3), Amount{250'000}},
                                         {QDate(2026, 5, 9), Amount{410'000}}};
    return learnRate(found, 60, {0.5, 20, 2e5});
}

QJsonObject chancePart(const LearnedRate& rate, int days) {
    return {{"chance", QJsonObject{{"shape", rate.shape},
                                   {"days", rate.days},
                                   {"size_shape", rate.sizeShape},
                                   {"scale_shape", rate.scaleShape},
                                   {"scale_rate", rate.scaleRate},
                                   {"horizon", days}}}};
}

QJsonObject studentPart(const Student& t) { return {{"t", QJsonArray{t.centre, t.scale, t.freedom}}}; }

ForecastRule rule(std::vector<int> horizons, std::uint64_t seed = 11) {
    ForecastRule one;
    one.paths = paths;
    one.seed = seed;
    one.useHorizons = std::move(horizons);
    return one;
}

/// How many standard errors the exact probability of being below lies from the level.
double errorsOff(double exact, double level) {
    return std::max(0.0, std::abs(exact - level) - bin) / std::sqrt(level * (1 - level) / paths);
}

StockOutlook outlook(int days) {
    StockOutlook one;
    one.supply = SupplyId{"amber"};
    one.onHand = Amount{12'000'000};
    one.days = days;
    return one;
}

}  // namespace

class StockForecastTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void generatorOfItsAuthors();
    void plannedUse();
    void runningOut();
    void sums_data();
    void sums();
    void lateDeliveries();
};

void StockForecastTest::generatorOfItsAuthors() {
    Xoshiro generator(std::array<std::uint64_t, 4>{1, 2, 3, 4});
    for (std::uint64_t printed :
         {41943041ull, 58720359ull, 3588806011781223ull, 3591011842654386ull, 9228616714210784205ull, 9973669472204895162ull})
        QCOMPARE(generator(), printed);
}

/// Every level of every day.
void StockForecastTest::plannedUse() {
    StockOutlook one = outlook(364);
    one.planned = {{machineRate(), planned(364)}};
    one.known.assign(364, Amount{10'000});
    QVERIFY(hasClosedForm(one));
    const StockForecast exact = *forecastStock(one, rule({7, 364}));
    const StockForecast drawn = *forecastByPaths(one, rule({7, 364}));
    QVERIFY(exact.exact && !drawn.exact);
    double largest = 0;
    double farthest = 0;
    for (int day = 0; day < 364; ++day) {
        const Student use = machineRate().use(sumOf(one.planned[0].nominal, day + 1));
        for (size_t i = 0; i < exact.levels.size(); ++i) {
            const double used = double(one.onHand.value) - 10'000 * (day + 1) - drawn.stock[size_t(day)][i];
            largest = std::max(largest, errorsOff(1 - use.below(used), drawn.levels[i]));
            // The closed form is that of the same t.
            farthest = std::max(farthest,
                                std::abs(1 -
                                         use.below(use.centre - (exact.stock[size_t(day)][i] -
                                                                 (double(one.onHand.value) - 10'000 * (day + 1) - use.centre))) -
                                         exact.levels[i]));
        }
    }
    qInfo("364 days of planned use, 5 levels: drawn at most %.2f standard errors from the closed form (%d allowed)", largest,
          int(allowedErrors));
    QVERIFY(largest <= allowedErrors);
    QVERIFY(farthest < 1e-9);
    for (size_t h = 0; h < 2; ++h) {
        const double nominal = sumOf(one.planned[0].nominal, h == 0 ? 7 : 364);
        for (size_t i = 0; i < exact.levels.size(); ++i) {
            const double known = 10'000.0 * (h == 0 ? 7 : 364);
            QVERIFY(errorsOff(machineRate().use(nominal).below(drawn.use[h][i] - known), exact.levels[i]) <= allowedErrors);
            QVERIFY(std::abs(machineRate().use(nominal).below(exact.use[h][i] - known) - exact.levels[i]) < 1e-9);
        }
    }
}

/// A day gives nothing back as good as always: first below zero is below zero.
void StockForecastTest::runningOut() {
    StockOutlook one = outlook(60);
    UseRate uncertain = machineRate(0.0004);
    uncertain.variance = 10;
    one.planned = {{uncertain, planned(60)}};
    const StockForecast exact = *forecastStock(one, rule({}));
    const StockForecast drawn = *forecastByPaths(one, rule({}));
    double largest = 0;
    int open = 0;
    for (int day = 0; day < 60; ++day) {
        const double chance = exact.outBy[size_t(day)];
        if (chance < 0.001 || chance > 0.999) continue;
        ++open;
        largest = std::max(largest, std::abs(drawn.outBy[size_t(day)] - chance) / std::sqrt(chance * (1 - chance) / paths));
    }
    qInfo("having run out by %d days: drawn at most %.2f standard errors from the closed form", open, largest);
    QVERIFY(open >= 4);
    QVERIFY(largest <= allowedErrors);
    QVERIFY(exact.runOut(0.05) < exact.runOut(0.95));
    QCOMPARE(exact.runOut(0.5), drawn.runOut(0.5));
}

void StockForecastTest::sums_data() {
    QTest::addColumn<bool>("firstMachine");
    QTest::addColumn<bool>("secondMachine");
    QTest::addColumn<bool>("chance");
    QTest::addColumn<int>("days");
    QTest::newRow("chance alone") << false << false << true << 28;
    QTest::newRow("chance alone, a year") << false << false << true << 364;
    QTest::newRow("two machines") << true << true << false << 56;
    QTest::newRow("a machine and chance") << true << false << true << 28;
}

void StockForecastTest::sums() {
    QFETCH(bool, firstMachine);
    QFETCH(bool, secondMachine);
    QFETCH(bool, chance);
    QFETCH(int, days);
    StockOutlook one = outlook(days);
    QJsonArray parts;
    const auto add = [&](const UseRate& rate, double share) {
        one.planned.push_back({rate, planned(days), share});
        const Student use = rate.use(sumOf(planned(days), days));
        parts.append(studentPart({use.centre * share, use.scale * share, use.freedom}));
    };
    if (firstMachine) add(machineRate(), 1);
    if (secondMachine) add({900'000, 0.97, 0.1, 0.001, 0.01, 5}, 0.25);
    if (chance) {
        one.chance = {spills()};
        parts.append(chancePart(spills(), days));
    }
    QVERIFY(!hasClosedForm(one));
    const StockForecast drawn = *forecastStock(one, rule({days}));
    QJsonArray at{0};
    for (double quantile : drawn.use[0])
        at.append(quantile);
    QByteArray complaint;
    const QJsonArray answers =
        support::answersOf("stock_distributions.py", {QJsonObject{{"parts", parts}, {"at", at}}}, complaint);
    QVERIFY2(answers.size() == 1, complaint.constData());
    const double never = firstMachine ? 0 : answers[0][0].toDouble();  // probability that nothing is used at all
    double largest = 0;
    int compared = 0;
    for (size_t i = 0; i < drawn.levels.size(); ++i) {
        if (drawn.levels[i] < never) {
            QVERIFY(drawn.use[0][i] >= 0 && drawn.use[0][i] < 0.01 * drawn.use[0].back());
            continue;
        }
        largest = std::max(largest, errorsOff(answers[0][int(i) + 1].toDouble(), drawn.levels[i]));
        ++compared;
    }
    QVERIFY(compared >= 2);
    qInfo("%s, %d days: drawn at most %.2f standard errors from the sum by scipy", QTest::currentDataTag(), days, largest);
    QVERIFY(largest <= allowedErrors);
}

/// Known use and one order: it runs out exactly when the order comes after what is there has gone.
void StockForecastTest::lateDeliveries() {
    StockOutlook one = outlook(20);
    one.onHand = Amount{1'000};
    one.known.assign(20, Amount{150});  // gone within the seventh day
    const std::vector<int> history{3, 5, 6, 6, 7, 9, 14};
    one.deliveries = {{Amount{100'000}, arrivalOf(leadTimes(history, 6), 2)}};
    const StockForecast drawn = *forecastStock(one, rule({20}));
    const double late = 1 - one.deliveries[0].arrival.until(6);
    QVERIFY(late > 0.05 && late < 0.5);
    QCOMPARE(drawn.outBefore(6), 0.0);
    const double standardError = std::sqrt(late * (1 - late) / paths);
    QVERIFY(std::abs(drawn.outBefore(7) - late) <= allowedErrors * standardError);
    QCOMPARE(drawn.outBy.back(), drawn.outBefore(7));
    for (double used : drawn.use[0])
        QCOMPARE(used, 3'000.0);
    qInfo("an order comes too late with probability %.4f, drawn %.4f +- %.4f", late, drawn.outBefore(7), standardError);
}

QTEST_GUILESS_MAIN(StockForecastTest)
#include "tst_stock_forecast.moc"
