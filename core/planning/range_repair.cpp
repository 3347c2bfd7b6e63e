#include "core/planning/range_planner.h"

#include <algorithm>
#include <utility>

namespace laneward::planning {

namespace {

// A crowded day is not tried in more ways than this.
constexpr size_t groupsTried = 12;

bool troubled(const Score& score) { return score[0] > 0 || score[1] > 0 || score[3] > 0 || score[4] > 0; }

}  // namespace

/// Treatments that belong together: same recipe, same target.
std::vector<std::vector<RangePlanner::Spot>> RangePlanner::groupsOf(const SolvedDay& solved) const {
    std::map<std::pair<Sec, int>, std::vector<Spot>> groups;
    for (size_t i = 0; i < solved.treatments.size(); ++i) {
        const DayTask& task = solved.problem.tasks[i];
        groups[{task.target, task.recipe}].push_back({solved.treatments[i].what.lane, solved.treatments[i].what.gap});
    }
    std::vector<std::vector<Spot>> list;
    for (auto& [key, spots] : groups)
        list.push_back(std::move(spots));
    if (list.size() > groupsTried) list.resize(groupsTried);
    return list;
}

void RangePlanner::repair(int day) {
    if (!troubled(m_result.days[size_t(day)].solution.placement.score)) return;
    for (const auto& group : groupsOf(m_result.days[size_t(day)])) {
        if (!troubled(m_result.days[size_t(day)].solution.placement.score)) return;
        if (m_solver.isCancelled()) return;
        if (!moveToDayBefore(day, group)) useOtherGaps(day, group);
    }
}

/// The day behind those that are asked for is solved only to see what of it is better done the evening before.
void RangePlanner::lookAhead(int day) {
    if (m_solver.isCancelled()) return;
    const std::vector<OpenTreatment> treatments = treatmentsOn(day);
    if (!troubled(m_solver.solveRoughly(problemOf(day, treatments)).placement.score)) return;
    m_result.days.push_back(solveOne(day));
    for (const auto& group : groupsOf(m_result.days.back())) {
        if (!troubled(m_result.days.back().solution.placement.score) || m_solver.isCancelled()) break;
        moveToDayBefore(day, group);
    }
    m_result.days.pop_back();
}

bool RangePlanner::moveToDayBefore(int day, const std::vector<Spot>& group) {
    if (day == 0) return false;
    const auto setDay = [&](int to) {
        for (const auto& [lane, gap] : group) {
            for (OpenTreatment& t : m_lanes[size_t(lane - 1)]) {
                if (t.what.gap == gap) t.day = to;
            }
        }
    };
    for (const auto& [lane, gap] : group) {
        if (m_demands.gaps[size_t(lane - 1)][gap].time.begin >= m_ground.days[size_t(day)]) return false;
    }
    SolvedDay& before = m_result.days[size_t(day) - 1];
    SolvedDay& today = m_result.days[size_t(day)];
    setDay(day - 1);
    SolvedDay longer = solveOne(day - 1);
    const DayStart start = std::exchange(m_starts[size_t(day)], startAfter(longer, m_starts[size_t(day) - 1]));
    SolvedDay shorter = solveOne(day);
    const Score trial = sum(longer.solution.placement.score, shorter.solution.placement.score);
    const bool lossless = longer.solution.placement.score[0] <= before.solution.placement.score[0];
    if (lossless && trial < sum(before.solution.placement.score, today.solution.placement.score)) {
        before = std::move(longer);
        today = std::move(shorter);
        remember(before);
        return true;
    }
    m_starts[size_t(day)] = start;
    setDay(day);
    return false;
}

/// Treatments from `day` on, and the demands they serve.
RangePlanner::Count RangePlanner::countFrom(int day) const {
    Count count;
    for (const Lane& lane : m_lanes) {
        for (const OpenTreatment& t : lane) {
            if (t.day < day) continue;
            ++count.treatments;
            count.served += Sec(t.what.serves.size());
        }
    }
    return count;
}

/// The first gap, not behind `gap`, whose treatment is still open on `day`.
size_t RangePlanner::firstOpenGap(int day, int lane, size_t gap) const {
    const std::vector<Gap>& gaps = m_demands.gaps[size_t(lane - 1)];
    while (gap > 0 && gaps[gap - 1].time.end > m_ground.days[size_t(day)] && !m_ends.contains({lane, gap - 1}))
        --gap;
    return gap;
}

/// The same lanes without these gaps: an earlier gap may do for a demand that only asks for a pattern or a recent treatment.
bool RangePlanner::useOtherGaps(int day, const std::vector<Spot>& group) {
    const std::vector<Lane> lanesBefore = m_lanes;
    const std::set<Spot> forbiddenBefore = m_forbidden;
    const std::set<int> doubtfulBefore = m_result.doubtful;
    const Count before = countFrom(day);
    std::vector<int> lanes;
    for (const auto& [lane, gap] : group) {
        m_forbidden.insert({lane, gap});
        planLane(lane, firstOpenGap(day, lane, gap));
        lanes.push_back(lane);
    }
    assignDays(lanes, day);
    const Count after = countFrom(day);
    if (after.served >= before.served) {
        SolvedDay trial = solveOne(day);
        Score now = trial.solution.placement.score;
        Score then = m_result.days[size_t(day)].solution.placement.score;
        now[2] = after.treatments;
        then[2] = before.treatments;
        if (now < then) {
            m_result.days[size_t(day)] = std::move(trial);
            return true;
        }
    }
    m_lanes = lanesBefore;
    m_forbidden = forbiddenBefore;
    m_result.doubtful = doubtfulBefore;
    return false;
}

}  // namespace laneward::planning
