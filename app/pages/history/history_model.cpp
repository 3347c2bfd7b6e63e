#include "app/pages/history/history_model.h"

#include "app/models/list_tools.h"

#include <QFont>

#include <algorithm>

namespace laneward {

namespace {

bool isNumber(int column) { return column >= int(HistoryColumn::Meter); }

}  // namespace

HistoryModel::HistoryModel(QObject* parent) : QAbstractTableModel(parent) {}

void HistoryModel::show(std::shared_ptr<const HistoryReading> reading, std::vector<HistoryRow> rows, HistoryCells cells) {
    beginResetModel();
    m_reading = std::move(reading);
    m_rows = std::move(rows);
    m_cells = std::move(cells);
    sortRows();
    endResetModel();
}

/// As found they are sorted already: the newest first.
void HistoryModel::sortRows() {
    const bool asFound = m_by == HistoryColumn::When && !m_ascending;
    if (m_reading && !asFound) m_reading->index.sort(m_rows, m_by, m_ascending);
}

void HistoryModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= historyColumns) return;
    beginResetModel();
    m_by = HistoryColumn(column);
    m_ascending = order == Qt::AscendingOrder;
    if (m_by == HistoryColumn::When && !m_ascending)
        std::sort(m_rows.begin(), m_rows.end());
    else
        sortRows();
    endResetModel();
}

const HistoryEntry* HistoryModel::at(int row) const {
    return row < 0 || size_t(row) >= m_rows.size() ? nullptr : &m_reading->index.at(m_rows[size_t(row)]);
}

int HistoryModel::rowOf(const OperationId& id) const {
    const auto found =
        std::find_if(m_rows.begin(), m_rows.end(), [&](HistoryRow row) { return m_reading->index.at(row).id == id; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int HistoryModel::rowOf(HistoryRow row) const {
    const auto found = std::find(m_rows.begin(), m_rows.end(), row);
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int HistoryModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int HistoryModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : historyColumns; }

QVariant HistoryModel::data(const QModelIndex& index, int role) const {
    const HistoryEntry* entry = index.isValid() ? at(index.row()) : nullptr;
    if (!entry) return {};
    const auto column = HistoryColumn(index.column());
    switch (role) {
        case Qt::DisplayRole:
            return m_cells.text(*entry, column);
        case Qt::ToolTipRole:
            return plainTip(m_cells.text(*entry, column));
        case Qt::AccessibleTextRole:
            return tr("%1: %2", "column: value").arg(laneward::title(column), m_cells.text(*entry, column));
        case Qt::TextAlignmentRole:
            return int((isNumber(index.column()) ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        case Qt::FontRole: {
            if (entry->stands) return {};
            QFont font;
            font.setStrikeOut(true);
            return font;
        }
        default:
            return {};
    }
}

QVariant HistoryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::TextAlignmentRole)
        return int((isNumber(section) ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter) | int(Qt::TextWordWrap);
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    return laneward::title(HistoryColumn(section));
}

}  // namespace laneward
