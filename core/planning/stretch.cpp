#include "core/planning/stretch.h"

#include "core/planning/job_builder.h"
#include "core/planning/objective.h"
#include "core/planning/plan_findings.h"
#include "core/planning/shortfalls.h"

#include <algorithm>

namespace laneward::planning {

namespace {

constexpr int daysPlanned = 7;
constexpr int daysSeen = 14;
constexpr int roundsToFill = 6;

/// Bounds of the day's whole objective: what is given and cannot change, and the bound of what was searched.
void addProof(const SolvedDay& solved, bool alone, bool sure, DayPlan& day) {
    const Objective& o = day.objective;
    const Score& score = solved.solution.placement.score;
    const Score& bound = solved.solution.bound;
    const auto least = [&](std::int64_t value, size_t i) {
        return alone ? std::max<std::int64_t>(0, value - (score[i] - bound[i])) : std::int64_t{0};
    };
    day.bound = {least(o.unmet, 0),   least(o.late_s, 1),  least(o.treatments, 2),    least(o.overtime_s, 3), least(o.tight_s, 4),
                 least(o.outings, 5), least(o.changes, 6), least(o.lanes_crossed, 7), least(o.freshness_s, 8)};
    if (!sure) day.bound.treatments = 0;
    day.proven = day.bound == day.objective;
}

std::vector<Outing> outingsOn(const State& state, const std::vector<Job>& jobs, QDate date) {
    std::vector<Outing> outings;
    std::vector<Job> ofDay;
    std::copy_if(jobs.begin(), jobs.end(), std::back_inserter(ofDay), [&](const Job& j) { return j.date == date; });
    for (const JobOuting& o : outingsOf(state, ofDay)) {
        Outing outing{o.jobs.front()->machine, o.number, o.time, {}};
        for (const Job* job : o.jobs)
            outing.jobs.push_back(job->id);
        outings.push_back(std::move(outing));
    }
    std::sort(outings.begin(), outings.end(), [](const Outing& a, const Outing& b) {
        return std::tie(a.time.begin, a.machine, a.number) < std::tie(b.time.begin, b.machine, b.number);
    });
    return outings;
}

/// The state as the stretch sees it: what was laid before it began is history.
State stateFor(const StretchTask& task) {
    State state;
    state.centre = task.state.centre;
    state.patterns = task.state.patterns;
    state.limits = task.state.limits;
    const DateRange seen{task.stretch.days.first, task.stretch.sight};
    const Span days{dayOf(state.centre, seen.first).begin, dayOf(state.centre, seen.last).end};
    if (days.contains(task.now)) state.levels = task.state.levels;
    state.committed = committedAround(task.state, seen);
    state.history = task.before.lanes;
    return state;
}

class StretchRun {
public:
    StretchRun(const StretchTask& task, const DaySolver& solver) : m_task(task), m_solver(solver), m_state(stateFor(task)) {}

    /// Days are planned one after the other, so what found no place on a crowded day may still fit between the jobs that did.
    /// They are kept and the rest is planned around them until nothing more fits: just as it would be if they were confirmed, and
    /// so a plan that is confirmed is not added to afterwards.
    StretchPlan run() {
        StretchPlan result = once();
        const std::vector<DayPlan> first = result.days;
        for (int round = 0; m_gaveUp && round < roundsToFill && !m_solver.isCancelled(); ++round) {
            const std::vector<Job> given = m_state.committed;
            confirm(result.jobs);
            StretchPlan more = once();
            if (more.jobs.size() == result.jobs.size()) break;
            for (Job& job : more.jobs) {
                const auto same = [&](const Job& c) { return c.id == job.id; };
                if (std::none_of(given.begin(), given.end(), same)) job.state = JobState::Proposed;
            }
            m_state.committed = given;
            result = std::move(more);
        }
        for (size_t day = 0; day < first.size(); ++day) {
            // Bounds of the first attempt hold for the whole task, those of a later one only for what was left.
            result.days[day].bound = first[day].bound;
            result.days[day].proven = first[day].bound == result.days[day].objective;
        }
        return result;
    }

private:
    void confirm(const std::vector<Job>& jobs) {
        for (const Job& job : jobs) {
            if (job.state != JobState::Proposed) continue;
            m_state.committed.push_back(job);
            m_state.committed.back().state = JobState::Confirmed;
        }
    }

