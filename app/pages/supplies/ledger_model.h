// Movements of one supply as a table, as they were read.
#pragma once

#include "app/pages/supplies/ledger_rows.h"

#include <QAbstractTableModel>

namespace laneward {

class LedgerModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Time, What, From, To, Moved, OnHand, Mark, Why, By, ColumnCount };

    explicit LedgerModel(QObject* parent = nullptr);

    void show(std::vector<LedgerRow> rows, const SupplyId& supply, const SeasonState& season, const Speech& speech);
    const LedgerRow& at(int row) const { return m_rows[size_t(row)]; }
    int rowOf(const OperationId& id) const;  ///< -1 = not there

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    struct Texts {
        QString cells[ColumnCount];
    };
    Texts textsOf(const LedgerRow& row, const SupplyId& supply, const SeasonState& season, const Speech& speech) const;
    QString whyText(const Movement& movement, const SeasonState& season) const;
    QString markText(const LedgerRow& row) const;
    QVariant sortKey(int row, int column) const;

    std::vector<LedgerRow> m_rows;
    std::vector<Texts> m_texts;
};

}  // namespace laneward
