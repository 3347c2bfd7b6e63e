#include "core/base/limits.h"
#include "core/calendar/icalendar.h"
#include "core/calendar/ics_event.h"

#include <map>
#include <set>

// The structure is read here rather than by libical: 200,000 nested components overflow libical's stack, it keeps no line
// numbers, and it accepts what an import has to refuse.

namespace laneward {

namespace {

struct Open {
    QByteArray name;
    int line = 0;
};

/// Follows BEGIN and END.
class Nesting {
public:
    explicit Nesting(QString file) : m_file(std::move(file)) {}

    /// Errors: "ics.not-calendar", "ics.too-deep", "ics.bad-nesting", "ics.too-many".
    Outcome follow(const IcsLine& line);
    Outcome finish() const;
    bool isIn(const char* component) const { return m_open.size() == 2 && m_open.back().name == component; }
    size_t depth() const { return m_open.size(); }
    const Open& inner() const { return m_open.back(); }

private:
    Error broken(const char* rule, int line, std::vector<Value> values = {}) const {
        return fault(ErrorKind::Invalid, rule, placeIn(m_file, line), std::move(values));
    }

    QString m_file;
    std::vector<Open> m_open;
    bool m_any = false;
    std::int64_t m_records = 0;
};

Outcome Nesting::follow(const IcsLine& line) {
    const QByteArray name = line.value.trimmed().toUpper();
    if (line.name == "BEGIN") {
        if (m_open.empty() != (name == "VCALENDAR")) return broken("ics.not-calendar", line.number);
        if (m_open.size() == size_t(limits::importDepth))
            return broken("ics.too-deep", line.number, {std::int64_t{limits::importDepth}});
        if (++m_records > limits::importRows) return broken("ics.too-many", line.number, {limits::importRows});
        m_open.push_back({name, line.number});
        m_any = true;
    } else if (m_open.empty()) {
        return broken("ics.not-calendar", line.number);
    } else if (line.name == "END") {
        if (m_open.back().name != name) {
            return broken("ics.bad-nesting", line.number,
                          {QString::fromUtf8(m_open.back().name), std::int64_t{m_open.back().line}});
        }
        m_open.pop_back();
    }
    return Nothing{};
}

Outcome Nesting::finish() const {
    if (!m_any) return broken("ics.not-calendar", 1);
    if (m_open.empty()) return Nothing{};
    return broken("ics.truncated", m_open.back().line, {QString::fromUtf8(m_open.back().name)});
}

/// Collects the series of a file and joins overrides to them.
class Collection {
public:
    explicit Collection(IcsContext& context) : m_context(context) {}

    Outcome add(IcsEvent event);
    /// Errors: those of faultsOf(), at the event's line.
    Result<std::vector<Series>> finish();

private:
    Outcome join(const IcsEvent& event);
    Outcome addOverride(Series& series, Override change, int line);

