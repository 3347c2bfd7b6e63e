// Meters: what a machine has done. They come from run logs; a counter that was read puts them right.
//
// Between two readings of a counter the difference is what was done, logged or not; after the last one the logs are.
//
//     const Meters now = metersAt(readings, work, {}, machine, now);
//     const std::int64_t since = now.lanes - record.meters.lanes;
#pragma once

#include "core/base/ids.h"
#include "core/base/quantities.h"

#include <QDate>

#include <span>
#include <vector>

namespace laneward {

struct MeterReading;
enum class MeterKind;

struct Meters {
    std::int64_t lanes = 0;
    std::int64_t runs = 0;
    Seconds work;        ///< of the machine, from the first lane to the last of each run
    Microlitres volume;  ///< conditioner and cleaner through it
    friend bool operator==(const Meters&, const Meters&) = default;
    friend Meters operator+(const Meters& a, const Meters& b) {
        return {a.lanes + b.lanes, a.runs + b.runs, a.work + b.work, a.volume + b.volume};
    }
};

/// In the unit of the meter: lanes, runs, whole minutes, microlitres; 0 for Days.
std::int64_t valueOf(const Meters& meters, MeterKind kind);

/// One run, or several, of a machine.
struct MachineWork {
    MachineId machine;
    Instant end;
    Meters done;
    friend bool operator==(const MachineWork&, const MachineWork&) = default;
};

/// The meters of a machine at `t`, from `start` on: all work that ended after the first reading and up to `t`, put right by
/// readings up to `t`. Both in any order.
Meters metersAt(std::span<const MeterReading> readings, std::span<const MachineWork> work, const MachineId& machine, Instant t);

}  // namespace laneward
