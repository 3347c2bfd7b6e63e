#include "core/statistics/quantile_counter.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace laneward {

namespace {

constexpr size_t sampled = 256;
constexpr size_t crowded = 100;  // a bin with 1 / this part of all values

}  // namespace

double QuantileCounter::selected(std::span<const double> values, double rank) {
    m_scratch.assign(values.begin(), values.end());
    const size_t index = size_t(std::clamp(std::ceil(rank) - 1, 0.0, double(values.size() - 1)));
    const auto place = m_scratch.begin() + std::ptrdiff_t(index);
    std::nth_element(m_scratch.begin(), place, m_scratch.end());
    return *place;
}

std::vector<double> QuantileCounter::of(std::span<const double> values) {
    assert(!values.empty());
    const size_t few = std::min(values.size(), sampled);
    const auto [low, high] = std::minmax_element(values.begin(), values.begin() + std::ptrdiff_t(few));
    const double from = *low;
    const double width = (*high - *low) / bins;
    const double perWidth = width > 0 ? 1 / width : 0;
    m_counts.fill(0);
    for (double value : values)
        ++m_counts[size_t(std::int32_t(std::clamp((value - from) * perWidth + 1, 0.0, bins + 1.0)))];
    std::vector<double> found;
    size_t bin = 0;
    double before = 0;  // values in the bins before this one
    for (double level : m_levels) {
        const double rank = level * double(values.size());
        while (bin + 1 < m_counts.size() && before + m_counts[bin] < rank)
            before += m_counts[bin++];
        if (width <= 0 || bin == 0 || bin > bins || m_counts[bin] * crowded > values.size())
            found.push_back(selected(values, rank));
        else
            found.push_back(from + width * (double(bin) - 1 + (rank - before) / m_counts[bin]));
    }
    return found;
}

}  // namespace laneward
