#include "core/storage/records.h"

#include "core/storage/movements.h"
#include "core/storage/run_work.h"

#include <QHash>

#include <algorithm>

namespace laneward {
namespace {

template <class... Ts>
struct Overloaded : Ts... {
    using Ts::operator()...;
};
template <class... Ts>
Overloaded(Ts...) -> Overloaded<Ts...>;

Instant timeIn(const RunLog& r) { return r.time.end; }
Instant timeIn(const Incident& i) { return i.at; }
Instant timeIn(const HandOver& h) { return h.at; }
Instant timeIn(const LevelReading& r) { return r.levels.at; }
Instant timeIn(const TapeReading& r) { return r.at; }
Instant timeIn(const Inspection& i) { return i.at; }
Instant timeIn(const StockCount& c) { return c.at; }
Instant timeIn(const ServiceRecord& r) { return r.at; }
Instant timeIn(const MeterReading& r) { return r.at; }
Instant timeIn(const PackReading& r) { return r.at; }
Instant timeIn(const Attachment& a) { return a.at; }

template <class T>
void sorted(std::vector<T>& all) {
    std::sort(all.begin(), all.end(),
              [](const T& a, const T& b) { return std::pair(timeIn(a), a.id) < std::pair(timeIn(b), b.id); });
}

Outcome insertLanes(Database& database, const CentreId& centre, const RunLog& run) {
    if (run.lanes.empty()) return Nothing{};
    const QStringList places(qsizetype(run.lanes.size()), QStringLiteral("(?, ?, ?, ?, ?, ?)"));
    std::vector<QVariant> values;
    for (size_t i = 0; i < run.lanes.size(); ++i) {
        const LaneTime& lane = run.lanes[i];
        for (const QVariant& value : {QVariant(centre.value), QVariant(run.id.value), QVariant(qint64(i)), toColumn(lane.lane),
                                      toColumn(lane.time.begin), toColumn(lane.time.end)})
            values.push_back(value);
    }
    const QString sql = QStringLiteral("INSERT INTO run_lanes (centre_id, run_id, place, lane, begins, ends) VALUES %1")
                            .arg(places.join(QLatin1StringView(", ")));
    const Result<int> done = database.change(sql, values);
    return done ? Outcome(Nothing{}) : Outcome(done.error());
}

Outcome insertChildren(Database& database, const CentreId& centre, const RunLog& run) {
    const Outcome lanes = insertLanes(database, centre, run);
    return lanes ? takeWork(database, centre, run) : lanes;
}
Outcome insertChildren(Database& database, const CentreId& centre, const Movement& m) {
    return insertEntries(database, centre, m);
}
/// The same bytes are kept once.
Outcome insertChildren(Database& database, const CentreId& centre, const Attachment& attachment) {
    if (attachment.content.isEmpty()) return Nothing{};
    const Result<int> done = database.change(
        QStringLiteral("INSERT INTO attachment_contents (centre_id, sha256, content) VALUES (?, ?, ?) ON CONFLICT DO NOTHING"),
        {centre.value, attachment.sha256, attachment.content});
    return done ? Outcome(Nothing{}) : Outcome(done.error());
}
template <class T>
Outcome insertChildren(Database&, const CentreId&, const T&) {
    return Nothing{};
}

Outcome joinLanes(Database& database, const std::vector<Row>& lanes, std::vector<RunLog>& runs) {
    QHash<QString, RunLog*> byId;
    for (RunLog& run : runs)
        byId.insert(run.id.value, &run);
    for (const Row& row : lanes) {
        RunLog* run = byId.value(row.value(0).toString());
        ColumnReader<Row> reader(row, 1);
        LaneTime lane;
        describe(reader, lane);
        if (!run || !reader.isGood())
            return fault(ErrorKind::Io, "store.damaged", database.shown(),
                         {QStringLiteral("run_lanes ") + row.value(0).toString()});
        run->lanes.push_back(lane);
    }
    return Nothing{};
}

template <class T>
Result<std::optional<T>> stored(Database& database, const CentreId& centre, const T& like) {
    return rowOf<T>(database, centre, like.id.value);
}

Result<std::optional<RunLog>> stored(Database& database, const CentreId& centre, const RunLog& like) {
    const auto found = runsWhere(database, centre, QStringLiteral("AND id = ?"), {like.id.value});
    if (!found) return found.error();
    return found->empty() ? std::optional<RunLog>() : found->front();
}

Result<std::optional<Movement>> stored(Database& database, const CentreId& centre, const Movement& like) {
    const auto found = movementsWhere(database, centre, QStringLiteral("AND id = ?"), {like.id.value});
    if (!found) return found.error();
    return found->empty() ? std::optional<Movement>() : found->front();
}

}  // namespace

OperationId operationOf(const Record& record) {
    return std::visit([](const auto& r) { return r.id; }, record);
}

const char* tableOfRecord(const Record& record) {
    return std::visit([](const auto& r) { return tableOf<std::decay_t<decltype(r)>>; }, record);
}

Instant timeOf(const Record& record) {
    return std::visit(Overloaded{[](const RunLog& r) { return r.recordedAt; }, [](const Movement& m) { return m.recordedAt; },
                                 [](const auto& r) { return timeIn(r); }},
                      record);
}

PersonId personOf(const Record& record) {
    return std::visit([](const auto& r) { return r.person; }, record);
}

void sortByTime(std::vector<Incident>& incidents) { sorted(incidents); }
void sortByTime(std::vector<HandOver>& handOvers) { sorted(handOvers); }
void sortByTime(std::vector<LevelReading>& readings) { sorted(readings); }
void sortByTime(std::vector<TapeReading>& readings) { sorted(readings); }
void sortByTime(std::vector<Inspection>& inspections) { sorted(inspections); }
void sortByTime(std::vector<StockCount>& counts) { sorted(counts); }
void sortByTime(std::vector<ServiceRecord>& records) { sorted(records); }
void sortByTime(std::vector<MeterReading>& readings) { sorted(readings); }
void sortByTime(std::vector<PackReading>& readings) { sorted(readings); }
void sortByTime(std::vector<Attachment>& attachments) { sorted(attachments); }

Result<std::vector<RunLog>> runsWhere(Database& database, const CentreId& centre, const QString& where,
                                      const std::vector<QVariant>& values) {
    Result<std::vector<RunLog>> runs = rowsOf<RunLog>(database, centre, where, values);
    if (!runs) return runs;
    std::vector<QVariant> bound{centre.value, centre.value};
    bound.insert(bound.end(), values.begin(), values.end());
    const QString sql = QStringLiteral(
                            "SELECT run_id, lane, begins, ends FROM run_lanes WHERE centre_id = ? AND run_id IN (%1) "
                            "ORDER BY run_id, place")
                            .arg(selectStatement("runs", {QLatin1StringView("id")}, false, where));
    const Result<std::vector<Row>> lanes = database.rows(sql, bound);
    if (!lanes) return lanes.error();
    if (const Outcome joined = joinLanes(database, *lanes, *runs); !joined) return joined.error();
    sorted(*runs);
    return runs;
}

Outcome insertRecord(Database& database, const CentreId& centre, const Record& record, std::int64_t change) {
    const Operation operation{
        operationOf(record), QString::fromLatin1(tableOfRecord(record)), personOf(record), timeOf(record), {}, change};
    if (const Outcome logged = logOperation(database, centre, operation); !logged) return logged;
    return std::visit(
        [&](const auto& r) {
            const Outcome row = insertRow(database, centre, r, 0);
            return row ? insertChildren(database, centre, r) : row;
        },
        record);
}

Result<bool> holdsSame(Database& database, const CentreId& centre, const Record& record) {
    return std::visit(
        [&](const auto& r) -> Result<bool> {
            const auto found = stored(database, centre, r);
            return found ? Result<bool>(*found && **found == r) : found.error();
        },
        record);
}

}  // namespace laneward
