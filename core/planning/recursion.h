// The exact recursion over the gaps of one lane, with the question 'how late can a treatment of this kind end here?' left open:
// fewest.h answers it for the lane alone, planning with what machines and people allow.
#pragma once

#include "core/planning/fewest.h"
#include "core/planning/plays.h"

#include <functional>

namespace laneward::planning {

/// What a treatment does to a lane.
struct Recipe {
    Treatment treatment = Treatment::CleanAndCondition;
    std::optional<PatternId> pattern;  ///< none for clean only
    friend bool operator==(const Recipe&, const Recipe&) = default;
    friend auto operator<=>(const Recipe&, const Recipe&) = default;
};

using LatestEnd = std::function<std::optional<Instant>(size_t gap, const Recipe&)>;

struct LaneProblem {
    const DemandSet& set;
    int lane = 0;
    size_t firstGap = 0;
    LaneCondition before;                   ///< when firstGap begins
    std::vector<FixedTreatment> committed;  ///< later than `before`, by end
    PatternId usual;                        ///< laid where any pattern will do and the lane has none; empty = no such pattern
    LatestEnd latestEnd;
};

/// `chosen` of the result is by gap; Fewest::unmetDemands ascending.
Fewest fewestOf(const LaneProblem& problem);

/// The condition of `lane` when its first gap begins, from history and committed treatments that ended by then.
LaneCondition conditionBefore(const LaneTreatment* last, const std::vector<FixedTreatment>& fixed, const LanePlays& plays,
                              Instant begin);
/// The condition after a treatment that ended at `end`.
LaneCondition conditionAfter(const LaneCondition& before, const Recipe& recipe, Instant end);

/// The pattern that most demands ask for, else the first that is still offered; empty when there is none.
PatternId usualPattern(const State& state, const DemandSet& demands);

/// The last entry of `history` for each lane.
std::vector<const LaneTreatment*> lastByLane(const State& state);

}  // namespace laneward::planning
