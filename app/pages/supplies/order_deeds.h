// What is done with orders: stored, printed, written as PDF and CSV. Each says in the window what came of it.
#pragma once

#include "app/edits/session.h"
#include "core/supplies/order_plan.h"

namespace laneward {

/// An order of the plan as a row of the given state, with the centre's next number. Placed today by whoever is at the desk.
Order newOrder(const PlannedOrder& planned, OrderState state, const Session& session);
/// Puts the person at the desk and today's date on it.
void place(Order& order, const Session& session);

void printOrder(const Order& order, Session& session, QWidget* over);
void askWhereForPdf(const Order& order, Session& session, QWidget* over);
void askWhereForCsv(const Order& order, Session& session, QWidget* over);
bool saveOrderPdf(const QString& path, const Order& order, Session& session);
bool saveOrderCsv(const QString& path, const Order& order, Session& session);

}  // namespace laneward