    StretchPlan once() {
        const DateRange& range = m_task.stretch.days;
        const Ground ground = groundOf(m_state, m_task.occupancy, m_task.now, {range.first, m_task.stretch.sight});
        m_demands = demandsOf(ground);
        const Solved solved = RangePlanner(ground, m_demands, m_solver).solve(range.days(), DayStart{m_task.before.dutyLeft});
        StretchPlan result;
        result.range = range;
        result.begins = ground.days.front();
        result.stopped = solved.stopped;
        result.after.dutyLeft = solved.after.dutyLeft;
        result.after.next = solved.next;
        result.jobs = jobsOf(ground, solved);
        addDays(ground, solved, result);
        m_gaveUp = std::any_of(solved.days.begin(), solved.days.end(), [](const SolvedDay& day) { return day.gaveUp; });
        return result;
    }

    std::vector<Job> jobsOf(const Ground& ground, const Solved& solved) const {
        const DateRange& range = m_task.stretch.days;
        std::vector<Job> jobs;
        for (const Job& job : m_state.committed) {
            if (range.contains(job.date)) jobs.push_back(job);
        }
        JobBuilder builder(ground, m_demands);
        for (int day = 0; day < range.days(); ++day) {
            std::vector<Job> more = builder.jobsOf(solved.days[size_t(day)], day);
            std::move(more.begin(), more.end(), std::back_inserter(jobs));
        }
        std::sort(jobs.begin(), jobs.end(), comesBefore);
        explainJobs(ground, m_demands, jobs);
        return jobs;
    }

    void addDays(const Ground& ground, const Solved& solved, StretchPlan& result) const {
        const DateRange& range = m_task.stretch.days;
        const Instant end = ground.days[size_t(range.days())];
        std::vector<DemandOutcome> outcomes = outcomesUntil(end, m_state, ground.plays, m_demands, result.jobs);
        // Demands of days that are only seen fall to the next stretch.
        for (size_t d = 0; d < outcomes.size(); ++d) {
            if (dayOfDemand(ground.days, m_demands.demands[d]) >= range.days()) outcomes[d] = {};
        }
        const std::vector<Objective> objectives = objectivesOf(m_state, range, m_demands, outcomes, result.jobs);
        result.unmet = shortfallsOf(ground, m_demands, outcomes);
        for (int day = 0; day < range.days(); ++day) {
            DayPlan dayPlan;
            dayPlan.date = range.first.addDays(day);
            dayPlan.objective = objectives[size_t(day)];
            const SolvedDay& one = solved.days[size_t(day)];
            addProof(one, isAlone(ground, solved, day), isSure(solved, one), dayPlan);
            dayPlan.size = sizeOfDay(ground, m_demands, day);
            dayPlan.outings = outingsOn(m_state, result.jobs, dayPlan.date);
            result.days.push_back(std::move(dayPlan));
        }
    }

    /// Whether the day's plan is the best together with its neighbours, too. A treatment that was given up may have been placed
    /// by a better search, and what is in trouble may do better on the next day: then only the plainest bound holds.
    bool isAlone(const Ground& ground, const Solved& solved, int day) const {
        const SolvedDay& one = solved.days[size_t(day)];
        if (one.gaveUp || !solved.settled[size_t(day) + 1]) return false;
        const Score& score = one.solution.placement.score;
        const bool smooth = std::all_of(score.begin(), score.begin() + score_part::Outings,
                                        [&](const Sec& part) { return part == 0 || &part == &score[score_part::Treatments]; });
        const Instant end = ground.days[size_t(day) + 1];
        const bool closed = std::none_of(one.treatments.begin(), one.treatments.end(), [&](const OpenTreatment& t) {
            return m_demands.gaps[size_t(t.what.lane - 1)][t.what.gap].time.end > end;
        });
        // Whoever planned the evening before saw this day.
        const bool seen = day == 0 && !m_task.before.next.empty() && m_task.before.next == one.problem.key();
        return (smooth || closed) && (solved.settled[size_t(day)] || seen);
    }

