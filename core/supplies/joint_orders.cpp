#include "core/supplies/joint_orders.h"

#include "core/supplies/joint_search.h"
#include "core/supplies/order_descent.h"

#include <algorithm>

namespace laneward::ordering {

namespace {

constexpr int mostRounds = 160;
constexpr int leastTrials = 20;
constexpr int mostTrials = 160;
constexpr std::int64_t stepsOfGo = 160;            ///< a go of the search takes as long as so many elementary steps
constexpr Cost beyondAll = 1'000'000'000'000'000;  ///< no plan costs as much
constexpr size_t firstWidth = 8;
constexpr size_t widening = 8;

/// Freight is never paid where even the least order comes free.
JointProblem simplified(JointProblem problem) {
    if (problem.terms.freeFrom <= problem.terms.minimum) problem.terms = {0, impossible, problem.terms.minimum};
    return problem;
}

/// How much above the bound a plan is looked for at first.
Cost firstSlack(const JointProblem& problem) {
    const OrderTerms& terms = problem.terms;
    return 1 + terms.freight + terms.minimum + (isPossible(terms.freeFrom) ? terms.freeFrom : 0);
}

class Planner {
public:
    Planner(const JointProblem& problem, std::int64_t effort, const std::function<bool()>& cancelled)
        : m_problem(problem), m_shares(problem), m_effort(effort), m_cancelled(cancelled) {}

    // A quarter of the effort goes to the descent, two to the bound and one to the search.
    JointPlan plan() {
        const std::int64_t work = m_shares.work();
        const auto trials = std::clamp<std::int64_t>(m_effort / 2 / work, leastTrials, mostTrials);
        OrderDescent(m_problem).improve(m_plan, int(trials));
        raiseBound(m_effort / 4);
        raiseBound(m_effort / 4);
        search(m_effort / 4 / stepsOfGo);
        return m_plan;
    }

private:
    bool isOver() {
        m_plan.stopped = m_plan.stopped || (m_cancelled && m_cancelled());
        return m_plan.stopped || m_plan.isProven();
    }

    void raiseBound(std::int64_t effort) {
        m_plan.lowerBound = std::max(m_plan.lowerBound, std::min(m_plan.cost, m_shares.bound()));
        if (isOver()) return;
        if (m_plan.isFound()) m_shares.narrow(m_plan.cost);
        m_shares.improve(int(std::clamp<std::int64_t>(effort / m_shares.work(), leastTrials, mostRounds / 2)), m_plan);
        m_plan.lowerBound = std::max(m_plan.lowerBound, std::min(m_plan.cost, m_shares.bound()));
    }

    // Passes grow wider until one misses nothing; what each finds makes the states fewer for the next. Until a plan is known,
    // the limit is a guess that grows.
    void search(std::int64_t gos) {
        Cost slack = firstSlack(m_problem);
        for (size_t width = firstWidth; gos > 0 && !isOver(); width *= widening) {
            const Cost limit = std::min({m_plan.cost, m_shares.bound() + slack, impossible});
            const JointSearch::Result found = JointSearch(m_problem, m_shares).run(limit, width, gos, m_cancelled);
            if (limit < m_plan.cost) slack = slack > beyondAll ? impossible : slack * Cost(widening);
            if (!found.lots.empty()) {
                m_plan.lots = found.lots;
                m_plan.cost = found.cost;
            }
            m_plan.stopped = found.stopped;
            m_plan.lowerBound = std::max(m_plan.lowerBound, std::min({m_plan.cost, found.missed, limit}));
            if (m_plan.isFound() && !isOver()) m_shares.narrow(m_plan.cost);
        }
    }

    const JointProblem& m_problem;
    FreightShares m_shares;
    std::int64_t m_effort;
    const std::function<bool()>& m_cancelled;
    JointPlan m_plan;
};

}  // namespace

Cost freightOf(const OrderTerms& terms, Cost value) {
    if (value < terms.minimum) return impossible;
    return value < terms.freeFrom ? terms.freight : 0;
}

Cost costOf(const JointProblem& problem, const std::vector<std::vector<int>>& lots) {
    Cost cost = 0;
    std::vector<int> bought(lots.size(), 0);
    const size_t periods = lots.empty() ? 0 : lots.front().size();
    for (size_t t = 0; t < periods; ++t) {
        Cost value = 0;
        bool ordered = false;
        for (size_t i = 0; i < lots.size(); ++i) {
            const LotProblem& supply = problem.supplies[i];
            const Cost purchase = supply.purchase.of(lots[i][t]);
            if (!isPossible(purchase)) return impossible;
            ordered = ordered || lots[i][t] > 0;
            bought[i] += lots[i][t];
            value += purchase;
            cost += supply.periods[t].holding * bought[i];
        }
        const Cost freight = ordered ? freightOf(problem.terms, value) : 0;
        if (!isPossible(freight)) return impossible;
        cost += value + freight;
    }
    return cost;
}

JointPlan bestOrders(const JointProblem& problem, std::int64_t effort, const std::function<bool()>& cancelled) {
    if (problem.supplies.empty()) return {{}, 0, 0, false};
    const JointProblem asked = simplified(problem);
    return Planner(asked, effort, cancelled).plan();
}

}  // namespace laneward::ordering
