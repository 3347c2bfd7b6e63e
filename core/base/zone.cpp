#include "core/base/zone.h"

#include <QDateTime>
#include <QHash>

#include <algorithm>

namespace laneward {

namespace {

constexpr std::int64_t secondsPerDay = 86'400;
constexpr std::int64_t unixEpochJulianDay = 2'440'588;

std::int64_t asIfUtc(const LocalTime& local) {
    return (local.date.toJulianDay() - unixEpochJulianDay) * secondsPerDay + local.time.msecsSinceStartOfDay() / 1000;
}

LocalTime fromAsIfUtc(std::int64_t seconds) {
    std::int64_t day = seconds / secondsPerDay;
    std::int64_t rest = seconds % secondsPerDay;
    if (rest < 0) {
        rest += secondsPerDay;
        --day;
    }
    return {QDate::fromJulianDay(day + unixEpochJulianDay), QTime::fromMSecsSinceStartOfDay(int(rest) * 1000)};
}

bool isKnown(const QByteArray& id) {
    if (QTimeZone::isTimeZoneIdAvailable(id)) return true;
    // Qt lists only zones that have a place on the map. Of the others these are in files of calendars; asking for any name would
    // accept what merely looks like a POSIX rule.
    return ((id.startsWith("Etc/") && !id.contains("..")) || id == "GMT") && QTimeZone(id).isValid();
}

/// "/vendor/2026a/Europe/Berlin" names Europe/Berlin: drop leading parts until the database knows the rest.
QByteArray knownId(QByteArray id) {
    id = id.trimmed();
    while (!id.isEmpty()) {
        if (isKnown(id)) return id;
        const qsizetype slash = id.indexOf('/');
        if (slash < 0) return {};
        id = id.mid(slash + 1);
    }
    return {};
}

}  // namespace

LocalTime shifted(const LocalTime& t, Seconds by) { return fromAsIfUtc(asIfUtc(t) + by.value); }

Zone::Zone() : m_id("UTC"), m_zone(QTimeZone::utc()), m_transitions(std::make_shared<const std::vector<Transition>>()) {}

Zone Zone::read(const QByteArray& id) {
    Zone zone;
    zone.m_id = id;
    zone.m_zone = QTimeZone(id);
    // Looking a transition up in a table is many times faster than asking QTimeZone for every conversion.
    const QDateTime from(QDate(1970, 1, 1), QTime(0, 0), Qt::UTC);
    const QDateTime to(QDate(2100, 1, 1), QTime(0, 0), Qt::UTC);
    zone.m_firstOffset = zone.m_zone.offsetFromUtc(from);
    int offset = zone.m_firstOffset;
    std::vector<Transition> transitions;
    for (const QTimeZone::OffsetData& change : zone.m_zone.transitions(from, to)) {
        if (change.offsetFromUtc == offset) continue;  // only the name or the split into standard and DST changed
        offset = change.offsetFromUtc;
        transitions.push_back({change.atUtc.toSecsSinceEpoch(), offset});
    }
    zone.m_transitions = std::make_shared<const std::vector<Transition>>(std::move(transitions));
    return zone;
}

Result<Zone> Zone::load(const QByteArray& id) {
    // The tables never change while the program runs, and a season asks for the same few zones thousands of times.
    thread_local QHash<QByteArray, Zone> tables;
    const auto table = tables.constFind(id);
    if (table != tables.constEnd()) return *table;
    const QByteArray known = knownId(id);
    if (known.isEmpty()) return fault(ErrorKind::Invalid, "zone.unknown", QString::fromUtf8(id));
    return *tables.insert(id, read(known));
}

Seconds Zone::offsetAt(Instant t) const {
    const auto after = std::upper_bound(m_transitions->begin(), m_transitions->end(), t.seconds,
                                        [](std::int64_t s, const Transition& change) { return s < change.at; });
    return {after == m_transitions->begin() ? m_firstOffset : std::prev(after)->offset};
}

Instant Zone::toInstant(const LocalTime& local) const {
    // RFC 5545, section 3.3.5. `later` is the first change after which the clocks show more than this wall time, so a time
    // inside a gap still sees the offset before it. A time inside a fold lies behind the change, but the offset before the
    // change also gives an instant before it: that first one is taken.
    const std::int64_t wall = asIfUtc(local);
    const auto later =
        std::upper_bound(m_transitions->begin(), m_transitions->end(), wall,
                         [](std::int64_t w, const Transition& change) { return w < change.at + std::int64_t{change.offset}; });
    if (later == m_transitions->begin()) return {wall - m_firstOffset};
    const auto last = std::prev(later);
    const int before = last == m_transitions->begin() ? m_firstOffset : std::prev(last)->offset;
    if (wall - before < last->at) return {wall - before};
    return {wall - last->offset};
}

LocalTime Zone::toLocal(Instant t) const { return fromAsIfUtc(t.seconds + offsetAt(t).value); }

}  // namespace laneward
