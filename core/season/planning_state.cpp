#include "core/season/season.h"
#include "core/season/service_outlook.h"

#include <algorithm>

namespace laneward {

namespace {

/// Closing down restores a machine, so a day starts full, empty and charged unless somebody has measured since.
MachineLevels levelsAtDawn(const SeasonState& season, const Machine& machine, Instant dawn, Instant now) {
    MachineLevels levels = fullLevels(machine, limitsFromSettings(machine), dawn);
    for (const LevelReading& reading : standing(season.readings)) {
        const MachineLevels& measured = reading.levels;
        if (measured.machine == machine.id && measured.at <= now && measured.at >= levels.at) levels = measured;
    }
    return levels;
}

void takeRun(MachineLevels& levels, const JobUse& use) {
    for (size_t slot = 0; slot < levels.conditioner.size(); ++slot) {
        levels.conditioner[slot] = std::max(Microlitres{0}, levels.conditioner[slot] - use.conditioner[slot]);
    }
    levels.cleaner = std::max(Microlitres{0}, levels.cleaner - use.cleaner);
    levels.waste += use.waste;
    levels.lanesLeft = std::max(0, levels.lanesLeft - use.laneRuns);
}

MachineLevels levelsNow(const SeasonState& season, const std::vector<RunLog>& runs, const Machine& machine, Instant now) {
    const Instant dawn = dayOf(season.centre, dateOf(season.centre, now)).begin;
    MachineLevels levels = levelsAtDawn(season, machine, dawn, now);
    const Instant measuredAt = levels.at;
    for (const RunLog& run : runs) {
        if (run.machine == machine.id && run.time.end > measuredAt && run.time.end <= now) takeRun(levels, run.use);
    }
    levels.at = now;
    return levels;
}

/// A job as its run log says it went.
Job joined(Job job, const RunLog& run) {
    job.state = run.result == RunResult::CutShort ? JobState::CutShort : JobState::Done;
    job.machine = run.machine;
    job.person = run.person;
    job.time = run.time;
    job.treatment = run.treatment;
    job.pattern = run.pattern;
    job.lanes = run.lanes;
    job.use = run.use;
    return job;
}

std::vector<Job> committedJobs(const SeasonState& season, const std::vector<RunLog>& runs, QDate from) {
    std::vector<Job> jobs;
    for (const Job& job : season.confirmed) {
        if (job.state == JobState::Dropped || job.state == JobState::Proposed || job.date < from) continue;
        const auto run = std::find_if(runs.begin(), runs.end(), [&job](const RunLog& log) {
            return log.job == job.id && log.planVersion == job.planVersion;
        });
        jobs.push_back(run == runs.end() ? job : joined(job, *run));
    }
    return jobs;
}

}  // namespace

std::vector<LaneTreatment> treatmentsUntil(const SeasonState& season, Instant t) {
    // Older treatments join as runs of one lane, so that 'condition only' finds the pattern that it keeps.
    std::vector<RunLog> logs;
    for (const LaneTreatment& old : season.before) {
        RunLog log;
        log.time = {old.end, old.end};
        log.treatment = old.treatment;
        log.pattern = old.pattern;
        log.lanes = {{old.lane, log.time}};
        logs.push_back(log);
    }
    const std::vector<RunLog> recent = standing(season.runs);
    logs.insert(logs.end(), recent.begin(), recent.end());
    std::stable_sort(logs.begin(), logs.end(), [](const RunLog& a, const RunLog& b) { return a.time.end < b.time.end; });
    return lastTreatments(logs, t);
}

State planningState(const SeasonState& season, Instant now) {
    const std::vector<RunLog> runs = standing(season.runs);
    State state;
    state.centre = season.centre;
    state.series = season.series;
    state.patterns = season.patterns;
    for (const Machine& machine : season.centre.machines) {
        state.limits.push_back(limitsFromSettings(machine));
        std::optional<int>& untilDuty = state.limits.back().lanesUntilDuty;
        if (const std::optional<int> due = lanesUntilDuty(season, machine.id, now))
            untilDuty = std::min(*due, untilDuty.value_or(*due));
        state.levels.push_back(levelsNow(season, runs, machine, now));
    }
    state.committed = committedJobs(season, runs, dateOf(season.centre, now).addDays(-1));
    state.history = treatmentsUntil(season, now);
    return state;
}

}  // namespace laneward
