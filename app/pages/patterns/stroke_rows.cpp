#include "app/pages/patterns/stroke_rows.h"

#include "app/widgets/decimal_text.h"
#include "core/base/limits.h"

#include <QCoreApplication>

#include <cmath>

namespace laneward {

namespace {

constexpr double micrometresPerMetre = 1'000'000.0;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(StrokeRows)
};

double perUnit(const Speech& speech) { return speech.units == UnitSystem::Metric ? micrometresPerMetre : double(feet(1).value); }

std::optional<int> wholeOf(const QString& text, const Speech& speech) {
    const std::optional<double> value = decimalOf(text, speech.locale);
    if (!value || *value != std::floor(*value) || std::abs(*value) > 1e9) return std::nullopt;
    return int(*value);
}

/// What is stored, while the text still shows it; else what was typed.
std::optional<Micrometres> exactly(Micrometres stored, const QString& text, const Speech& speech) {
    return text == distanceField(stored, speech) ? std::optional(stored) : distanceOf(text, speech);
}

std::optional<Stroke> strokeOf(const StrokeRow& row, const Speech& speech) {
    const auto whole = [&](StrokeField f) { return wholeOf(row.field(f), speech); };
    const auto first = whole(StrokeField::FirstBoard);
    const auto last = whole(StrokeField::LastBoard);
    const auto laps = whole(StrokeField::Laps);
    const auto dose = whole(StrokeField::Dose);
    const auto from = exactly(row.from, row.field(StrokeField::From), speech);
    const auto to = exactly(row.to, row.field(StrokeField::To), speech);
    if (!first || !last || !laps || !dose || !from || !to) return std::nullopt;
    return Stroke{row.direction, *first, *last, *laps, Microlitres{*dose}, *from, *to, row.slot};
}

QString boardFault(const StrokeRow& row, StrokeField field, const Speech& speech) {
    const auto board = wholeOf(row.field(field), speech);
    if (!board || *board < 1 || *board > boards) return Words::tr("a board is a whole number from 1 to 39");
    const auto first = wholeOf(row.field(StrokeField::FirstBoard), speech);
    if (field == StrokeField::LastBoard && first && *board < *first) return Words::tr("the last board comes before the first");
    return {};
}

QString amountFault(const QString& text, std::int64_t least, std::int64_t most, const Speech& speech) {
    const auto value = wholeOf(text, speech);
    if (value && *value >= least && *value <= most) return {};
    return Words::tr("a whole number from %1 to %2")
        .arg(speech.locale.toString(qlonglong(least)), speech.locale.toString(qlonglong(most)));
}

QString distanceFault(const PatternDraft& draft, const StrokeRow& row, StrokeField field, const Speech& speech) {
    const auto at = exactly(field == StrokeField::From ? row.from : row.to, row.field(field), speech);
    const QString lane = lengthText(laneLength, speech);
    if (!at || *at < Micrometres{0} || *at > laneLength) return Words::tr("a distance on the lane, from 0 to %1").arg(lane);
    if (field == StrokeField::From) return {};
    const auto from = exactly(row.from, row.field(StrokeField::From), speech);
    if (from && *at <= *from) return Words::tr("the far end is not beyond the near end");
    const auto end = exactly(draft.kept.end, draft.end, speech);
    if (end && *at > *end) return Words::tr("this is beyond the end of the pattern");
    return {};
}

}  // namespace

QString distanceField(Micrometres distance, const Speech& speech) {
    return decimalText(double(distance.value) / perUnit(speech), 2, speech.locale);
}

std::optional<Micrometres> distanceOf(const QString& text, const Speech& speech) {
    const std::optional<double> value = decimalOf(text, speech.locale);
    if (!value || std::abs(*value) > 1e6) return std::nullopt;
    return Micrometres{std::llround(*value * perUnit(speech))};
}

