#include "core/supplies/order_descent.h"

#include <algorithm>

namespace laneward::ordering {

namespace {

constexpr int mostSweeps = 4;
constexpr int mostOrders = 16;  ///< of the evenly spaced sets that are tried first
constexpr Cost dearness = 4;    ///< of value that is missing to the minimum

/// Periods from one open period up to the next as one: nothing is bought in between.
std::vector<LotPeriod> joined(const std::vector<LotPeriod>& periods, const std::vector<int>& open) {
    std::vector<LotPeriod> joined;
    for (size_t k = 0; k < open.size(); ++k) {
        const int end = k + 1 < open.size() ? open[k + 1] : int(periods.size());
        LotPeriod all = periods[size_t(open[k])];
        for (int t = open[k] + 1; t < end; ++t) {
            all.least = std::max(all.least, periods[size_t(t)].least);
            all.most = std::min(all.most, periods[size_t(t)].most);
            all.holding += periods[size_t(t)].holding;
        }
        joined.push_back(all);
    }
    return joined;
}

Cost feltFreight(const OrderTerms& terms, Cost value) {
    if (value == 0) return 0;
    return value < terms.minimum ? terms.freight + dearness * (terms.minimum - value) : freightOf(terms, value);
}

/// Of the packs alone.
OrderCosts purchasesOf(const LotProblem& supply, const CostToGo& costs) {
    OrderCosts prices;
    for (int k = 0; k < costs.periods(); ++k) {
        std::vector<Cost>& price = prices.emplace_back();
        for (int x = 0; x <= costs.longestLot(k); ++x)
            price.push_back(supply.purchase.of(x));
    }
    return prices;
}

}  // namespace

void OrderDescent::improve(JointPlan& best, int trials) {
    m_trials = trials;
    std::vector<Draft> drafts = starts();
    if (best.isFound()) drafts.insert(drafts.begin(), {periodsOf(best.lots), best.lots, best.cost});
    for (Draft& draft : drafts) {
        descend(draft);
        if (draft.cost >= best.cost) continue;
        best.lots = std::move(draft.lots);
        best.cost = draft.cost;
    }
}

/// To the first neighbour that is better, as long as there is one.
void OrderDescent::descend(Draft& at) {
    bool better = true;
    while (better && m_trials > 0) {
        better = false;
        for (const Periods& open : neighbours(at.open)) {
            if (m_trials <= 0) break;
            Draft next = planned(open);
            if (next.cost >= at.cost) continue;
            at = std::move(next);
            better = true;
            break;
        }
    }
}

/// Evenly spaced sets that begin when something is first needed, the best first.
std::vector<OrderDescent::Draft> OrderDescent::starts() {
    std::vector<Draft> drafts;
    const int first = firstNeeded();
    for (int orders = 1; orders <= std::min(mostOrders, periods() - first); ++orders) {
        Periods open;
        for (int k = 0; k < orders; ++k)
            open.push_back(first + (periods() - first) * k / orders);
        drafts.push_back(planned(open));
    }
    std::stable_sort(drafts.begin(), drafts.end(), [](const Draft& a, const Draft& b) { return a.cost < b.cost; });
    return drafts;
}

int OrderDescent::firstNeeded() const {
    int first = periods() - 1;
    for (const LotProblem& supply : m_problem.supplies) {
        for (int t = 0; t < first; ++t) {
            if (supply.periods[size_t(t)].least > 0) first = t;
        }
    }
    return std::max(0, first);
}

OrderDescent::Draft OrderDescent::planned(const Periods& open) {
    --m_trials;
    const size_t supplies = m_problem.supplies.size();
    Draft draft{open, std::vector(supplies, std::vector<int>(size_t(periods()), 0)), impossible};
    for (int sweep = 0; sweep < mostSweeps; ++sweep) {
        const std::vector<std::vector<int>> before = draft.lots;
        for (size_t i = 0; i < supplies; ++i) {
            if (!replan(i, draft, sweep == 0)) return draft;
        }
        if (draft.lots == before) break;
    }
    draft.cost = costOf(m_problem, draft.lots);
    draft.open = periodsOf(draft.lots);
    return draft;
}

/// At first every period of `draft` is taken to be paid for; then as the others' lots are.
bool OrderDescent::replan(size_t supply, Draft& draft, bool first) const {
    const Periods& open = draft.open;
    std::vector<std::vector<int>>& lots = draft.lots;
    const LotProblem& own = m_problem.supplies[supply];
    if (open.empty() || (open.front() > 0 && own.periods[size_t(open.front()) - 1].least > 0)) return false;
    CostToGo costs(joined(own.periods, open), own.purchase.mostUnits());
    std::vector<Cost> others(open.size(), 0);
    for (size_t k = 0; k < open.size() && !first; ++k) {
        for (size_t i = 0; i < lots.size(); ++i)
            others[k] += i == supply ? 0 : m_problem.supplies[i].purchase.of(lots[i][size_t(open[k])]);
    }
    costs.solve(first ? purchasesOf(own, costs) : costsOf(supply, costs, others));
    if (!isPossible(costs.least())) return false;
    const std::vector<int> best = costs.lots();
    for (size_t k = 0; k < open.size(); ++k)
        lots[supply][size_t(open[k])] = best[k];
    return true;
}

/// Of the packs, and what they change of the freight.
OrderCosts OrderDescent::costsOf(size_t supply, const CostToGo& costs, const std::vector<Cost>& others) const {
    OrderCosts prices;
    for (int k = 0; k < costs.periods(); ++k) {
        std::vector<Cost>& price = prices.emplace_back();
        const Cost standing = others[size_t(k)];
        for (int x = 0; x <= costs.longestLot(k); ++x) {
            const Cost purchase = m_problem.supplies[supply].purchase.of(x);
            const bool possible = isPossible(purchase);
            price.push_back(possible ? purchase + feltFreight(m_problem.terms, standing + purchase) : impossible);
        }
    }
    return prices;
}

OrderDescent::Periods OrderDescent::periodsOf(const std::vector<std::vector<int>>& lots) const {
    Periods open;
    for (int t = 0; t < periods(); ++t) {
        if (std::any_of(lots.begin(), lots.end(), [&](const auto& own) { return own[size_t(t)] > 0; })) open.push_back(t);
    }
    return open;
}

std::vector<OrderDescent::Periods> OrderDescent::neighbours(const Periods& open) const {
    std::vector<Periods> all;
    const auto offer = [&](Periods next) {
        std::sort(next.begin(), next.end());
        next.erase(std::unique(next.begin(), next.end()), next.end());
        if (!next.empty() && next.front() >= 0 && next.back() < periods()) all.push_back(std::move(next));
    };
    for (const int by : {-1, 1, -2, 2, -4, 4}) {
        for (size_t k = 0; k < open.size(); ++k) {
            Periods next = open;
            next[k] += by;
            offer(next);
        }
    }
    for (size_t k = 0; k < open.size(); ++k) {
        Periods fewer = open;
        fewer.erase(fewer.begin() + std::ptrdiff_t(k));
        offer(fewer);
        Periods more = open;
        more.push_back((open[k] + (k + 1 < open.size() ? open[k + 1] : periods())) / 2);
        offer(more);
    }
    return all;
}

}  // namespace laneward::ordering
