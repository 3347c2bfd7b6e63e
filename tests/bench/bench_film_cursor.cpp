// Following the mouse over the film maps: one painted frame of maps and profiles must fit into a sixtieth of a second.
#include "tests/bench/ratio.h"

#include "app/pages/patterns/film_profiles.h"

#include <QApplication>
#include <QPixmap>

using namespace laneward;

namespace {

constexpr double frame = 1'000.0 / 60;  // ms

Pattern fortyStrokes() {
    Pattern pattern{PatternId{"forty"}, "Forty strokes"};
    for (int i = 0; i < 40; ++i) {
        const bool out = i < 25;
        pattern.strokes.push_back({out ? Direction::Out : Direction::Back, 2 + i % 12, 38 - i % 12, 1 + i % 3, Microlitres{45},
                                   feet(i % 20), feet(20 + i % 20), 0});
    }
    return pattern;
}

void followCursor(benchmark::State& run) {
    const Pattern pattern = fortyStrokes();
    FilmView view;
    FilmProfiles profiles;
    view.resize(700, 900);
    profiles.resize(500, 900);
    const Speech speech{QLocale::c(), Zone(), UnitSystem::UsCustomary};
    const Film laid = film(pattern, {feet(2)});
    view.setFilms({{"a", laid}, {"b", film(pattern, {})}}, speech);
    profiles.setFilms(&view.films(), speech);
    QPixmap canvas(QSize(700, 900));
    view.render(&canvas);
    int step = 0;
    for (auto _ : run) {
        ++step;
        view.setCursorAt(1 + step % boards, feet(step % 60));
        profiles.setCursorAt(view.board(), view.distance());
        view.render(&canvas);
        profiles.render(&canvas);
    }
}
BENCHMARK(followCursor)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    return bench::withinLimit(times, "followCursor", frame) ? 0 : 1;
}
