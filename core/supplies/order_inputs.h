// From supplies, suppliers and offers to periods, packs and bounds. Internal to this room.
//
// Days count from the question's first. Costs are thousandths of a minor unit.
#pragma once

#include "core/supplies/joint_orders.h"
#include "core/supplies/order_plan.h"

namespace laneward::ordering {

inline constexpr Cost costOfMinor = 1'000;
inline constexpr int longestHorizon = 1'100;  ///< days; what lies beyond is left out

/// The days on which a supplier takes orders that arrive within the horizon; period t lasts from its arrival to the next.
struct OrderCalendar {
    std::vector<int> orders;
    std::vector<int> arrivals;
    int horizon = 0;
    int periods() const { return int(orders.size()); }
    int end(int period) const { return period + 1 < periods() ? arrivals[size_t(period) + 1] : horizon; }
};

/// Day by day at first, later once a week.
OrderCalendar calendarOf(const SourcedSupplier& supplier, QDate first, int horizon);
bool takesOrders(const Supplier& supplier, QDate day);

/// A supply's stock without any order, by day.
struct StockCourse {
    std::vector<std::int64_t> missing;    ///< at its end, to the service level; below 0 = to spare
    std::vector<std::int64_t> stock;      ///< expected at its end, below 0 where it would run out
    std::vector<std::int64_t> available;  ///< all that there was up to it
    std::vector<std::int64_t> used;       ///< expected by its end
    std::int64_t usedBy(int day) const;   ///< also beyond the horizon, where use goes on as on average
};

StockCourse courseOf(const StockedSupply& supply, QDate first, int horizon);

/// A supply at one supplier.
struct SourcedSupply {
    size_t supply = 0;  ///< in the question
    std::vector<const Offer*> offers;
    std::vector<int> together;  ///< packs of each that are bought at a time: 1, unless that were too many steps
    std::int64_t unit = 1;      ///< in base units; packs hold whole numbers of them
    double holding = 0;         ///< cost of holding one unit for a day; rounded for each period
    LotProblem problem;
    std::vector<Finding> findings;
    bool isPossible() const { return !problem.periods.empty(); }
};

SourcedSupply sourced(const OrderQuestion& question, size_t supply, const Supplier& supplier, const StockCourse& course,
                      const OrderCalendar& calendar);

OrderTerms termsOf(const Supplier& supplier);

/// Of holding units for days, rounded.
Cost holdingOf(const SourcedSupply& supply, std::int64_t unitDays);

/// An amount as a finding prints it.
Value shownAmount(std::int64_t amount, SupplyKind kind);

}  // namespace laneward::ordering
