#include "app/cli/command_list.h"
#include "app/cli/csv_readings.h"
#include "app/cli/csv_supplies.h"
#include "core/calendar/icalendar.h"
#include "core/documents/writers.h"
#include "core/storage/centre_file.h"

#include <QFileInfo>
#include <QSaveFile>

namespace laneward::cli {

namespace {

constexpr int daysOfJobs = 28;

Status done(const Outcome& outcome) { return outcome ? Status(0) : Status(outcome.error()); }

Status exportJson(const Call& call, const QString& name) {
    Result<std::unique_ptr<Store>> store = openStore(call, Access::ReadOnly);
    if (!store) return store.error();
    const Result<CentreFile> centre = exported(**store);
    if (!centre) return centre.error();
    const Outcome allowed = mayBeWritten(name);
    if (!allowed) return allowed.error();
    QSaveFile file(name);
    if (!file.open(QIODevice::WriteOnly)) return fault(ErrorKind::Io, "file.not-written", name, {file.errorString()});
    const Outcome written = writeCentreFile(file, *centre);
    if (!written) return written.error();
    if (!file.commit()) return fault(ErrorKind::Io, "file.not-written", name, {file.errorString()});
    return 0;
}

/// The supplier that is named, or the only one that there is.
Result<SupplierId> supplierOf(const Call& call, const SeasonState& season) {
    const QString name = call.options.value("supplier");
    QStringList names;
    for (const Supplier& supplier : season.suppliers) {
        if (supplier.id.value == name || supplier.name.compare(name, Qt::CaseInsensitive) == 0) return supplier.id;
        names << supplier.name;
    }
    if (!name.isEmpty()) return wrongUsage("cli.supplier-unknown", name);
    if (season.suppliers.size() == 1) return season.suppliers.front().id;
    return wrongUsage("cli.supplier-missing", {}, {names.join(", ")});
}

Status exportCsv(const Call& call, const Loaded& loaded, const QString& name) {
    const QString kind = call.options.value("kind");
    if (kind == "series") return done(writeFile(name, seriesToCsv(loaded.season.series)));
    if (kind == "strokes") return done(writeFile(name, patternsToCsv(loaded.season.patterns)));
    if (kind == "readings") {
        const Result<std::vector<TapeReading>> readings = loaded.store->tapes(allRecords);
        return readings ? done(writeFile(name, tapesToCsv(*readings))) : Status(readings.error());
    }
    if (kind == "inspections") {
        const Result<std::vector<Inspection>> inspections = loaded.store->inspections(allRecords);
        return inspections ? done(writeFile(name, inspectionsToCsv(*inspections))) : Status(inspections.error());
    }
    if (kind == "stock") return done(writeFile(name, stockToCsv(loaded.season)));
    if (kind == "prices") {
        const Result<SupplierId> supplier = supplierOf(call, loaded.season);
        return supplier ? done(writeFile(name, pricesToCsv(loaded.season, *supplier))) : Status(supplier.error());
    }
    return wrongUsage("cli.bad-kind", kind, {(csvKinds() + QStringList{"stock", "prices"}).join(", ")});
}

Status exportJobs(const Call& call) {
    const QString name = call.options.value("jobs");
    if (QFileInfo(name).suffix().toLower() != "ics") return wrongUsage("cli.bad-extension", name, {QString(".ics")});
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    const Result<DateRange> range = rangeOf(call, dateOf(loaded->season.centre, loaded->now), daysOfJobs);
    if (!range) return range.error();
    const State state = planningState(loaded->season, loaded->now);
    const Plan made = laneward::plan(state, loaded->now, *range);
    return done(writeFile(name, jobsIcs(made, state, loaded->speech, loaded->now)));
}

}  // namespace

Status exportFile(const Call& call) {
    if (call.options.isSet("jobs")) return exportJobs(call);
    const Result<QString> name = onlyArgument(call, "FILE");
    if (!name) return name.error();
    const QString extension = QFileInfo(*name).suffix().toLower();
    if (extension == "json") return exportJson(call, *name);
    if (extension != "ics" && extension != "csv") return wrongUsage("cli.bad-extension", *name, {QString(".json, .ics, .csv")});
    const Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    if (extension == "csv") return exportCsv(call, *loaded, *name);
    return done(writeFile(*name, writeIcs(loaded->season.series, loaded->now)));
}

}  // namespace laneward::cli
