#include "core/calendar/ics_event.h"

#include "core/base/limits.h"
#include "core/calendar/ics_lane_properties.h"

namespace laneward {

namespace {

/// Reads the properties of one event; members hold what can only be judged when all of them are known.
class EventReader {
public:
    EventReader(int begin, IcsContext& context) : m_context(context) {
        m_event.line = begin;
        m_event.series.demands.clear();
    }

    Outcome take(const IcsLine& line);
    Result<IcsEvent> finish();

private:
    using Taker = Outcome (EventReader::*)(const IcsLine&);
    struct Entry {
        Taker take;
        bool repeats;
    };
    static const QHash<QByteArray, Entry>& table();

    Outcome takeUid(const IcsLine& line);
    Outcome takeSummary(const IcsLine& line);
    Outcome takeDescription(const IcsLine& line);
    Outcome takeStart(const IcsLine& line) { return takeMoment(line, m_start); }
    Outcome takeEnd(const IcsLine& line) { return takeMoment(line, m_end); }
    Outcome takeDuration(const IcsLine& line);
    Outcome takeRule(const IcsLine& line);
    Outcome takeExtra(const IcsLine& line);
    Outcome takeExcluded(const IcsLine& line);
    Outcome takeOriginal(const IcsLine& line);
    Outcome takeStatus(const IcsLine& line);
    Outcome takeResources(const IcsLine& line);
    Outcome takeChanged(const IcsLine& line);
    Outcome refuse(const IcsLine& line);
    Outcome skip(const IcsLine&) { return Nothing{}; }

    Outcome takeMoment(const IcsLine& line, std::optional<IcsMoment>& to);
    QString limited(const QString& text, int length, const IcsLine& line);
    Outcome finishTimes();
    Outcome finishLanes();
    void finishDates();

    struct Period {
        IcsMoment start;
        Seconds length;
    };
    Result<Period> periodOf(const IcsLine& line, const QByteArray& value);

