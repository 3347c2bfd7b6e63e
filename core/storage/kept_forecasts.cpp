#include "core/storage/kept_forecasts.h"

#include "core/storage/operations.h"
#include "core/storage/store_parts.h"

#include <algorithm>

namespace laneward {

Result<std::vector<KeptForecast>> storedForecasts(Database& database, const CentreId& centre, const QString& where,
                                                  std::vector<QVariant> values) {
    values.insert(values.begin(), centre.value);
    const auto rows = database.rows(selectStatement(tableOf<KeptForecast>, columnsOf<KeptForecast>(), false, where), values);
    if (!rows) return rows.error();
    Result<std::vector<KeptForecast>> all = decoded<KeptForecast>(database, *rows);
    if (all) std::sort(all->begin(), all->end(), [](const KeptForecast& a, const KeptForecast& b) { return a.day < b.day; });
    return all;
}

// Two that write at once: the second waits for the first, and then has nothing to do.
Result<bool> insertForecast(Database& database, const CentreId& centre, const KeptForecast& forecast) {
    ColumnWriter writer;
    describe(writer, forecast);
    writer.values.insert(writer.values.begin(), centre.value);
    const QString sql =
        insertStatement(tableOf<KeptForecast>, columnsOf<KeptForecast>(), false) + QStringLiteral(" ON CONFLICT DO NOTHING");
    const Result<int> done = database.change(sql, writer.values);
    return done ? Result<bool>(*done == 1) : done.error();
}

Result<std::vector<KeptForecast>> Store::keptForecasts(const DateRange& days) {
    Database& database = *m_parts->database;
    Result<Transaction> reading = Transaction::begin(database, Isolation::Reading);
    if (!reading) return reading.error();
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    return storedForecasts(database, *centre, QStringLiteral("AND day >= ? AND day <= ?"),
                           {toColumn(days.first), toColumn(days.last)});
}

Outcome Store::keepForecast(const KeptForecast& forecast) {
    Database& database = *m_parts->database;
    if (isReadOnly()) return fault(ErrorKind::Refused, "edit.read-only", m_parts->location.shown());
    if (const std::vector<Finding> faults = faultsOf(forecast); !faults.empty()) return Error{ErrorKind::Invalid, faults.front()};
    Result<Transaction> writing = Transaction::begin(database, Isolation::Writing);
    if (!writing) return writing.error();
    const Result<CentreId> centre = storedCentre(database);
    if (!centre) return centre.error();
    if (centre->isEmpty()) return fault(ErrorKind::Invalid, "store.no-centre", database.shown());
    const Result<bool> isNew = insertForecast(database, *centre, forecast);
    if (!isNew) return isNew.error();
    return writing->commit();
}

}  // namespace laneward
