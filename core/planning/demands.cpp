#include "core/planning/demand.h"
#include "core/planning/ground.h"
#include "core/planning/holds.h"

#include <algorithm>
#include <map>

namespace laneward {

using namespace planning;

namespace {

/// A moment at which demands of one lane are looked at: a start of play, or the end of a day that leaves the lane stripped.
struct Mark {
    Instant at;
    bool isPlay = false;
    size_t play = 0;
    std::optional<size_t> demand;  ///< index
};

class LaneWalk {
public:
    LaneWalk(const State& state, const Occupancy& occupancy, const std::vector<Instant>& days, Instant begin)
        : m_state(state), m_occupancy(occupancy), m_days(days), m_begin(begin) {}

    /// Demands of the lane go to `demands`; its gaps name them by their place there.
    std::vector<Gap> gaps(int lane, const LanePlays& plays, std::vector<Demand>& demands) const {
        std::vector<Gap> found;
        found.reserve(plays.size() + 1);
        Instant cleared = m_begin;
        Instant counted = m_begin;  // booked play up to here is counted already
        Seconds playBefore;
        for (const Play& play : plays) {
            if (play.booked.begin >= m_begin) break;
            cleared = std::max(cleared, play.cleared);
            counted = std::max(counted, play.booked.end);
        }
        for (const Mark& mark : marksOf(lane, plays, demands)) {
            found.push_back({lane, {std::min(cleared, mark.at), mark.at}, playBefore, mark.demand});
            playBefore = {};
            cleared = std::max(cleared, mark.at);
            if (!mark.isPlay) continue;
            const Play& play = plays[mark.play];
            playBefore = std::max(Seconds{0}, play.booked.end - std::max(play.booked.begin, counted));
            cleared = std::max(cleared, play.cleared);
            counted = std::max(counted, play.booked.end);
        }
        const Instant end = std::max(m_begin, m_days.back());
        found.push_back({lane, {std::min(cleared, end), end}, playBefore, {}});
        return found;
    }

private:
    std::vector<Mark> marksOf(int lane, const LanePlays& plays, std::vector<Demand>& demands) const {
        std::vector<Mark> marks;
        marks.reserve(plays.size());
        for (size_t i = 0; i < plays.size(); ++i) {
            const Instant begins = plays[i].booked.begin;
            if (begins >= m_days.back()) break;
            if (begins >= m_begin) marks.push_back({begins, true, i, added(demandOf(lane, plays[i]), demands)});
            std::optional<Demand> stripped = strippedOf(lane, plays[i]);
            const auto isKnown = [&](const Mark& mark) { return !mark.isPlay && mark.at == stripped->due; };
            if (!stripped || std::any_of(marks.begin(), marks.end(), isKnown)) continue;
            const Instant at = stripped->due;
            marks.push_back({at, false, 0, added(std::move(stripped), demands)});
        }
        // The end of a day comes before a play that begins at that very moment. Most lanes are in order already.
        const auto before = [](const Mark& a, const Mark& b) { return a.at != b.at ? a.at < b.at : a.isPlay < b.isPlay; };
        if (!std::is_sorted(marks.begin(), marks.end(), before)) std::stable_sort(marks.begin(), marks.end(), before);
        return marks;
    }

    static std::optional<size_t> added(std::optional<Demand> demand, std::vector<Demand>& demands) {
        if (!demand) return std::nullopt;
        demands.push_back(*std::move(demand));
        return demands.size() - 1;
    }

    Demand demandFrom(const Play& play, int lane) const {
        const Occurrence& o = m_occupancy.occurrences[play.occurrence];
        Demand demand;
        demand.occurrence = play.occurrence;
        demand.lane = lane;
        demand.playBegins = play.booked.begin;
        demand.due = demand.playBegins - o.settle;
        demand.target = demand.due - m_state.centre.facts.settings.reserve;
        return demand;
    }

    std::optional<Demand> demandOf(int lane, const Play& play) const {
        if (!play.counts) return std::nullopt;
        Demand demand = demandFrom(play, lane);
        for (const SurfaceDemand& asked : m_occupancy.occurrences[play.occurrence].demands) {
            if (asked.kind == DemandKind::Stripped || !asked.lanes.contains(lane)) continue;
            demand.kind = asked.kind;
            demand.pattern = asked.pattern;
            demand.least = asked.least;
            demand.longestAge = asked.longestAge;
            demand.longestPlay = asked.longestPlay;
            break;
        }
        return demand;
    }

    /// What a day that leaves the lane stripped asks at its end.
    std::optional<Demand> strippedOf(int lane, const Play& play) const {
        const auto& asked = m_occupancy.occurrences[play.occurrence].demands;
        const bool asks = std::any_of(asked.begin(), asked.end(), [&](const SurfaceDemand& d) {
            return d.kind == DemandKind::Stripped && d.lanes.contains(lane);
        });
        if (!asks || !play.counts || play.booked.begin < m_days.front()) return std::nullopt;
        const Instant dayEnd = *std::upper_bound(m_days.begin(), m_days.end(), play.booked.begin);
        if (dayEnd <= m_begin) return std::nullopt;
        Demand demand = demandFrom(play, lane);
        demand.kind = DemandKind::Stripped;
        demand.least = Treatment::CleanOnly;
        demand.playBegins = demand.due = demand.target = dayEnd;
        return demand;
    }

    const State& m_state;
    const Occupancy& m_occupancy;
    const std::vector<Instant>& m_days;
    Instant m_begin;
};

/// Puts the demands in order of time and lane and lets the gaps follow.
void sortDemands(DemandSet& set) {
    std::map<Instant, std::vector<size_t>> byTime;  // they come lane by lane
    for (size_t d = 0; d < set.demands.size(); ++d)
        byTime[set.demands[d].playBegins].push_back(d);
    std::vector<size_t> placeOf(set.demands.size());
    std::vector<Demand> sorted;
    sorted.reserve(set.demands.size());
    for (const auto& [time, demands] : byTime) {
        for (size_t d : demands) {
            placeOf[d] = sorted.size();
            sorted.push_back(std::move(set.demands[d]));
        }
    }
    set.demands = std::move(sorted);
    for (auto& lane : set.gaps) {
        for (Gap& gap : lane) {
            if (gap.demand) gap.demand = placeOf[*gap.demand];
        }
    }
}

void addDemands(const LaneWalk& walk, const std::vector<LanePlays>& plays, DemandSet& set) {
    size_t most = 0;
    for (const LanePlays& lane : plays)
        most += lane.size();
    set.demands.reserve(most);
    for (size_t lane = 0; lane < set.gaps.size(); ++lane) {
        set.gaps[lane] = walk.gaps(int(lane + 1), plays[lane], set.demands);
    }
    sortDemands(set);
}

}  // namespace

DemandSet demandsOf(const State& state, const Occupancy& occupancy, Instant now, const DateRange& range) {
    DemandSet set;
    set.gaps.resize(size_t(std::max(0, state.centre.facts.lanes)));
    if (range.days() == 0) return set;
    const std::vector<Instant> days = dayBounds(state.centre, range);
    addDemands(LaneWalk(state, occupancy, days, std::max(now, days.front())), playsOf(state, occupancy), set);
    return set;
}

DemandSet planning::demandsOf(const Ground& ground) {
    DemandSet set;
    set.gaps.resize(ground.plays.size());
    addDemands(LaneWalk(ground.state, ground.occupancy, ground.days, ground.begin()), ground.plays, set);
    return set;
}

bool satisfies(const LaneCondition& condition, const Demand& demand) { return holds(condition, demand); }

}  // namespace laneward
