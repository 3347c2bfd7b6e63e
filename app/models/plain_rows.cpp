#include "app/models/plain_rows.h"

#include "app/models/list_tools.h"

#include <algorithm>

namespace laneward {

PlainRows::PlainRows(const QStringList& titles, const QList<int>& numbers, QObject* parent)
    : QAbstractTableModel(parent), m_titles(titles), m_numbers(numbers) {}

void PlainRows::show(std::vector<PlainRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int PlainRows::rowOf(const QString& id) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const PlainRow& row) { return row.id == id; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int PlainRows::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_rows.size()); }

int PlainRows::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_titles.size()); }

QVariant PlainRows::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const PlainRow& row = m_rows[size_t(index.row())];
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
            return row.texts.value(column);
        case Qt::ToolTipRole:
            return plainTip(row.texts.value(column));
        case Qt::UserRole: {
            const QVariant key = row.sort.value(column);
            return key.isValid() ? key : QVariant(row.texts.value(column).toCaseFolded());
        }
        case Qt::TextAlignmentRole:
            return int((m_numbers.contains(column) ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        default:
            return {};
    }
}

QVariant PlainRows::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return int((m_numbers.contains(section) ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter) |
               int(Qt::TextWordWrap);
    return role == Qt::DisplayRole ? m_titles.value(section) : QVariant();
}

}  // namespace laneward