PatternDraft draftOf(const Pattern& pattern, const Speech& speech) {
    PatternDraft draft{pattern, pattern.name, distanceField(pattern.end, speech), pattern.cleanWholeLane, pattern.note, {}};
    QLocale plain = speech.locale;
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    for (const Stroke& s : pattern.strokes) {
        draft.rows.push_back(
            {s.direction,
             s.slot,
             {plain.toString(s.firstBoard), plain.toString(s.lastBoard), plain.toString(s.laps),
              plain.toString(qlonglong(s.dose.value)), distanceField(s.from, speech), distanceField(s.to, speech)},
             s.from,
             s.to});
    }
    return draft;
}

std::optional<Pattern> patternOf(const PatternDraft& draft, const Speech& speech) {
    const auto end = exactly(draft.kept.end, draft.end, speech);
    if (!end) return std::nullopt;
    Pattern pattern = draft.kept;
    pattern.name = draft.name.trimmed();
    pattern.end = *end;
    pattern.cleanWholeLane = draft.cleanWholeLane;
    pattern.note = draft.note;
    pattern.strokes.clear();
    for (const StrokeRow& row : draft.rows) {
        const auto stroke = strokeOf(row, speech);
        if (!stroke) return std::nullopt;
        pattern.strokes.push_back(*stroke);
    }
    return faultsOf(pattern).empty() ? std::optional(pattern) : std::nullopt;
}

std::optional<Pattern> soundPart(const PatternDraft& draft, const Speech& speech) {
    Pattern pattern = draft.kept;
    pattern.name = QStringLiteral("part");
    pattern.end = exactly(draft.kept.end, draft.end, speech).value_or(draft.kept.end);
    pattern.strokes.clear();
    for (const StrokeRow& row : draft.rows) {
        const auto stroke = strokeOf(row, speech);
        if (!stroke) continue;
        pattern.strokes.push_back(*stroke);
        if (!faultsOf(pattern).empty()) pattern.strokes.pop_back();
    }
    pattern.name = draft.name;
    return pattern.strokes.empty() ? std::nullopt : std::optional(pattern);
}

QString faultOf(const PatternDraft& draft, size_t row, StrokeField field, const Speech& speech) {
    const StrokeRow& r = draft.rows[row];
    switch (field) {
        case StrokeField::FirstBoard:
        case StrokeField::LastBoard:
            return boardFault(r, field, speech);
        case StrokeField::Laps:
            return amountFault(r.field(field), 1, limits::laps, speech);
        case StrokeField::Dose:
            return amountFault(r.field(field), 0, limits::doseMicrolitres, speech);
        case StrokeField::From:
        case StrokeField::To:
            break;
    }
    return distanceFault(draft, r, field, speech);
}

QString faultOfEnd(const PatternDraft& draft, const Speech& speech) {
    const auto end = distanceOf(draft.end, speech);
    if (end && *end > Micrometres{0} && *end <= laneLength) return {};
    return Words::tr("a pattern ends on the lane, at most %1 from the foul line").arg(lengthText(laneLength, speech));
}

QString faultOfName(const PatternDraft& draft) {
    if (draft.name.trimmed().isEmpty()) return Words::tr("a pattern needs a name");
    if (draft.name.size() > limits::nameLength) return Words::tr("the name is too long");
    return {};
}

QStringList faultsOf(const PatternDraft& draft, const Speech& speech) {
    QStringList faults;
    for (const QString& fault : {faultOfName(draft), faultOfEnd(draft, speech)}) {
        if (!fault.isEmpty()) faults << fault;
    }
    if (draft.rows.empty()) faults << Words::tr("a pattern needs a stroke");
    for (size_t row = 0; row < draft.rows.size(); ++row) {
        for (int f = 0; f < strokeFields; ++f) {
            const QString fault = faultOf(draft, row, StrokeField(f), speech);
            if (!fault.isEmpty()) faults << Words::tr("stroke %1: %2").arg(speech.locale.toString(int(row) + 1), fault);
        }
    }
    return faults;
}

}  // namespace laneward
