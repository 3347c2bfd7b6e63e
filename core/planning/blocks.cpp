#include "core/planning/day_search.h"

#include <algorithm>
#include <bit>
#include <limits>
#include <map>
#include <tuple>

namespace laneward::planning {

namespace {

/// How many lanes the weakest able machine can do without a step in between.
size_t largestBlock(const DayProblem& problem, int recipe, unsigned machines) {
    std::int64_t most = std::numeric_limits<int>::max();
    for (size_t m = 0; m < problem.machines.size(); ++m) {
        if (!(machines & (1U << m))) continue;
        const DayMachine& machine = problem.machines[m];
        std::int64_t fits = std::numeric_limits<int>::max();
        for (size_t s = 0; s < stockCount; ++s) {
            const std::int64_t use = machine.use[size_t(recipe)][s];
            if (use > 0) fits = std::min(fits, machine.full[s] / use);
        }
        if (fits > 0) most = std::min(most, fits);
    }
    return size_t(most);
}

unsigned ableMachines(const DayProblem& problem, const DayTask& task) {
    unsigned able = 0;
    for (int m = 0; m < int(std::min<size_t>(problem.machines.size(), 32)); ++m) {
        if (canDo(problem, m, task)) able |= 1U << m;
    }
    return able;
}

/// Cuts `block` so that no part is larger than `most`, parts about equal and pairs kept together.
void cutInto(std::vector<Block>& blocks, const DayProblem& problem, Block block, size_t most) {
    const bool twice = std::any_of(block.tasks.begin(), block.tasks.end(), [&](int t) { return problem.tasks[size_t(t)].twice; });
    most = std::max<size_t>(1, twice && most > 2 ? most - 2 : most);
    const size_t parts = (block.tasks.size() + most - 1) / most;
    size_t begin = 0;
    for (size_t part = 0; part < parts && begin < block.tasks.size(); ++part) {
        size_t size = (block.tasks.size() - begin + parts - part - 1) / (parts - part);
        if (size % 2 == 1 && size < most && begin + size < block.tasks.size()) ++size;
        Block piece = block;
        piece.tasks.assign(block.tasks.begin() + std::ptrdiff_t(begin),
                           block.tasks.begin() + std::ptrdiff_t(std::min(begin + size, block.tasks.size())));
        blocks.push_back(std::move(piece));
        begin += size;
    }
    for (; begin < block.tasks.size(); begin += most) {
        Block piece = block;
        piece.tasks.assign(block.tasks.begin() + std::ptrdiff_t(begin),
                           block.tasks.begin() + std::ptrdiff_t(std::min(begin + most, block.tasks.size())));
        blocks.push_back(std::move(piece));
    }
}

struct Loose {
    int task;
    Sec free;  ///< since when the lane could be worked
};

Sec freeFrom(const DayProblem& problem, const DayTask& task, Sec end) {
    Sec free = 0;
    for (int s = task.firstSlot; s < task.firstSlot + task.slotCount; ++s) {
        if (problem.slots[size_t(s)].begin < end) free = problem.slots[size_t(s)].begin;
    }
    return free;
}

/// Tasks, which come by lane, in groups that are free since the same moment. A pair is free when both its lanes are.
std::vector<std::vector<int>> byFree(const DayProblem& problem, std::vector<Loose> loose) {
    for (size_t i = 1; i < loose.size(); ++i) {
        const int lane = problem.tasks[size_t(loose[i].task)].lane;
        const int before = problem.tasks[size_t(loose[i - 1].task)].lane;
        if (pairPartner(lane) == before) loose[i].free = loose[i - 1].free = std::max(loose[i].free, loose[i - 1].free);
    }
    std::map<Sec, std::vector<int>> groups;
    for (const Loose& l : loose)
        groups[l.free].push_back(l.task);
    std::vector<std::vector<int>> list;
    for (auto& [free, tasks] : groups)
        list.push_back(std::move(tasks));
    return list;
}

}  // namespace

bool canDo(const DayProblem& problem, int machine, const DayTask& task) {
    const DayMachine& m = problem.machines[size_t(machine)];
    return m.lane[size_t(task.recipe)] >= 0 && !m.barred.contains(task.lane);
}

Sec latestAlone(const DayProblem& problem, const DayTask& task, Sec laneTime) {
    Sec soonest = notPlaced;
    for (int s = task.firstSlot + task.slotCount - 1; s >= task.firstSlot; --s) {
        const Slot& slot = problem.slots[size_t(s)];
        const Sec end = std::min(slot.end, task.target);
        if (end - laneTime >= slot.begin && end >= task.earliestEnd) return end;
        if (slot.length() >= laneTime && slot.end >= task.earliestEnd)
            soonest = std::max(slot.begin + laneTime, task.earliestEnd);
    }
    return soonest;
}

std::vector<Block> blocksOf(const DayProblem& problem) {
    using Key = std::tuple<Sec, int, unsigned, bool>;
    std::map<Key, std::vector<Loose>> alike;
    for (int t = 0; t < int(problem.tasks.size()); ++t) {
        const DayTask& task = problem.tasks[size_t(t)];
        const unsigned able = ableMachines(problem, task);
        if (able == 0) continue;
        const Sec lane = problem.machines[size_t(std::countr_zero(able))].lane[size_t(task.recipe)];
        const Sec end = latestAlone(problem, task, lane);
        if (end != notPlaced) alike[{end, task.recipe, able, task.stripped}].push_back({t, freeFrom(problem, task, end)});
    }
    std::vector<Block> blocks;
    for (auto& [key, loose] : alike) {
        const unsigned able = std::get<2>(key);
        const size_t most = largestBlock(problem, std::get<1>(key), able);
        for (std::vector<int>& tasks : byFree(problem, std::move(loose))) {
            cutInto(blocks, problem, {std::get<1>(key), std::countr_zero(able), false, false, std::move(tasks)}, most);
        }
    }
    return blocks;
}

}  // namespace laneward::planning
