// Placing one day's blocks in time. A solution says which machine works what in which order; placing finds the latest times
// that meet every target, and where that fails pushes work to the right: tight, then late, then dropped.
#pragma once

#include "core/planning/day_problem.h"

namespace laneward::planning {

/// Lanes that one machine works in one go with one recipe.
struct Block {
    int recipe = 0;
    int machine = 0;
    bool reversed = false;   ///< from the highest lane down
    bool cut = false;        ///< never in one outing with the block before it
    std::vector<int> tasks;  ///< by lane
};

/// Blocks; those of one machine in the order in which it works them.
using Solution = std::vector<Block>;

inline constexpr Sec notPlaced = INT64_MIN;

struct BlockTimes {
    std::vector<int> tasks;  ///< in working order, without those that were dropped
    std::vector<Sec> begins;
    Sec lane = 0;   ///< time of one lane
    Sec twice = 0;  ///< spent on the first pair before the work begins
    int twiceLanes = 0;
    unsigned steps = NoStep;
    Sec stepTime = 0;  ///< of the steps that need a person
    Sec end() const { return begins.back() + lane; }
};

struct Trip {
    int machine = 0;
    std::vector<int> blocks;
    Slot time;      ///< charging included
    Slot attended;  ///< from the first step that needs a person to being back
    int shift = -1;
};

/// Components of Objective, of the free work alone.
using Score = std::array<Sec, 9>;
namespace score_part {
enum : size_t { Unmet, Late, Treatments, Overtime, Tight, Outings, Changes, Crossed, Freshness };
}  // namespace score_part

inline Score sum(Score a, const Score& b) {
    for (size_t i = 0; i < a.size(); ++i)
        a[i] += b[i];
    return a;
}

struct Placement {
    Score score{};
    std::vector<BlockTimes> blocks;
    std::vector<Trip> trips;  ///< without blocks that were dropped wholly; by machine, time
};

/// The better of paid time only and with overtime. `overtimeToo` = false saves the second when the first is on time.
Placement place(const DayProblem& problem, const Solution& solution);

/// The people of one day's shifts and what binds them.
class DayCrew {
public:
    explicit DayCrew(const DayProblem& problem);

    void bind(Slot time, int shift) { m_bound.push_back({time, shift}); }
    void release(Slot time, int shift);
    /// The shift with the least overtime that can spare somebody for all of `time`; -1 = none.
    int shiftFor(Slot time, bool overtime) const;
    /// The latest such end not after `end` of work that takes `length`; notPlaced = none.
    Sec latestEnd(Sec length, Sec end, bool overtime) const;
    Sec earliestBegin(Sec length, Sec begin, bool overtime) const;
    Sec overtimeOf(Slot time, int shift) const;

private:
    struct Bound {
        Slot time;
        int shift;
    };
    bool canSpare(int shift, Slot time) const;
    Slot window(int shift, bool overtime) const;

    const DayProblem* m_problem;
    std::vector<Bound> m_bound;
};

/// Bits of the steps in front of each block so that no tank, pack or duty runs out, by the order of work: blocks as they are
/// given, committed runs where they stand. A block that even full tanks cannot serve gets no value.
std::vector<std::optional<unsigned>> stepsFor(const DayProblem& problem, const Solution& solution,
                                              const std::vector<Sec>& begins);

/// Time from one lane's end to the next lane's begin.
Sec moveTime(const DayMachine& machine, int fromLane, int toLane);
Sec stepTime(const DayMachine& machine, unsigned steps);

}  // namespace laneward::planning
