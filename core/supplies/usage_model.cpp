#include "core/supplies/usage_model.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

enum Part : size_t { Factor, Purge, LineBefore, LineNow };
using Weights = std::array<double, 4>;

/// A value, and how much it is believed before the first fill.
struct Belief {
    double value;
    double weight;
};

// Common practice, no source: the line is met within half of the noise of a tank, 33 tanks are remembered; or otherwise.
constexpr std::array<Belief, 5> lineShares{{{0, 0.1}, {0.25, 0.4}, {1, 0.2}, {4, 0.15}, {32, 0.15}}};
constexpr std::array<Belief, 6> discounts{{{1, 0.15}, {0.99, 0.15}, {0.97, 0.2}, {0.93, 0.2}, {0.85, 0.15}, {0.7, 0.15}}};

template <size_t N>
std::vector<Belief> given(const std::optional<double>& value, const std::array<Belief, N>& otherwise) {
    return value ? std::vector<Belief>{{*value, 1}} : std::vector<Belief>(otherwise.begin(), otherwise.end());
}

double square(double x) { return x * x; }

DynamicModel modelOf(const UsageRule& rule, double lineShare) {
    const double s = square(rule.noise);
    return {{rule.factor, rule.purge, 0, 0},
            {square(rule.factorDeviation) / s, square(rule.purgeDeviation) / s, lineShare, lineShare},
            s,
            rule.weight};
}

bool isPlausible(const UsageFill& fill) {
    if (fill.nominal <= Amount{0} || fill.poured <= Amount{0}) return false;
    const double ratio = double(fill.poured.value) / double(fill.nominal.value);
    return leastRatio <= ratio && ratio <= mostRatio;
}

double driftOf(double discount) { return square(1 - discount) / discount; }

}  // namespace

Student UseRate::use(double nominal) const {
    const double x = nominal / tank;
    const double spread = x + x * x * variance + x * x * x / 3 * drift;
    return {mean * nominal, tank * std::sqrt(scale * std::max(spread, 0.0)), freedom};
}

Usage::Usage(const UsageRule& rule) : m_tank(double(rule.tank.value)), m_scaleDiscount(rule.scaleDiscount) {
    assert(rule.tank > Amount{0} && rule.noise > 0);
    for (const Belief& share : given(rule.lineShare, lineShares))
        for (const Belief& discount : given(rule.discount, discounts))
            m_candidates.push_back(
                {modelOf(rule, share.value), share.value, discount.value, std::log(share.weight * discount.weight)});
}

bool Usage::learn(const UsageFill& fill) {
    if (!isPlausible(fill)) {
        ++m_leftOut;
        m_chained = false;
        return false;
    }
    const double x = double(fill.nominal.value) / m_tank;
    const double y = double(fill.poured.value) / m_tank;
    const Weights f{x, 1, -1, 1};
    for (Candidate& one : m_candidates) {
        if (m_chained && fill.follows)
            one.model.copy(LineNow, LineBefore);
        else
            one.model.renew(LineBefore, 0, one.lineShare);
        one.model.renew(LineNow, 0, one.lineShare);
        one.model.walk(Factor, x * driftOf(one.discount));
        one.model.forgetScale(std::pow(m_scaleDiscount, x));
        one.logWeight += one.model.predicted(f, x).logDensity(y);
        one.model.observe(f, x, y);
    }
    m_fills.push_back(fill.fill);
    m_chained = true;
    m_nominal += x;
    if (fill.lanes > 0) {
        m_nominalWithLanes += x;
        m_lanes += fill.lanes;
    }
    return true;
}

double Usage::logLikelihood() const {
    double most = -HUGE_VAL;
    for (const Candidate& one : m_candidates)
        most = std::max(most, one.logWeight);
    double sum = 0;
    for (const Candidate& one : m_candidates)
        sum += std::exp(one.logWeight - most);
    return most + std::log(sum);
}

template <class Value>
double Usage::average(Value of) const {
    const double all = logLikelihood();
    double sum = 0;
    for (const Candidate& one : m_candidates)
        sum += std::exp(one.logWeight - all) * of(one);
    return sum;
}

template <class Says>
Student Usage::mixed(Says says) const {
    const double centre = average([&](const Candidate& one) { return says(one).centre; });
    const double squares = average([&](const Candidate& one) {
        const Student said = says(one);
        return square(said.scale) + square(said.centre - centre);
    });
    return {centre, std::sqrt(squares), m_candidates.front().model.freedom()};  // all have the same
}

Student Usage::factor() const {
    return mixed([](const Candidate& one) { return one.model.predicted(Weights{1, 0, 0, 0}); });
}

Student Usage::purge() const {
    return mixed([this](const Candidate& one) { return one.model.predicted(Weights{0, m_tank, 0, 0}); });
}

double Usage::tanksPerFill() const { return m_fills.empty() ? 1 : m_nominal / double(m_fills.size()); }

double Usage::nominalPerLane() const { return m_lanes > 0 ? m_nominalWithLanes * m_tank / double(m_lanes) : 0; }

double Usage::lineShare() const {
    return average([](const Candidate& one) { return one.lineShare; });
}

double Usage::discount() const {
    return average([](const Candidate& one) { return one.discount; });
}

UseRate Usage::rate() const {
    const Weights perTank{1, 1 / tanksPerFill(), 0, 0};
    const Student mean = mixed([&](const Candidate& one) { return one.model.predicted(perTank); });
    const double scale = average([](const Candidate& one) { return one.model.scale(); });
    const double drift = average([](const Candidate& one) { return driftOf(one.discount) * one.model.scale(); });
    return {m_tank, mean.centre, square(mean.scale) / scale, drift / scale, scale, mean.freedom};
}

Student Usage::poured(double nominal) const {
    const double x = nominal / m_tank;
    const double perTank = 1 / tanksPerFill();
    const double begins = m_chained ? -1 : 0;  // at the line as it was met last, else at any
    const Student tanks = mixed([&](const Candidate& one) {
        const double v = x + x * x * x / 3 * driftOf(one.discount) + one.lineShare * (m_chained ? 1 : 2);
        return one.model.predicted(Weights{x, x * perTank, 0, begins}, v);
    });
    return {tanks.centre * m_tank, tanks.scale * m_tank, tanks.freedom};
}

Student Usage::perLane(double nominalPerLane) const {
    const Weights perTank{1, 1 / tanksPerFill(), 0, 0};
    const Student one = mixed([&](const Candidate& candidate) { return candidate.model.predicted(perTank); });
    return {one.centre * nominalPerLane, one.scale * nominalPerLane, one.freedom};
}

Usage learnUsage(std::vector<UsageFill> fills, const UsageRule& rule) {
    std::sort(fills.begin(), fills.end(),
              [](const UsageFill& a, const UsageFill& b) { return std::pair(a.at, a.fill) < std::pair(b.at, b.fill); });
    Usage usage(rule);
    for (const UsageFill& fill : fills)
        usage.learn(fill);
    return usage;
}

}  // namespace laneward
