#include "core/planning/recursion.h"

#include <algorithm>

namespace laneward::planning {

LaneCondition conditionAfter(const LaneCondition& before, const Recipe& recipe, Instant end) {
    LaneCondition after;
    after.treated = true;
    after.last = recipe.treatment;
    after.end = end;
    if (conditions(recipe.treatment)) after.pattern = recipe.pattern;
    if (recipe.treatment == Treatment::ConditionOnly && before.treated) after.pattern = before.pattern;
    return after;
}

LaneCondition conditionBefore(const LaneTreatment* last, const std::vector<FixedTreatment>& fixed, const LanePlays& plays,
                              Instant begin) {
    LaneCondition condition;
    if (last) condition = {true, last->treatment, last->pattern, last->end, {}};
    for (const FixedTreatment& f : fixed) {
        if (f.time.end > begin || (condition.treated && f.time.end <= condition.end)) continue;
        condition = conditionAfter(condition, {f.treatment, f.pattern}, f.time.end);
    }
    if (condition.treated) condition.playedSince = playedIn(plays, {condition.end, begin});
    return condition;
}

PatternId usualPattern(const State& state, const DemandSet& demands) {
    const std::vector<Pattern>& patterns = state.patterns;
    std::vector<int> asked(patterns.size(), 0);
    const PatternId* last = nullptr;  // mostly asked for again by the next demand
    const Pattern* pattern = nullptr;
    for (const Demand& d : demands.demands) {
        if (!d.pattern) continue;
        if (!last || *last != *d.pattern) pattern = findPattern(patterns, *d.pattern);
        last = &*d.pattern;
        if (pattern) ++asked[size_t(pattern - patterns.data())];
    }
    PatternId usual;
    int most = 0;
    for (size_t p = 0; p < patterns.size(); ++p) {
        if (asked[p] > most || (asked[p] == most && most > 0 && patterns[p].id < usual)) usual = patterns[p].id;
        most = std::max(most, asked[p]);
    }
    if (!usual.isEmpty()) return usual;
    for (const Pattern& p : state.patterns) {
        if (!p.retired && (usual.isEmpty() || p.id < usual)) usual = p.id;
    }
    return usual;
}

std::vector<const LaneTreatment*> lastByLane(const State& state) {
    std::vector<const LaneTreatment*> last(size_t(state.centre.facts.lanes), nullptr);
    for (const LaneTreatment& treatment : state.history) {
        if (treatment.lane < 1 || treatment.lane > state.centre.facts.lanes) continue;
        const LaneTreatment*& slot = last[size_t(treatment.lane - 1)];
        if (!slot || slot->end < treatment.end) slot = &treatment;
    }
    return last;
}

}  // namespace laneward::planning
