#include "core/season/waste_past.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

/// Runs of a machine, by end, and what each laid down.
std::vector<std::pair<Instant, Cleaning>> workOf(const SeasonState& season, const MachineId& machine) {
    std::vector<std::pair<Instant, Cleaning>> work;
    for (const RunLog& run : standing(season.runs)) {
        if (run.machine == machine) work.emplace_back(run.time.end, cleaningOf(run.use, run.treatment));
    }
    std::sort(work.begin(), work.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    return work;
}

bool isStillToRun(const Job& job, const Machine& machine, QDate today, Instant now) {
    return job.machine == machine.id && job.date == today && isAhead(job) && job.time.end > now;
}

bool isEmptiedBefore(const Job& job, Instant now) {
    return std::any_of(job.steps.begin(), job.steps.end(),
                       [now](const Step& step) { return step.kind == StepKind::EmptyWaste && step.time.end > now; });
}

}  // namespace

Cleaning cleaningOf(const JobUse& use, Treatment treatment) {
    if (!cleans(treatment)) return {};
    Cleaning work{use.cleaner, Microlitres{0}};
    for (const Microlitres conditioner : use.conditioner)
        work.stripped += conditioner;
    return work;
}

WasteTank learnedWasteTank(const SeasonState& season, const Machine& machine) {
    WasteRule rule;
    rule.capacity = std::max(Microlitres{1}, machine.capacity.waste);
    WasteTank tank(rule);
    const auto work = workOf(season, machine.id);
    std::vector<LevelReading> readings = standing(season.readings);
    std::erase_if(readings, [&](const LevelReading& r) { return r.levels.machine != machine.id; });
    std::sort(readings.begin(), readings.end(), [](const LevelReading& a, const LevelReading& b) {
        return std::tie(a.levels.at, a.id) < std::tie(b.levels.at, b.id);
    });
    std::optional<Instant> emptySince;  // a tank that was not seen empty may have held more
    for (const LevelReading& reading : readings) {
        if (reading.emptied && emptySince && emptiedFindings(*reading.emptied, machine).empty()) {
            Cleaning since;
            for (const auto& [end, done] : work) {
                if (*emptySince < end && end <= reading.levels.at) since = since + done;
            }
            tank.learn({since, *reading.emptied});
        }
        if (reading.levels.waste == Microlitres{0}) emptySince = reading.levels.at;
    }
    return tank;
}

std::optional<Microlitres> learnedWastePerLane(const SeasonState& season, const Machine& machine) {
    const WasteTank tank = learnedWasteTank(season, machine);
    if (tank.emptyings() < leastEmptyings) return std::nullopt;
    Cleaning sum;
    int lanes = 0;
    for (const RunLog& run : standing(season.runs)) {
        if (run.machine != machine.id || !cleans(run.treatment)) continue;
        sum = sum + cleaningOf(run.use, run.treatment);
        lanes += run.use.laneRuns;
    }
    if (lanes == 0) return std::nullopt;
    const Cleaning lane{{sum.cleaner.value / lanes}, {sum.stripped.value / lanes}};
    const std::int64_t usual = std::max<std::int64_t>(1, machine.capacity.wastePerLane.value);
    return tank.perLane(lane, int(std::clamp<std::int64_t>(machine.capacity.waste.value / usual, 1, 1'000)));
}

WasteLevel wasteLevel(const SeasonState& season, const Machine& machine, Instant now) {
    Instant since = dayOf(season.centre, dateOf(season.centre, now)).begin;
    WasteLevel level;
    for (const LevelReading& reading : standing(season.readings)) {
        const MachineLevels& measured = reading.levels;
        if (measured.machine != machine.id || measured.at < since || measured.at > now) continue;
        since = measured.at;
        level.measured = measured.waste;
    }
    for (const auto& [end, done] : workOf(season, machine.id)) {
        if (since < end && end <= now) level.since = level.since + done;
    }
    return level;
}

std::vector<OverflowChance> overflowTonight(const SeasonState& season, const Machine& machine, const Plan& plan, Instant now) {
    const QDate today = dateOf(season.centre, now);
    std::vector<const Job*> jobs;
    for (const Job& job : plan.jobs) {
        if (isStillToRun(job, machine, today, now)) jobs.push_back(&job);
    }
    std::sort(jobs.begin(), jobs.end(), [](const Job* a, const Job* b) { return a->time.begin < b->time.begin; });
    const WasteTank tank = learnedWasteTank(season, machine);
    WasteLevel level = wasteLevel(season, machine, now);
    std::vector<OverflowChance> all;
    // From one emptying to the next: what has overflowed before is wiped up by then.
    for (auto first = jobs.begin(); first != jobs.end();) {
        if (isEmptiedBefore(**first, now)) level = {};
        const auto last = std::find_if(first + 1, jobs.end(), [now](const Job* job) { return isEmptiedBefore(*job, now); });
        std::vector<Cleaning> work;
        for (auto job = first; job != last; ++job)
            work.push_back(cleaningOf((*job)->use, (*job)->treatment));
        const std::vector<double> chances = tank.overflowChances(level, work);
        for (size_t n = 0; n < chances.size(); ++n)
            all.push_back({first[std::ptrdiff_t(n)]->id, chances[n]});
        first = last;
    }
    return all;
}

std::vector<Finding> overflowFindings(const std::vector<OverflowChance>& chances, const Plan& plan, const QString& machine) {
    const auto risk =
        std::find_if(chances.begin(), chances.end(), [](const OverflowChance& one) { return one.chance > worthSaying; });
    if (risk == chances.end()) return {};
    const auto job = std::find_if(plan.jobs.begin(), plan.jobs.end(), [&](const Job& one) { return one.id == risk->job; });
    if (job == plan.jobs.end()) return {};
    const std::int64_t percent = std::llround(risk->chance * 100);
    return {{Severity::Warning, "readiness.overflow", machine, {job->time.begin, percent, job->laneSet().text()}}};
}

std::vector<Finding> emptiedFindings(Microlitres emptied, const Machine& machine) {
    const Microlitres capacity = machine.capacity.waste;
    if (emptied < Microlitres{0}) return {{Severity::Fault, "waste.negative", machine.name, {emptied, capacity}}};
    if (double(emptied.value) <= fullestTank * double(capacity.value)) return {};
    return {{Severity::Warning, "waste.beyond-tank", machine.name, {emptied, capacity}}};
}

std::vector<WasteLine> wasteOutlook(const SeasonState& season, const Plan& plan, Instant now) {
    std::vector<WasteLine> lines;
    for (const Machine& machine : season.centre.machines) {
        const WasteTank tank = learnedWasteTank(season, machine);
        const WasteLevel level = wasteLevel(season, machine, now);
        WasteLine line;
        line.machine = machine.id;
        line.level = level.measured + Microlitres{std::llround(std::max(0.0, tank.wasteOf(level.since).centre))};
        line.capacity = machine.capacity.waste;
        line.share = tank.share().centre;
        line.emptyings = tank.emptyings();
        line.overflow = overflowTonight(season, machine, plan, now);
        lines.push_back(std::move(line));
    }
    return lines;
}

}  // namespace laneward
