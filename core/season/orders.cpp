#include "core/season/orders.h"

#include <algorithm>

namespace laneward {

Order draftOf(const PlannedOrder& planned, const SeasonState& season, QDate today) {
    Order order;
    order.supplier = planned.supplier;
    order.number = nextOrderNumber(season.orders, today);
    order.freight = planned.freight;
    for (const PlannedLine& line : planned.lines) {
        const auto offer =
            std::find_if(season.offers.begin(), season.offers.end(), [&](const Offer& o) { return o.id == line.offer; });
        if (offer == season.offers.end()) continue;
        order.lines.push_back({line.supply, line.offer, offer->article, offer->pack, line.packs, line.each});
    }
    return order;
}

QString nextOrderNumber(const std::vector<Order>& orders, QDate today) {
    const QString year = QString::number(today.year()) + '-';
    int highest = 0;
    for (const Order& order : orders) {
        if (order.number.startsWith(year)) highest = std::max(highest, order.number.mid(year.size()).toInt());
    }
    return year + QString("%1").arg(highest + 1, 3, 10, QChar('0'));
}

Movement receiptOf(const Order& order, const OrderLine& line, Amount amount, const QString& lot, Instant at) {
    Movement receipt;
    receipt.kind = MovementKind::Received;
    receipt.at = at;
    receipt.source = MovementSource::Order;
    receipt.sourceId = order.id.value;
    receipt.entries = {{{line.supply, {Place::Kind::Supplier, {}, 0}, {}, {}}, -amount},
                       {{line.supply, {Place::Kind::Shelf, {}, 0}, {}, lot}, amount}};
    return receipt;
}

OrderProgress progressOf(const Order& order, const std::vector<Movement>& receipts) {
    const std::vector<Amount> received = receivedOf(order, receipts);
    const bool some = std::any_of(received.begin(), received.end(), [](Amount a) { return a > Amount{0}; });
    bool all = true;
    for (size_t n = 0; n < order.lines.size(); ++n)
        all = all && received[n] >= order.lines[n].pack * order.lines[n].packs;
    if (order.state == OrderState::Draft) return OrderProgress::Draft;
    if (some && all) return OrderProgress::Received;
    if (order.state == OrderState::Closed) return OrderProgress::Closed;
    return some ? OrderProgress::PartReceived : OrderProgress::Placed;
}

std::vector<const NextOrder*> dueOrders(const OrderPlan& plan, QDate today) {
    std::vector<const NextOrder*> due;
    for (const NextOrder& next : plan.next) {
        if (next.orderBy.isValid() && next.orderBy <= today) due.push_back(&next);
    }
    return due;
}

}  // namespace laneward
