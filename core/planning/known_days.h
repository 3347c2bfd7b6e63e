// Solved days, kept by what they were made from: the same Thursday is solved once.
#pragma once

#include "core/planning/day_search.h"

#include <string>
#include <unordered_map>

namespace laneward::planning {

class KnownDays {
public:
    /// One that keeps nothing is for those who doubt the others.
    explicit KnownDays(bool keeps = true) : m_keeps(keeps) {}

    /// `key` is DayProblem::key(); null when that day was not solved with as many nodes.
    const DaySolution* find(const std::string& key, std::int64_t nodes) const;
    /// A search that was stopped is not kept: it would not be the same again.
    void keep(const std::string& key, std::int64_t nodes, const DaySolution& solution);

private:
    bool m_keeps;
    std::unordered_map<std::string, DaySolution> m_days;  ///< by nodes and key
};

/// How days are solved: what is known comes first.
class DaySolver {
public:
    static constexpr std::int64_t roughNodes = 8;

    DaySolver(std::int64_t nodes, KnownDays& days, const std::function<bool()>& cancelled)
        : m_nodes(nodes), m_days(days), m_cancelled(cancelled) {}

    /// Days that were solved with `nodes` before stand, whatever is spent on others now.
    void letStand(const KnownDays& days, std::int64_t nodes) {
        m_standing = &days;
        m_standingNodes = nodes;
    }

    DaySolution solve(const DayProblem& problem) const { return solve(problem, m_nodes); }
    /// A rough answer: whether there is trouble at all.
    DaySolution solveRoughly(const DayProblem& problem) const;
    /// A fair answer, where many are asked for on the way to one.
    DaySolution solveQuickly(const DayProblem& problem) const;
    /// So little is spent on a day that hardly one is proven.
    bool isRough() const { return m_nodes <= roughNodes; }
    bool isCancelled() const { return m_cancelled && m_cancelled(); }

private:
    DaySolution solve(const DayProblem& problem, std::int64_t nodes) const;

    std::int64_t m_nodes;  ///< for one day
    KnownDays& m_days;
    const std::function<bool()>& m_cancelled;
    const KnownDays* m_standing = nullptr;
    std::int64_t m_standingNodes = 0;
};

}  // namespace laneward::planning
