// Two years of a store whose supplies are used as in a simulated house and ordered by a policy: what it costs, and how often
// something runs out. A policy sees what a manager sees: the books, the plan ahead, and past use and deliveries.
#pragma once

#include "core/supplies/order_plan.h"
#include "tests/support/simulated_house.h"

#include <functional>

namespace support {

inline constexpr int storeWarmUp = 84;  ///< days that are only looked at, before the store opens

struct StoreOrder {
    int on = 0;
    int arrives = 0;
    std::vector<int> packs;  ///< by supply
};

/// What is known on the morning of a day.
struct StoreView {
    int day = 0;
    const std::vector<SimulatedHouse>& houses;  ///< to be looked at as far as their past and their plan
    std::vector<laneward::Amount> onHand;       ///< by the books
    std::vector<laneward::UseRate> rates;       ///< learned from fills
    const std::vector<StoreOrder>& underWay;    ///< `arrives` is not known yet
    const std::vector<int>& leadDays;           ///< of orders that have arrived
    const laneward::Supplier& supplier;
    const std::vector<laneward::Offer>& offers;  ///< one for each supply

    double position(size_t supply) const;  ///< on hand and under way
    /// Of the 84 days before, from the books.
    struct Daily {
        double mean = 0;
        double deviation = 0;
    };
    Daily daily(size_t supply) const;
    double used(size_t supply, int days) const;
};

/// Packs by supply; all 0 = no order. Asked on days on which the supplier takes orders.
using OrderPolicy = std::function<std::vector<int>(const StoreView&)>;

struct StoreYears {
    double goods = 0;  ///< minor units a year, what is left over valued at the dearest price
    double freight = 0;
    double holding = 0;
    double orders = 0;
    int cycles = 0;   ///< from one delivery of a supply to the next
    int runOuts = 0;  ///< of them with a run-out
    double total() const { return goods + freight + holding; }
};

laneward::Supplier simulatedSupplier();
/// How one of the supplies is sold.
laneward::Offer simulatedOffer(int supply);

/// Reproducible: the same use and the same lead times, as far as orders are placed on the same days, whatever the policy.
StoreYears yearsOf(int seed, double walk, const OrderPolicy& policy);

}  // namespace support
