#include "core/planning/recursion.h"

#include "core/planning/holds.h"

#include <algorithm>
#include <array>
#include <bit>

namespace laneward::planning {

namespace {

// In this order: demands unmet, treatments, treatments that do more than was asked, and how early they end.
using Cost = std::array<std::int64_t, 4>;

/// A lane's condition and what is asked of it, with patterns as indexes.
struct Condition {
    bool treated = false;
    Treatment last = Treatment::CleanAndCondition;
    std::optional<int> pattern;
    Instant end;
    Seconds playedSince;
};

/// Nothing is asked where it is 'as it is'.
struct Asked {
    DemandKind kind = DemandKind::AsItIs;
    std::optional<int> pattern;
    Treatment least = Treatment::CleanAndCondition;
    Seconds longestAge;
    Seconds longestPlay;
    Instant playBegins;
};

struct Choice {
    Treatment treatment;
    std::optional<int> pattern;
    friend bool operator==(const Choice&, const Choice&) = default;
};

struct Node {
    Condition condition;
    Cost cost{};
    int parent = -1;
    int choice = -1;  ///< of the treatment in `gap`; -1 = none there
    size_t gap = 0;
};

struct Committed {
    Choice choice;
    Instant end;
};

// More kinds of treatment than this are never asked of one lane; the rest would be left out.
constexpr size_t mostChoices = 64;
using Mask = std::uint64_t;

Condition after(const Condition& before, const Choice& choice, Instant end) {
    Condition condition{true, choice.treatment, {}, end, {}};
    if (conditions(choice.treatment)) condition.pattern = choice.pattern;
    if (choice.treatment == Treatment::ConditionOnly && before.treated) condition.pattern = before.pattern;
    return condition;
}

class LaneRecursion {
public:
    explicit LaneRecursion(const LaneProblem& problem) : m_problem(problem), m_gaps(problem.set.gaps[size_t(problem.lane - 1)]) {
        collectPatterns();
        collectAsked();
        collectUseful();
        countUnsafe();
    }

    Fewest solve() {
        const LaneCondition& b = m_problem.before;
        m_nodes.reserve(4 * m_gaps.size());
        m_nodes.push_back({{b.treated, b.last, indexOf(b.pattern), b.end, b.playedSince}, {}, -1, -1, m_problem.firstGap});
        m_frontier.push_back(0);
        for (size_t g = m_problem.firstGap; g < m_gaps.size(); ++g)
            step(g);
        int best = m_frontier.front();
        for (int node : m_frontier) {
            if (m_nodes[size_t(node)].cost < m_nodes[size_t(best)].cost) best = node;
        }
        return answer(best);
    }

private:
    std::optional<int> indexOf(const std::optional<PatternId>& pattern) const {
        if (!pattern) return std::nullopt;
        return int(std::lower_bound(m_patterns.begin(), m_patterns.end(), *pattern) - m_patterns.begin());
    }

    void collectPatterns() {
        if (m_problem.before.pattern) m_patterns.push_back(*m_problem.before.pattern);
        for (const FixedTreatment& f : m_problem.committed) {
            if (f.pattern) m_patterns.push_back(*f.pattern);
        }
        for (size_t g = m_problem.firstGap; g < m_gaps.size(); ++g) {
            const Demand* d = demandAt(g);
            if (!d || !d->pattern || std::find(m_patterns.begin(), m_patterns.end(), *d->pattern) != m_patterns.end()) continue;
            m_patterns.push_back(*d->pattern);
        }
        if (m_patterns.empty() && !m_problem.usual.isEmpty()) m_patterns.push_back(m_problem.usual);
        std::sort(m_patterns.begin(), m_patterns.end());
        m_patterns.erase(std::unique(m_patterns.begin(), m_patterns.end()), m_patterns.end());
        for (const FixedTreatment& f : m_problem.committed) {
            m_committed.push_back({{f.treatment, indexOf(f.pattern)}, f.time.end});
        }
    }

    void collectAsked() {
        m_asked.resize(m_gaps.size());
        for (size_t g = m_problem.firstGap; g < m_gaps.size(); ++g) {
            const Demand* d = demandAt(g);
            if (d) m_asked[g] = {d->kind, indexOf(d->pattern), d->least, d->longestAge, d->longestPlay, d->playBegins};
        }
    }

    const Demand* demandAt(size_t g) const { return m_gaps[g].demand ? &m_problem.set.demands[*m_gaps[g].demand] : nullptr; }

    void addChoice(Mask& mask, const Choice& choice) {
        size_t i = size_t(std::find(m_choices.begin(), m_choices.end(), choice) - m_choices.begin());
        if (i == m_choices.size() && i < mostChoices) m_choices.push_back(choice);
        if (i < mostChoices) mask |= Mask{1} << i;
    }

