// How much one person should lift: the revised NIOSH lifting equation. It stands behind the caution 'two people or a lift'.
//
//     RWL = LC x HM x VM x DM x AM x FM x CM
//
// in kilograms and centimetres or in pounds and inches, each with the constants that are published for it (the two differ by
// rounding). LI = load / RWL; a load above the RWL (LI above 1) is not for one person. Source: NIOSH, Applications Manual for the
// Revised Lifting Equation, DHHS (NIOSH) 94-110, rev. 9/2021, section 1; read in a page-referenced copy. Where its printed tables
// are rounded otherwise than the formula (HM at 22 and 23 in, DM at 130 cm), the formula governs.
//
// Limits: it does not hold for lifting with one hand, for more than 8 hours, seated or kneeling, in tight space, for unstable
// loads (part-filled tanks), with carrying, pushing or pulling, for fast lifts, outside 19 to 26 C, or where a foot slides more
// easily than friction 0.4 holds it: on an oiled lane or a wet approach. It says nothing about two people: that they can lift
// twice as much is an upper bound.
//
//     recommendedWeightLimit(Lift{})     // 23 kg: the best of all lifts
#pragma once

#include "core/base/result.h"

namespace laneward {

enum class LiftUnits { Metric, Inches };                    ///< kg and cm, or lb and in
enum class Coupling { Good, Fair, Poor };                   ///< handles
enum class LiftDuration { OneHour, TwoHours, EightHours };  ///< at most; with recovery as the manual asks

struct Lift {
    LiftUnits units = LiftUnits::Metric;
    double horizontal = 25;  ///< H: hands from the middle between the ankles
    double vertical = 75;    ///< V: hands above the floor at the start (or at the end, for that end)
    double distance = 25;    ///< D: moved up or down
    double angle = 0;        ///< A: twist of the body, degrees
    double perMinute = 0.2;  ///< F; fewer count as 0.2
    LiftDuration duration = LiftDuration::OneHour;
    Coupling coupling = Coupling::Good;
};

struct LiftMultipliers {
    double load = 23;  ///< LC
    double horizontal = 1, vertical = 1, distance = 1, angle = 1, frequency = 1, coupling = 1;

    double product() const { return load * horizontal * vertical * distance * angle * frequency * coupling; }
};

/// Out of reach is 0. Between the published frequencies straight lines (from memory), beyond 15 a minute 0. Error Invalid
/// "lifting.measure" for a measure that is negative or no number.
Result<LiftMultipliers> liftMultipliers(const Lift& lift);
/// RWL, in kg or lb.
Result<double> recommendedWeightLimit(const Lift& lift);
/// Lifts per minute of a lift that goes on for so many of every 15 minutes.
constexpr double adjustedFrequency(double perMinute, double minutesOfFifteen) { return perMinute * minutesOfFifteen / 15; }

/// How a machine is lifted on to a lane or over a threshold by one person, unless the centre says otherwise: close, from knee
/// height, with fair handles. Common practice, no source.
inline constexpr Lift machineLift{LiftUnits::Metric, 40, 45, 30, 0, 0.2, LiftDuration::OneHour, Coupling::Fair};

/// What is to be said about lifting a load of `kilograms` (0 = not known: nothing): "lifting.two" (Warning: two people or a lift)
/// above the limit, "lifting.lift" (a lift; no two people) above twice the limit; values: weight up and limit down to whole kg,
/// then both to lb. "lifting.measure" (Fault) for a lift or weight that cannot be.
std::vector<Finding> liftingFindings(const QString& what, double kilograms, const Lift& lift = machineLift);

}  // namespace laneward
