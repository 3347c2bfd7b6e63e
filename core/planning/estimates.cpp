#include "core/planning/ground.h"

#include <algorithm>

namespace laneward::planning {

namespace {

size_t firstBeginningAfter(const Spans& spans, Instant t) {
    return size_t(std::upper_bound(spans.begin(), spans.end(), t, [](Instant x, const Span& s) { return x < s.begin; }) -
                  spans.begin());
}

/// The latest end, not after `window.end`, of work of length `work` inside both lists and `window`.
std::optional<Instant> latestFit(const Spans& a, const Spans& b, Span window, Seconds work) {
    size_t i = firstBeginningAfter(a, window.end);
    size_t j = firstBeginningAfter(b, window.end);
    while (i > 0 && j > 0) {
        const Span& x = a[i - 1];
        const Span& y = b[j - 1];
        const Span part{std::max({x.begin, y.begin, window.begin}), std::min({x.end, y.end, window.end})};
        if (part.length() >= work) return part.end;
        if (x.end <= window.begin || y.end <= window.begin) break;
        (x.begin > y.begin ? i : j)--;
    }
    return std::nullopt;
}

/// The earliest end of such work.
std::optional<Instant> earliestFit(const Spans& a, const Spans& b, Span window, Seconds work) {
    const Spans both = common(common(a, {window}), b);
    const auto fits = std::find_if(both.begin(), both.end(), [&](const Span& s) { return s.length() >= work; });
    return fits == both.end() ? std::nullopt : std::optional(fits->begin + work);
}

}  // namespace

Hands handsFor(const Ground& ground, int lane, const Recipe& recipe) {
    Hands hands;
    const Pattern* pattern = recipe.pattern ? findPattern(ground.state.patterns, *recipe.pattern) : nullptr;
    if (recipe.pattern && !pattern) return hands;
    for (size_t m = 0; m < ground.machines.size(); ++m) {
        const Machine& machine = *ground.machines[m];
        if (mayDo(machine, lane, recipe)) hands.push_back({m, laneTime(machine, recipe.treatment, pattern)});
    }
    return hands;
}

std::optional<Instant> latestEndWithin(const Ground& ground, int lane, const Hands& hands, Span window,
                                       const std::vector<Spans>& tier) {
    std::optional<Instant> latest;
    for (const Hand& hand : hands) {
        latest = std::max(latest, latestFit(tier[hand.machine], ground.lanesFree[size_t(lane - 1)], window, hand.work));
    }
    return latest;
}

Span openPart(const Ground& ground, const Gap& gap) {
    Span open = gap.time;
    for (const FixedTreatment& f : ground.fixed[size_t(gap.lane - 1)]) {
        if (f.time.end <= gap.time.end) open.begin = std::max(open.begin, f.time.end);
    }
    open.begin = std::max(open.begin, ground.begin());
    return open;
}

Hands handsForRow(const Ground& ground, Hands hands, int lanes) {
    for (Hand& hand : hands)
        hand.work = hand.work * lanes + ground.machines[hand.machine]->times.nextLane * (lanes - 1);
    return hands;
}

const Hands& LaneHands::of(const Recipe& recipe) {
    const auto known = std::find_if(m_known.begin(), m_known.end(), [&](const auto& entry) { return entry.first == recipe; });
    if (known != m_known.end()) return known->second;
    return m_known.emplace_back(recipe, handsFor(m_ground, m_lane, recipe)).second;
}

std::optional<Instant> latestPossibleEnd(const Ground& ground, const Gap& gap, const Hands& hands) {
    return latestEndWithin(ground, gap.lane, hands, openPart(ground, gap), ground.byAllowance);
}

std::optional<Instant> plannedEnd(const Ground& ground, const DemandSet& demands, const Gap& gap, const Hands& hands) {
    const Span open = openPart(ground, gap);
    Instant target = open.end;
    Instant due = open.end;
    if (gap.demand) {
        target = std::min(target, demands.demands[*gap.demand].target);
        due = std::min(due, demands.demands[*gap.demand].due);
    }
    if (auto end = latestEndWithin(ground, gap.lane, hands, {open.begin, target}, ground.byWork)) return end;
    if (auto end = latestEndWithin(ground, gap.lane, hands, {open.begin, due}, ground.byWork)) return end;
    if (auto end = latestEndWithin(ground, gap.lane, hands, {open.begin, due}, ground.byAllowance)) return end;
    std::optional<Instant> soonest;
    for (const Hand& hand : hands) {
        const auto end = earliestFit(ground.byAllowance[hand.machine], ground.lanesFree[size_t(gap.lane - 1)],
                                     {std::max(open.begin, due - hand.work), open.end}, hand.work);
        if (end && (!soonest || *end < *soonest)) soonest = end;
    }
    return soonest;
}

}  // namespace laneward::planning
