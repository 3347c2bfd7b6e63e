#include "core/supplies/lot_sizes.h"

#include <algorithm>

namespace laneward::ordering {

// What was bought never falls, so the bounds of one period reach on to the others.
CostToGo::CostToGo(std::span<const LotPeriod> periods, int mostUnits) {
    const size_t n = periods.size();
    std::vector<int> least(n + 1, 0), most(n + 1, 0);
    for (size_t t = 0; t < n; ++t) {
        m_holding.push_back(periods[t].holding);
        least[t + 1] = std::max(least[t], periods[t].least);
        most[t + 1] = std::min(periods[t].most, mostUnits);
    }
    for (size_t t = n; t-- > 1;)
        most[t] = std::min(most[t], most[t + 1]);
    for (size_t t = 0; t <= n; ++t) {
        m_first.push_back(least[t]);
        m_rows.emplace_back(size_t(std::max(0, most[t] - least[t] + 1)), impossible);
    }
}

int CostToGo::longestLot(int period) const { return std::max(0, mostBought(period + 1) - leastBought(period)); }

std::int64_t CostToGo::work() const {
    std::int64_t work = 0;
    for (size_t t = 0; t + 1 < m_rows.size(); ++t)
        work += std::int64_t(m_rows[t].size()) * std::int64_t(m_rows[t + 1].size()) / 2 + 1;
    return work;
}

void CostToGo::solve(OrderCosts costs) {
    m_costs = std::move(costs);
    std::fill(m_rows.back().begin(), m_rows.back().end(), 0);
    for (int t = periods() - 1; t >= 0; --t) {
        const std::vector<Cost> next = withHolding(t);
        std::vector<Cost>& row = m_rows[size_t(t)];
        for (size_t y = 0; y < row.size(); ++y)
            row[y] = best(t, leastBought(t) + int(y), next);
    }
}

/// Costs of the states behind `period`, with the holding in it.
std::vector<Cost> CostToGo::withHolding(int period) const {
    std::vector<Cost> next = m_rows[size_t(period) + 1];
    Cost holding = m_holding[size_t(period)] * leastBought(period + 1);
    for (Cost& cost : next) {
        if (isPossible(cost)) cost += holding;
        holding += m_holding[size_t(period)];
    }
    return next;
}

Cost CostToGo::best(int period, int bought, std::span<const Cost> next) const {
    const int first = leastBought(period + 1);
    const size_t skipped = size_t(std::max(0, bought - first));
    if (skipped >= next.size()) return impossible;
    const Cost* order = m_costs[size_t(period)].data() + std::max(0, first - bought);
    Cost least = impossible;
    for (const Cost cost : next.subspan(skipped))
        least = std::min(least, cost + *order++);
    return isPossible(least) ? least : impossible;
}

Cost CostToGo::from(int period, int bought) const {
    const std::vector<Cost>& row = m_rows[size_t(period)];
    const int index = bought - leastBought(period);
    return index < 0 || index >= int(row.size()) ? impossible : row[size_t(index)];
}

Cost CostToGo::regret(int period, int bought, int lot) const {
    const Cost rest = from(period + 1, bought + lot);
    const Cost order = isPossible(rest) ? m_costs[size_t(period)][size_t(lot)] : impossible;
    if (!isPossible(order)) return impossible;
    return order + m_holding[size_t(period)] * (bought + lot) + rest - from(period, bought);
}

std::vector<int> CostToGo::lots() const {
    std::vector<int> lots;
    int bought = 0;
    for (int t = 0; t < periods(); ++t) {
        int lot = std::max(0, leastBought(t + 1) - bought);
        while (regret(t, bought, lot) > 0)
            ++lot;
        lots.push_back(lot);
        bought += lot;
    }
    return lots;
}

void CostToGo::narrow(Cost limit) {
    std::vector<Cost> before{0};  // least cost of coming to each state, with the holding up to there
    for (int t = 0; t < periods(); ++t) {
        const size_t row = size_t(t) + 1;
        std::vector<Cost> here(m_rows[row].size(), impossible);
        for (int a = 0; a < int(before.size()); ++a) {
            if (!isPossible(before[size_t(a)])) continue;
            const int bought = leastBought(t) + a;
            for (int y = std::max(bought, leastBought(t + 1)); y <= mostBought(t + 1); ++y) {
                const Cost order = m_costs[size_t(t)][size_t(y - bought)];
                if (!isPossible(order)) continue;
                Cost& cost = here[size_t(y - leastBought(t + 1))];
                cost = std::min(cost, before[size_t(a)] + order + m_holding[size_t(t)] * y);
            }
        }
        size_t first = 0, last = here.size();
        const auto useless = [&](size_t i) { return here[i] + m_rows[row][i] > limit; };
        while (first < last && useless(first))
            ++first;
        while (last > first && useless(last - 1))
            --last;
        before.assign(here.begin() + std::ptrdiff_t(first), here.begin() + std::ptrdiff_t(last));
        m_rows[row] = {m_rows[row].begin() + std::ptrdiff_t(first), m_rows[row].begin() + std::ptrdiff_t(last)};
        m_first[row] += int(first);
    }
}

std::optional<LotPlan> bestLots(const LotProblem& problem, std::span<const Cost> orderCosts) {
    CostToGo costs(problem.periods, problem.purchase.mostUnits());
    OrderCosts prices;
    for (int t = 0; t < costs.periods(); ++t) {
        std::vector<Cost>& price = prices.emplace_back(1, 0);
        for (int x = 1; x <= costs.longestLot(t); ++x)
            price.push_back(problem.purchase.of(x) + orderCosts[size_t(t)]);
    }
    costs.solve(std::move(prices));
    if (!isPossible(costs.least())) return std::nullopt;
    return LotPlan{costs.lots(), costs.least()};
}

}  // namespace laneward::ordering
