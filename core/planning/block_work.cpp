#include "core/planning/placer.h"

#include <algorithm>

namespace laneward::planning {

BlockWork::BlockWork(const DayProblem& problem, const Block& block)
    : m_problem(&problem), m_machine(&problem.machines[size_t(block.machine)]), m_order(block.tasks) {
    if (block.reversed) std::reverse(m_order.begin(), m_order.end());
    m_lane = m_machine->lane[size_t(block.recipe)];
    std::erase_if(m_order, [&](int t) { return m_lane < 0 || m_machine->barred.contains(problem.tasks[size_t(t)].lane); });
    measure();
}

void BlockWork::measure() {
    const auto laneOf = [&](size_t i) { return m_problem->tasks[size_t(m_order[i])].lane; };
    m_offsets.assign(m_order.size(), 0);
    m_wantsTwice = false;
    for (size_t i = 0; i < m_order.size(); ++i) {
        if (i > 0) m_offsets[i] = m_offsets[i - 1] + m_lane + moveTime(*m_machine, laneOf(i - 1), laneOf(i));
        m_wantsTwice = m_wantsTwice || m_problem->tasks[size_t(m_order[i])].twice;
    }
    if (m_order.empty()) return;
    m_twiceLanes = m_order.size() > 1 && laneOf(1) == pairPartner(laneOf(0)) ? 2 : 1;
    m_twice = m_twiceLanes * m_lane + (m_twiceLanes == 2 ? 2 * moveTime(*m_machine, laneOf(0), laneOf(1)) : 0);
}

int BlockWork::firstLane() const { return m_problem->tasks[size_t(m_order.front())].lane; }

int BlockWork::lastLane() const { return m_problem->tasks[size_t(m_order.back())].lane; }

Sec BlockWork::cap(bool tight) const {
    Sec latest = m_problem->length;
    for (size_t i = 0; i < m_order.size(); ++i) {
        const DayTask& task = m_problem->tasks[size_t(m_order[i])];
        latest = std::min(latest, (tight ? task.due : task.target) + length() - m_offsets[i] - m_lane);
    }
    return latest;
}

BlockWork::Hold BlockWork::holdOf(size_t i, bool twice) const {
    if (twice && int(i) < m_twiceLanes) return {-m_twice, m_twice + m_offsets[i] + m_lane};
    return {m_offsets[i], m_lane};
}

Sec BlockWork::latestHold(const DayTask& task, Sec begin, Sec length) const {
    for (int s = task.firstSlot + task.slotCount - 1; s >= task.firstSlot; --s) {
        const Slot& slot = m_problem->slots[size_t(s)];
        const Sec b = std::min(begin, slot.end - length);
        if (b >= slot.begin) return b + length >= task.earliestEnd ? b : notPlaced;
    }
    return notPlaced;
}

Sec BlockWork::earliestHold(const DayTask& task, Sec begin, Sec length) const {
    begin = std::max(begin, task.earliestEnd - length);
    for (int s = task.firstSlot; s < task.firstSlot + task.slotCount; ++s) {
        const Slot& slot = m_problem->slots[size_t(s)];
        const Sec b = std::max(begin, slot.begin);
        if (b + length <= slot.end) return b;
    }
    return notPlaced;
}

Sec BlockWork::latestBegin(Sec begin, bool twice, bool tight) const {
    for (bool moved = true; moved;) {
        moved = false;
        for (size_t i = 0; i < m_order.size(); ++i) {
            const DayTask& task = m_problem->tasks[size_t(m_order[i])];
            const Hold hold = holdOf(i, twice);
            const Sec latest = std::min(begin + hold.offset, (tight ? task.due : task.target) - hold.length);
            const Sec b = latestHold(task, latest, hold.length);
            if (b == notPlaced) return notPlaced;
            if (b >= begin + hold.offset) continue;
            begin = b - hold.offset;
            moved = true;
        }
    }
    return begin;
}

Sec BlockWork::earliestBegin(Sec begin, bool twice) {
    const Sec from = begin;
    for (size_t i = 0; i < m_order.size();) {
        const Hold hold = holdOf(i, twice);
        const Sec b = earliestHold(m_problem->tasks[size_t(m_order[i])], begin + hold.offset, hold.length);
        if (b == notPlaced) {
            m_order.erase(m_order.begin() + std::ptrdiff_t(i));
            measure();
            begin = from;
            i = 0;
        } else if (b > begin + hold.offset) {
            begin = b - hold.offset;
            i = 0;
        } else {
            ++i;
        }
    }
    return m_order.empty() ? notPlaced : begin;
}

BlockTimes BlockWork::times(Sec begin, bool twice, unsigned steps, Sec stepTime) const {
    BlockTimes times{m_order, {}, m_lane, twice ? m_twice : 0, twice ? m_twiceLanes : 0, steps, stepTime};
    for (Sec offset : m_offsets)
        times.begins.push_back(begin + offset);
    return times;
}

}  // namespace laneward::planning
