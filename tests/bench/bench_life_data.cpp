// A Weibull fit of 10,000 lives with its intervals, under 50 ms; beside it the time that survreg of the R package survival takes
// for the estimates alone.
#include "tests/bench/ratio.h"
#include "tests/support/rscript.h"

#include "core/service/wear.h"
#include "core/statistics/random_numbers.h"

#include <QCoreApplication>

#include <cmath>

using namespace laneward;

namespace {

const std::vector<Life>& lives() {
    static const std::vector<Life> all = [] {
        Draws draws(10);
        std::vector<Life> made;
        for (int i = 0; i < 10'000; ++i) {
            const double end = 3'000 * std::pow(draws.exponential(), 1 / 2.5);
            const double seen = 5'000 * draws.uniform();
            made.push_back({std::min(end, seen), end <= seen});
        }
        return made;
    }();
    return all;
}

void fitOfLives(benchmark::State& run) {
    for (auto _ : run)
        benchmark::DoNotOptimize(fitWeibull(lives()));
}

/// The same, points to plot, the best age of replacement and its interval.
void wearOfLives(benchmark::State& run) {
    for (auto _ : run)
        benchmark::DoNotOptimize(wearOf({QStringLiteral("part"), lives(), {1, 5}, {}}));
}

BENCHMARK(fitOfLives)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(wearOfLives)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();

void printTimeOfR() {
    if (support::pathOfR().isEmpty()) {
        std::printf("bench %s\n", support::noR);
        return;
    }
    QByteArray text;
    for (const Life& life : lives())
        text += "one," + QByteArray::number(life.age, 'g', 17) + (life.failed ? ",1\n" : ",0\n");
    QByteArray complaint;
    const auto lines = support::linesOfR({QStringLiteral("life_fits.R"), QStringLiteral("time")}, text, complaint);
    if (lines && lines->size() == 1)
        std::printf("bench survreg of the same lives, estimates alone: %.1f ms\n", lines->front()[1].toDouble());
    else
        std::printf("bench survreg was not timed: %s\n", complaint.constData());
}

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    printTimeOfR();
    const bool fast = bench::withinLimit(times, "fitOfLives", 50);
    return bench::withinLimit(times, "wearOfLives", 100) && fast ? 0 : 1;
}
