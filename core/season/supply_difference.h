// What a change of the plan does to stock: run-out days and last days to order that become others, and what the products cost
// that are used more or less.
//
//     const SupplyDifference change = supplyDifference(before, after);
//     const ProductCost cost = costOf(answer.difference, season, factors);
//
// Both outlooks are drawn with the same seed, so that a supply whose use stays the same keeps its days exactly.
#pragma once

#include "core/season/supply_outlook.h"

#include <QStringList>

namespace laneward {

struct SupplyShift {
    SupplyId supply;
    std::optional<QDate> before;  ///< likely run-out day; none = not within the horizon
    std::optional<QDate> after;
    friend bool operator==(const SupplyShift&, const SupplyShift&) = default;
};

/// Supplies that are to be ordered by another day than before.
struct OrderShift {
    std::vector<SupplyId> supplies;  ///< with these two days in common
    std::optional<QDate> before;     ///< the last day to order; none = no order is proposed
    std::optional<QDate> after;
    friend bool operator==(const OrderShift&, const OrderShift&) = default;
};

struct SupplyDifference {
    std::vector<SupplyShift> runOut;  ///< the earliest new day first
    std::vector<OrderShift> orders;   ///< likewise
    bool isEmpty() const { return runOut.empty() && orders.empty(); }
    friend bool operator==(const SupplyDifference&, const SupplyDifference&) = default;
};
SupplyDifference supplyDifference(const SupplyOutlook& before, const SupplyOutlook& after);

/// Of products that machines take from their tanks.
struct ProductCost {
    Money sum;                 ///< of those with a price, by the cheapest offer for one pack
    QStringList withoutPrice;  ///< products that have none, by name, each once
    friend bool operator==(const ProductCost&, const ProductCost&) = default;
};
/// What jobs take, by what machines really take of their recipes; dropped jobs take nothing.
ProductCost costOf(const std::vector<Job>& jobs, const SeasonState& season, const UseFactors& factors);
/// After less before.
ProductCost costOf(const PlanDifference& change, const SeasonState& season, const UseFactors& factors);

}  // namespace laneward
