#include "core/statistics/run_lengths.h"
#include "core/statistics/normal.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace laneward {

namespace {

/// Solves A x = b in place by elimination with row pivots; rows of A carry b as their last element.
std::vector<double> solved(std::vector<std::vector<double>> rows) {
    const size_t n = rows.size();
    for (size_t column = 0; column < n; ++column) {
        const auto larger = [column](const auto& a, const auto& b) { return std::abs(a[column]) < std::abs(b[column]); };
        std::swap(rows[column], *std::max_element(rows.begin() + std::ptrdiff_t(column), rows.end(), larger));
        for (size_t row = column + 1; row < n; ++row) {
            const double factor = rows[row][column] / rows[column][column];
            for (size_t i = column; i <= n; ++i)
                rows[row][i] -= factor * rows[column][i];
        }
    }
    std::vector<double> x(n);
    for (size_t row = n; row-- > 0;) {
        double rest = rows[row][n];
        for (size_t i = row + 1; i < n; ++i)
            rest -= rows[row][i] * x[i];
        x[row] = rest / rows[row][row];
    }
    return x;
}

/// Panels so that 30 nodes see a bell of standard deviation `sd` on a length.
int panelsFor(double length, double sd) { return std::clamp(int(std::ceil(length / (16 * sd))), 1, 12); }

}  // namespace

double runLengthOfLimits(double width, double shift) { return 1 / (normalBelow(-width - shift) + normalBelow(shift - width)); }

// L(s) = 1 + L(0) P(x <= k - s) + integral over y in (0, h) of L(y) density(y + k - s), all less the shift.
double runLengthOfOneSidedCusum(const CusumRule& rule, double shift) {
    assert(rule.h > 0);
    const std::vector<QuadratureNode> nodes = quadrature(0, rule.h, panelsFor(rule.h, 1));
    std::vector<double> starts{0};
    for (const QuadratureNode& node : nodes)
        starts.push_back(node.at);
    std::vector<std::vector<double>> rows;
    for (size_t i = 0; i < starts.size(); ++i) {
        const double level = rule.k - starts[i] - shift;
        std::vector<double> row{-normalBelow(level)};
        for (const QuadratureNode& node : nodes)
            row.push_back(-node.weight * normalDensity(node.at + level));
        row[i] += 1;
        row.push_back(1);
        rows.push_back(std::move(row));
    }
    return solved(std::move(rows)).front();
}

double runLengthOfCusum(const CusumRule& rule, double shift) {
    return 1 / (1 / runLengthOfOneSidedCusum(rule, shift) + 1 / runLengthOfOneSidedCusum(rule, -shift));
}

// L(u) = 1 + 1/w * integral over y in (-h, h) of L(y) density((y - (1 - w) u) / w - shift).
double runLengthOfEwma(const EwmaRule& rule, double shift) {
    assert(rule.weight > 0 && rule.weight <= 1 && rule.width > 0);
    const double w = rule.weight;
    const double h = rule.width * std::sqrt(w / (2 - w));
    const std::vector<QuadratureNode> nodes = quadrature(-h, h, panelsFor(2 * h, w));
    const auto rowFrom = [&](double u) {
        std::vector<double> row;
        for (const QuadratureNode& node : nodes)
            row.push_back(-node.weight / w * normalDensity((node.at - (1 - w) * u) / w - shift));
        return row;
    };
    std::vector<std::vector<double>> rows;
    for (size_t i = 0; i < nodes.size(); ++i) {
        std::vector<double> row = rowFrom(nodes[i].at);
        row[i] += 1;
        row.push_back(1);
        rows.push_back(std::move(row));
    }
    const std::vector<double> lengths = solved(std::move(rows));
    const std::vector<double> fromCentre = rowFrom(0);
    double length = 1;
    for (size_t i = 0; i < nodes.size(); ++i)
        length -= fromCentre[i] * lengths[i];
    return length;
}

double cusumLimitFor(double runLength, double k) {
    double low = 1e-3;
    double high = 30;
    while (high - low > 1e-7) {
        const double middle = (low + high) / 2;
        (runLengthOfCusum({k, middle}, 0) < runLength ? low : high) = middle;
    }
    return (low + high) / 2;
}

}  // namespace laneward
