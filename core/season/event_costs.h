// What an event costs in lane care: product and working minutes, by the plan's own jobs, in all and for each of its lanes.
//
// A job's time and product are shared evenly over the lanes that it treats, and a lane's share evenly over the events that need
// it there. Machine time between the lanes and the bay is shared over the lanes of the outing's jobs. Whole units are shared so
// that the shares of all events and of nobody add up to the jobs exactly.
//
//     for (const EventCost& cost : eventCosts(plan, prices).events) …
#pragma once

#include "core/season/season.h"
#include "core/supplies/supply.h"

#include <QStringList>

namespace laneward {

/// Price of an amount: `minor` minor units for `amount` base units.
struct UnitPrice {
    Money price;
    Amount per;
};

/// What one pack of each supply costs, by the cheapest offer for one pack; without an offer there is no price.
std::optional<UnitPrice> unitPriceOf(const std::vector<Offer>& offers, const SupplyId& supply);
/// Rounded to whole minor units, halves up.
Money costOf(Amount amount, const UnitPrice& price);

/// Work and product, without money.
struct LaneCare {
    Seconds time;
    JobUse use;
    void add(const LaneCare& more);
    friend bool operator==(const LaneCare&, const LaneCare&) = default;
};

struct EventCost {
    SeriesId series;
    LocalTime original;
    QString title;
    Instant playBegins;
    LaneSet lanes;
    LaneCare care;
    std::vector<std::pair<MachineId, JobUse>> byMachine;  ///< whose products were used
    Money product;                                        ///< of products that have a price
    QStringList withoutPrice;                             ///< products that were left out for want of one, each once
};

struct EventCosts {
    std::vector<EventCost> events;  ///< by start of play, then title
    LaneCare nobody;                ///< of jobs that no event needs
};

/// Jobs that were dropped do not count.
EventCosts eventCosts(const SeasonState& season, const Plan& plan);

}  // namespace laneward
