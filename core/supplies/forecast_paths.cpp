#include "core/statistics/quantile_counter.h"
#include "core/statistics/random_numbers.h"
#include "core/supplies/stock_forecast.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace laneward {

namespace {

constexpr size_t driftEvery = 7;  // days; the rate of use takes the drift of these in one step, in the middle of their use
constexpr std::int32_t nothing = -1;

/// FNV-1a (Fowler, Noll, Vo; 64 bits) of a supply's id: its paths do not depend on which others are asked.
std::uint64_t seedOf(const StockOutlook& outlook, std::uint64_t seed) {
    std::uint64_t hash = 0xcbf29ce484222325u ^ seed;
    for (char byte : outlook.supply.value.toUtf8())
        hash = (hash ^ std::uint8_t(byte)) * 0x100000001b3u;
    return hash;
}

/// What one machine takes, along every path.
struct MachinePaths {
    std::vector<double> tanks;  ///< nominal of each day
    double tank = 1;            ///< in units of stock
    std::vector<double> drift;  ///< step of each day, in roots of s
    std::vector<double> rate;
    std::vector<double> noise;  ///< root of s
};

/// What happens by chance, along every path.
struct ChancePaths {
    double sizeShape = 1;
    double direction = -1;
    std::vector<double> perEvent;  ///< days to the next event, on average
    std::vector<double> perSize;   ///< scale of an amount
    std::vector<double> next;      ///< when: days from the beginning
};

std::vector<double> driftSteps(const std::vector<double>& tanks, double drift) {
    std::vector<double> steps(tanks.size());
    for (size_t from = 0; from < tanks.size(); from += driftEvery) {
        const std::span week = std::span(tanks).subspan(from, std::min(driftEvery, tanks.size() - from));
        const double all = std::accumulate(week.begin(), week.end(), 0.0);
        double sum = 0;
        size_t day = 0;
        while (day + 1 < week.size() && sum + week[day] < all / 2)
            sum += week[day++];
        steps[from + day] = std::sqrt(drift * all);
    }
    return steps;
}

/// All paths of one supply, stepped from day to day together.
class Paths {
public:
    Paths(const StockOutlook& outlook, const ForecastRule& rule)
        : m_outlook(outlook),
          m_paths(size_t(rule.paths)),
          m_draws(seedOf(outlook, rule.seed)),
          m_stock(m_paths, double(outlook.onHand.value)),
          m_received(outlook.deliveries.empty() ? 0 : m_paths),
          m_isOut(m_paths),
          m_first(size_t(outlook.days), nothing),
          m_after((outlook.deliveries.size() + outlook.chance.size()) * m_paths, nothing) {
        for (const PlannedUse& planned : outlook.planned)
            addMachine(planned);
        for (const ExpectedDelivery& delivery : outlook.deliveries)
            addDelivery(delivery);
        for (const LearnedRate& rate : outlook.chance)
            addChance(rate);
    }

    void step(int day) {
        happenings(day);
        for (MachinePaths& machine : m_machines)
            use(machine, size_t(day));
        const double known = size_t(day) < m_outlook.known.size() ? double(m_outlook.known[size_t(day)].value) : 0;
        if (known != 0)
            for (double& stock : m_stock)
                stock -= known;
    }

    const std::vector<double>& stock() const { return m_stock; }

    /// Share of the paths that have been below zero at the end of a day so far, today included.
    double out() {
        size_t count = 0;
        for (size_t i = 0; i < m_paths; ++i) {
            m_isOut[i] |= m_stock[i] < 0;
            count += m_isOut[i];
        }
        return double(count) / double(m_paths);
    }

    std::vector<double> used() const {
        std::vector<double> used(m_paths, double(m_outlook.onHand.value));
        for (size_t i = 0; i < m_paths; ++i)
            used[i] += (m_received.empty() ? 0 : m_received[i]) - m_stock[i];
        return used;
    }

private:
    void addMachine(const PlannedUse& planned) {
        const UseRate& learned = planned.rate;
        MachinePaths machine;
        for (const Amount& nominal : planned.nominal)
            machine.tanks.push_back(double(nominal.value) / learned.tank);
        machine.tank = learned.tank * planned.share;
        machine.drift = driftSteps(machine.tanks, learned.drift);
        const double deviation = std::sqrt(learned.variance);
        for (size_t i = 0; i < m_paths; ++i) {
            const double s = learned.freedom * learned.scale / 2 / m_draws.gamma(learned.freedom / 2);
            machine.noise.push_back(std::sqrt(s));
            machine.rate.push_back(learned.mean + deviation * machine.noise.back() * m_draws.normal());
        }
        m_machines.push_back(std::move(machine));
    }

