// Rows of a CSV file under the names that this program uses, whatever the file calls its columns. The mapping is documented in
// resources/schemas/csv.md. Internal to this room.
#pragma once

#include "core/calendar/series.h"
#include "core/documents/csv_reader.h"
#include "core/patterns/pattern.h"

#include <QHash>
#include <QJsonObject>

namespace laneward::cli {

/// What `--mapping F.json` says.
struct CsvMapping {
    QHash<QString, QString> columns;   ///< our name -> the file's column
    QHash<QString, QString> defaults;  ///< our name -> value where the file has no such column or an empty field
    QString date = "yyyy-MM-dd";       ///< Qt's notation
    QString time = "HH:mm";
    bool decimalComma = false;  ///< of film, distances, amounts and prices
};

/// Errors (Invalid): "mapping.unreadable", subject: the file.
Result<CsvMapping> csvMapping(const QByteArray& json, const QString& name);

/// A row that remembers where it stands, for messages.
class CsvRow {
public:
    CsvRow(const CsvRecord& record, const QHash<QString, qsizetype>& columns, const CsvMapping& mapping, const QString& file)
        : m_record(record), m_columns(columns), m_mapping(mapping), m_file(file) {}

    QString where() const { return m_file + ":" + QString::number(m_record.line); }
    /// Trimmed; the default, or empty.
    QString value(const QString& key) const;
    bool has(const QString& key) const { return !value(key).isEmpty(); }
    Error bad(const QString& key) const { return fault(ErrorKind::Invalid, "csv.bad-value", where(), {key, value(key)}); }

    Result<std::int64_t> whole(const QString& key, std::int64_t least, std::int64_t most) const;
    Result<double> number(const QString& key, double least, double most) const;
    Result<QDate> date(const QString& key) const;
    Result<QTime> time(const QString& key) const;
    Result<LaneSet> lanes(const QString& key) const;
    /// The index of one of the words; they are never translated.
    Result<size_t> word(const QString& key, const QStringList& words) const;

private:
    const CsvRecord& m_record;
    const QHash<QString, qsizetype>& m_columns;
    const CsvMapping& m_mapping;
    const QString& m_file;
};

/// A table with its first record as names of columns.
struct CsvRows {
    CsvTable table;
    QHash<QString, qsizetype> columns;  ///< our name -> index
    CsvMapping mapping;
    QString file;

    size_t count() const { return table.records.size() - 1; }
    CsvRow row(size_t n) const { return {table.records[n + 1], columns, mapping, file}; }
};

/// Errors (Invalid): those of readCsv(), "csv.empty", "csv.column-missing".
Result<CsvRows> csvRows(const QByteArray& bytes, const QString& name, const CsvMapping& mapping, const QStringList& needed);

Result<std::vector<Series>> seriesFromCsv(const CsvRows& rows, const QByteArray& centreZone);
Result<std::vector<Pattern>> patternsFromCsv(const CsvRows& rows);
QByteArray seriesToCsv(const std::vector<Series>& series);
QByteArray patternsToCsv(const std::vector<Pattern>& patterns);

}  // namespace laneward::cli
