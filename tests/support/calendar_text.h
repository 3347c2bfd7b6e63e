// A calendar with one event, to be varied line by line.
#pragma once

#include "core/calendar/icalendar.h"

#include <QByteArrayList>

#include <algorithm>

namespace laneward::build {

/// Ends each line with `end`. `lines` replace those of the same property or are added; one that ends with its colon is left out.
inline QByteArray calendar(const QByteArrayList& lines = {}, const QByteArray& end = "\r\n") {
    static const QByteArrayList event{"UID:u1", "SUMMARY:Thursday Fours", "DTSTART;TZID=Europe/Berlin:20261112T190000",
                                      "DURATION:PT3H", "RESOURCES:LANES 1-8"};
    QByteArrayList all{"BEGIN:VCALENDAR", "VERSION:2.0", "BEGIN:VEVENT"};
    const auto nameOf = [](const QByteArray& line) {
        return line.left(line.indexOf(line.contains(';') ? ';' : ':')).split(':')[0];
    };
    for (const QByteArray& own : event) {
        const bool replaced =
            std::any_of(lines.begin(), lines.end(), [&](const QByteArray& l) { return nameOf(l) == nameOf(own); });
        if (!replaced) all << own;
    }
    for (const QByteArray& line : lines) {
        if (!line.endsWith(':')) all << line;
    }
    all << "END:VEVENT"
        << "END:VCALENDAR";
    return all.join(end) + end;
}

inline Result<IcsContents> read(const QByteArray& bytes, const IcsMapping& mapping = {}) {
    return readIcs(bytes, QStringLiteral("a.ics"), mapping, "Europe/Berlin", 24);
}

/// "read", or the rule of the refusal.
inline QByteArray ruleOf(const Result<IcsContents>& result) { return result ? QByteArray("read") : result.error().finding.rule; }

}  // namespace laneward::build
