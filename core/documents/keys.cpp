#include "core/documents/keys.h"

namespace laneward {

namespace {

template <size_t N, class Enum>
QString pick(const char* const (&names)[N], Enum value) {
    const size_t index = size_t(value);
    return index < N ? QString::fromLatin1(names[index]) : QString();
}

}  // namespace

QString key(Treatment treatment) {
    static constexpr const char* names[] = {"clean-and-condition", "condition-only", "clean-only"};
    return pick(names, treatment);
}

QString key(DemandKind demand) {
    static constexpr const char* names[] = {"fresh", "recent", "pattern", "stripped", "as-it-is"};
    return pick(names, demand);
}

QString key(EventKind kind) {
    static constexpr const char* names[] = {"league",    "practice", "school",  "tournament",
                                            "open-play", "party",    "closure", "other"};
    return pick(names, kind);
}

QString key(JobState state) {
    static constexpr const char* names[] = {"proposed", "confirmed", "under-way", "done", "cut-short", "dropped"};
    return pick(names, state);
}

QString key(StepKind step) {
    static constexpr const char* names[] = {"leave-bay", "refill",           "empty-waste", "swap-pack",    "charge",
                                            "duty",      "first-pair-twice", "treat",       "return-to-bay"};
    return pick(names, step);
}

QString key(Severity severity) {
    static constexpr const char* names[] = {"note", "warning", "fault"};
    return pick(names, severity);
}

QString key(VoltageState state) {
    static constexpr const char* names[] = {"just-charged", "rested", "under-load"};
    return pick(names, state);
}

QString isoTime(Instant t, const Zone& zone) {
    const LocalTime local = zone.toLocal(t);
    const std::int64_t offset = zone.offsetAt(t).value / 60;
    const std::int64_t size = offset < 0 ? -offset : offset;
    return local.date.toString(Qt::ISODate) + "T" + local.time.toString("HH:mm:ss") + (offset < 0 ? "-" : "+") +
           QString("%1:%2").arg(size / 60, 2, 10, QChar('0')).arg(size % 60, 2, 10, QChar('0'));
}

QJsonArray laneList(const LaneSet& lanes) {
    QJsonArray list;
    for (int lane : lanes.lanes())
        list.append(lane);
    return list;
}

std::int64_t wholeMinutes(Seconds d) { return d.value >= 0 ? d.value / 60 : -((-d.value + 59) / 60); }

}  // namespace laneward