    IcsContext& m_context;
    std::vector<IcsEvent> m_series;
    std::vector<IcsEvent> m_overrides;
    std::map<QString, size_t> m_byUid;
    std::set<std::pair<QString, LocalTime>> m_changed;
};

Outcome Collection::add(IcsEvent event) {
    if (event.original) {
        m_overrides.push_back(std::move(event));
        return Nothing{};
    }
    if (!m_byUid.emplace(event.series.uid, m_series.size()).second) {
        return m_context.error("ics.duplicate-uid", event.line, {event.series.uid.left(80)});
    }
    m_series.push_back(std::move(event));
    return Nothing{};
}

Outcome Collection::addOverride(Series& series, Override change, int line) {
    if (!m_changed.emplace(series.uid, change.original).second) {
        return m_context.error("ics.duplicate-uid", line, {series.uid.left(80)});
    }
    series.overrides.push_back(std::move(change));
    return Nothing{};
}

Outcome Collection::join(const IcsEvent& event) {
    const auto master = m_byUid.find(event.series.uid);
    if (master != m_byUid.end()) {
        Series& series = m_series[master->second].series;
        return addOverride(series, overrideFrom(event, series), event.line);
    }
    // One date of a series that the file does not hold, as invitations send it: an event of its own.
    if (event.series.title.trimmed().isEmpty()) return m_context.error("ics.no-title", event.line);
    if (!event.hasLength) return m_context.error("ics.no-end", event.line);
    m_context.note(Severity::Note, "ics.single-date", event.line, event.series.uid.left(80));
    IcsEvent single = event;
    const LocalTime original = event.original->in(event.series.zone, event.series.start.time);
    single.series.uid += QLatin1Char('/') + QString::fromLatin1(dateTimeValue(original));
    single.series.id = SeriesId{single.series.uid};
    single.original.reset();
    return add(std::move(single));
}

Result<std::vector<Series>> Collection::finish() {
    for (const IcsEvent& event : m_overrides) {
        const Outcome joined = join(event);
        if (!joined) return joined.error();
    }
    std::vector<Series> all;
    for (IcsEvent& event : m_series) {
        for (Override& change : event.ofPeriods) {
            const Outcome added = addOverride(event.series, std::move(change), event.line);
            if (!added) return added.error();
        }
        const std::vector<Finding> faults = faultsOf(event.series, m_context.laneCount);
        if (!faults.empty()) return m_context.error(faults.front().rule.constData(), event.line, faults.front().values);
        all.push_back(std::move(event.series));
    }
    return all;
}

/// First pass: limits, characters, structure, and the locations that VTIMEZONE components name for their TZID.
Outcome checkStructure(const QByteArray& bytes, const QString& name, IcsContext& context) {
    IcsLines lines(bytes, name);
    Nesting nesting(name);
    QByteArray tzid;
    for (;;) {
        const Result<std::optional<IcsLine>> line = lines.next();
        if (!line) return line.error();
        if (!*line) return nesting.finish();
        const Outcome followed = nesting.follow(**line);
        if (!followed) return followed.error();
        if (!nesting.isIn("VTIMEZONE")) continue;
        if ((*line)->name == "BEGIN") tzid.clear();
        if ((*line)->name == "TZID") tzid = (*line)->value;
        if ((*line)->name == "X-LIC-LOCATION" && !tzid.isEmpty()) context.locations[tzid] = (*line)->value;
    }
}

/// Second pass over a sound structure: every VEVENT of the first level becomes an event, other components are noted.
Outcome readEvents(const QByteArray& bytes, const QString& name, IcsContext& context, Collection& events) {
    IcsLines lines(bytes, name);
    Nesting nesting(name);
    std::vector<IcsLine> properties;
    for (;;) {
        Result<std::optional<IcsLine>> next = lines.next();
        if (!next) return next.error();
        if (!*next) return Nothing{};
        IcsLine& line = **next;
        const bool wasEvent = nesting.isIn("VEVENT");
        const int begun = wasEvent ? nesting.inner().line : 0;
        const Outcome followed = nesting.follow(line);
        if (!followed) return followed.error();
        if (line.name == "BEGIN") {
            if (nesting.depth() != 2) continue;
            properties.clear();
            if (!nesting.isIn("VEVENT") && !nesting.isIn("VTIMEZONE")) {
                context.note(Severity::Note, "ics.skipped-component", line.number, QString::fromUtf8(nesting.inner().name));
            }
        } else if (wasEvent && line.name == "END") {
            Result<IcsEvent> event = readEvent(properties, begun, context);
            if (!event) return event.error();
            const Outcome added = events.add(std::move(*event));
            if (!added) return added.error();
        } else if (wasEvent) {
            properties.push_back(std::move(line));
        }
    }
}

}  // namespace

Result<IcsContents> readIcs(const QByteArray& bytes, const QString& name, const IcsMapping& mapping, const QByteArray& centreZone,
                            int laneCount) {
    if (bytes.size() > limits::importBytes) return fault(ErrorKind::Invalid, "ics.too-large", name, {limits::importBytes});
    IcsContext context(name, mapping, centreZone, laneCount);
    const Outcome sound = checkStructure(bytes, name, context);
    if (!sound) return sound.error();
    Collection events(context);
    const Outcome read = readEvents(bytes, name, context, events);
    if (!read) return read.error();
    Result<std::vector<Series>> series = events.finish();
    if (!series) return series.error();
    return IcsContents{std::move(*series), std::move(context.notes)};
}

}  // namespace laneward
