// Short texts that the panels of this page share.
#pragma once

#include "core/documents/wording.h"
#include "core/season/season.h"
#include "core/supplies/movement.h"

namespace laneward {

/// As the filter of the list parts them.
enum class SupplyGroup { Liquid, Cloth, Part };
SupplyGroup groupOf(SupplyKind kind);

/// Water and waste, which the ledger keeps by itself, included.
QString supplyName(const SupplyId& id, const SeasonState& season);
SupplyKind supplyKind(const SupplyId& id, const SeasonState& season);
QString supplierName(const SupplierId& id, const SeasonState& season);
const Order* findOrder(const std::vector<Order>& orders, const OrderId& id);

/// "shelf, lot A12", "Heron, tank".
QString placeText(const StockKey& key, const SeasonState& season);
/// What lies where, of one supply: "sealed 10 L, open 1.2 L, Heron 0.9 L".
QString whereText(const SupplyId& id, const SeasonState& season, const Speech& speech);
/// The last day by which it must be ordered: "! today", "! overdue since …", "Mon 23 Nov", "-".
QString orderByText(const std::optional<QDate>& orderBy, QDate today, const Speech& speech);
/// "12 %", "under 1 %".
QString chanceText(double chance, const Speech& speech);

}  // namespace laneward
