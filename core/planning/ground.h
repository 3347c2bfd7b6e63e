// All that stays fixed while a range is planned: who plays where, which lanes, machines and people are free when.
//
// Lists of spans are ascending and disjoint. Machines are by id, lanes by number - 1.
#pragma once

#include "core/planning/plays.h"
#include "core/planning/recursion.h"

#include <deque>

namespace laneward::planning {

using Spans = std::vector<Span>;

Spans merged(Spans spans);
/// What is left of `from` without `taken`.
Spans without(const Spans& from, const Spans& taken);
Spans common(const Spans& a, const Spans& b);

/// A committed outing of one machine, with everything in it.
struct CommittedOuting {
    size_t machine = 0;
    QDate date;
    int number = 0;
    Span time;                     ///< machine busy, charging included
    Span attended;                 ///< a person is bound; empty when the machine needs none or all of it is history
    std::vector<const Job*> jobs;  ///< by begin
};

struct Ground {
    const State& state;
    const Occupancy& occupancy;
    Instant now;
    DateRange range;
    std::vector<Instant> days;  ///< begins of the days and the end of the last
    std::vector<LanePlays> plays;
    std::vector<std::vector<FixedTreatment>> fixed;
    std::vector<Spans> lanesFree;
    Spans nobody;                   ///< closures of the whole centre without staff
    std::vector<ShiftSpan> shifts;  ///< of all days, by begin of work
    std::vector<const Machine*> machines;
    std::vector<MachineLimits> limits;
    std::vector<Spans> machinesUp;   ///< from now on, not out of service, somebody in the house, no committed outing
    std::vector<Spans> byWork;       ///< when an outing could be treating lanes within paid time …
    std::vector<Spans> byAllowance;  ///< … or within allowance
    std::vector<CommittedOuting> outings;

    Instant begin() const { return std::max(now, days.front()); }
    size_t dayOf(Instant t) const;  ///< index of the day that contains `t`, which lies in the range
};

Ground groundOf(const State& state, const Occupancy& occupancy, Instant now, const DateRange& range);
/// demandsOf() of what the ground was made from.
DemandSet demandsOf(const Ground& ground);

/// The end of a job's last step, the way back included.
Instant endOfSteps(const Job& job);

bool mayDo(const Machine& machine, int lane, const Recipe& recipe);

/// A machine that may do a treatment, and how long it takes for one lane.
struct Hand {
    size_t machine;
    Seconds work;
};
using Hands = std::vector<Hand>;

Hands handsFor(const Ground& ground, int lane, const Recipe& recipe);
/// The same for so many lanes in a row.
Hands handsForRow(const Ground& ground, Hands hands, int lanes);

/// Who may treat one lane, worked out once for each recipe.
class LaneHands {
public:
    LaneHands(const Ground& ground, int lane) : m_ground(ground), m_lane(lane) {}
    const Hands& of(const Recipe& recipe);

private:
    const Ground& m_ground;
    int m_lane;
    std::deque<std::pair<Recipe, Hands>> m_known;  ///< few
};

/// When a treatment by any of `hands` can end within `gap`: the best by the order late, overtime, tight.
std::optional<Instant> plannedEnd(const Ground& ground, const DemandSet& demands, const Gap& gap, const Hands& hands);
/// The latest end within `window` of work on `lane`, by any of `hands` whose times in `tier` allow it.
std::optional<Instant> latestEndWithin(const Ground& ground, int lane, const Hands& hands, Span window,
                                       const std::vector<Spans>& tier);
/// The part of `gap` behind the lane's committed treatments and now.
Span openPart(const Ground& ground, const Gap& gap);
/// The latest end that anything allows: late, in overtime or not.
std::optional<Instant> latestPossibleEnd(const Ground& ground, const Gap& gap, const Hands& hands);

}  // namespace laneward::planning
