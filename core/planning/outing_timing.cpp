#include "core/planning/outing_timing.h"

#include <algorithm>
#include <cstdlib>
#include <limits>

namespace laneward::planning {

namespace {

using namespace score_part;

constexpr Sec anyTime = std::numeric_limits<Sec>::max() / 4;

/// Latest end that the run's lanes must keep in any plan: work right before play that asks nothing still leaves it its settle
/// time.
Sec hardEnd(const LaneRun& run) {
    if (run.like.scored) return anyTime;
    if (run.cap <= run.like.target) return run.like.target;
    return run.cap <= run.like.due ? run.like.due : anyTime;
}

}  // namespace

Sec OutingTiming::length(int m, const Go& go) const {
    const DayMachine& machine = m_problem.machines[size_t(m)];
    const Sec lane = machine.lane[size_t(m_runs[size_t(go.run)].recipe)];
    return lane * go.count + machine.next * (go.count - 1);
}

int OutingTiming::firstLane(const Go& go) const {
    return m_runs[size_t(go.run)].firstLane + (go.down ? go.first + go.count - 1 : go.first);
}

int OutingTiming::lastLane(const Go& go) const {
    return m_runs[size_t(go.run)].firstLane + (go.down ? go.first : go.first + go.count - 1);
}

int OutingTiming::twiceLanes(const Go& go) const {
    const int first = firstLane(go);
    return go.count > 1 && pairPartner(first) == (go.down ? first - 1 : first + 1) ? 2 : 1;
}

Sec OutingTiming::twiceTime(int m, const Go& go) const {
    const DayMachine& machine = m_problem.machines[size_t(m)];
    const Sec lane = machine.lane[size_t(m_runs[size_t(go.run)].recipe)];
    return twiceLanes(go) == 2 ? 2 * lane + 2 * machine.next : lane;
}

Sec OutingTiming::leadIn(const DraftOuting& o) const {
    const Go& first = o.gos.back();
    const Sec twice = m_runs[size_t(first.run)].like.twice ? twiceTime(o.machine, first) : 0;
    return machine(o).leave + stepTime(machine(o), first.steps & ~unsigned(ChargeBit)) + twice;
}

Sec OutingTiming::leaves(const DraftOuting& o) const { return o.gos.back().begin - leadIn(o); }

Sec OutingTiming::begins(const DraftOuting& o) const {
    return leaves(o) - stepTime(machine(o), o.gos.back().steps & unsigned(ChargeBit));
}

Sec OutingTiming::ends(const DraftOuting& o) const {
    return o.gos.front().begin + length(o.machine, o.gos.front()) + machine(o).back;
}

/// From the end of the go before `k`, which is `k + 1`, to its begin.
Sec OutingTiming::between(const DraftOuting& o, size_t k) const {
    return moveTime(machine(o), lastLane(o.gos[k + 1]), firstLane(o.gos[k])) +
           stepTime(machine(o), o.gos[k].steps & ~unsigned(ChargeBit));
}

Sec OutingTiming::latestIn(const DraftOuting& o, const Go& go, Sec begin, Sec extra) const {
    const LaneRun& r = run(go);
    const Sec work = length(o.machine, go);
    for (auto slot = r.slots.rbegin(); slot != r.slots.rend(); ++slot) {
        const Sec b = std::min(begin, slot->end - work);
        if (b - extra >= slot->begin) return b + machine(o).lane[size_t(r.recipe)] >= r.like.earliestEnd ? b : notPlaced;
    }
    return notPlaced;
}

Sec OutingTiming::earliestIn(const DraftOuting& o, const Go& go, Sec begin, Sec extra) const {
    const LaneRun& r = run(go);
    const Sec work = length(o.machine, go);
    begin = std::max(begin, r.like.earliestEnd - machine(o).lane[size_t(r.recipe)]);
    for (const Slot& slot : r.slots) {
        const Sec b = std::max(begin, slot.begin + extra);
        if (b + work <= slot.end) return b;
    }
    return notPlaced;
}

/// The chain as one list of gos, the latest first, with what must lie between them.
void OutingTiming::lay(const Chain& chain, bool closed) {
    m_places.clear();
    m_limits.resize(chain.size());
    for (size_t i = 0; i < chain.size(); ++i) {
        DraftOuting& o = *chain[i];
        const bool whole = closed || i + 1 < chain.size();
        for (size_t k = 0; k < o.gos.size(); ++k) {
            Place place{&o, &o.gos[k], i, length(o.machine, o.gos[k]), 0, anyTime};
            place.last = k == 0;
            place.first = k + 1 == o.gos.size();
            if (!place.first) {
                place.least = between(o, k);
                place.patience = patience(machine(o));
            } else {
                place.twice = whole && run(o.gos[k]).like.twice ? twiceTime(o.machine, o.gos[k]) : 0;
                place.lead = whole ? leadIn(o) : machine(o).leave;
                place.charge = whole ? stepTime(machine(o), o.gos[k].steps & unsigned(ChargeBit)) : 0;
                if (i + 1 < chain.size()) place.least = machine(*chain[i + 1]).back + place.lead + place.charge;
            }
            m_places.push_back(place);
        }
    }
}

/// The greatest fixed point below the caps.
bool OutingTiming::latest() {
    for (Place& p : m_places)
        p.go->begin = p.cap;
    const size_t n = m_places.size();
    for (bool moved = true; moved;) {
        moved = false;
        for (size_t k = 0; k < n; ++k) {
            const Place& p = m_places[k];
            Sec b = k == 0 ? anyTime : m_places[k - 1].go->begin - m_places[k - 1].least;
            if (p.last) b = std::min(b, m_limits[p.index].end - machine(*p.outing).back);
            b = std::min(b - p.work, p.go->begin);
            if (k + 1 < n && !p.first)
                b = std::min(b, m_places[k + 1].go->begin + m_places[k + 1].work + p.least + p.patience - 1);
            b = latestIn(*p.outing, *p.go, b, p.twice);
            if (b == notPlaced || b < p.floor) return false;
            moved = moved || b < p.go->begin;
            p.go->begin = b;
            if (p.first && (b - p.lead < m_limits[p.index].begin || b - p.lead - p.charge < p.outing->window.open)) return false;
        }
    }
    return true;
}

/// The least fixed point, if it is below the caps.
bool OutingTiming::earliest() {
    const size_t n = m_places.size();
    for (Place& p : m_places)
        p.go->begin = std::max(p.floor, std::max(m_limits[p.index].begin, p.outing->window.open + p.charge) + p.lead);
    for (bool moved = true; moved;) {
        moved = false;
        for (size_t k = n; k-- > 0;) {
            const Place& p = m_places[k];
            Sec b = p.go->begin;
            if (k + 1 < n) b = std::max(b, m_places[k + 1].go->begin + m_places[k + 1].work + p.least);
            if (k > 0 && !m_places[k - 1].first) {
                const Place& next = m_places[k - 1];
                b = std::max(b, next.go->begin - next.least - p.work - next.patience + 1);
            }
            b = earliestIn(*p.outing, *p.go, b, p.twice);
            if (b == notPlaced || b > p.cap) return false;
            if (p.last && b + p.work + machine(*p.outing).back > m_limits[p.index].end) return false;
            moved = moved || b > p.go->begin;
            p.go->begin = b;
        }
    }
    return true;
}

/// Within the caps: no overtime, else before paid time, else after it. Narrows the limits to what that takes.
bool OutingTiming::leastOvertime() {
    const std::vector<Limits> allowed = m_limits;
    const auto workOf = [](const Place& p) {
        return p.outing->window.shift < 0 ? Slot{-anyTime, anyTime} : p.outing->window.work;
    };
    for (const Place& p : m_places)
        m_limits[p.index].end = std::min(allowed[p.index].end, workOf(p).end);
    if (latest()) {
        for (const Place& p : m_places) {
            if (p.first)
                m_limits[p.index].begin = std::max(allowed[p.index].begin, std::min(workOf(p).begin, p.go->begin - p.lead));
        }
        return true;
    }
    m_limits = allowed;
    for (const Place& p : m_places)
        m_limits[p.index].begin = std::max(allowed[p.index].begin, workOf(p).begin);
    if (!earliest()) {
        m_limits = allowed;
        m_guessed = true;
        if (!earliest()) return false;
    }
    for (const Place& p : m_places) {
        const Sec end = p.go->begin + p.work + machine(*p.outing).back;
        if (p.last) m_limits[p.index].end = std::min(allowed[p.index].end, std::max(workOf(p).end, end));
    }
    return true;
}

/// What is in time now stays so.
void OutingTiming::keepWithin(Sec DayTask::*moment) {
    for (Place& p : m_places) {
        if (run(*p.go).like.scored) p.cap = std::min(p.cap, std::max(run(*p.go).like.*moment - p.work, p.go->begin));
    }
}

bool OutingTiming::leastTrouble() {
    for (Place& p : m_places)
        p.cap = hardEnd(run(*p.go)) - p.work;
    limitBy(Trouble::Allowed);
    if (!earliest()) return false;
    keepWithin(&DayTask::due);
    if (!leastOvertime() || !earliest()) return false;
    keepWithin(&DayTask::target);
    return latest();
}

/// Paid time, or all that is allowed.
void OutingTiming::limitBy(Trouble trouble) {
    for (const Place& p : m_places) {
        const OutingWindow& w = p.outing->window;
        Limits& limits = m_limits[p.index];
        limits = {w.allowance.begin, std::min(p.outing->limit, w.allowance.end)};
        if (trouble == Trouble::None) limits = {std::max(w.work.begin, limits.begin), std::min(w.work.end, limits.end)};
    }
}

bool OutingTiming::time(const Chain& chain, Trouble trouble, bool closed, Sec floor) {
    m_guessed = false;
    lay(chain, closed);
    m_places.back().floor = floor;
    for (Place& p : m_places)
        p.cap = run(*p.go).like.target - p.work;
    limitBy(Trouble::None);
    // What is placed in an earlier stretch so as to be in time may push other work into trouble, but then it is in none itself.
    if (latest()) return true;
    return trouble == Trouble::Allowed && leastTrouble();
}

bool OutingTiming::timeAdded(DraftOuting& o) {
    const size_t k = o.gos.size() - 1;
    if (k == 0) return time({&o}, Trouble::None, false);
    const Sec work = length(o.machine, o.gos[k]);
    const Sec next = o.gos[k - 1].begin - between(o, k - 1);
    const Sec b = latestIn(o, o.gos[k], std::min(next, run(o.gos[k]).like.target) - work, 0);
    if (b == notPlaced) return false;
    o.gos[k].begin = b;
    if (next - (b + work) >= patience(machine(o))) return time({&o}, Trouble::None, false);
    return b - machine(o).leave >= std::max(o.window.work.begin, o.window.allowance.begin);
}

PullRange OutingTiming::pullOf(const DraftOuting& o, std::vector<Pull>& pulls) const {
    PullRange range{anyTime, anyTime};
    Sec slack = 0;
    for (size_t k = o.gos.size(); k-- > 0;) {
        const Go& go = o.gos[k];
        const LaneRun& r = run(go);
        pulls.push_back({slack, Sec(r.like.fresh) * go.count});
        const auto slot = std::find_if(r.slots.rbegin(), r.slots.rend(), [&](const Slot& s) { return s.begin <= go.begin; });
        const Sec young = r.like.earliestEnd - machine(o).lane[size_t(r.recipe)];
        range.sure = std::min(range.sure, slack + go.begin - std::max(slot->begin, young));
        range.most = std::min(range.most, slack + go.begin - r.slots.front().begin);
        if (k == 0) break;
        const Sec wait = o.gos[k - 1].begin - (go.begin + length(o.machine, go) + between(o, k - 1));
        slack += patience(machine(o)) - 1 - wait;
    }
    return range;
}

Score OutingTiming::scoreOf(const DraftOuting& o, bool closed) const {
    Score score{};
    for (size_t k = 0; k < o.gos.size(); ++k) {
        const Go& go = o.gos[k];
        const DayTask& task = m_runs[size_t(go.run)].like;
        const Sec lane = machine(o).lane[size_t(m_runs[size_t(go.run)].recipe)];
        const Sec step = lane + machine(o).next;
        score[Treatments] += go.count;
        score[Freshness] += task.fresh * (go.count * (task.play - go.begin - lane) - step * go.count * (go.count - 1) / 2);
        const bool troubled = task.scored && go.begin + length(o.machine, go) > task.target;
        for (int i = 0; troubled && i < go.count; ++i) {
            const Sec end = go.begin + lane + step * i;
            if (end > task.due) score[Late] += end - task.due;
            if (end > task.target && end <= task.due) score[Tight] += end - task.target;
        }
        if (k > 0) score[Crossed] += std::max(0, std::abs(firstLane(o.gos[k - 1]) - lastLane(go)) - 1);
    }
    if (o.window.shift < 0) return score;
    const Sec from = closed ? leaves(o) : o.gos.back().begin - machine(o).leave;
    const Sec inside = std::min(ends(o), o.window.work.end) - std::max(from, o.window.work.begin);
    score[Overtime] = ends(o) - from - std::max<Sec>(0, inside);
    return score;
}

}  // namespace laneward::planning
