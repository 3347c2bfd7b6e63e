// Which supplier each supply comes from, where several sell it. Internal to this room.
//
// Every way of sharing the supplies out (an assignment) is planned roughly, each supplier's share once; what cannot beat the best
// is left, and the best ones are planned with more effort. A bound holds for all assignments that were looked at.
#pragma once

#include "core/supplies/order_inputs.h"

#include <map>

namespace laneward::ordering {

/// What planning works on: supplies and suppliers by id.
struct OrderInputs {
    OrderQuestion question;
    int horizon = 0;
    std::vector<StockCourse> courses;                   ///< by supply
    std::vector<OrderCalendar> calendars;               ///< by supplier
    std::vector<std::map<size_t, SourcedSupply>> ways;  ///< by supply: the suppliers that it may come from
};

inline constexpr size_t nowhere = size_t(-1);

struct SupplierShare {
    std::vector<size_t> supplies;
    JointPlan plan;
    bool belowMinimum = false;  ///< no plan keeps the minimum order; planned without
};

struct Assignment {
    std::vector<size_t> supplier;       ///< by supply; `nowhere` = none sells it
    std::vector<SupplierShare> shares;  ///< by supplier
    Cost cost = 0;
    Cost lowerBound = 0;
    bool stopped = false;
    std::vector<size_t> fixed;  ///< supplies for which only the supplier that is cheapest alone was looked at
};

Assignment bestAssignment(const OrderInputs& inputs, std::int64_t effort, const std::function<bool()>& cancelled);

}  // namespace laneward::ordering
