// Rows of one table as values: the same five statements for every kind, made from its field list. A kind is stored by naming
// its table here and its fields in fields*.h.
//
//     Result<std::vector<Series>> all = rowsOf<Series>(database, centre);
//     Result<bool> written = updateRow(database, centre, series, expectedVersion, newVersion);
#pragma once

#include "core/storage/column_values.h"
#include "core/storage/database.h"

namespace laneward {

template <class T>
inline constexpr const char* tableOf = nullptr;
template <>
inline constexpr const char* tableOf<CentreFacts> = "centres";
template <>
inline constexpr const char* tableOf<Machine> = "machines";
template <>
inline constexpr const char* tableOf<Person> = "people";
template <>
inline constexpr const char* tableOf<Shift> = "shifts";
template <>
inline constexpr const char* tableOf<Outage> = "outages";
template <>
inline constexpr const char* tableOf<Pattern> = "patterns";
template <>
inline constexpr const char* tableOf<Series> = "series";
template <>
inline constexpr const char* tableOf<Job> = "jobs";
template <>
inline constexpr const char* tableOf<RunLog> = "runs";
template <>
inline constexpr const char* tableOf<Incident> = "incidents";
template <>
inline constexpr const char* tableOf<HandOver> = "hand_overs";
template <>
inline constexpr const char* tableOf<LevelReading> = "level_readings";
template <>
inline constexpr const char* tableOf<TapeReading> = "tape_readings";
template <>
inline constexpr const char* tableOf<Inspection> = "inspections";
template <>
inline constexpr const char* tableOf<PatternVersion> = "pattern_versions";
template <>
inline constexpr const char* tableOf<Supply> = "supplies";
template <>
inline constexpr const char* tableOf<Supplier> = "suppliers";
template <>
inline constexpr const char* tableOf<Offer> = "offers";
template <>
inline constexpr const char* tableOf<Order> = "orders";
template <>
inline constexpr const char* tableOf<Movement> = "movements";
template <>
inline constexpr const char* tableOf<StockCount> = "stock_counts";
template <>
inline constexpr const char* tableOf<KeptForecast> = "kept_forecasts";

template <>
inline constexpr const char* tableOf<ServiceItem> = "service_items";
template <>
inline constexpr const char* tableOf<ServiceRecord> = "service_records";
template <>
inline constexpr const char* tableOf<MeterReading> = "meter_readings";
template <>
inline constexpr const char* tableOf<PackReading> = "pack_readings";
template <>
inline constexpr const char* tableOf<Attachment> = "attachments";

template <class T>
concept Versioned = requires(T t) {
    t.version;
};

/// Statements over the columns of one table; identifiers come from constants of ours only.
QString selectStatement(const char* table, const std::vector<QLatin1StringView>& columns, bool versioned, const QString& where);
QString insertStatement(const char* table, const std::vector<QLatin1StringView>& columns, bool versioned);
QString updateStatement(const char* table, const std::vector<QLatin1StringView>& columns);
QString deleteStatement(const char* table);

template <class T>
const std::vector<QLatin1StringView>& columnsOf() {
    static const std::vector<QLatin1StringView> columns = [] {
        ColumnNames collected;
        const T sample{};
        describe(collected, sample);
        return collected.names;
    }();
    return columns;
}

template <class T>
Result<std::vector<T>> decoded(const Database& database, const std::vector<Row>& rows) {
    std::vector<T> all;
    all.reserve(rows.size());
    for (const Row& row : rows) {
        ColumnReader<Row> reader(row);
        describe(reader, all.emplace_back());
        bool good = reader.isGood();
        if constexpr (Versioned<T>) good = fromColumn(row.columns.back(), all.back().version) && good;
        if (!good)
            return fault(ErrorKind::Io, "store.damaged", database.shown(),
                         {QString(QLatin1StringView(tableOf<T>) + u' ' + row.value(0).toString())});
    }
    return all;
}

/// Rows of the centre that satisfy `where` (further conditions with bound values), by id.
template <class T>
Result<std::vector<T>> rowsOf(Database& database, const CentreId& centre, const QString& where = {},
                              std::vector<QVariant> values = {}) {
    values.insert(values.begin(), centre.value);
    const auto rows = database.rows(selectStatement(tableOf<T>, columnsOf<T>(), Versioned<T>, where), values);
    if (!rows) return rows.error();
    Result<std::vector<T>> all = decoded<T>(database, *rows);
    if (all) std::sort(all->begin(), all->end(), [](const T& a, const T& b) { return a.id < b.id; });
    return all;
}

template <class T>
Result<std::optional<T>> rowOf(Database& database, const CentreId& centre, const QString& id) {
    const auto found = rowsOf<T>(database, centre, QStringLiteral("AND id = ?"), {id});
    if (!found) return found.error();
    return found->empty() ? std::optional<T>() : found->front();
}

template <class T>
Outcome insertRow(Database& database, const CentreId& centre, const T& row, std::int64_t version) {
    ColumnWriter writer;
    describe(writer, row);
    writer.values.insert(writer.values.begin(), centre.value);
    if constexpr (Versioned<T>) writer.values.push_back(qint64{version});
    const auto done = database.change(insertStatement(tableOf<T>, columnsOf<T>(), Versioned<T>), writer.values);
    return done ? Outcome(Nothing{}) : Outcome(done.error());
}

/// False when no row of that id has the expected version.
template <Versioned T>
Result<bool> updateRow(Database& database, const CentreId& centre, const T& row, std::int64_t expected, std::int64_t version) {
    ColumnWriter writer;
    describe(writer, row);
    for (const QVariant& value :
         {QVariant(qint64{version}), QVariant(centre.value), QVariant(row.id.value), QVariant(qint64{expected})})
        writer.values.push_back(value);
    const auto done = database.change(updateStatement(tableOf<T>, columnsOf<T>()), writer.values);
    return done ? Result<bool>(*done == 1) : done.error();
}

template <Versioned T>
Result<bool> deleteRow(Database& database, const CentreId& centre, const T& row, std::int64_t expected) {
    const auto done = database.change(deleteStatement(tableOf<T>), {centre.value, row.id.value, qint64{expected}});
    return done ? Result<bool>(*done == 1) : done.error();
}

}  // namespace laneward
