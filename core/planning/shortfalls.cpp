#include "core/planning/shortfalls.h"

#include "core/planning/day_problem.h"

#include <algorithm>
#include <map>

namespace laneward::planning {

namespace {

class Inquiry {
public:
    Inquiry(const Ground& ground, const DemandSet& demands) : m_ground(ground), m_demands(demands) {
        for (const auto& lane : demands.gaps) {
            for (const Gap& gap : lane) {
                if (gap.demand) m_gapOf[*gap.demand] = &gap;
            }
        }
    }

    void add(Shortfall& shortfall, size_t d, const DemandOutcome& outcome) const {
        const Demand& demand = m_demands.demands[d];
        shortfall.lanes.insert(demand.lane);
        if (outcome.met == Met::Late) {
            shortfall.missing = std::max(shortfall.missing, outcome.late);
            addReason(shortfall, {Severity::Warning, "short.no-time", shortfall.title, {shortfall.missing, clearOf(d)}});
            return;
        }
        const auto [reason, missing] = whyUnmet(shortfall, d);
        shortfall.missing = std::max(shortfall.missing, missing);
        addReason(shortfall, reason);
    }

private:
    Instant clearOf(size_t d) const { return m_gapOf.at(d)->time.begin; }

    /// The recipe that would meet the demand on its own.
    Recipe recipeFor(const Demand& demand) const {
        if (demand.kind == DemandKind::Stripped || (demand.least == Treatment::CleanOnly && !demand.pattern)) {
            return {Treatment::CleanOnly, std::nullopt};
        }
        const PatternId usual = demand.pattern ? *demand.pattern : usualPattern(m_ground.state, m_demands);
        return {Treatment::CleanAndCondition, usual.isEmpty() ? std::nullopt : std::optional(usual)};
    }

    static void addReason(Shortfall& shortfall, const Finding& reason) {
        const auto same = std::find_if(shortfall.reasons.begin(), shortfall.reasons.end(),
                                       [&](const Finding& f) { return f.rule == reason.rule && f.subject == reason.subject; });
        if (same == shortfall.reasons.end()) {
            shortfall.reasons.push_back(reason);
        } else {
            *same = reason;
        }
    }

    std::pair<Finding, Seconds> whyUnmet(const Shortfall& shortfall, size_t d) const {
        const Demand& demand = m_demands.demands[d];
        const QString& title = shortfall.title;
        const QString lanes = shortfall.lanes.text();
        const Recipe recipe = recipeFor(demand);
        const Pattern* pattern = recipe.pattern ? findPattern(m_ground.state.patterns, *recipe.pattern) : nullptr;
        if (recipe.pattern && !pattern) return {{Severity::Warning, "short.pattern-unknown", title, {recipe.pattern->value}}, {}};
        if (m_ground.machines.empty()) return {{Severity::Warning, "short.no-machine", title, {}}, {}};
        std::optional<size_t> able;
        for (size_t m = m_ground.machines.size(); m-- > 0;) {
            if (mayDo(*m_ground.machines[m], demand.lane, recipe)) able = m;
        }
        if (!able) {
            const bool wrongPattern = demand.least == Treatment::ConditionOnly &&
                                      std::any_of(m_ground.machines.begin(), m_ground.machines.end(), [&](const Machine* m) {
                                          return mayDo(*m, demand.lane, {Treatment::ConditionOnly, recipe.pattern});
                                      });
            if (wrongPattern) return {{Severity::Warning, "short.condition-only", title, {lanes}}, {}};
            return {{Severity::Warning, "short.barred", pattern ? pattern->name : QString(), {lanes}}, {}};
        }
        if (!canHold(recipe, pattern, demand.lane)) {
            return {{Severity::Warning, "short.too-big", m_ground.machines[*able]->name, {lanes}}, {}};
        }
        return whyNoPlace(shortfall, d, *able, laneTime(*m_ground.machines[*able], recipe.treatment, pattern));
    }

