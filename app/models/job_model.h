// The day's jobs in order of work as a table; runs that nobody planned stand among them.
//
//     model.show(sheet, unplannedRuns, speech);
#pragma once

#include "core/documents/wording.h"

#include <QAbstractTableModel>

namespace laneward {

struct JobRow {
    Job job;  ///< of an unplanned run: what was done, with state Done
    QString machine;
    QString pattern;  ///< empty for clean only
    bool planned = true;
};

/// The sheet's jobs, then `season`'s runs of that day that no job asked for, in order of their beginning.
std::vector<JobRow> jobRows(const JobSheet& sheet, const SeasonState& season);

class JobModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Mark, StartBy, ReadyAt, Lanes, What, Conditioner, Spare, Machine, ColumnCount };
    enum Role { SortRole = Qt::UserRole, OpenRole };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<JobRow> rows, const Speech& speech, Instant now);
    const JobRow* row(int row) const;
    int rowOf(const JobId& id) const;  ///< -1 = not here

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString cell(const JobRow& row, int column) const;
    QVariant sortKey(const JobRow& row, int column) const;
    QString whatText(const JobRow& row) const;
    QString spoken(const JobRow& row) const;
    QString spareText(const Job& job) const;

    std::vector<JobRow> m_rows;
    Speech m_speech;
    Instant m_now;
};

}  // namespace laneward
