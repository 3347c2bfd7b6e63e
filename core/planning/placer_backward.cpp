#include "core/planning/placer.h"

#include <algorithm>

namespace laneward::planning {

namespace {

// Each retry moves a trip to an earlier moment that something else allows; crowded days settle within a few.
constexpr int retries = 16;

}  // namespace

Sec Placer::leadIn(int block) const {
    const BlockWork& work = m_work[size_t(block)];
    return attendedSteps(block) + machine(block).leave + (work.wantsTwice() ? work.twiceTime() : 0);
}

Sec Placer::between(int a, int b) const {
    return moveTime(machine(b), m_work[size_t(a)].lastLane(), m_work[size_t(b)].firstLane()) + attendedSteps(b);
}

Trip Placer::tripOf(const std::vector<int>& blocks, const std::vector<Sec>& begins) const {
    const int first = blocks.front();
    const Sec leaves = begins.front() - leadIn(first);
    const Sec end = begins.back() + m_work[size_t(blocks.back())].length() + machine(first).back;
    return {m_solution[size_t(first)].machine, blocks, {leaves - chargeTime(first), end}, {leaves, end}, -1};
}

/// Every block as late as the next one, its lanes and its targets allow.
bool Placer::beginsLatest(const std::vector<int>& blocks, Sec until, bool tight, std::vector<Sec>& begins) const {
    Sec end = until - machine(blocks.front()).back;
    for (size_t k = blocks.size(); k-- > 0;) {
        const BlockWork& work = m_work[size_t(blocks[k])];
        begins[k] = work.latestBegin(end - work.length(), k == 0 && work.wantsTwice(), tight);
        if (begins[k] == notPlaced) return false;
        if (k > 0) end = begins[k] - between(blocks[k - 1], blocks[k]);
    }
    return true;
}

/// A machine that would wait longer than the way to its bay and back takes goes home: such a trip is not one trip. Later blocks
/// are pulled forward until nobody waits that long.
bool Placer::pullTogether(const std::vector<int>& blocks, bool tight, std::vector<Sec>& begins) const {
    for (size_t k = 1; k < blocks.size(); ++k) {
        const Sec ready = begins[k - 1] + m_work[size_t(blocks[k - 1])].length() + between(blocks[k - 1], blocks[k]);
        const Sec latest = ready + patience(blocks[k]) - 1;
        if (begins[k] <= latest) continue;
        begins[k] = m_work[size_t(blocks[k])].latestBegin(latest, false, tight);
        if (begins[k] == notPlaced || begins[k] < ready) return false;
    }
    return true;
}

/// The latest end that machine and people allow for a trip of this length; notPlaced = none, the same end = it fits.
Sec Placer::latestFit(const Trip& trip, Tier tier) const {
    const DayMachine& m = m_problem.machines[size_t(trip.machine)];
    Sec end = trip.time.end;
    for (bool moved = true; moved;) {
        moved = false;
        for (const Slot& closed : m.closed) {
            if (!closed.overlaps({end - trip.time.length(), end})) continue;
            end = closed.begin;
            moved = true;
        }
        if (end - trip.time.length() < 0) return notPlaced;
        if (!m.attended) continue;
        const Sec staffed = m_crew.latestEnd(trip.attended.length(), end, tier.overtime);
        if (staffed == notPlaced) return notPlaced;
        moved = moved || staffed < end;
        end = staffed;
    }
    return end;
}

std::optional<TripPlan> Placer::placeLatest(const std::vector<int>& blocks, Sec until, Tier tier) const {
    TripPlan plan{{}, std::vector<Sec>(blocks.size())};
    for (int attempt = 0; attempt < retries; ++attempt) {
        if (!beginsLatest(blocks, until, tier.tight, plan.begins) || !pullTogether(blocks, tier.tight, plan.begins)) break;
        plan.trip = tripOf(blocks, plan.begins);
        const Sec end = latestFit(plan.trip, tier);
        if (end == notPlaced) break;
        if (end == plan.trip.time.end) return plan;
        until = end;
    }
    return std::nullopt;
}

/// Places the last blocks that are left on machine `m` as one trip, as many as go together.
void Placer::backwardOn(int m, std::vector<int>& left, std::vector<Sec>& until) {
    std::vector<int> blocks{left.back()};
    left.pop_back();
    std::optional<TripPlan> plan;
    Tier tier;
    for (Tier t : {Tier{false, false}, Tier{false, true}, Tier{true, true}}) {
        tier = t;
        if (t.overtime && !m_overtime) break;
        plan = placeLatest(blocks, until[size_t(m)], t);
        if (plan) break;
    }
    Pending pending{{tripOf(blocks, {0}), {notPlaced}}, false};
    if (plan) {
        while (!left.empty() && !m_solution[size_t(blocks.front())].cut && chargeTime(blocks.front()) == 0) {
            std::vector<int> more{left.back()};
            more.insert(more.end(), blocks.begin(), blocks.end());
            std::optional<TripPlan> longer = placeLatest(more, until[size_t(m)], tier);
            if (!longer) break;
            plan = std::move(longer);
            blocks = std::move(more);
            left.pop_back();
        }
        pending = {*std::move(plan), true};
        if (m_problem.machines[size_t(m)].attended) bind(pending.plan.trip, tier.overtime);
        until[size_t(m)] = pending.plan.trip.time.begin;
    }
    m_pending[size_t(m)].push_back(std::move(pending));
}

/// Back to front: always the machine whose next block may end last.
void Placer::backward() {
    std::vector<std::vector<int>> left(m_problem.machines.size());
    for (int b = 0; b < int(m_solution.size()); ++b) {
        if (!m_work[size_t(b)].isEmpty()) left[size_t(m_solution[size_t(b)].machine)].push_back(b);
    }
    std::vector<Sec> until(m_problem.machines.size(), m_problem.length);
    for (;;) {
        int next = -1;
        for (int m = 0; m < int(left.size()); ++m) {
            if (left[size_t(m)].empty()) continue;
            const auto cap = [&](int i) { return m_work[size_t(left[size_t(i)].back())].cap(false); };
            if (next < 0 || cap(m) > cap(next)) next = m;
        }
        if (next < 0) break;
        backwardOn(next, left[size_t(next)], until);
    }
    for (auto& pending : m_pending)
        std::reverse(pending.begin(), pending.end());
}

}  // namespace laneward::planning
