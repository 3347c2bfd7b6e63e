#include "core/calendar/occurrences.h"

#include "core/calendar/conflicts.h"
#include "core/calendar/recurrence.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace laneward {

namespace {

/// What one series needs to become occurrences.
struct Context {
    const Series& series;
    const Centre& centre;
    Zone zone;
    std::vector<Finding>& findings;
    LaneSet beyond = {};  ///< lanes asked for that the centre does not have
};

void add(Context& c, Severity severity, const char* rule, std::vector<Value> values = {}) {
    c.findings.push_back({severity, rule, c.series.title, std::move(values)});
}

/// The lanes of one occurrence; a closure that names none closes the house.
LaneSet lanesOf(Context& c, const Override* change) {
    LaneSet lanes = change && change->lanes ? *change->lanes : c.series.lanes;
    const LaneSet all = allLanes(c.centre);
    if (lanes.isEmpty() && c.series.kind == EventKind::Closure) return all;
    c.beyond = c.beyond | (lanes - all);
    return lanes & all;
}

std::vector<SurfaceDemand> demandsOf(const Series& series, const LaneSet& lanes, bool otherLanes) {
    std::vector<SurfaceDemand> demands;
    for (SurfaceDemand demand : series.demands) {
        const bool forAll = otherLanes && series.demands.size() == 1;
        demand.lanes = forAll ? lanes : demand.lanes & lanes;
        if (!demand.lanes.isEmpty()) demands.push_back(std::move(demand));
    }
    return demands;
}

Occurrence occurrenceOf(Context& c, const LocalTime& original, const Override* change) {
    const Series& s = c.series;
    Occurrence o;
    o.series = s.id;
    o.original = original;
    o.title = change && change->title ? *change->title : s.title;
    o.kind = s.kind;
    const Instant begin = c.zone.toInstant(change && change->start ? *change->start : original);
    o.booked = {begin, begin + (change && change->duration ? *change->duration : s.duration)};
    // Nobody plays in a closure, so nothing has to be cleared after it.
    o.cleared = s.kind == EventKind::Closure ? o.booked.end : o.booked.end + s.clearing;
    o.lanes = lanesOf(c, change);
    o.demands = demandsOf(s, o.lanes, change && change->lanes);
    o.settle = s.settle;
    o.firstPairTwice = s.firstPairTwice;
    o.noStaff = s.noStaff;
    o.players = s.players;
    return o;
}

Seconds longestPlay(const Series& series) {
    Seconds longest = series.duration;
    for (const Override& change : series.overrides)
        longest = std::max(longest, change.duration.value_or(Seconds{}));
    return longest + std::max(series.clearing, Seconds{});
}

/// Starts outside `near` whose instance was moved into `span`.
std::vector<LocalTime> movedIn(const Context& c, const Span& span, const DateRange& near) {
    std::vector<LocalTime> originals;
    for (const Override& change : c.series.overrides) {
        if (!change.start || change.cancelled || near.contains(change.original.date)) continue;
        const Instant begin = c.zone.toInstant(*change.start);
        if (!span.overlaps({begin, begin + longestPlay(c.series)})) continue;
        const Result<Dates> given = startsOf(c.series, {change.original.date, change.original.date});
        if (!given) continue;
        const std::vector<LocalTime>& starts = given->starts;
        if (std::find(starts.begin(), starts.end(), change.original) != starts.end()) originals.push_back(change.original);
    }
    return originals;
}

using Changes = std::map<LocalTime, const Override*>;

void reportStrangeOverrides(Context& c, const std::vector<LocalTime>& starts, const Changes& changes, const DateRange& days) {
    for (const auto& [original, change] : changes) {
        if (!days.contains(original.date) || change->cancelled) continue;
        if (std::binary_search(starts.begin(), starts.end(), original)) continue;
        add(c, Severity::Warning, "calendar.override-unmatched", {c.zone.toInstant(original)});
    }
}

std::vector<Occurrence> expanded(Context& c, const Span& span) {
    // A zone may be a day ahead or behind, and play that began earlier may last into the span.
    const int reach = int((longestPlay(c.series).value + hours(24).value - 1) / hours(24).value);
    const DateRange near{c.zone.toLocal(span.begin).date.addDays(-reach - 1), c.zone.toLocal(span.end).date.addDays(1)};
    Result<Dates> dates = startsOf(c.series, near);
    if (!dates) {
        c.findings.push_back(dates.error().finding);
        c.findings.back().subject = c.series.title;
        return {};
    }
    if (dates->cut) add(c, Severity::Warning, "calendar.cut", {std::int64_t{limits::occurrencesPerRule}});
    Changes changes;
    for (const Override& change : c.series.overrides)
        changes[change.original] = &change;
    reportStrangeOverrides(c, dates->starts, changes, near);
    for (const LocalTime& original : movedIn(c, span, near))
        dates->starts.push_back(original);
    std::vector<Occurrence> found;
    std::set<Instant> begins;
    for (const LocalTime& start : dates->starts) {
        const auto change = changes.find(start);
        const Override* override = change == changes.end() ? nullptr : change->second;
        if (override && override->cancelled) continue;
        Occurrence o = occurrenceOf(c, start, override);
        // Where a date was skipped (Pacific/Apia, 30 December 2011) its instance falls on the next day's: one of them is enough.
        if (o.play().overlaps(span) && (override || begins.insert(o.booked.begin).second)) found.push_back(std::move(o));
    }
    return found;
}

std::vector<Occurrence> occurrencesOf(const Series& series, const Centre& centre, const Span& span,
                                      std::vector<Finding>& findings) {
    if (series.cancelled) return {};
    const Result<Zone> zone = Zone::load(series.zone);
    Context c{series, centre, zone ? *zone : zoneOf(centre), findings};
    if (!zone) add(c, Severity::Warning, "calendar.unknown-zone", {QString::fromUtf8(series.zone)});
    std::vector<Occurrence> found = expanded(c, span);
    if (!c.beyond.isEmpty()) add(c, Severity::Warning, "calendar.lanes-beyond", {c.beyond.text()});
    return found;
}

bool comesBefore(const Occurrence& a, const Occurrence& b) {
    if (a.booked.begin != b.booked.begin) return a.booked.begin < b.booked.begin;
    if (const int lane = a.lanes.first(), other = b.lanes.first(); lane != other) return lane < other;
    return std::tie(a.series, a.original) < std::tie(b.series, b.original);
}

/// The first of `closures`, which are in order of their start, that closes a lane of `play` during it.
const Occurrence* closureOf(const Occurrence& play, const std::vector<Occurrence>& closures, Seconds longestClosure) {
    const Instant earliest = play.booked.begin - longestClosure;
    auto closure = std::lower_bound(closures.begin(), closures.end(), earliest,
                                    [](const Occurrence& o, Instant t) { return o.booked.begin < t; });
    for (; closure != closures.end() && closure->booked.begin < play.booked.end; ++closure) {
        if (closure->booked.overlaps(play.booked) && closure->lanes.intersects(play.lanes)) return &*closure;
    }
    return nullptr;
}

void applyClosures(const std::vector<Occurrence>& closures, const std::set<SeriesId>& yielding, std::vector<Occurrence>& plays,
                   std::vector<Finding>& findings) {
    Seconds longest;
    for (const Occurrence& closure : closures)
        longest = std::max(longest, closure.booked.length());
    std::erase_if(plays, [&](const Occurrence& play) {
        const Occurrence* closure = yielding.contains(play.series) ? closureOf(play, closures, longest) : nullptr;
        if (!closure) return false;
        findings.push_back({Severity::Note, "calendar.suppressed", play.title, {play.booked.begin, closure->title}});
        return true;
    });
}

Span spanOf(const Centre& centre, const DateRange& range) {
    return {dayOf(centre, range.first).begin, dayOf(centre, range.last).end};
}

/// All series of one sort (closures or not), sorted.
std::vector<Occurrence> all(const std::vector<const Series*>& series, const Centre& centre, const Span& span,
                            std::vector<Finding>& findings) {
    std::vector<Occurrence> found;
    for (const Series* s : series) {
        std::vector<Occurrence> more = occurrencesOf(*s, centre, span, findings);
        std::move(more.begin(), more.end(), std::back_inserter(found));
        if (found.size() < size_t(limits::occurrencesAtOnce)) continue;
        findings.push_back({Severity::Warning, "calendar.cut", s->title, {std::int64_t{limits::occurrencesAtOnce}}});
        break;
    }
    std::sort(found.begin(), found.end(), comesBefore);
    return found;
}

struct Sorts {
    std::vector<const Series*> closures;
    std::vector<const Series*> plays;
    std::set<SeriesId> yielding;
};

Sorts sorted(const std::vector<Series>& series) {
    Sorts sorts;
    for (const Series& s : series) {
        (s.kind == EventKind::Closure ? sorts.closures : sorts.plays).push_back(&s);
        if (s.yieldsToClosure) sorts.yielding.insert(s.id);
    }
    const auto byId = [](const Series* a, const Series* b) { return a->id < b->id; };
    std::sort(sorts.closures.begin(), sorts.closures.end(), byId);
    std::sort(sorts.plays.begin(), sorts.plays.end(), byId);
    return sorts;
}

}  // namespace

