#include "core/planning/day_problem.h"

#include <algorithm>
#include <type_traits>

namespace laneward::planning {

namespace {

template <class T>
void put(std::string& key, const T& value) {
    static_assert(std::is_trivially_copyable_v<T>);
    key.append(reinterpret_cast<const char*>(&value), sizeof value);
}

void put(std::string& key, const std::vector<Slot>& slots) {
    put(key, slots.size());
    for (const Slot& s : slots) {
        put(key, s.begin);
        put(key, s.end);
    }
}

void put(std::string& key, const DayTask& t) {
    for (Sec value : {Sec(t.lane), Sec(t.recipe), Sec(t.firstSlot), Sec(t.slotCount), t.earliestEnd, t.target, t.due, t.play})
        put(key, value);
    for (int value : {int(t.scored), int(t.onlyHere), int(t.twice), int(t.stripped), t.demands, t.fresh})
        put(key, value);
}

void put(std::string& key, const DayMachine& m) {
    for (Sec value : {Sec(m.attended), m.leave, m.back, m.next, m.cross, Sec(m.spares)})
        put(key, value);
    for (Sec value : m.steps)
        put(key, value);
    for (Sec value : m.lane)
        put(key, value);
    for (const Stock& use : m.use)
        put(key, use);
    for (int lane : m.barred.lanes())
        put(key, lane);
    put(key, m.full);
    put(key, m.begin);
    put(key, m.closed);
    put(key, m.outings.size());
    for (const FixedOuting& o : m.outings)
        put(key, std::vector<Slot>{o.time, o.attended});
    put(key, m.runs.size());
    for (const FixedRun& run : m.runs) {
        put(key, run.begin);
        put(key, run.steps);
        put(key, run.use);
        put(key, run.pattern);
    }
}

class Builder {
public:
    Builder(const Ground& ground, const DemandSet& demands, int day, const DayStart& start)
        : m_ground(ground), m_demands(demands), m_day{ground.days[size_t(day)], ground.days[size_t(day) + 1]}, m_start(start) {}

    DayProblem build(const std::vector<const OpenTreatment*>& treatments) {
        m_problem.length = m_day.length().value;
        for (const OpenTreatment* t : treatments)
            addTask(t->what);
        for (size_t m = 0; m < m_ground.machines.size(); ++m)
            addMachine(m);
        for (const ShiftSpan& shift : m_ground.shifts) {
            if (shift.allowance.overlaps(m_day)) {
                m_problem.shifts.push_back({slot(shift.work), slot(shift.allowance), shift.people});
            }
        }
        return std::move(m_problem);
    }

private:
    Sec at(Instant t) const { return (t - m_day.begin).value; }
    Slot slot(Span s) const { return {at(s.begin), at(s.end)}; }

    int patternIndex(const std::optional<PatternId>& pattern) {
        if (!pattern) return -1;
        const auto found = std::find(m_patterns.begin(), m_patterns.end(), *pattern);
        if (found != m_patterns.end()) return int(found - m_patterns.begin());
        m_patterns.push_back(*pattern);
        return int(m_patterns.size()) - 1;
    }

    int recipeIndex(const Recipe& recipe) {
        const auto found = std::find(m_recipes.begin(), m_recipes.end(), recipe);
        if (found != m_recipes.end()) return int(found - m_recipes.begin());
        m_recipes.push_back(recipe);
        m_problem.recipes.push_back({recipe.treatment, patternIndex(recipe.pattern)});
        return int(m_recipes.size()) - 1;
    }

    void addTask(const PlannedTreatment& what) {
        const Gap& gap = m_demands.gaps[size_t(what.lane - 1)][what.gap];
        DayTask task;
        task.lane = what.lane;
        task.recipe = recipeIndex({what.treatment, what.pattern});
        task.target = task.due = m_problem.length;
        task.play = at(gap.time.end);
        addSlots(task, gap);
        if (gap.demand) {
            const Demand& demand = m_demands.demands[*gap.demand];
            task.target = std::min(task.target, at(demand.target));
            task.due = std::min(task.due, at(demand.due));
            task.stripped = demand.kind == DemandKind::Stripped;
            task.onlyHere = demand.kind == DemandKind::Fresh;
            task.scored = !task.stripped && demand.kind != DemandKind::AsItIs;
        }
        task.demands = int(what.serves.size());
        for (size_t d : what.serves)
            addServed(task, m_demands.demands[d]);
        m_problem.tasks.push_back(task);
    }

