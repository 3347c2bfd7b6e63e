#include "core/season/pack_outlook.h"
#include "core/season/service_outlook.h"
#include "core/season/waste_past.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

/// What the past has shown, else the settings.
MachineLimits limitsOf(const SeasonState& season, const Machine& machine, const std::vector<PackState>& packs, Instant now) {
    MachineLimits limits = limitsFromSettings(machine);
    limits.wastePerLane = learnedWastePerLane(season, machine).value_or(limits.wastePerLane);
    limits.lanesPerCharge = learnedLanesPerCharge(packs, machine).value_or(limits.lanesPerCharge);
    if (const std::optional<int> due = lanesUntilDuty(season, machine.id, now))
        limits.lanesUntilDuty = std::min(*due, limits.lanesUntilDuty.value_or(*due));
    return limits;
}

/// Closing down restores a machine, so a day starts full, empty and charged unless somebody has measured since.
MachineLevels levelsAtDawn(const SeasonState& season, const Machine& machine, const MachineLimits& limits, Instant dawn,
                           Instant now) {
    MachineLevels levels = fullLevels(machine, limits, dawn);
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

/// Who keeps the log of packs knows better than that a day starts charged.
void takePack(MachineLevels& levels, const std::vector<PackState>& packs, const MachineLimits& limits, Instant measuredAt) {
    constexpr Seconds current{36 * 3600};  // an older entry is of a log that nobody keeps any longer
    for (const PackState& pack : packs) {
        if (pack.machine != levels.machine || !pack.onMachine || pack.onCharge || !pack.since) continue;
        if (*pack.since + current < levels.at || *pack.since < measuredAt) continue;
        levels.lanesLeft = std::max(0, limits.lanesPerCharge - int(std::lround(pack.lanes)));
    }
}

/// The past as it was written down.
struct Known {
    const std::vector<RunLog>& runs;  ///< that stand
    const std::vector<PackState>& packs;
};

MachineLevels levelsNow(const SeasonState& season, const Known& known, const Machine& machine, const MachineLimits& limits,
                        Instant now) {
    const Instant dawn = dayOf(season.centre, dateOf(season.centre, now)).begin;
    MachineLevels levels = levelsAtDawn(season, machine, limits, dawn, now);
    const Instant measuredAt = levels.at;
    for (const RunLog& run : known.runs) {
        if (run.machine == machine.id && run.time.end > measuredAt && run.time.end <= now) takeRun(levels, run.use);
    }
    levels.at = now;
    takePack(levels, known.packs, limits, measuredAt == dawn ? Instant{} : measuredAt);
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
    const std::vector<PackState> packs = packsOf(season, now);
    for (const Machine& machine : season.centre.machines) {
        state.limits.push_back(limitsOf(season, machine, packs, now));
        state.levels.push_back(levelsNow(season, {runs, packs}, machine, state.limits.back(), now));
    }
    state.committed = committedJobs(season, runs, dateOf(season.centre, now).addDays(-1));
    state.history = treatmentsUntil(season, now);
    return state;
}

}  // namespace laneward
