#include "core/planning/moves.h"

#include "core/planning/move_obstacles.h"
#include "core/planning/objective.h"

#include <algorithm>
#include <set>

namespace laneward {

using namespace planning;

namespace {

constexpr int daysBehind = 6;

Objective operator-(const Objective& a, const Objective& b) {
    return {a.unmet - b.unmet,
            a.late_s - b.late_s,
            a.treatments - b.treatments,
            a.overtime_s - b.overtime_s,
            a.tight_s - b.tight_s,
            a.outings - b.outings,
            a.changes - b.changes,
            a.lanes_crossed - b.lanes_crossed,
            a.freshness_s - b.freshness_s};
}

void shift(Span& time, Seconds by) { time = {time.begin + by, time.end + by}; }

void shift(Job& job, Seconds by) {
    shift(job.time, by);
    for (LaneTime& lane : job.lanes)
        shift(lane.time, by);
    for (Step& step : job.steps)
        shift(step.time, by);
    // A confirmed job that moves is planned anew: it must not begin in the past.
    job.state = JobState::Proposed;
}

/// Lanes on which one thing becomes of demands, and how much of it at most.
struct Effect {
    LaneSet lanes;
    Seconds most;

    void add(int lane, Seconds much) {
        lanes.insert(lane);
        most = std::max(most, much);
    }
    std::vector<Value> values() const { return {std::int64_t{lanes.count()}, most, lanes.text()}; }
};

struct Effects {
    Effect unmet;
    Effect late;
    Effect tight;
    Effect eased;  ///< no longer late, or no longer inside the reserve
    Effect older;
    Effect fresher;

    void add(int lane, const DemandOutcome& was, const DemandOutcome& is) {
        if (is.met == Met::Unmet) {
            if (was.met != Met::Unmet) unmet.add(lane, {});
            return;
        }
        if (is.late > was.late) late.add(lane, is.late);
        if (is.met == Met::Tight && is.tight > was.tight) tight.add(lane, is.tight);
        if (is.met > was.met) eased.add(lane, {});
        if (was.met != Met::Unmet && is.freshness > was.freshness) older.add(lane, is.freshness - was.freshness);
        if (was.met != Met::Unmet && is.freshness < was.freshness) fresher.add(lane, was.freshness - is.freshness);
    }
};

class Mover {
public:
    Mover(const State& state, const Plan& plan, const Job& job) : m_state(state), m_job(job) {
        m_near.range = {std::max(job.date, plan.range.first), std::min(job.date.addDays(daysBehind), plan.range.last)};
        m_near.now = plan.now;
        m_near.occupancy = plan.occupancy;
        // What the lanes carry comes from all jobs; only these days are judged.
        m_near.jobs = plan.jobs;
        for (const Job& other : plan.jobs) {
            const bool moves = other.date == job.date && other.machine == job.machine && other.outing == job.outing;
            if (!moves || other.state == JobState::Dropped) continue;
            m_open = m_open && (other.state == JobState::Proposed || other.state == JobState::Confirmed);
            m_begin = std::min(m_begin.value_or(other.time.begin), other.time.begin);
        }
        if (!canMove()) return;
        m_demands = demandsOf(state, m_near.occupancy, m_near.now, m_near.range);
        m_outcomes = outcomesOf(state, m_near.occupancy, m_demands, m_near.jobs);
        m_objective = objective(m_near.jobs, m_outcomes);
        m_broken = violationsOf(state, around(m_near.jobs));
    }

    bool canMove() const { return m_open && m_begin; }

