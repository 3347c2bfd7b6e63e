// A pattern's tape readings beside the films that were to be there, as a table.
//
// Films are computed when a row's figures are first asked for: a thousand readings cost nothing until they are looked at.
#pragma once

#include "core/documents/wording.h"
#include "core/patterns/reading_compare.h"

#include <QAbstractTableModel>

namespace laneward {

/// A reading with what was run and on what.
struct ReadingRow {
    TapeReading reading;
    const Pattern* pattern = nullptr;  ///< in the version that was run; null = not known
    Micrometres carry;                 ///< of the machine
    QString machine;
};

/// The version that a reading names; without one the version in force when it was taken, else the oldest. `versions` are of one
/// pattern, by edition. Null when there is none.
const Pattern* recipeOf(const TapeReading& reading, const std::vector<PatternVersion>& versions);

int boardsRead(const TapeReading& reading);

class ReadingModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        When,
        Lane,
        MachineName,
        Distance,
        Version,
        Count,
        MeanError,
        LargestError,
        Board,
        Unlikeness,
        Track,
        Lowest,
        Note,
        ColumnCount
    };
    enum Role { SortRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    /// What rows point to must live until the next show().
    void show(std::vector<ReadingRow> rows, const Speech& speech);
    const ReadingRow* row(int row) const;
    int rowOf(const OperationId& id) const;  ///< -1 = not here
    /// Empty without a pattern.
    const std::optional<ReadingComparison>& compared(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Seen {
        bool done = false;
        std::optional<ReadingComparison> comparison;
    };
    std::optional<double> figure(int row, int column) const;
    QString cell(int row, int column) const;
    QVariant sortKey(int row, int column) const;

    std::vector<ReadingRow> m_rows;
    mutable std::vector<Seen> m_seen;
    Speech m_speech;
};

}  // namespace laneward
