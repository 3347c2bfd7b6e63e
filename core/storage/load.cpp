#include "core/storage/contents.h"
#include "core/storage/records.h"
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
    Result<HistorySlice> window = storedHistory(database, centre, {from, allTime.end});
    if (!window) return window.error();
    Result<std::vector<LevelReading>> readings = openReadings(database, centre, from);
    if (!readings) return readings.error();
    Result<std::vector<LaneTreatment>> before = treatmentsBefore(database, centre, facts->facts.lanes, from);
    if (!before) return before.error();
    return SeasonState{*std::move(facts),       *std::move(series),           *std::move(patterns),
                       std::move(window->jobs), std::move(window->runs),      *std::move(before),
                       *std::move(readings),    std::move(window->incidents), std::move(window->handOvers)};
}

}  // namespace

Result<SeasonState> Store::load(Instant now) {
    Database& database = *m_parts->database;
    Result<Transaction> reading = Transaction::begin(database, Isolation::Reading);
    if (!reading) return reading.error();
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    return loaded(database, *centre, now - hours(24) * openWindowDays);
}

Result<HistorySlice> Store::history(const Span& time) {
    Database& database = *m_parts->database;
    Result<Transaction> reading = Transaction::begin(database, Isolation::Reading);
    if (!reading) return reading.error();
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    return storedHistory(database, *centre, time);
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
