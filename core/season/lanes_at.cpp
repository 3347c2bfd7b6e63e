#include "core/season/season.h"

#include <algorithm>

namespace laneward {

namespace {

Seconds playedSince(const Occupancy& occupancy, int lane, const Span& since) {
    Seconds played{0};
    for (const Occurrence& occurrence : occupancy.occurrences) {
        if (occurrence.kind == EventKind::Closure || !occurrence.lanes.contains(lane)) continue;
        const Span part{std::max(since.begin, occurrence.booked.begin), std::min(since.end, occurrence.booked.end)};
        if (!part.isEmpty()) played += part.length();
    }
    return played;
}

bool isInPlay(const Occupancy& occupancy, int lane, Instant t) {
    return std::any_of(occupancy.occurrences.begin(), occupancy.occurrences.end(), [lane, t](const Occurrence& occurrence) {
        return occurrence.kind != EventKind::Closure && occurrence.lanes.contains(lane) && occurrence.play().contains(t);
    });
}

bool isOutOfService(const Centre& centre, int lane, Instant t) {
    return std::any_of(centre.outages.begin(), centre.outages.end(), [lane, t](const Outage& outage) {
        return outage.lanes.contains(lane) && outage.begin <= t && (!outage.end || t < *outage.end);
    });
}

}  // namespace

std::vector<LaneNow> lanesAt(const SeasonState& season, const Occupancy& occupancy, Instant t) {
    std::vector<LaneNow> lanes;
    for (int lane = 1; lane <= season.centre.facts.lanes; ++lane) {
        LaneNow now;
        now.lane = lane;
        now.inPlay = isInPlay(occupancy, lane, t);
        now.outOfService = isOutOfService(season.centre, lane, t);
        lanes.push_back(now);
    }
    for (const LaneTreatment& last : treatmentsUntil(season, t)) {
        if (last.lane < 1 || last.lane > season.centre.facts.lanes) continue;
        lanes[size_t(last.lane - 1)].condition = {true, last.treatment, last.pattern, last.end,
                                                  playedSince(occupancy, last.lane, {last.end, t})};
    }
    return lanes;
}

}  // namespace laneward
