// Repaint of the house view with a day of 64 lanes. Limit: 16 ms, one frame at 60 Hz.
#include "app/widgets/house_view.h"
#include "tests/support/made_house.h"

#include <benchmark/benchmark.h>

#include <QApplication>

#include <chrono>
#include <cstdio>

using namespace laneward;

namespace {

constexpr double limitMs = 16;
constexpr int lanes = 64;

/// A full day: every pair has its own four events and a job before each.
HouseData busyDay() {
    HouseData data = support::madeHouse(lanes);
    for (int pair = 0; pair < lanes / 2; ++pair) {
        const LaneSet pairLanes{2 * pair + 1, 2 * pair + 2};
        for (int hour = 4; hour < 20; hour += 4) {
            data.items.push_back(support::block("event:pair", hour * 60, hour * 60 + 150, pairLanes, "Pair league"));
            data.items.push_back(
                support::bar("job:pair", hour * 60 - 60, pairLanes, Treatment::CleanAndCondition, JobState::Proposed));
        }
    }
    return data;
}

std::unique_ptr<HouseView> shownView() {
    auto view = std::make_unique<HouseView>();
    view->resize(1600, 900);
    view->show();
    view->setZoom(HouseZoom::Day);
    view->setData(busyDay(), support::plainSpeech());
    view->grab();
    return view;
}

void repaint(benchmark::State& state) {
    const auto view = shownView();
    QPixmap target(view->viewport()->size());
    for (auto step : state)
        view->viewport()->render(&target);
}

void newData(benchmark::State& state) {
    const auto view = shownView();
    const HouseData data = busyDay();
    for (auto step : state)
        view->setData(data, support::plainSpeech());
}

BENCHMARK(repaint)->Unit(benchmark::kMillisecond);
BENCHMARK(newData)->Unit(benchmark::kMillisecond);

double bestRepaintMs() {
    const auto view = shownView();
    QPixmap target(view->viewport()->size());
    double best = 1e9;
    for (int round = 0; round < 30; ++round) {
        const auto begin = std::chrono::steady_clock::now();
        view->viewport()->render(&target);
        best = std::min(best, std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
    }
    return best;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    const double ms = bestRepaintMs();
    std::printf("house view repaint, a day of %d lanes: %.2f ms (limit %.0f ms)\n", lanes, ms, limitMs);
    return ms <= limitMs ? 0 : 1;
}
