#include "core/planning/exact_day.h"

#include "core/planning/exact_search.h"
#include "core/planning/placer.h"

#include <algorithm>
#include <limits>

namespace laneward::planning {

namespace {

using namespace score_part;

// One node of the local search takes as long as about so many steps of this one. A day that is not proven with the most is left
// at its gap: people wait for the plan.
constexpr std::int64_t stepsPerNode = 32;
constexpr std::int64_t mostSteps = 420'000;
constexpr Sec worst = std::numeric_limits<Sec>::max();
constexpr int anyCuts = 1'000;
constexpr int mostCuts = 4;

class Translation {
public:
    Translation(const DayProblem& problem, const std::vector<LaneRun>& runs)
        : m_problem(problem), m_runs(runs), m_timing(problem, runs) {}

    /// The plan of the drafts, or the same order placed in the usual way where that is as good: it prefers to begin early what
    /// need not be fresh.
    void write(std::vector<DraftOuting> drafts, DaySolution& best) {
        std::stable_sort(drafts.begin(), drafts.end(), [&](const DraftOuting& a, const DraftOuting& b) {
            return a.machine != b.machine ? a.machine < b.machine : m_timing.begins(a) < m_timing.begins(b);
        });
        for (const DraftOuting& draft : drafts)
            addTrip(draft);
        m_placement.score = scoreOf(m_problem, m_solution, m_placement, DayCrew(m_problem));
        Placement usual = place(m_problem, m_solution);
        best.placement = usual.score <= m_placement.score ? std::move(usual) : std::move(m_placement);
        best.solution = std::move(m_solution);
    }

private:
    void addTrip(const DraftOuting& draft) {
        Trip trip{draft.machine,
                  {},
                  {m_timing.begins(draft), m_timing.ends(draft)},
                  {m_timing.leaves(draft), m_timing.ends(draft)},
                  draft.window.shift};
        for (auto go = draft.gos.rbegin(); go != draft.gos.rend(); ++go) {
            trip.blocks.push_back(int(m_solution.size()));
            addBlock(draft.machine, *go, go == draft.gos.rbegin());
        }
        m_placement.trips.push_back(std::move(trip));
    }

    void addBlock(int m, const Go& go, bool first) {
        const LaneRun& run = m_runs[size_t(go.run)];
        const DayMachine& machine = m_problem.machines[size_t(m)];
        const auto from = run.tasks.begin() + go.first;
        const Block block{run.recipe, m, go.down, first && !m_solution.empty() && m_solution.back().machine == m,
                          std::vector<int>(from, from + go.count)};
        BlockTimes times;
        times.tasks = block.tasks;
        if (go.down) std::reverse(times.tasks.begin(), times.tasks.end());
        times.lane = machine.lane[size_t(run.recipe)];
        for (int i = 0; i < go.count; ++i)
            times.begins.push_back(go.begin + (times.lane + machine.next) * i);
        const bool twice = first && run.like.twice;
        times.twice = twice ? m_timing.twiceTime(m, go) : 0;
        times.twiceLanes = twice ? m_timing.twiceLanes(go) : 0;
        times.steps = go.steps;
        times.stepTime = stepTime(machine, go.steps);
        m_solution.push_back(block);
        m_placement.blocks.push_back(std::move(times));
    }

    const DayProblem& m_problem;
    const std::vector<LaneRun>& m_runs;
    OutingTiming m_timing;
    Solution m_solution;
    Placement m_placement;
};

/// The day in one mode of the search after the other, as long as that can better the plan or prove it.
class Stages {
public:
    Stages(const DayProblem& problem, DaySolution& best, std::int64_t nodes, const std::function<bool()>& cancelled)
        : m_problem(problem),
          m_best(best),
          m_plan(best),
          m_steps(std::min(nodes * stepsPerNode, mostSteps)),
          m_cancelled(cancelled),
          m_runs(runsOf(problem)),
          m_least(boundOf(problem, 0)),
          m_smooth(std::all_of(m_runs.begin(), m_runs.end(), [](const LaneRun& r) { return r.cap <= r.like.target; })) {}

    void run() {
        if (!ExactSearch::covers(m_problem, m_runs)) return;
        m_known = known();
        // A plan that divides runs is no measure for what whole runs cost in changes, crossed lanes and freshness; one that makes
        // somebody wait between two lanes of a run may save an outing by that and leave lanes fresher, but no trouble.
        const size_t measured = pauses() ? size_t(Outings) : divides() ? size_t(Changes) : m_known.size();
        if (divides()) std::fill(m_known.begin() + Changes, m_known.end(), worst);
        if (pauses()) std::fill(m_known.begin() + Late, m_known.end(), worst);
        const bool proven = smoothly() || troubled();
        // Which lanes are best left out, where not all can be done, is not searched for.
        if (proven && m_known[Unmet] == 0 && m_known[Freshness] < worst) m_plan.bound = m_plan.placement.score;
        m_plan.stopped = m_best.stopped;
        if (m_known[Freshness] < worst && isNoWorse(measured)) m_best = std::move(m_plan);
    }

private:
    /// Whether what was found can take the place of the plan at hand, by so many parts of the score.
    bool isNoWorse(size_t parts) const {
        const Score& best = m_best.placement.score;
        const Score& found = m_plan.placement.score;
        return !std::lexicographical_compare(best.begin(), best.begin() + std::ptrdiff_t(parts), found.begin(),
                                             found.begin() + std::ptrdiff_t(parts));
    }

