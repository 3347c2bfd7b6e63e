#include "core/planning/stretch.h"

#include <algorithm>
#include <type_traits>

namespace laneward::planning {

namespace {

/// Writes values one after the other; whatever has a variable length writes its length first.
class Key {
public:
    explicit Key(Instant begin, QDate date) : m_begin(begin), m_date(date) {}

    template <class T>
    requires(std::is_integral_v<T> || std::is_enum_v<T>) Key& operator<<(T value) {
        const auto wide = std::int64_t(value);
        m_text.append(reinterpret_cast<const char*>(&wide), sizeof wide);
        return *this;
    }
    Key& operator<<(const QString& text) {
        *this << text.size();
        m_text.append(reinterpret_cast<const char*>(text.constData()), size_t(text.size()) * sizeof(QChar));
        return *this;
    }
    Key& operator<<(Seconds s) { return *this << s.value; }
    Key& operator<<(Instant t) { return *this << (t - m_begin); }
    Key& operator<<(const Span& s) { return *this << s.begin << s.end; }
    Key& operator<<(const LocalTime& t) { return *this << m_date.daysTo(t.date) << t.time.msecsSinceStartOfDay(); }
    Key& operator<<(const LaneSet& lanes) {
        static_assert(std::has_unique_object_representations_v<LaneSet>);
        m_text.append(reinterpret_cast<const char*>(&lanes), sizeof lanes);
        return *this;
    }
    Key& operator<<(const std::optional<PatternId>& pattern) {
        *this << pattern.has_value();
        return pattern ? *this << pattern->value : *this;
    }

    std::string take() { return std::move(m_text); }

private:
    Instant m_begin;
    QDate m_date;
    std::string m_text;
};

void put(Key& key, const Occurrence& o) {
    key << o.series.value << o.original << o.title << o.kind << o.booked << o.cleared << o.lanes << o.settle;
    key << o.firstPairTwice << o.noStaff << o.demands.size();
    for (const SurfaceDemand& d : o.demands)
        key << d.lanes << d.kind << d.pattern << d.least << d.longestAge << d.longestPlay;
}

/// Outages as far as they reach into `seen`.
void putOutages(Key& key, const Centre& centre, const Span& seen) {
    for (const Outage& outage : centre.outages) {
        const Span time{std::max(outage.begin, seen.begin), outage.end ? std::min(*outage.end, seen.end) : seen.end};
        if (time.isEmpty()) continue;
        key << outage.lanes << outage.machine.has_value() << (outage.machine ? outage.machine->value : QString()) << time;
    }
}

void putShifts(Key& key, const Centre& centre, const DateRange& range) {
    for (QDate date = range.first; date <= range.last; date = date.addDays(1)) {
        const std::vector<ShiftSpan> shifts = shiftsOn(centre, date);
        key << dayOf(centre, date).begin << shifts.size();
        for (const ShiftSpan& shift : shifts)
            key << shift.shift.value << shift.work << shift.allowance << shift.people;
    }
}

}  // namespace

std::string keyOf(const StretchTask& task) {
    const Stretch& stretch = task.stretch;
    const DateRange seen{stretch.days.first, stretch.sight};
    const Centre& centre = task.state.centre;
    const Instant begin = dayOf(centre, seen.first).begin;
    if (task.now >= begin || !committedAround(task.state, seen).empty()) return {};
    Key key(begin, seen.first);
    key << seen.days() << stretch.days.days();
    putShifts(key, centre, {seen.first.addDays(-1), seen.last.addDays(1)});
    Span whole{begin, dayOf(centre, seen.last).end};
    for (const Occurrence& o : task.occupancy.occurrences)
        whole.begin = std::min(whole.begin, o.booked.begin);
    putOutages(key, centre, whole);
    key << task.occupancy.occurrences.size();
    for (const Occurrence& o : task.occupancy.occurrences)
        put(key, o);
    key << task.before.lanes.size();
    for (const LaneTreatment& t : task.before.lanes)
        key << t.lane << t.treatment << t.pattern << t.end;
    for (std::int64_t left : task.before.dutyLeft)
        key << left;
    return key.take() + task.before.next;
}

}  // namespace laneward::planning
