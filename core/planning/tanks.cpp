#include "core/planning/placement.h"

#include <algorithm>

namespace laneward::planning {

namespace {

/// One thing that a machine does, in order of time.
struct Act {
    Sec begin = 0;
    int block = -1;  ///< -1 = a committed run
    const FixedRun* run = nullptr;
};

std::vector<Act> actsOf(const DayProblem& problem, const Solution& solution, const std::vector<Sec>& begins, int machine) {
    std::vector<Act> blocks;
    for (int b = 0; b < int(solution.size()); ++b) {
        if (solution[size_t(b)].machine == machine) blocks.push_back({begins[size_t(b)], b, nullptr});
    }
    const auto& runs = problem.machines[size_t(machine)].runs;
    std::vector<Act> acts;
    size_t next = 0;
    for (const Act& block : blocks) {
        for (; next < runs.size() && runs[next].begin <= block.begin; ++next)
            acts.push_back({runs[next].begin, -1, &runs[next]});
        acts.push_back(block);
    }
    for (; next < runs.size(); ++next)
        acts.push_back({runs[next].begin, -1, &runs[next]});
    return acts;
}

Stock useOf(const DayProblem& problem, const Block& block) {
    const bool twice = std::any_of(block.tasks.begin(), block.tasks.end(), [&](int t) { return problem.tasks[size_t(t)].twice; });
    const std::int64_t lanes = std::int64_t(block.tasks.size()) + (twice ? 2 : 0);
    Stock use = problem.machines[size_t(block.machine)].use[size_t(block.recipe)];
    for (std::int64_t& amount : use)
        amount *= lanes;
    return use;
}

void spend(Stock& stock, const Stock& use) {
    for (size_t i = 0; i < stockCount; ++i)
        stock[i] -= use[i];
}

/// What committed runs right behind `from` take until they restore it themselves or a free block can.
Stock takenBehind(const std::vector<Act>& acts, size_t from) {
    Stock taken{};
    std::array<bool, stockCount> open;
    open.fill(true);
    for (size_t i = from + 1; i < acts.size() && acts[i].run; ++i) {
        Stock marker{};
        Stock ones;
        ones.fill(1);
        restore(marker, ones, acts[i].run->steps);
        for (size_t s = 0; s < stockCount; ++s) {
            open[s] = open[s] && marker[s] == 0;
            if (open[s]) taken[s] += acts[i].run->use[s];
        }
    }
    return taken;
}

unsigned stepsNeeded(const Stock& stock, const Stock& need, int& spares) {
    unsigned steps = NoStep;
    for (size_t s = 0; s <= cleanerStock; ++s) {
        if (stock[s] < need[s]) steps |= RefillBit;
    }
    if (stock[wasteStock] < need[wasteStock]) steps |= EmptyBit;
    if (stock[dutyStock] < need[dutyStock]) steps |= DutyBit;
    if (stock[packStock] < need[packStock]) {
        steps |= spares > 0 ? SwapBit : ChargeBit;
        if (spares > 0) --spares;
    }
    return steps;
}

bool covers(const Stock& stock, const Stock& need) {
    for (size_t s = 0; s < stockCount; ++s) {
        if (stock[s] < need[s]) return false;
    }
    return true;
}

}  // namespace

void restore(Stock& stock, const Stock& full, unsigned steps) {
    if (steps & RefillBit) std::copy_n(full.begin(), cleanerStock + 1, stock.begin());
    if (steps & EmptyBit) stock[wasteStock] = full[wasteStock];
    if (steps & (SwapBit | ChargeBit)) stock[packStock] = full[packStock];
    if (steps & DutyBit) stock[dutyStock] = full[dutyStock];
}

std::vector<std::optional<unsigned>> stepsFor(const DayProblem& problem, const Solution& solution,
                                              const std::vector<Sec>& begins) {
    std::vector<std::optional<unsigned>> steps(solution.size());
    for (int m = 0; m < int(problem.machines.size()); ++m) {
        const DayMachine& machine = problem.machines[size_t(m)];
        Stock stock = machine.begin;
        int spares = machine.spares;
        for (const FixedRun& run : machine.runs)
            spares -= (run.steps & SwapBit) ? 1 : 0;
        const std::vector<Act> acts = actsOf(problem, solution, begins, m);
        for (size_t i = 0; i < acts.size(); ++i) {
            if (acts[i].run) {
                restore(stock, machine.full, acts[i].run->steps);
                spend(stock, acts[i].run->use);
                continue;
            }
            const Stock use = useOf(problem, solution[size_t(acts[i].block)]);
            Stock need = takenBehind(acts, i);
            for (size_t s = 0; s < stockCount; ++s)
                need[s] += use[s];
            const unsigned needed = stepsNeeded(stock, need, spares);
            restore(stock, machine.full, needed);
            if (!covers(stock, need)) continue;
            steps[size_t(acts[i].block)] = needed;
            spend(stock, use);
        }
    }
    return steps;
}

Sec moveTime(const DayMachine& machine, int fromLane, int toLane) {
    const int lanes = std::abs(toLane - fromLane);
    return lanes == 0 ? 0 : machine.next + machine.cross * (lanes - 1);
}

Sec stepTime(const DayMachine& machine, unsigned steps) {
    Sec time = 0;
    for (size_t bit = 0; bit < machine.steps.size(); ++bit) {
        if (steps & (1U << bit)) time += machine.steps[bit];
    }
    return time;
}

}  // namespace laneward::planning
