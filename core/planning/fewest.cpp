#include "core/planning/fewest.h"
#include "core/planning/ground.h"

#include <algorithm>

namespace laneward {

using namespace planning;

namespace {

/// The lane alone: as late as the gap lasts, if it is long enough for the fastest machine that may do it.
LatestEnd aloneOn(const State& state, const DemandSet& demands, int lane, const std::vector<FixedTreatment>& committed) {
    return [&state, &demands, &committed, lane](size_t g, const Recipe& recipe) -> std::optional<Instant> {
        Span free = demands.gaps[size_t(lane - 1)][g].time;
        for (const FixedTreatment& f : committed) {
            if (f.time.end <= free.end) free.begin = std::max(free.begin, f.time.end);
        }
        const Pattern* pattern = recipe.pattern ? findPattern(state.patterns, *recipe.pattern) : nullptr;
        if (recipe.pattern && !pattern) return std::nullopt;
        const bool fits = std::any_of(state.centre.machines.begin(), state.centre.machines.end(), [&](const Machine& m) {
            return mayDo(m, lane, recipe) && laneTime(m, recipe.treatment, pattern) <= free.length();
        });
        return fits ? std::optional(free.end) : std::nullopt;
    };
}

std::vector<FixedTreatment> committedAfter(const std::vector<FixedTreatment>& fixed, Instant begin) {
    std::vector<FixedTreatment> later;
    std::copy_if(fixed.begin(), fixed.end(), std::back_inserter(later), [&](const auto& f) { return f.time.end > begin; });
    return later;
}

}  // namespace

Fewest fewestTreatments(const State& state, const DemandSet& demands, int lane, const LaneCondition& before) {
    const std::vector<Gap>& gaps = demands.gaps[size_t(lane - 1)];
    if (gaps.empty()) return {};
    const std::vector<FixedTreatment> committed =
        committedAfter(fixedTreatments(state)[size_t(lane - 1)], gaps.front().time.begin);
    return fewestOf(
        {demands, lane, 0, before, committed, usualPattern(state, demands), aloneOn(state, demands, lane, committed)});
}

Fewest fewestTreatments(const State& state, const DemandSet& demands, const Occupancy& occupancy, Instant now) {
    Fewest all;
    const std::vector<LanePlays> plays = playsOf(state, occupancy);
    const auto fixed = fixedTreatments(state);
    const auto last = lastByLane(state);
    for (size_t lane = 0; lane < demands.gaps.size(); ++lane) {
        if (demands.gaps[lane].empty()) continue;
        const Instant begin = std::max(now, demands.gaps[lane].front().time.begin);
        const LaneCondition before = conditionBefore(last[lane], fixed[lane], plays[lane], begin);
        Fewest one = fewestTreatments(state, demands, int(lane + 1), before);
        all.unmet += one.unmet;
        all.treatments += one.treatments;
        std::move(one.chosen.begin(), one.chosen.end(), std::back_inserter(all.chosen));
        std::move(one.unmetDemands.begin(), one.unmetDemands.end(), std::back_inserter(all.unmetDemands));
    }
    std::sort(all.unmetDemands.begin(), all.unmetDemands.end());
    return all;
}

}  // namespace laneward
