// What falls due and when it is best done: duties with their due days as ranges, parts that are missing, and visits to machines.
//
// A visit does the duties of one machine that are due together. It lies as late as it can before the machine's first outing on
// the day on which its first duty is due (early on a day without one), where the machine is in its bay, somebody is free and it
// fits into a shift. A duty that is due soon joins it when the share of its interval that is lost costs less work than opening
// the machine once more.
//
//     const ServiceOutlook outlook = serviceOutlook({season, ahead, now}, {});
//     for (const DutyDue& duty : outlook.due) …
#pragma once

#include "core/season/work_ahead.h"

namespace laneward {

struct DutyDue {
    ItemId item;
    DutyId duty;
    MachineId machine;
    DueRange due;
    std::vector<PartNeed> missing;  ///< on top of what is on hand and not kept for what is due before
};

struct ServiceVisit {
    MachineId machine;  ///< empty = what belongs to no machine
    Span time;
    std::vector<DutyId> duties;  ///< the first is the one that it is for; others joined it
    bool isLate = false;         ///< there was no room before the day on which the first is due
};

struct ServiceOutlook {
    QDate today;
    std::vector<DutyDue> due;          ///< of items that are not retired; by likely day, then early day, item and duty
    std::vector<ServiceVisit> visits;  ///< by time, for what is due within the horizon of visits
    std::vector<Finding> findings;     ///< "service.no-window" (item, duty; nobody is there or the machine is always out)
};

struct ServiceRule {
    int visitDays = 28;           ///< how far ahead visits are placed
    int openingMinutes = 15;      ///< of opening a machine and closing it again; common practice, no source
    double mostLostOfPart = 0.1;  ///< of its interval, that a part may lose for another visit's sake; likewise
};

struct ServiceQuestion {
    const SeasonState& season;
    const Plan& ahead;  ///< begins today or before
    Instant now;
};

ServiceOutlook serviceOutlook(const ServiceQuestion& question, const ServiceRule& rule);

/// What duties take from stock, day by day from today on: each takes its parts on its likely day, before that day's work, and
/// again whenever its interval is over, by the plan.
std::map<SupplyId, std::vector<Amount>> partsAhead(const ServiceQuestion& question, int days);

/// A duty that counts lanes, and how many the machine may still treat before it is due; 0 = it is due now.
struct LaneDuty {
    ItemId item;
    DutyId duty;
    int left = 0;
};
/// Of the items of a machine that are not retired; those that are due first come first.
std::vector<LaneDuty> laneDuties(const SeasonState& season, const MachineId& machine, Instant now);
/// Lanes that a machine may treat before the first of them is due; none when there is none. 0 = one is due now.
std::optional<int> lanesUntilDuty(const SeasonState& season, const MachineId& machine, Instant now);

}  // namespace laneward
