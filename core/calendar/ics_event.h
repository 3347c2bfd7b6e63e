// One VEVENT as it stands in a file, before overrides are joined to their series.
#pragma once

#include "core/calendar/ics_values.h"

namespace laneward {

struct IcsEvent {
    int line = 0;  ///< of its BEGIN
    Series series;
    std::optional<IcsMoment> original;      ///< RECURRENCE-ID
    std::optional<QByteArrayList> changed;  ///< X-LANEWARD-CHANGED
    std::vector<Override> ofPeriods;        ///< RDATE;VALUE=PERIOD with a length of its own
    bool namesLanes = false;
    bool hasLength = true;
};

/// `lines` are those between BEGIN:VEVENT and END:VEVENT without nested components; `begin` the number of the former's line.
/// Errors: those of readIcs() that concern one event.
Result<IcsEvent> readEvent(const std::vector<IcsLine>& lines, int begin, IcsContext& context);

/// What `event`, which has a RECURRENCE-ID, changes in `master`.
Override overrideFrom(const IcsEvent& event, const Series& master);

}  // namespace laneward
