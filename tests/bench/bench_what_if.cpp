// 'What if' on a season of 365 days, 64 lanes and 60 series: limits of processor time for a first and a proven answer; and how
// the time of a plan grows with lanes, series and days.
#include "tests/bench/ratio.h"

#include "core/season/what_if.h"
#include "tests/support/big_season.h"

#include <algorithm>
#include <ctime>

#include <malloc.h>

using namespace laneward;

namespace {

const DateRange year{support::bigSeasonBegins(), support::bigSeasonBegins().addDays(364)};
// Eight nodes a day: exact treatment counts and a valid placement.
constexpr std::int64_t fewNodes = 8 * nodesFor;

Instant nowFor(const State& state) { return dayOf(state.centre, year.first).begin; }

void planFirst(benchmark::State& run) {
    const State state = support::bigSeason();
    for (auto _ : run)
        benchmark::DoNotOptimize(plan(state, nowFor(state), year, fewNodes));
}

void planProven(benchmark::State& run) {
    const State state = support::bigSeason();
    int proven = 0;
    for (auto _ : run) {
        const Plan p = plan(state, nowFor(state), year);
        proven = int(std::count_if(p.days.begin(), p.days.end(), [](const DayPlan& day) { return day.proven; }));
    }
    run.counters["proven"] = double(proven);
}

/// One instance of an evening series moved to the afternoon before it; another one every time, so that none is known.
State withInstanceMoved(State state, int nth) {
    Series& series = state.series[size_t(nth % 4)];
    Override change;
    change.original = {series.start.date.addDays(7 * (10 + nth / 4 % 40)), series.start.time};
    change.start = LocalTime{change.original.date, series.start.time.addSecs(-60 * (30 + nth / 160))};
    series.overrides.push_back(change);
    return state;
}

State withSeriesMoved(State state, int nth) {
    state.series[4].start.time = state.series[4].start.time.addSecs(-60 * (5 + nth));
    return state;
}

using Edit = State (*)(State, int);

/// `nth` edits were asked before; none is asked twice, whatever the repetition.
void ask(benchmark::State& run, Effort effort, Edit edit, int& nth) {
    static WhatIf season(support::bigSeason(), nowFor(support::bigSeason()), year);
    size_t days = 0;
    for (auto _ : run) {
        run.PauseTiming();
        const State changed = edit(season.state(), nth++);
        run.ResumeTiming();
        days += season.ask(changed, effort).days.size();
    }
    run.counters["days"] = benchmark::Counter(double(days), benchmark::Counter::kAvgIterations);
}

void instanceFirst(benchmark::State& run) {
    static int nth = 0;
    ask(run, Effort::First, withInstanceMoved, nth);
}
void instanceProven(benchmark::State& run) {
    static int nth = 1'000;
    ask(run, Effort::Proven, withInstanceMoved, nth);
}
void seriesFirst(benchmark::State& run) {
    static int nth = 0;
    ask(run, Effort::First, withSeriesMoved, nth);
}

BENCHMARK(planFirst)->Unit(benchmark::kMillisecond)->Iterations(3);
BENCHMARK(planProven)->Unit(benchmark::kMillisecond)->Iterations(1);
BENCHMARK(instanceFirst)->Unit(benchmark::kMillisecond)->Iterations(10)->Repetitions(5);
BENCHMARK(instanceProven)->Unit(benchmark::kMillisecond)->Iterations(10);
BENCHMARK(seriesFirst)->Unit(benchmark::kMillisecond)->Iterations(5)->Repetitions(5);

struct Size {
    int lanes = 64;
    int series = 60;
    int days = 365;
};

/// Weekly evenings on blocks of eight lanes that want fresh lanes; more series than blocks and days play earlier in the day, as
/// it is. Beyond eighteen turns a day they would claim lanes twice: those begin on a later date than is planned.
State seasonOf(const Size& size) {
    State state = support::bigSeason();
    state.centre.facts.lanes = size.lanes;
    const Series model = state.series.front();
    state.series.clear();
    const int blocks = size.lanes / 8;
    for (int n = 0; n < size.series; ++n) {
        Series s = model;
        s.id = {QString("s%1").arg(n, 4, 10, QChar('0'))};
        s.uid = s.id.value;
        s.title = QString("Series %1").arg(n);
        const int block = n / 7 % blocks;
        const int turn = n / 7 / blocks;
        const QTime begins = turn == 0 ? QTime(20, 0) : QTime(7, 0).addSecs(35 * 60 * ((turn - 1) % 17));
        s.start = {year.first.addDays(n % 7 + (turn > 17 ? 7'000 : 0)), begins};
        s.rule = "FREQ=WEEKLY";
        s.duration = minutes(25);
        s.lanes = LaneSet::range(8 * block + 1, 8 * block + 8);
        s.demands.front().lanes = s.lanes;
        if (turn > 0) s.demands.front().kind = DemandKind::AsItIs;
        state.series.push_back(s);
    }
    return state;
}

double processorMs() { return 1e3 * double(std::clock()) / CLOCKS_PER_SEC; }

void measure(const Size& size) {
    const State state = seasonOf(size);
    const DateRange range{year.first, year.first.addDays(size.days - 1)};
    const double begin = processorMs();
    const Plan p = plan(state, nowFor(state), range, fewNodes);
    std::printf("bench %5d lanes %5d series %5d days: %8.1f ms, %lld treatments\n", size.lanes, size.series, size.days,
                processorMs() - begin, static_cast<long long>(p.objective().treatments));
}

void growth() {
    for (int lanes : {8, 16, 32, 64, 128})
        measure({lanes, 60, 365});
    for (int series : {10, 30, 100, 300, 1'000})
        measure({64, series, 365});
    for (int days : {30, 90, 365, 1'095, 1'825, 3'650})
        measure({64, 60, days});
}

}  // namespace

int main(int argc, char** argv) {
    // What was freed stays at hand, as in a window that has been open for a while: page faults would be measured otherwise.
    mallopt(M_TRIM_THRESHOLD, 256 << 20);
    mallopt(M_MMAP_THRESHOLD, 64 << 20);
    growth();
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    bool holds = bench::withinLimit(times, "planFirst", 300);
    holds = bench::withinLimit(times, "planProven", 10'000) && holds;
    holds = bench::withinLimit(times, "instanceFirst", 16) && holds;
    holds = bench::withinLimit(times, "instanceProven", 150) && holds;
    holds = bench::withinLimit(times, "seriesFirst", 50) && holds;
    return holds ? 0 : 1;
}
