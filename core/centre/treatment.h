// What a machine does to one lane.
#pragma once

#include <array>

namespace laneward {

enum class Treatment {
    CleanAndCondition,
    ConditionOnly,  ///< never changes a lane's pattern and never follows another pattern
    CleanOnly,      ///< leaves the lane without pattern
};

inline constexpr std::array allTreatments{Treatment::CleanAndCondition, Treatment::ConditionOnly, Treatment::CleanOnly};

constexpr bool cleans(Treatment t) { return t != Treatment::ConditionOnly; }
constexpr bool conditions(Treatment t) { return t != Treatment::CleanOnly; }

/// Whether `done` is at least the kind that was asked for.
constexpr bool isAtLeast(Treatment done, Treatment asked) { return done == asked || done == Treatment::CleanAndCondition; }

}  // namespace laneward