    std::vector<int> runOfTasks() const {
        std::vector<int> runOf(m_problem.tasks.size(), -1);
        for (size_t r = 0; r < m_runs.size(); ++r) {
            for (int task : m_runs[r].tasks)
                runOf[size_t(task)] = int(r);
        }
        return runOf;
    }

    /// Whether the plan at hand works some run in more than one go.
    bool divides() const {
        const std::vector<int> runOf = runOfTasks();
        std::vector<int> parts(m_runs.size(), 0);
        for (const BlockTimes& block : m_best.placement.blocks) {
            for (size_t i = 0; i < block.tasks.size(); ++i) {
                const int run = runOf[size_t(block.tasks[i])];
                const bool goesOn = i > 0 && runOf[size_t(block.tasks[i - 1])] == run;
                if (run >= 0 && !goesOn) ++parts[size_t(run)];
            }
        }
        return std::any_of(parts.begin(), parts.end(), [](int n) { return n > 1; });
    }

    /// Whether it makes somebody wait between lanes of one run, which no plan of the search does.
    bool pauses() const {
        const std::vector<int> runOf = runOfTasks();
        for (const Trip& trip : m_best.placement.trips) {
            for (size_t k = 1; k < trip.blocks.size(); ++k) {
                const BlockTimes& before = m_best.placement.blocks[size_t(trip.blocks[k - 1])];
                const BlockTimes& after = m_best.placement.blocks[size_t(trip.blocks[k])];
                if (after.steps == NoStep && runOf[size_t(before.tasks.back())] == runOf[size_t(after.tasks.front())])
                    return true;
            }
        }
        return false;
    }

    bool isTroubled() const { return m_known[Unmet] > 0 || m_known[Late] > 0 || m_known[Overtime] > 0 || m_known[Tight] > 0; }

    /// Whether the best plan without trouble was found and proven.
    bool smoothly() { return m_smooth && search({Trouble::None, 0, false}) && divided(Trouble::None, true) && !isTroubled(); }

    bool troubled() {
        if (!isTroubled() || m_best.stopped) return false;
        const bool whole = search({Trouble::Allowed, 0, false});
        return divided(Trouble::Allowed, whole);
    }

    /// Runs are divided only where that saves trouble or an outing, and then at as few places as that takes.
    bool divided(Trouble trouble, bool whole) {
        const bool divisible = std::any_of(m_runs.begin(), m_runs.end(), [](const LaneRun& r) { return r.lanes() > 1; });
        const bool isWhole = m_known[Freshness] < worst;
        if (isWhole && (!divisible || (!isTroubled() && m_known[Outings] == m_least[Outings]))) return whole;
        const Score undivided = m_known;
        // With the fewest outings that there can be, nothing better is to be looked for.
        const bool fewest = !isTroubled() && m_known[Outings] == m_least[Outings];
        if ((!fewest && !search({trouble, anyCuts, true})) || m_known[Late] == worst) return false;
        if (isWhole && m_known == undivided) return whole;
        // What is known now is divided in any way: the search for fewer cuts is to beat something a little worse.
        Score least = m_known;
        std::fill(least.begin() + Changes, least.end(), Sec{0});
        ++least[Outings];
        for (int cuts = 1; cuts <= mostCuts; ++cuts) {
            m_known = least;
            const bool proven = search({trouble, cuts, false});
            if (m_known != least || !proven) return proven;
        }
        return false;
    }

    bool search(const SearchMode& mode) {
        ExactResult found = ExactSearch(m_problem, m_runs, mode, m_known).run(m_steps, m_cancelled);
        m_steps = std::max<std::int64_t>(1, m_steps - found.steps);
        m_best.stopped = m_best.stopped || found.stopped;
        if (found.best) {
            Translation(m_problem, m_runs).write(*std::move(found.best), m_plan);
            m_known = known();
        }
        return found.exhausted;
    }

    /// Without what no plan can meet.
    Score known() const {
        Score score = m_plan.placement.score;
        score[Unmet] -= m_least[Unmet];
        return score;
    }

    const DayProblem& m_problem;
    DaySolution& m_best;
    DaySolution m_plan;  ///< the best of those that are searched
    std::int64_t m_steps;
    const std::function<bool()>& m_cancelled;
    std::vector<LaneRun> m_runs;
    Score m_least;
    bool m_smooth;  ///< every lane alone could be done in time
    Score m_known{};
};

}  // namespace

void searchExactly(const DayProblem& problem, DaySolution& best, std::int64_t nodes, const std::function<bool()>& cancelled) {
    Stages(problem, best, nodes, cancelled).run();
}

}  // namespace laneward::planning