    void addServed(DayTask& task, const Demand& demand) {
        if (demand.kind == DemandKind::Fresh || demand.kind == DemandKind::Recent) {
            task.earliestEnd = std::max(task.earliestEnd, at(demand.playBegins - demand.longestAge));
        }
        task.fresh += demand.kind == DemandKind::Stripped ? 0 : 1;
        task.twice = task.twice || m_ground.occupancy.occurrences[demand.occurrence].firstPairTwice;
    }

    void addSlots(DayTask& task, const Gap& gap) {
        Span window = gap.time;
        for (const FixedTreatment& f : m_ground.fixed[size_t(gap.lane - 1)]) {
            if (f.time.end <= gap.time.end) window.begin = std::max(window.begin, f.time.end);
        }
        window = {std::max({window.begin, m_day.begin, m_ground.begin()}), std::min(window.end, m_day.end)};
        task.firstSlot = int(m_problem.slots.size());
        const Spans& free = m_ground.lanesFree[size_t(gap.lane - 1)];
        auto span = std::upper_bound(free.begin(), free.end(), window.begin, [](Instant t, const Span& s) { return t < s.end; });
        for (; span != free.end() && span->begin < window.end; ++span) {
            const Span part{std::max(span->begin, window.begin), std::min(span->end, window.end)};
            if (!part.isEmpty()) m_problem.slots.push_back(slot(part));
        }
        task.slotCount = int(m_problem.slots.size()) - task.firstSlot;
    }

    void addMachine(size_t m) {
        const Machine& machine = *m_ground.machines[m];
        const MachineTimes& t = machine.times;
        DayMachine day;
        day.attended = machine.attended;
        day.leave = t.leaveBay.value;
        day.back = t.returnToBay.value;
        day.next = t.nextLane.value;
        day.cross = t.crossLane.value;
        day.steps = {t.refill.value, t.emptyWaste.value, t.swapPack.value, t.charge.value, t.duty.value};
        day.barred = machine.bars.lanes;
        day.full = fullStock(machine, m_ground.limits[m]);
        day.begin = day.full;
        day.spares = machine.capacity.sparePacks;
        for (const MachineLevels& levels : m_ground.state.levels) {
            if (levels.machine == machine.id && m_day.contains(m_ground.now)) {
                day.begin = stockOf(machine, levels, m_start.dutyLeft[m]);
            }
        }
        // A duty that is far away is the same as none, which keeps equal days equal.
        const bool near = m_start.dutyLeft[m] < 3 * std::int64_t(m_problem.tasks.size()) || day.begin != day.full;
        day.begin[dutyStock] = near ? m_start.dutyLeft[m] : endless;
        addRecipes(day, m);
        addClosed(day, m);
        addCommitted(day, m);
        if (!day.runs.empty()) day.begin[dutyStock] = m_start.dutyLeft[m];
        m_problem.machines.push_back(std::move(day));
    }

    void addRecipes(DayMachine& day, size_t m) const {
        for (const Recipe& recipe : m_recipes) {
            const Machine& machine = *m_ground.machines[m];
            const Pattern* pattern = recipe.pattern ? findPattern(m_ground.state.patterns, *recipe.pattern) : nullptr;
            // Lane 0 is barred nowhere: only pattern and treatment are asked about.
            day.lane.push_back(mayDo(machine, 0, recipe) ? laneTime(machine, recipe.treatment, pattern).value : -1);
            day.use.push_back(useOf(laneUse(machine, m_ground.limits[m], recipe.treatment, pattern)));
        }
    }

    void addClosed(DayMachine& day, size_t m) const {
        for (const Span& s : without({m_day}, m_ground.machinesUp[m]))
            day.closed.push_back(slot(s));
    }

