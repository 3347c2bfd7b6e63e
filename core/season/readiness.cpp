#include "core/season/season.h"

#include <algorithm>

namespace laneward {

namespace {

bool isStillToRun(const Job& job, QDate date, Instant now) {
    const bool open = job.state == JobState::Proposed || job.state == JobState::Confirmed || job.state == JobState::UnderWay;
    return open && job.date == date && job.time.end > now;
}

void addUse(JobUse& total, const JobUse& use) {
    for (size_t slot = 0; slot < total.conditioner.size(); ++slot)
        total.conditioner[slot] += use.conditioner[slot];
    total.cleaner += use.cleaner;
    total.waste += use.waste;
    total.laneRuns += use.laneRuns;
}

void countSteps(Readiness& ready, const Job& job, Instant now) {
    for (const Step& step : job.steps) {
        if (step.time.end <= now) continue;
        ready.refills += step.kind == StepKind::Refill;
        ready.emptyings += step.kind == StepKind::EmptyWaste;
        ready.swaps += step.kind == StepKind::SwapPack || step.kind == StepKind::Charge;
    }
}

std::optional<Instant> lastMeasured(const std::vector<LevelReading>& readings, const MachineId& machine, const Span& within) {
    std::optional<Instant> latest;
    for (const LevelReading& reading : readings) {
        const Instant at = reading.levels.at;
        if (reading.levels.machine != machine || at < within.begin || at > within.end) continue;
        latest = std::max(latest.value_or(at), at);
    }
    return latest;
}

bool isOut(const Centre& centre, const MachineId& machine, Instant t) {
    return std::any_of(centre.outages.begin(), centre.outages.end(), [&machine, t](const Outage& outage) {
        return outage.machine == machine && outage.begin <= t && (!outage.end || t < *outage.end);
    });
}

void addVoltFindings(Readiness& ready, const Machine& machine) {
    if (!ready.now.volts) return;
    if (*ready.now.volts < machine.attachSpareAt) {
        ready.findings.push_back(
            {Severity::Warning, "readiness.attach-spare", machine.name, {*ready.now.volts, machine.attachSpareAt}});
    } else if (*ready.now.volts < machine.fullAt) {
        ready.findings.push_back({Severity::Note, "readiness.not-full", machine.name, {*ready.now.volts, machine.fullAt}});
    }
}

/// The plan puts a step where a tank would not do, so these hold only after a change that the plan has not seen.
void addLevelFindings(Readiness& ready, const Machine& machine) {
    for (size_t slot = 0; slot < ready.tonight.conditioner.size(); ++slot) {
        const Microlitres held = ready.now.conditioner[slot];
        const Microlitres taken = ready.tonight.conditioner[slot];
        if (ready.refills == 0 && taken > held) {
            ready.findings.push_back({Severity::Warning, "readiness.short-conditioner", machine.name, {held, taken}});
        }
    }
    if (ready.refills == 0 && ready.tonight.cleaner > ready.now.cleaner) {
        ready.findings.push_back(
            {Severity::Warning, "readiness.short-cleaner", machine.name, {ready.now.cleaner, ready.tonight.cleaner}});
    }
    const Microlitres room = machine.capacity.waste - ready.now.waste;
    if (ready.emptyings == 0 && ready.tonight.waste > room) {
        ready.findings.push_back({Severity::Warning, "readiness.short-waste", machine.name, {room, ready.tonight.waste}});
    }
    if (ready.swaps == 0 && ready.tonight.laneRuns > ready.now.lanesLeft) {
        ready.findings.push_back({Severity::Warning,
                                  "readiness.short-charge",
                                  machine.name,
                                  {std::int64_t(ready.now.lanesLeft), std::int64_t(ready.tonight.laneRuns)}});
    }
}

}  // namespace

std::vector<Readiness> readinessOf(const SeasonState& season, const Plan& plan, Instant now) {
    const State state = planningState(season, now);
    const QDate date = dateOf(season.centre, now);
    const Span today{dayOf(season.centre, date).begin, now};
    const std::vector<LevelReading> readings = standing(season.readings);
    std::vector<Readiness> all;
    for (size_t n = 0; n < season.centre.machines.size(); ++n) {
        const Machine& machine = season.centre.machines[n];
        Readiness ready;
        ready.machine = machine.id;
        ready.now = state.levels[n];
        for (const Job& job : plan.jobs) {
            if (job.machine != machine.id || !isStillToRun(job, date, now)) continue;
            addUse(ready.tonight, job.use);
            countSteps(ready, job, now);
        }
        ready.measuredAt = lastMeasured(readings, machine.id, today);
        if (isOut(season.centre, machine.id, now))
            ready.findings.push_back({Severity::Warning, "readiness.out-of-service", machine.name, {}});
        if (!ready.measuredAt) ready.findings.push_back({Severity::Note, "readiness.not-measured", machine.name, {}});
        addVoltFindings(ready, machine);
        addLevelFindings(ready, machine);
        all.push_back(ready);
    }
    return all;
}

}  // namespace laneward
