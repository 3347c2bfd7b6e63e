// Work that could as well be done the evening before, shared between neighbouring days.
//
// A run of equal lanes is worked on the latest day that troubles nobody. It is worked the evening before only where that saves
// an unmet demand, a late, overtime or tight second or an outing: the first six parts of the objective, here called the price of
// a day. Taking work from a day never raises its price, giving it work never lowers it. So a set of runs that leaves the price
// of its own day as it is need not be looked at; of the others all combinations are, day after day:
//
//     best(d + 1, t) = min over s of best(d, s) + price of day d without s and with t      (dynamic programming)
#pragma once

#include "core/planning/day_search.h"

#include <functional>
#include <vector>

namespace laneward::planning {

/// What a day without s and with t costs at the most and at the least; `s`, `t` are bits of runs.
struct DayPrice {
    Score known{};
    Score least{};
};

/// One way from day to day: which of each day's runs are worked the evening before it.
struct Sharing {
    std::vector<unsigned> moved;  ///< by day: bits of its runs
    std::vector<bool> settled;    ///< by day: nothing better exists for what lies between it and the day before
};

/// The first six parts of a score.
Score priceOf(Score score);

/// `choices` by day: sets of its runs that may be worked the evening before, the empty one first; that of the first day is alone.
/// `price(day, s, t)` is asked once for each combination.
Sharing leastSharing(const std::vector<std::vector<unsigned>>& choices,
                     const std::function<DayPrice(int day, unsigned s, unsigned t)>& price);

}  // namespace laneward::planning
