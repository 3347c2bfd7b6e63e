#include "core/service/meters.h"

#include "core/service/service_record.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr std::int64_t secondsAMinute = 60;

void setValue(Meters& meters, MeterKind kind, std::int64_t value) {
    if (kind == MeterKind::Lanes) meters.lanes = value;
    if (kind == MeterKind::Runs) meters.runs = value;
    // A counter shows whole minutes; what was logged beyond them goes on counting.
    if (kind == MeterKind::Minutes) meters.work = {value * secondsAMinute};
}

Meters workBetween(std::span<const MachineWork> work, const MachineId& machine, Instant after, Instant until) {
    Meters sum;
    for (const MachineWork& one : work) {
        if (one.machine == machine && one.end > after && one.end <= until) sum = sum + one.done;
    }
    return sum;
}

}  // namespace

std::int64_t valueOf(const Meters& meters, MeterKind kind) {
    switch (kind) {
        case MeterKind::Lanes:
            return meters.lanes;
        case MeterKind::Runs:
            return meters.runs;
        case MeterKind::Minutes:
            return meters.work.value / secondsAMinute;
        case MeterKind::Volume:
            return meters.volume.value;
        case MeterKind::Days:
            break;
    }
    return 0;
}

Meters metersAt(std::span<const MeterReading> readings, std::span<const MachineWork> work, const MachineId& machine, Instant t) {
    constexpr Instant always{std::int64_t{-1} << 60};
    Meters meters = workBetween(work, machine, always, t);
    for (const MeterKind kind : {MeterKind::Lanes, MeterKind::Runs, MeterKind::Minutes}) {
        std::vector<const MeterReading*> own;
        for (const MeterReading& reading : readings) {
            if (reading.machine == machine && reading.meter == kind && reading.at <= t) own.push_back(&reading);
        }
        if (own.empty()) continue;
        std::sort(own.begin(), own.end(),
                  [](const MeterReading* a, const MeterReading* b) { return std::tie(a->at, a->id) < std::tie(b->at, b->id); });
        std::int64_t total = own.front()->shown;
        for (size_t i = 1; i < own.size(); ++i) {
            const MeterReading& before = *own[i - 1];
            total += own[i]->replaced ? valueOf(workBetween(work, machine, before.at, own[i]->at), kind)
                                      : own[i]->shown - before.shown;
        }
        setValue(meters, kind, total + valueOf(workBetween(work, machine, own.back()->at, t), kind));
    }
    return meters;
}

}  // namespace laneward
