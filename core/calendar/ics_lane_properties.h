// The X-LANEWARD- properties: what an event asks of the lanes, documented in resources/schemas/icalendar.md.
#pragma once

#include "core/calendar/ics_values.h"

namespace laneward {

/// Lines without folding and line ends, for all fields of `series` that iCalendar itself has no property for.
QByteArrayList lanePropertyLines(const Series& series);

/// Which fields of an override differ from its series: the value of X-LANEWARD-CHANGED.
QByteArray changedFields(const Override& change);

/// Takes one X-LANEWARD- line (other than X-LANEWARD-CHANGED) into `series`; unknown names are noted. A demand without lanes is
/// left for all lanes of the event. Errors: "ics.bad-value".
Outcome takeLaneProperty(const IcsLine& line, IcsContext& context, Series& series);

}  // namespace laneward
