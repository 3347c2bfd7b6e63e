#include "app/cli/csv_rows.h"
#include "core/base/limits.h"
#include "core/documents/writers.h"

#include <cmath>

namespace laneward::cli {

namespace {

const QStringList directions{"out", "back"};
constexpr double micrometresPerFoot = 304'800.0;  // 16 CFR 500.19: 1 ft = 0.3048 m exactly
constexpr double laneFeet = 60.0;

Result<Micrometres> feetOf(const CsvRow& row, const QString& key) {
    const Result<double> feet = row.number(key, 0, laneFeet);
    if (!feet) return feet.error();
    return Micrometres{std::llround(*feet * micrometresPerFoot)};
}

/// Six decimals are a third of a micrometre: enough to come back exactly.
CsvField feetField(Micrometres length) { return {QString::number(double(length.value) / micrometresPerFoot, 'f', 6), true}; }
CsvField number(std::int64_t n) { return {QString::number(n), true}; }

Result<int> wholeOf(const CsvRow& row, const QString& key, std::int64_t least, std::int64_t most) {
    const Result<std::int64_t> n = row.whole(key, least, most);
    if (!n) return n.error();
    return int(*n);
}

Result<Stroke> strokeOf(const CsvRow& row) {
    Stroke stroke;
    const Result<size_t> direction = row.word("direction", directions);
    if (!direction) return direction.error();
    stroke.direction = Direction(*direction);
    const std::tuple<const char*, int*, int, int> numbers[] = {{"first_board", &stroke.firstBoard, 1, boards},
                                                               {"last_board", &stroke.lastBoard, 1, boards},
                                                               {"laps", &stroke.laps, 1, limits::laps},
                                                               {"slot", &stroke.slot, 0, conditionerSlots - 1}};
    for (const auto& [key, into, least, most] : numbers) {
        if (!row.has(key) && QLatin1String(key) == QLatin1String("slot")) continue;
        const Result<int> n = wholeOf(row, key, least, most);
        if (!n) return n.error();
        *into = *n;
    }
    const Result<std::int64_t> dose = row.whole("dose_ul", 0, limits::doseMicrolitres);
    if (!dose) return dose.error();
    stroke.dose = {*dose};
    const Result<Micrometres> from = feetOf(row, "from_ft");
    if (!from) return from.error();
    const Result<Micrometres> to = feetOf(row, "to_ft");
    if (!to) return to.error();
    stroke.from = *from;
    stroke.to = *to;
    return stroke;
}

}  // namespace

Result<std::vector<Pattern>> patternsFromCsv(const CsvRows& rows) {
    std::vector<Pattern> all;
    for (size_t n = 0; n < rows.count(); ++n) {
        const CsvRow row = rows.row(n);
        if (!row.has("pattern")) return row.bad("pattern");
        if (all.empty() || all.back().id.value != row.value("pattern")) {
            Pattern pattern;
            pattern.id = {row.value("pattern")};
            pattern.name = row.has("name") ? row.value("name") : row.value("pattern");
            const Result<Micrometres> end = feetOf(row, "end_ft");
            if (!end) return end.error();
            pattern.end = *end;
            pattern.note = row.value("note");
            all.push_back(std::move(pattern));
        }
        const Result<Stroke> stroke = strokeOf(row);
        if (!stroke) return stroke.error();
        all.back().strokes.push_back(*stroke);
    }
    return all;
}

QByteArray patternsToCsv(const std::vector<Pattern>& patterns) {
    std::vector<CsvField> header;
    for (const char* name : {"pattern", "name", "end_ft", "direction", "first_board", "last_board", "laps", "dose_ul", "from_ft",
                             "to_ft", "slot", "note"}) {
        header.push_back({QString::fromLatin1(name), false});
    }
    QByteArray out = csvRecord(header);
    for (const Pattern& pattern : patterns) {
        for (const Stroke& stroke : pattern.strokes) {
            out += csvRecord({{pattern.id.value},
                              {pattern.name},
                              feetField(pattern.end),
                              {directions[qsizetype(stroke.direction)]},
                              number(stroke.firstBoard),
                              number(stroke.lastBoard),
                              number(stroke.laps),
                              number(stroke.dose.value),
                              feetField(stroke.from),
                              feetField(stroke.to),
                              number(stroke.slot),
                              {pattern.note}});
        }
    }
    return out;
}

}  // namespace laneward::cli
