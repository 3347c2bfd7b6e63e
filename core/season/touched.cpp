#include "core/season/touched.h"

#include <algorithm>
#include <map>

namespace laneward {

using namespace planning;

namespace {

const Instant forEver{INT64_MAX / 4};

/// Whether more than series and outages is other than before: then everything may be.
bool isThrough(const Edited& edited) {
    const State& a = edited.before;
    const State& b = edited.after;
    Centre centre = b.centre;
    centre.outages = a.centre.outages;
    return centre != a.centre || a.patterns != b.patterns || a.limits != b.limits || a.levels != b.levels ||
           a.committed != b.committed || a.history != b.history || lookBack(a.series) != lookBack(b.series);
}

void addOutages(const std::vector<Outage>& some, const std::vector<Outage>& others, std::vector<Span>& times) {
    for (const Outage& outage : some) {
        if (std::find(others.begin(), others.end(), outage) == others.end())
            times.push_back({outage.begin, outage.end.value_or(forEver)});
    }
}

using ById = std::multimap<SeriesId, const Series*>;

ById byId(const std::vector<Series>& series) {
    ById map;
    for (const Series& one : series)
        map.emplace(one.id, &one);
    return map;
}

bool contains(const ById& map, const Series& series) {
    const auto [begin, end] = map.equal_range(series.id);
    return std::any_of(begin, end, [&](const auto& entry) { return *entry.second == series; });
}

/// Series of the one side that the other does not have.
std::vector<Series> onlyIn(const std::vector<Series>& some, const std::vector<Series>& others) {
    const ById map = byId(others);
    std::vector<Series> only;
    std::copy_if(some.begin(), some.end(), std::back_inserter(only), [&](const Series& s) { return !contains(map, s); });
    return only;
}

/// What comes of some series, among the closures that may suppress it.
std::vector<Occurrence> occurrencesOf(std::vector<Series> some, const State& state, const DateRange& range) {
    if (some.empty()) return {};
    std::vector<SeriesId> ids;
    for (const Series& series : some)
        ids.push_back(series.id);
    std::sort(ids.begin(), ids.end());
    for (const Series& series : state.series) {
        if (series.kind == EventKind::Closure && !std::binary_search(ids.begin(), ids.end(), series.id)) some.push_back(series);
    }
    std::vector<Occurrence> found = occupancyOf(some, state.centre, range).occurrences;
    std::erase_if(found, [&](const Occurrence& o) { return !std::binary_search(ids.begin(), ids.end(), o.series); });
    return found;
}

Seconds longestPlay(const std::vector<Series>& series) {
    Seconds longest;
    for (const Series& one : series) {
        longest = std::max(longest, one.duration + one.clearing);
        for (const Override& change : one.overrides)
            longest = std::max(longest, change.duration.value_or(Seconds{}) + one.clearing);
    }
    return longest;
}

/// When something is played or closed on one side that is not on the other.
void addOccurrences(const std::vector<Occurrence>& some, const std::vector<Occurrence>& others, Seconds aroundClosures,
                    std::vector<Span>& times) {
    const auto comesBefore = [](const Occurrence& a, const Occurrence& b) { return a.booked.begin < b.booked.begin; };
    for (const Occurrence& o : some) {
        const auto [begin, end] = std::equal_range(others.begin(), others.end(), o, comesBefore);
        if (std::find(begin, end, o) != end) continue;
        // A closure may suppress play that began before it and lasts beyond it.
        const Seconds around = o.kind == EventKind::Closure ? aroundClosures : Seconds{0};
        times.push_back({o.booked.begin - around, std::max(o.booked.end, o.cleared) + around});
    }
}

}  // namespace

std::vector<bool> touchedStretches(const Edited& edited, const DateRange& range, const std::vector<Stretch>& stretches) {
    if (stretches.empty()) return {};
    if (isThrough(edited)) return std::vector<bool>(stretches.size(), true);
    const State& a = edited.before;
    const State& b = edited.after;
    std::vector<Span> times;
    addOutages(a.centre.outages, b.centre.outages, times);
    addOutages(b.centre.outages, a.centre.outages, times);
    const int back = lookBack(a.series);
    const DateRange seen{range.first.addDays(-back), range.last};
    const std::vector<Occurrence> gone = occurrencesOf(onlyIn(a.series, b.series), a, seen);
    const std::vector<Occurrence> come = occurrencesOf(onlyIn(b.series, a.series), b, seen);
    const Seconds around = std::max(longestPlay(a.series), longestPlay(b.series));
    addOccurrences(gone, come, around, times);
    addOccurrences(come, gone, around, times);
    std::vector<bool> touched;
    for (const Stretch& stretch : stretches) {
        const Span sees{dayOf(a.centre, stretch.days.first.addDays(-back)).begin, dayOf(a.centre, stretch.sight).end};
        touched.push_back(std::any_of(times.begin(), times.end(),
                                      [&](const Span& time) { return time.begin <= sees.end && sees.begin <= time.end; }));
    }
    return touched;
}

}  // namespace laneward
