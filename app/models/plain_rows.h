// A list of texts with keys to sort by: for lists that only show what others work out.
#pragma once

#include <QAbstractTableModel>

#include <vector>

namespace laneward {

struct PlainRow {
    QString id;
    QStringList texts;
    QVariantList sort;  ///< by column; text where it is missing
};

class PlainRows : public QAbstractTableModel {
    Q_OBJECT

public:
    /// `numbers`: columns that are aligned as such.
    PlainRows(const QStringList& titles, const QList<int>& numbers, QObject* parent = nullptr);

    void show(std::vector<PlainRow> rows);
    const QString& idAt(int row) const { return m_rows[size_t(row)].id; }
    int rowOf(const QString& id) const;  ///< -1 = none

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    QStringList m_titles;
    QList<int> m_numbers;
    std::vector<PlainRow> m_rows;
};

}  // namespace laneward
