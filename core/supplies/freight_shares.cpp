#include "core/supplies/freight_shares.h"

#include <algorithm>
#include <cmath>

namespace laneward::ordering {

namespace {

constexpr double firstStep = 0.1;       ///< of the gap
constexpr double shortestStep = 0.002;  ///< then the bound is as good as it gets
constexpr double shorter = 0.66;
constexpr double longer = 1.1;
constexpr int patience = 5;     ///< rounds without a better bound before steps get shorter
constexpr double newest = 0.1;  ///< part of the last slope in the mean

}  // namespace

Cost charged(const OrderCharge& charge, Cost purchase) {
    const Cost rebate = (charge.rebate * purchase + rebateWhole - 1) / rebateWhole;
    return purchase - rebate + charge.order;
}

FreightShares::FreightShares(const JointProblem& problem)
    : m_problem(problem), m_periods(problem.supplies.empty() ? 0 : problem.supplies.front().periods.size()) {
    const OrderTerms& terms = problem.terms;
    m_scale = std::max(isPossible(terms.freeFrom) ? terms.freeFrom : 0, terms.minimum);
    for (const LotProblem& supply : problem.supplies)
        m_costs.emplace_back(supply.periods, supply.purchase.mostUnits());
    m_charges.assign(m_costs.size(), std::vector<OrderCharge>(m_periods));
    m_modes.assign(m_periods, Mode::None);
    m_least.assign(m_periods, 0);
    const double share = double(terms.freight) / double(std::max<size_t>(1, m_costs.size()));
    m_best = {std::vector(m_costs.size(), std::vector<double>(m_periods, share)),
              std::vector<double>(m_periods, isPossible(terms.freeFrom) ? double(terms.freight) : 0)};
    m_bound = solve(m_best);
}

Cost FreightShares::solve(const Prices& prices) {
    Cost bound = 0;
    for (size_t i = 0; i < m_costs.size(); ++i) {
        for (size_t t = 0; t < m_periods; ++t) {
            const double rebate = m_scale > 0 ? prices.rebates[t] / double(m_scale) : 0;
            m_charges[i][t] = {std::llround(prices.shares[i][t]), std::llround(std::min(1.0, rebate) * double(rebateWhole))};
        }
        m_costs[i].solve(costsOf(i));
        if (!isPossible(m_costs[i].least())) return impossible;
        bound += m_costs[i].least();
    }
    for (int t = 0; t < int(m_periods); ++t) {
        m_modes[size_t(t)] = cheapest(t);
        bound += m_least[size_t(t)];
    }
    return bound;
}

OrderCosts FreightShares::costsOf(size_t supply) const {
    OrderCosts costs(m_periods);
    for (size_t t = 0; t < m_periods; ++t) {
        costs[t].assign(size_t(m_costs[supply].longestLot(int(t))) + 1, impossible);
        costs[t][0] = 0;
        for (size_t x = 1; x < costs[t].size(); ++x) {
            const Cost purchase = m_problem.supplies[supply].purchase.of(int(x));
            if (isPossible(purchase)) costs[t][x] = charged(m_charges[supply][t], purchase);
        }
    }
    return costs;
}

/// What the period's order would do for the shares that it takes.
FreightShares::Mode FreightShares::cheapest(int period) {
    const OrderTerms& terms = m_problem.terms;
    Cost shares = 0;
    for (const std::vector<OrderCharge>& charges : m_charges)
        shares += charges[size_t(period)].order;
    const Cost rebate = m_charges.front()[size_t(period)].rebate;
    const Cost paid = terms.freight + rebate * terms.minimum / rebateWhole - shares;
    const Cost free = isPossible(terms.freeFrom) ? rebate * terms.freeFrom / rebateWhole - shares : impossible;
    m_least[size_t(period)] = std::min({Cost{0}, paid, free});
    if (m_least[size_t(period)] == 0) return Mode::None;
    return paid <= free ? Mode::Paid : Mode::Free;
}

std::vector<std::vector<int>> FreightShares::lots() const {
    std::vector<std::vector<int>> lots;
    for (const CostToGo& costs : m_costs)
        lots.push_back(costs.lots());
    return lots;
}

FreightShares::Prices FreightShares::slope(const std::vector<std::vector<int>>& lots) const {
    Prices slope = m_best;
    for (size_t t = 0; t < m_periods; ++t) {
        const Mode mode = m_modes[t];
        Cost value = 0;
        for (size_t i = 0; i < lots.size(); ++i) {
            value += m_problem.supplies[i].purchase.of(lots[i][t]);
            slope.shares[i][t] = (lots[i][t] > 0 ? 1 : 0) - (mode == Mode::None ? 0 : 1);
        }
        Cost asked = 0;
        if (mode == Mode::Paid) asked = m_problem.terms.minimum;
        if (mode == Mode::Free) asked = m_problem.terms.freeFrom;
        slope.rebates[t] = m_scale > 0 ? double(asked - value) / double(m_scale) : 0;
    }
    return slope;
}

/// Price by price.
template <class Use>
void FreightShares::each(Prices& a, const Prices& b, Use use) const {
    for (size_t t = 0; t < m_periods; ++t) {
        use(a.rebates[t], b.rebates[t]);
        for (size_t i = 0; i < m_costs.size(); ++i)
            use(a.shares[i][t], b.shares[i][t]);
    }
}

/// The square of the slope, without what would only lead below nothing.
double FreightShares::steepness(const Prices& slope) const {
    double sum = 0;
    Prices from = m_best;
    each(from, slope, [&](double price, double by) { sum += price > 0 || by > 0 ? by * by : 0; });
    return sum;
}

FreightShares::Prices FreightShares::moved(const Prices& slope, double length) const {
    Prices to = m_best;
    each(to, slope, [&](double& price, double by) { price = std::max(0.0, price + length * by); });
    return to;
}

void FreightShares::improve(int rounds, JointPlan& best) {
    double step = firstStep;
    int idle = 0;
    if (!isPossible(m_bound)) return;
    Prices mean = slope(lots());
    for (int round = 0; round < rounds && step >= shortestStep; ++round) {
        const double gap = double((isPossible(best.cost) ? best.cost : m_bound + m_scale) - m_bound);
        const double square = steepness(mean);
        if (square <= 0 || gap <= 0) break;
        const Prices prices = moved(mean, step * gap / square);
        const Cost bound = solve(prices);
        const std::vector<std::vector<int>> own = lots();
        const Cost cost = costOf(m_problem, own);
        if (cost < best.cost) {
            best.cost = cost;
            best.lots = own;
        }
        const Prices last = slope(own);
        double turn = 0;
        each(mean, last, [&](double& kept, double by) {
            turn += kept * by;
            kept += newest * (by - kept);
        });
        ++idle;
        if (bound > m_bound) {
            m_bound = bound;
            m_best = prices;
            if (turn > 0) step *= longer;
            idle = 0;
        }
        if (idle >= patience) {
            step *= shorter;
            idle = 0;
        }
    }
    m_bound = solve(m_best);
}

std::int64_t FreightShares::work() const {
    std::int64_t work = 1;
    for (const CostToGo& costs : m_costs)
        work += costs.work();
    return work;
}

void FreightShares::narrow(Cost cost) {
    for (CostToGo& costs : m_costs)
        costs.narrow(cost - 1 - m_bound + costs.least());
    m_bound = solve(m_best);
}

}  // namespace laneward::ordering
