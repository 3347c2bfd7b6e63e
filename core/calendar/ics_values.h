// Values of iCalendar properties: times, durations, lanes. RFC 5545, section 3.3.
#pragma once

#include "core/calendar/icalendar.h"
#include "core/calendar/ics_lines.h"

#include <QHash>
#include <QSet>

namespace laneward {

/// What reading one file needs to know, and its notes: each kind of note once, with its first line.
class IcsContext {
public:
    IcsContext(QString file, const IcsMapping& mapping, const QByteArray& centreZone, int laneCount);

    Error error(const char* rule, int line, std::vector<Value> values = {}) const;
    void note(Severity severity, const char* rule, int line, const QString& about);
    /// The zone that a TZID means: the tz database's name, a location given in the file, a known alias, or the fallback with a
    /// note.
    QByteArray zoneNamed(const QByteArray& tzid, int line);

    const IcsMapping& mapping;
    QByteArray fallbackZone;
    int laneCount = 0;
    QHash<QByteArray, QByteArray> locations;  ///< TZID to the location that its VTIMEZONE names
    std::vector<Finding> notes;

private:
    QString m_file;
    QSet<QByteArray> m_noted;
};

/// A DATE or DATE-TIME in the zone it was written in.
struct IcsMoment {
    LocalTime local;
    QByteArray zone;
    bool dateOnly = false;

    /// Its wall time in `other`; a date alone takes the time of day from `timeOfDay`.
    LocalTime in(const QByteArray& other, QTime timeOfDay) const;
    Instant instant() const;
};

/// `value` of `line` (one of a list) with the line's TZID. Errors: "ics.bad-value".
Result<IcsMoment> momentOf(const IcsLine& line, const QByteArray& value, IcsContext& context);

/// RFC 5545, section 3.3.6; a day counts 24 hours. Nothing when unreadable.
std::optional<Seconds> durationFrom(const QByteArray& value);
QByteArray durationValue(Seconds duration);
QByteArray dateTimeValue(const LocalTime& t);  ///< "20261112T190000"

/// "LANES 1-12", "LANE 15": the values of RESOURCES.
QByteArray resourcesValue(const LaneSet& lanes);
/// Adds the lanes of a RESOURCES line to `lanes`; other resources are noted. Errors: "ics.lane-unknown", "ics.bad-value".
Outcome addLanes(const IcsLine& line, IcsContext& context, LaneSet& lanes);

}  // namespace laneward
