#include "core/planning/route_bounds.h"

#include <algorithm>
#include <bit>
#include <cstdlib>

namespace laneward::planning {

namespace {

RouteCost add(RouteCost a, RouteCost b) { return a == noRoute || b == noRoute ? noRoute : a + b; }

}  // namespace

RouteBounds::RouteBounds(const std::vector<LaneRun>& runs, const std::vector<RunTimes>& times, Sec pause, Sec next)
    : m_runs(runs), m_times(times), m_next(next) {
    const size_t n = runs.size();
    for (size_t r = 0; r < n; ++r) {
        unsigned before = 0;
        unsigned link = 0;
        for (size_t o = 0; o < n; ++o) {
            if (o == r || times[o].earliest + times[o].lane + next > times[r].latest - times[r].lane) continue;
            before |= 1U << o;
            if (times[r].earliest - times[o].latest <= pause) link |= 1U << o;
        }
        m_before.push_back(before);
        m_link.push_back(link);
    }
    m_any.assign((size_t{1} << n) * n * 2, noRoute);
    m_more = m_any;
    m_begin.assign(size_t{1} << n, noRoute);
    for (unsigned left = 0; left < (1U << n); ++left) {
        m_begin[left] = begin(left);
        for (size_t r = 0; r < n; ++r) {
            if (left & (1U << r)) continue;
            for (int down : {0, 1}) {
                const int lane = down ? runs[r].firstLane + runs[r].lanes() - 1 : runs[r].firstLane;
                const Head head{int(r), lane, 0, runs[r].pattern, false};
                // A new outing may begin with any of them, wherever the last one began.
                m_any[index(left, r, down)] = left == 0 ? 0 : std::min(m_begin[left], step(left, m_link[r], head, false));
                m_more[index(left, r, down)] = std::min(m_begin[left], step(left, m_link[r], head, true));
            }
        }
    }
}

/// After a go of `run`, what is left; some of it that cannot come before it needs another outing on another machine.
RouteCost RouteBounds::behind(unsigned left, size_t run, int down, bool another) const {
    const bool more = another || (left & ~m_before[run]) != 0;
    return (more ? m_more : m_any)[index(left, run, down)];
}

RouteCost RouteBounds::begin(unsigned left) const {
    RouteCost best = noRoute;
    for (unsigned rest = left; rest != 0; rest &= rest - 1) {
        const size_t r = size_t(std::countr_zero(rest));
        for (int down : {0, 1})
            best = std::min(best, behind(left & ~(1U << r), r, down, false));
    }
    return add(best, perOuting);
}

RouteCost RouteBounds::step(unsigned left, unsigned reach, const Head& head, bool another) const {
    RouteCost best = noRoute;
    for (unsigned rest = left & reach; rest != 0; rest &= rest - 1) {
        const size_t r = size_t(std::countr_zero(rest));
        const LaneRun& to = m_runs[r];
        const RouteCost change = head.pattern >= 0 && to.pattern >= 0 && to.pattern != head.pattern ? perChange : 0;
        for (int down : {0, 1}) {
            // It ends where the head begins, so `down` ends with its lowest lane.
            const int entry = down ? to.firstLane : to.firstLane + to.lanes() - 1;
            const RouteCost crossed = RouteCost(std::max(0, std::abs(entry - head.lane) - 1));
            best = std::min(best, add(behind(left & ~(1U << r), r, down, another), change + crossed));
        }
    }
    return best;
}

RouteCost RouteBounds::of(unsigned left, const Head& head) const {
    if (left == 0) return 0;
    unsigned before = 0;
    for (unsigned rest = left; rest != 0; rest &= rest - 1) {
        const size_t r = size_t(std::countr_zero(rest));
        if (m_times[r].earliest + m_times[r].lane + m_next <= head.begin) before |= 1U << r;
    }
    const bool more = (left & ~before) != 0;
    if (more && head.alone) return noRoute;
    // The outing may be pulled towards what comes before it, so the head itself says nothing of the pause there.
    return std::min(m_begin[left], step(left, before & m_link[size_t(head.run)], head, more));
}

}  // namespace laneward::planning
