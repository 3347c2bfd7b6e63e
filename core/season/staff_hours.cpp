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

StaffDay dayFrom(const Centre& centre, const DayPlan& plan) {
    StaffDay day{plan.date, {}, {}, 0, {}, {}};
    const std::vector<Span> paid = paidAround(centre, plan.date);
    for (const Outing& outing : plan.outings) {
        const Machine* machine = findMachine(centre, outing.machine);
        if (!machine || !machine->attended) continue;
        Seconds inPaidTime;
        for (const Span& span : paid)
            inPaidTime += overlap(span, outing.time);
        day.bound += outing.time.length();
        day.overtime += outing.time.length() - inPaidTime;
        ++day.outings;
        day.first = day.first ? std::min(*day.first, outing.time.begin) : outing.time.begin;
        day.last = day.last ? std::max(*day.last, outing.time.end) : outing.time.end;
    }
    return day;
}

}  // namespace

std::vector<StaffWeek> staffHours(const Centre& centre, const Plan& plan) {
    std::vector<StaffWeek> weeks;
    for (const DayPlan& dayPlan : plan.days) {
        const int number = dayPlan.date.weekNumber();
        if (weeks.empty() || weeks.back().number != number) weeks.push_back({dayPlan.date, number, {}, {}, {}});
        const StaffDay day = dayFrom(centre, dayPlan);
        weeks.back().bound += day.bound;
        weeks.back().overtime += day.overtime;
        weeks.back().days.push_back(day);
    }
    return weeks;
}

}  // namespace laneward
