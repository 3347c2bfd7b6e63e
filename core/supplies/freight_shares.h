// A bound on the cost of joint orders: Lagrangian relaxation of what couples the supplies. Internal to this room.
//
// Supply i pays a share s_it >= 0 for each order in period t, and gets a rebate r_t >= 0 on the value of what it buys then; the
// order itself takes the shares and pays freight and rebates. For any shares and rebates
//
//   sum over i of least (supply i alone, with s_it and r_t)
//   + sum over t of min(0, freight + r_t minimum - S_t, r_t freeFrom - S_t),   S_t = sum over i of s_it
//
// is no more than the least cost: an order that pays freight holds goods of the minimum at least, one that does not of freeFrom.
// The best prices are looked for by the volume algorithm: from the best prices so far along the mean of the slopes seen, which
// for a share is whether the supply takes part less whether the order is placed, for a rebate the value that the order must have
// less what it has. Barahona and Anbil, The volume algorithm, Mathematical Programming 87 (2000), from memory.
#pragma once

#include "core/supplies/joint_orders.h"

namespace laneward::ordering {

/// What an order adds to the price of its packs, and takes off it.
struct OrderCharge {
    Cost order = 0;
    Cost rebate = 0;  ///< part of the price in rebateWhole-ths, rounded up
};
inline constexpr Cost rebateWhole = 65'536;

/// The price of packs with the charge.
Cost charged(const OrderCharge& charge, Cost purchase);

class FreightShares {
public:
    explicit FreightShares(const JointProblem& problem);

    /// Raises the bound towards the cost of `best`, and makes `best` better where the supplies' own plans happen to be.
    void improve(int rounds, JointPlan& best);
    /// Drops states of each supply that no plan cheaper than `cost` passes through.
    void narrow(Cost cost);

    Cost bound() const { return m_bound; }
    std::int64_t work() const;  ///< of a round
    const CostToGo& costs(size_t supply) const { return m_costs[supply]; }
    const OrderCharge& charge(size_t supply, int period) const { return m_charges[supply][size_t(period)]; }
    Cost least(int period) const { return m_least[size_t(period)]; }  ///< what the order itself adds, at most 0

private:
    struct Prices {
        std::vector<std::vector<double>> shares;  ///< by supply and period
        std::vector<double> rebates;              ///< by period, on goods of m_scale
    };
    enum class Mode { None, Paid, Free };

    Cost solve(const Prices& prices);
    OrderCosts costsOf(size_t supply) const;
    Mode cheapest(int period);
    std::vector<std::vector<int>> lots() const;
    Prices slope(const std::vector<std::vector<int>>& lots) const;
    template <class Use>
    void each(Prices& a, const Prices& b, Use use) const;
    Prices moved(const Prices& slope, double length) const;
    double steepness(const Prices& slope) const;

    const JointProblem& m_problem;
    size_t m_periods = 0;
    Cost m_scale = 0;  ///< the value that rebates are counted on; 0 = value does not matter
    std::vector<CostToGo> m_costs;
    std::vector<std::vector<OrderCharge>> m_charges;  ///< by supply and period
    std::vector<Mode> m_modes;                        ///< by period
    std::vector<Cost> m_least;                        ///< by period
    Prices m_best;
    Cost m_bound = -impossible;
};

}  // namespace laneward::ordering
