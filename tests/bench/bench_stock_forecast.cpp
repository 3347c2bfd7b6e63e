// Stock forecasts drawn as paths: 20 supplies, 365 days, 10,000 paths, beside the bare cost of drawing the same random numbers
// with the same generator. And one in closed form, under 20 ms.
#include "tests/bench/ratio.h"

#include "core/statistics/random_numbers.h"
#include "core/supplies/stock_forecast.h"

#include <QCoreApplication>

using namespace laneward;

namespace {

constexpr int supplies = 20;
constexpr int days = 365;
constexpr int paths = 10'000;
constexpr double eventsADay = 0.1;

/// A machine that works every day, unplanned work every ten days, and two orders on their way.
StockOutlook outlook(int n) {
    StockOutlook all;
    all.supply = {QString("supply %1").arg(n)};
    all.onHand = Amount{20'000'000 + n};
    all.days = days;
    PlannedUse planned;
    planned.rate = {1'800'000, 1.02, 0.05, 0.001, 0.0009, 25};
    for (int day = 0; day < days; ++day)
        planned.nominal.push_back(Amount{300'000 + 10'000 * (day % 7)});
    all.planned = {planned};
    std::vector<DatedAmount> events;
    for (int event = 0; event < 36; ++event)
        events.push_back({QDate(2026, 1, 1).addDays(10 * event), Amount{200'000 + 10'000 * (event % 5)}});
    all.chance = {learnRate(events, 360, {0.5, 5, 2e5})};
    const std::vector<int> history{6, 7, 9, 7, 8};
    all.deliveries = {{Amount{10'000'000}, leadTimes(history, 7)}, {Amount{40'000'000}, arrivalOf(leadTimes(history, 7), -60)}};
    return all;
}

std::vector<StockOutlook> outlooks() {
    std::vector<StockOutlook> all;
    for (int n = 0; n < supplies; ++n)
        all.push_back(outlook(n));
    return all;
}

void forecastsByPaths(benchmark::State& run) {
    const std::vector<StockOutlook> all = outlooks();
    for (auto _ : run)
        benchmark::DoNotOptimize(forecastStocks(all, {}));
}

/// A normal number a day, one a week for the drift and one to begin with, a gamma number to begin with; arrivals and chance
/// likewise.
void bareDraws(benchmark::State& run) {
    const LearnedRate rate = outlook(0).chance.front();
    for (auto _ : run) {
        double sum = 0;
        for (int supply = 0; supply < supplies; ++supply) {
            Draws draws{std::uint64_t(supply)};
            for (int n = 0; n < paths * (days + days / 7 + 1); ++n)
                sum += draws.normal();
            for (int n = 0; n < 2 * paths; ++n)
                sum += draws.uniform();
            for (int n = 0; n < paths; ++n)
                sum += draws.gamma(12.5) + draws.gamma(rate.shape) + draws.gamma(rate.scaleShape) + draws.exponential();
            for (int n = 0; n < int(paths * days * eventsADay); ++n)
                sum += draws.gamma(rate.sizeShape) + draws.exponential();
        }
        benchmark::DoNotOptimize(sum);
    }
}

void forecastInClosedForm(benchmark::State& run) {
    StockOutlook planned = outlook(0);
    planned.chance.clear();
    planned.deliveries.clear();
    for (auto _ : run)
        benchmark::DoNotOptimize(forecastStock(planned, {}));
}

BENCHMARK(forecastsByPaths)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(bareDraws)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(forecastInClosedForm)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    const bool fast = bench::withinRatio(times, "forecastsByPaths", "bareDraws", 2);
    return bench::withinLimit(times, "forecastInClosedForm", 20) && fast ? 0 : 1;
}
