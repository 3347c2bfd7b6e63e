#include "core/calendar/ics_time_zone.h"

#include "core/calendar/ics_values.h"

#include <QDateTime>

#include <map>
#include <tuple>

namespace laneward {

namespace {

constexpr int yearsAhead = 10;

/// "+0100", "-0330", with seconds where the zone has them.
QByteArray offsetValue(int seconds) {
    const int s = qAbs(seconds);
    QByteArray text = (seconds < 0 ? "-" : "+") + QByteArray::number(s / 3600).rightJustified(2, '0') +
                      QByteArray::number(s / 60 % 60).rightJustified(2, '0');
    if (s % 60 != 0) text += QByteArray::number(s % 60).rightJustified(2, '0');
    return text;
}

struct Kind {
    int from;
    int to;
    bool daylight;
    QString name;
    friend bool operator<(const Kind& a, const Kind& b) {
        return std::tie(a.from, a.to, a.daylight, a.name) < std::tie(b.from, b.to, b.daylight, b.name);
    }
};

void add(QByteArrayList& lines, const Kind& kind, const QByteArrayList& onsets) {
    const QByteArray component = kind.daylight ? "DAYLIGHT" : "STANDARD";
    lines << "BEGIN:" + component << "DTSTART:" + onsets.front();
    if (onsets.size() > 1) lines << "RDATE:" + onsets.mid(1).join(',');
    lines << "TZOFFSETFROM:" + offsetValue(kind.from) << "TZOFFSETTO:" + offsetValue(kind.to);
    lines << "TZNAME:" + escapedText(kind.name) << "END:" + component;
}

}  // namespace

QByteArrayList timeZoneLines(const Zone& zone, const QByteArray& id, const YearSpan& years) {
    const QDateTime begin(QDate(years.first - 1, 1, 1), QTime(0, 0), Qt::UTC);
    const QDateTime end(QDate(years.last + yearsAhead, 12, 31), QTime(0, 0), Qt::UTC);
    const QTimeZone::OffsetData before = zone.qt().offsetData(begin);
    int offset = before.offsetFromUtc;
    // Onsets are written in the wall time before the change (RFC 5545, section 3.6.5).
    std::map<Kind, QByteArrayList> kinds;
    const LocalTime first = Zone().toLocal({begin.toSecsSinceEpoch() + offset});
    kinds[{offset, offset, before.daylightTimeOffset != 0, before.abbreviation}] << dateTimeValue(first);
    for (const QTimeZone::OffsetData& change : zone.qt().transitions(begin.addSecs(1), end)) {
        const LocalTime onset = Zone().toLocal({change.atUtc.toSecsSinceEpoch() + offset});
        kinds[{offset, change.offsetFromUtc, change.daylightTimeOffset != 0, change.abbreviation}] << dateTimeValue(onset);
        offset = change.offsetFromUtc;
    }
    QByteArrayList lines{"BEGIN:VTIMEZONE", "TZID:" + id};
    for (const auto& [kind, onsets] : kinds)
        add(lines, kind, onsets);
    return lines << "END:VTIMEZONE";
}

}  // namespace laneward
