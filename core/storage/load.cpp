#include "core/season/work_ahead.h"
#include "core/storage/closing_balances.h"
#include "core/storage/contents.h"
#include "core/storage/movements.h"
#include "core/storage/pattern_versions.h"
#include "core/storage/records.h"
#include "core/storage/run_work.h"
#include "core/storage/store_parts.h"

namespace laneward {
namespace {

/// Those of the window, and each machine's last one that stands, however old.
Result<std::vector<LevelReading>> openReadings(Database& database, const CentreId& centre, Instant from) {
    Result<std::vector<LevelReading>> readings = rowsOf<LevelReading>(
        database, centre,
        QStringLiteral(
            "AND (happened_at >= ? OR happened_at = (SELECT MAX(l.happened_at) FROM level_readings l WHERE l.centre_id = "
            "level_readings.centre_id AND l.machine = level_readings.machine AND NOT EXISTS (SELECT 1 FROM level_readings c "
            "WHERE c.centre_id = l.centre_id "
            "AND c.corrects = l.id)))"),
        {qint64{from.seconds}});
    if (readings) sortByTime(*readings);
    return readings;
}

Result<SeasonState> loaded(Database& database, const CentreId& centre, Instant from) {
    Result<Centre> facts = storedFacts(database, centre);
    if (!facts) return facts.error();
    Result<std::vector<Series>> series = rowsOf<Series>(database, centre);
    if (!series) return series.error();
    Result<std::vector<Pattern>> patterns = rowsOf<Pattern>(database, centre);
    if (!patterns) return patterns.error();
    const Span window{from, allRecords.end};
    const Span recent{from + hours(24) * (openWindowDays - openJobDays), allRecords.end};
    Result<std::vector<Job>> jobs = jobsWithin(database, centre, recent);
    if (!jobs) return jobs.error();
    Result<std::vector<RunLog>> runs = recordsWithin<RunLog>(database, centre, window);
    if (!runs) return runs.error();
    Result<std::vector<Incident>> incidents = recordsWithin<Incident>(database, centre, window);
    if (!incidents) return incidents.error();
    Result<std::vector<HandOver>> handOvers = recordsWithin<HandOver>(database, centre, window);
    if (!handOvers) return handOvers.error();
    Result<std::vector<LevelReading>> readings = openReadings(database, centre, from);
    if (!readings) return readings.error();
    Result<std::vector<LaneTreatment>> before = treatmentsBefore(database, centre, facts->facts.lanes, from);
    if (!before) return before.error();
    Result<Balances> stock = storedBalances(database, centre);
    if (!stock) return stock.error();
    SeasonState season{*std::move(facts),  *std::move(series),   *std::move(patterns),  *std::move(jobs),     *std::move(runs),
                       *std::move(before), *std::move(readings), *std::move(incidents), *std::move(handOvers)};
    season.stock = *std::move(stock);
    if (const Outcome read = readStock(database, centre, season); !read) return read.error();
    if (const Outcome read = readService(database, centre, season, from); !read) return read.error();
    return season;
}

/// Asks within one read transaction.
template <class Question>
auto readFrom(Database& database, const Question& question) -> decltype(question(database, CentreId{})) {
    Result<Transaction> reading = Transaction::begin(database, Isolation::Reading);
    if (!reading) return reading.error();
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    return question(database, *centre);
}

}  // namespace

Result<SeasonState> Store::load(Instant now) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return loaded(database, centre, now - hours(24) * openWindowDays);
    });
}

Result<HistorySlice> Store::history(const Span& time) {
    return readFrom(*m_parts->database,
                    [&](Database& database, const CentreId& centre) { return storedHistory(database, centre, time); });
}

Result<HistorySlice> Store::deeds(const Span& time) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return storedHistory(database, centre, time, Ledger::Deeds);
    });
}

Result<std::vector<Attachment>> Store::attachments(const OperationId& record) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        auto all = rowsOf<Attachment>(database, centre, QStringLiteral("AND record = ?"), {record.value});
        if (all) sortByTime(*all);
        return all;
    });
}

Result<QByteArray> Store::attachmentContent(const QString& sha256) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) -> Result<QByteArray> {
        const Result<QVariant> content = database.value(
            QStringLiteral("SELECT content FROM attachment_contents WHERE centre_id = ? AND sha256 = ?"), {centre.value, sha256});
        return content ? Result<QByteArray>(content->toByteArray()) : content.error();
    });
}

Result<std::vector<RunLog>> Store::runs(const Span& time) {
    return readFrom(*m_parts->database,
                    [&](Database& database, const CentreId& centre) { return recordsWithin<RunLog>(database, centre, time); });
}

Result<std::vector<TapeReading>> Store::tapes(const Span& time) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return recordsWithin<TapeReading>(database, centre, time);
    });
}

Result<std::vector<Inspection>> Store::inspections(const Span& time) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return recordsWithin<Inspection>(database, centre, time);
    });
}

Result<std::vector<LevelReading>> Store::levelReadings(const Span& time) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return recordsWithin<LevelReading>(database, centre, time);
    });
}

Result<std::vector<Movement>> Store::movements(const Span& time, const std::optional<SupplyId>& supply) {
    return readFrom(*m_parts->database,
                    [&](Database& database, const CentreId& centre) { return movementsWithin(database, centre, time, supply); });
}

Result<std::vector<Movement>> Store::movementsFrom(MovementSource source, const QString& sourceId) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return movementsWhere(database, centre, QStringLiteral("AND source_id = ? AND source = ?"),
                              {sourceId, QString(wordOf(source))});
    });
}

Result<std::vector<StockCount>> Store::counts(const Span& time) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return recordsWithin<StockCount>(database, centre, time);
    });
}

Result<std::vector<ServiceRecord>> Store::services(const Span& time) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return recordsWithin<ServiceRecord>(database, centre, time);
    });
}

Result<PackHistory> Store::packs(const Span& time) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) -> Result<PackHistory> {
        Result<std::vector<PackReading>> readings = recordsWithin<PackReading>(database, centre, time);
        if (!readings) return readings.error();
        Result<std::vector<MachineWork>> work = workWithin(database, centre, time);
        if (!work) return work.error();
        return PackHistory{*std::move(readings), *std::move(work)};
    });
}

Result<std::vector<Supply>> Store::supplies() {
    return readFrom(*m_parts->database,
                    [](Database& database, const CentreId& centre) { return rowsOf<Supply>(database, centre); });
}

Result<Balances> Store::stock() { return readFrom(*m_parts->database, storedBalances); }

Result<std::vector<PatternVersion>> Store::patternVersions(const std::optional<PatternId>& pattern) {
    return readFrom(*m_parts->database, [&](Database& database, const CentreId& centre) {
        return pattern ? versionsWhere(database, centre, QStringLiteral("AND pattern = ?"), {pattern->value})
                       : versionsWhere(database, centre);
    });
}

Result<std::int64_t> Store::changeCounter() {
    const Result<CentreId> centre = storedCentre(*m_parts->database);
    return centre ? currentChange(*m_parts->database, *centre) : centre.error();
}

Result<CentreFile> exported(Store& store) {
    Database& database = store.database();
    Result<Transaction> reading = Transaction::begin(database, Isolation::Reading);
    if (!reading) return reading.error();
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    if (centre->isEmpty()) return fault(ErrorKind::Invalid, "store.no-centre", database.shown());
    return everything(database, *centre);
}

}  // namespace laneward
