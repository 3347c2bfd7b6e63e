// A pattern while it is being written: every field as it was typed, so that what is wrong can stay until it is mended.
//
// Distances are typed in feet, or in metres where the centre measures so; numbers by the locale or with a plain point.
//
//     PatternDraft draft = draftOf(pattern, speech);
//     draft.rows[2].field(StrokeField::Dose) = "45";
//     if (const std::optional<Pattern> sound = patternOf(draft, speech)) show(volumes(*sound));
#pragma once

#include "core/documents/wording.h"

#include <array>

namespace laneward {

enum class StrokeField { FirstBoard, LastBoard, Laps, Dose, From, To };
inline constexpr int strokeFields = 6;

struct StrokeRow {
    Direction direction = Direction::Out;
    int slot = 0;  ///< which of the machine's conditioners
    std::array<QString, size_t(strokeFields)> texts;
    Micrometres from;  ///< as stored: what the texts show may be rounded, and stands for this until it is typed over
    Micrometres to;

    QString& field(StrokeField f) { return texts[size_t(f)]; }
    const QString& field(StrokeField f) const { return texts[size_t(f)]; }
    friend bool operator==(const StrokeRow&, const StrokeRow&) = default;
};

struct PatternDraft {
    Pattern kept;  ///< what is stored, with what is not edited here
    QString name;
    QString end;
    bool cleanWholeLane = true;
    QString note;
    std::vector<StrokeRow> rows;
    friend bool operator==(const PatternDraft&, const PatternDraft&) = default;
};

PatternDraft draftOf(const Pattern& pattern, const Speech& speech);
/// The pattern that it says; none while something is wrong.
std::optional<Pattern> patternOf(const PatternDraft& draft, const Speech& speech);
/// The pattern of all strokes that are right, for pictures while others are being typed; none without one.
std::optional<Pattern> soundPart(const PatternDraft& draft, const Speech& speech);

/// What is wrong with a field, in words; empty when it is right.
QString faultOf(const PatternDraft& draft, size_t row, StrokeField field, const Speech& speech);
QString faultOfEnd(const PatternDraft& draft, const Speech& speech);
QString faultOfName(const PatternDraft& draft);
/// Everything that is wrong, a line each.
QStringList faultsOf(const PatternDraft& draft, const Speech& speech);

/// "24.5": as the fields show a distance, without the unit.
QString distanceField(Micrometres distance, const Speech& speech);
std::optional<Micrometres> distanceOf(const QString& text, const Speech& speech);

}  // namespace laneward
