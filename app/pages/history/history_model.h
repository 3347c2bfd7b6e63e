// What was found in the history as a table. It sorts by itself: a hundred thousand rows are too many for a proxy.
#pragma once

#include "app/pages/history/history_reader.h"
#include "core/documents/history_list.h"

#include <QAbstractTableModel>

namespace laneward {

class HistoryModel : public QAbstractTableModel {
    Q_OBJECT

public:
    explicit HistoryModel(QObject* parent = nullptr);

    /// `rows` in the order of the index.
    void show(std::shared_ptr<const HistoryReading> reading, std::vector<HistoryRow> rows, HistoryCells cells);
    const std::vector<HistoryRow>& rows() const { return m_rows; }  ///< as they are sorted
    const HistoryCells& cells() const { return m_cells; }
    const HistoryEntry* at(int row) const;   ///< null = not there
    int rowOf(const OperationId& id) const;  ///< -1 = not there
    int rowOf(HistoryRow row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    void sort(int column, Qt::SortOrder order) override;

private:
    void sortRows();

    std::shared_ptr<const HistoryReading> m_reading;
    std::vector<HistoryRow> m_rows;
    HistoryCells m_cells{{}, {}};
    HistoryColumn m_by = HistoryColumn::When;
    bool m_ascending = false;
};

}  // namespace laneward
