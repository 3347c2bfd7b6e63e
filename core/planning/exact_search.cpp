#include "core/planning/exact_search.h"

#include <algorithm>
#include <cstdlib>
#include <limits>

namespace laneward::planning {

namespace {

using namespace score_part;

// Times that may be late are worked out anew for every partial plan, which is slow.
constexpr std::int64_t priceOfTrouble = 5;
constexpr std::int64_t comparedPerStep = 4;
constexpr size_t mostNodes = 100'000;  // about as many kilobytes

}  // namespace

/// All layers, with at most `width` nodes extended in each. Whether nothing was left out.
bool ExactSearch::pass(size_t width) {
    m_nodes.clear();
    m_pulls.clear();
    Node root;
    for (size_t r = 0; r < m_runs.size(); ++r) {
        root.rest.count[r] = std::int16_t(m_runs[r].lanes());
        root.rest.lanes += m_runs[r].lanes();
    }
    for (size_t m = 0; m < m_machines; ++m)
        root.hands[m].clock = m_problem.length;
    m_layers.assign(size_t(root.rest.lanes) + 1, {});
    m_known.assign(m_layers.size(), {});
    m_at = root;
    m_closed.clear();
    m_fixed = 0;
    m_open = {};
    openNext();
    bool whole = true;
    for (size_t layer = m_layers.size(); layer-- > 0;) {
        std::vector<int> open = std::move(m_layers[layer]);
        m_known[layer].clear();
        std::erase_if(open, [&](int n) { return m_nodes[size_t(n)].dead; });
        std::stable_sort(open.begin(), open.end(),
                         [&](int a, int b) { return m_nodes[size_t(a)].bound < m_nodes[size_t(b)].bound; });
        whole = whole && open.size() <= width;
        for (size_t i = 0; i < std::min(width, open.size()); ++i) {
            if (m_nodes[size_t(open[i])].bound >= m_best.score) break;
            if (*m_cancelled && (*m_cancelled)()) m_best.stopped = true;
            if (m_left <= 0 || m_best.stopped) return false;
            expand(open[i]);
        }
    }
    return whole;
}

/// Builds the outings of a node again, as the moves that led to it made them.
void ExactSearch::load(int node) {
    std::vector<int> path;
    for (int n = node; n >= 0; n = m_nodes[size_t(n)].parent)
        path.push_back(n);
    m_closed.clear();
    m_fixed = 0;
    m_open = {};
    for (auto n = path.rbegin(); n != path.rend(); ++n) {
        const Move& move = m_nodes[size_t(*n)].move;
        if (!m_open.gos.empty()) m_open.gos.back().steps = move.steps;
        if (move.opens) {
            if (!m_open.gos.empty()) {
                m_timing.time(chain(), m_mode.trouble, true);
                m_closed.push_back(m_open);
            }
            if (!movesOn(move.machine)) m_fixed = m_closed.size();
            m_open = {move.machine, move.window, {}, move.limit};
        }
        m_open.gos.push_back(move.go);
    }
    m_timing.time(chain(), m_mode.trouble, false);
    m_at = m_nodes[size_t(node)];
    m_at.parent = node;
    m_at.dead = false;
    m_at.next = -1;
}

/// The open outing goes on, or ends and another begins.
void ExactSearch::expand(int node) {
    load(node);
    const int machine = m_open.machine;
    for (unsigned steps : stepChoices(machine, false)) {
        Move like;
        like.steps = steps;
        like.machine = machine;
        offerGos(like);
    }
    m_open.gos.back().steps = NoStep;
    const Node at = m_at;
    const DraftOuting open = m_open;
    const std::vector<DraftOuting> closed = m_closed;
    const size_t fixed = m_fixed;
    for (unsigned steps : stepChoices(machine, true)) {
        if (close(steps)) {
            m_closed.push_back(m_open);
            m_at.move.steps = steps;
            m_open.gos.clear();
            m_at.rest.lanes == 0 ? finish() : openNext();
        }
        m_at = at;
        m_open = open;
        m_closed = closed;
        m_fixed = fixed;
    }
}

void ExactSearch::openNext() {
    const int first = m_freeCrew && !m_closed.empty() ? m_closed.back().machine : 0;
    // Where people are fewer than machines, outings come in the order of their ends.
    const bool inOrder = !m_freeCrew && m_mode.trouble == Trouble::None && !m_closed.empty();
    const Sec latest = inOrder ? m_timing.ends(m_closed.back()) : m_problem.length;
    for (int m = first; m < int(m_machines); ++m) {
        if (m_freeCrew && m > first && !m_closed.empty() && !lasts(first)) return;
        const Node at = m_at;
        const size_t fixed = m_fixed;
        if (!movesOn(m)) {
            m_fixed = m_closed.size();
            m_at.cost = sum(m_at.cost, m_at.openCost);
            m_at.openCost = {};
        }
        for (const OutingWindow& window : windowsOf(m)) {
            Move like;
            like.opens = true;
            like.steps = m_closed.empty() ? unsigned(NoStep) : m_at.move.steps;
            like.machine = m;
            like.window = window;
            // An outing behind it that can still give way is no limit.
            like.limit = movesOn(m) ? m_problem.length : std::min(m_at.hands[size_t(m)].clock, latest);
            if (window.allowance.begin < like.limit) offerGos(like);
        }
        m_at = at;
        m_fixed = fixed;
    }
}

void ExactSearch::offerGos(const Move& like) {
    Move move = like;
    m_spent = sum(m_at.cost, m_at.openCost);
    m_spent[Treatments] += m_at.rest.lanes;
    for (int r = 0; r < int(m_runs.size()); ++r) {
        const int count = m_at.rest.count[size_t(r)];
        if (count == 0 || !(m_runs[size_t(r)].able & (1U << like.machine))) continue;
        for (int n = count; n > (m_at.cuts < m_mode.cuts ? 0 : count - 1); --n) {
            const int begin = m_at.rest.first[size_t(r)];
            for (int first : {begin, begin + count - n}) {
                for (bool down : {false, true}) {
                    if (down && n == 1) continue;
                    move.go = {r, first, n, down, NoStep, 0};
                    if (!isPaused(move) && !isHopeless(move)) offer(move);
                }
                if (n == count) break;
            }
        }
    }
}

/// What is sure before anything is timed: outings, changes and crossed lanes.
bool ExactSearch::isHopeless(const Move& move) const {
    Score cost = m_spent;
    const int pattern = m_runs[size_t(move.go.run)].pattern;
    const int before = m_at.hands[size_t(move.machine)].pattern;
    if (move.opens) {
        ++cost[Outings];
    } else {
        cost[Crossed] += std::max(0, std::abs(m_timing.firstLane(m_open.gos.back()) - m_timing.lastLane(move.go)) - 1);
    }
    if (pattern >= 0 && before >= 0 && pattern != before) ++cost[Changes];
    return worth(cost) >= m_best.score;
}

void ExactSearch::offer(const Move& move) {
    // Only what extending changes is put back: this is the innermost step of the search.
    m_left -= m_mode.trouble == Trouble::Allowed ? priceOfTrouble : 1;
    const size_t r = size_t(move.go.run);
    const Hand hand = m_at.hands[size_t(move.machine)];
    const Score cost = m_at.cost;
    const Score openCost = m_at.openCost;
    const int cuts = m_at.cuts;
    const auto [first, count, lanes] = std::tuple(m_at.rest.first[r], m_at.rest.count[r], m_at.rest.lanes);
    m_begins.clear();
    for (const Go& go : m_open.gos)
        m_begins.push_back(go.begin);
    if (extend(move)) {
        const std::optional<Score> bound = m_bounds.of(m_at.rest, frontier(), worth(sum(m_at.cost, m_at.openCost)), m_best.score);
        if (bound) {
            m_at.bound = *bound;
            m_at.pulls = m_pulls.size();
            m_at.pull = m_mode.trouble == Trouble::None ? longestPull(m_at) : 0;
            if (m_at.pull > 0) m_at.range = m_timing.pullOf(m_open, m_pulls);
            m_at.pullCount = m_pulls.size() - m_at.pulls;
            keep();
        }
    }
    m_open.gos.pop_back();
    for (size_t k = 0; k < m_open.gos.size(); ++k)
        m_open.gos[k].begin = m_begins[k];
    m_at.rest.first[r] = first;
    m_at.rest.count[r] = count;
    m_at.rest.lanes = lanes;
    m_at.hands[size_t(move.machine)] = hand;
    m_at.cost = cost;
    m_at.openCost = openCost;
    m_at.cuts = cuts;
}

/// Parts of one run that follow each other in an outing are one go, unless something is done in between: nobody waits from lane
/// to lane.
bool ExactSearch::isPaused(const Move& move) const {
    return !move.opens && move.steps == NoStep && m_open.gos.back().run == move.go.run;
}

/// Takes the lanes off what is left and times the outing with them.
bool ExactSearch::extend(const Move& move) {
    if (move.opens) {
        m_open.machine = move.machine;
        m_open.window = move.window;
        m_open.limit = move.limit;
        ++m_at.cost[Outings];
    } else {
        m_open.gos.back().steps = move.steps;
    }
    Hand& hand = m_at.hands[size_t(move.machine)];
    const size_t r = size_t(move.go.run);
    m_at.move = move;
    m_open.gos.push_back(move.go);
    if (move.go.first == m_at.rest.first[r]) m_at.rest.first[r] = std::int16_t(m_at.rest.first[r] + move.go.count);
    m_at.rest.count[r] = std::int16_t(m_at.rest.count[r] - move.go.count);
    m_at.rest.lanes -= move.go.count;
    m_at.cuts += m_at.rest.count[r] > 0 ? 1 : 0;
    if (!move.opens && !restoreNeed(hand, move.machine, move.steps)) return false;
    if (!spend(hand, move.machine, move.go, move.go.count)) return false;
    const int pattern = m_runs[r].pattern;
    if (pattern >= 0 && hand.pattern >= 0 && pattern != hand.pattern) ++m_at.cost[Changes];
    if (pattern >= 0) hand.pattern = pattern;
    if (m_mode.trouble == Trouble::Allowed) {
        const Chain all = chain();
        if (!m_timing.time(all, m_mode.trouble, false, m_bounds.floor(m_at.rest, frontier()))) return false;
        m_at.openCost = costOf(all, false);
        return true;
    }
    if (!m_timing.timeAdded(m_open)) return false;
    m_at.move.go.begin = m_open.gos.back().begin;
    m_at.openCost = m_timing.scoreOf(m_open, false);
    return true;
}

void ExactSearch::keep() {
    const size_t layer = size_t(m_at.rest.lanes);
    int& first = m_known[layer].try_emplace(keyOf(m_at), -1).first->second;
    std::int64_t compared = 0;
    for (int n = first; n >= 0; n = m_nodes[size_t(n)].next) {
        const Node& other = m_nodes[size_t(n)];
        if (other.dead || !isSameState(other, m_at)) continue;
        ++compared;
        if (dominates(other, m_at)) {
            m_pulls.resize(m_at.pulls);
            return;
        }
    }
    m_left -= compared / comparedPerStep;
    for (int n = first; n >= 0; n = m_nodes[size_t(n)].next) {
        Node& other = m_nodes[size_t(n)];
        if (!other.dead && isSameState(m_at, other) && dominates(m_at, other)) other.dead = true;
    }
    if (m_nodes.size() >= mostNodes) m_left = 0;
    m_layers[layer].push_back(int(m_nodes.size()));
    m_nodes.push_back(m_at);
    m_nodes.back().next = first;
    first = int(m_nodes.size()) - 1;
}

/// The cost, as far as this search counts it.
Score ExactSearch::worth(Score score) const {
    if (m_mode.coarse) std::fill(score.begin() + Changes, score.end(), 0);
    return score;
}

void ExactSearch::finish() {
    for (size_t m = 0; m < m_machines; ++m) {
        if (!lasts(int(m))) return;
    }
    const Score score = worth(sum(m_at.cost, m_at.openCost));
    if (score >= m_best.score) return;
    m_best.score = score;
    m_best.best = m_closed;
}

}  // namespace laneward::planning
