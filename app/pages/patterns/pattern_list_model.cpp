#include "app/pages/patterns/pattern_list_model.h"

namespace laneward {

PatternListModel::PatternListModel(QObject* parent) : QAbstractTableModel(parent) {}

void PatternListModel::setPatterns(const std::vector<Pattern>& patterns, const Speech& speech) {
    beginResetModel();
    m_patterns = patterns;
    m_speech = speech;
    endResetModel();
}

int PatternListModel::rowOf(const PatternId& id) const {
    for (size_t row = 0; row < m_patterns.size(); ++row) {
        if (m_patterns[row].id == id) return int(row);
    }
    return -1;
}

int PatternListModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_patterns.size()); }

int PatternListModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QString PatternListModel::textAt(const Pattern& pattern, int column) const {
    switch (column) {
        case Name:
            return pattern.retired ? tr("%1 (retired)", "pattern").arg(shown(pattern.name)) : shown(pattern.name);
        case End:
            return lengthText(pattern.end, m_speech);
        case Volume:
            return amountText(volumes(pattern).lane, m_speech);
        default:
            return m_speech.locale.toString(qlonglong(pattern.edition));
    }
}

/// Retired ones last, whatever is sorted by.
QVariant PatternListModel::sortKey(const Pattern& pattern, int column) const {
    const QString group = pattern.retired ? QStringLiteral("1") : QStringLiteral("0");
    const auto number = [&](std::int64_t value) { return group + QString::number(value).rightJustified(20, QLatin1Char('0')); };
    switch (column) {
        case Name:
            return group + pattern.name.toCaseFolded();
        case End:
            return number(pattern.end.value);
        case Volume:
            return number(volumes(pattern).lane.value);
        default:
            return number(pattern.edition);
    }
}

QVariant PatternListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Pattern& pattern = m_patterns[size_t(index.row())];
    switch (role) {
        case Qt::DisplayRole:
            return textAt(pattern, index.column());
        case Qt::TextAlignmentRole:
            return int((index.column() == Name ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
        case IdRole:
            return pattern.id.value;
        case SortRole:
            return sortKey(pattern, index.column());
        default:
            return {};
    }
}

QVariant PatternListModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    switch (section) {
        case Name:
            return tr("Pattern");
        case End:
            return tr("Ends at");
        case Volume:
            return tr("A lane");
        default:
            return tr("Version");
    }
}

}  // namespace laneward
