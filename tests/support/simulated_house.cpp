#include "tests/support/simulated_house.h"

#include <cmath>
#include <random>

namespace support {

using namespace laneward;

namespace {

constexpr double fillAt = 0.5;  // of a tank, nominal

struct Truth {
    double factor, purge, noise, lineShare, walk, eventsADay, eventSize;
};

class Simulation {
public:
    Simulation(int seed, double walk) : m_dice(std::uint64_t(seed) * 7'919 + 13) {
        const double lineShares[]{0, 0.25, 1, 4};
        m_truth = {1 + 0.08 * normal(), std::abs(0.015 * normal()), between(0.01, 0.05), lineShares[seed % 4], walk,
                   between(0.05, 0.2),  between(0.1, 0.4)};
    }

    SimulatedHouse run() {
        SimulatedHouse house;
        double sinceNominal = 0, sinceReal = 0;  // tanks
        double line = lineError();
        for (int day = 0; day < simulatedDays; ++day) {
            const double x = planOf(day);
            m_truth.factor += m_truth.walk * std::sqrt(x) * normal();
            double real = m_truth.factor * x + m_truth.noise * std::sqrt(x) * normal();
            sinceNominal += x;
            sinceReal += real;
            if (sinceNominal >= fillAt) {
                const double now = lineError();
                real += m_truth.purge;
                fill(house, day, sinceNominal, sinceReal + m_truth.purge + now - line);
                line = now;
                sinceNominal = sinceReal = 0;
            }
            house.nominal.push_back(Amount{std::llround(x * simulatedTank)});
            house.used.push_back(real * simulatedTank + happened(house, day));
        }
        return house;
    }

private:
    double normal() { return std::normal_distribution<double>()(m_dice); }
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_dice); }
    double lineError() { return m_truth.noise * std::sqrt(m_truth.lineShare) * normal(); }

    /// Tanks of a day: a week's pattern, a season, and what a calendar has besides; known beforehand.
    double planOf(int day) {
        const double week[]{0.1, 0.16, 0.2, 0.22, 0.3, 0.34, 0.2};
        const double season = 1 + 0.35 * std::sin(2 * 3.14159265 * day / 364);
        return week[day % 7] * season * between(0.7, 1.3);
    }

    static void fill(SimulatedHouse& house, int day, double nominal, double poured) {
        UsageFill one{{QString("fill %1").arg(day, 4, 10, QChar('0'))}, Instant{86'400 * (day + 1)}};
        one.nominal = Amount{std::llround(nominal * simulatedTank)};
        one.poured = Amount{std::llround(poured * simulatedTank)};
        one.lanes = int(std::lround(nominal * 60));
        house.fills.push_back(one);
        house.fillDays.push_back(size_t(day));
    }

    double happened(SimulatedHouse& house, int day) {
        double sum = 0;
        for (int n = std::poisson_distribution<int>(m_truth.eventsADay)(m_dice); n > 0; --n) {
            const double size = std::gamma_distribution<double>(4, m_truth.eventSize * simulatedTank / 4)(m_dice);
            house.events.push_back({firstSimulatedDay.addDays(day), Amount{std::llround(size)}});
            sum += size;
        }
        return sum;
    }

    std::mt19937_64 m_dice;
    Truth m_truth{};
};

template <class T, class IsBefore>
std::vector<T> front(const std::vector<T>& all, const IsBefore& isBefore) {
    std::vector<T> part;
    for (size_t i = 0; i < all.size() && isBefore(i); ++i)
        part.push_back(all[i]);
    return part;
}

}  // namespace

std::vector<UsageFill> SimulatedHouse::fillsBefore(int day) const {
    return front(fills, [&](size_t i) { return fillDays[i] < size_t(day); });
}

std::vector<DatedAmount> SimulatedHouse::eventsBefore(int day) const {
    return front(events, [&](size_t i) { return events[i].day < firstSimulatedDay.addDays(day); });
}

SimulatedHouse simulatedHouse(int seed, double walk) { return Simulation(seed, walk).run(); }

UsageRule simulatedUsageRule() {
    UsageRule rule;
    rule.tank = Amount{std::int64_t(simulatedTank)};
    return rule;
}

}  // namespace support
