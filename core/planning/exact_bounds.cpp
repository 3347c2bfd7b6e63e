#include "core/planning/exact_bounds.h"

#include "core/planning/outing_bounds.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <set>

namespace laneward::planning {

namespace {

using namespace score_part;

void addRoute(Score& score, RouteCost route) {
    score[Outings] += route / perOuting;
    score[Changes] += route % perOuting / perChange;
    score[Crossed] += route % perChange;
}

}  // namespace

ExactBounds::ExactBounds(const DayProblem& problem, const std::vector<LaneRun>& runs, const SearchMode& mode)
    : m_problem(problem), m_runs(runs), m_mode(mode), m_pause(longestPause(problem)) {
    m_next = shortestMove(problem);
    std::set<int> patterns;
    std::set<int> lanes;
    for (const LaneRun& run : runs) {
        RunTimes f{run.slots.front().begin, mode.trouble == Trouble::Allowed ? run.slots.back().end : run.cap,
                   std::numeric_limits<Sec>::max()};
        for (size_t m = 0; m < problem.machines.size(); ++m) {
            if (run.able & (1U << m)) f.lane = std::min(f.lane, problem.machines[m].lane[size_t(run.recipe)]);
        }
        m_figures.push_back(f);
        patterns.insert(run.pattern);
        // Two treatments of one lane follow each other without a move.
        for (int i = 0; i < run.lanes(); ++i) {
            if (!lanes.insert(run.firstLane + i).second) m_next = 0;
        }
    }
    patterns.erase(-1);
    m_patterns.assign(patterns.begin(), patterns.end());
    if (mode.cuts == 0 && runs.size() <= RouteBounds::mostRuns) {
        m_routes = std::make_unique<RouteBounds>(m_runs, m_figures, m_pause, m_next);
    }
    m_byEarliest.resize(runs.size());
    std::iota(m_byEarliest.begin(), m_byEarliest.end(), 0);
    m_byLatest = m_byEarliest;
    std::stable_sort(m_byEarliest.begin(), m_byEarliest.end(),
                     [&](int a, int b) { return m_figures[size_t(a)].earliest < m_figures[size_t(b)].earliest; });
    std::stable_sort(m_byLatest.begin(), m_byLatest.end(),
                     [&](int a, int b) { return m_figures[size_t(a)].latest > m_figures[size_t(b)].latest; });
    if (mode.trouble == Trouble::Allowed) prepareTrouble();
}

void ExactBounds::prepareTrouble() {
    std::vector<Loose> loose;
    for (const LaneRun& run : m_runs)
        loose.push_back({&run.like, run.slots.front().begin, run.cap, 0});
    m_hands = crowdHands(m_problem, loose);
    m_hands.next = m_next;
    const auto sorted = [&](Sec DayTask::*moment) {
        std::vector<int> order = m_byEarliest;
        std::stable_sort(order.begin(), order.end(),
                         [&](int a, int b) { return m_runs[size_t(a)].like.*moment < m_runs[size_t(b)].like.*moment; });
        return order;
    };
    m_byDue = sorted(&DayTask::due);
    m_byTarget = sorted(&DayTask::target);
}

std::optional<Score> ExactBounds::of(const Remaining& rest, const Frontier& at, const Score& spent, const Score& best) const {
    Score bound = spent;
    if (rest.lanes == 0) return bound < best ? std::optional(bound) : std::nullopt;
    bound[Treatments] += rest.lanes;
    if (m_mode.trouble == Trouble::Allowed) {
        addTrouble(rest, bound);
        if (bound >= best) return std::nullopt;
    }
    RouteCost route = 0;
    if (m_routes) {
        unsigned left = 0;
        for (size_t r = 0; r < m_runs.size(); ++r)
            left |= rest.count[r] > 0 ? 1U << r : 0U;
        route = m_routes->of(left, {at.headRun, at.headLane, at.headBegin, at.pattern[size_t(at.machine)], at.alone});
        if (route == noRoute) return std::nullopt;
        Score routed = bound;
        addRoute(routed, route);
        if (routed >= best) return std::nullopt;
    }
    int outings = std::max(int(route / perOuting), leastOutings(rest, at));
    Hands hands = handsFor(at, outings);
    if (m_mode.trouble == Trouble::None) {
        while (!fits(rest, hands)) {
            const int before = hands.count;
            hands = handsFor(at, ++outings);
            if (hands.count == before) return std::nullopt;
        }
    }
    if (m_mode.coarse) {
        bound[Outings] += outings;
    } else {
        const int changes = leastChanges(rest, at, outings);
        const int crossed = leastCrossed(rest, at, outings, changes);
        // Of two bounds the one that is later in the order of costs holds as well.
        addRoute(bound, std::max(route, perOuting * unsigned(outings) + perChange * unsigned(changes) + unsigned(crossed)));
        bound[Freshness] += leastFreshness(rest, hands);
    }
    return bound < best ? std::optional(bound) : std::nullopt;
}

/// What is left is late or tight for so long, whatever comes behind it.
void ExactBounds::addTrouble(const Remaining& rest, Score& bound) const {
    const Sec late = leastBehind(rest, m_byDue, &DayTask::due);
    bound[Late] += late;
    if (late == 0) bound[Tight] += leastBehind(rest, m_byTarget, &DayTask::target);
}

Sec ExactBounds::leastBehind(const Remaining& rest, const std::vector<int>& byMoment, Sec DayTask::*moment) const {
    std::array<Crowd, mostExactRuns> byEarliest;
    std::array<Crowd, mostExactRuns> inTurn;
    const auto fill = [&](const std::vector<int>& order, std::array<Crowd, mostExactRuns>& crowds) {
        size_t count = 0;
        for (int r : order) {
            const LaneRun& run = m_runs[size_t(r)];
            if (rest.count[size_t(r)] == 0 || !run.like.scored) continue;
            crowds[count++] = {m_figures[size_t(r)].earliest, run.like.*moment, rest.count[size_t(r)]};
        }
        return std::span<const Crowd>(crowds.data(), count);
    };
    return leastLateness({fill(m_byEarliest, byEarliest), fill(byMoment, inTurn)}, m_hands);
}

/// Work in stretches of time with a long enough pause between them takes an outing each; the open one can reach the last stretch.
int ExactBounds::leastOutings(const Remaining& rest, const Frontier& at) const {
    int outings = 0;
    Sec reach = notPlaced;
    for (int r : m_byEarliest) {
        if (rest.count[size_t(r)] == 0) continue;
        if (outings == 0 || m_figures[size_t(r)].earliest - reach > m_pause) ++outings;
        reach = std::max(reach, m_figures[size_t(r)].latest);
    }
    // The open outing may be pulled towards it.
    return outings - (reach >= m_figures[size_t(at.headRun)].earliest - m_pause ? 1 : 0);
}

/// The open outing, and the machines that may end latest in further ones.
ExactBounds::Hands ExactBounds::handsFor(const Frontier& at, int outings) const {
    Hands hands;
    hands.until[size_t(hands.count++)] = at.headBegin - m_next;
    std::array<bool, mostExactMachines> used{};
    for (; outings > 0; --outings) {
        int latest = -1;
        for (int m = 0; m < int(m_problem.machines.size()); ++m) {
            if (used[size_t(m)] || at.until[size_t(m)] == notPlaced) continue;
            if (latest < 0 || at.until[size_t(m)] > at.until[size_t(latest)]) latest = m;
        }
        if (latest < 0) break;
        used[size_t(latest)] = true;
        hands.until[size_t(hands.count++)] = at.until[size_t(latest)];
    }
    return hands;
}

/// Of any two moments, what must be done between them has room there.
bool ExactBounds::fits(const Remaining& rest, const Hands& hands) const {
    for (int e : m_byEarliest) {
        if (rest.count[size_t(e)] == 0) continue;
        const Sec from = m_figures[size_t(e)].earliest;
        Sec work = 0;
        for (auto it = m_byLatest.rbegin(); it != m_byLatest.rend(); ++it) {
            const RunTimes& f = m_figures[size_t(*it)];
            if (rest.count[size_t(*it)] == 0 || f.earliest < from) continue;
            work += (f.lane + m_next) * rest.count[size_t(*it)];
            Sec room = 0;
            for (int h = 0; h < hands.count; ++h)
                room += std::max<Sec>(0, std::min(f.latest, hands.until[size_t(h)]) - from + m_next);
            if (work > room) return false;
        }
    }
    return true;
}

Sec ExactBounds::floor(const Remaining& rest, const Frontier& at) const {
    Sec floor = notPlaced;
    Sec work = 0;
    for (auto it = m_byEarliest.rbegin(); at.alone && it != m_byEarliest.rend(); ++it) {
        const RunTimes& f = m_figures[size_t(*it)];
        if (rest.count[size_t(*it)] == 0) continue;
        work += (f.lane + m_next) * rest.count[size_t(*it)];
        floor = std::max(floor, f.earliest + work);
    }
    return floor;
}

/// Every pattern is laid for a first time by some machine; only a machine that has laid none yet does so without a change.
int ExactBounds::leastChanges(const Remaining& rest, const Frontier& at, int outings) const {
    int fresh = 0;
    for (size_t m = 0; m < m_problem.machines.size(); ++m)
        fresh += at.until[m] != notPlaced && at.pattern[m] < 0 ? 1 : 0;
    fresh = std::min(fresh, outings);
    if (at.pattern[size_t(at.machine)] < 0) ++fresh;
    int changes = 0;
    const auto laid = at.pattern.begin() + std::ptrdiff_t(m_problem.machines.size());
    for (int p : m_patterns) {
        bool wanted = false;
        for (size_t r = 0; r < m_runs.size() && !wanted; ++r)
            wanted = rest.count[r] > 0 && m_runs[r].pattern == p;
        if (wanted && std::find(at.pattern.begin(), laid, p) == laid) ++changes;
    }
    return std::max(0, changes - fresh);
}

/// Work of one pattern in one outing is a piece; lanes in between that no piece bridges are crossed.
int ExactBounds::gapsWithin(const Remaining& rest, int pieces) const {
    std::array<int, 64> gaps{};
    int count = 0;
    int classes = 0;
    const bool bare = std::any_of(m_runs.begin(), m_runs.end(), [](const LaneRun& run) { return run.pattern < 0; });
    for (int p : m_patterns) {
        int before = -1;
        for (size_t r = 0; r < m_runs.size(); ++r) {
            if (rest.count[r] == 0 || m_runs[r].pattern != p) continue;
            const int lane = m_runs[r].firstLane + rest.first[r];
            // Lanes that are only cleaned may be stops on the way: then nothing is said about this gap.
            if (before >= 0 && lane - before > 1 && !bare && count < int(gaps.size())) gaps[size_t(count++)] = lane - before - 1;
            classes += before < 0 ? 1 : 0;
            before = std::max(before, lane + rest.count[r] - 1);
        }
    }
    std::sort(gaps.begin(), gaps.begin() + count, std::greater<>());
    int sum = 0;
    for (int k = std::max(0, pieces - classes); k < count; ++k)
        sum += gaps[size_t(k)];
    return sum;
}

int ExactBounds::leastCrossed(const Remaining& rest, const Frontier& at, int outings, int changes) const {
    const int pieces = gapsWithin(rest, 1 + outings + changes);
    if (outings > 0) return pieces;
    // All of it is one path from the head: to the one end, then to the other.
    int low = std::numeric_limits<int>::max();
    int high = 0;
    for (size_t r = 0; r < m_runs.size(); ++r) {
        if (rest.count[r] == 0) continue;
        low = std::min(low, m_runs[r].firstLane + rest.first[r]);
        high = std::max(high, m_runs[r].firstLane + rest.first[r] + rest.count[r] - 1);
    }
    const int toLow = std::max(0, at.headLane - low);
    const int toHigh = std::max(0, high - at.headLane);
    return std::max(pieces, toLow + toHigh + std::min(toLow, toHigh) - rest.lanes);
}

/// Equal lanes on machines that are free backward from `until`: the one that may end last is always done next, which is optimal
/// for equal times (list scheduling), and no worse than any for longer ones.
Sec ExactBounds::leastFreshness(const Remaining& rest, const Hands& hands) const {
    Sec lane = std::numeric_limits<Sec>::max();
    for (size_t r = 0; r < m_runs.size(); ++r) {
        if (rest.count[r] > 0) lane = std::min(lane, m_figures[r].lane);
    }
    std::array<Sec, mostExactMachines + 1> until = hands.until;
    const Sec step = lane + m_next;
    Sec sum = 0;
    for (int r : m_byLatest) {
        const LaneRun& run = m_runs[size_t(r)];
        const RunTimes& f = m_figures[size_t(r)];
        const Sec count = rest.count[size_t(r)];
        if (run.like.fresh == 0 || count == 0) continue;
        sum += (run.like.fresh - 1) * (run.like.play - f.latest) * count;
        if (hands.count <= 1) {
            // One lane behind the other: an arithmetic series.
            const Sec end = hands.count == 0 ? f.latest : std::min(f.latest, until[0]);
            sum += count * (run.like.play - end) + (hands.count == 0 ? 0 : step * (count * (count - 1) / 2));
            until[0] = end - step * count;
            continue;
        }
        for (Sec i = 0; i < count; ++i) {
            size_t hand = 0;
            for (size_t h = 1; h < size_t(hands.count); ++h)
                hand = until[h] > until[hand] ? h : hand;
            const Sec end = std::min(f.latest, until[hand]);
            sum += run.like.play - end;
            until[hand] = end - step;
        }
    }
    return sum;
}

}  // namespace laneward::planning
