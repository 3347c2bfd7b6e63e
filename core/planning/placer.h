// The working parts of place(): one block against its lanes, one trip against its machine and people, and the two passes.
#pragma once

#include "core/planning/placement.h"

namespace laneward::planning {

/// How far a trip may go: paid time or overtime, ends by target or only by due.
struct Tier {
    bool overtime = false;
    bool tight = false;
};

/// One block on its machine: where its lanes lie in time relative to its begin.
class BlockWork {
public:
    BlockWork(const DayProblem& problem, const Block& block);

    bool isEmpty() const { return m_order.empty(); }
    Sec lanes() const { return Sec(m_order.size()); }
    int firstLane() const;
    int lastLane() const;
    Sec length() const { return m_offsets.back() + m_lane; }
    Sec twiceTime() const { return m_twice; }
    bool wantsTwice() const { return m_wantsTwice; }
    /// The latest time of the last begin that still is late for nobody (or tight for nobody).
    Sec cap(bool tight) const;
    /// The latest begin not after `begin` with every lane free and in time; notPlaced = none.
    Sec latestBegin(Sec begin, bool twice, bool tight) const;
    /// The earliest begin not before `begin`; lanes for which it is too late are dropped.
    Sec earliestBegin(Sec begin, bool twice);
    BlockTimes times(Sec begin, bool twice, unsigned steps, Sec stepTime) const;

private:
    struct Hold {
        Sec offset;  ///< from the block's begin
        Sec length;
    };
    void measure();
    Hold holdOf(size_t i, bool twice) const;
    Sec latestHold(const DayTask& task, Sec begin, Sec length) const;
    Sec earliestHold(const DayTask& task, Sec begin, Sec length) const;

    const DayProblem* m_problem;
    const DayMachine* m_machine;
    std::vector<int> m_order;  ///< tasks as worked
    std::vector<Sec> m_offsets;
    Sec m_lane = 0;
    Sec m_twice = 0;
    int m_twiceLanes = 0;
    bool m_wantsTwice = false;
};

/// A trip with the begins of its blocks.
struct TripPlan {
    Trip trip;
    std::vector<Sec> begins;  ///< of trip.blocks
};

class Placer {
public:
    Placer(const DayProblem& problem, const Solution& solution, std::vector<std::optional<unsigned>> steps, bool overtime);

    Placement run();

private:
    struct Pending {
        TripPlan plan;
        bool placed = false;  ///< going backward; otherwise only the blocks are known
    };
    struct Alternative {
        std::optional<TripPlan> plan;
        Sec lost = 0;  ///< lanes dropped by it
    };
    const DayMachine& machine(int block) const { return m_problem.machines[size_t(m_solution[size_t(block)].machine)]; }
    unsigned steps(int block) const { return m_steps[size_t(block)].value_or(NoStep); }
    Sec attendedSteps(int block) const { return stepTime(machine(block), steps(block) & ~unsigned(ChargeBit)); }
    Sec chargeTime(int block) const { return stepTime(machine(block), steps(block) & unsigned(ChargeBit)); }
    Sec leadIn(int block) const;      ///< from the person's first step to the first lane
    Sec between(int a, int b) const;  ///< from a's last lane to b's first, steps included
    Sec patience(int block) const { return machine(block).leave + machine(block).back; }
    bool strippedOnly(const Trip& trip) const;
    bool isTight(const TripPlan& plan) const;
    Sec noLaterThan(int block) const;
    bool waits(const Pending& pending) const;

    void backward();
    void backwardOn(int m, std::vector<int>& left, std::vector<Sec>& until);
    std::optional<TripPlan> placeLatest(const std::vector<int>& blocks, Sec until, Tier tier) const;
    bool beginsLatest(const std::vector<int>& blocks, Sec until, bool tight, std::vector<Sec>& begins) const;
    bool pullTogether(const std::vector<int>& blocks, bool tight, std::vector<Sec>& begins) const;
    Trip tripOf(const std::vector<int>& blocks, const std::vector<Sec>& begins) const;
    Sec latestFit(const Trip& trip, Tier tier) const;

    void forward();
    void forwardNext(Pending next);
    bool keepPlace(Pending& next, Sec from);
    std::vector<Sec> floorsOf(const Pending& pending) const;
    Sec turnOf(const Pending& pending) const;
    std::optional<TripPlan> joined(const TripPlan& last, const Pending& next, const std::vector<Sec>& floors,
                                   const Alternative& alone);
    void finish(TripPlan plan);
    std::optional<TripPlan> placeEarliest(const std::vector<int>& blocks, Sec from, const std::vector<Sec>& floors,
                                          bool overtime);
    Sec earliestFit(const Trip& trip, bool overtime) const;
    bool stillFits(const TripPlan& plan, Sec from) const;
    void bind(Trip& trip, bool overtime);
    Sec lanesIn(const std::vector<int>& blocks) const;
    std::vector<BlockWork> workOf(const std::vector<int>& blocks) const;
    void setWork(const std::vector<int>& blocks, const std::vector<BlockWork>& work);

    void shrinkOvertime();
    void shrinkOvertime(TripPlan& plan, Sec until);
    Placement result();

    const DayProblem& m_problem;
    const Solution& m_solution;
    std::vector<std::optional<unsigned>> m_steps;
    bool m_overtime;
    std::vector<BlockWork> m_work;
    DayCrew m_crew;
    std::vector<std::vector<Pending>> m_pending;  ///< by machine, in order of work
    std::vector<std::vector<TripPlan>> m_done;    ///< by machine, in order of time
};

Score scoreOf(const DayProblem& problem, const Solution& solution, const Placement& placement, const DayCrew& crew);

}  // namespace laneward::planning
