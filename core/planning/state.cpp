#include "core/planning/state.h"

#include <algorithm>
#include <cstdlib>

namespace laneward {

namespace {

constexpr std::int64_t ceilDivide(std::int64_t a, std::int64_t b) { return a / b + (a % b > 0 ? 1 : 0); }

}  // namespace

MachineLimits limitsFromSettings(const Machine& machine) {
    const MachineCapacity& c = machine.capacity;
    return {machine.id, c.conditionerPermille, c.cleanerPerLane, c.wastePerLane, c.lanesPerCharge, c.lanesUntilDuty};
}

MachineLevels fullLevels(const Machine& machine, const MachineLimits& limits, Instant at) {
    return {machine.id,  at, machine.capacity.conditioner, machine.capacity.cleaner, Microlitres{0}, limits.lanesPerCharge,
            std::nullopt};
}

Seconds laneTime(const Machine& machine, Treatment treatment, const Pattern* pattern) {
    Seconds time = machine.times.lane[size_t(treatment)];
    if (conditions(treatment) && pattern) {
        const Micrometres beyond = pattern->end - feet(40);
        time += Seconds{ceilDivide(machine.times.perTenFeet.value * beyond.value, feet(10).value)};
    }
    return std::max(time, Seconds{1});
}

Seconds moveTime(const Machine& machine, int fromLane, int toLane) {
    if (fromLane == toLane) return Seconds{0};
    return machine.times.nextLane + machine.times.crossLane * (std::abs(toLane - fromLane) - 1);
}

JobUse laneUse(const Machine& machine, const MachineLimits& limits, Treatment treatment, const Pattern* pattern) {
    Q_UNUSED(machine)  // limits may come from the machine's own past; nothing else of it changes what a lane takes
    JobUse use;
    use.laneRuns = 1;
    if (conditions(treatment) && pattern) {
        const Volumes v = volumes(*pattern);
        for (size_t slot = 0; slot < use.conditioner.size(); ++slot) {
            use.conditioner[slot] = {ceilDivide(v.bySlot[slot].value * limits.conditionerPermille, 1000)};
        }
    }
    if (cleans(treatment)) {
        use.cleaner = limits.cleanerPerLane;
        use.waste = limits.wastePerLane;
    }
    return use;
}

}  // namespace laneward
