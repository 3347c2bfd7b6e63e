// iCalendar files (RFC 5545): events in and out, jobs out.
//
// Lanes travel in RESOURCES: one value per lane ("LANE 7") or a range ("LANES 1-12"). What an event asks of the lanes travels
// in X-LANEWARD- properties, documented in resources/schemas/icalendar.md; a file without them takes the caller's Mapping.
#pragma once

#include "core/calendar/series.h"

#include <QByteArray>

namespace laneward {

/// What to assume where a file does not say.
struct IcsMapping {
    LaneSet lanes;  ///< for events that name none; empty = such events are refused
    EventKind kind = EventKind::Other;
    std::vector<SurfaceDemand> demands;  ///< used where a file has no X-LANEWARD- properties; `lanes` of each may be empty = all
    QByteArray zone;                     ///< for floating times and unknown zones; empty = the centre's
};

struct IcsContents {
    std::vector<Series> series;  ///< ids equal their UIDs; overrides joined to their series
    std::vector<Finding> notes;  ///< "ics.unknown-zone", "ics.unsupported-property", … with line numbers
};

/// Reads at most limits::importBytes. `name` is the file's name for messages, `centreZone` and `laneCount` the centre's.
/// Errors (Invalid): "ics.too-large", "ics.too-deep", "ics.not-utf8", "ics.truncated", "ics.bad-value", "ics.end-before-start",
/// "ics.lane-unknown", "rule.…" and more; the subject is "name:line". One bad record refuses the whole file.
Result<IcsContents> readIcs(const QByteArray& bytes, const QString& name, const IcsMapping& mapping, const QByteArray& centreZone,
                            int laneCount);

/// Times are written with TZID and a VTIMEZONE for each zone used. `stamp` becomes DTSTAMP.
QByteArray writeIcs(const std::vector<Series>& series, Instant stamp);

/// One entry of a calendar that phones subscribe to.
struct IcsEntry {
    QString uid;
    QString summary;
    QString description;
    Span time;  ///< written in UTC
    LaneSet lanes;
};
QByteArray writeIcs(const QString& calendarName, const std::vector<IcsEntry>& entries, Instant stamp);

/// Content lines by RFC 5545 section 3.1, and TEXT by 3.3.11.
QByteArray foldedLine(const QByteArray& line);
QByteArray unfolded(const QByteArray& text);
QByteArray escapedText(const QString& text);
QString unescapedText(const QByteArray& text);

}  // namespace laneward
