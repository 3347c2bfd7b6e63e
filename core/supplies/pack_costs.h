// What so many units cost in one order: the cheapest packs that make them up, by all-units prices.
//
// Units are whole parts of every pack of a supply. With all-units prices more units may cost less, so the cost is a table and
// not a formula.
#pragma once

#include <cstdint>
#include <limits>
#include <span>
#include <vector>

namespace laneward::ordering {

/// Money in a unit of the caller's choice, small enough that the cost of holding one unit for one period is a whole number.
using Cost = std::int64_t;
inline constexpr Cost impossible = std::numeric_limits<Cost>::max() / 4;  ///< two of them still add
constexpr bool isPossible(Cost cost) { return cost < impossible / 2; }

/// From `packs` on, every pack of the order costs `each`.
struct PackPrice {
    int packs = 1;
    Cost each = 0;
};

struct PackOffer {
    int units = 1;                  ///< in a pack, at least 1
    std::vector<PackPrice> prices;  ///< ascending by packs, the first from 1
};

/// Of `packs` packs, at least 1.
Cost priceOf(const PackOffer& offer, int packs);

class PackCosts {
public:
    PackCosts() = default;
    /// For up to `mostUnits` units.
    PackCosts(const std::vector<PackOffer>& offers, int mostUnits);

    int mostUnits() const { return int(m_costs.size()) - 1; }
    Cost of(int units) const { return m_costs[size_t(units)]; }  ///< `impossible` where no packs make them up
    std::vector<int> packsFor(int units) const;                  ///< of each offer

private:
    std::vector<int> m_units;               ///< in a pack of each offer
    std::vector<Cost> m_costs{0};           ///< by units
    std::vector<std::vector<int>> m_packs;  ///< of each offer, when it and those before it make up so many units
};

}  // namespace laneward::ordering
