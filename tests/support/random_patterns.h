// Patterns drawn at random: any strokes that are sound, in any order.
#pragma once

#include "core/patterns/pattern.h"

#include <random>

namespace laneward::support {

inline Pattern randomPattern(std::mt19937& generator, int mostStrokes) {
    const auto pick = [&](std::int64_t low, std::int64_t high) {
        return low + std::int64_t(generator() % std::uint32_t(high - low + 1));
    };
    Pattern pattern;
    pattern.id = {"random"};
    pattern.name = "Random";
    pattern.end = Micrometres{pick(feet(2).value, laneLength.value)};
    for (std::int64_t left = pick(1, mostStrokes); left > 0; --left) {
        Stroke stroke;
        stroke.direction = pick(0, 1) == 0 ? Direction::Out : Direction::Back;
        stroke.firstBoard = int(pick(1, boards));
        stroke.lastBoard = int(pick(stroke.firstBoard, boards));
        stroke.laps = int(pick(1, 8));
        stroke.dose = Microlitres{pick(0, 100)};
        stroke.from = Micrometres{pick(0, pattern.end.value - 1)};
        stroke.to = Micrometres{pick(stroke.from.value + 1, pattern.end.value)};
        stroke.slot = int(pick(0, conditionerSlots - 1));
        pattern.strokes.push_back(stroke);
    }
    return pattern;
}

}  // namespace laneward::support
