#include "core/planning/day_search.h"

#include "core/planning/exact_day.h"

#include <algorithm>

namespace laneward::planning {

namespace {

// Solutions placed on one day at most: more seldom help, and people wait for the plan.
constexpr std::int64_t mostTried = 5'000;
constexpr std::int64_t fewestTried = 32;
constexpr std::int64_t mostPlaced = 1'200'000;

class DaySearch {
public:
    DaySearch(const DayProblem& problem, std::int64_t nodes, const std::function<bool()>& cancelled)
        : m_problem(problem), m_nodes(std::min(nodes, mostTried)), m_exactNodes(nodes), m_cancelled(cancelled) {}

    DaySolution run() {
        const std::vector<Block> blocks = blocksOf(m_problem);
        m_best.placement = place(m_problem, {});
        m_best.bound = boundOf(m_problem, 0);
        if (blocks.empty()) return std::move(m_best);
        // Placing takes about as long as its blocks squared.
        const std::int64_t size = std::int64_t(blocks.size());
        m_nodes = std::min(m_nodes, std::max(fewestTried, mostPlaced / (size * size)));
        for (int m = 0; m < int(m_problem.machines.size()); ++m)
            tryIt(onOne(blocks, m));
        if (m_problem.machines.size() > 1 && !done()) {
            tryIt(shared(blocks));
            tryIt(halved(blocks));
        }
        while (!done() && improve()) {
        }
        m_best.bound = boundOf(m_problem, m_best.placement.score[5]);
        if (!m_best.stopped && !m_best.proven()) searchExactly(m_problem, m_best, m_exactNodes, m_cancelled);
        return std::move(m_best);
    }

private:
    bool done() {
        if (!m_best.stopped && m_cancelled && m_cancelled()) m_best.stopped = true;
        return m_best.stopped || m_nodes <= 0 || m_best.placement.score == m_best.bound;
    }

    bool tryIt(Solution solution) {
        if (m_nodes-- <= 0) return false;
        Placement placement = place(m_problem, solution);
        if (placement.score >= m_best.placement.score) return false;
        const bool sameBound = placement.score[5] == m_best.placement.score[5];
        m_best.solution = std::move(solution);
        m_best.placement = std::move(placement);
        if (!sameBound) m_best.bound = boundOf(m_problem, m_best.placement.score[5]);
        return true;
    }

    bool able(const Block& block, int machine) const {
        return std::any_of(block.tasks.begin(), block.tasks.end(),
                           [&](int t) { return canDo(m_problem, machine, m_problem.tasks[size_t(t)]); });
    }

    Solution onOne(Solution blocks, int machine) const {
        for (Block& b : blocks) {
            if (able(b, machine)) b.machine = machine;
        }
        return blocks;
    }

    /// Each block to the able machine with the least work so far.
    Solution shared(Solution blocks) const {
        std::vector<Sec> load(m_problem.machines.size(), 0);
        for (Block& b : blocks) {
            for (int m = 0; m < int(load.size()); ++m) {
                if (able(b, m) && load[size_t(m)] < load[size_t(b.machine)]) b.machine = m;
            }
            load[size_t(b.machine)] += Sec(b.tasks.size());
        }
        return blocks;
    }

    /// Each block in equal parts over all able machines.
    Solution halved(const Solution& blocks) const {
        Solution parts;
        for (const Block& b : blocks) {
            std::vector<int> machines;
            for (int m = 0; m < int(m_problem.machines.size()); ++m) {
                if (able(b, m)) machines.push_back(m);
            }
            size_t begin = 0;
            for (size_t k = 0; k < machines.size(); ++k) {
                size_t size = (b.tasks.size() - begin) / (machines.size() - k);
                if (size % 2 == 1 && k + 1 < machines.size()) ++size;
                Block part = b;
                part.machine = machines[k];
                part.tasks.assign(b.tasks.begin() + std::ptrdiff_t(begin), b.tasks.begin() + std::ptrdiff_t(begin + size));
                begin += size;
                if (!part.tasks.empty()) parts.push_back(std::move(part));
            }
        }
        return parts;
    }

    /// One round over all single changes; true when something got better. Blocks are only taken apart where a demand would
    /// otherwise suffer: people work lanes of one kind in one go.
    bool improve() {
        bool better = false;
        for (size_t i = 0; i < m_best.solution.size() && !done(); ++i) {
            better = toggles(i) || better;
            better = moves(i) || better;
            better = merges(i) || better;
        }
        for (size_t i = 0; !better && i < m_best.solution.size() && !done() && suffers(); ++i) {
            better = splits(i) || shifts(i);
        }
        return better;
    }

    bool suffers() const {
        const Score& score = m_best.placement.score;
        return score[0] > m_best.bound[0] || score[1] > m_best.bound[1] || score[3] > 0 || score[4] > 0;
    }

