#include "core/season/waste_past.h"

#include <algorithm>

namespace laneward {

namespace {

Cleaning cleaningOf(const JobUse& use, Treatment treatment) {
    if (!cleans(treatment)) return {};
    Cleaning work{use.cleaner, Microlitres{0}};
    for (const Microlitres conditioner : use.conditioner)
        work.stripped += conditioner;
    return work;
}

/// Runs of a machine, by end, and what each laid down.
std::vector<std::pair<Instant, Cleaning>> workOf(const SeasonState& season, const MachineId& machine) {
    std::vector<std::pair<Instant, Cleaning>> work;
    for (const RunLog& run : standing(season.runs)) {
        if (run.machine == machine) work.emplace_back(run.time.end, cleaningOf(run.use, run.treatment));
    }
    std::sort(work.begin(), work.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    return work;
}

}  // namespace

WasteTank wasteTankOf(const SeasonState& season, const Machine& machine) {
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
        if (reading.emptied && emptySince) {
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
    const WasteTank tank = wasteTankOf(season, machine);
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

std::vector<double> overflowChances(const SeasonState& season, const Machine& machine, const MachineLevels& now,
                                    const std::vector<const Job*>& jobs) {
    std::vector<Cleaning> work;
    work.reserve(jobs.size());
    for (const Job* job : jobs)
        work.push_back(cleaningOf(job->use, job->treatment));
    return wasteTankOf(season, machine).overflowChances({now.waste, {}}, work);
}

}  // namespace laneward
