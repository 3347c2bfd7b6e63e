#include "core/planning/evenings_before.h"

#include <algorithm>
#include <bit>
#include <functional>
#include <optional>

namespace laneward::planning {

using namespace score_part;

namespace {

struct Way {
    Score known{};
    Score least{};  ///< of all ways, not of this one
    int moved = 0;  ///< runs
    size_t from = 0;

    bool isBetterThan(const Way& o) const { return known != o.known ? known < o.known : moved < o.moved; }
};

Score minus(Score a, const Score& b) {
    std::transform(a.begin(), a.end(), b.begin(), a.begin(), std::minus<>());
    return a;
}

}  // namespace

Score priceOf(Score score) {
    std::fill(score.begin() + Changes, score.end(), 0);
    return score;
}

Sharing leastSharing(const std::vector<std::vector<unsigned>>& choices,
                     const std::function<DayPrice(int day, unsigned s, unsigned t)>& price) {
    const size_t days = choices.size();
    std::vector<std::vector<Way>> ways{{Way{}}};
    for (size_t d = 0; d < days; ++d) {
        const std::vector<unsigned> next = d + 1 < days ? choices[d + 1] : std::vector<unsigned>{0};
        std::vector<Way> on;
        for (unsigned t : next) {
            std::optional<Way> best;
            std::optional<Score> least;
            for (size_t s = 0; s < choices[d].size(); ++s) {
                const Way& before = ways[d][s];
                const DayPrice day = price(int(d), choices[d][s], t);
                Way way{sum(before.known, day.known), {}, before.moved + std::popcount(t), s};
                const Score bound = sum(before.least, day.least);
                least = least ? std::min(*least, bound) : bound;
                if (!best || way.isBetterThan(*best)) best = way;
            }
            best->least = *least;
            on.push_back(*best);
        }
        ways.push_back(std::move(on));
    }
    Sharing sharing{std::vector<unsigned>(days, 0), std::vector<bool>(days, true)};
    size_t at = 0;
    for (size_t d = days; d-- > 0;) {
        at = ways[d + 1][at].from;
        sharing.moved[d] = choices[d][at];
    }
    // Between two days with nothing to choose a chain stands for itself.
    for (size_t d = 0, begin = 0; d < days; ++d) {
        if (d + 1 < days && choices[d + 1].size() > 1) continue;
        const Way& end = ways[d + 1].front();
        const Way& start = ways[begin].front();
        const bool sure = minus(end.known, start.known) == minus(end.least, start.least);
        for (size_t k = begin; k <= d; ++k)
            sharing.settled[k] = sure || choices[k].size() == 1;
        begin = d + 1;
    }
    return sharing;
}

}  // namespace laneward::planning
