// The mapping of a calendar that does not say what this program wants to know. Internal to this room.
#pragma once

#include "core/calendar/icalendar.h"

namespace laneward::cli {

/// {"lanes": "1-12", "kind": "league", "zone": "Europe/Berlin", "demand": "fresh", "pattern": "wren-36",
///  "treatment": "clean-and-condition"}; every key may be left out.
/// Errors (Invalid): "mapping.unreadable".
Result<IcsMapping> icsMapping(const QByteArray& json, const QString& name);

}  // namespace laneward::cli
