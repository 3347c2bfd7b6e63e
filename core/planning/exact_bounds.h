// What the lanes that are still to be placed cost at the least: lower bounds of outings, changes, crossed lanes and freshness
// that each hold whenever those before them are at theirs, as a lexicographic order allows.
#pragma once

#include "core/planning/crowd_bounds.h"
#include "core/planning/route_bounds.h"

#include <memory>

namespace laneward::planning {

inline constexpr size_t mostExactRuns = 24;
inline constexpr size_t mostExactMachines = 4;

/// Lanes of each run that are not placed yet: some at its low end and its high end are.
struct Remaining {
    std::array<std::int16_t, mostExactRuns> first{};
    std::array<std::int16_t, mostExactRuns> count{};
    int lanes = 0;
    friend bool operator==(const Remaining&, const Remaining&) = default;
};

/// Where the search stands: it works backward, one outing after the other. The earliest go of the open outing is its head.
struct Frontier {
    int machine = 0;  ///< of the open outing
    int headRun = 0;
    int headLane = 0;   ///< the lane that the head begins with
    Sec headBegin = 0;  ///< not later, whatever comes before it
    std::array<Sec, mostExactMachines>
        until{};  ///< by machine: latest end of a lane of a further outing; notPlaced = it makes none
    std::array<int, mostExactMachines> pattern{};  ///< by machine: laid by its earliest work so far; -1 = none
    bool alone = false;                            ///< whatever is left comes before the head
};

enum class Trouble {
    None,     ///< by target and within paid time, or not at all
    Allowed,  ///< late, tight or in overtime, as little as can be
};

struct SearchMode {
    Trouble trouble = Trouble::None;
    int cuts = 0;         ///< at so many places runs may be divided
    bool coarse = false;  ///< only what counts as much as outings counts
};

class ExactBounds {
public:
    ExactBounds(const DayProblem& problem, const std::vector<LaneRun>& runs, const SearchMode& mode);

    /// `spent` and the bound of the rest; nothing when that reaches `best`, or the rest cannot be placed without trouble.
    std::optional<Score> of(const Remaining& rest, const Frontier& at, const Score& spent, const Score& best) const;

    /// The head does not begin before this, because all that is left comes before it; notPlaced = that is not sure.
    Sec floor(const Remaining& rest, const Frontier& at) const;

private:
    struct Hands {
        std::array<Sec, mostExactMachines + 1> until{};
        int count = 0;
    };
    int leastOutings(const Remaining& rest, const Frontier& at) const;
    Hands handsFor(const Frontier& at, int outings) const;
    bool fits(const Remaining& rest, const Hands& hands) const;
    int leastChanges(const Remaining& rest, const Frontier& at, int outings) const;
    int leastCrossed(const Remaining& rest, const Frontier& at, int outings, int changes) const;
    int gapsWithin(const Remaining& rest, int pieces) const;
    Sec leastFreshness(const Remaining& rest, const Hands& hands) const;
    void prepareTrouble();
    void addTrouble(const Remaining& rest, Score& bound) const;
    Sec leastBehind(const Remaining& rest, const std::vector<int>& byMoment, Sec DayTask::*moment) const;

    const DayProblem& m_problem;
    const std::vector<LaneRun>& m_runs;
    SearchMode m_mode;
    std::vector<RunTimes> m_figures;
    std::vector<int> m_byEarliest;
    std::vector<int> m_byLatest;  ///< the latest first
    Sec m_pause = 0;              ///< longest between two lanes of one outing
    Sec m_next = 0;               ///< shortest move to another lane
    std::vector<int> m_patterns;
    CrowdHands m_hands;
    std::vector<int> m_byDue;
    std::vector<int> m_byTarget;
    std::unique_ptr<RouteBounds> m_routes;  ///< where runs stay whole and are few enough
};

}  // namespace laneward::planning
