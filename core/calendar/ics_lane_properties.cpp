#include "core/calendar/ics_lane_properties.h"

#include <array>

namespace laneward {

namespace {

constexpr std::array<const char*, 8> kindNames{"LEAGUE",    "PRACTICE", "SCHOOL",  "TOURNAMENT",
                                               "OPEN-PLAY", "PARTY",    "CLOSURE", "OTHER"};
constexpr std::array<const char*, 5> demandNames{"FRESH", "RECENT", "PATTERN", "STRIPPED", "AS-IT-IS"};
constexpr std::array<const char*, 3> treatmentNames{"CLEAN-AND-CONDITION", "CONDITION-ONLY", "CLEAN-ONLY"};

/// Sets `to` to the enumerator whose name is `text`; false when there is none.
template <class Enum, size_t n>
bool named(const std::array<const char*, n>& names, const QByteArray& text, Enum& to) {
    for (size_t i = 0; i < n; ++i) {
        if (text.toUpper() != names[i]) continue;
        to = Enum(int(i));
        return true;
    }
    return false;
}

bool isFlag(const QByteArray& text, bool& to) {
    to = text.toUpper() == "TRUE";
    return to || text.toUpper() == "FALSE";
}

bool isLength(const QByteArray& text, Seconds& to) {
    const std::optional<Seconds> length = durationFrom(text);
    to = length.value_or(Seconds{});
    return length.has_value();
}

bool isCount(const QByteArray& text, int& to) {
    bool ok = false;
    to = text.toInt(&ok);
    return ok;
}

bool isLaneList(const QByteArray& text, LaneSet& to) {
    const Result<LaneSet> lanes = LaneSet::parse(QString::fromUtf8(text));
    if (lanes) to = *lanes;
    return bool(lanes);
}

/// One part of a demand, for example AGE=PT12H.
bool takePart(const QByteArray& name, const QByteArray& text, SurfaceDemand& demand) {
    if (name == "LANES") return isLaneList(text, demand.lanes);
    if (name == "SURFACE") return named(demandNames, text, demand.kind);
    if (name == "TREATMENT") return named(treatmentNames, text, demand.least);
    if (name == "AGE") return isLength(text, demand.longestAge);
    if (name == "PLAY") return isLength(text, demand.longestPlay);
    if (name != "PATTERN") return false;
    demand.pattern = PatternId{unescapedText(text)};
    return !demand.pattern->isEmpty();
}

bool takeDemand(const QByteArray& text, std::vector<SurfaceDemand>& demands) {
    SurfaceDemand demand;
    bool hasKind = false;
    for (const QByteArray& part : splitEscaped(text, ';')) {
        const qsizetype equals = part.indexOf('=');
        const QByteArray name = part.left(std::max<qsizetype>(0, equals)).toUpper();
        if (!takePart(name, part.mid(equals + 1), demand)) return false;
        hasKind = hasKind || name == "SURFACE";
    }
    demands.push_back(std::move(demand));
    return hasKind;
}

QByteArray demandValue(const SurfaceDemand& demand) {
    QByteArray text = "SURFACE=" + QByteArray(demandNames[size_t(demand.kind)]);
    if (!demand.lanes.isEmpty()) text += ";LANES=" + demand.lanes.text().remove(QLatin1Char(' ')).toLatin1();
    if (demand.pattern) text += ";PATTERN=" + escapedText(demand.pattern->value);
    text += ";TREATMENT=" + QByteArray(treatmentNames[size_t(demand.least)]);
    return text + ";AGE=" + durationValue(demand.longestAge) + ";PLAY=" + durationValue(demand.longestPlay);
}

QByteArray flag(bool on) { return on ? "TRUE" : "FALSE"; }

}  // namespace

QByteArrayList lanePropertyLines(const Series& series) {
    QByteArrayList lines{
        "X-LANEWARD-KIND:" + QByteArray(kindNames[size_t(series.kind)]),
        "X-LANEWARD-SETTLE:" + durationValue(series.settle),
        "X-LANEWARD-CLEARING:" + durationValue(series.clearing),
        "X-LANEWARD-FIRST-PAIR-TWICE:" + flag(series.firstPairTwice),
        "X-LANEWARD-YIELDS-TO-CLOSURE:" + flag(series.yieldsToClosure),
        "X-LANEWARD-NO-STAFF:" + flag(series.noStaff),
        "X-LANEWARD-PLAYERS:" + QByteArray::number(series.players),
    };
    for (const SurfaceDemand& demand : series.demands)
        lines << "X-LANEWARD-DEMAND:" + demandValue(demand);
    return lines;
}

QByteArray changedFields(const Override& change) {
    QByteArrayList fields;
    if (change.start) fields << "START";
    if (change.duration) fields << "DURATION";
    if (change.title) fields << "TITLE";
    if (change.lanes) fields << "LANES";
    return fields.isEmpty() ? "NONE" : fields.join(',');
}

Outcome takeLaneProperty(const IcsLine& line, IcsContext& context, Series& series) {
    const QByteArray name = line.name.mid(int(qstrlen("X-LANEWARD-")));
    const QByteArray& text = line.value;
    bool good = true;
    if (name == "KIND") {
        good = named(kindNames, text, series.kind);
    } else if (name == "DEMAND") {
        good = takeDemand(text, series.demands);
    } else if (name == "SETTLE") {
        good = isLength(text, series.settle);
    } else if (name == "CLEARING") {
        good = isLength(text, series.clearing);
    } else if (name == "FIRST-PAIR-TWICE") {
        good = isFlag(text, series.firstPairTwice);
    } else if (name == "YIELDS-TO-CLOSURE") {
        good = isFlag(text, series.yieldsToClosure);
    } else if (name == "NO-STAFF") {
        good = isFlag(text, series.noStaff);
    } else if (name == "PLAYERS") {
        good = isCount(text, series.players);
    } else {
        context.note(Severity::Note, "ics.unsupported-property", line.number, QString::fromLatin1(line.name));
    }
    if (good) return Nothing{};
    return context.error("ics.bad-value", line.number, {QString::fromLatin1(line.name), QString::fromUtf8(text.left(80))});
}

}  // namespace laneward
