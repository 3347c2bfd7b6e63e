// The centre's patterns as a table, for views that sort and filter.
#pragma once

#include "core/documents/wording.h"

#include <QAbstractTableModel>

namespace laneward {

class PatternListModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, End, Volume, Version, ColumnCount };
    static constexpr int IdRole = Qt::UserRole;
    static constexpr int SortRole = Qt::UserRole + 1;

    explicit PatternListModel(QObject* parent = nullptr);

    void setPatterns(const std::vector<Pattern>& patterns, const Speech& speech);
    int rowOf(const PatternId& id) const;  ///< -1 = not there

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    QString textAt(const Pattern& pattern, int column) const;
    QVariant sortKey(const Pattern& pattern, int column) const;

    std::vector<Pattern> m_patterns;
    Speech m_speech;
};

}  // namespace laneward
