#include "core/planning/placement.h"

#include <algorithm>

namespace laneward::planning {

DayCrew::DayCrew(const DayProblem& problem) : m_problem(&problem) {
    std::vector<Slot> committed;
    for (const DayMachine& machine : problem.machines) {
        for (const FixedOuting& outing : machine.outings) {
            if (outing.attended.length() > 0) committed.push_back(outing.attended);
        }
    }
    std::sort(committed.begin(), committed.end(),
              [](const Slot& a, const Slot& b) { return a.begin != b.begin ? a.begin < b.begin : a.end < b.end; });
    for (const Slot& time : committed) {
        const int shift = shiftFor(time, true);
        if (shift >= 0) bind(time, shift);
    }
}

void DayCrew::release(Slot time, int shift) {
    const auto found =
        std::find_if(m_bound.begin(), m_bound.end(), [&](const Bound& b) { return b.time == time && b.shift == shift; });
    if (found != m_bound.end()) m_bound.erase(found);
}

Slot DayCrew::window(int shift, bool overtime) const {
    const DayShift& s = m_problem->shifts[size_t(shift)];
    return overtime ? s.allowance : s.work;
}

bool DayCrew::canSpare(int shift, Slot time) const {
    // The number of bound people only grows where a binding begins, so these are the only moments to look at.
    const auto boundAt = [&](Sec t) {
        return std::count_if(m_bound.begin(), m_bound.end(),
                             [&](const Bound& b) { return b.shift == shift && b.time.begin <= t && t < b.time.end; });
    };
    const int people = m_problem->shifts[size_t(shift)].people;
    if (boundAt(time.begin) >= people) return false;
    return std::none_of(m_bound.begin(), m_bound.end(), [&](const Bound& b) {
        return b.shift == shift && time.begin < b.time.begin && b.time.begin < time.end && boundAt(b.time.begin) >= people;
    });
}

Sec DayCrew::overtimeOf(Slot time, int shift) const {
    const Slot& work = m_problem->shifts[size_t(shift)].work;
    const Sec inside = std::max<Sec>(0, std::min(time.end, work.end) - std::max(time.begin, work.begin));
    return time.length() - inside;
}

int DayCrew::shiftFor(Slot time, bool overtime) const {
    int best = -1;
    for (int shift = 0; shift < int(m_problem->shifts.size()); ++shift) {
        const Slot w = window(shift, overtime);
        if (time.begin < w.begin || w.end < time.end || !canSpare(shift, time)) continue;
        if (best < 0 || overtimeOf(time, shift) < overtimeOf(time, best)) best = shift;
    }
    return best;
}

Sec DayCrew::latestEnd(Sec length, Sec end, bool overtime) const {
    Sec latest = notPlaced;
    for (int shift = 0; shift < int(m_problem->shifts.size()); ++shift) {
        const Slot w = window(shift, overtime);
        Sec e = std::min(end, w.end);
        while (e - length >= w.begin && !canSpare(shift, {e - length, e})) {
            Sec earlier = w.begin - 1;
            for (const Bound& b : m_bound) {
                if (b.shift == shift && b.time.begin < e && b.time.end > e - length) earlier = std::max(earlier, b.time.begin);
            }
            e = earlier;
        }
        if (e - length >= w.begin) latest = std::max(latest, e);
    }
    return latest;
}

Sec DayCrew::earliestBegin(Sec length, Sec begin, bool overtime) const {
    Sec earliest = notPlaced;
    for (int shift = 0; shift < int(m_problem->shifts.size()); ++shift) {
        const Slot w = window(shift, overtime);
        Sec b = std::max(begin, w.begin);
        while (b + length <= w.end && !canSpare(shift, {b, b + length})) {
            Sec later = w.end;
            for (const Bound& bound : m_bound) {
                if (bound.shift == shift && bound.time.end > b && bound.time.begin < b + length)
                    later = std::min(later, bound.time.end);
            }
            b = later;
        }
        if (b + length <= w.end && (earliest == notPlaced || b < earliest)) earliest = b;
    }
    return earliest;
}

}  // namespace laneward::planning
