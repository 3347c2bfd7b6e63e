#include "core/patterns/pattern.h"

#include <algorithm>

namespace laneward {

Microlitres volume(const Stroke& stroke) {
    return stroke.dose * (std::int64_t{stroke.laps} * (stroke.lastBoard - stroke.firstBoard + 1));
}

Volumes volumes(const Pattern& pattern) {
    Volumes sums;
    for (const Stroke& stroke : pattern.strokes) {
        const Microlitres v = volume(stroke);
        (stroke.direction == Direction::Out ? sums.out : sums.back) += v;
        sums.bySlot[size_t(stroke.slot)] += v;
    }
    sums.lane = sums.out + sums.back;
    return sums;
}

const Pattern* findPattern(const std::vector<Pattern>& patterns, const PatternId& id) {
    const auto found = std::find_if(patterns.begin(), patterns.end(), [&](const Pattern& p) { return p.id == id; });
    return found == patterns.end() ? nullptr : &*found;
}

bool sameRecipe(const Pattern& a, const Pattern& b) {
    return a.name == b.name && a.strokes == b.strokes && a.end == b.end && a.cleanWholeLane == b.cleanWholeLane &&
           a.note == b.note;
}

}  // namespace laneward
