#include "core/season/staff_hours.h"

#include <algorithm>

namespace laneward {

namespace {

Seconds overlap(const Span& a, const Span& b) {
    return std::max(Seconds{0}, std::min(a.end, b.end) - std::max(a.begin, b.begin));
}

/// Paid time around a date, without what overlaps.
std::vector<Span> paidAround(const Centre& centre, QDate date) {
    std::vector<Span> spans;
    for (int day = -1; day <= 1; ++day) {
        for (const ShiftSpan& shift : shiftsOn(centre, date.addDays(day))) {
            if (shift.people > 0) spans.push_back(shift.work);
        }
    }
    std::sort(spans.begin(), spans.end());
    std::vector<Span> merged;
    for (const Span& span : spans) {
        if (!merged.empty() && span.begin <= merged.back().end)
            merged.back().end = std::max(merged.back().end, span.end);
        else
            merged.push_back(span);
    }
    return merged;
}

/// One more time that a person was bound.
void bind(StaffDay& day, const Span& time, const std::vector<Span>& paid) {
    Seconds inPaidTime;
    for (const Span& span : paid)
        inPaidTime += overlap(span, time);
    day.bound += time.length();
    day.overtime += time.length() - inPaidTime;
    ++day.outings;
    day.first = day.first ? std::min(*day.first, time.begin) : time.begin;
    day.last = day.last ? std::max(*day.last, time.end) : time.end;
}

bool isAttended(const Centre& centre, const MachineId& id) {
    const Machine* machine = findMachine(centre, id);
    return machine && machine->attended;
}

StaffDay dayFrom(const Centre& centre, const DayPlan& plan) {
    StaffDay day{plan.date, {}, {}, 0, {}, {}};
    const std::vector<Span> paid = paidAround(centre, plan.date);
    for (const Outing& outing : plan.outings) {
        if (isAttended(centre, outing.machine)) bind(day, outing.time, paid);
    }
    return day;
}

StaffDay dayFrom(const Centre& centre, QDate date, const std::vector<RunLog>& runs) {
    StaffDay day{date, {}, {}, 0, {}, {}};
    const std::vector<Span> paid = paidAround(centre, date);
    for (const RunLog& run : runs) {
        if (isAttended(centre, run.machine) && dateOf(centre, run.time.begin) == date) bind(day, run.time, paid);
    }
    return day;
}

/// `dayOfPlan` makes a day.
template <class DayOfPlan>
std::vector<StaffWeek> weeksOf(const Plan& plan, DayOfPlan dayOfPlan) {
    std::vector<StaffWeek> weeks;
    for (const DayPlan& dayPlan : plan.days) {
        const int number = dayPlan.date.weekNumber();
        if (weeks.empty() || weeks.back().number != number) weeks.push_back({dayPlan.date, number, {}, {}, {}});
        const StaffDay day = dayOfPlan(dayPlan);
        weeks.back().bound += day.bound;
        weeks.back().overtime += day.overtime;
        weeks.back().days.push_back(day);
    }
    return weeks;
}

}  // namespace

std::vector<StaffWeek> staffHours(const Centre& centre, const Plan& plan) {
    return weeksOf(plan, [&](const DayPlan& day) { return dayFrom(centre, day); });
}

std::vector<StaffWeek> staffHours(const SeasonState& season, const Plan& plan) {
    const Centre& centre = season.centre;
    const QDate today = dateOf(centre, plan.now);
    const std::vector<RunLog> runs = standing(season.runs);
    return weeksOf(plan, [&](const DayPlan& day) {
        return day.date < today && day.outings.empty() ? dayFrom(centre, day.date, runs) : dayFrom(centre, day);
    });
}

}  // namespace laneward
