// Tape readings by the thousand: 10,000 of them read from a centre's file and put on their control charts, under 200 ms.
#include "tests/bench/ratio.h"

#include "core/statistics/control_charts.h"
#include "tests/support/temporary_centre.h"

#include <QCoreApplication>

using namespace laneward;

namespace {

constexpr int count = 10'000;

HistorySlice history() {
    HistorySlice all = support::fullHistory();
    const TapeReading like = all.tapes.front();
    all.tapes.clear();
    for (int n = 0; n < count; ++n) {
        TapeReading reading = like;
        reading.id = support::operation(1'000'000 + n);
        reading.at = support::fullSeasonNow - minutes(30 * n);
        for (size_t board = 0; board < reading.milliUnits.size(); ++board)
            reading.milliUnits[board] = 1'000 + (n * 37 + std::int64_t(board) * 911) % 60'000;
        all.tapes.push_back(reading);
    }
    return all;
}

Store& filled() {
    static support::TemporaryCentre centre(false);
    static const bool done = [] {
        const Outcome put = centre.store().replaceAll(support::fullSeason(), history(), {}, support::fullSeasonNow);
        if (!put) qFatal("%s", put.error().finding.rule.constData());
        return true;
    }();
    Q_UNUSED(done)
    return centre.store();
}

std::vector<TapeReading> loaded() {
    const Result<std::vector<TapeReading>> all = filled().tapes(allRecords);
    if (!all || all->size() != count) qFatal("not all readings");
    return standing(*all);
}

double meanOf(const TapeReading& reading) {
    double sum = 0;
    int measured = 0;
    for (const auto& film : reading.milliUnits) {
        sum += double(film.value_or(0)) / 1'000;
        measured += film.has_value();
    }
    return measured > 0 ? sum / measured : 0;
}

void loadReadings(benchmark::State& run) {
    filled();
    for (auto _ : run)
        benchmark::DoNotOptimize(loaded());
}

void loadAndChartReadings(benchmark::State& run) {
    filled();
    for (auto _ : run) {
        std::vector<double> means;
        for (const TapeReading& reading : loaded())
            means.push_back(meanOf(reading));
        const Baseline base = baselineOf(std::span(means).first(20));
        benchmark::DoNotOptimize(individualsChart(means, base));
        benchmark::DoNotOptimize(ewmaChart(means, base));
        benchmark::DoNotOptimize(cusumChart(means, base));
    }
}

BENCHMARK(loadReadings)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(loadAndChartReadings)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    return bench::withinLimit(times, "loadAndChartReadings", 200) ? 0 : 1;
}