    /// Whether full tanks, an empty waste tank and a full pack of some machine are enough for one lane.
    bool canHold(const Recipe& recipe, const Pattern* pattern, int lane) const {
        for (size_t m = 0; m < m_ground.machines.size(); ++m) {
            const Machine& machine = *m_ground.machines[m];
            const Stock full = fullStock(machine, m_ground.limits[m]);
            const Stock use = useOf(laneUse(machine, m_ground.limits[m], recipe.treatment, pattern));
            bool enough = mayDo(machine, lane, recipe);
            for (size_t s = 0; s < stockCount; ++s)
                enough = enough && use[s] <= full[s];
            if (enough) return true;
        }
        return false;
    }

    std::pair<Finding, Seconds> whyNoPlace(const Shortfall& shortfall, size_t d, size_t machine, Seconds work) const {
        const Gap& gap = *m_gapOf.at(d);
        const QString& title = shortfall.title;
        const Span open = openPart(m_ground, gap);
        const Spans free = common({open}, m_ground.lanesFree[size_t(gap.lane - 1)]);
        const Seconds room = longest(free);
        if (room < work) {
            if (outOfService(gap.lane, open)) {
                return {{Severity::Warning, "short.out-of-service", title, {shortfall.lanes.text()}}, work - room};
            }
            return {{Severity::Warning, "short.no-time", title, {work - room, gap.time.begin}}, work - room};
        }
        if (longest(common(free, m_ground.machinesUp[machine])) < work) {
            return {{Severity::Warning, "short.out-of-service", title, {shortfall.lanes.text()}}, work};
        }
        if (longest(common(free, m_ground.byAllowance[machine])) < work) {
            return {{Severity::Warning, "short.no-staff", title, {nearestShift(gap.time.end)}}, work};
        }
        const Seconds all = (work + m_ground.machines[machine]->times.nextLane) * shortfall.lanes.count();
        return {{Severity::Warning, "short.machine-busy", m_ground.machines[machine]->name, {all}}, all};
    }

    static Seconds longest(const Spans& spans) {
        Seconds length;
        for (const Span& s : spans)
            length = std::max(length, s.length());
        return length;
    }

    bool outOfService(int lane, const Span& during) const {
        return std::any_of(m_ground.state.centre.outages.begin(), m_ground.state.centre.outages.end(), [&](const Outage& o) {
            return !o.machine && o.lanes.contains(lane) && o.begin < during.end && (!o.end || during.begin < *o.end);
        });
    }

    /// The end or begin of working time that lies nearest to `t`; `t` itself when nobody works at all.
    Instant nearestShift(Instant t) const {
        Instant nearest = t;
        Seconds distance{INT64_MAX};
        for (const ShiftSpan& shift : m_ground.shifts) {
            for (Instant edge : {shift.work.begin, shift.work.end}) {
                const Seconds away = edge < t ? t - edge : edge - t;
                if (away >= distance) continue;
                nearest = edge;
                distance = away;
            }
        }
        return nearest;
    }

    const Ground& m_ground;
    const DemandSet& m_demands;
    std::map<size_t, const Gap*> m_gapOf;
};

}  // namespace

std::vector<Shortfall> shortfallsOf(const Ground& ground, const DemandSet& demands, const std::vector<DemandOutcome>& outcomes) {
    const bool any = std::any_of(outcomes.begin(), outcomes.end(),
                                 [](const DemandOutcome& o) { return o.met == Met::Unmet || o.met == Met::Late; });
    std::vector<Shortfall> shortfalls;
    if (!any) return shortfalls;
    const Inquiry inquiry(ground, demands);
    std::map<std::tuple<size_t, bool, DemandKind>, size_t> places;
    for (size_t d = 0; d < outcomes.size(); ++d) {
        if (outcomes[d].met != Met::Unmet && outcomes[d].met != Met::Late) continue;
        const Demand& demand = demands.demands[d];
        const bool unmet = outcomes[d].met == Met::Unmet;
        const auto [place, isNew] = places.emplace(std::tuple(demand.occurrence, unmet, demand.kind), shortfalls.size());
        if (isNew) {
            const Occurrence& o = ground.occupancy.occurrences[demand.occurrence];
            shortfalls.push_back({o.series, o.original, o.title, demand.playBegins, {}, demand.kind, unmet, {}, {}, {}});
        }
        inquiry.add(shortfalls[place->second], d, outcomes[d]);
    }
    return shortfalls;
}

}  // namespace laneward::planning
