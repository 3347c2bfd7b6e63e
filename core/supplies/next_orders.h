// What hangs on the next order of each supplier: how long it can wait and what waiting and haste do. Internal to this room.
#pragma once

#include "core/supplies/order_sources.h"

namespace laneward::ordering {

/// The last day of the horizon up to which nothing is missing when so much was bought; -1 = not even the first.
int coveredUntil(const StockCourse& course, std::int64_t bought);

/// `orders` by day, as the plan has them.
std::vector<NextOrder> nextOrders(const OrderInputs& inputs, const Assignment& assignment,
                                  const std::vector<PlannedOrder>& orders);

}  // namespace laneward::ordering
