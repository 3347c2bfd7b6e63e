// The exact search of one day: everything a plan may be, layer by layer, with bounds.
//
// A plan is built from its end. An outing is built from its last go to its first, each go as late as what follows it allows; then
// the outing before it. The next go takes a run, or lanes off one of its ends where runs may be divided, in either direction, on
// any machine and in the time of any shift. Because times are the latest that trouble nobody, nothing is lost by fixing them at
// once (outing_timing.h); where people are fewer than machines, outings are built in the order of their ends, and a person is
// free where no later outing holds them.
//
// Partial plans are taken up layer by layer, those with most lanes left first: each layer is complete before it is extended. A
// partial plan is left when its cost so far and the bound of what is left reach the best plan known, or when another with the
// same lanes left and the same head is no dearer and no earlier. Narrow passes that keep only the best of each layer
// find a good plan; the full pass, which its score cuts down, proves the best one.
#pragma once

#include "core/planning/exact_bounds.h"
#include "core/planning/outing_timing.h"

#include <functional>
#include <unordered_map>

namespace laneward::planning {

struct ExactResult {
    std::optional<std::vector<DraftOuting>> best;  ///< better than what was known; nothing = nothing better found
    Score score{};                                 ///< of `best`, else what was known
    bool exhausted = false;                        ///< nothing better exists
    bool stopped = false;                          ///< cancelled
    std::int64_t steps = 0;                        ///< gos that were tried
};

class ExactSearch {
public:
    /// `known` is the score to beat.
    ExactSearch(const DayProblem& problem, const std::vector<LaneRun>& runs, const SearchMode& mode, const Score& known);

    ExactResult run(std::int64_t steps, const std::function<bool()>& cancelled);
    /// Whether the search covers the day: it does not know of committed outings yet.
    static bool covers(const DayProblem& problem, const std::vector<LaneRun>& runs);

private:
    struct Hand {
        Sec clock = 0;     ///< begin of its earliest outing so far
        int pattern = -1;  ///< laid by its earliest work so far
        int swaps = 0;
        Stock need{};             ///< taken until the next step that restores it
        Stock behind{};           ///< and behind that step, until the next
        unsigned steps = NoStep;  ///< kinds that were done
    };
    /// The go that made a node of its parent.
    struct Move {
        Go go;
        unsigned steps = NoStep;  ///< in front of the parent's go
        bool opens = false;       ///< an outing, after the parent's was closed
        int machine = 0;
        OutingWindow window;
        Sec limit = 0;  ///< of the outing that it opens
    };
    struct Node {
        Move move;
        Remaining rest;
        std::array<Hand, mostExactMachines> hands{};
        Score cost{};      ///< of outings whose times are fixed, and all changes and outings
        Score openCost{};  ///< of the open outing, and of those that still move with it
        Score bound{};
        Sec pull = 0;      ///< how much earlier the open outing may have to stand for what comes before it
        PullRange range;   ///< and can
        size_t pulls = 0;  ///< how it gives way then: into m_pulls
        size_t pullCount = 0;
        int cuts = 0;
        int parent = -1;
        int next = -1;  ///< with the same key
        bool dead = false;
    };

    bool pass(size_t width);
    void load(int node);
    void expand(int node);
    void openNext();
    void offerGos(const Move& like);
    bool isHopeless(const Move& move) const;
    bool isPaused(const Move& move) const;
    void offer(const Move& move);
    bool extend(const Move& move);
    void keep();
    std::uint64_t keyOf(const Node& node) const;
    bool isSameState(const Node& a, const Node& b) const;
    bool dominates(const Node& a, const Node& b) const;
    bool lastsAsLong(const Hand& x, const Hand& y) const;
    Sec longestPull(const Node& node) const;
    Sec pullCost(const Node& node, Sec by) const;
    bool givesWayAsWell(const Node& a, const Node& b) const;
    bool close(unsigned steps);
    bool spend(Hand& hand, int machine, const Go& go, int lanes) const;
    bool isNeeded(const Hand& hand, unsigned step, const Stock& room) const;
    bool restoreNeed(Hand& hand, int machine, unsigned steps) const;
    Chain chain();
    Score costOf(const Chain& chain, bool closed) const;
    bool movesOn(int machine) const;
    Frontier frontier() const;
    std::vector<unsigned> stepChoices(int machine, bool closing) const;
    std::vector<OutingWindow> windowsOf(int machine) const;
    std::vector<Slot> freeOf(int shift) const;
    bool lasts(int machine) const;
    void finish();
    Score worth(Score score) const;

    const DayProblem& m_problem;
    const std::vector<LaneRun>& m_runs;
    SearchMode m_mode;
    OutingTiming m_timing;
    ExactBounds m_bounds;
    size_t m_machines;
    std::vector<bool> m_plenty;  ///< by machine: nothing can run out today
    bool m_freeCrew = true;      ///< there is a person for every machine
    bool m_singleCrew = true;    ///< and here one for all
    std::int64_t m_left = 0;     ///< steps
    const std::function<bool()>* m_cancelled = nullptr;
    ExactResult m_best;
    bool m_sure = true;  ///< every time that was fixed was the best one

    Node m_at;                          ///< what is being extended
    Score m_spent{};                    ///< and what it costs so far, before one more go
    DraftOuting m_open;                 ///< its open outing
    std::vector<Sec> m_begins;          ///< of its gos, before one more is tried
    std::vector<DraftOuting> m_closed;  ///< its closed ones, the latest first
    size_t m_fixed = 0;                 ///< so many of them have times that are fixed
    std::vector<Node> m_nodes;
    std::vector<Pull> m_pulls;               ///< of all nodes
    std::vector<std::vector<int>> m_layers;  ///< by lanes left
    std::vector<std::unordered_map<std::uint64_t, int>> m_known;
};

}  // namespace laneward::planning
