#include "tests/support/simulated_store.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace support {

using namespace laneward;

namespace {

constexpr int supplies = 3;
constexpr double openingStock = 35;  // days of use
constexpr double daysAYear = 364;

class Store {
public:
    Store(int seed, double walk) : m_seed(seed), m_supplier(simulatedSupplier()) {
        for (int i = 0; i < supplies; ++i) {
            m_houses.push_back(simulatedHouse(seed * supplies + i, walk));
            m_offers.push_back(simulatedOffer(i));
            double before = 0;
            for (int day = 0; day < storeWarmUp; ++day)
                before += m_houses.back().used[size_t(day)];
            m_stock.push_back(before / storeWarmUp * openingStock);
            m_received.push_back(m_stock.back());
        }
        m_opening = m_stock;
        m_ranOut.resize(supplies);
        m_usage.resize(supplies, Usage(simulatedUsageRule()));
        m_learned.resize(supplies);
    }

    StoreYears run(const OrderPolicy& policy) {
        for (int day = storeWarmUp; day < simulatedDays; ++day) {
            receive(day);
            const QDate date = firstSimulatedDay.addDays(day);
            if (m_supplier.orderWeekdays >> (date.dayOfWeek() - 1) & 1) order(day, policy);
            use(day);
        }
        // What a policy leaves on the shelf or on its way is no cost of these years.
        for (int i = 0; i < supplies; ++i) {
            double left = m_stock[size_t(i)] - m_opening[size_t(i)];
            for (const StoreOrder& late : m_underWay)
                left += late.packs[size_t(i)] * double(m_offers[size_t(i)].pack.value);
            m_years.goods -= left * valueOf(i);
        }
        const double years = (simulatedDays - storeWarmUp) / daysAYear;
        for (double* sum : {&m_years.goods, &m_years.freight, &m_years.holding, &m_years.orders})
            *sum /= years;
        return m_years;
    }

private:
    double valueOf(int supply) const {
        const Offer& offer = m_offers[size_t(supply)];
        return double(offer.prices.front().each.minor) / double(offer.pack.value);
    }

    void receive(int day) {
        for (auto order = m_underWay.begin(); order != m_underWay.end();) {
            if (order->arrives != day) {
                ++order;
                continue;
            }
            for (size_t i = 0; i < supplies; ++i) {
                if (order->packs[i] == 0) continue;
                const double amount = order->packs[i] * double(m_offers[i].pack.value);
                m_stock[i] += amount;
                m_received[i] += amount;
                ++m_years.cycles;
                m_years.runOuts += m_ranOut[i];
                m_ranOut[i] = false;
            }
            m_leadDays.push_back(order->arrives - order->on);
            order = m_underWay.erase(order);
        }
    }

    void learn(size_t supply, int day) {
        const SimulatedHouse& house = m_houses[supply];
        for (size_t& next = m_learned[supply]; next < house.fills.size() && house.fillDays[next] < size_t(day); ++next)
            m_usage[supply].learn(house.fills[next]);
    }

    /// What fills poured, what is known to have happened, and what was run since the last fill, as the model takes it.
    Amount booked(size_t supply, int day) const {
        const SimulatedHouse& house = m_houses[supply];
        double out = 0;
        int from = storeWarmUp;
        for (size_t i = 0; i < house.fills.size() && house.fillDays[i] < size_t(day); ++i) {
            if (house.fillDays[i] < storeWarmUp) continue;
            out += double(house.fills[i].poured.value);
            from = int(house.fillDays[i]) + 1;
        }
        for (const DatedAmount& event : house.events)
            if (event.day >= firstSimulatedDay.addDays(storeWarmUp) && event.day < firstSimulatedDay.addDays(day))
                out += double(event.amount.value);
        double nominal = 0;
        for (int since = from; since < day; ++since)
            nominal += double(house.nominal[size_t(since)].value);
        out += nominal * m_usage[supply].rate().mean;
        return {std::llround(m_received[supply] - out)};
    }