    bool toggles(size_t i) {
        if (i >= m_best.solution.size()) return false;
        bool better = false;
        Solution changed = m_best.solution;
        changed[i].reversed = !changed[i].reversed;
        if (changed[i].tasks.size() > 1) better = tryIt(std::move(changed));
        changed = m_best.solution;
        changed[i].cut = !changed[i].cut;
        if (i > 0) better = tryIt(std::move(changed)) || better;
        return better;
    }

    bool moves(size_t i) {
        bool better = false;
        for (size_t to = 0; to < m_best.solution.size() && !done(); ++to) {
            for (int m = 0; m < int(m_problem.machines.size()) && i < m_best.solution.size(); ++m) {
                const Block& block = m_best.solution[i];
                if (!able(block, m) || (to == i && m == block.machine)) continue;
                // On the same machine only a place among its own blocks is another order.
                if (m == block.machine && m_best.solution[to].machine != m) continue;
                Solution changed = m_best.solution;
                Block moved = changed[i];
                moved.machine = m;
                changed.erase(changed.begin() + std::ptrdiff_t(i));
                changed.insert(changed.begin() + std::ptrdiff_t(to), std::move(moved));
                better = tryIt(std::move(changed)) || better;
            }
        }
        return better;
    }

    /// Sizes that keep pairs together, the halves first.
    std::vector<size_t> cutsOf(const Block& block) const {
        std::vector<size_t> cuts;
        const size_t size = block.tasks.size();
        for (size_t at : {size / 2, size / 4, size - size / 4, size_t{2}, size - std::min<size_t>(size, 2), size_t{1}}) {
            if (at == 0 || at >= size) continue;
            if (at > 1 && m_problem.tasks[size_t(block.tasks[at - 1])].lane % 2 == 1) ++at;
            if (at < size && std::find(cuts.begin(), cuts.end(), at) == cuts.end()) cuts.push_back(at);
        }
        return cuts;
    }

    bool splits(size_t i) {
        const Block block = m_best.solution[i];
        for (size_t at : cutsOf(block)) {
            for (int m = 0; m < int(m_problem.machines.size()) && !done(); ++m) {
                Block rest = block;
                rest.tasks.erase(rest.tasks.begin(), rest.tasks.begin() + std::ptrdiff_t(at));
                rest.machine = m;
                if (!able(rest, m)) continue;
                Solution changed = m_best.solution;
                changed[i].tasks.resize(at);
                changed.insert(changed.begin() + std::ptrdiff_t(i) + 1, std::move(rest));
                if (tryIt(std::move(changed))) return true;
            }
        }
        return false;
    }

    /// Moves lanes from one end of a block to another block of the same kind.
    bool shifts(size_t i) {
        for (size_t j = 0; j < m_best.solution.size() && !done(); ++j) {
            const Block& from = m_best.solution[i];
            if (j == i || m_best.solution[j].recipe != from.recipe) continue;
            for (size_t lanes : {size_t{2}, from.tasks.size() / 4, size_t{1}}) {
                if (lanes == 0 || lanes >= from.tasks.size()) continue;
                for (bool front : {true, false}) {
                    Solution changed = m_best.solution;
                    auto& source = changed[i].tasks;
                    const auto first = front ? source.begin() : source.end() - std::ptrdiff_t(lanes);
                    auto& target = changed[j].tasks;
                    target.insert(target.end(), first, first + std::ptrdiff_t(lanes));
                    std::sort(target.begin(), target.end());
                    source.erase(first, first + std::ptrdiff_t(lanes));
                    if (tryIt(std::move(changed))) return true;
                }
            }
        }
        return false;
    }

    bool merges(size_t i) {
        for (size_t j = 0; j < m_best.solution.size() && i < m_best.solution.size() && !done(); ++j) {
            const Solution& best = m_best.solution;
            if (j == i || best[j].recipe != best[i].recipe) continue;
            Solution changed = best;
            auto& tasks = changed[i].tasks;
            tasks.insert(tasks.end(), best[j].tasks.begin(), best[j].tasks.end());
            std::sort(tasks.begin(), tasks.end());
            changed.erase(changed.begin() + std::ptrdiff_t(j));
            if (tryIt(std::move(changed))) return true;
        }
        return false;
    }

    const DayProblem& m_problem;
    std::int64_t m_nodes;
    std::int64_t m_exactNodes;
    const std::function<bool()>& m_cancelled;
    DaySolution m_best;
};

}  // namespace

DaySolution solveDay(const DayProblem& problem, std::int64_t nodeLimit, const std::function<bool()>& cancelled) {
    return DaySearch(problem, nodeLimit, cancelled).run();
}

}  // namespace laneward::planning
