#include "core/season/recording.h"

#include <algorithm>

namespace laneward {

namespace {

std::vector<int> workingOrder(const RunAccount& account) {
    std::vector<int> order;
    if (account.job) {
        for (const LaneTime& lane : account.job->lanes) {
            if (account.lanes.contains(lane.lane)) order.push_back(lane.lane);
        }
    }
    for (int lane : account.lanes.lanes()) {
        if (std::find(order.begin(), order.end(), lane) == order.end()) order.push_back(lane);
    }
    return order;
}

std::vector<LaneTime> shared(const std::vector<int>& order, const Span& time) {
    std::vector<LaneTime> lanes;
    const auto count = std::int64_t(order.size());
    for (std::int64_t i = 0; i < count; ++i) {
        const Span part{time.begin + Seconds{time.length().value * i / count},
                        time.begin + Seconds{time.length().value * (i + 1) / count}};
        lanes.push_back({order[size_t(i)], part});
    }
    return lanes;
}

MachineLimits limitsOf(const State& state, const Machine& machine) {
    for (const MachineLimits& limits : state.limits) {
        if (limits.machine == machine.id) return limits;
    }
    return limitsFromSettings(machine);
}

const Pattern* patternOf(const State& state, const RunAccount& account) {
    return account.pattern ? findPattern(state.patterns, *account.pattern) : nullptr;
}

/// Lanes that were run a second time because the outing's first pair is worked twice.
int repeatedLanes(const RunAccount& account, const LaneSet& done) {
    if (!account.job) return 0;
    int count = 0;
    for (const Step& step : account.job->steps) {
        if (step.kind == StepKind::FirstPairTwice) count += (step.lanes & done).count();
    }
    return count;
}

JobUse useOf(const State& state, const RunAccount& account, int laneRuns) {
    const Machine* machine = findMachine(state.centre, account.machine);
    if (!machine) return {};
    const JobUse one = laneUse(*machine, limitsOf(state, *machine), account.treatment, patternOf(state, account));
    JobUse use;
    for (size_t slot = 0; slot < use.conditioner.size(); ++slot)
        use.conditioner[slot] = one.conditioner[slot] * laneRuns;
    use.cleaner = one.cleaner * laneRuns;
    use.waste = one.waste * laneRuns;
    use.laneRuns = laneRuns;
    return use;
}

RunResult resultOf(const RunAccount& account, bool cutShort) {
    if (!account.job) return cutShort ? RunResult::CutShort : RunResult::Unplanned;
    if (cutShort) return RunResult::CutShort;
    const Job& job = *account.job;
    const bool same = job.machine == account.machine && job.treatment == account.treatment && job.pattern == account.pattern &&
                      job.laneSet() == account.lanes;
    return same ? RunResult::AsPlanned : RunResult::Changed;
}

}  // namespace

RunLog asPlanned(const Job& job, Instant now) {
    const Seconds early = std::max(Seconds{0}, job.time.end - now);
    RunLog log;
    log.job = job.id;
    log.planVersion = job.planVersion;
    log.machine = job.machine;
    log.time = {job.time.begin - early, job.time.end - early};
    log.treatment = job.treatment;
    log.pattern = job.pattern;
    log.lanes = job.lanes;
    for (LaneTime& lane : log.lanes)
        lane.time = {lane.time.begin - early, lane.time.end - early};
    log.result = RunResult::AsPlanned;
    log.use = job.use;
    return log;
}

RunLog runLog(const State& state, const RunAccount& account) {
    std::vector<int> order = workingOrder(account);
    const auto last = std::find(order.begin(), order.end(), account.lastLane);
    const bool cutShort = last != order.end() && last + 1 != order.end();
    if (cutShort) order.erase(last + 1, order.end());
    LaneSet done;
    for (int lane : order)
        done.insert(lane);
    RunLog log;
    if (account.job) {
        log.job = account.job->id;
        log.planVersion = account.job->planVersion;
    }
    log.machine = account.machine;
    log.time = account.time;
    log.treatment = account.treatment;
    if (conditions(account.treatment)) log.pattern = account.pattern;
    log.lanes = shared(order, account.time);
    log.result = resultOf(account, cutShort);
    const bool asInJob = log.result == RunResult::AsPlanned;
    log.use = asInJob ? account.job->use : useOf(state, account, int(order.size()) + repeatedLanes(account, done));
    log.note = account.note;
    return log;
}

Seconds usualLength(const State& state, const RunAccount& account) {
    const Machine* machine = findMachine(state.centre, account.machine);
    if (!machine) return {};
    Seconds length;
    int before = 0;
    for (int lane : workingOrder(account)) {
        if (before != 0) length += moveTime(*machine, before, lane);
        length += laneTime(*machine, account.treatment, patternOf(state, account));
        before = lane;
    }
    return length;
}

Job confirmedAs(const Job& job, const JobId& id, int planVersion, const PersonId& person) {
    Job confirmed = job;
    confirmed.id = id;
    confirmed.state = JobState::Confirmed;
    confirmed.planVersion = planVersion;
    confirmed.person = person;
    confirmed.version = 0;
    return confirmed;
}

Job begunAt(const Job& job, Instant now) {
    const Seconds by = now - job.time.begin;
    const auto move = [by](Span& span) { span = {span.begin + by, span.end + by}; };
    Job begun = job;
    begun.state = JobState::UnderWay;
    move(begun.time);
    for (LaneTime& lane : begun.lanes)
        move(lane.time);
    for (Step& step : begun.steps)
        move(step.time);
    return begun;
}

int planVersionOf(const SeasonState& season, QDate day) {
    int version = 0;
    for (const Job& job : season.confirmed) {
        if (job.date == day) version = std::max(version, job.planVersion);
    }
    return version;
}

std::vector<Job> overtakenJobs(const SeasonState& season, const Occurrence& occurrence, Instant cleared, Instant now) {
    LaneSet lanes = occurrence.lanes;
    if (season.centre.facts.settings.pairPartnerRule) {
        for (int lane : occurrence.lanes.lanes())
            lanes.insert(pairPartner(lane));
    }
    const std::vector<RunLog> runs = standing(season.runs);
    const auto isRun = [&runs](const Job& job) {
        return std::any_of(runs.begin(), runs.end(), [&job](const RunLog& run) { return run.job == job.id; });
    };
    const Span play{occurrence.booked.begin, cleared};
    std::vector<Job> waiting;
    for (const Job& job : season.confirmed) {
        if (job.state == JobState::Confirmed && job.time.begin >= now && !isRun(job)) waiting.push_back(job);
    }
    std::vector<Job> overtaken;
    for (const Job& job : waiting) {
        const bool follows = std::any_of(waiting.begin(), waiting.end(), [&](const Job& first) {
            return first.machine == job.machine && first.date == job.date && first.time.begin <= job.time.begin &&
                   first.time.overlaps(play) && first.laneSet().intersects(lanes);
        });
        if (follows) overtaken.push_back(job);
    }
    return overtaken;
}

}  // namespace laneward
