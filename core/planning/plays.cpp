#include "core/planning/plays.h"

#include <algorithm>

namespace laneward::planning {

namespace {

/// Lanes on which each occurrence counts. Conflicts come by start of the second, so a loser never beats a third.
std::vector<LaneSet> countingLanes(const Occupancy& occupancy) {
    std::vector<LaneSet> counting;
    counting.reserve(occupancy.occurrences.size());
    for (const Occurrence& o : occupancy.occurrences)
        counting.push_back(o.lanes);
    std::vector<Conflict> conflicts = occupancy.conflicts;
    std::stable_sort(conflicts.begin(), conflicts.end(),
                     [](const Conflict& a, const Conflict& b) { return a.second < b.second; });
    for (const Conflict& c : conflicts)
        counting[c.second] = counting[c.second] - (c.lanes & counting[c.first]);
    return counting;
}

}  // namespace

LaneSet outOfService(const Centre& centre, const Occurrence& occurrence) {
    LaneSet out;
    for (const Outage& outage : centre.outages) {
        const bool covers = outage.begin <= occurrence.booked.begin && (!outage.end || occurrence.booked.begin < *outage.end);
        if (!outage.machine && covers) out = out | (outage.lanes & occurrence.lanes);
    }
    return out;
}

std::vector<LanePlays> playsOf(const State& state, const Occupancy& occupancy) {
    std::vector<LanePlays> plays(size_t(state.centre.facts.lanes));
    const std::vector<LaneSet> counting = countingLanes(occupancy);
    for (size_t i = 0; i < occupancy.occurrences.size(); ++i) {
        const Occurrence& o = occupancy.occurrences[i];
        if (o.kind == EventKind::Closure) continue;
        for (int lane : (o.lanes - outOfService(state.centre, o)).lanes()) {
            if (lane > state.centre.facts.lanes) break;
            plays[size_t(lane - 1)].push_back({i, o.booked, std::max(o.booked.end, o.cleared), counting[i].contains(lane), {}});
        }
    }
    for (LanePlays& lane : plays) {
        // Occurrences mostly come in order of time.
        const auto before = [](const Play& a, const Play& b) { return a.booked.begin < b.booked.begin; };
        if (!std::is_sorted(lane.begin(), lane.end(), before)) std::stable_sort(lane.begin(), lane.end(), before);
        Instant reach{INT64_MIN};
        for (Play& play : lane)
            play.reach = reach = std::max(reach, play.cleared);
    }
    return plays;
}

LanePlays::const_iterator firstAfter(const LanePlays& plays, Instant t) {
    return std::partition_point(plays.begin(), plays.end(), [&](const Play& p) { return p.reach <= t; });
}

bool isPlayed(const LanePlays& plays, const Span& during) {
    for (auto play = firstAfter(plays, during.begin); play != plays.end() && play->booked.begin < during.end; ++play) {
        if (play->cleared > during.begin) return true;
    }
    return false;
}

Seconds playedIn(const LanePlays& plays, Span during) {
    Seconds played;
    Instant counted = during.begin;
    for (auto play = firstAfter(plays, during.begin); play != plays.end() && play->booked.begin < during.end; ++play) {
        const Span part{std::max(play->booked.begin, counted), std::min(play->booked.end, during.end)};
        if (part.isEmpty()) continue;
        played += part.length();
        counted = part.end;
    }
    return played;
}

std::vector<std::vector<FixedTreatment>> fixedTreatments(const State& state) {
    std::vector<std::vector<FixedTreatment>> fixed(size_t(state.centre.facts.lanes));
    for (const Job& job : state.committed) {
        if (job.state == JobState::Dropped || job.state == JobState::Proposed) continue;
        for (const LaneTime& lane : job.lanes) {
            if (lane.lane < 1 || lane.lane > state.centre.facts.lanes) continue;
            fixed[size_t(lane.lane - 1)].push_back({lane.time, job.treatment, job.pattern});
        }
    }
    for (auto& lane : fixed) {
        std::sort(lane.begin(), lane.end(), [](const FixedTreatment& a, const FixedTreatment& b) {
            return std::tie(a.time.end, a.time.begin, a.treatment, a.pattern) <
                   std::tie(b.time.end, b.time.begin, b.treatment, b.pattern);
        });
    }
    return fixed;
}

std::vector<Instant> dayBounds(const Centre& centre, const DateRange& range) {
    std::vector<Instant> bounds;
    const Zone zone = zoneOf(centre);
    for (int day = 0; day <= range.days(); ++day) {
        bounds.push_back(zone.toInstant({range.first.addDays(day), centre.facts.settings.dayBegins}));
    }
    return bounds;
}

}  // namespace laneward::planning
