#include "core/patterns/film_parts.h"

#include <algorithm>

namespace laneward {

namespace {

struct Ends {
    std::int64_t begin;
    std::int64_t end;
};

/// In the order in which they are reached.
Ends endsOf(const Stroke& stroke) {
    return stroke.direction == Direction::Out ? Ends{stroke.from.value, stroke.to.value}
                                              : Ends{stroke.to.value, stroke.from.value};
}

/// How far the brush stays down after stroke i: to where the next stroke of its direction begins, or to the turn.
std::int64_t downUntil(const Pattern& pattern, size_t i) {
    const Stroke& stroke = pattern.strokes[i];
    const bool out = stroke.direction == Direction::Out;
    const std::int64_t here = endsOf(stroke).end;
    const bool turns = i + 1 == pattern.strokes.size() || pattern.strokes[i + 1].direction != stroke.direction;
    const std::int64_t target = turns ? (out ? pattern.end.value : 0) : endsOf(pattern.strokes[i + 1]).begin;
    return out ? std::max(here, target) : std::min(here, target);
}

}  // namespace

std::vector<BrushWay> brushWays(const Pattern& pattern) {
    std::vector<BrushWay> ways;
    for (size_t i = 0; i < pattern.strokes.size(); ++i) {
        const Stroke& stroke = pattern.strokes[i];
        const Ends ends = endsOf(stroke);
        const double rate = double(stroke.dose.value * stroke.laps) / double(stroke.to.value - stroke.from.value);
        ways.push_back({ends.begin, ends.end, stroke.firstBoard, stroke.lastBoard, rate});
        const std::int64_t until = downUntil(pattern, i);
        if (until != ends.end) ways.push_back({ends.end, until});
    }
    return ways;
}

}  // namespace laneward
