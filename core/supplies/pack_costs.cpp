#include "core/supplies/pack_costs.h"

#include <algorithm>

namespace laneward::ordering {

Cost priceOf(const PackOffer& offer, int packs) {
    Cost each = offer.prices.front().each;
    for (const PackPrice& price : offer.prices)
        each = packs >= price.packs ? price.each : each;
    return each * packs;
}

// Offers are taken one after the other: cost(x) = min over n of cost of the offers before for x - n * units, plus n packs.
PackCosts::PackCosts(const std::vector<PackOffer>& offers, int mostUnits) {
    m_costs.assign(size_t(mostUnits) + 1, impossible);
    m_costs[0] = 0;
    for (const PackOffer& offer : offers) {
        std::vector<Cost> prices{0};
        for (int n = 1; n <= mostUnits / offer.units; ++n)
            prices.push_back(priceOf(offer, n));
        std::vector<Cost> costs = m_costs;
        std::vector<int> packs(costs.size(), 0);
        for (int x = offer.units; x <= mostUnits; ++x) {
            for (int n = 1; n * offer.units <= x; ++n) {
                const Cost before = m_costs[size_t(x - n * offer.units)];
                if (!isPossible(before) || before + prices[size_t(n)] >= costs[size_t(x)]) continue;
                costs[size_t(x)] = before + prices[size_t(n)];
                packs[size_t(x)] = n;
            }
        }
        m_units.push_back(offer.units);
        m_costs = std::move(costs);
        m_packs.push_back(std::move(packs));
    }
}

std::vector<int> PackCosts::packsFor(int units) const {
    std::vector<int> packs(m_packs.size(), 0);
    for (size_t o = packs.size(); o-- > 0;) {
        packs[o] = m_packs[o][size_t(units)];
        units -= packs[o] * m_units[o];
    }
    return packs;
}

}  // namespace laneward::ordering
