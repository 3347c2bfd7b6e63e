#include "core/supplies/joint_search.h"

#include <algorithm>

namespace laneward::ordering {

JointSearch::Result JointSearch::run(Cost limit, size_t width, std::int64_t& steps, const std::function<bool()>& cancelled) {
    const size_t supplies = m_problem.supplies.size();
    const int periods = m_shares.costs(0).periods();
    Result result;
    m_limit = limit;
    m_left = steps;
    m_missed = impossible;
    m_lots.assign(supplies, 0);
    m_layers = {{{{m_shares.bound(), 0, 0}}, std::vector<int>(supplies, 0)}};
    for (m_period = 0; m_period < periods && !m_layers.back().nodes.empty(); ++m_period) {
        m_options.assign(supplies, {});
        m_next = {};
        for (m_node = 0; m_node < int(m_layers.back().nodes.size()); ++m_node) {
            if (cancelled && cancelled()) {
                result.stopped = true;
                result.missed = m_shares.bound();
                return result;
            }
            choose(0, {m_layers.back().nodes[size_t(m_node)].bound});
        }
        trim(width);
        m_layers.push_back(std::move(m_next));
    }
    steps = m_left;
    result.missed = m_missed;
    if (int(m_layers.size()) == periods + 1 && !m_layers.back().nodes.empty()) {
        result.cost = m_layers.back().nodes.front().bound;
        result.lots = traced();
    }
    return result;
}

/// Without steps, only the first option of each supply is tried, so that a plan is found all the same.
void JointSearch::choose(size_t supply, const Draft& draft) {
    if (supply == m_lots.size()) return keep(draft);
    const Layer& layer = m_layers.back();
    const int bought = layer.bought[layer.nodes[size_t(m_node)].bought + supply];
    const std::vector<Option>& options = optionsOf(supply, bought);
    for (const Option& option : options) {
        if (draft.bound + option.regret >= m_limit) break;
        if (m_left <= 0 && &option != &options.front()) {
            m_missed = std::min(m_missed, draft.bound + option.regret);
            break;
        }
        --m_left;
        Draft next = draft;
        next.bound += option.regret;
        if (option.lot > 0) {
            const OrderCharge& charge = m_shares.charge(supply, m_period);
            const Cost purchase = m_problem.supplies[supply].purchase.of(option.lot);
            next.value += purchase;
            next.shares += charge.order;
            next.rebates += purchase + charge.order - charged(charge, purchase);
            next.empty = false;
        }
        m_lots[supply] = option.lot;
        choose(supply + 1, next);
    }
}

/// What the order costs beyond what its parts pay.
Cost JointSearch::surcharge(const Draft& draft) const {
    const Cost foreseen = m_shares.least(m_period);
    if (draft.empty) return -foreseen;
    const Cost freight = freightOf(m_problem.terms, draft.value);
    return isPossible(freight) ? freight - draft.shares + draft.rebates - foreseen : impossible;
}

void JointSearch::keep(const Draft& draft) {
    const Cost more = surcharge(draft);
    if (!isPossible(more) || draft.bound + more >= m_limit) return;
    const Layer& layer = m_layers.back();
    const size_t from = layer.nodes[size_t(m_node)].bought;
    m_next.nodes.push_back({draft.bound + more, m_node, m_next.bought.size()});
    for (size_t i = 0; i < m_lots.size(); ++i)
        m_next.bought.push_back(layer.bought[from + i] + m_lots[i]);
}

const std::vector<JointSearch::Option>& JointSearch::optionsOf(size_t supply, int bought) {
    const CostToGo& costs = m_shares.costs(supply);
    std::vector<std::vector<Option>>& known = m_options[supply];
    if (known.empty()) known.resize(size_t(costs.mostBought(m_period)) + 1 - size_t(costs.leastBought(m_period)));
    std::vector<Option>& options = known[size_t(bought - costs.leastBought(m_period))];
    if (!options.empty()) return options;
    for (int y = std::max(bought, costs.leastBought(m_period + 1)); y <= costs.mostBought(m_period + 1); ++y) {
        const Cost regret = costs.regret(m_period, bought, y - bought);
        if (isPossible(regret)) options.push_back({y - bought, regret});
    }
    std::stable_sort(options.begin(), options.end(), [](const Option& a, const Option& b) { return a.regret < b.regret; });
    return options;
}

/// By stock, the cheapest first.
bool JointSearch::isLess(const Node& a, const Node& b) const {
    const auto row = [&](const Node& node) { return m_next.bought.begin() + std::ptrdiff_t(node.bought); };
    const auto n = std::ptrdiff_t(m_lots.size());
    const auto order = std::lexicographical_compare_three_way(row(a), row(a) + n, row(b), row(b) + n);
    return order != 0 ? order < 0 : a.bound < b.bound;
}

/// One node for each stock, and no more than `width`.
void JointSearch::trim(size_t width) {
    std::vector<Node>& nodes = m_next.nodes;
    std::stable_sort(nodes.begin(), nodes.end(), [&](const Node& a, const Node& b) { return isLess(a, b); });
    const auto same = [&](const Node& a, const Node& b) {
        return std::equal(m_next.bought.begin() + std::ptrdiff_t(a.bought),
                          m_next.bought.begin() + std::ptrdiff_t(a.bought + m_lots.size()),
                          m_next.bought.begin() + std::ptrdiff_t(b.bought));
    };
    nodes.erase(std::unique(nodes.begin(), nodes.end(), same), nodes.end());
    std::stable_sort(nodes.begin(), nodes.end(), [](const Node& a, const Node& b) { return a.bound < b.bound; });
    const size_t kept = m_left > 0 ? width : 1;
    if (nodes.size() <= kept) return;
    m_missed = std::min(m_missed, nodes[kept].bound);
    nodes.resize(kept);
}

std::vector<std::vector<int>> JointSearch::traced() const {
    std::vector<std::vector<int>> lots(m_lots.size(), std::vector<int>(m_layers.size() - 1));
    int node = 0;
    for (size_t t = m_layers.size() - 1; t > 0; --t) {
        const Node& here = m_layers[t].nodes[size_t(node)];
        const Node& before = m_layers[t - 1].nodes[size_t(here.parent)];
        for (size_t i = 0; i < lots.size(); ++i)
            lots[i][t - 1] = m_layers[t].bought[here.bought + i] - m_layers[t - 1].bought[before.bought + i];
        node = here.parent;
    }
    return lots;
}

}  // namespace laneward::ordering
