// Film of a pattern of 40 strokes at a quarter of a foot, with carry. Limits: 2 ms, and 3 times the plain loop that adds every
// stroke to every cell it covers and knows no carry.
#include "core/patterns/film.h"
#include "tests/bench/ratio.h"

#include <malloc.h>

using namespace laneward;

namespace {

constexpr double limitMs = 2;
constexpr double limitRatio = 3;
constexpr Micrometres cell{feet(1).value / 4};

/// Twenty strokes out, each 2 ft further on and 12 ft long, and twenty back: all over the lane, as strokes of wedges are.
Pattern fortyStrokes() {
    Pattern pattern;
    pattern.id = {"forty"};
    pattern.name = "Forty";
    pattern.end = feet(50);
    for (int i = 0; i < 40; ++i) {
        const int step = i % 20;
        const int from = i < 20 ? 2 * step : 2 * (19 - step);
        pattern.strokes.push_back({i < 20 ? Direction::Out : Direction::Back, 2 + step % 10, 38 - step % 10, 1 + i % 3,
                                   Microlitres{45}, feet(from), feet(from + 12), 0});
    }
    return pattern;
}

/// What anybody would write first.
std::vector<double> plainLoop(const Pattern& pattern) {
    const int cells = int(laneLength.value / cell.value);
    std::vector<double> units(size_t(cells) * boards);
    for (const Stroke& stroke : pattern.strokes) {
        const double rate = double(stroke.dose.value * stroke.laps) / toFeet(stroke.to - stroke.from);
        for (int k = 0; k < cells; ++k) {
            const Micrometres begin = std::max(cell * k, stroke.from);
            const Micrometres end = std::min(cell * (k + 1), stroke.to);
            if (end <= begin) continue;
            const double more = filmUnits(rate * toFeet(end - begin), toFeet(cell));
            for (int board = stroke.firstBoard; board <= stroke.lastBoard; ++board)
                units[size_t(k) * boards + size_t(board - 1)] += more;
        }
    }
    return units;
}

void filmWithCarry(benchmark::State& state) {
    const Pattern pattern = fortyStrokes();
    for (auto step : state)
        benchmark::DoNotOptimize(film(pattern, {feet(3)}, cell).rows.data());
}

void filmWithoutCarry(benchmark::State& state) {
    const Pattern pattern = fortyStrokes();
    for (auto step : state)
        benchmark::DoNotOptimize(film(pattern, {}, cell).rows.data());
}

void plain(benchmark::State& state) {
    const Pattern pattern = fortyStrokes();
    for (auto step : state)
        benchmark::DoNotOptimize(plainLoop(pattern).data());
}

BENCHMARK(filmWithCarry)->Unit(benchmark::kMicrosecond);
BENCHMARK(filmWithoutCarry)->Unit(benchmark::kMicrosecond);
BENCHMARK(plain)->Unit(benchmark::kMicrosecond);

/// Without carry both say the same, or the comparison means nothing.
bool agree() {
    const Film ours = film(fortyStrokes(), {}, cell);
    const std::vector<double> theirs = plainLoop(fortyStrokes());
    for (int i = 0; i < int(theirs.size()); ++i) {
        if (std::abs(ours.units(i % boards + 1, i / boards) - theirs[size_t(i)]) > 1e-9) return false;
    }
    return int(theirs.size()) == ours.cells * boards;
}

}  // namespace

int main(int argc, char** argv) {
    // Pages given back to the system and taken again after every film would be measured otherwise, on either side by chance.
    mallopt(M_TRIM_THRESHOLD, 1 << 30);
    mallopt(M_MMAP_THRESHOLD, 1 << 30);
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    const bool same = agree();
    if (!same) std::printf("the plain loop lays another film\n");
    const bool fast = bench::withinLimit(times, "filmWithCarry", limitMs);
    const bool near = bench::withinRatio(times, "filmWithCarry", "plain", limitRatio);
    return same && fast && near ? 0 : 1;
}