    void addCommitted(DayMachine& day, size_t m) {
        for (const CommittedOuting& outing : m_ground.outings) {
            const bool staffed = outing.attended.overlaps(m_day);
            if (outing.machine != m || !(outing.time.overlaps(m_day) || staffed)) continue;
            day.outings.push_back({slot(outing.time), staffed ? slot(outing.attended) : Slot{}});
            for (const Job* job : outing.jobs) {
                const bool over = job->state == JobState::Done || job->state == JobState::CutShort;
                // What is done is in the levels already; only the pattern it left in the machine still matters.
                const FixedRun run{at(job->time.begin), over ? unsigned(NoStep) : stepBits(*job),
                                   over ? Stock{} : useOf(job->use), patternIndex(job->pattern)};
                day.runs.push_back(run);
            }
        }
        std::sort(day.runs.begin(), day.runs.end(), [](const FixedRun& a, const FixedRun& b) { return a.begin < b.begin; });
    }

    const Ground& m_ground;
    const DemandSet& m_demands;
    Span m_day;
    const DayStart& m_start;
    DayProblem m_problem;
    std::vector<Recipe> m_recipes;
    std::vector<PatternId> m_patterns;
};

}  // namespace

std::string DayProblem::key() const {
    std::string key;
    put(key, length);
    put(key, tasks.size());
    for (const DayTask& t : tasks)
        put(key, t);
    put(key, slots);
    for (const DayRecipe& r : recipes) {
        put(key, r.treatment);
        put(key, r.pattern);
    }
    put(key, machines.size());
    for (const DayMachine& m : machines)
        put(key, m);
    for (const DayShift& s : shifts) {
        put(key, std::vector<Slot>{s.work, s.allowance});
        put(key, s.people);
    }
    return key;
}

DayProblem dayProblem(const Ground& ground, const DemandSet& demands, const std::vector<const OpenTreatment*>& treatments,
                      int day, const DayStart& start) {
    return Builder(ground, demands, day, start).build(treatments);
}

Stock useOf(const JobUse& use) {
    Stock stock{};
    for (size_t slot = 0; slot < conditionerSlots; ++slot)
        stock[slot] = use.conditioner[slot].value;
    stock[cleanerStock] = use.cleaner.value;
    stock[wasteStock] = use.waste.value;
    stock[packStock] = stock[dutyStock] = use.laneRuns;
    return stock;
}

Stock fullStock(const Machine& machine, const MachineLimits& limits) {
    const MachineCapacity& c = machine.capacity;
    Stock stock{};
    for (size_t slot = 0; slot < conditionerSlots; ++slot)
        stock[slot] = c.conditioner[slot].value;
    stock[cleanerStock] = c.cleaner.value;
    stock[wasteStock] = c.waste.value;
    stock[packStock] = limits.lanesPerCharge;
    stock[dutyStock] = c.lanesUntilDuty ? *c.lanesUntilDuty : endless;
    return stock;
}

Stock stockOf(const Machine& machine, const MachineLevels& levels, std::int64_t dutyLeft) {
    Stock stock{};
    for (size_t slot = 0; slot < conditionerSlots; ++slot)
        stock[slot] = levels.conditioner[slot].value;
    stock[cleanerStock] = levels.cleaner.value;
    stock[wasteStock] = machine.capacity.waste.value - levels.waste.value;
    stock[packStock] = levels.lanesLeft;
    stock[dutyStock] = dutyLeft;
    return stock;
}

unsigned stepBits(const Job& job) {
    unsigned bits = NoStep;
    for (const Step& step : job.steps) {
        if (step.kind == StepKind::Refill) bits |= RefillBit;
        if (step.kind == StepKind::EmptyWaste) bits |= EmptyBit;
        if (step.kind == StepKind::SwapPack) bits |= SwapBit;
        if (step.kind == StepKind::Charge) bits |= ChargeBit;
        if (step.kind == StepKind::Duty) bits |= DutyBit;
    }
    return bits;
}

}  // namespace laneward::planning
