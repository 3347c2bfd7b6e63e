// The fewest further outings, changes and crossed lanes with which the runs that are left can be worked, each in one go, when of
// all times only the order is kept: which run may come before which, and between which a machine would rather go home.
//
// A table over all sets of runs, as Held and Karp use for the travelling salesman (J. SIAM 10, 1962; from memory): for twelve
// runs some hundred thousand entries, filled once a day.
#pragma once

#include "core/planning/lane_runs.h"

#include <cstdint>

namespace laneward::planning {

/// Outings, changes and crossed lanes as one number that compares like the three.
using RouteCost = std::uint32_t;
inline constexpr RouteCost perOuting = 1U << 24;
inline constexpr RouteCost perChange = 1U << 16;
inline constexpr RouteCost noRoute = 0xffffffffU;

/// When one lane of a run may be worked, at the widest.
struct RunTimes {
    Sec earliest = 0;  ///< begin of its first slot
    Sec latest = 0;    ///< latest end
    Sec lane = 0;      ///< on the fastest machine
};

class RouteBounds {
public:
    static constexpr size_t mostRuns = 13;

    /// `pause` = the longest between two lanes of one outing, `next` = the shortest move to another lane.
    RouteBounds(const std::vector<LaneRun>& runs, const std::vector<RunTimes>& times, Sec pause, Sec next);

    struct Head {
        int run = 0;
        int lane = 0;        ///< the lane that it begins with
        Sec begin = 0;       ///< it does not begin later
        int pattern = -1;    ///< laid by the machine's earliest work so far
        bool alone = false;  ///< no other machine will be sent out
    };
    /// What `left` (a bit for each run) takes in front of an outing's head; noRoute = nothing will do.
    RouteCost of(unsigned left, const Head& head) const;

private:
    size_t index(unsigned left, size_t run, int down) const { return (size_t(left) * m_runs.size() + run) * 2 + size_t(down); }
    RouteCost step(unsigned left, unsigned reach, const Head& head, bool another) const;
    RouteCost begin(unsigned left) const;
    RouteCost behind(unsigned left, size_t run, int down, bool another) const;

    const std::vector<LaneRun>& m_runs;
    const std::vector<RunTimes>& m_times;
    Sec m_next;
    std::vector<unsigned> m_before;  ///< by run: those that may come before it
    std::vector<unsigned> m_link;    ///< by run: those that may come right before it in its outing
    std::vector<RouteCost> m_any;    ///< by index()
    std::vector<RouteCost> m_begin;  ///< by what is left: from a new outing on
    std::vector<RouteCost> m_more;   ///< with another outing at least
};

}  // namespace laneward::planning
