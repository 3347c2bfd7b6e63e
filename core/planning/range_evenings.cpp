#include "core/planning/evenings_before.h"
#include "core/planning/lane_runs.h"
#include "core/planning/range_planner.h"

#include <algorithm>

namespace laneward::planning {

namespace {

using namespace score_part;

// All sets of so many runs are looked at.
constexpr size_t mostMovable = 4;

bool isTroubled(const Score& score) { return score[Unmet] > 0 || score[Late] > 0 || score[Overtime] > 0 || score[Tight] > 0; }

bool hasDuties(const DayProblem& problem) {
    return std::any_of(problem.machines.begin(), problem.machines.end(),
                       [](const DayMachine& m) { return m.begin[dutyStock] < endless; });
}

}  // namespace

/// Whether some machine has the time for it before the day begins, and it is still young enough then.
bool RangePlanner::isMovable(const OpenTreatment& treatment, int day) const {
    const PlannedTreatment& what = treatment.what;
    const Gap& gap = m_demands.gaps[size_t(what.lane - 1)][what.gap];
    const Instant begin = m_ground.days[size_t(day)];
    if (gap.time.begin >= begin) return false;
    const Span before{openPart(m_ground, gap).begin, begin};
    if (before.isEmpty()) return false;
    const Hands hands = handsFor(m_ground, what.lane, {what.treatment, what.pattern});
    const auto end = latestEndWithin(m_ground, what.lane, hands, before, m_ground.byAllowance);
    return end && std::all_of(what.serves.begin(), what.serves.end(), [&](size_t d) {
               const Demand& demand = m_demands.demands[d];
               const bool ages = demand.kind == DemandKind::Fresh || demand.kind == DemandKind::Recent;
               return !ages || *end >= demand.playBegins - demand.longestAge;
           });
}

std::vector<std::vector<RangePlanner::Spot>> RangePlanner::movableRuns(int day, const SolvedDay& solved) const {
    std::vector<std::vector<Spot>> runs;
    for (const LaneRun& run : runsOf(solved.problem)) {
        std::vector<Spot> lanes;
        bool movable = true;
        for (int task : run.tasks) {
            const OpenTreatment& treatment = solved.treatments[size_t(task)];
            movable = movable && isMovable(treatment, day);
            lanes.push_back({treatment.what.lane, treatment.what.gap});
        }
        if (movable) runs.push_back(std::move(lanes));
    }
    return runs;
}

void RangePlanner::setDay(const std::vector<Spot>& run, int day) {
    for (const auto& [lane, gap] : run) {
        for (OpenTreatment& t : m_lanes[size_t(lane - 1)]) {
            if (t.what.gap == gap) t.day = day;
        }
    }
}

/// Sets of movable runs without which the day might have a lower price.
std::vector<unsigned> RangePlanner::choicesOf(int day, const SolvedDay& solved) const {
    std::vector<unsigned> choices{0};
    const std::vector<std::vector<Spot>>& runs = m_movable[size_t(day)];
    const Score price = priceOf(solved.solution.placement.score);
    const auto mightSave = [&](unsigned moved) {
        std::vector<OpenTreatment> rest;
        Score bound{};
        for (const OpenTreatment& t : solved.treatments) {
            bool stays = true;
            for (size_t r = 0; r < runs.size() && stays; ++r) {
                stays = !(moved & (1U << r)) ||
                        std::find(runs[r].begin(), runs[r].end(), Spot{t.what.lane, t.what.gap}) == runs[r].end();
            }
            if (stays) rest.push_back(t);
        }
        bound = priceOf(boundOf(problemOf(day, rest), 0));
        bound[Treatments] += Sec(solved.treatments.size() - rest.size());
        return bound < price;
    };
    const unsigned all = (1U << runs.size()) - 1;
    if (runs.empty() || !mightSave(all)) return choices;
    for (unsigned moved = 1; moved <= all; ++moved) {
        if (mightSave(moved)) choices.push_back(moved);
    }
    return choices;
}

/// The day without some of its movable runs, and with some of the next day's.
DaySolution RangePlanner::sharedDay(int day, unsigned moved, unsigned taken) const {
    std::vector<OpenTreatment> treatments;
    const auto isIn = [&](size_t of, unsigned set, const OpenTreatment& t) {
        for (size_t r = 0; of < m_movable.size() && r < m_movable[of].size(); ++r) {
            const std::vector<Spot>& run = m_movable[of][r];
            if ((set & (1U << r)) && std::find(run.begin(), run.end(), Spot{t.what.lane, t.what.gap}) != run.end()) return true;
        }
        return false;
    };
    for (const Lane& lane : m_lanes) {
        for (const OpenTreatment& t : lane) {
            const bool own = t.day == day && !isIn(size_t(day), moved, t);
            if (own || (t.day == day + 1 && isIn(size_t(day) + 1, taken, t))) treatments.push_back(t);
        }
    }
    return m_solver.solve(problemOf(day, treatments));
}

/// What might be worked the evening before the first day, which is not in sight.
std::vector<std::vector<RangePlanner::Spot>> RangePlanner::runsFromBefore(const SolvedDay& solved) const {
    std::vector<std::vector<Spot>> runs;
    for (const LaneRun& run : runsOf(solved.problem)) {
        const PlannedTreatment& what = solved.treatments[size_t(run.tasks.front())].what;
        const Gap& gap = m_demands.gaps[size_t(what.lane - 1)][what.gap];
        if (m_ground.now >= m_ground.days.front() || gap.time.begin > m_ground.days.front() || run.like.earliestEnd >= 0)
            continue;
        runs.push_back({});
        for (int task : run.tasks) {
            const PlannedTreatment& one = solved.treatments[size_t(task)].what;
            runs.back().push_back({one.lane, one.gap});
        }
    }
    return runs;
}

/// Finds what each day may leave to the evening before; whether all of it can be looked at.
bool RangePlanner::findChoices(int day, const SolvedDay& solved, std::vector<unsigned>& choices) {
    std::vector<std::vector<Spot>> runs = day == 0 ? runsFromBefore(solved) : movableRuns(day, solved);
    if (runs.empty()) return true;
    const bool gaveUp = solved.gaveUp || (day > 0 && m_result.days[size_t(day) - 1].gaveUp);
    // What is in trouble was tried in groups; what was given up is not what it was.
    if (runs.size() > mostMovable || isTroubled(solved.solution.placement.score) || gaveUp || hasDuties(solved.problem))
        return false;
    m_movable[size_t(day)] = std::move(runs);
    choices = choicesOf(day, solved);
    if (day > 0 || choices.size() == 1) return true;
    choices = {0};
    return false;
}

/// The day behind those that are asked for; solved only where some of it might be worked the evening before.
SolvedDay RangePlanner::dayBehind(int day) {
    SolvedDay behind;
    behind.treatments = treatmentsOn(day);
    const bool movable = std::any_of(behind.treatments.begin(), behind.treatments.end(),
                                     [&](const OpenTreatment& t) { return isMovable(t, day); });
    // A rough plan proves nothing, and so need not tell how it saw that day.
    if (movable || !m_solver.isRough()) behind.problem = problemOf(day, behind.treatments);
    if (movable) behind.solution = m_solver.solve(behind.problem);
    return behind;
}

/// Moves runs to the evening before where that saves trouble or outings. The day behind those that are asked for is looked at as
/// well; what is behind that stays.
void RangePlanner::shareEvenings(int days) {
    const int seen = std::min(days + 1, m_ground.range.days());
    m_result.settled.assign(size_t(days) + 1, false);
    if (m_solver.isCancelled()) return;
    if (seen > days) m_result.days.push_back(dayBehind(days));
    m_movable.assign(size_t(seen), {});
    std::vector<std::vector<unsigned>> choices(size_t(seen), {0});
    std::vector<bool> looked;
    for (int day = 0; day < seen; ++day)
        looked.push_back(findChoices(day, m_result.days[size_t(day)], choices[size_t(day)]));
    const Sharing sharing = leastSharing(choices, [&](int day, unsigned moved, unsigned taken) {
        const DaySolution solution =
            moved == 0 && taken == 0 ? m_result.days[size_t(day)].solution : sharedDay(day, moved, taken);
        return DayPrice{priceOf(solution.placement.score), priceOf(solution.bound)};
    });
    for (int day = 1; day < seen; ++day) {
        for (size_t r = 0; r < m_movable[size_t(day)].size(); ++r) {
            if (sharing.moved[size_t(day)] & (1U << r)) setDay(m_movable[size_t(day)][r], day - 1);
        }
    }
    for (int day = 0; day < seen; ++day) {
        const bool taken = day + 1 < seen && sharing.moved[size_t(day) + 1] != 0;
        if (taken || sharing.moved[size_t(day)] != 0) m_result.days[size_t(day)] = solveOne(day);
        m_result.settled[size_t(day)] = sharing.settled[size_t(day)] && looked[size_t(day)];
    }
    if (seen == days) {
        m_result.settled[size_t(days)] = true;
        return;
    }
    if (m_result.settled[size_t(days)] && !m_solver.isRough()) m_result.next = m_result.days.back().problem.key();
    m_result.days.pop_back();
}

}  // namespace laneward::planning
