#include "core/season/what_if.h"

#include "core/season/job_difference.h"
#include "core/season/touched.h"

#include <algorithm>
#include <set>

namespace laneward {

using namespace planning;

namespace {

// Nodes for a whole range: the first answer is little more than one placement for a day that is new.
constexpr std::int64_t firstNodes = 2'000;
// Up to here each stretch's occurrences are worked out alone, beyond it those of the whole range at once.
constexpr std::ptrdiff_t fewStretches = 8;

bool isSame(const Shortfall& a, const Shortfall& b) {
    return a.series == b.series && a.original == b.original && a.unmet == b.unmet && a.lanes == b.lanes;
}

std::vector<QDate> daysOf(const PlanDifference& difference) {
    std::set<QDate> days;
    for (const Job& job : difference.added)
        days.insert(job.date);
    for (const Job& job : difference.removed)
        days.insert(job.date);
    for (const auto& [from, to] : difference.moved)
        days.insert({from.date, to.date});
    return {days.begin(), days.end()};
}

Objective sumOf(const std::vector<StretchPlanPtr>& plans, Objective DayPlan::*what) {
    Objective sum;
    for (const StretchPlanPtr& plan : plans) {
        for (const DayPlan& day : plan->days)
            sum = sum + day.*what;
    }
    return sum;
}

/// Both sides of the stretches that are other than before.
struct Side {
    std::vector<const Job*> jobs;
    std::vector<const Shortfall*> unmet;
    std::vector<const DayPlan*> days;
};

void add(const StretchPlan& part, Side& side) {
    for (const Job& job : part.jobs)
        side.jobs.push_back(&job);
    for (const Shortfall& shortfall : part.unmet)
        side.unmet.push_back(&shortfall);
    for (const DayPlan& day : part.days)
        side.days.push_back(&day);
}

WhatIfAnswer answerFrom(const std::vector<StretchPlanPtr>& before, const std::vector<StretchPlanPtr>& after) {
    Side olds;
    Side news;
    for (size_t i = 0; i < after.size(); ++i) {
        if (before[i] == after[i]) continue;
        add(*before[i], olds);
        add(*after[i], news);
    }
    WhatIfAnswer answer;
    answer.difference = differenceOfJobs(std::move(olds.jobs), std::move(news.jobs));
    answer.difference.before = sumOf(before, &DayPlan::objective);
    answer.difference.after = sumOf(after, &DayPlan::objective);
    answer.bound = sumOf(after, &DayPlan::bound);
    answer.days = daysOf(answer.difference);
    answer.proven = std::all_of(news.days.begin(), news.days.end(), [&](const DayPlan* day) {
        return day->proven || !std::binary_search(answer.days.begin(), answer.days.end(), day->date);
    });
    for (const Shortfall* now : news.unmet) {
        if (std::none_of(olds.unmet.begin(), olds.unmet.end(), [&](const Shortfall* old) { return isSame(*old, *now); }))
            answer.shortfalls.push_back(*now);
    }
    return answer;
}

}  // namespace

struct WhatIf::Memo {
    State state;
    Instant now;
    DateRange range;
    std::int64_t nodeLimit = 0;
    PlanMemo standing;  ///< of the state as it is: never added to by questions, so that none changes another's answer
    PlanMemo asked;
    PlannedRange planned;
    Plan before;
};

WhatIf::WhatIf(State state, Instant now, const DateRange& range, std::int64_t nodeLimit) : m_memo(std::make_unique<Memo>()) {
    m_memo->state = std::move(state);
    m_memo->now = now;
    m_memo->range = range;
    m_memo->nodeLimit = nodeLimit;
    const PlanTask task{m_memo->state, now, range, nodeLimit};
    m_memo->planned = plannedRange(task, m_memo->standing.data());
    m_memo->before = wholePlan(task, m_memo->planned, m_memo->standing);
}

WhatIf::~WhatIf() = default;
WhatIf::WhatIf(WhatIf&&) noexcept = default;
WhatIf& WhatIf::operator=(WhatIf&&) noexcept = default;

const State& WhatIf::state() const { return m_memo->state; }

const Plan& WhatIf::before() const { return m_memo->before; }

WhatIfAnswer WhatIf::ask(const State& changed, Effort effort, const Cancelled& cancelled) {
    const Memo& memo = *m_memo;
    const std::int64_t first = firstNodes * nodesFor / std::max(nodesFor, memo.range.days());
    const std::int64_t nodes = effort == Effort::First ? std::min(first, memo.nodeLimit) : memo.nodeLimit;
    const PlanTask task{changed, memo.now, memo.range, nodes, cancelled};
    StretchPlanner planner(task, memo.asked.data(), {&memo.standing.data(), nodesPerDay(memo.nodeLimit, memo.range)});
    const std::vector<Stretch>& stretches = memo.planned.stretches;
    const std::vector<bool> touched = touchedStretches({memo.state, changed}, memo.range, stretches);
    Occupancy all;
    const bool many = std::count(touched.begin(), touched.end(), true) > fewStretches;
    if (many) all = occupancyOf(changed.series, changed.centre, {planner.seen(stretches.front()).first, memo.range.last});
    const OccupancyParts allParts(all);
    const OccupancyParts beforeParts(memo.planned.occupancy);
    std::vector<StretchPlanPtr> plans;
    Carried carried = carriedInto(changed, memo.range);
    for (size_t i = 0; i < stretches.size() && !(cancelled && cancelled()); ++i) {
        if (!touched[i] && carried == memo.planned.before[i]) {
            plans.push_back(memo.planned.plans[i]);
        } else {
            Occupancy occupancy = !touched[i] ? beforeParts.within(planner.spanSeen(stretches[i]))
                                  : many      ? allParts.within(planner.spanSeen(stretches[i]))
                                              : occupancyOf(changed.series, changed.centre, planner.seen(stretches[i]));
            plans.push_back(planner.plan(stretches[i], carried, std::move(occupancy)));
        }
        carried = plans.back()->after;
    }
    const auto rest = memo.planned.plans.begin() + std::ptrdiff_t(plans.size());
    plans.insert(plans.end(), rest, memo.planned.plans.end());
    WhatIfAnswer answer = answerFrom(memo.planned.plans, plans);
    answer.cancelled = cancelled && cancelled();
    return answer;
}

}  // namespace laneward
