#include "core/statistics/control_charts.h"
#include "core/statistics/normal.h"

#include <boost/math/quadrature/gauss.hpp>

#include <algorithm>
#include <cassert>

namespace laneward {

namespace {

constexpr double farEnough = 9;  // sigmas: what lies beyond weighs less than 1e-18
constexpr double widestRange = 14;

struct RangeMoments {
    double mean = 0;
    double deviation = 0;
};

/// P(range of n values <= w) = n * integral of density(x) (below(x + w) - below(x))^(n-1) dx, x the smallest value (Tippett
/// 1925).
double rangeBelow(double w, int n, const std::vector<QuadratureNode>& nodes) {
    double sum = 0;
    for (const QuadratureNode& node : nodes)
        sum += node.weight * normalDensity(node.at) * std::pow(normalBelow(node.at + w) - normalBelow(node.at), n - 1);
    return n * sum;
}

/// Mean = integral of P(range > w) dw, mean square = 2 * integral of w P(range > w) dw.
RangeMoments rangeMoments(int n) {
    const std::vector<QuadratureNode> nodes = quadrature(-farEnough, farEnough, 3);
    double mean = 0;
    double square = 0;
    for (const QuadratureNode& node : quadrature(0, widestRange, 2)) {
        const double above = 1 - rangeBelow(node.at, n, nodes);
        mean += node.weight * above;
        square += 2 * node.weight * node.at * above;
    }
    return {mean, std::sqrt(square - mean * mean)};
}

}  // namespace

std::vector<QuadratureNode> quadrature(double a, double b, int panels) {
    using Rule = boost::math::quadrature::gauss<double, 30>;
    std::vector<QuadratureNode> nodes;
    const double half = (b - a) / panels / 2;
    for (int panel = 0; panel < panels; ++panel) {
        const double middle = a + (2 * panel + 1) * half;
        for (size_t i = 0; i < Rule::abscissa().size(); ++i) {
            nodes.push_back({middle - half * Rule::abscissa()[i], half * Rule::weights()[i]});
            nodes.push_back({middle + half * Rule::abscissa()[i], half * Rule::weights()[i]});
        }
    }
    return nodes;
}

ChartConstants chartConstants(int n) {
    assert(n >= smallestSubgroup && n <= largestSubgroup);
    const RangeMoments range = rangeMoments(n);
    const double c4 = std::sqrt(2.0 / (n - 1)) * std::exp(std::lgamma(n / 2.0) - std::lgamma((n - 1) / 2.0));
    const double spread = 3 * std::sqrt(1 - c4 * c4);
    ChartConstants constants{};
    constants.A2 = 3 / (range.mean * std::sqrt(n));
    constants.A3 = 3 / (c4 * std::sqrt(n));
    constants.c4 = c4;
    constants.B3 = std::max(0.0, 1 - spread / c4);
    constants.B4 = 1 + spread / c4;
    constants.B5 = std::max(0.0, c4 - spread);
    constants.B6 = c4 + spread;
    constants.d2 = range.mean;
    constants.d3 = range.deviation;
    constants.D3 = std::max(0.0, 1 - 3 * range.deviation / range.mean);
    constants.D4 = 1 + 3 * range.deviation / range.mean;
    return constants;
}

}  // namespace laneward
