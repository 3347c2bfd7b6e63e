// Inspections: the measured geometry of a lane, to compare with the tolerances in force and with earlier years.
//
// Every amount is a departure from the true plane in micrometres, measured at a distance from the foul line.
#pragma once

#include "core/base/ids.h"
#include "core/base/result.h"

#include <QString>

#include <optional>
#include <vector>

namespace laneward {

enum class GeometryFeature {
    Level,       ///< lengthwise
    Tilt,        ///< crosswise: right edge above (+) or below (-) the left
    Crown,       ///< the middle above the edges
    Depression,  ///< the middle below the edges
};

struct GeometryValue {
    GeometryFeature feature = GeometryFeature::Tilt;
    Micrometres distance;   ///< from the foul line
    Micrometres departure;  ///< from the true plane
    friend bool operator==(const GeometryValue&, const GeometryValue&) = default;
};

struct Inspection {
    OperationId id;
    Instant at;
    PersonId person;
    int lane = 0;
    std::vector<GeometryValue> values;
    QString note;
    std::optional<OperationId> corrects;  ///< replaces that earlier one; without values it only withdraws it
    friend bool operator==(const Inspection&, const Inspection&) = default;
};

/// Nothing measured (and nothing withdrawn), a lane or distance that does not exist, a departure beyond reason. Subject: the
/// lane's number. Empty when sound. `lanes` is how many lanes the centre has.
std::vector<Finding> faultsOf(const Inspection& inspection, int lanes);

inline constexpr Micrometres mostDeparture{50'000};  ///< that is taken for a measurement

}  // namespace laneward
