#include "core/planning/outing_bounds.h"

#include "core/base/limits.h"
#include "core/planning/placement.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

namespace laneward::planning {

namespace {

// Every step of a day's many different times would be compared with every other.
constexpr size_t mostMoments = 40;

struct Crowd {
    Sec begin = 0;
    Sec end = 0;
    Sec machines = 1;  ///< side by side
    Sec outings = 0;   ///< up to its end
};

/// Of any two moments, by end.
std::vector<Crowd> crowdsOf(const DayProblem& problem, std::span<const Loose> loose) {
    std::set<Sec> begins;
    std::set<Sec> ends;
    for (const Loose& l : loose) {
        begins.insert(l.earliestBegin);
        ends.insert(l.cap);
    }
    std::vector<Crowd> crowds;
    if (begins.size() > mostMoments || ends.size() > mostMoments) return crowds;
    for (Sec end : ends) {
        for (Sec begin : begins) {
            std::vector<Loose> within;
            std::copy_if(loose.begin(), loose.end(), std::back_inserter(within),
                         [&](const Loose& l) { return l.earliestBegin >= begin && l.cap <= end; });
            if (within.empty()) continue;
            const Sec next = shortestMove(problem, within);
            Sec work = 0;
            for (const Loose& l : within)
                work += l.lane + next;
            const Sec room = end - begin + next;
            crowds.push_back({begin, end, (work + room - 1) / room, 0});
        }
    }
    return crowds;
}

/// On the slowest machine.
Sec longestLane(const DayProblem& problem, const DayTask& task) {
    Sec longest = 0;
    for (const DayMachine& m : problem.machines)
        longest = std::max(longest, m.lane[size_t(task.recipe)]);
    return longest;
}

}  // namespace

bool holdsEnough(const DayProblem& problem, const DayMachine& machine) {
    Stock left = machine.begin;
    for (const DayTask& task : problem.tasks) {
        if (machine.lane[size_t(task.recipe)] < 0 || machine.barred.contains(task.lane)) continue;
        const int lanes = task.twice ? 3 : 1;
        for (size_t s = 0; s < stockCount; ++s)
            left[s] -= machine.use[size_t(task.recipe)][s] * lanes;
    }
    return std::all_of(left.begin(), left.end(), [](std::int64_t amount) { return amount >= 0; });
}

Sec longestPause(const DayProblem& problem) {
    int low = limits::lanes;
    int high = 0;
    for (const DayTask& task : problem.tasks) {
        low = std::min(low, task.lane);
        high = std::max(high, task.lane);
    }
    Sec longest = 0;
    for (const DayMachine& m : problem.machines) {
        const unsigned onTheWay = holdsEnough(problem, m) ? unsigned(NoStep) : RefillBit | EmptyBit | SwapBit | DutyBit;
        const Sec move = high > low ? moveTime(m, low, high) : 0;
        longest = std::max(longest, m.leave + m.back + stepTime(m, onTheWay) + move);
    }
    return longest;
}

Sec shortestMove(const DayProblem& problem) {
    Sec next = std::numeric_limits<Sec>::max();
    Sec back = next;
    Sec leave = next;
    for (const DayMachine& m : problem.machines) {
        next = std::min(next, m.next);
        back = std::min(back, m.back);
        leave = std::min(leave, m.leave);
    }
    return problem.machines.empty() ? 0 : std::min(next, back + leave);
}

Sec shortestMove(const DayProblem& problem, std::span<const Loose> loose) {
    LaneSet lanes;
    for (const Loose& l : loose) {
        if (lanes.contains(l.task->lane)) return 0;
        lanes.insert(l.task->lane);
    }
    return shortestMove(problem);
}

Sec leastOutings(const DayProblem& problem, std::span<const Loose> loose) {
    if (loose.empty()) return 0;
    const Sec pause = longestPause(problem);
    std::map<std::pair<Sec, Sec>, bool> known;
    // What may lie in between bridges a pause, with a wait for each lane.
    const auto isApart = [&](Sec end, Sec begin) {
        const auto [place, isNew] = known.try_emplace({end, begin}, false);
        if (!isNew) return place->second;
        Sec bridge = pause;
        for (const Loose& l : loose)
            bridge += l.earliestBegin < begin && l.cap > end ? longestLane(problem, *l.task) + pause : 0;
        return place->second = begin - end > bridge;
    };
    Sec most = 1;
    std::vector<Crowd> crowds = crowdsOf(problem, loose);
    for (size_t i = 0; i < crowds.size(); ++i) {
        crowds[i].outings = crowds[i].machines;
        for (size_t j = 0; j < i; ++j) {
            const Sec both = crowds[j].outings + crowds[i].machines;
            if (both > crowds[i].outings && isApart(crowds[j].end, crowds[i].begin)) crowds[i].outings = both;
        }
        most = std::max(most, crowds[i].outings);
    }
    return most;
}

}  // namespace laneward::planning
