#include "core/planning/range_planner.h"

#include <algorithm>

namespace laneward::planning {

namespace {

std::vector<FixedTreatment> committedFrom(const std::vector<FixedTreatment>& fixed, Instant begin) {
    std::vector<FixedTreatment> later;
    std::copy_if(fixed.begin(), fixed.end(), std::back_inserter(later), [&](const auto& f) { return f.time.end > begin; });
    return later;
}

/// The first gap, from `first` on, in which a treatment is young enough for a fresh or recent demand at the end of gap `g`.
size_t firstYoungEnough(const std::vector<Gap>& gaps, size_t first, size_t g, const Demand& demand) {
    const Seconds longestPlay = demand.kind == DemandKind::Recent ? demand.longestPlay : Seconds{0};
    Seconds played;
    for (; g > first; --g) {
        played += gaps[g].playBefore;
        if (played > longestPlay || demand.playBegins - gaps[g - 1].time.end > demand.longestAge) break;
    }
    return g;
}

/// Treatments that no plan can do without that leaves nothing unmet. What the lane does not satisfy as it is needs a treatment
/// that is young enough, and demands whose gaps for it do not overlap need one each.
int forcedTreatments(const LaneProblem& problem) {
    if (!problem.committed.empty()) return 0;
    int forced = 0;
    size_t uncounted = problem.firstGap;  // the first gap behind those that are counted
    LaneCondition asItIs = problem.before;
    const std::vector<Gap>& gaps = problem.set.gaps[size_t(problem.lane - 1)];
    for (size_t g = problem.firstGap; g < gaps.size(); ++g) {
        if (g > problem.firstGap) asItIs.playedSince += gaps[g].playBefore;
        if (!gaps[g].demand) continue;
        const Demand& demand = problem.set.demands[*gaps[g].demand];
        const bool ages = demand.kind == DemandKind::Fresh || demand.kind == DemandKind::Recent;
        if (!ages || satisfies(asItIs, demand) || firstYoungEnough(gaps, problem.firstGap, g, demand) < uncounted) continue;
        ++forced;
        uncounted = g + 1;
    }
    return forced;
}

}  // namespace

/// Plans the lane anew from `firstGap` on; what was planned there before is forgotten.
void RangePlanner::planLane(int lane, size_t firstGap) {
    const std::vector<Gap>& gaps = m_demands.gaps[size_t(lane - 1)];
    Lane& treatments = m_lanes[size_t(lane - 1)];
    std::erase_if(treatments, [&](const OpenTreatment& t) { return t.what.gap >= firstGap; });
    if (firstGap >= gaps.size()) return;
    LaneProblem problem{m_demands,
                        lane,
                        firstGap,
                        conditionAt(lane, firstGap),
                        committedFrom(m_ground.fixed[size_t(lane - 1)], gaps[firstGap].time.begin),
                        m_usual,
                        {}};
    LaneHands hands(m_ground, lane);
    problem.latestEnd = [&](size_t g, const Recipe& recipe) -> std::optional<Instant> {
        if (m_forbidden.contains({lane, g})) return std::nullopt;
        return plannedEnd(m_ground, m_demands, gaps[g], hands.of(recipe));
    };
    Fewest planned = fewestOf(problem);
    if (planned.unmet > 0 || planned.treatments > forcedTreatments(problem)) {
        problem.latestEnd = [&](size_t g, const Recipe& recipe) {
            return latestPossibleEnd(m_ground, gaps[g], hands.of(recipe));
        };
        const Fewest kindest = fewestOf(problem);
        if (planned.unmet != kindest.unmet || planned.treatments != kindest.treatments) m_result.doubtful.insert(lane);
    }
    for (PlannedTreatment& t : planned.chosen)
        treatments.push_back({std::move(t), 0, 1});
}

/// Whether two lanes are asked for the same at the same times and can be worked at the same times: then one plan does for both.
bool RangePlanner::isTwin(int lane, int other) const {
    const size_t a = size_t(lane - 1);
    const size_t b = size_t(other - 1);
    const auto sameDemand = [&](size_t i, size_t j) {
        const Demand& x = m_demands.demands[i];
        const Demand& y = m_demands.demands[j];
        return std::tie(x.kind, x.pattern, x.least, x.longestAge, x.longestPlay, x.playBegins, x.due, x.target) ==
               std::tie(y.kind, y.pattern, y.least, y.longestAge, y.longestPlay, y.playBegins, y.due, y.target);
    };
    const auto sameGap = [&](const Gap& x, const Gap& y) {
        return x.time == y.time && x.playBefore == y.playBefore && x.demand.has_value() == y.demand.has_value() &&
               (!x.demand || sameDemand(*x.demand, *y.demand));
    };
    const LaneCondition& x = m_before[a];
    const LaneCondition& y = m_before[b];
    const bool sameBars = std::all_of(m_ground.machines.begin(), m_ground.machines.end(), [&](const Machine* m) {
        return m->bars.lanes.contains(lane) == m->bars.lanes.contains(other);
    });
    return sameBars && m_ground.fixed[a].empty() && m_ground.fixed[b].empty() &&
           std::tie(x.treated, x.last, x.pattern, x.playedSince) == std::tie(y.treated, y.last, y.pattern, y.playedSince) &&
           m_ground.lanesFree[a] == m_ground.lanesFree[b] &&
           std::equal(m_demands.gaps[a].begin(), m_demands.gaps[a].end(), m_demands.gaps[b].begin(), m_demands.gaps[b].end(),
                      sameGap) &&
           isAsOld(lane, x.end, y.end);
}

/// Whether it makes no difference to any demand of the lane which of two moments its first treatment ended at.
bool RangePlanner::isAsOld(int lane, Instant end, Instant other) const {
    if (end == other) return true;
    const std::vector<Gap>& gaps = m_demands.gaps[size_t(lane - 1)];
    return std::max(end, other) <= gaps.front().time.begin && std::all_of(gaps.begin(), gaps.end(), [&](const Gap& gap) {
               if (!gap.demand) return true;
               const Demand& demand = m_demands.demands[*gap.demand];
               const Instant oldest = demand.playBegins - demand.longestAge;
               return (end < oldest) == (other < oldest);
           });
}

void RangePlanner::planLike(int lane, int other) {
    const std::vector<Gap>& gaps = m_demands.gaps[size_t(lane - 1)];
    const std::vector<Gap>& theirs = m_demands.gaps[size_t(other - 1)];
    Lane& treatments = m_lanes[size_t(lane - 1)];
    treatments = m_lanes[size_t(other - 1)];
    for (OpenTreatment& t : treatments) {
        t.what.lane = lane;
        size_t g = t.what.gap;
        for (size_t& served : t.what.serves) {
            while (theirs[g].demand != served)
                ++g;
            served = *gaps[g].demand;
        }
    }
    if (m_result.doubtful.contains(other)) m_result.doubtful.insert(lane);
}

/// The lane's condition when `gap` begins, by what is placed already.
LaneCondition RangePlanner::conditionAt(int lane, size_t gap) const {
    const std::vector<Gap>& gaps = m_demands.gaps[size_t(lane - 1)];
    LaneCondition condition = m_before[size_t(lane - 1)];
    auto fixed = m_ground.fixed[size_t(lane - 1)].begin();
    const auto none = m_ground.fixed[size_t(lane - 1)].end();
    while (fixed != none && fixed->time.end <= gaps.front().time.begin)
        ++fixed;
    auto own = m_lanes[size_t(lane - 1)].begin();
    for (size_t g = 0; g <= gap; ++g) {
        if (g > 0) condition.playedSince += gaps[g].playBefore;
        for (; fixed != none && fixed->time.end <= (g < gap ? gaps[g].time.end : gaps[g].time.begin); ++fixed) {
            condition = conditionAfter(condition, {fixed->treatment, fixed->pattern}, fixed->time.end);
            if (fixed->time.end <= gaps[g].time.begin) condition.playedSince = gaps[g].playBefore;
        }
        for (; g < gap && own != m_lanes[size_t(lane - 1)].end() && own->what.gap <= g; ++own) {
            const auto end = m_ends.find({lane, own->what.gap});
            if (end == m_ends.end()) continue;
            condition = conditionAfter(condition, {own->what.treatment, own->what.pattern}, end->second);
        }
    }
    return condition;
}

std::optional<int> RangePlanner::latestDay(const PlannedTreatment& treatment, const Hands& hands, Instant by,
                                           const std::vector<Spans>& tier) const {
    Span window = openPart(m_ground, m_demands.gaps[size_t(treatment.lane - 1)][treatment.gap]);
    window.end = std::min(window.end, by);
    while (!window.isEmpty()) {
        const auto end = latestEndWithin(m_ground, treatment.lane, hands, window, tier);
        if (!end) return std::nullopt;
        const size_t day = m_ground.dayOf(*end - Seconds{1});
        // Work must not lie across the change of the day.
        const auto same =
            latestEndWithin(m_ground, treatment.lane, hands, {std::max(window.begin, m_ground.days[day]), window.end}, tier);
        if (same) return int(day);
        window.end = m_ground.days[day];
    }
    return std::nullopt;
}

/// In the order of the objective: late before overtime before tight. `together` lanes take longer than one.
int RangePlanner::dayFor(const PlannedTreatment& treatment, int together) const {
    const Gap& gap = m_demands.gaps[size_t(treatment.lane - 1)][treatment.gap];
    Instant target = gap.time.end;
    Instant due = gap.time.end;
    if (gap.demand) {
        target = m_demands.demands[*gap.demand].target;
        due = m_demands.demands[*gap.demand].due;
    }
    const Hands one = handsFor(m_ground, treatment.lane, {treatment.treatment, treatment.pattern});
    const Hands row = handsForRow(m_ground, one, together);
    for (const Hands* hands : {&row, &one}) {
        if (const auto day = latestDay(treatment, *hands, target, m_ground.byWork)) return *day;
        if (const auto day = latestDay(treatment, *hands, due, m_ground.byWork)) return *day;
        if (const auto day = latestDay(treatment, *hands, due, m_ground.byAllowance)) return *day;
    }
    return latestDay(treatment, one, gap.time.end, m_ground.byAllowance).value_or(int(m_ground.dayOf(gap.time.end - Seconds{1})));
}

/// Days for the treatments of `lanes` that are not placed yet.
void RangePlanner::assignDays(const std::vector<int>& lanes, int earliest) {
    std::map<std::pair<Instant, Treatment>, int> together;
    const auto keyOf = [&](const PlannedTreatment& t) {
        return std::pair(m_demands.gaps[size_t(t.lane - 1)][t.gap].time.end, t.treatment);
    };
    for (int lane : lanes) {
        for (const OpenTreatment& t : m_lanes[size_t(lane - 1)])
            together[keyOf(t.what)] += t.alike;
    }
    for (int lane : lanes) {
        for (OpenTreatment& t : m_lanes[size_t(lane - 1)]) {
            if (!m_ends.contains({lane, t.what.gap})) t.day = std::max(earliest, dayFor(t.what, together[keyOf(t.what)]));
        }
    }
}

/// Lanes of one event are mostly the same case: the first of a row of twins is planned, the others follow it.
void RangePlanner::planAllLanes() {
    std::vector<int> leaders;
    std::vector<int> leaderOf(m_lanes.size() + 1, 0);
    std::vector<int> alike(m_lanes.size() + 1, 0);
    for (int lane = 1; lane <= int(m_lanes.size()); ++lane) {
        const bool follows = lane > 1 && isTwin(lane, lane - 1);
        leaderOf[size_t(lane)] = follows ? leaderOf[size_t(lane) - 1] : lane;
        ++alike[size_t(leaderOf[size_t(lane)])];
        if (follows) continue;
        planLane(lane, 0);
        leaders.push_back(lane);
    }
    for (int lane : leaders) {
        for (OpenTreatment& t : m_lanes[size_t(lane - 1)])
            t.alike = alike[size_t(lane)];
    }
    assignDays(leaders, 0);
    for (int lane = 1; lane <= int(m_lanes.size()); ++lane) {
        const int leader = leaderOf[size_t(lane)];
        if (leader != lane) planLike(lane, leader);
    }
    for (Lane& lane : m_lanes) {
        for (OpenTreatment& t : lane)
            t.alike = 1;
    }
}

}  // namespace laneward::planning
