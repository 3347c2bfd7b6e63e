// Orders of several supplies from one supplier at the least cost together: an order's freight is shared by all that is in it,
// falls away from a value of goods on, and an order below a minimum is not taken.
//
//   minimise   sum over t of  f(v_t) + sum over i of c_i(x_it) + h_it y_it
//   where      v_t = sum over i of c_i(x_it), the goods' value; f(0) = 0; f(v) = freight for minimum <= v < freeFrom, then 0;
//              each supply's x and y as in lot_sizes.h: units are always bought in the cheapest packs that make them up, also
//              where dearer ones would reach a minimum
//
// First a local search finds a good plan (order_descent.h). Then prices are put on taking part in an order, so that supplies can
// be planned one by one; the best such prices bound the cost from below (freight_shares.h). Last, all plans are searched period
// by period, leaving what the bound rules out (joint_search.h). When the search ends before its effort does, the plan is proven;
// else its gap is known.
#pragma once

#include "core/supplies/lot_sizes.h"

#include <functional>

namespace laneward::ordering {

/// What a supplier asks of every order.
struct OrderTerms {
    Cost freight = 0;
    Cost freeFrom = impossible;  ///< value of goods
    Cost minimum = 0;            ///< value of goods
};

/// Of an order of goods of this value; `impossible` below the minimum.
Cost freightOf(const OrderTerms& terms, Cost value);

struct JointProblem {
    std::vector<LotProblem> supplies;  ///< all with the same number of periods
    OrderTerms terms;
};

struct JointPlan {
    std::vector<std::vector<int>> lots;  ///< by supply and period; empty = no plan was found
    Cost cost = impossible;
    Cost lowerBound = -impossible;  ///< no plan costs less; `impossible` = there is none
    bool stopped = false;           ///< cancelled
    bool isFound() const { return !lots.empty(); }
    bool isProven() const { return cost <= lowerBound; }
};

/// What the lots cost; `impossible` when an order is below the minimum or beyond what packs make up. Bounds are not looked at.
Cost costOf(const JointProblem& problem, const std::vector<std::vector<int>>& lots);

/// `effort` bounds the elementary steps; the plan depends on it, never on the time taken.
JointPlan bestOrders(const JointProblem& problem, std::int64_t effort, const std::function<bool()>& cancelled);

}  // namespace laneward::ordering
