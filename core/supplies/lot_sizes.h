// Dynamic lot sizes of one supply: how much to order in which period at the least cost of packs, orders and holding.
//
//   minimise   sum over t of  c(x_t) + K_t [x_t > 0] + h_t y_t
//   where      y_t = x_1 + … + x_t,  least_t <= y_t <= most_t,  x_t a number of units that packs make up
//
// x_t is bought in period t, y_t by then; c is the price of packs (pack_costs.h), K_t the cost of an order, h_t that of holding
// one unit for the period. What is needed, how much the store holds and how long it keeps are all bounds on y_t. Costs of
// holding the stock that y_t adds to do not depend on the plan and are left out.
//
// Solved exactly by dynamic programming over (t, y): Wagner and Whitin, Dynamic version of the economic lot size model,
// Management Science 5 (1958), from memory; without their zero-inventory property, which packs, price breaks and limits break.
// Work: periods x (most - least)^2.
#pragma once

#include "core/supplies/pack_costs.h"

#include <optional>

namespace laneward::ordering {

struct LotPeriod {
    int least = 0;  ///< units that must have been bought by then
    int most = 0;   ///< and may have been
    Cost holding = 0;
    friend bool operator==(const LotPeriod&, const LotPeriod&) = default;
};

struct LotProblem {
    std::vector<LotPeriod> periods;
    PackCosts purchase;
};

/// By period and lot, what an order of so many units costs; 0 units may cost something too.
using OrderCosts = std::vector<std::vector<Cost>>;

/// Least costs from every state on. A state is a period that begins and what was bought before it.
class CostToGo {
public:
    /// Nothing may be bought beyond `mostUnits`.
    CostToGo(std::span<const LotPeriod> periods, int mostUnits);

    int longestLot(int period) const;  ///< costs are needed up to it
    void solve(OrderCosts costs);
    Cost least() const { return m_rows.front().front(); }  ///< `impossible` when the bounds cannot be kept
    /// Of periods from `period` on; `impossible` outside of the bounds.
    Cost from(int period, int bought) const;
    /// What an order of `lot` units then costs more than the best one does: 0 for that one.
    Cost regret(int period, int bought, int lot) const;
    /// The best lots, the smallest among equals; call only when least() is possible.
    std::vector<int> lots() const;
    /// Drops states that no plan of `limit` or less passes through, from the ends of each period's range.
    void narrow(Cost limit);

    std::int64_t work() const;  ///< pairs of states that solve() looks at
    int periods() const { return int(m_holding.size()); }
    int leastBought(int period) const { return m_first[size_t(period)]; }  ///< before the period
    int mostBought(int period) const { return m_first[size_t(period)] + int(m_rows[size_t(period)].size()) - 1; }

private:
    Cost best(int period, int bought, std::span<const Cost> next) const;
    std::vector<Cost> withHolding(int period) const;

    std::vector<Cost> m_holding;
    std::vector<int> m_first;               ///< the first state of each row
    std::vector<std::vector<Cost>> m_rows;  ///< one more than periods; the first has one state
    OrderCosts m_costs;
};

struct LotPlan {
    std::vector<int> lots;
    Cost cost = 0;
};

/// Nothing when the bounds cannot be kept.
std::optional<LotPlan> bestLots(const LotProblem& problem, std::span<const Cost> orderCosts);

}  // namespace laneward::ordering
