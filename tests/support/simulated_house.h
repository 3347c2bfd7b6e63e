// Two years of one machine whose truth is known: what was planned, what was really used, and what is seen of it. Factors, purges,
// noise and errors of the line are drawn, so that the truth is not what a model believes beforehand.
#pragma once

#include "core/supplies/learned_rates.h"
#include "core/supplies/usage_model.h"

namespace support {

inline constexpr int simulatedDays = 728;
inline constexpr double simulatedTank = 1'800'000;  ///< microlitres
inline const QDate firstSimulatedDay(2026, 1, 5);

struct SimulatedHouse {
    std::vector<laneward::Amount> nominal;  ///< as planned, and run
    std::vector<double> used;               ///< of each day, events included
    std::vector<laneward::UsageFill> fills;
    std::vector<size_t> fillDays;
    std::vector<laneward::DatedAmount> events;  ///< what happened besides

    std::vector<laneward::UsageFill> fillsBefore(int day) const;
    std::vector<laneward::DatedAmount> eventsBefore(int day) const;
};

/// Reproducible. `walk` is the drift of the factor in a tank, as a standard deviation.
SimulatedHouse simulatedHouse(int seed, double walk);

laneward::UsageRule simulatedUsageRule();
/// What is believed of events beforehand.
inline constexpr laneward::RatePrior simulatedEventPrior{1, 10, 0.25 * simulatedTank};

}  // namespace support
