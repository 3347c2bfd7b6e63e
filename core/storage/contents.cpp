#include "core/storage/contents.h"

#include "core/storage/closing_balances.h"
#include "core/storage/kept_forecasts.h"
#include "core/storage/movements.h"
#include "core/storage/pattern_versions.h"
#include "core/storage/records.h"
#include "core/storage/run_work.h"

namespace laneward {
namespace {

/// Moves a result's value to its place, or hands on its error.
template <class T>
bool put(Result<T> from, T& to, Outcome& outcome) {
    if (!outcome) return false;
    if (from)
        to = *std::move(from);
    else
        outcome = from.error();
    return bool(outcome);
}

constexpr auto overlapping = "ends >= ? AND begins < ?";
constexpr auto within = "happened_at >= ? AND happened_at < ?";

/// Records of a range, and those that correct one of them wherever they lie.
template <class T>
QString withCorrections(const char* range) {
    return QStringLiteral("AND (%1 OR corrects IN (SELECT id FROM %2 WHERE centre_id = ? AND %1))")
        .arg(QLatin1StringView(range), QLatin1StringView(tableOf<T>));
}

/// Values for withCorrections().
std::vector<QVariant> twice(const CentreId& centre, const Span& time) {
    const QVariant begin{qint64{time.begin.seconds}};
    const QVariant end{qint64{time.end.seconds}};
    return {begin, end, centre.value, begin, end};
}

/// The standing run that treated `lane` last before `until`; with `cleaning`, the last that was more than condition only.
Result<QVariant> lastRun(Database& database, const CentreId& centre, int lane, Instant until, bool cleaning) {
    const QString sql = QStringLiteral(
        "SELECT r.id FROM run_lanes l JOIN runs r ON r.centre_id = l.centre_id AND r.id = l.run_id WHERE "
        "l.centre_id = ? AND l.lane = ? AND l.ends < ? AND r.result <> 'void' AND r.treatment <> ? AND NOT EXISTS "
        "(SELECT 1 FROM runs c WHERE c.centre_id = r.centre_id AND c.corrects = r.id) "
        "ORDER BY l.ends DESC, r.id DESC LIMIT 1");
    const QString except = cleaning ? QString(wordOf(Treatment::ConditionOnly)) : QStringLiteral("");
    return database.value(sql, {centre.value, lane, qint64{until.seconds}, except});
}

}  // namespace

Result<Centre> storedFacts(Database& database, const CentreId& centre) {
    Centre all;
    Outcome read = Nothing{};
    const Result<std::optional<CentreFacts>> facts = rowOf<CentreFacts>(database, centre, centre.value);
    if (!facts) return facts.error();
    if (*facts) all.facts = **facts;
    put(rowsOf<Machine>(database, centre), all.machines, read);
    put(rowsOf<Person>(database, centre), all.people, read);
    put(rowsOf<Shift>(database, centre), all.shifts, read);
    put(rowsOf<Outage>(database, centre), all.outages, read);
    return read ? Result<Centre>(std::move(all)) : read.error();
}

template <class T>
Result<std::vector<T>> recordsWithin(Database& database, const CentreId& centre, const Span& time) {
    Result<std::vector<T>> all = rowsOf<T>(database, centre, withCorrections<T>(within), twice(centre, time));
    if (all) sortByTime(*all);
    return all;
}

template <>
Result<std::vector<RunLog>> recordsWithin(Database& database, const CentreId& centre, const Span& time) {
    return runsWhere(database, centre, withCorrections<RunLog>(overlapping), twice(centre, time));
}

template Result<std::vector<Incident>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<HandOver>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<LevelReading>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<TapeReading>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<Inspection>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<StockCount>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<ServiceRecord>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<MeterReading>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<PackReading>> recordsWithin(Database&, const CentreId&, const Span&);
template Result<std::vector<Attachment>> recordsWithin(Database&, const CentreId&, const Span&);

Result<std::vector<Movement>> movementsWithin(Database& database, const CentreId& centre, const Span& time,
                                              const std::optional<SupplyId>& supply) {
    QString where = withCorrections<Movement>(within);
    std::vector<QVariant> values = twice(centre, time);
    if (supply) {
        where += QStringLiteral(
            " AND EXISTS (SELECT 1 FROM movement_entries e WHERE e.centre_id = movements.centre_id AND e.movement_id = "
            "movements.id "
            "AND e.supply = ?)");
        values.push_back(supply->value);
    }
    return movementsWhere(database, centre, where, values);
}

Result<std::vector<Movement>> deedsWithin(Database& database, const CentreId& centre, const Span& time) {
    const QString where = withCorrections<Movement>(within) + QStringLiteral(" AND source IN ('person', 'order')");
    return movementsWhere(database, centre, where, twice(centre, time));
}

/// The last of each duty that stands, by the index of duties.
constexpr auto lastOfDuties =
    "AND id IN (SELECT (SELECT s.id FROM service_records s WHERE s.centre_id = d.centre_id AND s.duty = d.duty AND s.result IN "
    "('done', 'failed') AND NOT EXISTS (SELECT 1 FROM service_records c WHERE c.centre_id = s.centre_id AND c.corrects = s.id) "
    "ORDER BY s.happened_at DESC, s.id DESC LIMIT 1) FROM (SELECT DISTINCT centre_id, duty FROM service_records WHERE centre_id "
    "= "
    "? AND duty IS NOT NULL) d)";

Result<std::vector<ServiceRecord>> lastServices(Database& database, const CentreId& centre) {
    Result<std::vector<ServiceRecord>> lasts =
        rowsOf<ServiceRecord>(database, centre, QLatin1StringView(lastOfDuties), {centre.value});
    if (lasts) sortByTime(*lasts);
    return lasts;
}

Outcome readService(Database& database, const CentreId& centre, SeasonState& season, Instant from) {
    Outcome read = Nothing{};
    put(rowsOf<ServiceItem>(database, centre), season.items, read);
    put(lastServices(database, centre), season.services, read);
    Result<std::vector<MeterReading>> counters = rowsOf<MeterReading>(database, centre);
    if (counters) sortByTime(*counters);
    if (put(std::move(counters), season.counters, read)) season.counters = standing(std::move(season.counters));
    put(recordsWithin<PackReading>(database, centre, {from, allRecords.end}), season.packReadings, read);
    put(workBefore(database, centre, season.counters, from), season.workBefore, read);
    return read;
}

Outcome readStock(Database& database, const CentreId& centre, SeasonState& season) {
    Outcome read = Nothing{};
    put(rowsOf<Supply>(database, centre), season.supplies, read);
    put(rowsOf<Supplier>(database, centre), season.suppliers, read);
    put(rowsOf<Offer>(database, centre), season.offers, read);
    put(rowsOf<Order>(database, centre), season.orders, read);
    return read;
}

Result<std::vector<Job>> jobsWithin(Database& database, const CentreId& centre, const Span& time) {
    return rowsOf<Job>(database, centre, QStringLiteral("AND ") + QLatin1StringView(overlapping),
                       {qint64{time.begin.seconds}, qint64{time.end.seconds}});
}

Result<HistorySlice> storedHistory(Database& database, const CentreId& centre, const Span& time, Ledger ledger) {
    const std::vector<QVariant> range{qint64{time.begin.seconds}, qint64{time.end.seconds}};
    HistorySlice slice;
    Outcome read = Nothing{};
    put(recordsWithin<RunLog>(database, centre, time), slice.runs, read);
    put(recordsWithin<Incident>(database, centre, time), slice.incidents, read);
    put(recordsWithin<HandOver>(database, centre, time), slice.handOvers, read);
    put(recordsWithin<LevelReading>(database, centre, time), slice.readings, read);
    put(recordsWithin<TapeReading>(database, centre, time), slice.tapes, read);
    put(recordsWithin<Inspection>(database, centre, time), slice.inspections, read);
    put(versionsWhere(database, centre, QStringLiteral("AND since >= ? AND since < ?"), range), slice.patternVersions, read);
    put(jobsWithin(database, centre, time), slice.jobs, read);
    put(recordsWithin<StockCount>(database, centre, time), slice.counts, read);
    put(recordsWithin<ServiceRecord>(database, centre, time), slice.services, read);
    put(recordsWithin<MeterReading>(database, centre, time), slice.counters, read);
    put(recordsWithin<PackReading>(database, centre, time), slice.packReadings, read);
    put(recordsWithin<Attachment>(database, centre, time), slice.attachments, read);
    if (ledger == Ledger::With) put(movementsWithin(database, centre, time, {}), slice.movements, read);
    if (ledger == Ledger::Deeds) put(deedsWithin(database, centre, time), slice.movements, read);
    return read ? Result<HistorySlice>(std::move(slice)) : read.error();
}

// The database finds the few runs that matter, by its index; lastTreatments() then decides as it does for runs in memory.
Result<std::vector<LaneTreatment>> treatmentsBefore(Database& database, const CentreId& centre, int lanes, Instant until) {
    QSet<QString> ids;
    for (int lane = 1; lane <= lanes; ++lane)
        for (const bool cleaning : {false, true}) {
            const Result<QVariant> id = lastRun(database, centre, lane, until, cleaning);
            if (!id) return id.error();
            if (id->isValid()) ids.insert(id->toString());
        }
    std::vector<RunLog> runs;
    for (const QString& id : ids) {
        const auto run = runsWhere(database, centre, QStringLiteral("AND id = ?"), {id});
        if (!run) return run.error();
        runs.insert(runs.end(), run->begin(), run->end());
    }
    for (RunLog& run : runs)
        run.corrects.reset();  // what it corrected is not among them, and it stands
    return lastTreatments(standing(std::move(runs)), {until.seconds - 1});
}

Result<CentreFile> everything(Database& database, const CentreId& centre, Ledger ledger) {
    CentreFile file;
    Outcome read = Nothing{};
    put(storedFacts(database, centre), file.season.centre, read);
    put(rowsOf<Series>(database, centre), file.season.series, read);
    put(rowsOf<Pattern>(database, centre), file.season.patterns, read);
    if (read) read = readStock(database, centre, file.season);
    put(rowsOf<ServiceItem>(database, centre), file.season.items, read);
    put(storedHistory(database, centre, allRecords, ledger), file.history, read);
    put(storedForecasts(database, centre), file.history.forecasts, read);
    return read ? Result<CentreFile>(std::move(file)) : read.error();
}

}  // namespace laneward
