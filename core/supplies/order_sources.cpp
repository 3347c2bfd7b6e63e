#include "core/supplies/order_sources.h"

#include <algorithm>

namespace laneward::ordering {

namespace {

constexpr size_t mostAssignments = 32;
constexpr int mostRefined = 3;
/// Of a plan below the minimum order: any other way of sharing out is better.
constexpr Cost reproach = 100'000'000'000'000;

/// Without freight, and in lots of its own.
Cost costAlone(const SourcedSupply& way) {
    const std::optional<LotPlan> plan = bestLots(way.problem, std::vector<Cost>(way.problem.periods.size(), 0));
    return plan ? plan->cost : impossible;
}

class Sharing {
public:
    Sharing(const OrderInputs& inputs, std::int64_t effort, const std::function<bool()>& cancelled)
        : m_inputs(inputs), m_effort(effort), m_cancelled(cancelled) {}

    Assignment best() {
        listAssignments();
        if (m_all.size() == 1) return planned(m_all.front(), m_effort);
        std::vector<Assignment> rough;
        for (const std::vector<size_t>& suppliers : m_all)
            rough.push_back(planned(suppliers, m_effort / 16));
        std::stable_sort(rough.begin(), rough.end(), [](const Assignment& a, const Assignment& b) { return a.cost < b.cost; });
        return refined(std::move(rough));
    }

private:
    /// Supplies with a choice, the closest choices first, share out as many ways as are allowed.
    void listAssignments() {
        struct Choice {
            size_t supply = 0;
            std::vector<size_t> suppliers;  ///< the cheapest first
            Cost margin = 0;
        };
        std::vector<Choice> choices;
        std::vector<size_t> first;
        for (size_t i = 0; i < m_inputs.ways.size(); ++i) {
            std::vector<std::pair<Cost, size_t>> order;
            for (const auto& [supplier, way] : m_inputs.ways[i])
                order.emplace_back(m_inputs.ways[i].size() > 1 ? costAlone(way) : 0, supplier);
            std::sort(order.begin(), order.end());
            first.push_back(order.empty() ? nowhere : order.front().second);
            if (order.size() < 2) continue;
            Choice choice{i, {}, order[1].first - order[0].first};
            for (const auto& [cost, supplier] : order)
                choice.suppliers.push_back(supplier);
            choices.push_back(std::move(choice));
        }
        std::stable_sort(choices.begin(), choices.end(), [](const Choice& a, const Choice& b) { return a.margin < b.margin; });
        m_all = {first};
        for (const Choice& choice : choices) {
            if (m_all.size() * choice.suppliers.size() > mostAssignments) {
                m_fixed.push_back(choice.supply);
                continue;
            }
            const std::vector<std::vector<size_t>> before = m_all;
            for (size_t k = 1; k < choice.suppliers.size(); ++k) {
                for (std::vector<size_t> next : before) {
                    next[choice.supply] = choice.suppliers[k];
                    m_all.push_back(std::move(next));
                }
            }
        }
        std::sort(m_fixed.begin(), m_fixed.end());
    }

    /// With more effort, as long as others might be cheaper than the best.
    Assignment refined(std::vector<Assignment> rough) {
        Assignment best = rough.front();
        for (int k = 0; k < mostRefined && k < int(rough.size()); ++k) {
            if (k > 0 && rough[size_t(k)].lowerBound >= best.cost) continue;
            rough[size_t(k)] = planned(rough[size_t(k)].supplier, m_effort / (2 * mostRefined));
            if (rough[size_t(k)].cost < best.cost || k == 0) best = rough[size_t(k)];
        }
        for (const Assignment& other : rough)
            best.lowerBound = std::min(best.lowerBound, other.lowerBound);
        return best;
    }

    Assignment planned(const std::vector<size_t>& suppliers, std::int64_t effort) {
        Assignment made;
        made.supplier = suppliers;
        made.fixed = m_fixed;
        const auto supplied = std::int64_t(suppliers.size());
        for (size_t s = 0; s < m_inputs.question.suppliers.size(); ++s) {
            std::vector<size_t> own;
            for (size_t i = 0; i < suppliers.size(); ++i) {
                if (suppliers[i] == s) own.push_back(i);
            }
            if (own.empty()) {
                made.shares.push_back({{}, {{}, 0, 0, false}, false});
                continue;
            }
            const std::int64_t part = std::max<std::int64_t>(1, effort * std::int64_t(own.size()) / supplied);
            const SupplierShare& share = shareOf(s, own, part);
            made.shares.push_back(share);
            made.cost += share.plan.cost + (share.belowMinimum ? reproach : 0);
            made.lowerBound += share.plan.lowerBound + (share.belowMinimum ? reproach : 0);
            made.stopped = made.stopped || share.plan.stopped;
        }
        return made;
    }

    /// Each share is planned once for each effort, and never with less than before.
    const SupplierShare& shareOf(size_t supplier, const std::vector<size_t>& supplies, std::int64_t effort) {
        auto& [spent, share] = m_known[{supplier, supplies}];
        if (spent >= effort || (spent > 0 && share.plan.isProven())) return share;
        share = {supplies, {}, false};
        spent = effort;
        JointProblem problem;
        problem.terms = termsOf(m_inputs.question.suppliers[supplier].supplier);
        for (size_t i : supplies)
            problem.supplies.push_back(m_inputs.ways[i].at(supplier).problem);
        share.plan = bestOrders(problem, effort, m_cancelled);
        if (share.plan.isFound()) return share;
        share.belowMinimum = true;
        problem.terms.minimum = 0;
        share.plan = bestOrders(problem, effort, m_cancelled);
        return share;
    }

    const OrderInputs& m_inputs;
    std::int64_t m_effort;
    const std::function<bool()>& m_cancelled;
    std::vector<std::vector<size_t>> m_all;
    std::vector<size_t> m_fixed;
    std::map<std::pair<size_t, std::vector<size_t>>, std::pair<std::int64_t, SupplierShare>> m_known;
};

}  // namespace

Assignment bestAssignment(const OrderInputs& inputs, std::int64_t effort, const std::function<bool()>& cancelled) {
    return Sharing(inputs, effort, cancelled).best();
}

}  // namespace laneward::ordering
