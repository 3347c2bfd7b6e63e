#include "core/planning/outcomes.h"

#include <algorithm>
#include <map>

namespace laneward::planning {

namespace {

/// Who is bound until when: for each shift the ends of its open outings, ascending.
using Bound = std::vector<std::pair<size_t, Instant>>;

Seconds outside(const Span& outing, const Span& work) {
    const Span inside{std::max(outing.begin, work.begin), std::min(outing.end, work.end)};
    return outing.length() - std::max(Seconds{0}, inside.length());
}

}  // namespace

std::optional<Seconds> leastOvertime(const std::vector<Span>& outings, const std::vector<ShiftSpan>& shifts) {
    // Outings are given to shifts in order of their begin. Only who is still bound then matters for the rest, and that is a
    // handful of possibilities: an exact search without backtracking.
    std::vector<Span> ordered = outings;
    std::sort(ordered.begin(), ordered.end());
    std::map<Bound, Seconds> open{{{}, Seconds{0}}};
    for (const Span& outing : ordered) {
        std::map<Bound, Seconds> next;
        for (const auto& [bound, cost] : open) {
            Bound still;
            std::copy_if(bound.begin(), bound.end(), std::back_inserter(still),
                         [&](const auto& b) { return b.second > outing.begin; });
            for (size_t s = 0; s < shifts.size(); ++s) {
                const bool inside = shifts[s].allowance.begin <= outing.begin && outing.end <= shifts[s].allowance.end;
                const auto taken = std::count_if(still.begin(), still.end(), [&](const auto& b) { return b.first == s; });
                if (!inside || taken >= shifts[s].people) continue;
                Bound with = still;
                with.emplace_back(s, outing.end);
                std::sort(with.begin(), with.end());
                const Seconds total = cost + outside(outing, shifts[s].work);
                const auto [found, isNew] = next.emplace(std::move(with), total);
                if (!isNew) found->second = std::min(found->second, total);
            }
        }
        if (next.empty()) return std::nullopt;
        open = std::move(next);
    }
    Seconds least = open.begin()->second;
    for (const auto& [bound, cost] : open)
        least = std::min(least, cost);
    return least;
}

}  // namespace laneward::planning
