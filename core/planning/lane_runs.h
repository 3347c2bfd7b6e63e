// The exact search sees a day as runs: adjacent lanes that are asked for the same and can be worked at the same times. Lanes of a
// run are interchangeable, so a machine takes them off one of the run's ends, in one go up or down.
#pragma once

#include "core/planning/placement.h"

namespace laneward::planning {

struct LaneRun {
    std::vector<int> tasks;  ///< of adjacent lanes, ascending
    int firstLane = 0;
    int recipe = 0;
    int pattern = -1;
    unsigned able = 0;  ///< bit per machine that may do it
    DayTask like;       ///< what all of them ask
    std::vector<Slot> slots;
    Sec cap = 0;  ///< the latest end of one lane that troubles nobody, else the only one there is

    int lanes() const { return int(tasks.size()); }
};

/// Runs by first lane, then play. Tasks that no machine can do are left out: no plan meets them.
std::vector<LaneRun> runsOf(const DayProblem& problem);

/// Lanes of one run that a machine works without a pause.
struct Go {
    int run = 0;
    int first = 0;  ///< into LaneRun::tasks
    int count = 0;
    bool down = false;        ///< from the highest lane
    unsigned steps = NoStep;  ///< in front of it
    Sec begin = 0;
};

/// A span within which an outing may lie: the machine is there and a person of `shift` is free; no shift for an unattended
/// machine.
struct OutingWindow {
    int shift = -1;
    Slot work;       ///< paid time, as far as the person is free
    Slot allowance;  ///< and with overtime
    Sec open = 0;    ///< since when the machine is there: charging may begin then
};

/// An outing in the making, built from its end: `gos` has the last one first.
struct DraftOuting {
    int machine = 0;
    OutingWindow window;
    std::vector<Go> gos;
    Sec limit = 0;  ///< it is back in the bay by then
};

}  // namespace laneward::planning