    static bool isSure(const Solved& solved, const SolvedDay& day) {
        return std::none_of(day.treatments.begin(), day.treatments.end(),
                            [&](const OpenTreatment& t) { return solved.doubtful.contains(t.what.lane); });
    }

    const StretchTask& m_task;
    const DaySolver& m_solver;
    State m_state;
    DemandSet m_demands;
    bool m_gaveUp = false;
};

/// Lanes after the jobs that ended by `end`.
std::vector<LaneTreatment> lanesAfter(const State& state, const std::vector<LaneTreatment>& before,
                                      const std::vector<const Job*>& jobs, Instant end) {
    State laid;
    laid.centre.facts.lanes = state.centre.facts.lanes;
    laid.history = before;
    for (const Job* job : jobs) {
        Job times;
        times.state = job->state == JobState::Proposed ? JobState::Confirmed : job->state;
        times.treatment = job->treatment;
        times.pattern = job->pattern;
        times.lanes = job->lanes;
        laid.committed.push_back(std::move(times));
    }
    const auto fixed = fixedTreatments(laid);
    const auto last = lastByLane(laid);
    std::vector<LaneTreatment> after;
    for (size_t lane = 0; lane < fixed.size(); ++lane) {
        const LaneCondition condition = conditionBefore(last[lane], fixed[lane], {}, end);
        if (condition.treated) after.push_back({int(lane) + 1, condition.last, condition.pattern, condition.end});
    }
    return after;
}

std::vector<const Job*> pointersTo(const std::vector<Job>& jobs) {
    std::vector<const Job*> pointers;
    for (const Job& job : jobs)
        pointers.push_back(&job);
    return pointers;
}

}  // namespace

std::vector<Stretch> stretchesOf(const DateRange& range) {
    std::vector<Stretch> stretches;
    QDate first = range.first;
    for (; range.days() > 0 && first.daysTo(range.last) >= daysSeen; first = first.addDays(daysPlanned)) {
        stretches.push_back({{first, first.addDays(daysPlanned - 1)}, first.addDays(daysSeen - 1)});
    }
    if (range.days() > 0) stretches.push_back({{first, range.last}, range.last});
    return stretches;
}

std::vector<Job> committedAround(const State& state, const DateRange& range) {
    // Dates and times of a committed job may be at odds: either is enough.
    const Span near{dayOf(state.centre, range.first.addDays(-1)).begin, dayOf(state.centre, range.last.addDays(1)).end};
    std::vector<Job> jobs;
    for (const Job& job : state.committed) {
        const bool dated = range.first.addDays(-1) <= job.date && job.date <= range.last.addDays(1);
        if (dated || (job.time.begin < near.end && endOfSteps(job) > near.begin)) jobs.push_back(job);
    }
    return jobs;
}

Carried carriedInto(const State& state, const DateRange& range) {
    Carried carried;
    const Instant begin = dayOf(state.centre, range.first).begin;
    carried.lanes = lanesAfter(state, state.history, pointersTo(state.committed), begin);
    std::vector<const Machine*> machines;
    for (const Machine& machine : state.centre.machines)
        machines.push_back(&machine);
    std::sort(machines.begin(), machines.end(), [](const Machine* a, const Machine* b) { return a->id < b->id; });
    for (const Machine* machine : machines) {
        const auto own = std::find_if(state.limits.begin(), state.limits.end(),
                                      [&](const MachineLimits& l) { return l.machine == machine->id; });
        const std::optional<int> left =
            own == state.limits.end() ? limitsFromSettings(*machine).lanesUntilDuty : own->lanesUntilDuty;
        carried.dutyLeft.push_back(left ? std::int64_t{*left} : endless);
    }
    return carried;
}

StretchPlan planStretch(const StretchTask& task, const DaySolver& solver) {
    StretchPlan result = StretchRun(task, solver).run();
    const Instant end = dayOf(task.state.centre, task.stretch.days.last).end;
    const std::vector<Job> around = committedAround(task.state, task.stretch.days);
    std::vector<const Job*> jobs = pointersTo(result.jobs);
    for (const Job& job : around) {
        if (!task.stretch.days.contains(job.date)) jobs.push_back(&job);
    }
    result.after.lanes = lanesAfter(task.state, task.before.lanes, jobs, end);
    return result;
}

}  // namespace laneward::planning