    Mask choicesFor(const Asked& d) {
        Mask mask = 0;
        if (d.kind == DemandKind::AsItIs) return mask;
        if (d.least == Treatment::CleanOnly && !d.pattern) addChoice(mask, {Treatment::CleanOnly, std::nullopt});
        if (d.kind == DemandKind::Stripped) return mask;
        for (int p = 0; p < int(m_patterns.size()); ++p) {
            if (d.pattern && *d.pattern != p) continue;
            if (d.least == Treatment::ConditionOnly && d.kind != DemandKind::Pattern)
                addChoice(mask, {Treatment::ConditionOnly, p});
            addChoice(mask, {Treatment::CleanAndCondition, p});
        }
        return mask;
    }

    /// A treatment is worth trying in a gap when it can serve the demand at its end, or a later one that has no room for it in
    /// the gaps between: with room there, the later gap is as good for everything that follows.
    void collectUseful() {
        std::vector<Mask> own(m_gaps.size(), 0);
        for (size_t g = m_gaps.size(); g-- > m_problem.firstGap;)
            own[g] = choicesFor(m_asked[g]);
        std::vector<Recipe> recipes;
        for (const Choice& choice : m_choices)
            recipes.push_back(recipe(choice));
        m_ends.resize(m_gaps.size() * m_choices.size());
        Mask later = 0;
        for (size_t g = m_gaps.size(); g-- > m_problem.firstGap;) {
            Mask useful = own[g] | later;
            later = 0;
            for (; useful != 0; useful &= useful - 1) {
                const auto c = size_t(std::countr_zero(useful));
                std::optional<Instant>& end = m_ends[g * m_choices.size() + c];
                end = m_problem.latestEnd(g, recipes[c]);
                if (!end) later |= Mask{1} << c;
            }
        }
    }

    const std::optional<Instant>& endOf(size_t g, size_t choice) const { return m_ends[g * m_choices.size() + choice]; }

    /// Demands that no treatment in their own gap can meet, from each gap on.
    void countUnsafe() {
        const auto keepsPattern = [](const Choice& c) { return c.treatment == Treatment::ConditionOnly; };
        m_forgets = std::none_of(m_choices.begin(), m_choices.end(), keepsPattern) &&
                    std::none_of(m_committed.begin(), m_committed.end(), [&](const auto& c) { return keepsPattern(c.choice); });
        m_unsafe.assign(m_gaps.size() + 1, 0);
        for (size_t g = m_gaps.size(); g-- > m_problem.firstGap;) {
            m_unsafe[g] = m_unsafe[g + 1] + (m_asked[g].kind == DemandKind::AsItIs || isSafe(g) ? 0 : 1);
        }
    }

    bool isSafe(size_t g) const {
        for (size_t c = 0; c < m_choices.size(); ++c) {
            if (endOf(g, c) && holds(after({}, m_choices[c], *endOf(g, c)), m_asked[g])) return true;
        }
        return false;
    }

    /// Drops what has left so much unmet that it cannot win: whatever it does from here, the best of the others can do the same
    /// and meet each demand in between by a treatment in its own gap, all but the unsafe ones. Not where a treatment keeps the
    /// pattern that was there before, because then doing the same is not the same.
    void dropHopeless(size_t g) {
        if (!m_forgets || m_kept.empty()) return;
        const auto least = std::min_element(m_kept.begin(), m_kept.end(), [](const Node& a, const Node& b) {
                               return a.cost[0] < b.cost[0];
                           })->cost[0];
        std::erase_if(m_kept, [&](const Node& node) { return node.cost[0] > least + m_unsafe[g + 1]; });
    }

    Recipe recipe(const Choice& c) const {
        return {c.treatment, c.pattern ? std::optional(m_patterns[size_t(*c.pattern)]) : std::nullopt};
    }

    void step(size_t g) {
        m_kept.clear();
        m_arrived.clear();
        for (int index : m_frontier) {
            Node node = m_nodes[size_t(index)];
            node.parent = index;
            node.choice = -1;
            node.gap = g;
            if (g > m_problem.firstGap) node.condition.playedSince += m_gaps[g].playBefore;
            applyCommitted(g, node.condition);
            offer(m_arrived.emplace_back(node), g);
        }
        for (size_t c = 0; c < m_choices.size(); ++c) {
            if (endOf(g, c)) offerTreatment(g, int(c));
        }
        dropHopeless(g);
        m_frontier.clear();
        for (const Node& node : m_kept) {
            m_frontier.push_back(int(m_nodes.size()));
            m_nodes.push_back(node);
        }
    }

