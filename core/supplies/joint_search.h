// The search of all joint plans, period by period, with the bound of freight_shares.h. Internal to this room.
//
// A partial plan is what was bought of each supply before a period, and what any plan that goes on from there must cost: the
// bound, plus for each decision so far what it costs more than the prices foresaw. Of those with the same stock only the cheapest
// goes on, and none that reaches the limit. A pass keeps at most so many of each period, the best ones; when it never had to drop
// any, nothing below the limit was missed.
#pragma once

#include "core/supplies/freight_shares.h"

namespace laneward::ordering {

class JointSearch {
public:
    JointSearch(const JointProblem& problem, const FreightShares& shares) : m_problem(problem), m_shares(shares) {}

    struct Result {
        std::vector<std::vector<int>> lots;  ///< the best plan below the limit; empty = none was found
        Cost cost = impossible;
        Cost missed = impossible;  ///< a plan that the pass did not see costs no less
        bool stopped = false;
    };
    /// Takes what it uses off `steps`.
    Result run(Cost limit, size_t width, std::int64_t& steps, const std::function<bool()>& cancelled);

private:
    struct Option {
        int lot = 0;
        Cost regret = 0;
    };
    struct Node {
        Cost bound = 0;
        int parent = 0;
        size_t bought = 0;  ///< where its stock begins in its layer
    };
    struct Layer {
        std::vector<Node> nodes;
        std::vector<int> bought;  ///< a row for each node
    };
    struct Draft {  ///< an order that is being put together
        Cost bound = 0;
        Cost value = 0;   ///< of the goods
        Cost shares = 0;  ///< of those that take part
        Cost rebates = 0;
        bool empty = true;
    };

    void choose(size_t supply, const Draft& draft);
    void keep(const Draft& draft);
    Cost surcharge(const Draft& draft) const;
    const std::vector<Option>& optionsOf(size_t supply, int bought);
    void trim(size_t width);
    bool isLess(const Node& a, const Node& b) const;
    std::vector<std::vector<int>> traced() const;

    const JointProblem& m_problem;
    const FreightShares& m_shares;
    Cost m_limit = impossible;
    std::int64_t m_left = 0;
    Cost m_missed = impossible;
    int m_period = 0;
    int m_node = 0;
    std::vector<int> m_lots;                                  ///< of the draft, by supply
    std::vector<std::vector<std::vector<Option>>> m_options;  ///< of this period, by supply and state
    std::vector<Layer> m_layers;
    Layer m_next;
};

}  // namespace laneward::ordering
