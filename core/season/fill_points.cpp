#include "core/season/output_drift.h"

#include <algorithm>

namespace laneward {

namespace {

/// The pattern that a run laid, in its version: the one that it names, else the one in force when it began.
const Pattern* patternOf(const DriftHistory& history, const RunLog& run) {
    const PatternVersion* inForce = nullptr;
    const PatternVersion* oldest = nullptr;
    for (const PatternVersion& version : history.versions) {
        if (version.pattern.id != *run.pattern) continue;
        if (version.pattern.edition == run.patternVersion) return &version.pattern;
        if (version.since <= run.time.begin && (!inForce || version.since >= inForce->since)) inForce = &version;
        if (!oldest || version.pattern.edition < oldest->pattern.edition) oldest = &version;
    }
    if (run.patternVersion != 0) return nullptr;
    if (inForce) return &inForce->pattern;
    return oldest ? &oldest->pattern : findPattern(history.patterns, *run.pattern);
}

int lanesOf(const RunLog& run) { return run.use.laneRuns > 0 ? run.use.laneRuns : int(run.lanes.size()); }

/// What a run takes of a product by the recipe; nothing when the recipe is not known.
std::optional<Microlitres> nominalOf(const DriftHistory& history, const Machine& machine, const RunLog& run, int product) {
    if (product == cleanerProduct || !conditions(run.treatment))
        return nominalUse(machine, product, run.treatment, nullptr, lanesOf(run));
    const Pattern* pattern = run.pattern ? patternOf(history, run) : nullptr;
    if (!pattern) return std::nullopt;
    return nominalUse(machine, product, run.treatment, pattern, lanesOf(run));
}

Microlitres pouredOf(const LevelReading& reading, int product) {
    if (!reading.poured) return {};
    return product == cleanerProduct ? reading.poured->cleaner : reading.poured->conditioner[size_t(product)];
}

template <class T, class Keep, class Time>
std::vector<T> inOrder(std::vector<T> all, Keep keep, Time time) {
    std::erase_if(all, [&](const T& record) { return !keep(record); });
    std::sort(all.begin(), all.end(),
              [&](const T& a, const T& b) { return std::pair(time(a), a.id) < std::pair(time(b), b.id); });
    return all;
}

/// What has gathered since the last full line.
struct Gathering {
    FillPoint point;
    bool isKnown = true;
};

}  // namespace

Microlitres nominalUse(const Machine& machine, int product, Treatment treatment, const Pattern* pattern, std::int64_t laneRuns) {
    if (product == cleanerProduct)
        return treatment == Treatment::ConditionOnly ? Microlitres{0} : machine.capacity.cleanerPerLane * laneRuns;
    return conditions(treatment) && pattern ? volumes(*pattern).bySlot[size_t(product)] * laneRuns : Microlitres{0};
}

Microlitres tankOf(const Machine& machine, int product) {
    return product == cleanerProduct ? machine.capacity.cleaner : machine.capacity.conditioner[size_t(product)];
}

QString productName(const Machine& machine, int product) {
    return product == cleanerProduct ? machine.cleaner : machine.conditioners[size_t(product)];
}

FillPoints fillPoints(const DriftHistory& history, const Machine& machine, int product) {
    const std::vector<RunLog> runs = inOrder(
        standing(history.runs), [&](const RunLog& r) { return r.machine == machine.id; },
        [](const RunLog& r) { return r.time.end; });
    const std::vector<LevelReading> fills = inOrder(
        standing(history.readings),
        [&](const LevelReading& r) { return r.levels.machine == machine.id && pouredOf(r, product) > Microlitres{0}; },
        [](const LevelReading& r) { return r.levels.at; });
    FillPoints found;
    Gathering since;
    bool fromLine = false;
    bool follows = false;
    auto run = runs.begin();
    for (const LevelReading& fill : fills) {
        for (; run != runs.end() && run->time.end <= fill.levels.at; ++run) {
            const std::optional<Microlitres> nominal = nominalOf(history, machine, *run, product);
            since.isKnown = since.isKnown && nominal;
            since.point.nominal += nominal.value_or(Microlitres{0});
            since.point.runs.push_back(run->id);
            if (nominal.value_or(Microlitres{1}) > Microlitres{0}) since.point.lanes += lanesOf(*run);
        }
        since.point.poured += pouredOf(fill, product);
        if (!fill.poured->toLine) continue;
        const bool isLong = since.point.nominal * leastTankShare >= tankOf(machine, product);
        if (fromLine && since.isKnown && !isLong) continue;
        const bool judged = fromLine && since.isKnown && since.point.nominal > Microlitres{0};
        if (judged) {
            since.point.fill = fill.id;
            since.point.at = fill.levels.at;
            since.point.ratio = double(since.point.poured.value) / double(since.point.nominal.value);
            since.point.follows = follows;
            found.points.push_back(since.point);
        }
        found.leftOut += fromLine && !since.isKnown;
        follows = judged;
        since = {};
        fromLine = true;
    }
    return found;
}

}  // namespace laneward
