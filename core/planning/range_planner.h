// From demands to placed treatments over a range of days: the fewest treatments of each lane, a day for each, each day solved,
// and what could not be placed tried elsewhere: the evening before, or another gap of the lane.
#pragma once

#include "core/planning/known_days.h"
#include "core/planning/plan.h"

#include <map>
#include <set>

namespace laneward::planning {

/// A day that is solved, with what it was made from.
struct SolvedDay {
    std::vector<OpenTreatment> treatments;  ///< DayProblem::tasks in the same order
    DayProblem problem;
    DaySolution solution;
    bool gaveUp = false;  ///< some treatment found no place
};

struct Solved {
    std::vector<SolvedDay> days;
    std::set<int> doubtful;  ///< lanes whose number of treatments is not proven least
    DayStart after;
    bool stopped = false;
    /// By day, and of the one behind: nothing better exists for work that might as well be done the evening before.
    std::vector<bool> settled;
    std::string next;  ///< key of the day behind, as it was seen; empty = not seen or not settled
};

/// What is left until each machine's next duty after `day`.
DayStart startAfter(const SolvedDay& day, const DayStart& before);

class RangePlanner {
public:
    RangePlanner(const Ground& ground, const DemandSet& demands, const DaySolver& solver);

    /// The first `days` days of the ground's range; what comes behind them is only looked at. `start` is that of the first.
    Solved solve(int days, const DayStart& start);

private:
    using Spot = std::pair<int, size_t>;      ///< a lane and one of its gaps
    using Lane = std::vector<OpenTreatment>;  ///< by gap, and so by day

    struct Count {
        Sec treatments = 0;
        Sec served = 0;  ///< demands
    };

    // What each lane needs.
    void planLane(int lane, size_t firstGap);
    bool isTwin(int lane, int other) const;
    bool isAsOld(int lane, Instant end, Instant other) const;
    void planLike(int lane, int other);
    LaneCondition conditionAt(int lane, size_t gap) const;
    void assignDays(const std::vector<int>& lanes, int earliest);
    void planAllLanes();
    int dayFor(const PlannedTreatment& treatment, int together) const;
    std::optional<int> latestDay(const PlannedTreatment& treatment, const Hands& hands, Instant by,
                                 const std::vector<Spans>& tier) const;

    // One day after the other.
    DayProblem problemOf(int day, const std::vector<OpenTreatment>& treatments) const;
    SolvedDay solveOne(int day, bool quickly = false);
    std::vector<OpenTreatment> treatmentsOn(int day) const;
    void remember(const SolvedDay& solved);
    std::vector<Spot> lostOn(const SolvedDay& solved) const;
    void settle(int day);
    void giveUp(int day, const Spot& spot, bool restOfDay);

    // What is late, tight or in overtime may find a better place elsewhere.
    std::vector<std::vector<Spot>> groupsOf(const SolvedDay& solved) const;
    void repair(int day);
    void lookAhead(int day);

    // Work that could as well be done the evening before.
    bool isMovable(const OpenTreatment& treatment, int day) const;
    std::vector<std::vector<Spot>> movableRuns(int day, const SolvedDay& solved) const;
    std::vector<unsigned> choicesOf(int day, const SolvedDay& solved) const;
    DaySolution sharedDay(int day, unsigned moved, unsigned taken) const;
    std::vector<std::vector<Spot>> runsFromBefore(const SolvedDay& solved) const;
    SolvedDay dayBehind(int day);
    bool findChoices(int day, const SolvedDay& solved, std::vector<unsigned>& choices);
    void setDay(const std::vector<Spot>& run, int day);
    void shareEvenings(int days);
    bool moveToDayBefore(int day, const std::vector<Spot>& group);
    bool useOtherGaps(int day, const std::vector<Spot>& group);
    Count countFrom(int day) const;
    size_t firstOpenGap(int day, int lane, size_t gap) const;

    const Ground& m_ground;
    const DemandSet& m_demands;
    const DaySolver& m_solver;
    PatternId m_usual;
    std::vector<LaneCondition> m_before;
    std::vector<Lane> m_lanes;
    std::set<Spot> m_forbidden;
    std::map<Spot, Instant> m_ends;                         ///< of placed treatments
    std::vector<DayStart> m_starts;                         ///< of each day, one more than are solved
    std::vector<std::vector<std::vector<Spot>>> m_movable;  ///< by day: runs that might be worked the evening before
    Solved m_result;
};

}  // namespace laneward::planning
