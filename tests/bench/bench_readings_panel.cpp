// What the page asks of 10,000 tape readings and as many values on a chart: each under 200 ms, from the centre's file to the
// screen.
#include "tests/bench/ratio.h"

#include "app/pages/patterns/point_chart.h"
#include "app/pages/patterns/readings_panel.h"
#include "tests/support/demo_session.h"

#include <QApplication>

using namespace laneward;

namespace {

constexpr int count = 10'000;

Session& filled() {
    static support::DemoSession demo;
    static const bool done = [] {
        const Result<std::vector<TapeReading>> some = demo.session().store().tapes(allRecords);
        if (!some || some->empty()) qFatal("no readings");
        std::vector<Record> records;
        for (int n = 0; n < count; ++n) {
            TapeReading reading = some->front();
            reading.id = {QString("many-%1").arg(n)};
            reading.at = reading.at + minutes(n);
            records.push_back(reading);
        }
        return bool(demo.session().store().append(records));
    }();
    if (!done) qFatal("not stored");
    return demo.session();
}

void showReadings(benchmark::State& run) {
    Session& session = filled();
    for (auto _ : run) {
        ReadingsPanel panel(session);
        panel.resize(1130, 600);
        panel.show();
        benchmark::DoNotOptimize(panel.grab());
    }
}

void chartValues(benchmark::State& run) {
    ChartContent content;
    content.lines.resize(1);
    for (int n = 0; n < count; ++n) {
        content.points.push_back({1.7e12 + n * 3.6e6, 1 + 0.01 * (n % 17), PointMark::Plain, QString()});
        content.lines[0].points.append({content.points.back().x, content.points.back().y});
    }
    PointChart chart;
    chart.resize(700, 300);
    for (auto _ : run) {
        chart.show(content, QLocale("en_GB"));
        benchmark::DoNotOptimize(chart.grab());
    }
}

BENCHMARK(showReadings)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
BENCHMARK(chartValues)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();

}  // namespace

int main(int argc, char** argv) {
    const QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    const bool shown = bench::withinLimit(times, "showReadings", 200);
    return bench::withinLimit(times, "chartValues", 200) && shown ? 0 : 1;
}
