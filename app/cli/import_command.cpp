#include "app/cli/command_list.h"
#include "app/cli/csv_readings.h"
#include "app/cli/ics_mapping.h"
#include "app/cli/import_supplies.h"
#include "core/storage/centre_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QUuid>

#include <algorithm>

namespace laneward::cli {

namespace {

QString say(const char* source) { return QCoreApplication::translate("cli", source); }

/// What a row keeps of the stored one besides its version.
void continueRow(Pattern& pattern, const Pattern& old) { pattern.edition = old.edition; }
template <class Row>
void continueRow(Row&, const Row&) {}

/// A row that is new, or changed, or already there as it is (then nothing).
template <class Row>
void addChange(std::vector<Change>& changes, const std::vector<Row>& stored, Row row) {
    const auto old = std::find_if(stored.begin(), stored.end(), [&row](const Row& other) { return other.id == row.id; });
    if (old == stored.end()) {
        changes.push_back(RowChange<Row>{std::nullopt, std::move(row)});
        return;
    }
    row.version = old->version;
    continueRow(row, *old);
    if (!(row == *old)) changes.push_back(RowChange<Row>{*old, std::move(row)});
}

Error unsound(const QString& name, const Finding& why, const Speech& speech) {
    return fault(ErrorKind::Invalid, "import.unsound", name, {text(why, speech)});
}

Outcome checkSeries(const std::vector<Series>& series, const Loaded& loaded, const QString& name) {
    for (const Series& one : series) {
        const std::vector<Finding> faults = faultsOf(one, loaded.season.centre.facts.lanes);
        if (!faults.empty()) return unsound(name, faults.front(), loaded.speech);
        for (const SurfaceDemand& demand : one.demands) {
            if (!demand.pattern || findPattern(loaded.season.patterns, *demand.pattern)) continue;
            return fault(ErrorKind::Invalid, "import.pattern-unknown", name, {one.title, demand.pattern->value});
        }
    }
    return Nothing{};
}

Outcome checkPatterns(const std::vector<Pattern>& patterns, const Loaded& loaded, const QString& name) {
    for (const Pattern& pattern : patterns) {
        const std::vector<Finding> faults = faultsOf(pattern);
        if (!faults.empty()) return unsound(name, faults.front(), loaded.speech);
    }
    return Nothing{};
}

/// One transaction; says what it would do when it only looks.
Status finish(const Call& call, Loaded& loaded, const QString& name, std::vector<Change> changes) {
    const size_t count = changes.size();
    const bool only = call.options.isSet("dry-run");
    if (!only && count > 0) {
        Edit edit;
        edit.id = {QUuid::createUuid().toString(QUuid::WithoutBraces)};
        edit.at = loaded.now;
        edit.name = "Import " + QFileInfo(name).fileName();
        edit.changes = std::move(changes);
        const Result<Edit> applied = loaded.store->apply(edit);
        if (!applied) return applied.error();
    }
    const char* form = only ? QT_TRANSLATE_NOOP("cli", "%1: %2 new or changed; nothing was written\n")
                            : QT_TRANSLATE_NOOP("cli", "%1: %2 new or changed\n");
    print(call, say(form).arg(name).arg(count));
    return 0;
}

Status finishSeries(const Call& call, Loaded& loaded, const QString& name, const std::vector<Series>& series) {
    const Outcome sound = checkSeries(series, loaded, name);
    if (!sound) return sound.error();
    std::vector<Change> changes;
    for (const Series& one : series)
        addChange(changes, loaded.season.series, one);
    return finish(call, loaded, name, std::move(changes));
}

Status importIcs(const Call& call, const QString& name) {
    IcsMapping mapping;
    if (call.options.isSet("mapping")) {
        const QString path = call.options.value("mapping");
        const Result<QByteArray> json = fileContent(path);
        if (!json) return json.error();
        const Result<IcsMapping> read = icsMapping(*json, path);
        if (!read) return read.error();
        mapping = *read;
    }
    const Result<QByteArray> bytes = fileContent(name);
    if (!bytes) return bytes.error();
    Result<Loaded> loaded = load(call, Access::ReadWrite);
    if (!loaded) return loaded.error();
    const CentreFacts& facts = loaded->season.centre.facts;
    const Result<IcsContents> contents = readIcs(*bytes, name, mapping, facts.zone, facts.lanes);
    if (!contents) return contents.error();
    for (const Finding& note : contents->notes)
        call.streams.err.write((text(note, loaded->speech) + "\n").toUtf8());
    return finishSeries(call, *loaded, name, contents->series);
}

Result<CsvRows> rowsOf(const Call& call, const QString& name, const QStringList& needed) {
    CsvMapping mapping;
    if (call.options.isSet("mapping")) {
        const QString path = call.options.value("mapping");
        const Result<QByteArray> json = fileContent(path);
        if (!json) return json.error();
        const Result<CsvMapping> read = csvMapping(*json, path);
        if (!read) return read.error();
        mapping = *read;
    }
    const Result<QByteArray> bytes = fileContent(name);
    if (!bytes) return bytes.error();
    return csvRows(*bytes, name, mapping, needed);
}

/// How many of the records are not stored yet, by their ids.
template <class T>
std::int64_t newOnes(const std::vector<T>& records, const std::vector<T>& stored) {
    QSet<OperationId> known;
    for (const T& record : stored)
        known.insert(record.id);
    return std::count_if(records.begin(), records.end(), [&](const T& record) { return !known.contains(record.id); });
}

/// Appends all records of a file, or none; those that are there already stay as they are.
template <class T>
Status finishRecords(const Call& call, Loaded& loaded, const ReadRows<T>& read, const Result<std::vector<T>>& stored) {
    if (!read.faults.empty()) return Error{ErrorKind::Invalid, read.faults.front()};
    if (!stored) return stored.error();
    const bool only = call.options.isSet("dry-run");
    const Outcome done = only ? Outcome(Nothing{}) : loaded.store->append({read.records.begin(), read.records.end()});
    if (!done) return done.error();
    const char* form =
        only ? QT_TRANSLATE_NOOP("cli", "%1: %2 new; nothing was written\n") : QT_TRANSLATE_NOOP("cli", "%1: %2 new\n");
    print(call, say(form).arg(call.arguments.front()).arg(newOnes(read.records, *stored)));
    return 0;
}

Status importRecords(const Call& call, Loaded& loaded, const CsvRows& rows, const QString& kind) {
    const KnownNames known{loaded.season.centre, loaded.season.patterns};
    Store& store = *loaded.store;
    if (kind == "readings") return finishRecords(call, loaded, tapesFromCsv(rows, known), store.tapes(allRecords));
    return finishRecords(call, loaded, inspectionsFromCsv(rows, known), store.inspections(allRecords));
}

QStringList importKinds() { return csvKinds() + QStringList{"stock", "prices"}; }

QStringList neededColumns(const QString& kind) {
    if (kind == "stock") return stockColumns(StockKind::Counts);
    if (kind == "prices") return stockColumns(StockKind::Prices);
    if (kind == "series") return {"title", "date", "start"};
    if (kind == "readings") return tapeColumns();
    if (kind == "inspections") return inspectionColumns();
    return {"pattern", "end_ft", "direction", "first_board", "last_board", "laps", "dose_ul", "from_ft", "to_ft"};
}

Status importCsv(const Call& call, const QString& name) {
    const QString kind = call.options.value("kind");
    if (!importKinds().contains(kind)) return wrongUsage("cli.bad-kind", kind, {importKinds().join(", ")});
    const Result<CsvRows> rows = rowsOf(call, name, neededColumns(kind));
    if (!rows) return rows.error();
    Result<Loaded> loaded = load(call, Access::ReadWrite);
    if (!loaded) return loaded.error();
    if (kind == "readings" || kind == "inspections") return importRecords(call, *loaded, *rows, kind);
    if (kind == "stock") return importCounts(call, *loaded, *rows);
    if (kind == "prices") {
        Result<std::vector<Change>> changes = priceChanges(call, *loaded, *rows);
        return changes ? finish(call, *loaded, name, *std::move(changes)) : Status(changes.error());
    }
    if (kind == "series") {
        const Result<std::vector<Series>> series = seriesFromCsv(*rows, loaded->season.centre.facts.zone);
        return series ? finishSeries(call, *loaded, name, *series) : Status(series.error());
    }
    const Result<std::vector<Pattern>> patterns = patternsFromCsv(*rows);
    if (!patterns) return patterns.error();
    const Outcome sound = checkPatterns(*patterns, *loaded, name);
    if (!sound) return sound.error();
    std::vector<Change> changes;
    for (const Pattern& pattern : *patterns)
        addChange(changes, loaded->season.patterns, pattern);
    return finish(call, *loaded, name, std::move(changes));
}

/// The centre that --centre names, made new where there is none; what was there is backed up beside it first.
Result<std::unique_ptr<Store>> storeToFill(const Call& call, Instant now) {
    const Result<Location> location = Location::parse(call.start.centre);
    if (!location) return location.error();
    Result<std::unique_ptr<Store>> store = Store::open(*location, Access::ReadWrite);
    if (!store && store.error().finding.rule == "store.missing") return Store::open(*location, Access::Create);
    if (!store || location->kind != Location::Kind::Sqlite) return store;
    const Result<QString> copy = (*store)->backup(QFileInfo(location->path).absolutePath(), now);
    if (!copy) return copy.error();
    return store;
}

Status importJson(const Call& call, const QString& name) {
    QFile file(name);
    if (QFileInfo(name).exists() && !QFileInfo(name).isFile()) return fault(ErrorKind::Io, "file.not-a-file", name);
    if (!file.open(QIODevice::ReadOnly)) return fault(ErrorKind::Io, "file.not-read", name, {file.errorString()});
    const Result<CentreFile> centre = readCentreFile(file, name);
    if (!centre) return centre.error();
    const QString what = centre->season.centre.facts.name;
    if (call.options.isSet("dry-run")) {
        print(call, say(QT_TRANSLATE_NOOP("cli", "%1: holds %2; nothing was written\n")).arg(name, what));
        return 0;
    }
    const Instant now = nowOf(call, zoneOf(centre->season.centre));
    Result<std::unique_ptr<Store>> store = storeToFill(call, now);
    if (!store) return store.error();
    const Outcome filled = (*store)->replaceAll(centre->season, centre->history, {}, now);
    if (!filled) return filled.error();
    print(call, say(QT_TRANSLATE_NOOP("cli", "%1: imported %2\n")).arg(name, what));
    return 0;
}

}  // namespace

Status importFile(const Call& call) {
    const Result<QString> name = onlyArgument(call, "FILE");
    if (!name) return name.error();
    const QString extension = QFileInfo(*name).suffix().toLower();
    if (extension == "json") return importJson(call, *name);
    if (extension == "ics") return importIcs(call, *name);
    if (extension == "csv") return importCsv(call, *name);
    return wrongUsage("cli.bad-extension", *name, {QString(".json, .ics, .csv")});
}

}  // namespace laneward::cli
