// The state of a partial plan: what it may still do, and when another is no worse.
#include "core/planning/exact_search.h"

#include <algorithm>
#include <limits>

namespace laneward::planning {

namespace {

using namespace score_part;

// Nodes extended in each layer, pass after pass: what a narrow one finds cuts down the next.
constexpr std::array<size_t, 3> widths{24, 150, std::numeric_limits<size_t>::max()};
// A pack is restored by either of the two.
constexpr std::array<unsigned, 4> stepKinds{RefillBit, EmptyBit, SwapBit | ChargeBit, DutyBit};

/// Whether all of the day's work on this machine is covered by what is in it.
bool hasPlenty(const DayProblem& problem, const std::vector<LaneRun>& runs, size_t machine) {
    const DayMachine& m = problem.machines[machine];
    Stock left = m.begin;
    for (const LaneRun& run : runs) {
        if (!(run.able & (1U << machine))) continue;
        const int lanes = run.lanes() * (run.like.twice ? 3 : 1);
        for (size_t s = 0; s < stockCount; ++s)
            left[s] -= m.use[size_t(run.recipe)][s] * lanes;
    }
    return std::all_of(left.begin(), left.end(), [](std::int64_t amount) { return amount >= 0; });
}

}  // namespace

bool ExactSearch::covers(const DayProblem& problem, const std::vector<LaneRun>& runs) {
    return !runs.empty() && runs.size() <= mostExactRuns && problem.machines.size() <= mostExactMachines &&
           std::all_of(problem.machines.begin(), problem.machines.end(),
                       [](const DayMachine& m) { return m.outings.empty() && m.runs.empty(); });
}

ExactSearch::ExactSearch(const DayProblem& problem, const std::vector<LaneRun>& runs, const SearchMode& mode, const Score& known)
    : m_problem(problem),
      m_runs(runs),
      m_mode(mode),
      m_timing(problem, runs),
      m_bounds(problem, runs, mode),
      m_machines(problem.machines.size()) {
    m_best.score = worth(known);
    std::int64_t attended = 0;
    for (size_t m = 0; m < m_machines; ++m) {
        attended += problem.machines[m].attended ? 1 : 0;
        m_plenty.push_back(hasPlenty(problem, runs, m));
    }
    for (const DayShift& shift : problem.shifts) {
        m_freeCrew = m_freeCrew && shift.people >= attended;
        m_singleCrew = m_singleCrew && shift.people == 1;
    }
    m_singleCrew = m_singleCrew && attended == std::int64_t(m_machines) && problem.shifts.size() == 1;
}

ExactResult ExactSearch::run(std::int64_t steps, const std::function<bool()>& cancelled) {
    m_left = steps;
    m_cancelled = &cancelled;
    for (size_t width : widths) {
        m_sure = true;
        m_best.exhausted = pass(width) && m_left > 0 && m_sure;
        if (m_best.exhausted || m_best.stopped || m_left <= 0) break;
    }
    m_best.steps = steps - m_left;
    return std::move(m_best);
}

Frontier ExactSearch::frontier() const {
    const Go& head = m_open.gos.back();
    Frontier at{m_open.machine, head.run, m_timing.firstLane(head), head.begin, {}, {}, true};
    // Where it may become late, what comes before it can still push it.
    const bool pushed = m_mode.trouble == Trouble::Allowed;
    if (pushed) at.headBegin = m_runs[size_t(head.run)].slots.back().end;
    for (int m = 0; m < int(m_machines); ++m) {
        const DayMachine& machine = m_problem.machines[size_t(m)];
        // Machines are used up in their order, where there is a person for each.
        const bool done = m_freeCrew && m < at.machine;
        const Sec until = m == at.machine ? at.headBegin - machine.leave
                          : pushed        ? m_problem.length
                                          : m_at.hands[size_t(m)].clock;
        at.until[size_t(m)] = done ? notPlaced : until - machine.back;
        at.pattern[size_t(m)] = done ? -2 : m_at.hands[size_t(m)].pattern;
        at.alone = at.alone && (m == at.machine || done || m_singleCrew);
    }
    return at;
}

std::uint64_t ExactSearch::keyOf(const Node& node) const {
    std::uint64_t key = 1469598103934665603U;  // FNV-1a
    const auto mix = [&](int value) { key = (key ^ std::uint64_t(value & 0xff)) * 1099511628211U; };
    for (size_t r = 0; r < m_runs.size(); ++r) {
        mix(node.rest.first[r]);
        mix(node.rest.count[r]);
    }
    mix(node.move.machine);
    mix(m_timing.firstLane(node.move.go));
    for (size_t m = 0; m < m_machines; ++m)
        mix(node.hands[m].pattern);
    return key;
}

/// Whether two partial plans can be compared: what is left, and where the machine stands.
bool ExactSearch::isSameState(const Node& a, const Node& b) const {
    const auto same = [&](const Hand& x, const Hand& y) { return x.pattern == y.pattern; };
    const OutingWindow& v = a.move.window;
    const OutingWindow& w = b.move.window;
    return a.move.machine == b.move.machine && a.move.go.run == b.move.go.run &&
           m_timing.firstLane(a.move.go) == m_timing.firstLane(b.move.go) && a.rest == b.rest &&
           std::equal(a.hands.begin(), a.hands.end(), b.hands.begin(), same) && v.shift == w.shift &&
           v.allowance == w.allowance && v.open == w.open;
}

/// How far the open outing may have to be pulled towards a go in front of it that ends too early to be waited for.
Sec ExactSearch::longestPull(const Node& node) const {
    const DayMachine& machine = m_problem.machines[size_t(node.move.machine)];
    const Sec head = node.move.go.begin;
    Sec longest = 0;
    for (size_t r = 0; r < m_runs.size(); ++r) {
        if (node.rest.count[r] == 0) continue;
        const LaneRun& run = m_runs[r];
        for (const Slot& slot : run.slots) {
            const Sec end = std::min(slot.end, run.like.target);
            longest = std::max(longest, head - (end + patience(machine) - 1));
        }
    }
    // It cannot be pulled further than the head's own lanes are free.
    return std::min(longest, std::max<Sec>(0, head - m_runs[size_t(node.move.go.run)].slots.front().begin));
}

Sec ExactSearch::pullCost(const Node& node, Sec by) const {
    Sec cost = 0;
    for (size_t k = node.pulls; k < node.pulls + node.pullCount; ++k)
        cost += m_pulls[k].weight * std::max<Sec>(0, by - m_pulls[k].from);
    return cost;
}

/// Wherever `b` may have to stand for what comes before it, `a` can stand and is no dearer there; of equal cost up to freshness.
/// What a pull costs is linear between the moments at which one more go moves, so only these are looked at.
bool ExactSearch::givesWayAsWell(const Node& a, const Node& b) const {
    const Sec later = a.move.go.begin - b.move.go.begin;
    const Sec reach = std::min(b.pull, b.range.most);
    const Sec fresher = (b.cost[Freshness] + b.openCost[Freshness]) - (a.cost[Freshness] + a.openCost[Freshness]);
    const auto holdsAt = [&](Sec by) {
        return by < 0 || by > reach || pullCost(a, std::min(later + by, a.pull)) <= fresher + pullCost(b, by);
    };
    if (!holdsAt(0) || !holdsAt(reach) || !holdsAt(a.pull - later)) return false;
    for (size_t k = a.pulls; k < a.pulls + a.pullCount; ++k) {
        if (!holdsAt(m_pulls[k].from - later)) return false;
    }
    for (size_t k = b.pulls; k < b.pulls + b.pullCount; ++k) {
        if (!holdsAt(m_pulls[k].from)) return false;
    }
    return true;
}

/// No dearer and no earlier, whatever comes in front of both.
bool ExactSearch::dominates(const Node& a, const Node& b) const {
    if (m_mode.trouble == Trouble::Allowed || (!m_freeCrew && !m_singleCrew)) return false;
    const Sec later = a.move.go.begin - b.move.go.begin;
    if (later < 0 || a.cuts > b.cuts) return false;
    for (size_t m = 0; m < m_machines; ++m) {
        if (!lastsAsLong(a.hands[m], b.hands[m])) return false;
    }
    const Score x = worth(sum(a.cost, a.openCost));
    const Score y = worth(sum(b.cost, b.openCost));
    if (x > y) return false;
    if (a.pull == 0) return true;
    if (a.range.sure < std::min(later + std::min(b.pull, b.range.most), a.pull)) return false;
    const bool equal = std::equal(x.begin(), x.begin() + Freshness, y.begin());
    return !equal || m_mode.coarse || givesWayAsWell(a, b);
}

/// Free as late, with as much in it, and none of its steps less needed.
bool ExactSearch::lastsAsLong(const Hand& x, const Hand& y) const {
    if (x.clock < y.clock || x.swaps > y.swaps || (x.steps & ~y.steps) != 0) return false;
    for (size_t s = 0; s < stockCount; ++s) {
        if (x.need[s] > y.need[s] || (x.steps != NoStep && x.need[s] + x.behind[s] < y.need[s] + y.behind[s])) return false;
    }
    return true;
}

/// The open outing; where work may be late, the closed ones of the same machine or person still give way to it.
Chain ExactSearch::chain() {
    Chain chain;
    for (size_t k = m_fixed; k < m_closed.size(); ++k)
        chain.push_back(&m_closed[k]);
    chain.push_back(&m_open);
    return chain;
}

Score ExactSearch::costOf(const Chain& chain, bool closed) const {
    Score score{};
    for (size_t k = 0; k < chain.size(); ++k)
        score = sum(score, m_timing.scoreOf(*chain[k], closed || k + 1 < chain.size()));
    return score;
}

/// Whether an outing of `machine` in front of the closed ones pushes them.
bool ExactSearch::movesOn(int machine) const {
    return m_mode.trouble == Trouble::Allowed && !m_closed.empty() && (m_singleCrew || m_closed.back().machine == machine);
}

bool ExactSearch::close(unsigned steps) {
    Hand& hand = m_at.hands[size_t(m_open.machine)];
    Go& first = m_open.gos.back();
    if (m_runs[size_t(first.run)].like.twice && !spend(hand, m_open.machine, first, m_timing.twiceLanes(first))) return false;
    first.steps = steps;
    if (!restoreNeed(hand, m_open.machine, steps)) return false;
    const Chain all = chain();
    if (!m_timing.time(all, m_mode.trouble, true)) return false;
    // People that are fewer than machines, but more than one, may be shared better than was tried.
    if (m_timing.guessed() || (m_mode.trouble == Trouble::Allowed && !m_freeCrew && !m_singleCrew)) m_sure = false;
    m_at.openCost = costOf(all, true);
    hand.clock = m_timing.begins(m_open);
    return true;
}

bool ExactSearch::spend(Hand& hand, int machine, const Go& go, int lanes) const {
    if (m_plenty[size_t(machine)]) return true;
    const DayMachine& m = m_problem.machines[size_t(machine)];
    const Stock& use = m.use[size_t(m_runs[size_t(go.run)].recipe)];
    for (size_t s = 0; s < stockCount; ++s) {
        hand.need[s] += use[s] * lanes;
        if (hand.need[s] > m.full[s]) return false;
    }
    return true;
}

/// Whether without the last step of this kind, behind what is needed now, something would run out: else it only fills time.
bool ExactSearch::isNeeded(const Hand& hand, unsigned step, const Stock& room) const {
    Stock touched{};
    Stock ones;
    ones.fill(1);
    restore(touched, ones, step);
    for (size_t s = 0; s < stockCount; ++s) {
        if (touched[s] && hand.need[s] + hand.behind[s] > room[s]) return true;
    }
    return false;
}

bool ExactSearch::restoreNeed(Hand& hand, int machine, unsigned steps) const {
    const Stock& full = m_problem.machines[size_t(machine)].full;
    for (unsigned step : stepKinds) {
        if (!(steps & step)) continue;
        if ((hand.steps & step) && !isNeeded(hand, step, full)) return false;
        Stock before = hand.behind;
        restore(before, hand.need, step);
        hand.behind = before;
        restore(hand.need, Stock{}, step);
        hand.steps |= step;
    }
    if (steps & SwapBit) ++hand.swaps;
    return true;
}

/// Steps that may stand in front of the machine's earliest go so far: only those without which it could run out.
std::vector<unsigned> ExactSearch::stepChoices(int machine, bool closing) const {
    if (m_plenty[size_t(machine)]) return {NoStep};
    const Hand& hand = m_at.hands[size_t(machine)];
    const DayMachine& m = m_problem.machines[size_t(machine)];
    Stock most = hand.need;
    for (size_t r = 0; r < m_runs.size(); ++r) {
        const LaneRun& run = m_runs[r];
        if (!(run.able & (1U << machine))) continue;
        const int lanes = m_at.rest.count[r] + (run.like.twice ? 2 * run.lanes() : 0);
        for (size_t s = 0; s < stockCount; ++s)
            most[s] += m.use[size_t(run.recipe)][s] * lanes;
    }
    const auto helps = [&](size_t s) { return hand.need[s] > 0 && most[s] > m.begin[s]; };
    unsigned useful = NoStep;
    for (size_t s = 0; s <= cleanerStock; ++s)
        useful |= helps(s) ? unsigned(RefillBit) : 0U;
    if (helps(wasteStock)) useful |= EmptyBit;
    if (helps(dutyStock) && m.full[dutyStock] < endless) useful |= DutyBit;
    if (helps(packStock) && hand.swaps < m.spares) useful |= SwapBit;
    if (helps(packStock) && closing) useful |= ChargeBit;
    std::vector<unsigned> choices;
    for (unsigned bits = 0; bits <= useful; ++bits) {
        if ((bits & ~useful) == 0 && (bits & (SwapBit | ChargeBit)) != (SwapBit | ChargeBit)) choices.push_back(bits);
    }
    return choices;
}

/// Whether what is in the machine lasts for what it does first.
bool ExactSearch::lasts(int machine) const {
    if (m_plenty[size_t(machine)]) return true;
    const Hand& hand = m_at.hands[size_t(machine)];
    const Stock& begin = m_problem.machines[size_t(machine)].begin;
    return std::equal(hand.need.begin(), hand.need.end(), begin.begin(), [](std::int64_t n, std::int64_t b) { return n <= b; }) &&
           std::all_of(stepKinds.begin(), stepKinds.end(),
                       [&](unsigned step) { return !(hand.steps & step) || isNeeded(hand, step, begin); });
}

/// When somebody of the shift is free.
std::vector<Slot> ExactSearch::freeOf(int shift) const {
    const DayShift& s = m_problem.shifts[size_t(shift)];
    if (m_freeCrew || (m_singleCrew && m_mode.trouble == Trouble::Allowed)) return {s.allowance};
    std::vector<Slot> bound;
    std::vector<Sec> marks{s.allowance.begin, s.allowance.end};
    for (const DraftOuting& o : m_closed) {
        if (o.window.shift != shift) continue;
        bound.push_back({m_timing.leaves(o), m_timing.ends(o)});
        marks.insert(marks.end(), {bound.back().begin, bound.back().end});
    }
    std::sort(marks.begin(), marks.end());
    std::vector<Slot> free;
    for (size_t i = 1; i < marks.size(); ++i) {
        const Slot part{marks[i - 1], marks[i]};
        const auto taken = std::count_if(bound.begin(), bound.end(), [&](const Slot& b) { return b.overlaps(part); });
        if (part.length() <= 0 || taken >= s.people) continue;
        if (!free.empty() && free.back().end == part.begin) {
            free.back().end = part.end;
        } else {
            free.push_back(part);
        }
    }
    return free;
}

std::vector<OutingWindow> ExactSearch::windowsOf(int machine) const {
    const DayMachine& m = m_problem.machines[size_t(machine)];
    std::vector<OutingWindow> windows;
    const auto add = [&](Slot open) {
        if (open.length() <= 0) return;
        if (!m.attended) windows.push_back({-1, open, open, open.begin});
        for (int s = 0; m.attended && s < int(m_problem.shifts.size()); ++s) {
            for (const Slot& free : freeOf(s)) {
                const Slot both{std::max(free.begin, open.begin), std::min(free.end, open.end)};
                if (both.length() > 0) windows.push_back({s, m_problem.shifts[size_t(s)].work, both, open.begin});
            }
        }
    };
    Sec begin = 0;
    for (const Slot& closed : m.closed) {
        add({begin, std::min(closed.begin, m_problem.length)});
        begin = std::max(begin, closed.end);
    }
    add({begin, m_problem.length});
    return windows;
}

}  // namespace laneward::planning