    void applyCommitted(size_t g, Condition& condition) const {
        const Instant from = g > m_problem.firstGap ? m_gaps[g - 1].time.end : Instant{INT64_MIN};
        for (const Committed& c : m_committed) {
            if (c.end <= from || c.end > m_gaps[g].time.end) continue;
            condition = after(condition, c.choice, c.end);
            if (c.end <= m_gaps[g].time.begin) condition.playedSince = m_gaps[g].playBefore;
        }
    }

    /// A treatment leaves the lane in the same condition whatever was before, so only the best of what was before counts.
    void offerTreatment(size_t g, int c) {
        const Choice& choice = m_choices[size_t(c)];
        const Node* best = nullptr;
        for (const Node& node : m_arrived) {
            const bool sameBelow = node.condition.treated && node.condition.pattern == choice.pattern;
            if (choice.treatment == Treatment::ConditionOnly && !sameBelow) continue;
            if (!best || node.cost < best->cost) best = &node;
        }
        if (!best) return;
        Node node = *best;
        const Instant end = *endOf(g, size_t(c));
        node.condition = after(node.condition, choice, end);
        node.choice = c;
        ++node.cost[1];
        node.cost[2] += excess(g, choice);
        node.cost[3] -= end.seconds;
        offer(node, g);
    }

    std::int64_t excess(size_t g, const Choice& choice) const {
        return m_gaps[g].demand && m_asked[g].least == choice.treatment ? 0 : 1;
    }

    void offer(const Node& arrived, size_t g) {
        Node node = arrived;
        if (!holds(node.condition, m_asked[g])) ++node.cost[0];
        for (const Node& kept : m_kept) {
            if (dominates(kept, node)) return;
        }
        std::erase_if(m_kept, [&](const Node& kept) { return dominates(node, kept); });
        m_kept.push_back(node);
    }

    static bool dominates(const Node& a, const Node& b) {
        const Condition& x = a.condition;
        const Condition& y = b.condition;
        return x.treated == y.treated && x.last == y.last && x.pattern == y.pattern && x.end >= y.end &&
               x.playedSince <= y.playedSince && a.cost <= b.cost;
    }

    Fewest answer(int best) const {
        std::vector<const Node*> path;
        for (int node = best; node >= 0 && m_nodes[size_t(node)].parent >= 0; node = m_nodes[size_t(node)].parent) {
            path.push_back(&m_nodes[size_t(node)]);
        }
        std::reverse(path.begin(), path.end());
        Fewest fewest;
        bool ours = false;  // whether the lane's last treatment is one of `chosen`
        for (const Node* node : path) {
            if (node->choice >= 0) {
                const Recipe chosen = recipe(m_choices[size_t(node->choice)]);
                fewest.chosen.push_back({m_problem.lane, node->gap, chosen.treatment, chosen.pattern, {}});
                ours = true;
            } else if (committedIn(node->gap)) {
                ours = false;
            }
            const Asked& asked = m_asked[node->gap];
            if (asked.kind == DemandKind::AsItIs) continue;
            if (!holds(node->condition, asked)) {
                fewest.unmetDemands.push_back(*m_gaps[node->gap].demand);
            } else if (ours) {
                fewest.chosen.back().serves.push_back(*m_gaps[node->gap].demand);
            }
        }
        fewest.unmet = int(fewest.unmetDemands.size());
        fewest.treatments = int(fewest.chosen.size());
        return fewest;
    }

    bool committedIn(size_t g) const {
        return std::any_of(m_committed.begin(), m_committed.end(), [&](const Committed& c) {
            return c.end <= m_gaps[g].time.end && (g == m_problem.firstGap || c.end > m_gaps[g - 1].time.end);
        });
    }

    const LaneProblem& m_problem;
    const std::vector<Gap>& m_gaps;
    std::vector<PatternId> m_patterns;  ///< ascending
    std::vector<Committed> m_committed;
    std::vector<Asked> m_asked;  ///< by gap
    std::vector<Choice> m_choices;
    std::vector<std::optional<Instant>> m_ends;  ///< by gap and choice: of useful ones that have room
    std::vector<std::int64_t> m_unsafe;          ///< demands from this gap on
    bool m_forgets = false;                      ///< every treatment leaves the same, whatever was before
    std::vector<Node> m_nodes;
    std::vector<Node> m_arrived;  ///< the frontier at the end of the gap at hand, without a treatment in it
    std::vector<Node> m_kept;     ///< of the gap at hand; none dominates another
    std::vector<int> m_frontier;
};

}  // namespace

Fewest fewestOf(const LaneProblem& problem) { return LaneRecursion(problem).solve(); }

}  // namespace laneward::planning