Occupancy occupancyOf(const std::vector<Series>& series, const Centre& centre, const DateRange& range) {
    Occupancy result;
    if (range.days() == 0) return result;
    DateRange days = range;
    const QDate latest = days.first.addYears(limits::expansionYears);
    if (days.last >= latest) {
        days.last = latest.addDays(-1);
        result.findings.push_back({Severity::Warning, "calendar.range-cut", centre.facts.name, {days.last}});
    }
    const Span span = spanOf(centre, days);
    const Sorts sorts = sorted(series);
    std::vector<Occurrence> plays = all(sorts.plays, centre, span, result.findings);
    // A closure outside the range still suppresses play that reaches into it.
    Span wide = span;
    for (const Occurrence& play : plays)
        wide = {std::min(wide.begin, play.booked.begin), std::max(wide.end, play.booked.end)};
    std::vector<Occurrence> closures = all(sorts.closures, centre, wide, result.findings);
    applyClosures(closures, sorts.yielding, plays, result.findings);
    std::erase_if(closures, [&](const Occurrence& closure) { return !closure.play().overlaps(span); });
    std::merge(plays.begin(), plays.end(), closures.begin(), closures.end(), std::back_inserter(result.occurrences), comesBefore);
    addConflicts(result);
    return result;
}

}  // namespace laneward
