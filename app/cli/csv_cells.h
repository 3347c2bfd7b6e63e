// Cells of a row with what is expected in them: each that does not fit is reported with its line and column, and nothing is taken
// from the file then. Internal to this room.
#pragma once

#include "app/cli/csv_rows.h"
#include "core/centre/centre.h"

#include <optional>

namespace laneward::cli {

/// What records may name.
struct KnownNames {
    const Centre& centre;
    const std::vector<Pattern>& patterns;
};

class CsvCells {
public:
    CsvCells(const CsvRow& row, const CsvMapping& mapping, std::vector<Finding>& faults)
        : m_row(row), m_mapping(mapping), m_faults(faults) {}

    QString value(const QString& key) const { return m_row.value(key); }
    bool has(const QString& key) const { return m_row.has(key); }
    QString where() const { return m_row.where(); }

    /// Film in units, kept in thousandths; an empty cell = not measured.
    std::optional<std::int64_t> film(const QString& key);
    std::int64_t whole(const QString& key, std::int64_t least, std::int64_t most);
    Micrometres feet(const QString& key);
    Micrometres micrometres(const QString& key, Micrometres most);
    /// `at` as ISO 8601 with an offset, or `date` and `time` on the clocks of `zone`.
    Instant instant(const Zone& zone);
    size_t word(const QString& key, const QStringList& words);
    /// One of the rows of `known`, by its id; empty when the cell is.
    template <class Rows>
    QString id(const QString& key, const Rows& known) {
        for (const auto& row : known)
            if (row.id.value == value(key)) return value(key);
        if (has(key)) refuse("csv.name-unknown", key);
        return {};
    }
    /// Empty cells of these keys are faults.
    void need(const QStringList& keys);
    void refuse(const char* rule, const QString& key, std::vector<Value> expected = {});
    /// A number from 0 to `most`; the fault has been reported when there is none.
    std::optional<double> decimal(const QString& key, const char* rule, double most);

private:
    QString columnOf(const QString& key) const { return m_mapping.columns.value(key, key); }

    const CsvRow& m_row;
    const CsvMapping& m_mapping;
    std::vector<Finding>& m_faults;
};

/// An id that is made from what a row says, so that the same file does not come in twice.
QString idFrom(const QStringList& facts);

}  // namespace laneward::cli
