#include "app/pages/supplies/order_model.h"

#include "app/models/list_tools.h"
#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/time_formats.h"
#include "core/documents/purchase_order.h"
#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

QString progressText(OrderProgress progress) {
    switch (progress) {
        case OrderProgress::Draft:
            return OrderModel::tr("draft");
        case OrderProgress::Placed:
            return OrderModel::tr("placed");
        case OrderProgress::PartReceived:
            return OrderModel::tr("part received");
        case OrderProgress::Received:
            return OrderModel::tr("received");
        case OrderProgress::Closed:
            return OrderModel::tr("closed");
    }
    return {};
}

OrderModel::OrderModel(QObject* parent) : QAbstractTableModel(parent) {}

void OrderModel::show(std::vector<TrackedOrder> orders, const SeasonState& season, const Speech& speech) {
    beginResetModel();
    m_orders = std::move(orders);
    m_texts.clear();
    for (const TrackedOrder& order : m_orders)
        m_texts.push_back(textsOf(order, season, speech));
    endResetModel();
}

OrderModel::Texts OrderModel::textsOf(const TrackedOrder& tracked, const SeasonState& season, const Speech& speech) const {
    const Order& order = tracked.order;
    const PurchaseOrder paper = purchaseOrder(season, order);
    Texts texts;
    texts.cells[Number] = shown(order.number);
    texts.sort[Number] = order.number;
    texts.cells[From] = supplierName(order.supplier, season);
    texts.sort[From] = texts.cells[From].toCaseFolded();
    texts.cells[PlacedOn] = order.placedOn ? shortDay(*order.placedOn, speech.locale) : QStringLiteral("-");
    texts.sort[PlacedOn] = order.placedOn ? order.placedOn->toJulianDay() : qint64{1} << 40;  // a draft is the newest
    texts.cells[Progress] = progressText(tracked.progress);
    texts.sort[Progress] = int(tracked.progress);
    QStringList missing;
    const bool expected = tracked.progress == OrderProgress::Placed || tracked.progress == OrderProgress::PartReceived;
    for (size_t n = 0; expected && n < order.lines.size(); ++n) {
        if (tracked.missing[n] <= Amount{}) continue;
        const SupplyId& id = order.lines[n].supply;
        missing << tr("%1 %2", "amount, supply")
                       .arg(amountText(tracked.missing[n], supplyKind(id, season), speech), supplyName(id, season));
    }
    texts.cells[Missing] = missing.isEmpty() ? QStringLiteral("-") : missing.join(QStringLiteral(", "));
    texts.sort[Missing] = int(missing.size());
    texts.cells[Total] = moneyText(paper.total, speech);
    texts.sort[Total] = qlonglong(paper.total.minor);
    return texts;
}

int OrderModel::rowOf(const OrderId& id) const {
    const auto found = std::find_if(m_orders.begin(), m_orders.end(), [&](const TrackedOrder& o) { return o.order.id == id; });
    return found == m_orders.end() ? -1 : int(found - m_orders.begin());
}

int OrderModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(m_orders.size()); }

int OrderModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(ColumnCount); }

QVariant OrderModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Texts& texts = m_texts[size_t(index.row())];
    switch (role) {
        case Qt::DisplayRole:
            return texts.cells[index.column()];
        case Qt::ToolTipRole:
            return plainTip(texts.cells[index.column()]);
        case Qt::TextAlignmentRole:
            return int((index.column() == Total ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
        case Qt::UserRole:
            return texts.sort[index.column()];
        default:
            return {};
    }
}

QVariant OrderModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::TextAlignmentRole)
        return int((section == Total ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter) | int(Qt::TextWordWrap);
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    switch (section) {
        case Number:
            return tr("Number");
        case From:
            return tr("Supplier");
        case PlacedOn:
            return tr("Placed on");
        case Progress:
            return tr("State");
        case Missing:
            return tr("Still to come");
        default:
            return tr("Total");
    }
}

}  // namespace laneward