    void order(int day, const OrderPolicy& policy) {
        StoreView view{day, m_houses, {}, {}, m_underWay, m_leadDays, m_supplier, m_offers};
        for (size_t i = 0; i < supplies; ++i) {
            learn(i, day);
            view.onHand.push_back(booked(i, day));
            view.rates.push_back(m_usage[i].rate());
        }
        std::vector<int> packs = policy(view);
        if (std::all_of(packs.begin(), packs.end(), [](int n) { return n == 0; })) return;
        double goods = 0;
        for (size_t i = 0; i < supplies; ++i) {
            Money each = m_offers[i].prices.front().each;
            for (const PriceBreak& price : m_offers[i].prices)
                if (packs[i] >= price.packs) each = price.each;
            goods += packs[i] * double(each.minor);
        }
        const bool isFree = m_supplier.freeFreightFrom && goods >= double(m_supplier.freeFreightFrom->minor);
        m_years.goods += goods;
        m_years.freight += isFree ? 0 : double(m_supplier.freight.minor);
        ++m_years.orders;
        m_underWay.push_back({day, day + leadOf(day), std::move(packs)});
    }

    /// Four to seven days mostly, now and then two weeks.
    int leadOf(int day) const {
        std::mt19937 dice(unsigned(m_seed) * 1'009 + unsigned(day));
        return std::discrete_distribution<int>({0, 0, 0, 0, 30, 30, 20, 10, 4, 2, 0, 0, 0, 0, 4})(dice);
    }

    void use(int day) {
        for (size_t i = 0; i < supplies; ++i) {
            m_stock[i] -= m_houses[i].used[size_t(day)];
            if (m_stock[i] < 0) m_ranOut[i] = true;
            m_years.holding += std::max(0.0, m_stock[i]) * valueOf(int(i)) * StockRules().holdingPermille / 1'000 / 365;
        }
    }

    int m_seed;
    Supplier m_supplier;
    std::vector<SimulatedHouse> m_houses;
    std::vector<Offer> m_offers;
    std::vector<double> m_stock;  ///< really; below 0 what is owed
    std::vector<double> m_received;
    std::vector<double> m_opening;
    std::vector<bool> m_ranOut;
    std::vector<StoreOrder> m_underWay;
    std::vector<int> m_leadDays;
    std::vector<Usage> m_usage;
    std::vector<size_t> m_learned;  ///< fills
    StoreYears m_years;
};

}  // namespace

double StoreView::position(size_t supply) const {
    double sum = double(onHand[supply].value);
    for (const StoreOrder& order : underWay)
        sum += order.packs[supply] * double(offers[supply].pack.value);
    return sum;
}

StoreView::Daily StoreView::daily(size_t supply) const {
    double sum = 0;
    double squares = 0;
    for (int d = day - storeWarmUp; d < day; ++d) {
        const double x = houses[supply].used[size_t(d)];
        sum += x;
        squares += x * x;
    }
    const double mean = sum / storeWarmUp;
    return {mean, std::sqrt(std::max(0.0, squares / storeWarmUp - mean * mean))};
}

double StoreView::used(size_t supply, int days) const {
    double sum = 0;
    for (int d = day - days; d < day; ++d)
        sum += houses[supply].used[size_t(d)];
    return sum;
}

Supplier simulatedSupplier() {
    Supplier supplier;
    supplier.id = {"wold"};
    supplier.name = "Wold";
    supplier.freight = {6'50, "EUR"};
    supplier.minimumOrder = {0, "EUR"};
    supplier.orderWeekdays = 0x02;
    supplier.usualLeadDays = 5;
    return supplier;
}

Offer simulatedOffer(int supply) {
    const QString id = QString("supply %1").arg(supply);
    const std::int64_t each = 38'00 + 11'00 * supply;
    return {{"wold/" + id}, {"wold"}, {id}, "A1", {5'000'000}, {{1, {each, "EUR"}}, {3, {each * 95 / 100, "EUR"}}}};
}

StoreYears yearsOf(int seed, double walk, const OrderPolicy& policy) { return Store(seed, walk).run(policy); }

}  // namespace support
