// Orders as rows: a proposed order becomes a draft, a draft is placed, what arrives is received.
#pragma once

#include "core/season/supply_outlook.h"

namespace laneward {

/// The draft of a proposed order; id and person are left empty.
Order draftOf(const PlannedOrder& planned, const SeasonState& season, QDate today);
/// The next number of the centre's own: "2026-014".
QString nextOrderNumber(const std::vector<Order>& orders, QDate today);

/// What arrived of one line, on the shelf. Person and recordedAt are left empty.
Movement receiptOf(const Order& order, const OrderLine& line, Amount amount, const QString& lot, Instant at);

enum class OrderProgress { Draft, Placed, PartReceived, Received, Closed };
/// From its state and the receipts booked from it.
OrderProgress progressOf(const Order& order, const std::vector<Movement>& receipts);

/// Orders of the plan that are due: their order-by day is `today` or before.
std::vector<const NextOrder*> dueOrders(const OrderPlan& plan, QDate today);

}  // namespace laneward
