#include "core/calendar/series.h"

#include "core/base/limits.h"
#include "core/calendar/expander.h"
#include "core/calendar/recurrence.h"

#include <QRegularExpression>

#include <algorithm>

namespace laneward {

namespace {

constexpr Seconds longest = hours(24 * 366);

class Faults {
public:
    explicit Faults(QString subject) : m_subject(std::move(subject)) {}
    void add(bool isFault, const char* rule, std::vector<Value> values = {}) {
        if (isFault) found.push_back({Severity::Fault, rule, m_subject, std::move(values)});
    }
    std::vector<Finding> found;

private:
    QString m_subject;
};

bool isDateInReach(const LocalTime& t) { return t.isValid() && t.date.year() >= 1970 && t.date.year() < 2100; }

void checkTimes(const Series& s, Faults& faults) {
    faults.add(!isDateInReach(s.start), "series.bad-start");
    faults.add(s.duration <= Seconds{0}, "series.no-length");
    faults.add(s.duration > longest, "series.too-long", {s.duration});
    for (Seconds t : {s.settle, s.clearing})
        faults.add(t < Seconds{0} || t > hours(24), "series.setting-time", {t});
    for (const std::vector<LocalTime>& dates : {s.extraDates, s.excludedDates})
        faults.add(!std::all_of(dates.begin(), dates.end(), isDateInReach), "series.bad-date");
}

void checkLanes(const Series& s, int laneCount, Faults& faults) {
    faults.add(s.lanes.isEmpty() && s.kind != EventKind::Closure, "series.no-lanes");
    faults.add(s.lanes.last() > laneCount, "series.lane-unknown", {std::int64_t{s.lanes.last()}, std::int64_t{laneCount}});
    for (const SurfaceDemand& demand : s.demands) {
        faults.add(demand.lanes.isEmpty(), "series.demand-no-lanes");
        const LaneSet strange = demand.lanes - s.lanes;
        faults.add(!strange.isEmpty(), "series.demand-lanes", {strange.text()});
        faults.add(demand.longestAge <= Seconds{0} || demand.longestPlay < Seconds{0}, "series.demand-time");
    }
}

void checkOverrides(const Series& s, int laneCount, Faults& faults) {
    std::vector<LocalTime> originals;
    for (const Override& o : s.overrides) {
        originals.push_back(o.original);
        faults.add(!isDateInReach(o.original) || (o.start && !isDateInReach(*o.start)), "series.bad-date");
        faults.add(o.duration && *o.duration <= Seconds{0}, "series.no-length");
        faults.add(o.duration && *o.duration > longest, "series.too-long", {o.duration.value_or(Seconds{})});
        if (!o.lanes) continue;
        faults.add(o.lanes->isEmpty() && s.kind != EventKind::Closure, "series.no-lanes");
        faults.add(o.lanes->last() > laneCount, "series.lane-unknown", {std::int64_t{o.lanes->last()}, std::int64_t{laneCount}});
    }
    std::sort(originals.begin(), originals.end());
    faults.add(std::adjacent_find(originals.begin(), originals.end()) != originals.end(), "series.override-twice");
}

/// The rule with its UNTIL moved by whole days of wall time in `zone`.
QString withUntilMoved(const QString& rule, const Zone& zone, qint64 days) {
    static const QRegularExpression until(QStringLiteral("UNTIL=([0-9]{8})(?:T([0-9]{6})(Z?))?"),
                                          QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch match = until.match(rule);
    if (!match.hasMatch()) return rule;
    const QDate date = QDate::fromString(match.captured(1), QStringLiteral("yyyyMMdd"));
    QString moved = date.addDays(days).toString(QStringLiteral("yyyyMMdd"));
    if (match.capturedLength(2) > 0) {
        LocalTime t{date, QTime::fromString(match.captured(2), QStringLiteral("HHmmss"))};
        const bool utc = match.capturedLength(3) > 0;
        if (utc) t = zone.toLocal(Zone().toInstant(t));
        t.date = t.date.addDays(days);
        if (utc) t = Zone().toLocal(zone.toInstant(t));
        moved = t.date.toString(QStringLiteral("yyyyMMdd")) + QLatin1Char('T') + t.time.toString(QStringLiteral("HHmmss")) +
                match.captured(3);
    }
    return QString(rule).replace(match.capturedStart(), match.capturedLength(), QStringLiteral("UNTIL=") + moved);
}

/// The first date that the rule itself gives from `start` on, so that a copy does not begin with a date between two of its own.
LocalTime firstByRule(const Rule& rule, const LocalTime& start) {
    const Expander expander(rule.ical(), start);
    for (std::int64_t index = 0; expander.firstDay(index) < start.date.addYears(8); ++index) {
        for (const LocalTime& t : expander.period(index)) {
            if (start <= t) return t;
        }
    }
    return start;
}

LocalTime startOfCopy(const Series& series, QDate firstDate, const Zone& zone) {
    const int toWeekday = (series.start.date.dayOfWeek() - firstDate.dayOfWeek() + 7) % 7;
    const LocalTime start{firstDate.addDays(toWeekday), series.start.time};
    const Result<Rule> rule = parseRule(series.rule, zone);
    return rule ? firstByRule(*rule, start) : start;
}

}  // namespace

std::vector<Finding> faultsOf(const Series& series, int laneCount) {
    Faults faults(series.title.trimmed().isEmpty() ? series.id.value : series.title);
    faults.add(series.id.isEmpty(), "series.no-id");
    faults.add(series.title.trimmed().isEmpty(), "series.no-title");
    faults.add(series.title.size() > limits::nameLength, "series.title-too-long", {std::int64_t{limits::nameLength}});
    faults.add(series.note.size() > limits::noteLength, "series.note-too-long", {std::int64_t{limits::noteLength}});
    faults.add(series.players < 0, "series.players");
    const Result<Zone> zone = Zone::load(series.zone);
    faults.add(!zone, "series.unknown-zone", {QString::fromUtf8(series.zone)});
    checkTimes(series, faults);
    checkLanes(series, laneCount, faults);
    checkOverrides(series, laneCount, faults);
    if (series.rule.isEmpty()) return faults.found;
    const Result<Rule> rule = parseRule(series.rule, zone ? *zone : Zone());
    if (!rule) faults.found.push_back(rule.error().finding);
    return faults.found;
}

Series copiedToSeason(const Series& series, QDate firstDate, const std::vector<QDate>& holidays, const SeriesId& id) {
    const Result<Zone> loaded = Zone::load(series.zone);
    const Zone zone = loaded ? *loaded : Zone();
    Series copy = series;
    copy.id = id;
    copy.uid = id.value;
    copy.version = 0;
    copy.overrides.clear();
    copy.excludedDates.clear();
    copy.start = startOfCopy(series, firstDate, zone);
    const qint64 days = series.start.date.daysTo(copy.start.date);
    copy.rule = withUntilMoved(series.rule, zone, days);
    for (LocalTime& extra : copy.extraDates)
        extra.date = extra.date.addDays(days);
    for (const QDate& holiday : holidays) {
        const Result<Dates> dates = startsOf(copy, {holiday, holiday});
        if (!dates) break;
        copy.excludedDates.insert(copy.excludedDates.end(), dates->starts.begin(), dates->starts.end());
    }
    return copy;
}

}  // namespace laneward
