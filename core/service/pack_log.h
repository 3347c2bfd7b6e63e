// The log of packs: what was written down of each, and what follows: where it is, what it has run since it was charged, and how
// many lanes each charge before has run.
//
// The lanes come from the runs of the machine that the pack is on. Before anything is written the first pack of a machine (by id)
// is on it. A run while the pack is on charge ends the charging: it cannot have been there. What a charge has run counts from
// 'charged' (or from when the pack was put on the machine, off the charger) to 'on charge'; work of before the log begins is
// unknown, and that charge is left out.
//
//     const std::vector<PackState> packs = packStates(items, standing(readings), work, now);
#pragma once

#include "core/service/meters.h"
#include "core/service/pack_lanes.h"
#include "core/service/service_item.h"

namespace laneward {

enum class PackDeed {
    Read,       ///< only its volts
    OnMachine,  ///< put on its machine
    OnCharge,   ///< put on the charger
    Charged,    ///< off the charger, full
};

struct PackReading {
    OperationId id;
    Instant at;
    PersonId person;
    ItemId pack;
    PackDeed deed = PackDeed::Read;
    std::optional<Millivolts> volts;
    VoltageState state = VoltageState::Rested;  ///< of the volts
    bool spent = false;                         ///< with OnCharge: it had run until it was done
    bool withdrawn = false;                     ///< only as a correction: it did not happen
    QString note;
    std::optional<OperationId> corrects;  ///< replaces that earlier one
    friend bool operator==(const PackReading&, const PackReading&) = default;
};

std::vector<PackReading> standing(std::vector<PackReading> readings);
/// What cannot be ("pack.…"): no pack of the centre, volts outside 0 … 60 V, a reading without volts, a time after `now`.
std::vector<Finding> faultsOf(const PackReading& reading, const ServiceItem* item, Instant now);

struct PackState {
    ItemId pack;
    MachineId machine;
    bool onMachine = false;
    bool onCharge = false;
    std::optional<Instant> since;    ///< when its present charge, or charging, began; none = not known
    double lanes = 0;                ///< run on this charge, as far as is known
    std::optional<Instant> voltsAt;  ///< last measured
    std::optional<Millivolts> volts;
    VoltageState state = VoltageState::Rested;
    double lanesAtVolts = 0;          ///< of `lanes`, those run by then
    std::vector<PackCharge> charges;  ///< those that are over, by time; their day counts from 1970
};

/// Of all packs of machines that are not retired, by id. `readings` stand; they and the runs, each with its own end, in any
/// order; what is after `now` is left out.
std::vector<PackState> packStates(const std::vector<ServiceItem>& items, std::vector<PackReading> readings,
                                  std::vector<MachineWork> work, Instant now);

}  // namespace laneward
