#include "core/planning/violations.h"

#include "core/planning/ground.h"

#include <algorithm>
#include <set>

namespace laneward {

namespace planning {

namespace {

Instant endOr(const std::optional<Instant>& end, Instant otherwise) { return end ? *end : otherwise; }

bool covers(const Outage& outage, const Span& time) {
    return outage.begin < time.end && time.begin < endOr(outage.end, time.end + Seconds{1});
}

std::int64_t number(int lane) { return lane; }

}  // namespace

Breaches::Breaches(const State& state, const Plan& plan)
    : m_state(state), m_plan(plan), m_plays(playsOf(state, plan.occupancy)), m_outings(outingsOf(state, plan.jobs)) {}

void Breaches::add(const char* rule, const Job& job, std::vector<Value> values) {
    const Machine* machine = findMachine(m_state.centre, job.machine);
    m_findings.push_back({Severity::Fault, rule, machine ? machine->name : job.machine.value, std::move(values)});
}

std::vector<Finding> Breaches::find() {
    for (const Job& job : m_plan.jobs) {
        if (isChecked(job)) checkJob(job);
    }
    std::set<QDate> dates;
    for (const JobOuting& outing : m_outings) {
        if (!outing.machine || outing.over) continue;
        checkOuting(outing);
        checkFirstPair(outing);
        checkClosed(outing);
        dates.insert(outing.date);
    }
    checkOverlaps();
    for (QDate date : dates)
        checkStaff(date);
    checkConditionOnly();
    for (const Machine& machine : m_state.centre.machines)
        checkStocks(machine);
    return std::move(m_findings);
}

void Breaches::checkJob(const Job& job) {
    const Machine* machine = findMachine(m_state.centre, job.machine);
    if (!machine || (job.pattern && !findPattern(m_state.patterns, *job.pattern)) ||
        conditions(job.treatment) != job.pattern.has_value()) {
        add("violation.unknown", job, {job.time.begin});
        return;
    }
    checkMachine(job, *machine);
    checkTimes(job, *machine);
    checkSteps(job, *machine);
    for (const LaneTime& lane : job.lanes)
        checkLane(job, lane.lane, lane.time);
    for (const Step& step : job.steps) {
        if (step.kind != StepKind::FirstPairTwice) continue;
        for (int lane : step.lanes.lanes())
            checkLane(job, lane, step.time);
    }
}

void Breaches::checkMachine(const Job& job, const Machine& machine) {
    const Instant begin = job.time.begin;
    if (job.state == JobState::Proposed && begin < m_plan.now) add("violation.before-now", job, {begin});
    const Bars& bars = machine.bars;
    if (std::count(bars.treatments.begin(), bars.treatments.end(), job.treatment) > 0)
        add("violation.barred-treatment", job, {begin});
    if (job.pattern && std::count(bars.patterns.begin(), bars.patterns.end(), *job.pattern) > 0) {
        add("violation.barred-pattern", job, {job.pattern->value, begin});
    }
}

void Breaches::checkLane(const Job& job, int lane, const Span& time) {
    const Centre& centre = m_state.centre;
    if (lane < 1 || lane > centre.facts.lanes) {
        add("violation.unknown", job, {job.time.begin});
        return;
    }
    if (findMachine(centre, job.machine)->bars.lanes.contains(lane))
        add("violation.barred-lane", job, {number(lane), job.time.begin});
    for (const Outage& outage : centre.outages) {
        if (outage.machine || !outage.lanes.contains(lane) || !covers(outage, time)) continue;
        add("violation.lane-out-of-service", job, {number(lane), job.time.begin});
    }
    checkPlay(job, lane, time);
}

void Breaches::checkPlay(const Job& job, int lane, const Span& time) {
    const auto played = [&](int l) { return isPlayed(m_plays[size_t(l - 1)], time); };
    if (played(lane)) add("violation.lane-in-play", job, {number(lane), job.time.begin});
    const int partner = pairPartner(lane);
    if (m_state.centre.facts.settings.pairPartnerRule && partner <= m_state.centre.facts.lanes && played(partner)) {
        add("violation.partner-in-play", job, {number(lane), job.time.begin});
    }
}

/// Every lane gets its time, and the machine the time to move between them.
void Breaches::checkTimes(const Job& job, const Machine& machine) {
    const Pattern* pattern = job.pattern ? findPattern(m_state.patterns, *job.pattern) : nullptr;
    const Seconds needed = laneTime(machine, job.treatment, pattern);
    for (size_t i = 0; i < job.lanes.size(); ++i) {
        const LaneTime& lane = job.lanes[i];
        const bool inside = job.time.begin <= lane.time.begin && lane.time.end <= job.time.end;
        const Instant ready =
            i == 0 ? job.time.begin : job.lanes[i - 1].time.end + moveTime(machine, job.lanes[i - 1].lane, lane.lane);
        if (inside && lane.time.length() >= needed && lane.time.begin >= ready) continue;
        add("violation.too-short", job, {number(lane.lane), job.time.begin});
    }
}

/// Steps come one after the other, each with its minutes, and all but the way back before the first lane.
void Breaches::checkSteps(const Job& job, const Machine& machine) {
    const MachineTimes& t = machine.times;
    const auto needed = [&](const Step& step) {
        switch (step.kind) {
            case StepKind::LeaveBay:
                return t.leaveBay;
            case StepKind::Refill:
                return t.refill;
            case StepKind::EmptyWaste:
                return t.emptyWaste;
            case StepKind::SwapPack:
                return t.swapPack;
            case StepKind::Charge:
                return t.charge;
            case StepKind::Duty:
                return t.duty;
            case StepKind::ReturnToBay:
                return t.returnToBay;
            case StepKind::FirstPairTwice:
            case StepKind::Treat:
                return Seconds{0};
        }
        return Seconds{0};
    };
    Instant ready = job.time.begin;
    for (const Step& step : job.steps) {
        const bool fits = step.time.begin >= ready && step.time.length() >= needed(step);
        const bool beforeLanes = step.kind == StepKind::Treat || step.kind == StepKind::ReturnToBay || job.lanes.empty() ||
                                 step.time.end <= job.lanes.front().time.begin;
        const bool afterLanes =
            step.kind != StepKind::ReturnToBay || job.lanes.empty() || step.time.begin >= job.lanes.back().time.end;
        if (!fits || !beforeLanes || !afterLanes) {
            add("violation.too-short", job, {number(job.lanes.empty() ? 0 : job.lanes.front().lane), job.time.begin});
        }
        ready = step.time.end;
    }
}

/// Jobs of an outing follow each other with time to move; it begins by leaving the bay.
void Breaches::checkOuting(const JobOuting& outing) {
    const Machine& machine = *outing.machine;
    const Job& first = *outing.jobs.front();
    const auto leaves =
        std::find_if(first.steps.begin(), first.steps.end(), [](const Step& s) { return s.kind == StepKind::LeaveBay; });
    if (isChecked(first) && leaves == first.steps.end())
        add("violation.too-short", first, {number(first.lanes.empty() ? 0 : first.lanes.front().lane), first.time.begin});
    for (size_t i = 1; i < outing.jobs.size(); ++i) {
        const Job& before = *outing.jobs[i - 1];
        const Job& job = *outing.jobs[i];
        if (!isChecked(job) || before.lanes.empty() || job.lanes.empty()) continue;
        const Seconds move = moveTime(machine, before.lanes.back().lane, job.lanes.front().lane);
        if (endOfSteps(before) > job.time.begin || before.lanes.back().time.end + move > job.time.begin) {
            add("violation.machine-twice", job, {before.time.begin, job.time.begin});
        }
    }
    for (const Outage& outage : m_state.centre.outages) {
        if (outage.machine == machine.id && covers(outage, outing.time)) {
            add("violation.machine-out-of-service", first, {first.time.begin});
        }
    }
}

}  // namespace planning

std::vector<Finding> violationsOf(const State& state, const Plan& plan) { return planning::Breaches(state, plan).find(); }

}  // namespace laneward