    JobMove move(Seconds by) const {
        std::vector<Job> jobs = m_near.jobs;
        for (Job& other : jobs) {
            const bool moves = other.date == m_job.date && other.machine == m_job.machine && other.outing == m_job.outing;
            if (moves && other.state != JobState::Dropped) shift(other, by);
        }
        JobMove move;
        move.by = by;
        const Plan near = around(jobs);
        std::vector<Finding> broken = violationsOf(m_state, near);
        std::erase_if(broken, [&](const Finding& f) { return isOld(f); });
        move.possible = broken.empty();
        const bool earlier = by < Seconds{0};
        const Seconds length = earlier ? -by : by;
        if (!move.possible) {
            move.what = {Severity::Note, earlier ? "job.not-earlier" : "job.not-later", QString(), {length}};
            move.why = obstaclesOf({m_state, near, m_job.date, m_job.machine, m_job.outing, by}, broken);
            return move;
        }
        move.what = {Severity::Note, earlier ? "job.earlier" : "job.later", QString(), {length, *m_begin + by}};
        const std::vector<DemandOutcome> outcomes = outcomesOf(m_state, m_near.occupancy, m_demands, jobs);
        move.change = objective(jobs, outcomes) - m_objective;
        move.why = effects(outcomes, move.change);
        return move;
    }

private:
    /// The jobs that could get in each other's way: the day's and those of the days beside it.
    Plan around(const std::vector<Job>& jobs) const {
        Plan plan;
        plan.range = m_near.range;
        plan.now = m_near.now;
        plan.occupancy = m_near.occupancy;
        std::copy_if(jobs.begin(), jobs.end(), std::back_inserter(plan.jobs),
                     [&](const Job& job) { return m_job.date.addDays(-1) <= job.date && job.date <= m_job.date.addDays(1); });
        return plan;
    }

    Objective objective(const std::vector<Job>& jobs, const std::vector<DemandOutcome>& outcomes) const {
        Objective sum;
        for (const Objective& day : objectivesOf(m_state, m_near.range, m_demands, outcomes, jobs))
            sum = sum + day;
        return sum;
    }

    /// Broken before as well: the same rule, machine and lane.
    bool isOld(const Finding& finding) const {
        const auto lane = [](const Finding& f) {
            const auto* n = f.values.empty() ? nullptr : std::get_if<std::int64_t>(&f.values.front());
            return n ? *n : std::int64_t{0};
        };
        return std::any_of(m_broken.begin(), m_broken.end(), [&](const Finding& old) {
            return old.rule == finding.rule && old.subject == finding.subject && lane(old) == lane(finding);
        });
    }

    std::vector<Finding> effects(const std::vector<DemandOutcome>& outcomes, const Objective& change) const {
        Effects effects;
        for (size_t d = 0; d < outcomes.size(); ++d)
            effects.add(m_demands.demands[d].lane, m_outcomes[d], outcomes[d]);
        std::vector<Finding> told;
        const auto tell = [&](const char* rule, const Effect& effect) {
            if (!effect.lanes.isEmpty()) told.push_back({Severity::Note, rule, effect.lanes.text(), effect.values()});
        };
        tell("job.move-unmet", effects.unmet);
        tell("job.move-late", effects.late);
        const Seconds overtime{change.overtime_s};
        if (overtime > Seconds{0}) told.push_back({Severity::Note, "job.move-overtime", {}, {overtime}});
        tell("job.move-tight", effects.tight);
        tell("job.move-older", effects.older);
        const bool free = told.empty();
        if (overtime < Seconds{0}) told.push_back({Severity::Note, "job.move-less-overtime", {}, {-overtime}});
        tell("job.move-eased", effects.eased);
        tell("job.move-fresher", effects.fresher);
        if (free) told.insert(told.begin(), {Severity::Note, "job.move-free", {}, {}});
        return told;
    }

    const State& m_state;
    const Job& m_job;
    Plan m_near;
    bool m_open = true;
    std::optional<Instant> m_begin;
    DemandSet m_demands;
    std::vector<DemandOutcome> m_outcomes;
    Objective m_objective;
    std::vector<Finding> m_broken;
};

}  // namespace

std::optional<JobMove> moveOf(const State& state, const Plan& plan, const Job& job, Seconds by) {
    const Mover mover(state, plan, job);
    return mover.canMove() ? std::optional(mover.move(by)) : std::nullopt;
}

std::vector<JobMove> movesOf(const State& state, const Plan& plan, const Job& job) {
    const Mover mover(state, plan, job);
    if (!mover.canMove()) return {};
    std::vector<JobMove> moves{mover.move(-moveStep), mover.move(moveStep)};
    const Seconds slack = minutes(job.slack.value / 60);
    if (slack > Seconds{0} && slack != moveStep) moves.push_back(mover.move(slack));
    return moves;
}

}  // namespace laneward
