#include "tests/support/random_orders.h"

#include <algorithm>
#include <random>

namespace support {

using namespace laneward::ordering;

namespace {

constexpr Cost tens = 10;

class Maker {
public:
    Maker(unsigned seed, const OrderSize& size) : m_random(seed), m_size(size) {}

    OrderCase make() {
        OrderCase made;
        const bool thresholds = m_size.supplies > 1 && between(0, 3) > 0;
        m_several = !thresholds;
        for (int i = 0; i < m_size.supplies; ++i) {
            made.offers.push_back(offers());
            made.problem.supplies.push_back(supply(made.offers.back()));
        }
        if (m_size.supplies == 1) {
            for (int t = 0; t < m_size.periods; ++t)
                made.orderCosts.push_back(between(0, 300) * tens);
            return made;
        }
        OrderTerms& terms = made.problem.terms;
        terms.freight = between(0, 4) == 0 ? 0 : between(20, 400) * tens;
        if (thresholds && between(0, 2) > 0) terms.freeFrom = between(200, 3'000) * tens;
        if (thresholds && between(0, 1) == 0) terms.minimum = between(50, 800) * tens;
        return made;
    }

private:
    int between(int least, int most) { return least + int(m_random() % unsigned(most - least + 1)); }

    std::vector<PackOffer> offers() {
        std::vector<PackOffer> offers;
        const int each = between(30, 300);
        for (const int units : {1, 2, 5}) {
            if (!offers.empty() && between(0, 1) == 0) continue;
            PackOffer offer{units, {{1, each * units * between(85, 105) / 100 * tens}}};
            for (int tier = between(0, 2); tier > 0; --tier)
                offer.prices.push_back(
                    {offer.prices.back().packs + between(1, 5), offer.prices.back().each * between(80, 99) / 100});
            offers.push_back(offer);
            if (!m_several || between(0, 2) == 0) break;
        }
        return offers;
    }

    LotProblem supply(const std::vector<PackOffer>& offers) {
        LotProblem made;
        int least = -between(0, 4);
        const int room = between(0, 2) == 0 ? between(2, 8) : 100;
        for (int t = 0; t < m_size.periods; ++t) {
            const int used = std::max(0, least);
            least += between(0, 2 * m_size.packs / m_size.periods + 1);
            made.periods.push_back({std::max(0, least), used + room, between(1, 6) * tens});
        }
        made.purchase = PackCosts(offers, std::max(0, least) + 12);
        return made;
    }

    std::mt19937 m_random;
    OrderSize m_size;
    bool m_several = true;  ///< packs of several sizes
};

}  // namespace

OrderCase randomOrders(unsigned seed, const OrderSize& size) { return Maker(seed, size).make(); }

}  // namespace support
