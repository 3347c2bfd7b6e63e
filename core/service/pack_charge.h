// A pack's charge, from the volts that were measured: as a share of full, with how far that can be trusted.
//
// Volts of a pack say something about its charge only when it has rested (6 hours and more). Just charged, its surface holds
// volts that soon go: it is at most as full as they say. Under load they sag: it is at least as full. Tables are for packs of
// nominal 12 V at room temperature and are scaled to others. All figures are the maker's to know; these are usual ones.
//
//     rested, full to empty in quarters     V           status
//     flooded lead-acid                     12.65 12.45 12.24 12.06 11.89   BCI-style table, from memory; within 0.1 V of a table
//                                           that was read (magazine page on checking batteries), down to a quarter full
//     AGM, gel                              0.2 V more                      assumed: no table could be read; full rests at
//                                           12.8 to 13.0 V (memory), the shape is taken from the flooded one
//     lithium iron phosphate                13.6 at full, 13.3 13.2 13.1 13.0 12.9 at 90 70 50 40 30 %, 12.8 at 20 %, 12.0 at
//                                           10 %, 10.0 empty; from memory; nearly flat, so volts say little from 30 to 90 %
//     other                                 no table: volts say nothing here
//
// Published tables differ by 0.1 V and more for 12 V; a charge is given with the range that 0.1 V either way leaves.
//
//     chargeOf({Chemistry::FloodedLeadAcid, Millivolts{24'000}}, Millivolts{24'900}, VoltageState::Rested)->share   // 0.75
#pragma once

#include "core/base/result.h"
#include "core/statistics/least_squares.h"

#include <optional>

namespace laneward {

enum class Chemistry { FloodedLeadAcid, Agm, Gel, LithiumIronPhosphate, Other };
enum class VoltageState { JustCharged, Rested, UnderLoad };

inline constexpr Millivolts mostVolts{60'000};  ///< what is accepted as a pack's volts, from 0

struct PackKind {
    Chemistry chemistry = Chemistry::Other;
    Millivolts nominal{24'000};  ///< above 0, at most mostVolts
    friend bool operator==(const PackKind&, const PackKind&) = default;
};

struct Charge {
    double share = 0;  ///< 0 empty … 1 full: the best guess; just charged the most it can be, under load the least
    Interval likely;   ///< within 0 … 1
};

/// None for a chemistry without a table. Volts above and below the table are full and empty. Error Invalid: "pack.volts" outside
/// 0 … 60 V, "pack.nominal".
Result<std::optional<Charge>> chargeOf(const PackKind& kind, Millivolts volts, VoltageState state);
/// Volts of a rested pack of that charge (clamped to 0 … 1); none without a table.
std::optional<Millivolts> restedVolts(const PackKind& kind, double share);

/// One of a centre's limits, and in which state it is measured.
struct VoltLimit {
    Millivolts at;
    VoltageState state = VoltageState::Rested;
    friend bool operator==(const VoltLimit&, const VoltLimit&) = default;
};

/// As a centre sets them for a machine and its packs. They differ between chemistries and machines: there are no defaults.
struct PackLimits {
    PackKind kind;
    VoltLimit full;        ///< counts as full at or above
    VoltLimit fit;         ///< fit to run at or above
    VoltLimit spareBelow;  ///< below it the spare pack goes on before the run
    friend bool operator==(const PackLimits&, const PackLimits&) = default;
};

/// What makes no sense in them. Faults: "pack.volts" (the limit), "pack.nominal". Warnings, each with the limit and the volts to
/// compare it with: "pack.order-full" (full is below fit), "pack.order-spare" (spare is above fit), "pack.full-unreachable" and
/// "pack.fit-unreachable" (more than a full pack rests at, or than chargers give), "pack.full-low" (a pack that shows this may be
/// less than three quarters full), "pack.fit-empty" and "pack.spare-empty" (a pack that shows this is empty, or under load below
/// what it may be drawn down to). Notes: "pack.no-table", "pack.assumed-table".
std::vector<Finding> findingsOf(const PackLimits& limits, const QString& subject);
/// "pack.volts" for volts outside 0 … 60 V; else nothing.
std::vector<Finding> voltsFindings(Millivolts volts, const QString& subject);

/// Capacity in Peukert's law (1897) as drawn in one hour: t = C / I^k.
struct OneHourCapacity {
    double ampereHours = 0;
};
/// Capacity as it is printed on a pack, for so many hours, such as 20: t = H (C / (I H))^k.
struct RatedCapacity {
    double ampereHours = 0;
    double hours = 20;
};
/// Hours that a current lasts; amperes and capacities above 0. Usual exponents k: AGM 1.05 to 1.15, gel 1.10 to 1.25, flooded 1.2
/// to 1.6. The two capacities of one pack differ widely, hence two types.
double peukertHours(const OneHourCapacity& capacity, double amperes, double exponent);
double peukertHours(const RatedCapacity& capacity, double amperes, double exponent);

}  // namespace laneward