    IcsContext& m_context;
    IcsEvent m_event;
    QSet<QByteArray> m_seen;
    std::optional<IcsMoment> m_start;
    std::optional<IcsMoment> m_end;
    std::optional<Seconds> m_length;
    std::vector<IcsMoment> m_extra;
    std::vector<IcsMoment> m_excluded;
    std::vector<Period> m_periods;
    bool m_hasLaneProperties = false;
};

const QHash<QByteArray, EventReader::Entry>& EventReader::table() {
    static const QHash<QByteArray, Entry> entries{
        {"UID", {&EventReader::takeUid, false}},
        {"SUMMARY", {&EventReader::takeSummary, false}},
        {"DESCRIPTION", {&EventReader::takeDescription, false}},
        {"DTSTART", {&EventReader::takeStart, false}},
        {"DTEND", {&EventReader::takeEnd, false}},
        {"DURATION", {&EventReader::takeDuration, false}},
        {"RRULE", {&EventReader::takeRule, false}},
        {"RDATE", {&EventReader::takeExtra, true}},
        {"EXDATE", {&EventReader::takeExcluded, true}},
        {"RECURRENCE-ID", {&EventReader::takeOriginal, false}},
        {"STATUS", {&EventReader::takeStatus, false}},
        {"RESOURCES", {&EventReader::takeResources, true}},
        {"X-LANEWARD-CHANGED", {&EventReader::takeChanged, false}},
        {"EXRULE", {&EventReader::refuse, true}},
        // Bookkeeping of calendars, without meaning for the lanes.
        {"DTSTAMP", {&EventReader::skip, true}},
        {"CREATED", {&EventReader::skip, true}},
        {"LAST-MODIFIED", {&EventReader::skip, true}},
        {"SEQUENCE", {&EventReader::skip, true}},
        {"TRANSP", {&EventReader::skip, true}},
        {"CLASS", {&EventReader::skip, true}},
    };
    return entries;
}

Outcome EventReader::take(const IcsLine& line) {
    const auto entry = table().constFind(line.name);
    if (entry == table().constEnd()) {
        if (!line.name.startsWith("X-LANEWARD-")) {
            m_context.note(Severity::Note, "ics.unsupported-property", line.number, QString::fromLatin1(line.name));
            return Nothing{};
        }
        if (!m_hasLaneProperties) m_event.series.kind = EventKind::Other;
        m_hasLaneProperties = true;
        return takeLaneProperty(line, m_context, m_event.series);
    }
    if (!entry->repeats && m_seen.contains(line.name)) {
        return m_context.error("ics.duplicate-property", line.number, {QString::fromLatin1(line.name)});
    }
    m_seen.insert(line.name);
    return (this->*entry->take)(line);
}

Outcome EventReader::takeUid(const IcsLine& line) {
    m_event.series.uid = unescapedText(line.value).trimmed();
    return Nothing{};
}

QString EventReader::limited(const QString& text, int length, const IcsLine& line) {
    if (text.size() > length) m_context.note(Severity::Warning, "ics.text-cut", line.number, QString::fromLatin1(line.name));
    const bool splitsPair = text.size() > length && text[length - 1].isHighSurrogate();
    return text.left(splitsPair ? length - 1 : length);
}

Outcome EventReader::takeSummary(const IcsLine& line) {
    m_event.series.title = limited(unescapedText(line.value), limits::nameLength, line);
    return Nothing{};
}

Outcome EventReader::takeDescription(const IcsLine& line) {
    m_event.series.note = limited(unescapedText(line.value), limits::noteLength, line);
    return Nothing{};
}

Outcome EventReader::takeMoment(const IcsLine& line, std::optional<IcsMoment>& to) {
    const Result<IcsMoment> moment = momentOf(line, line.value, m_context);
    if (!moment) return moment.error();
    to = *moment;
    return Nothing{};
}

Outcome EventReader::takeDuration(const IcsLine& line) {
    m_length = durationFrom(line.value);
    if (m_length) return Nothing{};
    return m_context.error("ics.bad-value", line.number, {QStringLiteral("DURATION"), QString::fromUtf8(line.value.left(80))});
}

Outcome EventReader::takeRule(const IcsLine& line) {
    m_event.series.rule = QString::fromUtf8(line.value);
    return Nothing{};
}

Result<EventReader::Period> EventReader::periodOf(const IcsLine& line, const QByteArray& value) {
    const qsizetype slash = value.indexOf('/');
    const Result<IcsMoment> start = momentOf(line, value.left(std::max<qsizetype>(0, slash)), m_context);
    if (!start) return start.error();
    const QByteArray rest = value.mid(slash + 1);
    if (const std::optional<Seconds> length = durationFrom(rest)) return Period{*start, *length};
    const Result<IcsMoment> end = momentOf(line, rest, m_context);
    if (!end) return end.error();
    return Period{*start, end->instant() - start->instant()};
}

Outcome EventReader::takeExtra(const IcsLine& line) {
    const bool periods = line.parameter("VALUE").toUpper() == "PERIOD";
    for (const QByteArray& value : line.value.split(',')) {
        if (periods) {
            const Result<Period> period = periodOf(line, value);
            if (!period) return period.error();
            if (period->length <= Seconds{0}) return m_context.error("ics.end-before-start", line.number);
            m_periods.push_back(*period);
            continue;
        }
        const Result<IcsMoment> moment = momentOf(line, value, m_context);
        if (!moment) return moment.error();
        m_extra.push_back(*moment);
    }
    return Nothing{};
}

Outcome EventReader::takeExcluded(const IcsLine& line) {
    for (const QByteArray& value : line.value.split(',')) {
        const Result<IcsMoment> moment = momentOf(line, value, m_context);
        if (!moment) return moment.error();
        m_excluded.push_back(*moment);
    }
    return Nothing{};
}

Outcome EventReader::takeOriginal(const IcsLine& line) {
    // "This and all later ones" would have to split the series; reading it as one date would show wrong events.
    if (!line.parameter("RANGE").isEmpty()) return m_context.error("ics.this-and-future", line.number);
    return takeMoment(line, m_event.original);
}

Outcome EventReader::takeStatus(const IcsLine& line) {
    m_event.series.cancelled = line.value.trimmed().toUpper() == "CANCELLED";
    return Nothing{};
}

Outcome EventReader::takeResources(const IcsLine& line) { return addLanes(line, m_context, m_event.series.lanes); }

Outcome EventReader::takeChanged(const IcsLine& line) {
    m_event.changed = line.value.toUpper().split(',');
    return Nothing{};
}

Outcome EventReader::refuse(const IcsLine& line) {
    return m_context.error("ics.unsupported-rule", line.number, {QString::fromLatin1(line.name)});
}

Outcome EventReader::finishTimes() {
    Series& s = m_event.series;
    if (!m_start) return m_context.error("ics.no-start", m_event.line);
    if (m_start->dateOnly) m_context.note(Severity::Note, "ics.all-day", m_event.line, QString::fromUtf8(m_start->zone));
    s.start = m_start->local;
    s.zone = m_start->zone;
    if (m_length) {
        s.duration = *m_length;
    } else if (m_end && m_start->dateOnly) {
        s.duration = hours(24) * m_start->local.date.daysTo(m_end->local.date);
    } else if (m_end) {
        s.duration = m_end->instant() - m_start->instant();
    } else if (m_start->dateOnly) {
        s.duration = hours(24);
    } else if (m_event.original) {
        m_event.hasLength = false;  // an override may leave the length to its series
    } else {
        return m_context.error("ics.no-end", m_event.line);
    }
    if (s.duration <= Seconds{0}) return m_context.error("ics.end-before-start", m_event.line);
    return Nothing{};
}

Outcome EventReader::finishLanes() {
    Series& s = m_event.series;
    m_event.namesLanes = !s.lanes.isEmpty();
    if (!m_hasLaneProperties) {
        s.kind = m_context.mapping.kind;
        s.demands = m_context.mapping.demands;
        if (!m_event.namesLanes) s.lanes = m_context.mapping.lanes;
    }
    if (s.lanes.isEmpty() && s.kind != EventKind::Closure && !m_event.original) {
        return m_context.error("ics.no-lanes", m_event.line);
    }
    for (SurfaceDemand& demand : s.demands) {
        if (demand.lanes.isEmpty()) demand.lanes = s.lanes;
        if (!m_hasLaneProperties) demand.lanes = demand.lanes & s.lanes;
    }
    if (!m_hasLaneProperties) std::erase_if(s.demands, [](const SurfaceDemand& demand) { return demand.lanes.isEmpty(); });
    return Nothing{};
}

void EventReader::finishDates() {
    Series& s = m_event.series;
    for (const IcsMoment& extra : m_extra)
        s.extraDates.push_back(extra.in(s.zone, s.start.time));
    for (const IcsMoment& excluded : m_excluded)
        s.excludedDates.push_back(excluded.in(s.zone, s.start.time));
    for (const Period& period : m_periods) {
        const LocalTime start = period.start.in(s.zone, s.start.time);
        s.extraDates.push_back(start);
        if (period.length == s.duration) continue;
        Override change;
        change.original = start;
        change.duration = period.length;
        m_event.ofPeriods.push_back(change);
    }
}

Result<IcsEvent> EventReader::finish() {
    Series& s = m_event.series;
    if (s.uid.isEmpty()) return m_context.error("ics.no-uid", m_event.line);
    if (s.title.trimmed().isEmpty() && !m_event.original) return m_context.error("ics.no-title", m_event.line);
    s.id = SeriesId{s.uid};
    const Outcome times = finishTimes();
    if (!times) return times.error();
    const Outcome lanes = finishLanes();
    if (!lanes) return lanes.error();
    finishDates();
    return std::move(m_event);
}

}  // namespace

Result<IcsEvent> readEvent(const std::vector<IcsLine>& lines, int begin, IcsContext& context) {
    EventReader reader(begin, context);
    for (const IcsLine& line : lines) {
        const Outcome taken = reader.take(line);
        if (!taken) return taken.error();
    }
    return reader.finish();
}

Override overrideFrom(const IcsEvent& event, const Series& master) {
    const Series& own = event.series;
    Override change;
    change.original = event.original->in(master.zone, master.start.time);
    change.cancelled = own.cancelled;
    const LocalTime start = IcsMoment{own.start, own.zone, false}.in(master.zone, own.start.time);
    const auto differs = [&](const char* field, bool byComparison) {
        return event.changed ? event.changed->contains(field) : byComparison;
    };
    if (differs("START", start != change.original)) change.start = start;
    if (differs("DURATION", event.hasLength && own.duration != master.duration)) change.duration = own.duration;
    if (differs("TITLE", !own.title.trimmed().isEmpty() && own.title != master.title)) change.title = own.title;
    if (differs("LANES", event.namesLanes && own.lanes != master.lanes)) change.lanes = own.lanes;
    return change;
}

}  // namespace laneward
