#include "core/season/service_difference.h"

#include <algorithm>

namespace laneward {

std::vector<DutyShift> serviceDifference(const ServiceOutlook& before, const ServiceOutlook& after) {
    std::vector<DutyShift> shifts;
    for (const DutyDue& then : after.due) {
        const auto now =
            std::find_if(before.due.begin(), before.due.end(), [&](const DutyDue& d) { return d.duty == then.duty; });
        if (now != before.due.end() && now->due.likely != then.due.likely)
            shifts.push_back({then.item, then.duty, now->due.likely, then.due.likely});
    }
    const QDate never = after.today.addDays(1'000'000);
    const auto day = [never](const DutyShift& s) { return std::min(s.before.value_or(never), s.after.value_or(never)); };
    std::stable_sort(shifts.begin(), shifts.end(), [&](const DutyShift& a, const DutyShift& b) { return day(a) < day(b); });
    return shifts;
}

}  // namespace laneward