    void addDelivery(const ExpectedDelivery& delivery) {
        const size_t base = m_lists++ * m_paths;
        for (size_t i = 0; i < m_paths; ++i)
            put(base + i, std::max(0, delivery.arrival.at(m_draws.uniform())));
    }

    void addChance(const LearnedRate& rate) {
        const size_t base = m_lists++ * m_paths;
        ChancePaths chance;
        chance.sizeShape = rate.sizeShape;
        chance.direction = rate.comesIn ? 1 : -1;
        for (size_t i = 0; i < m_paths; ++i) {
            chance.perEvent.push_back(rate.days / m_draws.gamma(rate.shape));
            chance.perSize.push_back(rate.scaleRate / m_draws.gamma(rate.scaleShape));
            chance.next.push_back(chance.perEvent.back() * m_draws.exponential());
            put(base + i, chance.next.back());
        }
        m_chances.push_back(std::move(chance));
    }

    /// Each delivery and each kind of chance has one next happening a path; those of a day are linked.
    void put(size_t happening, double day) {
        if (!(day < double(m_first.size()))) return;
        m_after[happening] = m_first[size_t(day)];
        m_first[size_t(day)] = std::int32_t(happening);
    }

    void happenings(int day) {
        std::int32_t at = m_first[size_t(day)];
        m_first[size_t(day)] = nothing;
        while (at != nothing) {
            const size_t list = size_t(at) / m_paths;
            const size_t path = size_t(at) % m_paths;
            const std::int32_t after = m_after[size_t(at)];
            if (list < m_outlook.deliveries.size()) {
                const double amount = double(m_outlook.deliveries[list].amount.value);
                m_stock[path] += amount;
                m_received[path] += amount;
            } else {
                happen(m_chances[list - m_outlook.deliveries.size()], path, day);
                put(size_t(at), m_chances[list - m_outlook.deliveries.size()].next[path]);
            }
            at = after;
        }
    }

    void happen(ChancePaths& chance, size_t path, int day) {
        while (chance.next[path] < day + 1.0) {
            m_stock[path] += chance.direction * chance.perSize[path] * m_draws.gamma(chance.sizeShape);
            chance.next[path] += chance.perEvent[path] * m_draws.exponential();
        }
    }

    void use(MachinePaths& machine, size_t day) {
        if (day >= machine.tanks.size() || machine.tanks[day] <= 0) return;
        if (machine.drift[day] > 0)
            for (size_t i = 0; i < m_paths; ++i)
                machine.rate[i] += machine.drift[day] * machine.noise[i] * m_draws.normal();
        const double expected = machine.tank * machine.tanks[day];
        const double deviation = machine.tank * std::sqrt(machine.tanks[day]);
        for (size_t i = 0; i < m_paths; ++i)
            m_stock[i] -= expected * machine.rate[i] + deviation * machine.noise[i] * m_draws.normal();
    }

    const StockOutlook& m_outlook;
    size_t m_paths;
    Draws m_draws;
    std::vector<double> m_stock;
    std::vector<double> m_received;
    std::vector<std::uint8_t> m_isOut;
    std::vector<MachinePaths> m_machines;
    std::vector<ChancePaths> m_chances;
    size_t m_lists = 0;                 ///< of happenings: deliveries, then kinds of chance
    std::vector<std::int32_t> m_first;  ///< happening of each day …
    std::vector<std::int32_t> m_after;  ///< … and the one after it
};

}  // namespace

std::optional<StockForecast> forecastByPaths(const StockOutlook& outlook, const ForecastRule& rule, const ForecastWatch& watch) {
    assert(outlook.days >= 1 && rule.paths >= 100 && rule.paths <= 1'000'000);
    Paths paths(outlook, rule);
    QuantileCounter quantiles(rule.levels);
    StockForecast forecast;
    forecast.levels = rule.levels;
    forecast.paths = rule.paths;
    forecast.use.resize(rule.useHorizons.size());
    for (int day = 0; day < outlook.days; ++day) {
        if (watch.cancelled && watch.cancelled()) return std::nullopt;
        paths.step(day);
        forecast.stock.push_back(quantiles.of(paths.stock()));
        forecast.outBy.push_back(paths.out());
        for (size_t i = 0; i < rule.useHorizons.size(); ++i)
            if (std::clamp(rule.useHorizons[i], 1, outlook.days) == day + 1) forecast.use[i] = quantiles.of(paths.used());
        if (watch.progress) watch.progress(double(day + 1) / outlook.days);
    }
    return forecast;
}

}  // namespace laneward
