#include "core/service/charging.h"

#include <algorithm>

namespace laneward {

std::vector<ChargeTurn> chargingTurns(const std::vector<ChargeNeed>& needs) {
    std::vector<ChargeNeed> open = needs;
    std::erase_if(open, [](const ChargeNeed& need) { return need.length <= Seconds{0}; });
    std::vector<ChargeTurn> turns;
    if (open.empty()) return turns;
    const auto begins = [](const ChargeNeed& a, const ChargeNeed& b) { return a.from < b.from; };
    Instant now = std::min_element(open.begin(), open.end(), begins)->from;
    while (!open.empty()) {
        // The first among those that are there; the next arrival may change that.
        const auto first = std::min_element(open.begin(), open.end(), [&](const ChargeNeed& a, const ChargeNeed& b) {
            const bool waits = a.from > now;
            const bool otherWaits = b.from > now;
            return std::tie(waits, a.by, a.pack) < std::tie(otherWaits, b.by, b.pack);
        });
        if (first->from > now) {
            now = std::min_element(open.begin(), open.end(), begins)->from;
            continue;
        }
        Instant end = now + first->length;
        for (const ChargeNeed& other : open) {
            if (other.from > now && std::tie(other.by, other.pack) < std::tie(first->by, first->pack))
                end = std::min(end, other.from);
        }
        const bool full = end == now + first->length;
        const Seconds late = full ? std::max(Seconds{0}, end - first->by) : Seconds{0};
        turns.push_back({first->pack, {now, end}, full, late});
        first->length -= end - now;
        if (full) open.erase(first);
        now = end;
    }
    return turns;
}

}  // namespace laneward
