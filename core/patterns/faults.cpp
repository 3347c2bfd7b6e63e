#include "core/base/limits.h"
#include "core/patterns/pattern.h"

namespace laneward {

namespace {

/// The rule that the stroke breaks, or nothing.
QByteArray brokenRule(const Stroke& stroke, const Pattern& pattern) {
    if (stroke.firstBoard < 1 || stroke.lastBoard > boards || stroke.firstBoard > stroke.lastBoard) return "stroke.boards";
    if (stroke.laps < 1 || stroke.laps > limits::laps) return "stroke.laps";
    if (stroke.dose < Microlitres{0} || stroke.dose > Microlitres{limits::doseMicrolitres}) return "stroke.dose";
    if (stroke.from < Micrometres{0} || stroke.to > laneLength || stroke.to <= stroke.from) return "stroke.distance";
    if (stroke.to > pattern.end) return "stroke.beyond-end";
    if (stroke.slot < 0 || stroke.slot >= conditionerSlots) return "stroke.slot";
    return {};
}

}  // namespace

std::vector<Finding> faultsOf(const Pattern& pattern) {
    std::vector<Finding> faults;
    const auto add = [&](QByteArray rule, std::vector<Value> values = {}) {
        faults.push_back({Severity::Fault, std::move(rule), pattern.name, std::move(values)});
    };
    if (pattern.id.isEmpty()) add("pattern.no-id");
    if (pattern.name.trimmed().isEmpty()) add("pattern.no-name");
    if (pattern.name.size() > limits::nameLength) add("pattern.name-too-long");
    if (pattern.end <= Micrometres{0} || pattern.end > laneLength) add("pattern.end", {pattern.end});
    if (pattern.strokes.empty()) add("pattern.no-strokes");
    std::int64_t row = 0;
    for (const Stroke& stroke : pattern.strokes) {
        ++row;
        const QByteArray rule = brokenRule(stroke, pattern);
        if (!rule.isEmpty()) add(rule, {row});
    }
    return faults;
}

}  // namespace laneward
