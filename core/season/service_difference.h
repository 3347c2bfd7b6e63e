// What a change of the plan does to service: duties that fall due on another day.
#pragma once

#include "core/season/service_outlook.h"

namespace laneward {

struct DutyShift {
    ItemId item;
    DutyId duty;
    std::optional<QDate> before;  ///< likely day; none = not within what is planned
    std::optional<QDate> after;
    friend bool operator==(const DutyShift&, const DutyShift&) = default;
};

/// By the earlier of both days. Duties of only one of the outlooks are left out.
std::vector<DutyShift> serviceDifference(const ServiceOutlook& before, const ServiceOutlook& after);

}  // namespace laneward
