#include "core/service/waste_tank.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

constexpr double mostShare = 1.5;  // of the cleaner; beyond it something was not written down

double square(double x) { return x * x; }

}  // namespace

WasteTank::WasteTank(const WasteRule& rule)
    : m_rule(rule),
      m_capacity(double(rule.capacity.value)),
      m_drift(square(1 - rule.discount) / rule.discount),
      m_model({rule.share}, {square(rule.shareDeviation / rule.noise)}, square(rule.noise), rule.weight) {
    assert(rule.capacity > Microlitres{0} && rule.noise > 0 && rule.discount > 0 && rule.discount <= 1);
}

bool WasteTank::learn(const Emptying& emptying) {
    const double cleaner = double(emptying.since.cleaner.value) / m_capacity;
    const double back = double((emptying.volume - emptying.since.stripped).value) / m_capacity;
    if (cleaner <= 0 || emptying.since.stripped < Microlitres{0} || back <= 0 || back > mostShare * cleaner) {
        ++m_leftOut;
        return false;
    }
    m_model.walk(0, cleaner * m_drift);
    m_model.forgetScale(std::pow(m_rule.scaleDiscount, cleaner));
    m_model.observe(std::array{cleaner}, cleaner, back);
    ++m_emptyings;
    return true;
}

Student WasteTank::share() const { return m_model.predicted(std::array{1.0}); }

// The share walks on during the work, which adds a third of its walk to each tank of it.
Student WasteTank::wasteOf(const Cleaning& work) const {
    const double x = double(work.cleaner.value) / m_capacity;
    const Student tanks = m_model.predicted(std::array{x}, x + x * x * x / 3 * m_drift);
    return {tanks.centre * m_capacity + double(work.stripped.value), tanks.scale * m_capacity, tanks.freedom};
}

Microlitres WasteTank::perLane(const Cleaning& lane, int lanes, double p) const {
    assert(lanes >= 1);
    const Student all = wasteOf({lane.cleaner * lanes, lane.stripped * lanes});
    return {std::max<std::int64_t>(0, std::llround(std::ceil(all.quantile(p) / lanes)))};
}

std::vector<double> WasteTank::overflowChances(const WasteLevel& now, std::span<const Cleaning> jobs) const {
    std::vector<double> chances;
    Cleaning work = now.since;
    const double room = double((m_rule.capacity - now.measured).value);
    double before = room < 0 ? 1 : 0;
    for (const Cleaning& job : jobs) {
        work = work + job;
        // What has overflowed stays so.
        before = std::max(before, 1 - wasteOf(work).below(room));
        chances.push_back(before);
    }
    return chances;
}

std::optional<size_t> WasteTank::emptyBefore(const WasteLevel& now, std::span<const Cleaning> jobs, double most) const {
    const std::vector<double> chances = overflowChances(now, jobs);
    const auto first = std::find_if(chances.begin(), chances.end(), [&](double chance) { return chance > most; });
    if (first == chances.end()) return {};
    return size_t(first - chances.begin());
}

}  // namespace laneward
