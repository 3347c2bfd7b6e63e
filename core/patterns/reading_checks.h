// Named checks of tape readings and of lane geometry, each with where it comes from and whether it is in force.
//
// Published figures were read in second-hand sources only, never in the governing body's manual: whoever judges a lane by them
// reads the current manual first. A suspended rule is history; it is offered to compare with, and nothing follows from it.
//
//     for (const CheckResult& result : checkReading(compared, centre.facts.readingLimits)) show(result);
//     for (const GeometryResult& result : checkInspection(inspection)) show(result);
#pragma once

#include "core/centre/centre.h"
#include "core/patterns/inspection.h"
#include "core/patterns/reading_compare.h"

#include <span>

namespace laneward {

enum class CheckStatus {
    InForce,    ///< as far as the source says
    Suspended,  ///< history: not in force
    CentresOwn,
};

enum class CheckId {
    ThreeUnits,    ///< least film on every oiled board
    OwnLowest,     ///< the centre's least film on every oiled board
    OwnMeanError,  ///< mean of read minus computed, either way
    OwnTrackRatio,
    Geometry,  ///< departures from the true plane
};

enum class CheckSource {
    BodyPage2007,        ///< the governing body's page of about 2007; suspension by its notice of 2019, reposted
    SportsReference,     ///< a general sports reference that restates the rule
    ReferenceAndMemory,  ///< the same figure, its use for this feature from memory
    Centre,
};

struct NamedCheck {
    CheckId id = CheckId::OwnLowest;
    CheckStatus status = CheckStatus::CentresOwn;
    CheckSource source = CheckSource::Centre;
    int since = 0;        ///< year; 0 = not known
    int suspendedIn = 0;  ///< year; 0 = not suspended
    friend bool operator==(const NamedCheck&, const NamedCheck&) = default;
};

struct CheckResult {
    NamedCheck check;
    std::optional<double> value;  ///< units, or the ratio; none = the boards it needs were not read
    std::optional<double> least;  ///< what is asked, both ends included
    std::optional<double> most;
    bool holds = true;  ///< true also without a value: look at that first

    bool isBroken() const { return value && !holds; }
};

/// The published check, then those that the centre set.
std::vector<CheckResult> checkReading(const ReadingComparison& compared, const ReadingLimits& own);

struct GeometryTolerance {
    GeometryFeature feature;
    Micrometres most;  ///< either way
    NamedCheck check;
};

/// One for every feature: 40/1000 in.
std::span<const GeometryTolerance> geometryTolerances();

struct GeometryResult {
    GeometryValue value;
    GeometryTolerance tolerance;
    bool holds = true;
};

/// One for every measured value, in its order.
std::vector<GeometryResult> checkInspection(const Inspection& inspection);

}  // namespace laneward
