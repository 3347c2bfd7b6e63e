// What to order when: the orders of the coming months at the least cost of goods, freight and holding together.
//
// For every supply the caller gives what must have been there by each day for the service level to be kept (a quantile of the
// use up to then), and what is expected to be used. The plan keeps the first, within what the store holds and what keeps; costs
// of holding follow the second. Amounts are in base units, money in minor units of one currency; days count from `first`.
//
//     OrderPlan plan = planOrders(question, usualOrderEffort, {});
//     for (const NextOrder& next : plan.next) show(plan.orders[next.order], next);
//
// Limits: in the first four weeks an order may be placed on every order day of its supplier, later once a week. A supply comes
// from one supplier throughout; where several sell it, all ways of sharing supplies out are tried up to 32, the closest choices
// first, and the rest goes where it is cheaper alone (finding "orders.source-fixed"). Packs are bought to whole numbers of at
// most 120 steps over the horizon; where that is too few, packs of one size only, then several at a time. Deterministic: the same
// question gives the same plan, whatever the order of its parts.
#pragma once

#include "core/supplies/supply.h"

#include <functional>

namespace laneward {

/// Ordered and not yet received.
struct Arrival {
    QDate on;  ///< the day that the plan may count on
    Amount amount;
    friend bool operator==(const Arrival&, const Arrival&) = default;
};

struct StockedSupply {
    Supply supply;
    Amount onHand;
    std::vector<Arrival> underWay;
    std::vector<Amount> needed;    ///< by day, from the first: of all use up to its end; its size is the horizon
    std::vector<Amount> expected;  ///< the same for what is expected; as long
};

struct SourcedSupplier {
    Supplier supplier;
    int leadDays = 0;  ///< from order to receipt, as long as the plan is to count on
};

struct OrderQuestion {
    QDate first;  ///< the first day on which an order may be placed
    QByteArray currency;
    std::vector<StockedSupply> supplies;
    std::vector<SourcedSupplier> suppliers;
    std::vector<Offer> offers;
};

struct PlannedLine {
    SupplyId supply;
    OfferId offer;
    int packs = 0;
    Money each;
    Money cost;
    QDate covers;  ///< the last day up to which the service level is kept with it
    friend bool operator==(const PlannedLine&, const PlannedLine&) = default;
};

struct PlannedOrder {
    SupplierId supplier;
    QDate on;
    QDate arrives;
    std::vector<PlannedLine> lines;  ///< by supply, then offer
    Money goods;
    Money freight;
    friend bool operator==(const PlannedOrder&, const PlannedOrder&) = default;
};

/// A supply that falls below its service level.
struct Shortage {
    SupplyId supply;
    QDate from;
    Amount missing;  ///< at most, up to the day on which the late order arrives
    friend bool operator==(const Shortage&, const Shortage&) = default;
};

/// The first order of a supplier.
struct NextOrder {
    size_t order = 0;                  ///< in OrderPlan::orders
    QDate orderBy;                     ///< the latest day that keeps every service level; invalid = it is not needed
    std::optional<Money> weekEarlier;  ///< what ordering a week earlier costs more; none = there is no such day or no room
    QDate lateArrival;                 ///< when it is placed a week later
    std::vector<Shortage> late;        ///< and what is short then
    friend bool operator==(const NextOrder&, const NextOrder&) = default;
};

struct OrderPlan {
    std::vector<PlannedOrder> orders;  ///< by day, then supplier
    std::vector<NextOrder> next;       ///< by supplier
    Money goods;
    Money freight;
    Money holding;  ///< of the expected stock, that which is there already included
    Money total;
    Money lowerBound;               ///< no plan costs less
    bool proven = false;            ///< the plan is the cheapest: nothing lies between total and lowerBound
    bool stopped = false;           ///< cancelled: what there is may be far from the best
    std::vector<Finding> findings;  ///< "orders.…": what could not be kept or planned, and what was left out
};

inline constexpr std::int64_t usualOrderEffort = 100'000'000;  ///< for four suppliers of five supplies each a tenth of a second

/// `effort` bounds the elementary steps; the plan depends on it, never on the time taken.
OrderPlan planOrders(const OrderQuestion& question, std::int64_t effort, const std::function<bool()>& cancelled);

}  // namespace laneward
