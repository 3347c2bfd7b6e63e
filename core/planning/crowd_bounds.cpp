#include "core/planning/crowd_bounds.h"

#include "core/planning/day_search.h"

#include <algorithm>
#include <array>
#include <limits>
#include <map>

namespace laneward::planning {

namespace {

// Every part of a day with many different moments would be looked at.
constexpr size_t mostMoments = 24;

/// The most people that are there at one time.
std::int64_t mostPeople(const DayProblem& problem) {
    std::int64_t most = 0;
    for (const DayShift& at : problem.shifts) {
        std::int64_t people = 0;
        for (const DayShift& shift : problem.shifts) {
            const bool there = shift.allowance.begin <= at.allowance.begin && at.allowance.begin < shift.allowance.end;
            people += there ? shift.people : 0;
        }
        most = std::max(most, people);
    }
    return most;
}

/// The k-th end at the soonest, k after k: no sooner than equal lanes taken as they become free, and no sooner than with all of
/// them free at once, each machine at its own pace.
class Ends {
public:
    Ends(const CrowdHands& hands, Sec from) : m_hands(hands) {
        for (size_t h = 0; h < hands.lanes.size(); ++h)
            m_paced[h] = from + hands.lanes[h];
    }

    Sec next(Sec earliest) {
        const size_t count = m_hands.lanes.size();
        Sec& last = m_released[m_taken % count];
        if (m_taken >= count) earliest = std::max(earliest, last + m_hands.next);
        last = earliest + m_hands.lanes.front();
        ++m_taken;
        const size_t hand = size_t(std::min_element(m_paced.begin(), m_paced.begin() + std::ptrdiff_t(count)) - m_paced.begin());
        const Sec paced = m_paced[hand];
        m_paced[hand] += m_hands.next + m_hands.lanes[hand];
        return std::max(last, paced);
    }

private:
    const CrowdHands& m_hands;
    std::array<Sec, CrowdHands::most> m_released{};
    std::array<Sec, CrowdHands::most> m_paced{};
    size_t m_taken = 0;
};

Sec latenessFrom(Sec from, const CrowdOrders& crowds, const CrowdHands& hands) {
    Ends ends(hands, from);
    auto moment = crowds.byMoment.begin();
    int paired = 0;
    Sec sum = 0;
    for (const Crowd& crowd : crowds.byEarliest) {
        for (int k = 0; crowd.earliest >= from && k < crowd.count; ++k, ++paired) {
            while (moment->earliest < from || paired >= moment->count) {
                ++moment;
                paired = 0;
            }
            sum += std::max<Sec>(0, ends.next(crowd.earliest) - moment->moment);
        }
    }
    return sum;
}

std::vector<Crowd> sortedBy(std::span<const Crowd> crowds, Sec Crowd::*part) {
    std::vector<Crowd> sorted(crowds.begin(), crowds.end());
    std::stable_sort(sorted.begin(), sorted.end(), [&](const Crowd& a, const Crowd& b) { return a.*part < b.*part; });
    return sorted;
}

/// The best way to part the crowds by their moments.
Sec leastLatenessParted(const std::vector<Crowd>& crowds, const CrowdHands& hands) {
    const std::vector<Crowd> byMoment = sortedBy(crowds, &Crowd::moment);
    std::vector<size_t> marks{0};
    for (size_t k = 1; k <= byMoment.size(); ++k) {
        if (k == byMoment.size() || byMoment[k].moment != byMoment[k - 1].moment) marks.push_back(k);
    }
    if (marks.size() > mostMoments) marks = {0, byMoment.size()};
    std::vector<Sec> most(marks.size(), 0);
    for (size_t j = 1; j < marks.size(); ++j) {
        for (size_t i = 0; i < j; ++i) {
            const std::span<const Crowd> part(byMoment.begin() + std::ptrdiff_t(marks[i]), marks[j] - marks[i]);
            most[j] = std::max(most[j], most[i] + leastLateness({sortedBy(part, &Crowd::earliest), part}, hands));
        }
    }
    return most.back();
}

std::vector<Crowd> crowdsOf(std::span<const Loose> loose, Sec DayTask::*moment) {
    std::map<std::pair<Sec, Sec>, int> counts;
    for (const Loose& l : loose) {
        if (l.task->onlyHere && l.task->scored) ++counts[{l.earliestBegin, l.task->*moment}];
    }
    std::vector<Crowd> crowds;
    for (const auto& [times, count] : counts)
        crowds.push_back({times.first, times.second, count});
    return crowds;
}

}  // namespace

CrowdHands crowdHands(const DayProblem& problem, std::span<const Loose> loose) {
    CrowdHands hands;
    std::int64_t attended = 0;
    std::int64_t alone = 0;
    for (int m = 0; m < int(problem.machines.size()); ++m) {
        Sec shortest = std::numeric_limits<Sec>::max();
        for (const Loose& l : loose) {
            if (canDo(problem, m, *l.task))
                shortest = std::min(shortest, problem.machines[size_t(m)].lane[size_t(l.task->recipe)]);
        }
        if (shortest == std::numeric_limits<Sec>::max()) continue;
        hands.lanes.push_back(shortest);
        ++(problem.machines[size_t(m)].attended ? attended : alone);
    }
    std::sort(hands.lanes.begin(), hands.lanes.end());
    hands.lanes.resize(size_t(std::min(attended, mostPeople(problem)) + alone));
    if (hands.lanes.size() > CrowdHands::most) hands.lanes.clear();
    if (!hands.lanes.empty()) hands.next = shortestMove(problem, loose);
    return hands;
}

Sec leastLateness(const CrowdOrders& crowds, const CrowdHands& hands) {
    if (hands.lanes.empty()) return 0;
    Sec most = 0;
    for (size_t i = 0; i < crowds.byEarliest.size(); ++i) {
        const Sec from = crowds.byEarliest[i].earliest;
        if (i == 0 || from != crowds.byEarliest[i - 1].earliest) most = std::max(most, latenessFrom(from, crowds, hands));
    }
    return most;
}

LeastTrouble leastTrouble(const DayProblem& problem, std::span<const Loose> loose) {
    const CrowdHands hands = crowdHands(problem, loose);
    return {leastLatenessParted(crowdsOf(loose, &DayTask::due), hands),
            leastLatenessParted(crowdsOf(loose, &DayTask::target), hands)};
}

}  // namespace laneward::planning
