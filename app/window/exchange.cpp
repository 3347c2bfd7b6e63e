#include "app/window/exchange.h"

#include "app/cli/csv_rows.h"
#include "core/documents/writers.h"
#include "core/storage/centre_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <algorithm>

namespace laneward {

namespace {

constexpr int jobDays = 14;

Outcome notWritten(const QSaveFile& file) {
    return fault(ErrorKind::Io, "file.not-written", file.fileName(), {file.errorString()});
}

Outcome write(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    const bool whole = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
    return whole ? Outcome(Nothing{}) : notWritten(file);
}

Outcome writeCentre(Session& session, const QString& path) {
    const Result<CentreFile> content = exported(session.store());
    if (!content) return content.error();
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return notWritten(file);
    if (const Outcome written = writeCentreFile(file, *content); !written) return written.error();
    return file.commit() ? Outcome(Nothing{}) : notWritten(file);
}

}  // namespace

Outcome exportTo(Session& session, const QString& path, bool jobs) {
    const QString kind = QFileInfo(path).suffix().toLower();
    const DateRange ahead{session.today(), session.today().addDays(jobDays - 1)};
    if (kind == u"json") return writeCentre(session, path);
    if (kind == u"ics" && jobs)
        return write(path, jobsIcs(session.planOf(ahead), session.planningState(), session.speech(), session.now()));
    if (kind == u"ics") return write(path, writeIcs(session.season().series, session.now()));
    if (kind == u"csv") return write(path, planCsv(session.planOf(ahead), session.speech()));
    return fault(ErrorKind::Usage, "file.not-written", path,
                 {QCoreApplication::translate("laneward::exchange", "unknown kind of file")});
}

namespace {

// One byte more than is accepted: the readers then refuse the file as too large without its being read whole.
Result<QByteArray> content(const QString& path) {
    QFile file(path);
    if (!QFileInfo(path).isFile()) return fault(ErrorKind::Io, "file.not-a-file", path);
    if (!file.open(QIODevice::ReadOnly)) return fault(ErrorKind::Io, "file.unreadable", path, {file.errorString()});
    return file.read(limits::importBytes + 1);
}

template <class Row>
void addChange(std::vector<Change>& changes, const std::vector<Row>& stored, Row row) {
    const auto known = std::find_if(stored.begin(), stored.end(), [&row](const Row& other) { return other.id == row.id; });
    if (known == stored.end()) {
        changes.push_back(RowChange<Row>{std::nullopt, std::move(row)});
        return;
    }
    row.version = known->version;
    if (!(row == *known)) changes.push_back(RowChange<Row>{*known, std::move(row)});
}

Outcome sound(const std::vector<Series>& series, const Session& session, const QString& name) {
    for (const Series& one : series) {
        const std::vector<Finding> faults = faultsOf(one, session.season().centre.facts.lanes);
        if (!faults.empty()) return fault(ErrorKind::Invalid, "import.unsound", name, {text(faults.front(), session.speech())});
        for (const SurfaceDemand& demand : one.demands) {
            if (!demand.pattern || findPattern(session.season().patterns, *demand.pattern)) continue;
            return fault(ErrorKind::Invalid, "import.pattern-unknown", name, {one.title, demand.pattern->value});
        }
    }
    return Nothing{};
}

Result<std::vector<Change>> strokeChanges(const cli::CsvRows& rows, const Session& session, const QString& name) {
    const Result<std::vector<Pattern>> patterns = cli::patternsFromCsv(rows);
    if (!patterns) return patterns.error();
    std::vector<Change> changes;
    for (const Pattern& pattern : *patterns) {
        const std::vector<Finding> faults = faultsOf(pattern);
        if (!faults.empty()) return fault(ErrorKind::Invalid, "import.unsound", name, {text(faults.front(), session.speech())});
        addChange(changes, session.season().patterns, pattern);
    }
    return changes;
}

}  // namespace

Result<IcsContents> readEvents(const Session& session, const QString& path, const IcsMapping& mapping) {
    const CentreFacts& facts = session.season().centre.facts;
    const QString name = QFileInfo(path).fileName();
    const Result<QByteArray> bytes = content(path);
    if (!bytes) return bytes.error();
    Result<IcsContents> read = readIcs(*bytes, name, mapping, facts.zone, facts.lanes);
    if (!read) return read;
    if (const Outcome good = sound(read->series, session, name); !good) return good.error();
    return read;
}

Result<std::vector<Change>> csvChanges(const Session& session, const QString& path) {
    const QString name = QFileInfo(path).fileName();
    const Result<QByteArray> bytes = content(path);
    if (!bytes) return bytes.error();
    const QStringList ofStrokes{"pattern", "end_ft",  "direction", "first_board", "last_board",
                                "laps",    "dose_ul", "from_ft",   "to_ft"};
    if (const Result<cli::CsvRows> rows = cli::csvRows(*bytes, name, {}, ofStrokes)) return strokeChanges(*rows, session, name);
    const Result<cli::CsvRows> rows = cli::csvRows(*bytes, name, {}, {"title", "date", "start"});
    if (!rows) return rows.error();
    const Result<std::vector<Series>> series = cli::seriesFromCsv(*rows, session.season().centre.facts.zone);
    if (!series) return series.error();
    if (const Outcome good = sound(*series, session, name); !good) return good.error();
    return importChanges(session.season(), *series);
}

std::vector<Change> importChanges(const SeasonState& season, const std::vector<Series>& series) {
    std::vector<Change> changes;
    for (const Series& incoming : series)
        addChange(changes, season.series, incoming);
    return changes;
}

}  // namespace laneward
