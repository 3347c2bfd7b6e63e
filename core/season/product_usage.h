// What machines really take of their products, joined from the history of runs and fills.
//
// One model for each machine and product (core/supplies/usage_model.h), learned from the fills that reached the line; cloth by
// the lane and approach cleaner by the day are learned from counts of stock.
#pragma once

#include "core/season/bookings.h"
#include "core/season/output_drift.h"
#include "core/supplies/usage_model.h"

namespace laneward {

struct ProductUsage {
    MachineId machine;
    int product = 0;  ///< conditioner slots, then the cleaner
    QString name;     ///< of the product
    Usage usage;      ///< of the liquid in the tank, water included
};

/// Of each machine that holds a product there; by machine, then product.
std::vector<ProductUsage> usageOf(const DriftHistory& history, const Centre& centre);
/// Real over nominal, for booking.
UseFactors factorsOf(const std::vector<ProductUsage>& usages);

/// What the ledger says of the past. Lists in any order; counts and runs that stand.
struct StockHistory {
    std::vector<Movement> movements;
    std::vector<StockCount> counts;
    std::vector<RunLog> runs;
    std::vector<OperationId> failures;  ///< services that put right what had failed
};

/// What left the house for good in a movement: used, disposed of, lost or (below 0) found; not what went back to the supplier.
Amount goneIn(const Movement& movement, const SupplyId& supply);
/// Counts in which the supply was counted, by time.
std::vector<const StockCount*> countsOf(const Supply& supply, const std::vector<StockCount>& all);

/// What is not measured by fills: between two counts the ledger says what went.
Usage usageFromCounts(const Supply& supply, const StockHistory& history);

}  // namespace laneward
