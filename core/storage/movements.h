// Movements in the database: a row each, with their entries in a table of their own.
#pragma once

#include "core/storage/rows.h"

namespace laneward {

/// Movements with their entries, by time, then id. `where` as for rowsOf().
Result<std::vector<Movement>> movementsWhere(Database& database, const CentreId& centre, const QString& where,
                                             const std::vector<QVariant>& values);

Outcome insertEntries(Database& database, const CentreId& centre, const Movement& movement);

/// What nothing may be removed while it is there: entries of a supply, receipts of an order.
Result<bool> isMoved(Database& database, const CentreId& centre, const SupplyId& supply);
Result<bool> isReceived(Database& database, const CentreId& centre, const OrderId& order);

/// The UTC month of a movement, as 202611.
std::int64_t monthOf(Instant t);

}  // namespace laneward
