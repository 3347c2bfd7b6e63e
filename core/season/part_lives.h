// How long parts lasted, out of the records of their replacing and the meters as they stood then.
//
// A life begins when a part was fitted and ends with the next replacement of the same duty: by failure when that record says
// so, else right censored. The part in use is censored at the meters now; that of a retired item where the item was last seen.
// What was in before the first record began at a time that nobody knows, and says nothing. A record that only says what was
// found replaces nothing.
//
// Meters are those of counted_meters.h. A life that is no longer than nothing is left out.
//
//     const PartLives lives = partLives({season, records, now, MeterKind::Lanes}, alikeDuties(season.items, item, duty));
//     wearOf({item.name, lives.ages(), costs, {}});
#pragma once

#include "core/season/service_state.h"
#include "core/statistics/life_data.h"

namespace laneward {

/// A duty of an item.
struct ItemDuty {
    ItemId item;
    DutyId duty;
    friend bool operator==(const ItemDuty&, const ItemDuty&) = default;
};

struct PartLife {
    ItemDuty of;
    Instant fitted;
    Instant until;
    bool inUse = false;
    Life life;  ///< in the unit of the meter that was asked for: lanes, runs, minutes, microlitres, days
    friend bool operator==(const PartLife&, const PartLife&) = default;
};

struct PartLives {
    std::vector<PartLife> lives;  ///< by duty in the order asked for, then by time
    int leftOut = 0;              ///< no longer than nothing: two replacements at one reading
    std::vector<Life> ages() const;
};

struct PartQuestion {
    const SeasonState& season;                  ///< items, counters and what machines have done
    const std::vector<ServiceRecord>& records;  ///< all that were made, corrections included, in any order
    Instant now;
    MeterKind unit = MeterKind::Lanes;
};

PartLives partLives(const PartQuestion& question, const std::vector<ItemDuty>& duties);

/// The duty itself, then the Replace duties of all other items of that kind, of other machines and retired ones; what is of no
/// kind with a name is alike when it is called the same.
std::vector<ItemDuty> alikeDuties(const std::vector<ServiceItem>& items, const ServiceItem& item, const Duty& duty);

/// An interval for a trigger: two digits that count, in lanes, runs, hours, litres or days; 1 at least of the meter's unit.
std::int64_t roundedInterval(double age, MeterKind meter);
/// The item with that interval for one of its duties: in place of the trigger of the same meter, else besides the others.
ServiceItem withInterval(const ServiceItem& item, const DutyId& duty, const Trigger& trigger);

}  // namespace laneward
