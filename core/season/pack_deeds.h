// What is done to the packs of a machine while it is measured, swapped or charged, as entries of their log.
//
//     for (PackReading& entry : packEntries(season, machine, {PackChange::Swapped}, now)) deed.records.push_back(entry);
#pragma once

#include "core/season/season.h"

namespace laneward {

enum class PackChange {
    None,      ///< only volts
    Swapped,   ///< another pack is on the machine, and the one before on charge
    Charged,   ///< the pack on the machine is off the charger, full
    OnCharge,  ///< the pack on the machine is put on the charger
};

struct PackNews {
    PackChange change = PackChange::None;
    ItemId on;                                  ///< after a swap; empty = the first of sparesOf()
    std::optional<Millivolts> volts;            ///< of the pack that is on the machine now
    VoltageState state = VoltageState::Rested;  ///< of the volts
    friend bool operator==(const PackNews&, const PackNews&) = default;
};

/// The pack on the machine; null = the centre keeps none for it.
const ServiceItem* packOn(const SeasonState& season, const MachineId& machine, Instant now);
/// Its other packs: charged ones first, then those on charge, the longest first.
std::vector<ItemId> sparesOf(const SeasonState& season, const MachineId& machine, Instant now);
/// The limits that hold for the volts of the machine's pack: its own, else the machine's settings. There is a spare where the
/// settings say so or the log has one.
VoltRule voltRuleOf(const SeasonState& season, const Machine& machine, Instant now);
/// Id and person are left empty. None where the centre keeps no pack for the machine, or nothing was said.
std::vector<PackReading> packEntries(const SeasonState& season, const MachineId& machine, const PackNews& news, Instant at);

/// Volts that were read since `dawn` of the pack that is on the machine: by the packs' log, which knows their state, else by the
/// levels as rested.
std::optional<MeasuredVolts> voltsToday(const SeasonState& season, const MachineLevels& now, Instant dawn);

}  // namespace laneward
