#include "core/season/pack_deeds.h"
#include "core/season/waste_past.h"

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

void append(std::vector<Finding>& all, std::vector<Finding> more) { all.insert(all.end(), more.begin(), more.end()); }

/// Amounts that were typed today and can hardly be.
void addDoubts(Readiness& ready, const std::vector<LevelReading>& readings, const Machine& machine, const Span& today) {
    for (const LevelReading& reading : readings) {
        const bool counts = reading.levels.machine == machine.id && reading.emptied && today.begin <= reading.levels.at &&
                            reading.levels.at <= today.end;
        if (!counts) continue;
        append(ready.findings, emptiedFindings(*reading.emptied, machine));
    }
}

/// The job that is not worth the risk; else that the cautious figures of planning leave too little room.
void addWasteFindings(Readiness& ready, const Plan& plan, const Machine& machine) {
    std::vector<Finding> risk = overflowFindings(ready.overflow, plan, machine.name);
    const Microlitres room = machine.capacity.waste - ready.now.waste;
    if (risk.empty() && ready.emptyings == 0 && ready.tonight.waste > room)
        risk.push_back({Severity::Warning, "readiness.short-waste", machine.name, {room, ready.tonight.waste}});
    append(ready.findings, std::move(risk));
}

/// The plan puts a step where a tank would not do, so these hold only after a change that the plan has not seen.
void addLevelFindings(Readiness& ready, const Plan& plan, const Machine& machine) {
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
    addWasteFindings(ready, plan, machine);
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
        ready.limits = voltRuleOf(season, machine, now);
        ready.volts = voltsToday(season, ready.now, today.begin);
        if (ready.volts) append(ready.findings, voltFindings(*ready.volts, ready.limits, machine.name));
        ready.overflow = overflowTonight(season, machine, plan, now);
        addLevelFindings(ready, plan, machine);
        addDoubts(ready, readings, machine, today);
        all.push_back(ready);
    }
    return all;
}

}  // namespace laneward
