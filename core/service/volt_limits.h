// Which volts count for a machine's pack, and what volts that were measured say about them.
//
// A pack's own limits hold where it has some, else the machine's settings, which are for a rested pack. Volts compare with a
// limit only as far as their states allow: a pack shows most just charged and least under load. So one that is at a limit under
// load is at it rested, and one that is below it just charged is below it rested; the other way round nothing follows.
//
//     const VoltRule rule = voltRule(machine, pack);
//     if (against(Millivolts{19'600}, VoltageState::Rested, rule.spareBelow) == Against::Below) …
#pragma once

#include "core/centre/machine.h"
#include "core/service/service_item.h"

namespace laneward {

struct VoltRule {
    ItemId pack;                   ///< whose limits they are; empty = the machine's settings
    VoltLimit full;                ///< counts as full at or above
    std::optional<VoltLimit> fit;  ///< fit to run at or above; only packs have it
    VoltLimit spareBelow;          ///< below it the spare pack goes on before the run
    bool hasSpare = true;          ///< else it is charged before the run
    friend bool operator==(const VoltRule&, const VoltRule&) = default;
};

/// `pack` is on the machine; null = none is kept.
VoltRule voltRule(const Machine& machine, const ServiceItem* pack);

enum class Against { Below, AtLeast, Unknown };
Against against(Millivolts volts, VoltageState state, const VoltLimit& limit);

struct MeasuredVolts {
    Millivolts volts;
    VoltageState state = VoltageState::Rested;
    Instant at;
    friend bool operator==(const MeasuredVolts&, const MeasuredVolts&) = default;
};

/// What has to be said of them, the worst only. Warnings: "readiness.attach-spare", "readiness.charge-first" (no spare),
/// "readiness.not-fit". Notes: "readiness.not-full", "readiness.other-state" (they say nothing about the limits). Values: volts
/// and limit. Subject: the machine.
std::vector<Finding> voltFindings(const MeasuredVolts& measured, const VoltRule& rule, const QString& machine);

}  // namespace laneward
