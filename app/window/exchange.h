// Files in and out of an open centre. By extension: .json the whole centre, .ics events (or jobs), .csv the plan.
#pragma once

#include "app/edits/session.h"
#include "core/calendar/icalendar.h"

namespace laneward {

/// Writes whole or not at all. Errors: Io "file.not-written", and those of reading the centre.
Outcome exportTo(Session& session, const QString& path, bool jobs);

/// Events from an .ics file; nothing is changed. Errors: Io "file.unreadable", and those of readIcs().
Result<IcsContents> readEvents(const Session& session, const QString& path, const IcsMapping& mapping);
/// What a table of events or of strokes (told apart by its columns, see resources/schemas/csv.md) would change. Errors: those of
/// reading it, and Invalid "import.unsound", "import.pattern-unknown".
Result<std::vector<Change>> csvChanges(const Session& session, const QString& path);

/// New series, and those whose id the centre already has in their new form.
std::vector<Change> importChanges(const SeasonState& season, const std::vector<Series>& series);

}  // namespace laneward
