#include "core/planning/demand.h"
#include "core/planning/holds.h"
#include "core/planning/plays.h"

#include <algorithm>
#include <numeric>

namespace laneward {

using namespace planning;

namespace {

/// A moment at which demands of one lane are looked at: a start of play, or the end of a day that leaves the lane stripped.
struct Mark {
    Instant at;
    bool isPlay = false;
    size_t play = 0;
    std::optional<Demand> demand;
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
        for (Mark& mark : marksOf(lane, plays)) {
            Gap gap{lane, {std::min(cleared, mark.at), mark.at}, playBefore, {}};
            if (mark.demand) {
                gap.demands.push_back(demands.size());
                demands.push_back(*std::move(mark.demand));
            }
            found.push_back(std::move(gap));
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
    std::vector<Mark> marksOf(int lane, const LanePlays& plays) const {
        std::vector<Mark> marks;
        marks.reserve(plays.size());
        for (size_t i = 0; i < plays.size(); ++i) {
            const Instant begins = plays[i].booked.begin;
            if (begins >= m_days.back()) break;
            if (begins >= m_begin) marks.push_back({begins, true, i, demandOf(lane, plays[i])});
            std::optional<Mark> stripped = strippedMark(lane, plays[i]);
            if (stripped &&
                std::none_of(marks.begin(), marks.end(), [&](const Mark& m) { return !m.isPlay && m.at == stripped->at; })) {
                marks.push_back(*std::move(stripped));
            }
        }
        // The end of a day comes before a play that begins at that very moment. Most lanes are in order already.
        const auto before = [](const Mark& a, const Mark& b) { return a.at != b.at ? a.at < b.at : a.isPlay < b.isPlay; };
        if (!std::is_sorted(marks.begin(), marks.end(), before)) std::stable_sort(marks.begin(), marks.end(), before);
        return marks;
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

    std::optional<Mark> strippedMark(int lane, const Play& play) const {
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
        return Mark{dayEnd, false, 0, demand};
    }

    const State& m_state;
    const Occupancy& m_occupancy;
    const std::vector<Instant>& m_days;
    Instant m_begin;
};

/// Puts the demands in order of time and lane and lets the gaps follow.
void sortDemands(DemandSet& set) {
    std::vector<size_t> order(set.demands.size());
    std::iota(order.begin(), order.end(), size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](size_t a, size_t b) {
        const Demand& x = set.demands[a];
        const Demand& y = set.demands[b];
        return x.playBegins != y.playBegins ? x.playBegins < y.playBegins : x.lane < y.lane;
    });
    std::vector<size_t> placeOf(order.size());
    std::vector<Demand> sorted;
    sorted.reserve(order.size());
    for (size_t place = 0; place < order.size(); ++place) {
        placeOf[order[place]] = place;
        sorted.push_back(std::move(set.demands[order[place]]));
    }
    set.demands = std::move(sorted);
    for (auto& lane : set.gaps) {
        for (Gap& gap : lane) {
            for (size_t& demand : gap.demands)
                demand = placeOf[demand];
        }
    }
}

}  // namespace

DemandSet demandsOf(const State& state, const Occupancy& occupancy, Instant now, const DateRange& range) {
    DemandSet set;
    set.gaps.resize(size_t(std::max(0, state.centre.facts.lanes)));
    if (range.days() == 0) return set;
    const std::vector<Instant> days = dayBounds(state.centre, range);
    const std::vector<LanePlays> plays = playsOf(state, occupancy);
    const LaneWalk walk(state, occupancy, days, std::max(now, days.front()));
    for (size_t lane = 0; lane < set.gaps.size(); ++lane) {
        set.gaps[lane] = walk.gaps(int(lane + 1), plays[lane], set.demands);
    }
    sortDemands(set);
    return set;
}

bool satisfies(const LaneCondition& condition, const Demand& demand) { return holds(condition, demand); }

}  // namespace laneward
