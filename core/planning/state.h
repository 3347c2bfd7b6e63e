// All that planning knows: plain values, nothing looked up behind its back.
#pragma once

#include "core/calendar/series.h"
#include "core/centre/centre.h"
#include "core/patterns/pattern.h"
#include "core/planning/job.h"
#include "core/planning/run_log.h"

namespace laneward {

/// Cautious figures of one machine, from the past (99 % and 5 % quantiles) or, without one, from its settings.
struct MachineLimits {
    MachineId machine;
    int conditionerPermille = 1'080;
    Microlitres cleanerPerLane;
    Microlitres wastePerLane;
    int lanesPerCharge = 40;
    std::optional<int> lanesUntilDuty;
    friend bool operator==(const MachineLimits&, const MachineLimits&) = default;
};

/// What is in a machine at one moment, measured or carried forward from the run logs.
struct MachineLevels {
    MachineId machine;
    Instant at;
    std::array<Microlitres, conditionerSlots> conditioner;
    Microlitres cleaner;
    Microlitres waste;                ///< in the waste tank
    int lanesLeft = 0;                ///< on this charge
    std::optional<Millivolts> volts;  ///< measured; for the record
    friend bool operator==(const MachineLevels&, const MachineLevels&) = default;
};

struct State {
    Centre centre;
    std::vector<Series> series;
    std::vector<Pattern> patterns;
    std::vector<MachineLimits> limits;   ///< one per machine; missing = from settings
    std::vector<MachineLevels> levels;   ///< at `now`; missing = full, empty and charged
    std::vector<Job> committed;          ///< confirmed, under way, done, cut short: planning goes around them
    std::vector<LaneTreatment> history;  ///< last treatment of each lane that has one
    friend bool operator==(const State&, const State&) = default;
};

MachineLimits limitsFromSettings(const Machine& machine);
/// Full tanks, empty waste, a full pack.
MachineLevels fullLevels(const Machine& machine, const MachineLimits& limits, Instant at);

/// Time of one lane: the machine's setting for the treatment, plus its share per 10 ft of pattern beyond 40 ft, rounded up.
Seconds laneTime(const Machine& machine, Treatment treatment, const Pattern* pattern);
/// Moving from one lane to another: the next lane, plus each lane crossed.
Seconds moveTime(const Machine& machine, int fromLane, int toLane);
/// What one lane takes, by the limits (rounded up).
JobUse laneUse(const Machine& machine, const MachineLimits& limits, Treatment treatment, const Pattern* pattern);

}  // namespace laneward
