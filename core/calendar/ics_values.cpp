#include "core/calendar/ics_values.h"

#include <QRegularExpression>
#include <QTimeZone>

namespace laneward {

namespace {

/// The number in `digits` characters from `at`, or -1.
int number(const QByteArray& text, qsizetype at, int digits) {
    int n = 0;
    for (qsizetype i = at; i < at + digits; ++i) {
        if (i >= text.size() || text[i] < '0' || text[i] > '9') return -1;
        n = 10 * n + (text[i] - '0');
    }
    return n;
}

bool isZone(const QByteArray& id) { return bool(Zone::load(id)); }

}  // namespace

IcsContext::IcsContext(QString file, const IcsMapping& mapping_, const QByteArray& centreZone, int laneCount_)
    : mapping(mapping_),
      fallbackZone(isZone(mapping_.zone) ? mapping_.zone : centreZone),
      laneCount(laneCount_),
      m_file(std::move(file)) {}

Error IcsContext::error(const char* rule, int line, std::vector<Value> values) const {
    return fault(ErrorKind::Invalid, rule, placeIn(m_file, line), std::move(values));
}

void IcsContext::note(Severity severity, const char* rule, int line, const QString& about) {
    const QByteArray key = QByteArray(rule) + ' ' + about.toUtf8();
    if (m_noted.contains(key)) return;
    m_noted.insert(key);
    notes.push_back({severity, rule, placeIn(m_file, line), {about}});
}

QByteArray IcsContext::zoneNamed(const QByteArray& tzid, int line) {
    if (const Result<Zone> zone = Zone::load(tzid)) return zone->id();
    const QByteArray alias = QTimeZone::windowsIdToDefaultIanaId(tzid);
    for (const QByteArray& candidate : {locations.value(tzid), alias}) {
        if (candidate.isEmpty() || !isZone(candidate)) continue;
        note(Severity::Note, "ics.zone-read-as", line,
             QStringLiteral("%1 = %2").arg(QString::fromUtf8(tzid), QString::fromUtf8(candidate)));
        return Zone::load(candidate)->id();
    }
    note(Severity::Warning, "ics.unknown-zone", line, QString::fromUtf8(tzid));
    return fallbackZone;
}

LocalTime IcsMoment::in(const QByteArray& other, QTime timeOfDay) const {
    if (dateOnly) return {local.date, timeOfDay};
    if (zone == other) return local;
    const Result<Zone> target = Zone::load(other);
    return target ? target->toLocal(instant()) : local;
}

Instant IcsMoment::instant() const {
    const Result<Zone> own = Zone::load(zone);
    return (own ? *own : Zone()).toInstant(local);
}

Result<IcsMoment> momentOf(const IcsLine& line, const QByteArray& value, IcsContext& context) {
    const Error bad =
        context.error("ics.bad-value", line.number, {QString::fromUtf8(line.name), QString::fromUtf8(value.left(80))});
    IcsMoment moment;
    moment.local = {QDate(number(value, 0, 4), number(value, 4, 2), number(value, 6, 2)), QTime(0, 0)};
    if (!moment.local.date.isValid() || moment.local.date.year() < 1) return bad;
    moment.zone = context.fallbackZone;
    moment.dateOnly = value.size() == 8;
    if (moment.dateOnly) return moment;
    const bool utc = value.endsWith('Z');
    // A leap second, 60, is read as 59 (RFC 5545, section 3.3.12, lets a system without them do so).
    moment.local.time = QTime(number(value, 9, 2), number(value, 11, 2), std::min(number(value, 13, 2), 59));
    if (value[8] != 'T' || value.size() != (utc ? 16 : 15) || !moment.local.time.isValid()) return bad;
    const QByteArray tzid = line.parameter("TZID");
    if (utc) {
        moment.zone = "UTC";
    } else if (!tzid.isEmpty()) {
        moment.zone = context.zoneNamed(tzid, line.number);
    } else {
        context.note(Severity::Note, "ics.floating-time", line.number, QString::fromUtf8(context.fallbackZone));
    }
    return moment;
}

std::optional<Seconds> durationFrom(const QByteArray& value) {
    static const QRegularExpression form(QStringLiteral(
        "^([+-])?P(?:([0-9]{1,9})W|(?:([0-9]{1,9})D)?(?:T(?=[0-9])(?:([0-9]{1,9})H)?(?:([0-9]{1,9})M)?(?:([0-9]{1,9})S)?)?)$"));
    const QRegularExpressionMatch match = form.match(QString::fromLatin1(value));
    if (!match.hasMatch() || value.endsWith('P')) return std::nullopt;
    const auto part = [&](int n) { return match.captured(n).toLongLong(); };
    const Seconds length{part(2) * 604'800 + part(3) * 86'400 + part(4) * 3'600 + part(5) * 60 + part(6)};
    return match.captured(1) == QLatin1String("-") ? -length : length;
}

QByteArray durationValue(Seconds duration) {
    const qint64 s = qAbs(duration.value);
    QByteArray text = duration.value < 0 ? "-PT" : "PT";
    if (s >= 3'600) text += QByteArray::number(s / 3'600) + 'H';
    if (s % 3'600 >= 60 || (s >= 3'600 && s % 60 != 0)) text += QByteArray::number(s % 3'600 / 60) + 'M';
    if (s % 60 != 0 || s == 0) text += QByteArray::number(s % 60) + 'S';
    return text;
}

QByteArray dateTimeValue(const LocalTime& t) {
    return (t.date.toString(QStringLiteral("yyyyMMdd")) + QLatin1Char('T') + t.time.toString(QStringLiteral("HHmmss")))
        .toLatin1();
}

QByteArray resourcesValue(const LaneSet& lanes) {
    QByteArrayList values;
    for (const QString& run : lanes.text().split(QStringLiteral(", "), Qt::SkipEmptyParts))
        values << (run.contains(QLatin1Char('-')) ? "LANES " : "LANE ") + run.toLatin1();
    return values.join(',');
}

Outcome addLanes(const IcsLine& line, IcsContext& context, LaneSet& lanes) {
    static const QRegularExpression form(QStringLiteral("^LANES?\\s+(.*)$"), QRegularExpression::CaseInsensitiveOption);
    for (const QByteArray& value : splitEscaped(line.value, ',')) {
        const QString resource = unescapedText(value).trimmed();
        const QRegularExpressionMatch match = form.match(resource);
        if (!match.hasMatch()) {
            context.note(Severity::Note, "ics.other-resource", line.number, resource.left(80));
            continue;
        }
        const Result<LaneSet> named = LaneSet::parse(match.captured(1));
        const bool unreadable = named ? named->isEmpty() : named.error().finding.rule == "lanes.unreadable";
        if (unreadable) return context.error("ics.bad-value", line.number, {QStringLiteral("RESOURCES"), resource.left(80)});
        if (!named || named->last() > context.laneCount) {
            return context.error("ics.lane-unknown", line.number, {resource.left(80), std::int64_t{context.laneCount}});
        }
        lanes = lanes | *named;
    }
    return Nothing{};
}

}  // namespace laneward
