#include "core/calendar/icalendar.h"
#include "core/calendar/ics_lane_properties.h"
#include "core/calendar/ics_time_zone.h"

#include <QRegularExpression>

#include <map>

namespace laneward {

namespace {

class Writer {
public:
    void line(const QByteArray& text) { bytes += foldedLine(text); }
    void text(const char* name, const QString& value) { line(QByteArray(name) + ':' + escapedText(value)); }
    /// One or more times of `zone`, for example DTSTART;TZID=Europe/Berlin:20261112T190000.
    void times(const char* name, const std::vector<LocalTime>& values, const QByteArray& zone) {
        const bool utc = zone == "UTC";
        QByteArrayList list;
        for (const LocalTime& value : values)
            list << dateTimeValue(value) + (utc ? "Z" : "");
        line(QByteArray(name) + (utc ? QByteArray() : ";TZID=" + zone) + ':' + list.join(','));
    }
    void begin(Instant stamp, const QString& uid) {
        line("BEGIN:VEVENT");
        text("UID", uid);
        times("DTSTAMP", {Zone().toLocal(stamp)}, "UTC");
    }

    QByteArray bytes;
};

void beginCalendar(Writer& out) {
    out.line("BEGIN:VCALENDAR");
    out.line("VERSION:2.0");
    out.line("PRODID:-//Laneward//Laneward//EN");
    out.line("CALSCALE:GREGORIAN");
}

/// The rule with UNTIL in UTC, which RFC 5545, section 3.3.10, asks for where DTSTART has a zone.
QByteArray ruleValue(const Series& series) {
    static const QRegularExpression form(QStringLiteral("UNTIL=([0-9]{8})(?:T([0-9]{6}))?(?=;|$)"),
                                         QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch match = form.match(series.rule);
    const Result<Zone> zone = Zone::load(series.zone);
    if (!match.hasMatch() || !zone) return series.rule.toUtf8();
    const LocalTime wall{
        QDate::fromString(match.captured(1), QStringLiteral("yyyyMMdd")),
        match.capturedLength(2) > 0 ? QTime::fromString(match.captured(2), QStringLiteral("HHmmss")) : QTime(23, 59, 59)};
    if (!wall.isValid()) return series.rule.toUtf8();
    const QByteArray until = "UNTIL=" + dateTimeValue(Zone().toLocal(zone->toInstant(wall))) + 'Z';
    return QString(series.rule).replace(match.capturedStart(), match.capturedLength(), QString::fromLatin1(until)).toUtf8();
}

void writeSeries(Writer& out, const Series& s, const QString& uid, Instant stamp) {
    out.begin(stamp, uid);
    out.times("DTSTART", {s.start}, s.zone);
    out.line("DURATION:" + durationValue(s.duration));
    if (!s.rule.isEmpty()) out.line("RRULE:" + ruleValue(s));
    if (!s.extraDates.empty()) out.times("RDATE", s.extraDates, s.zone);
    if (!s.excludedDates.empty()) out.times("EXDATE", s.excludedDates, s.zone);
    out.text("SUMMARY", s.title);
    if (!s.note.isEmpty()) out.text("DESCRIPTION", s.note);
    if (s.cancelled) out.line("STATUS:CANCELLED");
    if (!s.lanes.isEmpty()) out.line("RESOURCES:" + resourcesValue(s.lanes));
    for (const QByteArray& line : lanePropertyLines(s))
        out.line(line);
    out.line("END:VEVENT");
}

void writeOverride(Writer& out, const Series& s, const Override& change, const QString& uid, Instant stamp) {
    out.begin(stamp, uid);
    out.times("RECURRENCE-ID", {change.original}, s.zone);
    out.times("DTSTART", {change.start.value_or(change.original)}, s.zone);
    out.line("DURATION:" + durationValue(change.duration.value_or(s.duration)));
    out.text("SUMMARY", change.title.value_or(s.title));
    if (change.cancelled) out.line("STATUS:CANCELLED");
    const LaneSet lanes = change.lanes.value_or(s.lanes);
    if (!lanes.isEmpty()) out.line("RESOURCES:" + resourcesValue(lanes));
    out.line("X-LANEWARD-CHANGED:" + changedFields(change));
    out.line("END:VEVENT");
}

/// Zones in use, each with the first and last year that its events name.
std::map<QByteArray, YearSpan> zonesOf(const std::vector<Series>& series) {
    std::map<QByteArray, YearSpan> zones;
    for (const Series& s : series) {
        std::vector<LocalTime> times{s.start};
        times.insert(times.end(), s.extraDates.begin(), s.extraDates.end());
        for (const Override& change : s.overrides)
            times.push_back(change.start.value_or(change.original));
        for (const LocalTime& t : times)
            zones[s.zone].include(t.date.year());
    }
    zones.erase("UTC");
    return zones;
}

}  // namespace

QByteArray writeIcs(const std::vector<Series>& series, Instant stamp) {
    Writer out;
    beginCalendar(out);
    for (const auto& [id, years] : zonesOf(series)) {
        const Result<Zone> zone = Zone::load(id);
        if (!zone) continue;
        for (const QByteArray& line : timeZoneLines(*zone, id, years))
            out.line(line);
    }
    for (const Series& s : series) {
        const QString uid = s.uid.isEmpty() ? s.id.value : s.uid;
        writeSeries(out, s, uid, stamp);
        for (const Override& change : s.overrides)
            writeOverride(out, s, change, uid, stamp);
    }
    out.line("END:VCALENDAR");
    return out.bytes;
}

QByteArray writeIcs(const QString& calendarName, const std::vector<IcsEntry>& entries, Instant stamp) {
    Writer out;
    beginCalendar(out);
    out.line("METHOD:PUBLISH");
    out.text("NAME", calendarName);  // RFC 7986, section 5.1
    out.text("X-WR-CALNAME", calendarName);
    out.line("REFRESH-INTERVAL;VALUE=DURATION:PT1H");  // RFC 7986, section 5.7
    const Zone utc;
    for (const IcsEntry& entry : entries) {
        out.begin(stamp, entry.uid);
        out.times("DTSTART", {utc.toLocal(entry.time.begin)}, "UTC");
        out.times("DTEND", {utc.toLocal(entry.time.end)}, "UTC");
        out.text("SUMMARY", entry.summary);
        if (!entry.description.isEmpty()) out.text("DESCRIPTION", entry.description);
        if (!entry.lanes.isEmpty()) out.line("RESOURCES:" + resourcesValue(entry.lanes));
        out.line("END:VEVENT");
    }
    out.line("END:VCALENDAR");
    return out.bytes;
}

}  // namespace laneward
