#include "core/statistics/dynamic_model.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace laneward {

namespace {

double product(std::span<const double> a, std::span<const double> b) {
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

}  // namespace

DynamicModel::DynamicModel(std::vector<double> means, const std::vector<double>& variances, double scale, double freedom)
    : m_mean(std::move(means)), m_covariance(m_mean.size() * m_mean.size()), m_scale(scale), m_freedom(freedom) {
    assert(variances.size() == m_mean.size() && scale > 0 && freedom > 0);
    for (size_t i = 0; i < m_mean.size(); ++i)
        m_covariance[i * m_mean.size() + i] = variances[i];
}

void DynamicModel::walk(size_t i, double variance) {
    assert(variance >= 0);
    m_covariance[i * m_mean.size() + i] += variance;
}

void DynamicModel::forgetScale(double discount) {
    assert(discount > 0 && discount <= 1);
    m_freedom *= discount;
}

void DynamicModel::renew(size_t i, double mean, double variance) {
    const size_t n = m_mean.size();
    for (size_t j = 0; j < n; ++j)
        m_covariance[i * n + j] = m_covariance[j * n + i] = 0;
    m_mean[i] = mean;
    m_covariance[i * n + i] = variance;
}

void DynamicModel::copy(size_t from, size_t to) {
    const size_t n = m_mean.size();
    m_mean[to] = m_mean[from];
    for (size_t j = 0; j < n; ++j)
        m_covariance[to * n + j] = m_covariance[from * n + j];
    for (size_t j = 0; j < n; ++j)
        m_covariance[j * n + to] = m_covariance[j * n + from];
}

std::vector<double> DynamicModel::applied(std::span<const double> f) const {
    const size_t n = m_mean.size();
    assert(f.size() == n);
    std::vector<double> cf(n);
    for (size_t i = 0; i < n; ++i)
        cf[i] = product(std::span(m_covariance).subspan(i * n, n), f);
    return cf;
}

Student DynamicModel::predicted(std::span<const double> f, double v) const {
    const double q = product(f, applied(f)) + v;
    return {product(f, m_mean), std::sqrt(m_scale * std::max(q, 0.0)), m_freedom};  // rounding may fall below 0
}

void DynamicModel::observe(std::span<const double> f, double v, double y) {
    const size_t n = m_mean.size();
    const std::vector<double> cf = applied(f);
    const double q = product(f, cf) + v;
    assert(q > 0);
    const double error = y - product(f, m_mean);
    for (size_t i = 0; i < n; ++i)
        m_mean[i] += cf[i] / q * error;
    for (size_t i = 0; i < n; ++i)
        for (size_t j = 0; j < n; ++j)
            m_covariance[i * n + j] -= cf[i] * cf[j] / q;
    m_scale += (error * error / q - m_scale) / (m_freedom + 1);
    m_freedom += 1;
}

}  // namespace laneward
