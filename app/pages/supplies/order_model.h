// The centre's orders as a table, the newest first, with how far each has come.
#pragma once

#include "core/documents/wording.h"
#include "core/season/orders.h"

#include <QAbstractTableModel>

namespace laneward {

/// An order with what was received of it.
struct TrackedOrder {
    Order order;
    OrderProgress progress = OrderProgress::Draft;
    std::vector<Amount> missing;  ///< by line; nothing when more came than was ordered
};

QString progressText(OrderProgress progress);

class OrderModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, From, PlacedOn, Progress, Missing, Total, ColumnCount };

    explicit OrderModel(QObject* parent = nullptr);

    void show(std::vector<TrackedOrder> orders, const SeasonState& season, const Speech& speech);
    const TrackedOrder& at(int row) const { return m_orders[size_t(row)]; }
    int rowOf(const OrderId& id) const;  ///< -1 = not there

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    struct Texts {
        QString cells[ColumnCount];
        QVariant sort[ColumnCount];
    };
    Texts textsOf(const TrackedOrder& order, const SeasonState& season, const Speech& speech) const;

    std::vector<TrackedOrder> m_orders;
    std::vector<Texts> m_texts;
};

}  // namespace laneward
