#include "core/calendar/recurrence.h"

#include "core/base/limits.h"
#include "core/calendar/expander.h"
#include "core/calendar/rule_syntax.h"

#include <libical/ical.h>

#include <algorithm>
#include <limits>

namespace laneward {

namespace {

constexpr int timesPerDay = 24;

int lengthOf(const short* values, int size) {
    return std::max(1, int(std::find(values, values + size, short{ICAL_RECURRENCE_ARRAY_MAX}) - values));
}

bool isTooFrequent(const icalrecurrencetype& rule) {
    return lengthOf(rule.by_hour, ICAL_BY_HOUR_SIZE) * lengthOf(rule.by_minute, ICAL_BY_MINUTE_SIZE) *
               lengthOf(rule.by_second, ICAL_BY_SECOND_SIZE) >
           timesPerDay;
}

/// UNTIL is inclusive; as a date it means that whole day.
icaltimetype wallTimeOf(icaltimetype until, const Zone& zone) {
    if (icaltime_is_null_time(until)) return until;
    if (until.is_date) {
        until.is_date = 0;
        until.hour = 23;
        until.minute = until.second = 59;
        return until;
    }
    if (!icaltime_is_utc(until)) return until;
    const Instant instant =
        Zone().toInstant({QDate(until.year, until.month, until.day), QTime(until.hour, until.minute, until.second)});
    const LocalTime local = zone.toLocal(instant);
    icaltimetype wall = icaltime_null_time();
    wall.year = local.date.year();
    wall.month = local.date.month();
    wall.day = local.date.day();
    wall.hour = local.time.hour();
    wall.minute = local.time.minute();
    wall.second = local.time.second();
    return wall;
}

LocalTime localTimeOf(const icaltimetype& t) { return {QDate(t.year, t.month, t.day), QTime(t.hour, t.minute, t.second)}; }

/// Collects instances in order until the count, the end of the rule or of the range, or the limit.
class Collector {
public:
    Collector(const icalrecurrencetype& rule, const DateRange& range)
        : m_range(range), m_left(rule.count > 0 ? rule.count : std::numeric_limits<int>::max()) {
        if (!icaltime_is_null_time(rule.until)) m_until = localTimeOf(rule.until);
    }

    /// False when nothing later can be an instance in the range.
    bool take(const LocalTime& t) {
        if (m_left == 0 || (m_until && *m_until < t) || t.date > m_range.last) return false;
        --m_left;
        add(t);
        return !dates.cut;
    }
    /// DTSTART, which is an instance even when the rule has ended before it.
    bool takeStart(const LocalTime& t) {
        --m_left;
        if (t.date <= m_range.last) add(t);
        return t.date <= m_range.last;
    }
    bool isPast(QDate day) const { return m_left == 0 || dates.cut || day > m_range.last || (m_until && m_until->date < day); }

    Dates dates;

private:
    void add(const LocalTime& t) {
        if (t.date < m_range.first) return;
        dates.cut = dates.starts.size() >= size_t(limits::occurrencesPerRule);
        if (!dates.cut) dates.starts.push_back(t);
    }

    DateRange m_range;
    int m_left;
    std::optional<LocalTime> m_until;
};

void sortAndUnite(std::vector<LocalTime>& times) {
    std::sort(times.begin(), times.end());
    times.erase(std::unique(times.begin(), times.end()), times.end());
}

}  // namespace

Result<Rule> parseRule(const QString& text, const Zone& zone) {
    const Outcome syntax = checkRuleSyntax(text);
    if (!syntax) return syntax.error();
    icalrecurrencetype ical = icalrecurrencetype_from_string(text.toUpper().toLatin1().constData());
    if (ical.freq == ICAL_NO_RECURRENCE) return fault(ErrorKind::Invalid, "rule.unreadable", text, {text});
    if (isTooFrequent(ical)) return fault(ErrorKind::Invalid, "rule.too-frequent", text, {QStringLiteral("BYHOUR")});
    if (!Expander::canGiveDates(ical)) return fault(ErrorKind::Invalid, "rule.endless-search", text);
    ical.until = wallTimeOf(ical.until, zone);
    Rule rule;
    rule.m_ical = std::make_shared<const icalrecurrencetype>(ical);
    return rule;
}

Dates datesOf(const Rule& rule, const LocalTime& start, const DateRange& range) {
    Collector found(rule.ical(), range);
    if (range.days() == 0 || !start.isValid() || !found.takeStart(start)) return found.dates;
    const Expander expander(rule.ical(), start);
    // A counted rule has to be followed from its start; any other can begin at the range.
    std::int64_t index = rule.ical().count > 0 ? 0 : expander.periodOf(range.first);
    for (; !found.isPast(expander.firstDay(index)); ++index) {
        for (const LocalTime& t : expander.period(index)) {
            if (start < t && !found.take(t)) break;
        }
    }
    return found.dates;
}

Result<Dates> startsOf(const Series& series, const DateRange& range) {
    Dates all;
    if (series.rule.isEmpty()) {
        if (range.contains(series.start.date)) all.starts.push_back(series.start);
    } else {
        const Result<Zone> zone = Zone::load(series.zone);
        const Result<Rule> rule = parseRule(series.rule, zone ? *zone : Zone());
        if (!rule) return rule.error();
        all = datesOf(*rule, series.start, range);
    }
    for (const LocalTime& extra : series.extraDates) {
        if (range.contains(extra.date)) all.starts.push_back(extra);
    }
    sortAndUnite(all.starts);
    std::vector<LocalTime> excluded = series.excludedDates;
    sortAndUnite(excluded);
    std::erase_if(all.starts, [&](const LocalTime& t) { return std::binary_search(excluded.begin(), excluded.end(), t); });
    return all;
}

}  // namespace laneward
