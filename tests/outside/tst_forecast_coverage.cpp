// Simulated centres whose truth is known: 50 seeds, two years each. Do the 50 % and 90 % ranges of cumulative use hold as often
// as they promise, within three standard errors (binomial)? From fill to fill in closed form, and over four weeks as kept
// forecasts are scored, beside the two plain guesses. Spans do not overlap. The truth is not the prior: factors, purges, noise
// and errors of the line are drawn here.
#include "core/supplies/forecast_scores.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace laneward;

namespace {

constexpr int seeds = 50;
constexpr int days = 728;
constexpr int warmUp = 84;
constexpr double tank = 1'800'000;
constexpr double fillAt = 0.5;  // of a tank, nominal
const QDate firstDay(2026, 1, 5);
const SupplyId amber{"amber"};

struct Truth {
    double factor, purge, noise, lineShare, walk, eventsADay, eventSize;
};

/// Two years of one machine: plan, real use, fills, and what happened besides.
struct House {
    std::vector<Amount> nominal;  ///< as planned, and run
    std::vector<double> used;     ///< of each day, events included
    std::vector<UsageFill> fills;
    std::vector<size_t> fillDays;
    std::vector<DatedAmount> events;
};

class Simulation {
public:
    Simulation(int seed, double walk) : m_dice(std::uint64_t(seed) * 7'919 + 13) {
        const double lineShares[]{0, 0.25, 1, 4};
        m_truth = {1 + 0.08 * normal(), std::abs(0.015 * normal()), between(0.01, 0.05), lineShares[seed % 4], walk,
                   between(0.05, 0.2),  between(0.1, 0.4)};
    }

    House run() {
        House house;
        double sinceNominal = 0, sinceReal = 0;  // tanks
        double line = lineError();
        for (int day = 0; day < days; ++day) {
            const double x = planOf(day);
            m_truth.factor += m_truth.walk * std::sqrt(x) * normal();
            double real = m_truth.factor * x + m_truth.noise * std::sqrt(x) * normal();
            sinceNominal += x;
            sinceReal += real;
            if (sinceNominal >= fillAt) {
                const double now = lineError();
                real += m_truth.purge;
                fill(house, day, sinceNominal, sinceReal + m_truth.purge + now - line);
                line = now;
                sinceNominal = sinceReal = 0;
            }
            house.nominal.push_back(Amount{std::llround(x * tank)});
            house.used.push_back(real * tank + happened(house, day));
        }
        return house;
    }

private:
    double normal() { return std::normal_distribution<double>()(m_dice); }
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_dice); }
    double lineError() { return m_truth.noise * std::sqrt(m_truth.lineShare) * normal(); }

    /// Tanks of a day: a week's pattern, a season, and what a calendar has besides; known beforehand.
    double planOf(int day) {
        const double week[]{0.1, 0.16, 0.2, 0.22, 0.3, 0.34, 0.2};
        const double season = 1 + 0.35 * std::sin(2 * 3.14159265 * day / 364);
        return week[day % 7] * season * between(0.7, 1.3);
    }

    static void fill(House& house, int day, double nominal, double poured) {
        UsageFill one{{QString("fill %1").arg(day, 4, 10, QChar('0'))}, Instant{86'400 * (day + 1)}};
        one.nominal = Amount{std::llround(nominal * tank)};
        one.poured = Amount{std::llround(poured * tank)};
        one.lanes = int(std::lround(nominal * 60));
        house.fills.push_back(one);
        house.fillDays.push_back(size_t(day));
    }

    double happened(House& house, int day) {
        double sum = 0;
        for (int n = std::poisson_distribution<int>(m_truth.eventsADay)(m_dice); n > 0; --n) {
            const double size = std::gamma_distribution<double>(4, m_truth.eventSize * tank / 4)(m_dice);
            house.events.push_back({firstDay.addDays(day), Amount{std::llround(size)}});
            sum += size;
        }
        return sum;
    }

    std::mt19937_64 m_dice;
    Truth m_truth{};
};

UsageRule usageRule() {
    UsageRule rule;
    rule.tank = Amount{std::int64_t(tank)};
    return rule;
}

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
KeptForecast forecastOf(const House& house, int day, std::uint64_t seed) {
    std::vector<UsageFill> fills;
    for (size_t i = 0; i < house.fills.size() && house.fillDays[i] < size_t(day); ++i)
        fills.push_back(house.fills[i]);
    std::vector<DatedAmount> events;
    for (const DatedAmount& event : house.events)
        if (event.day < firstDay.addDays(day)) events.push_back(event);
    StockOutlook outlook;
    outlook.supply = amber;
    outlook.onHand = Amount{30'000'000};
    outlook.days = 28;
    outlook.planned = {{learnUsage(fills, usageRule()).rate(), {house.nominal.begin() + day, house.nominal.begin() + day + 28}}};
    outlook.chance = {learnRate(events, day, {1, 10, 0.25 * tank})};
    ForecastRule rule = keptRule();
    rule.paths = 2'000;
    rule.seed = seed;
    return {firstDay.addDays(day), {kept(amber, *forecastStock(outlook, rule), outlook.days)}};
}

ForecastScore scoreOf(const House& house, std::uint64_t seed) {
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
        const House house = Simulation(seed, walk).run();
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
            count(half, most, learnUsage(fills, usageRule()).poured(nominal).below(poured));
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
        const ForecastScore one = scoreOf(Simulation(seed, walk).run(), std::uint64_t(seed));
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
