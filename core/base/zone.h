// A time zone, and the one place where wall time becomes an instant.
//
// A wall time that a DST change skips is read with the offset before the gap, that is, it moves forward by the gap; one
// that is repeated is the first of the two (RFC 5545, section 3.3.5). Source of the offsets: the system's tz database.
//
//     Result<Zone> zone = Zone::load("Europe/Berlin");
//     Instant t = zone->toInstant({QDate(2026, 3, 29), QTime(2, 30)});   // 01:30Z, shown as 03:30
#pragma once

#include "core/base/result.h"

#include <QDate>
#include <QTime>
#include <QTimeZone>

#include <compare>
#include <memory>
#include <vector>

namespace laneward {

/// Wall time without a zone, to the second.
struct LocalTime {
    QDate date;
    QTime time;

    bool isValid() const { return date.isValid() && time.isValid(); }
    friend bool operator==(const LocalTime&, const LocalTime&) = default;
    friend std::strong_ordering operator<=>(const LocalTime& a, const LocalTime& b) {
        return a.date == b.date ? a.time.msecsSinceStartOfDay() <=> b.time.msecsSinceStartOfDay()
                                : a.date.toJulianDay() <=> b.date.toJulianDay();
    }
};

/// Wall time moved by an exact number of seconds, as if every day had 24 hours.
LocalTime shifted(const LocalTime& t, Seconds by);

class Zone {
public:
    /// UTC.
    Zone();
    /// A zone of the tz database by its IANA id; prefixes such as "/vendor/Europe/Berlin" are stripped.
    /// Errors: Invalid "zone.unknown" with the id as subject.
    static Result<Zone> load(const QByteArray& id);

    QByteArray id() const { return m_id; }
    Instant toInstant(const LocalTime& local) const;
    LocalTime toLocal(Instant t) const;
    Seconds offsetAt(Instant t) const;
    QTimeZone qt() const { return m_zone; }

private:
    struct Transition {
        std::int64_t at;  ///< seconds since 1970, UTC
        int offset;       ///< seconds east of Greenwich from then on
    };

    static Zone read(const QByteArray& id);

    QByteArray m_id;
    QTimeZone m_zone;
    std::shared_ptr<const std::vector<Transition>> m_transitions;  ///< 1970 to 2100, ascending; shared by copies
    int m_firstOffset = 0;
};

}  // namespace laneward
