#include "app/demo/demo_parts.h"

#include "core/season/past_forecasts.h"

#include <algorithm>

namespace laneward::demo {

namespace {

constexpr int warmUp = 21;  // days of the ledger before anything is forecast
constexpr int paths = 400;
constexpr std::int64_t fewNodes = 8 * nodesFor;

/// The plan of all days that forecasts look at; what treatments take hardly depends on their order.
Plan planFrom(const SeasonState& season, QDate first, QDate last) {
    const Instant begin = dayOf(season.centre, first).begin;
    Plan all = plan(planningState(season, begin), begin, {first, last}, fewNodes);
    for (Job& job : all.jobs) {
        job.lanes.clear();
        job.steps.clear();
        job.reasons.clear();
    }
    std::stable_sort(all.jobs.begin(), all.jobs.end(), [](const Job& a, const Job& b) { return a.date < b.date; });
    return all;
}

Plan aheadOf(const Plan& all, QDate day) {
    Plan ahead;
    ahead.range = {day, day.addDays(keptHorizons.back() - 1)};
    for (const Job& job : all.jobs) {
        if (ahead.range.contains(job.date)) ahead.jobs.push_back(job);
    }
    return ahead;
}

/// Records of the whole time, without what learning has no need of.
SupplyHistory wholeHistory(const SeasonState& season, const HistorySlice& records) {
    SupplyHistory all;
    all.stock = {records.movements, records.counts, standing(records.runs)};
    for (RunLog& run : all.stock.runs) {
        run.use.laneRuns = run.use.laneRuns > 0 ? run.use.laneRuns : int(run.lanes.size());
        run.lanes.clear();
    }
    all.drift = {all.stock.runs, records.readings, records.patternVersions, season.patterns};
    return all;
}

/// What was known when `day` began.
SupplyHistory knownBy(const SupplyHistory& all, const DateRange& days, Instant begin) {
    SupplyHistory known;
    known.days = days;
    const auto take = [begin](const auto& from, auto& to, auto time) {
        std::copy_if(from.begin(), from.end(), std::back_inserter(to), [&](const auto& one) { return time(one) < begin; });
    };
    const auto end = [](const RunLog& run) { return run.time.end; };
    const auto at = [](const auto& record) { return record.at; };
    take(all.stock.movements, known.stock.movements, at);
    take(all.stock.counts, known.stock.counts, at);
    take(all.stock.runs, known.stock.runs, end);
    take(all.drift.readings, known.drift.readings, [](const LevelReading& reading) { return reading.levels.at; });
    known.drift.runs = known.stock.runs;
    known.drift.versions = all.drift.versions;
    known.drift.patterns = all.drift.patterns;
    return known;
}

}  // namespace

UseFactors factorsBy(const SeasonState& season, const HistorySlice& records, Instant until) {
    DriftHistory known{{}, {}, records.patternVersions, season.patterns};
    for (const RunLog& run : records.runs) {
        if (run.time.end < until) known.runs.push_back(run);
    }
    for (const LevelReading& reading : records.readings) {
        if (reading.poured && reading.levels.at < until) known.readings.push_back(reading);
    }
    return factorsOf(usageOf(known, season.centre));
}

void addForecasts(const SeasonState& season, HistorySlice& records, QDate today) {
    const QDate first = today.addDays(-ledgerDays);
    const Plan all = planFrom(season, first, today.addDays(keptHorizons.back()));
    const SupplyHistory whole = wholeHistory(season, records);
    SeasonState then = season;
    then.runs.clear();
    ForecastRule rule = keptRule();
    rule.paths = paths;
    for (QDate day = first.addDays(warmUp); day < today; day = day.addDays(1)) {
        const Instant now = dayOf(season.centre, day).begin;
        const SupplyHistory known = knownBy(whole, {first, day.addDays(-1)}, now);
        const Plan ahead = aheadOf(all, day);
        const SupplyLearning learned = learnSupplies(then, known);
        if (auto forecast = forecastToKeep({then, ahead, learned, known.stock.movements, now}, rule))
            records.forecasts.push_back(*std::move(forecast));
    }
}

}  // namespace laneward::demo
