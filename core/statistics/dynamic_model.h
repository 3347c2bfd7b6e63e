// A dynamic linear model with unknown scale: a straight-line relation that is learned value by value and may drift.
//
//     value = F'state + error,   error ~ N(0, variance V times s),   state | s ~ N(m, s C),   1/s ~ Gamma(n/2, n S/2)
//
// s is the unknown scale (a variance), S its estimate, n the degrees of freedom behind it. All variances here, C and V, are in
// units of s. A value y changes them by (West and Harrison 1997, Bayesian Forecasting and Dynamic Models, 4.5 and 6.3, from
// memory)
//
//     f = F'm,  Q = F'C F + V,  A = C F / Q,  e = y - f,  m += A e,  C -= A A'Q,  S += S (e^2/(S Q) - 1) / (n + 1),  n += 1
//
// and predictions are Student's t with n degrees of freedom. Without walking and forgetting this is the conjugate
// normal-inverse-gamma regression, whatever the order of the values.
#pragma once

#include "core/statistics/student.h"

#include <cstddef>
#include <span>
#include <vector>

namespace laneward {

class DynamicModel {
public:
    /// Parts of the state are independent at first: their means and variances (in units of s); S; n.
    DynamicModel(std::vector<double> means, const std::vector<double>& variances, double scale, double freedom);

    /// Part i walks on at random: its variance grows by `variance` (in units of s).
    void walk(size_t i, double variance);
    /// The scale may change: the degrees of freedom shrink by the discount (10.8). 0 < discount <= 1.
    void forgetScale(double discount);
    /// Part i begins anew, independent of the others.
    void renew(size_t i, double mean, double variance);
    /// Part `to` becomes a copy of part `from`, and remains tied to it until one of them is renewed.
    void copy(size_t from, size_t to);

    /// The next value of F'state + error with variance V. With V = 0 that of the combination F'state itself.
    Student predicted(std::span<const double> f, double v = 0) const;
    void observe(std::span<const double> f, double v, double y);

    double mean(size_t i) const { return m_mean[i]; }
    double covariance(size_t i, size_t j) const { return m_covariance[i * m_mean.size() + j]; }  ///< in units of s
    double scale() const { return m_scale; }                                                     ///< S
    double freedom() const { return m_freedom; }                                                 ///< n

private:
    std::vector<double> applied(std::span<const double> f) const;  ///< C F

    std::vector<double> m_mean;
    std::vector<double> m_covariance;  ///< row by row
    double m_scale;
    double m_freedom;
};

}  // namespace laneward
