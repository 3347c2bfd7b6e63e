#include "core/planning/placer.h"

#include <algorithm>

namespace laneward::planning {

Placer::Placer(const DayProblem& problem, const Solution& solution, std::vector<std::optional<unsigned>> steps, bool overtime)
    : m_problem(problem), m_solution(solution), m_steps(std::move(steps)), m_overtime(overtime), m_crew(problem) {
    m_work.reserve(solution.size());
    for (size_t b = 0; b < solution.size(); ++b) {
        Block block = solution[b];
        if (!m_steps[b]) block.tasks.clear();
        m_work.emplace_back(problem, block);
    }
    m_pending.resize(problem.machines.size());
    m_done.resize(problem.machines.size());
}

Placement Placer::run() {
    backward();
    const bool pushes = std::any_of(m_pending.begin(), m_pending.end(), [&](const auto& machine) {
        return std::any_of(machine.begin(), machine.end(), [&](const Pending& p) { return !waits(p); });
    });
    if (pushes) {
        forward();
        if (m_overtime) shrinkOvertime();
    } else {
        for (size_t m = 0; m < m_pending.size(); ++m) {
            for (Pending& p : m_pending[m])
                m_done[m].push_back(std::move(p.plan));
        }
    }
    return result();
}

/// Work before paid time began may end as late as it is due, if that saves overtime.
void Placer::shrinkOvertime(TripPlan& plan, Sec until) {
    m_crew.release(plan.trip.attended, plan.trip.shift);
    std::optional<TripPlan> later = placeLatest(plan.trip.blocks, until, {true, true});
    if (later) {
        later->trip.shift = m_crew.shiftFor(later->trip.attended, true);
        const bool saves = later->trip.shift >= 0 && m_crew.overtimeOf(later->trip.attended, later->trip.shift) <
                                                         m_crew.overtimeOf(plan.trip.attended, plan.trip.shift);
        if (saves) plan = *std::move(later);
    }
    m_crew.bind(plan.trip.attended, plan.trip.shift);
}

void Placer::shrinkOvertime() {
    for (size_t m = 0; m < m_done.size(); ++m) {
        if (!m_problem.machines[m].attended) continue;
        Sec until = m_problem.length;
        for (auto plan = m_done[m].rbegin(); plan != m_done[m].rend(); ++plan) {
            if (m_crew.overtimeOf(plan->trip.attended, plan->trip.shift) > 0 && !strippedOnly(plan->trip)) {
                shrinkOvertime(*plan, until);
            }
            until = plan->trip.time.begin;
        }
    }
}

Placement Placer::result() {
    Placement placement;
    placement.blocks.resize(m_solution.size());
    for (const auto& machine : m_done) {
        for (const TripPlan& plan : machine) {
            for (size_t k = 0; k < plan.begins.size(); ++k) {
                const int b = plan.trip.blocks[k];
                const BlockWork& work = m_work[size_t(b)];
                placement.blocks[size_t(b)] =
                    work.times(plan.begins[k], k == 0 && work.wantsTwice(), steps(b), stepTime(this->machine(b), steps(b)));
            }
            placement.trips.push_back(plan.trip);
        }
    }
    placement.score = scoreOf(m_problem, m_solution, placement, m_crew);
    return placement;
}

namespace {

/// Begins by which committed runs and blocks are put in one order before anything is placed.
std::vector<Sec> guessedBegins(const DayProblem& problem, const Solution& solution) {
    std::vector<Sec> begins;
    for (const Block& block : solution) {
        const BlockWork work(problem, block);
        begins.push_back(work.isEmpty() ? 0 : work.cap(false) - work.length());
    }
    return begins;
}

std::vector<Sec> begins(const Placement& placement, std::vector<Sec> otherwise) {
    for (size_t b = 0; b < otherwise.size(); ++b) {
        if (!placement.blocks[b].begins.empty()) otherwise[b] = placement.blocks[b].begins.front();
    }
    return otherwise;
}

Placement placeWith(const DayProblem& problem, const Solution& solution, bool overtime) {
    const bool committed =
        std::any_of(problem.machines.begin(), problem.machines.end(), [](const DayMachine& m) { return !m.runs.empty(); });
    if (!committed)
        return Placer(problem, solution, stepsFor(problem, solution, std::vector<Sec>(solution.size(), 0)), overtime).run();
    // Where committed runs stand decides what is left in the tanks, and what is needed decides where a block fits: look again
    // until the steps that were assumed are the steps that the order found asks for.
    std::vector<Sec> order = guessedBegins(problem, solution);
    Solution tried = solution;
    for (int round = 0; round < 4; ++round) {
        const auto steps = stepsFor(problem, tried, order);
        Placement placement = Placer(problem, tried, steps, overtime).run();
        order = begins(placement, order);
        if (stepsFor(problem, tried, order) == steps) return placement;
    }
    // No stable order: blocks on machines with committed runs are left out rather than placed wrongly.
    for (Block& block : tried) {
        if (!problem.machines[size_t(block.machine)].runs.empty()) block.tasks.clear();
    }
    Placement placement = Placer(problem, tried, stepsFor(problem, tried, order), overtime).run();
    placement.score = scoreOf(problem, solution, placement, DayCrew(problem));
    return placement;
}

}  // namespace

Placement place(const DayProblem& problem, const Solution& solution) {
    Placement paid = placeWith(problem, solution, false);
    if (paid.score[0] == 0 && paid.score[1] == 0) return paid;
    Placement longer = placeWith(problem, solution, true);
    return longer.score < paid.score ? longer : paid;
}

}  // namespace laneward::planning
