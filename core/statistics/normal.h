// The standard normal distribution and integration by Gauss and Legendre. Internal to this room.
#pragma once

#include <cmath>
#include <numbers>
#include <vector>

namespace laneward {

inline double normalDensity(double x) { return std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi); }
inline double normalBelow(double x) { return std::erfc(-x / std::numbers::sqrt2) / 2; }

struct QuadratureNode {
    double at = 0;
    double weight = 0;
};

/// From a to b in `panels` equal parts of 30 nodes each: exact for polynomials of degree 59 in each.
std::vector<QuadratureNode> quadrature(double a, double b, int panels);

}  // namespace laneward
