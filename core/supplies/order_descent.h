// Good joint orders soon: local search over the periods in which orders are placed. Internal to this room.
//
// For given periods, supplies are planned one after the other, each exactly (lot_sizes.h), at the freight that it adds to or
// takes off the orders of the others as they stand, until none gets better. Then periods are moved, dropped and added as long as
// that helps. An order below the minimum is made dear, so that the way to a plan may lead past it.
#pragma once

#include "core/supplies/joint_orders.h"

namespace laneward::ordering {

class OrderDescent {
public:
    explicit OrderDescent(const JointProblem& problem) : m_problem(problem) {}

    /// Makes `best` better, by `trials` sets of periods at most.
    void improve(JointPlan& best, int trials);

private:
    using Periods = std::vector<int>;

    struct Draft {
        Periods open;
        std::vector<std::vector<int>> lots;  ///< by supply and period
        Cost cost = impossible;
    };

    std::vector<Draft> starts();
    void descend(Draft& at);
    Draft planned(const Periods& open);
    bool replan(size_t supply, Draft& draft, bool first) const;
    OrderCosts costsOf(size_t supply, const CostToGo& costs, const std::vector<Cost>& others) const;
    std::vector<Periods> neighbours(const Periods& open) const;
    Periods periodsOf(const std::vector<std::vector<int>>& lots) const;
    int periods() const { return int(m_problem.supplies.front().periods.size()); }
    int firstNeeded() const;

    const JointProblem& m_problem;
    int m_trials = 0;
};

}  // namespace laneward::ordering
