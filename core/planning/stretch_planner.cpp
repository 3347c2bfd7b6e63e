#include "core/planning/stretch_planner.h"

#include "core/calendar/conflicts.h"

#include <algorithm>

namespace laneward {

using namespace planning;

namespace {

constexpr int longestLookBack = 31;
constexpr std::int64_t fewestNodes = 8;
// A stretch takes some hundred kilobytes.
constexpr size_t mostStretches = 256;
constexpr size_t mostContexts = 16;

PlanMemo::Data::Context contextOf(const State& state) {
    PlanMemo::Data::Context context{state.centre, state.patterns, state.limits};
    context.centre.outages.clear();
    for (Shift& shift : context.centre.shifts) {
        shift.daysOff.clear();
        shift.extraDays.clear();
    }
    return context;
}

std::optional<size_t> placeOf(const PlanMemo::Data::Context& context, const PlanMemo::Data& memo) {
    const auto found = std::find(memo.contexts.begin(), memo.contexts.end(), context);
    if (found == memo.contexts.end()) return std::nullopt;
    return size_t(found - memo.contexts.begin());
}

size_t placedIn(PlanMemo::Data::Context context, PlanMemo::Data& memo) {
    if (const auto place = placeOf(context, memo)) return *place;
    if (memo.contexts.size() >= mostContexts) {
        memo.contexts.clear();
        memo.stretches.clear();
    }
    memo.contexts.push_back(std::move(context));
    return memo.contexts.size() - 1;
}

std::string nameOf(size_t context, std::int64_t nodes) { return std::to_string(context) + '/' + std::to_string(nodes) + '/'; }

}  // namespace

int planning::lookBack(const std::vector<Series>& series) {
    Seconds longest = hours(24);
    for (const Series& one : series) {
        for (const SurfaceDemand& demand : one.demands)
            longest = std::max(longest, demand.longestAge);
    }
    return int(std::min<std::int64_t>(longestLookBack, longest.value / hours(24).value + 1));
}

std::int64_t planning::nodesPerDay(std::int64_t nodeLimit, const DateRange& range) {
    return std::max(fewestNodes, nodeLimit / std::clamp(range.days(), 1, nodesFor));
}

OccupancyParts::OccupancyParts(const Occupancy& all) : m_all(all) {
    for (const Occurrence& o : all.occurrences)
        m_longest = std::max(m_longest, o.play().length());
}

Occupancy OccupancyParts::within(const Span& span) const {
    Occupancy part;
    const auto& all = m_all.occurrences;
    auto o = std::lower_bound(all.begin(), all.end(), span.begin - m_longest,
                              [](const Occurrence& one, Instant t) { return one.booked.begin < t; });
    for (; o != all.end() && o->booked.begin < span.end; ++o) {
        if (o->play().overlaps(span)) part.occurrences.push_back(*o);
    }
    addConflicts(part);
    return part;
}

StretchPlanner::StretchPlanner(const PlanTask& task, PlanMemo::Data& memo, const Standing& standing)
    : m_task(task),
      m_memo(memo),
      m_standing(standing),
      m_nodesPerDay(planning::nodesPerDay(task.nodeLimit, task.range)),
      m_solver(m_nodesPerDay, memo.days, task.cancelled) {
    PlanMemo::Data::Context context = contextOf(task.state);
    if (standing.memo) {
        m_solver.letStand(standing.memo->days, standing.nodesPerDay);
        if (const auto place = placeOf(context, *standing.memo)) m_standingName = nameOf(*place, standing.nodesPerDay);
    }
    m_name = nameOf(placedIn(std::move(context), memo), m_nodesPerDay);
}

DateRange StretchPlanner::seen(const Stretch& stretch) const {
    return {stretch.days.first.addDays(-lookBack(m_task.state.series)), stretch.sight};
}

Span StretchPlanner::spanSeen(const Stretch& stretch) const {
    const DateRange days = seen(stretch);
    return {dayOf(m_task.state.centre, days.first).begin, dayOf(m_task.state.centre, days.last).end};
}

StretchPlanPtr StretchPlanner::known(const std::string& key, const Stretch& stretch) const {
    const auto in = [&](const PlanMemo::Data& memo, const std::string& name) -> StretchPlanPtr {
        const auto found = memo.stretches.find(name + key);
        return found == memo.stretches.end() ? nullptr : found->second;
    };
    StretchPlanPtr plan;
    if (!m_standingName.empty()) plan = in(*m_standing.memo, m_standingName);
    if (!plan) plan = in(m_memo, m_name);
    if (!plan || plan->range == stretch.days) return plan;
    const Instant begins = dayOf(m_task.state.centre, stretch.days.first).begin;
    return std::make_shared<const StretchPlan>(shiftedTo(*plan, stretch.days.first, begins));
}

StretchPlanPtr StretchPlanner::plan(const Stretch& stretch, const Carried& before, Occupancy occupancy) {
    const StretchTask task{m_task.state, stretch, before, std::move(occupancy), m_task.now};
    const std::string key = m_memo.keeps == PlanMemo::Keeps::Everything ? keyOf(task) : std::string();
    if (!key.empty()) {
        if (StretchPlanPtr plan = known(key, stretch)) return plan;
    }
    auto plan = std::make_shared<const StretchPlan>(planStretch(task, m_solver));
    if (!key.empty() && !plan->stopped && !m_solver.isCancelled()) {
        if (m_memo.stretches.size() >= mostStretches) m_memo.stretches.clear();
        m_memo.stretches.insert_or_assign(m_name + key, plan);
    }
    return plan;
}

PlannedRange planning::plannedRange(const PlanTask& task, PlanMemo::Data& memo, const Standing& standing) {
    PlannedRange planned;
    planned.stretches = stretchesOf(task.range);
    if (planned.stretches.empty()) return planned;
    StretchPlanner planner(task, memo, standing);
    planned.occupancy =
        occupancyOf(task.state.series, task.state.centre, {planner.seen(planned.stretches.front()).first, task.range.last});
    const OccupancyParts parts(planned.occupancy);
    Carried carried = carriedInto(task.state, task.range);
    for (const Stretch& stretch : planned.stretches) {
        planned.before.push_back(carried);
        planned.plans.push_back(planner.plan(stretch, carried, parts.within(planner.spanSeen(stretch))));
        carried = planned.plans.back()->after;
    }
    return planned;
}

PlanMemo::PlanMemo(Keeps keeps) : m_data(std::make_unique<Data>()) {
    m_data->keeps = keeps;
    m_data->days = KnownDays(keeps == Keeps::Everything);
}

PlanMemo::~PlanMemo() = default;
PlanMemo::PlanMemo(PlanMemo&&) noexcept = default;
PlanMemo& PlanMemo::operator=(PlanMemo&&) noexcept = default;

}  // namespace laneward
