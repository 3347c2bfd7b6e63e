#include "core/planning/placer.h"

#include <algorithm>
#include <utility>

namespace laneward::planning {

namespace {

constexpr int retries = 16;

}  // namespace

bool Placer::strippedOnly(const Trip& trip) const {
    return std::all_of(trip.blocks.begin(), trip.blocks.end(), [&](int b) {
        const auto& tasks = m_solution[size_t(b)].tasks;
        return std::all_of(tasks.begin(), tasks.end(), [&](int t) { return m_problem.tasks[size_t(t)].stripped; });
    });
}

void Placer::bind(Trip& trip, bool overtime) {
    trip.shift = m_crew.shiftFor(trip.attended, overtime);
    m_crew.bind(trip.attended, trip.shift);
}

/// The earliest begin (charging included) that machine and people allow; notPlaced = none, the same begin = it fits.
Sec Placer::earliestFit(const Trip& trip, bool overtime) const {
    const DayMachine& m = m_problem.machines[size_t(trip.machine)];
    const Sec charge = trip.attended.begin - trip.time.begin;
    Sec begin = trip.time.begin;
    for (bool moved = true; moved;) {
        moved = false;
        for (const Slot& closed : m.closed) {
            if (!closed.overlaps({begin, begin + trip.time.length()})) continue;
            begin = closed.end;
            moved = true;
        }
        if (begin + trip.time.length() > m_problem.length) return notPlaced;
        if (!m.attended) continue;
        const Sec staffed = m_crew.earliestBegin(trip.attended.length(), begin + charge, overtime);
        if (staffed == notPlaced) return notPlaced;
        moved = moved || staffed - charge > begin;
        begin = staffed - charge;
    }
    return begin;
}

/// As early as `from` and the blocks' floors allow. Lanes that cannot be reached in time are dropped from the blocks' work.
std::optional<TripPlan> Placer::placeEarliest(const std::vector<int>& blocks, Sec from, const std::vector<Sec>& floors,
                                              bool overtime) {
    for (int attempt = 0; attempt < retries; ++attempt) {
        TripPlan plan;
        std::vector<int> kept;
        for (size_t k = 0; k < blocks.size(); ++k) {
            BlockWork& work = m_work[size_t(blocks[k])];
            if (work.isEmpty()) continue;
            const bool first = kept.empty();
            Sec begin = first ? from + chargeTime(blocks[k]) + leadIn(blocks[k])
                              : plan.begins.back() + m_work[size_t(kept.back())].length() + between(kept.back(), blocks[k]);
            const Sec ready = begin;
            begin = work.earliestBegin(std::max(begin, floors[k]), first && work.wantsTwice());
            if (begin == notPlaced) continue;
            if (!first && begin >= ready + patience(blocks[k])) return std::nullopt;
            kept.push_back(blocks[k]);
            plan.begins.push_back(begin);
        }
        if (kept.empty()) return std::nullopt;
        plan.trip = tripOf(kept, plan.begins);
        const Sec begin = earliestFit(plan.trip, overtime);
        if (begin == plan.trip.time.begin) return plan;
        if (begin == notPlaced) break;
        from = begin;
    }
    return std::nullopt;
}

bool Placer::stillFits(const TripPlan& plan, Sec from) const {
    if (plan.trip.time.begin < from) return false;
    return !m_problem.machines[size_t(plan.trip.machine)].attended || m_crew.shiftFor(plan.trip.attended, m_overtime) >= 0;
}

Sec Placer::lanesIn(const std::vector<int>& blocks) const {
    Sec lanes = 0;
    for (int b : blocks)
        lanes += m_work[size_t(b)].lanes();
    return lanes;
}

std::vector<BlockWork> Placer::workOf(const std::vector<int>& blocks) const {
    std::vector<BlockWork> work;
    for (int b : blocks)
        work.push_back(m_work[size_t(b)]);
    return work;
}

void Placer::setWork(const std::vector<int>& blocks, const std::vector<BlockWork>& work) {
    for (size_t k = 0; k < blocks.size(); ++k)
        m_work[size_t(blocks[k])] = work[k];
}

/// `blocks` behind the machine's last trip, as one trip with it. Nothing when that loses more lanes or ends later than `alone`.
std::optional<TripPlan> Placer::joined(const TripPlan& last, const Pending& next, const std::vector<Sec>& floors,
                                       const Alternative& alone) {
    std::vector<int> blocks = last.trip.blocks;
    blocks.insert(blocks.end(), next.plan.trip.blocks.begin(), next.plan.trip.blocks.end());
    std::vector<Sec> both = last.begins;
    both.insert(both.end(), floors.begin(), floors.end());
    const bool attended = m_problem.machines[size_t(last.trip.machine)].attended;
    if (attended) m_crew.release(last.trip.attended, last.trip.shift);
    const Sec had = lanesIn(blocks);
    std::optional<TripPlan> plan = placeEarliest(blocks, last.trip.time.begin, both, m_overtime);
    const bool asGood = plan && plan->trip.blocks.size() == blocks.size() && had - lanesIn(blocks) <= alone.lost &&
                        (!alone.plan || plan->trip.time.end <= alone.plan->trip.time.end);
    if (asGood) return plan;
    if (attended) m_crew.bind(last.trip.attended, last.trip.shift);
    return std::nullopt;
}

/// The latest begin of `block` that is tight for nobody.
Sec Placer::noLaterThan(int block) const { return m_work[size_t(block)].cap(false) - m_work[size_t(block)].length(); }

bool Placer::isTight(const TripPlan& plan) const {
    for (size_t k = 0; k < plan.begins.size(); ++k) {
        if (plan.begins[k] > noLaterThan(plan.trip.blocks[k])) return true;
    }
    return false;
}

/// Going backward put it where it should be, as late as is good.
bool Placer::waits(const Pending& pending) const {
    return pending.placed && !strippedOnly(pending.plan.trip) && !isTight(pending.plan);
}

/// No block begins before this, though it could: later is fresher. What is tight, or leaves lanes stripped, need not wait.
std::vector<Sec> Placer::floorsOf(const Pending& pending) const {
    std::vector<Sec> floors = pending.plan.begins;
    for (size_t k = 0; k < floors.size(); ++k) {
        const int block = pending.plan.trip.blocks[k];
        if (strippedOnly(pending.plan.trip)) floors[k] = 0;
        if (pending.placed && !m_work[size_t(block)].isEmpty()) floors[k] = std::min(floors[k], noLaterThan(block));
    }
    return floors;
}

/// Keeps a trip where it was when nothing pushes it; one that was tight there moves forward as far as paid time allows.
bool Placer::keepPlace(Pending& next, Sec from) {
    if (!next.placed || strippedOnly(next.plan.trip)) return false;
    const std::vector<int>& blocks = next.plan.trip.blocks;
    if (isTight(next.plan)) {
        const std::vector<BlockWork> untouched = workOf(blocks);
        const Sec had = lanesIn(blocks);
        std::optional<TripPlan> sooner = placeEarliest(blocks, from, floorsOf(next), false);
        if (sooner && lanesIn(blocks) == had && sooner->begins.size() == blocks.size() &&
            sooner->trip.time.end <= next.plan.trip.time.end) {
            finish(*std::move(sooner));
            return true;
        }
        setWork(blocks, untouched);
    }
    if (!stillFits(next.plan, from)) return false;
    finish(std::move(next.plan));
    return true;
}

/// Trips are taken up in the order in which they could begin.
Sec Placer::turnOf(const Pending& pending) const {
    const int first = pending.plan.trip.blocks.front();
    if (m_work[size_t(first)].isEmpty()) return 0;
    if (!pending.placed || strippedOnly(pending.plan.trip))
        return m_work[size_t(first)].cap(true) - m_work[size_t(first)].length();
    return std::min(pending.plan.trip.time.begin, noLaterThan(first) - leadIn(first));
}

/// The next trip of one machine: where it was if nothing pushes it, else as early as possible, joined to the one before if that
/// helps.
void Placer::forwardNext(Pending next) {
    std::vector<TripPlan>& done = m_done[size_t(next.plan.trip.machine)];
    const Sec from = done.empty() ? 0 : done.back().trip.time.end;
    if (keepPlace(next, from)) return;
    const std::vector<int>& blocks = next.plan.trip.blocks;
    const std::vector<Sec> floors = floorsOf(next);
    const std::vector<BlockWork> untouched = workOf(blocks);
    const Sec had = lanesIn(blocks);
    Alternative alone{placeEarliest(blocks, from, floors, m_overtime), 0};
    alone.lost = had - lanesIn(blocks);
    if (!done.empty() && !m_solution[size_t(blocks.front())].cut && chargeTime(blocks.front()) == 0) {
        const std::vector<BlockWork> afterAlone = workOf(blocks);
        const std::vector<BlockWork> lastWork = workOf(done.back().trip.blocks);
        setWork(blocks, untouched);
        if (std::optional<TripPlan> plan = joined(done.back(), next, floors, alone)) {
            done.pop_back();
            finish(*std::move(plan));
            return;
        }
        setWork(blocks, afterAlone);
        setWork(done.back().trip.blocks, lastWork);
    }
    if (alone.plan) finish(*std::move(alone.plan));
}

void Placer::finish(TripPlan plan) {
    if (m_problem.machines[size_t(plan.trip.machine)].attended) bind(plan.trip, m_overtime);
    m_done[size_t(plan.trip.machine)].push_back(std::move(plan));
}

void Placer::forward() {
    m_crew = DayCrew(m_problem);
    for (;;) {
        int next = -1;
        const auto key = [&](int m) { return turnOf(m_pending[size_t(m)].front()); };
        for (int m = 0; m < int(m_pending.size()); ++m) {
            if (!m_pending[size_t(m)].empty() && (next < 0 || key(m) < key(next))) next = m;
        }
        if (next < 0) return;
        auto& queue = m_pending[size_t(next)];
        Pending pending = std::move(queue.front());
        queue.erase(queue.begin());
        forwardNext(std::move(pending));
    }
}

}  // namespace laneward::planning
