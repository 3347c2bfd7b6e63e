// When each go of a chain of outings begins, their order given: the outings of one machine, or of one person.
//
// Between two gos of an outing a machine moves, does the steps in front of the later one, and may wait, but not as long as going
// home and coming back would take: then it goes home. Between two outings it does. These are difference constraints, and the
// times that satisfy them are closed under the latest and under the earliest of each: there is one latest and one earliest
// timing. The latest that ends by every target is the freshest. Where there is none, the objective's order decides: the earliest
// timing is late for the least; then the work moves right as far as that allows, out of overtime; then left again, out of the
// reserve; and then as late as all this lets it.
#pragma once

#include "core/planning/exact_bounds.h"

#include <span>

namespace laneward::planning {

/// A machine waits less than this between two gos, else it goes home.
inline Sec patience(const DayMachine& machine) { return std::max<Sec>(1, machine.leave + machine.back); }

/// The latest outing first.
using Chain = std::vector<DraftOuting*>;

/// One go of a pulled outing: once the head moved by `from`, the waits before this go are used up and it moves too.
struct Pull {
    Sec from = 0;
    Sec weight = 0;  ///< freshness that this costs a second
};

/// How far an outing's head can be pulled: surely, and at the most.
struct PullRange {
    Sec sure = 0;
    Sec most = 0;
};

class OutingTiming {
public:
    OutingTiming(const DayProblem& problem, const std::vector<LaneRun>& runs) : m_problem(problem), m_runs(runs) {}

    /// Times the chain. `closed` = the first go of its earliest outing is known to be the first: lead-in and window count in
    /// full.
    /// That go does not begin before `floor`.
    bool time(const Chain& chain, Trouble trouble, bool closed, Sec floor = notPlaced);
    /// The last go added to an outing that was timed without trouble: quick where nothing else moves.
    bool timeAdded(DraftOuting& outing);
    /// The last timing was in overtime on both sides of a shift: good, but perhaps not the best.
    bool guessed() const { return m_guessed; }

    /// late, overtime, tight, crossed and freshness of a timed outing, and its treatments; changes and outings are counted
    /// elsewhere.
    Score scoreOf(const DraftOuting& outing, bool closed) const;
    /// Appends how the outing gives way when its head is pulled to an earlier time, the head first.
    PullRange pullOf(const DraftOuting& outing, std::vector<Pull>& pulls) const;
    Sec leaves(const DraftOuting& outing) const;  ///< when its first attended step begins
    Sec begins(const DraftOuting& outing) const;  ///< charging included
    Sec ends(const DraftOuting& outing) const;    ///< back in the bay

    Sec length(int machine, const Go& go) const;
    int firstLane(const Go& go) const;
    int lastLane(const Go& go) const;
    int twiceLanes(const Go& go) const;
    Sec twiceTime(int machine, const Go& go) const;

private:
    struct Limits {
        Sec begin = 0;  ///< of the attended time
        Sec end = 0;
    };
    /// One go of the chain; the one before it in time is the next in the list.
    struct Place {
        DraftOuting* outing;
        Go* go;
        size_t index;    ///< of the outing in the chain
        Sec work;        ///< its length
        Sec least = 0;   ///< from the end of the go before to its begin
        Sec patience;    ///< it waits less than this; endless = another outing
        Sec lead = 0;    ///< of an outing's first: from its first attended step
        Sec twice = 0;   ///< of that, on its own lanes
        Sec charge = 0;  ///< of an outing's first: before that
        Sec cap = 0;     ///< latest begin
        Sec floor = notPlaced;
        bool first = false;
        bool last = false;
    };

    const DayMachine& machine(const DraftOuting& o) const { return m_problem.machines[size_t(o.machine)]; }
    const LaneRun& run(const Go& go) const { return m_runs[size_t(go.run)]; }
    void lay(const Chain& chain, bool closed);
    void limitBy(Trouble trouble);
    Sec leadIn(const DraftOuting& o) const;
    Sec between(const DraftOuting& o, size_t k) const;
    Sec latestIn(const DraftOuting& o, const Go& go, Sec begin, Sec extra) const;
    Sec earliestIn(const DraftOuting& o, const Go& go, Sec begin, Sec extra) const;
    bool latest();
    bool earliest();
    bool leastTrouble();
    bool leastOvertime();
    void keepWithin(Sec DayTask::*moment);

    const DayProblem& m_problem;
    const std::vector<LaneRun>& m_runs;
    std::vector<Place> m_places;
    std::vector<Limits> m_limits;  ///< by outing
    bool m_guessed = false;
};

}  // namespace laneward::planning
