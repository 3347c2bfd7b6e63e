// Expanding and planning a season. Peers and limits: bare libical iterating the same rules (at most 1.5 times), planning 365 days
// of a 64-lane centre with 60 series under 1 s, peak memory of this program under 200 MB.
#include "tests/bench/ratio.h"

#include "core/calendar/occurrences.h"
#include "core/planning/plan.h"
#include "tests/support/big_season.h"

#include <libical/ical.h>

#include <sys/resource.h>

using namespace laneward;

namespace {

const DateRange year{support::bigSeasonBegins(), support::bigSeasonBegins().addDays(364)};

void bareLibical(benchmark::State& run) {
    const State state = support::bigSeason();
    for (auto _ : run) {
        int instances = 0;
        for (const Series& s : state.series) {
            icalrecurrencetype rule = icalrecurrencetype_from_string(s.rule.toLatin1().constData());
            const QString text = s.start.date.toString("yyyyMMdd") + "T" + s.start.time.toString("HHmmss");
            icalrecur_iterator* it = icalrecur_iterator_new(rule, icaltime_from_string(text.toLatin1().constData()));
            const int last = year.last.year() * 10'000 + year.last.month() * 100 + year.last.day();
            for (icaltimetype t = icalrecur_iterator_next(it); !icaltime_is_null_time(t); t = icalrecur_iterator_next(it)) {
                if (t.year * 10'000 + t.month * 100 + t.day > last) break;
                ++instances;
            }
            icalrecur_iterator_free(it);
        }
        benchmark::DoNotOptimize(instances);
    }
}

void expandSeason(benchmark::State& run) {
    const State state = support::bigSeason();
    for (auto _ : run)
        benchmark::DoNotOptimize(occupancyOf(state.series, state.centre, year));
}

void planSeason(benchmark::State& run) {
    const State state = support::bigSeason();
    const Instant now = dayOf(state.centre, year.first).begin;
    std::int64_t unmet = 0;
    for (auto _ : run) {
        const Plan p = plan(state, now, year, 8 * nodesFor);
        unmet = p.objective().unmet;
        run.counters["jobs"] = double(p.jobs.size());
        run.counters["treatments"] = double(p.objective().treatments);
    }
    run.counters["unmet"] = double(unmet);
}

BENCHMARK(bareLibical)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(expandSeason)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(planSeason)->Unit(benchmark::kMillisecond)->Repetitions(3)->ReportAggregatesOnly();

double peakMegabytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return double(usage.ru_maxrss) / 1024.0;
}

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    bool holds = bench::withinRatio(times, "expandSeason", "bareLibical", 1.5);
    // Exact counts and a valid placement; that nearly every day is proven has its own limit in bench_what_if.
    holds = bench::withinLimit(times, "planSeason", 1'000) && holds;
    const double peak = peakMegabytes();
    std::printf("peak memory = %.0f MB (at most 200 MB)\n", peak);
    return holds && peak < 200 ? 0 : 1;
}
