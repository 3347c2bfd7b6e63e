#include "core/planning/range_planner.h"

#include <algorithm>

namespace laneward::planning {

namespace {

// Rounds in which a lane that found no place is planned again around it, before the rest of its day is given up.
constexpr int roundsPerDay = 8;
// A day that loses no more is solved with all effort at once.
constexpr size_t smallLoss = 2;

}  // namespace

DayStart startAfter(const SolvedDay& day, const DayStart& before) {
    DayStart after = before;
    for (size_t m = 0; m < day.problem.machines.size(); ++m) {
        struct Run {
            Sec begin;
            unsigned steps;
            std::int64_t lanes;
        };
        const DayMachine& machine = day.problem.machines[m];
        std::vector<Run> runs;
        for (const FixedRun& run : machine.runs)
            runs.push_back({run.begin, run.steps, run.use[dutyStock]});
        for (size_t b = 0; b < day.solution.solution.size(); ++b) {
            const BlockTimes& block = day.solution.placement.blocks[b];
            if (day.solution.solution[b].machine != int(m) || block.tasks.empty()) continue;
            runs.push_back({block.begins.front(), block.steps, std::int64_t(block.tasks.size()) + block.twiceLanes});
        }
        std::stable_sort(runs.begin(), runs.end(), [](const Run& a, const Run& b) { return a.begin < b.begin; });
        for (const Run& run : runs) {
            if (run.steps & DutyBit) after.dutyLeft[m] = machine.full[dutyStock];
            if (after.dutyLeft[m] < endless) after.dutyLeft[m] -= run.lanes;
        }
    }
    return after;
}

RangePlanner::RangePlanner(const Ground& ground, const DemandSet& demands, const DaySolver& solver)
    : m_ground(ground),
      m_demands(demands),
      m_solver(solver),
      m_usual(usualPattern(ground.state, demands)),
      m_lanes(demands.gaps.size()) {
    const auto last = lastByLane(ground.state);
    for (size_t lane = 0; lane < demands.gaps.size(); ++lane) {
        m_before.push_back(
            conditionBefore(last[lane], ground.fixed[lane], ground.plays[lane], demands.gaps[lane].front().time.begin));
    }
}

Solved RangePlanner::solve(int days, const DayStart& start) {
    planAllLanes();
    m_starts.push_back(start);
    for (int day = 0; day < days; ++day) {
        m_result.days.push_back(solveOne(day));
        repair(day);
        settle(day);
        m_starts.push_back(startAfter(m_result.days.back(), m_starts.back()));
    }
    if (days < m_ground.range.days()) lookAhead(days);
    shareEvenings(days);
    m_result.stopped =
        std::any_of(m_result.days.begin(), m_result.days.end(), [](const SolvedDay& d) { return d.solution.stopped; });
    m_result.after = startAfter(m_result.days.back(), m_starts[size_t(days) - 1]);
    return std::move(m_result);
}

std::vector<OpenTreatment> RangePlanner::treatmentsOn(int day) const {
    std::vector<OpenTreatment> found;
    for (const Lane& lane : m_lanes) {
        auto t = std::lower_bound(lane.begin(), lane.end(), day, [](const OpenTreatment& o, int d) { return o.day < d; });
        for (; t != lane.end() && t->day == day; ++t)
            found.push_back(*t);
    }
    return found;
}

DayProblem RangePlanner::problemOf(int day, const std::vector<OpenTreatment>& treatments) const {
    std::vector<const OpenTreatment*> pointers;
    for (const OpenTreatment& t : treatments)
        pointers.push_back(&t);
    return dayProblem(m_ground, m_demands, pointers, day, m_starts[size_t(day)]);
}

SolvedDay RangePlanner::solveOne(int day, bool quickly) {
    SolvedDay solved;
    solved.treatments = treatmentsOn(day);
    solved.problem = problemOf(day, solved.treatments);
    solved.solution = quickly ? m_solver.solveQuickly(solved.problem) : m_solver.solve(solved.problem);
    return solved;
}

void RangePlanner::remember(const SolvedDay& solved) {
    for (const OpenTreatment& t : solved.treatments)
        m_ends.erase({t.what.lane, t.what.gap});
    const Instant begin = m_ground.days[size_t(&solved - m_result.days.data())];
    for (const BlockTimes& block : solved.solution.placement.blocks) {
        for (size_t i = 0; i < block.tasks.size(); ++i) {
            const PlannedTreatment& what = solved.treatments[size_t(block.tasks[i])].what;
            m_ends[{what.lane, what.gap}] = begin + Seconds{block.begins[i] + block.lane};
        }
    }
}

std::vector<RangePlanner::Spot> RangePlanner::lostOn(const SolvedDay& solved) const {
    std::vector<Spot> lost;
    for (const OpenTreatment& t : solved.treatments) {
        if (!m_ends.contains({t.what.lane, t.what.gap})) lost.push_back({t.what.lane, t.what.gap});
    }
    return lost;
}

/// A treatment without a place changes what its lane needs later: the lane is planned again without that gap. On the way to what
/// fits the day is solved quickly.
void RangePlanner::settle(int day) {
    SolvedDay& solved = m_result.days[size_t(day)];
    remember(solved);
    std::vector<Spot> lost = lostOn(solved);
    bool quick = false;
    for (int round = 0; !lost.empty() || quick; ++round) {
        quick = !lost.empty() && lost.size() + size_t(round) > smallLoss;
        for (const Spot& spot : lost)
            giveUp(day, spot, round >= roundsPerDay);
        for (const OpenTreatment& t : solved.treatments)
            m_ends.erase({t.what.lane, t.what.gap});
        solved = solveOne(day, quick);
        solved.gaveUp = true;
        remember(solved);
        lost = lostOn(solved);
    }
}

void RangePlanner::giveUp(int day, const Spot& spot, bool restOfDay) {
    const auto [lane, gap] = spot;
    m_forbidden.insert(spot);
    if (restOfDay) {
        const std::vector<Gap>& gaps = m_demands.gaps[size_t(lane - 1)];
        for (size_t g = gap; g < gaps.size() && gaps[g].time.begin < m_ground.days[size_t(day) + 1]; ++g)
            m_forbidden.insert({lane, g});
    }
    planLane(lane, gap);
    assignDays({lane}, day);
}

}  // namespace laneward::planning
