// Short ways to write times, series and a centre in tests of the calendar.
#pragma once

#include "core/calendar/occurrences.h"

namespace laneward::build {

/// "20261112T190000" or "20261112".
inline LocalTime wall(const QString& text) {
    return {QDate::fromString(text.left(8), QStringLiteral("yyyyMMdd")),
            text.size() > 8 ? QTime::fromString(text.mid(9, 6), QStringLiteral("HHmmss")) : QTime(0, 0)};
}

inline QString text(const LocalTime& t) {
    return t.date.toString(QStringLiteral("yyyyMMdd")) + QLatin1Char('T') + t.time.toString(QStringLiteral("HHmmss"));
}

inline QStringList texts(const std::vector<LocalTime>& times) {
    QStringList list;
    for (const LocalTime& t : times)
        list << text(t);
    return list;
}

inline Instant instant(const QString& zone, const QString& time) { return Zone::load(zone.toLatin1())->toInstant(wall(time)); }

/// A league on lanes 1-8 in Berlin, with fresh lanes, for 3 hours from `start`.
inline Series league(const QString& id, const QString& start, const QString& rule = {}) {
    Series s;
    s.id = SeriesId{id};
    s.uid = id;
    s.title = QStringLiteral("Title of ") + id;
    s.kind = EventKind::League;
    s.zone = "Europe/Berlin";
    s.start = wall(start);
    s.duration = hours(3);
    s.rule = rule;
    s.lanes = LaneSet::range(1, 8);
    SurfaceDemand demand;
    demand.lanes = s.lanes;
    demand.kind = DemandKind::Fresh;
    demand.pattern = PatternId{QStringLiteral("house")};
    s.demands = {demand};
    return s;
}

inline Series closure(const QString& id, const QString& start, Seconds duration) {
    Series s = league(id, start);
    s.kind = EventKind::Closure;
    s.duration = duration;
    s.lanes = {};
    s.demands = {};
    return s;
}

inline Centre centre(int lanes = 24, const QByteArray& zone = "Europe/Berlin") {
    Centre c;
    c.facts.id = CentreId{QStringLiteral("centre")};
    c.facts.name = QStringLiteral("Test Bowl");
    c.facts.zone = zone;
    c.facts.lanes = lanes;
    return c;
}

inline DateRange days(const QString& first, const QString& last) { return {wall(first).date, wall(last).date}; }

inline QList<QByteArray> rules(const std::vector<Finding>& findings) {
    QList<QByteArray> list;
    for (const Finding& finding : findings)
        list << finding.rule;
    return list;
}

}  // namespace laneward::build
