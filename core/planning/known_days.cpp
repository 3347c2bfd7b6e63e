#include "core/planning/known_days.h"

#include <algorithm>

namespace laneward::planning {

namespace {

// More than a long season has; a day takes a few dozen kilobytes.
constexpr size_t mostDays = 2'000;
constexpr std::int64_t quickNodes = 160;

/// One key for the day and the nodes spent on it.
std::string named(const std::string& key, std::int64_t nodes) { return std::to_string(nodes) + ':' + key; }

}  // namespace

const DaySolution* KnownDays::find(const std::string& key, std::int64_t nodes) const {
    const auto found = m_days.find(named(key, nodes));
    return found == m_days.end() ? nullptr : &found->second;
}

void KnownDays::keep(const std::string& key, std::int64_t nodes, const DaySolution& solution) {
    if (!m_keeps || solution.stopped) return;
    if (m_days.size() >= mostDays) m_days.clear();
    m_days.insert_or_assign(named(key, nodes), solution);
}

DaySolution DaySolver::solveRoughly(const DayProblem& problem) const { return solve(problem, std::min(m_nodes, roughNodes)); }

DaySolution DaySolver::solveQuickly(const DayProblem& problem) const { return solve(problem, std::min(m_nodes, quickNodes)); }

DaySolution DaySolver::solve(const DayProblem& problem, std::int64_t nodes) const {
    if (problem.tasks.empty()) return solveDay(problem, 0, m_cancelled);
    const std::string key = problem.key();
    const DaySolution* known = m_standing ? m_standing->find(key, m_standingNodes) : nullptr;
    if (!known) known = m_days.find(key, nodes);
    if (known) return *known;
    DaySolution solution = solveDay(problem, nodes, m_cancelled);
    m_days.keep(key, nodes, solution);
    return solution;
}

}  // namespace laneward::planning
