#include "app/cli/csv_readings.h"

#include "app/cli/csv_fields.h"
#include "core/documents/writers.h"

#include <QMap>
#include <QRegularExpression>

#include <algorithm>

namespace laneward::cli {

namespace {

const QStringList features{"level", "tilt", "crown", "depression"};
constexpr double micrometresPerFoot = 304'800.0;  // 16 CFR 500.19
constexpr std::int64_t mostVersion = 1'000'000'000;

QString boardColumn(int board) { return QString("b%1").arg(board); }

CsvField decimal(double x, int digits) { return {QString::number(x, 'f', digits), true}; }
CsvField instant(Instant t) {
    return words(QDateTime::fromSecsSinceEpoch(t.seconds, Qt::UTC).toString("yyyy-MM-ddTHH:mm:ss") + u'Z');
}
/// Six decimals are a third of a micrometre: enough to come back exactly.
CsvField feetField(Micrometres length) { return decimal(double(length.value) / micrometresPerFoot, 6); }

template <class T>
CsvField correctionOf(const T& record) {
    return words(record.corrects ? record.corrects->value : QString());
}

/// What a record corrects comes before it; otherwise the order stays.
template <class T>
void putCorrectedFirst(std::vector<T>& records) {
    QMap<QString, const T*> byId;
    for (const T& record : records)
        byId.insert(record.id.value, &record);
    QMap<QString, int> depths;
    for (const T& record : records) {
        int depth = 0;
        for (const T* one = &record; one && one->corrects && depth < int(records.size()); ++depth)
            one = byId.value(one->corrects->value);
        depths.insert(record.id.value, depth);
    }
    std::stable_sort(records.begin(), records.end(),
                     [&](const T& a, const T& b) { return depths[a.id.value] < depths[b.id.value]; });
}

/// Times, and columns that look like boards but are none.
void checkColumns(const CsvRows& rows, std::vector<Finding>& faults) {
    const auto has = [&](const char* key) { return rows.columns.contains(key) || rows.mapping.defaults.contains(key); };
    if (!has("at") && !(has("date") && has("time")))
        faults.push_back({Severity::Fault, "csv.column-missing", rows.file + ":1", {rows.mapping.columns.value("date", "date")}});
    static const QRegularExpression board("^b(\\d{1,9})$");
    for (auto column = rows.columns.begin(); column != rows.columns.end(); ++column) {
        const QRegularExpressionMatch match = board.match(column.key());
        if (!match.hasMatch()) continue;
        const int n = match.captured(1).toInt();
        if (n < 1 || n > boards || boardColumn(n) != column.key())
            faults.push_back({Severity::Fault, "csv.board-unknown", rows.file + ":1", {column.key()}});
    }
}

template <class T>
void takeCommon(CsvCells& cells, const KnownNames& known, const Zone& zone, T& record) {
    record.at = cells.instant(zone);
    record.person = {cells.id("person", known.centre.people)};
    record.lane = int(cells.whole("lane", 1, known.centre.facts.lanes));
    record.note = cells.value("note");
    if (cells.has("corrects")) record.corrects = OperationId{cells.value("corrects")};
}

TapeReading tapeOf(CsvCells& cells, const KnownNames& known, const Zone& zone) {
    TapeReading reading;
    takeCommon(cells, known, zone, reading);
    cells.need({"pattern"});
    reading.pattern = {cells.id("pattern", known.patterns)};
    reading.machine = {cells.id("machine", known.centre.machines)};
    if (cells.has("pattern_version")) reading.patternVersion = cells.whole("pattern_version", 0, mostVersion);
    if (cells.has("lane_of_run")) reading.laneOfRun = int(cells.whole("lane_of_run", 0, mostLanesOfRun));
    reading.distance = cells.feet("distance_ft");
    for (int board = 1; board <= boards; ++board)
        reading.milliUnits[size_t(board - 1)] = cells.film(boardColumn(board));
    const QStringList facts{QString::number(reading.at.seconds), reading.machine.value, reading.pattern.value,
                            QString::number(reading.lane), QString::number(reading.distance.value)};
    reading.id = {cells.has("id") ? cells.value("id") : idFrom(facts)};
    return reading;
}

}  // namespace

QStringList tapeColumns() {
    QStringList all{"lane", "distance_ft", "pattern"};
    for (int board = 1; board <= boards; ++board)
        all << boardColumn(board);
    return all;
}

QStringList inspectionColumns() { return {"lane", "feature", "distance_ft", "departure_um"}; }

ReadRows<TapeReading> tapesFromCsv(const CsvRows& rows, const KnownNames& known) {
    ReadRows<TapeReading> read;
    checkColumns(rows, read.faults);
    if (!read.faults.empty()) return read;
    const Zone zone = zoneOf(known.centre);
    for (size_t n = 0; n < rows.count(); ++n) {
        const CsvRow row = rows.row(n);
        const size_t before = read.faults.size();
        CsvCells cells(row, rows.mapping, read.faults);
        const TapeReading reading = tapeOf(cells, known, zone);
        if (read.faults.size() == before && !reading.corrects && !isMeasured(reading)) cells.refuse("csv.nothing-measured", "b1");
        read.records.push_back(reading);
    }
    return read;
}

ReadRows<Inspection> inspectionsFromCsv(const CsvRows& rows, const KnownNames& known) {
    ReadRows<Inspection> read;
    checkColumns(rows, read.faults);
    if (!read.faults.empty()) return read;
    const Zone zone = zoneOf(known.centre);
    for (size_t n = 0; n < rows.count(); ++n) {
        const CsvRow row = rows.row(n);
        CsvCells cells(row, rows.mapping, read.faults);
        Inspection inspection;
        takeCommon(cells, known, zone, inspection);
        inspection.id = {cells.has("id") ? cells.value("id")
                                         : idFrom({QString::number(inspection.at.seconds), QString::number(inspection.lane)})};
        if (read.records.empty() || read.records.back().id != inspection.id) read.records.push_back(inspection);
        if (inspection.corrects && !cells.has("feature")) continue;  // only withdraws
        read.records.back().values.push_back({GeometryFeature(cells.word("feature", features)), cells.feet("distance_ft"),
                                              cells.micrometres("departure_um", mostDeparture)});
    }
    return read;
}

QByteArray tapesToCsv(std::vector<TapeReading> readings) {
    putCorrectedFirst(readings);
    QStringList names{"id",   "at",          "person",      "machine", "pattern", "pattern_version",
                      "lane", "lane_of_run", "distance_ft", "note",    "corrects"};
    for (int board = 1; board <= boards; ++board)
        names << boardColumn(board);
    QByteArray out = header(names);
    for (const TapeReading& r : readings) {
        std::vector<CsvField> fields{words(r.id.value),      instant(r.at),          words(r.person.value),
                                     words(r.machine.value), words(r.pattern.value), number(r.patternVersion),
                                     number(r.lane),         number(r.laneOfRun),    feetField(r.distance),
                                     words(r.note),          correctionOf(r)};
        for (const std::optional<std::int64_t>& film : r.milliUnits)
            fields.push_back(film ? decimal(double(*film) / 1'000, 3) : words({}));
        out += csvRecord(fields);
    }
    return out;
}

QByteArray inspectionsToCsv(std::vector<Inspection> inspections) {
    putCorrectedFirst(inspections);
    QByteArray out = header({"id", "at", "person", "lane", "feature", "distance_ft", "departure_um", "note", "corrects"});
    for (const Inspection& i : inspections) {
        const auto record = [&](const CsvField& feature, const CsvField& distance, const CsvField& departure) {
            return csvRecord({words(i.id.value), instant(i.at), words(i.person.value), number(i.lane), feature, distance,
                              departure, words(i.note), correctionOf(i)});
        };
        if (i.values.empty()) out += record(words({}), words({}), words({}));
        for (const GeometryValue& value : i.values)
            out += record(words(features[qsizetype(value.feature)]), feetField(value.distance), number(value.departure.value));
    }
    return out;
}

}  // namespace laneward::cli
