#include "core/statistics/rank_regression.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double leastSpread = 1e-12;  // of the logarithms of ages

}  // namespace

std::vector<PlotPoint> plotPoints(std::span<const Life> lives) {
    std::vector<Life> sorted(lives.begin(), lives.end());
    std::sort(sorted.begin(), sorted.end(),
              [](const Life& a, const Life& b) { return a.age != b.age ? a.age < b.age : a.failed > b.failed; });
    const double n = double(sorted.size());
    std::vector<PlotPoint> points;
    double rank = 0;
    for (size_t i = 0; i < sorted.size(); ++i) {
        if (!sorted[i].failed) continue;
        const double reverse = n - double(i);  // lives from this one on
        rank = (reverse * rank + n + 1) / (reverse + 1);
        points.push_back({sorted[i].age, rank, (rank - 0.3) / (n + 0.4)});
    }
    return points;
}

Result<Weibull> fitByRanks(std::span<const Life> lives, Regression regression) {
    if (const Outcome ages = checkAges(lives); !ages) return ages.error();
    const std::vector<PlotPoint> points = plotPoints(lives);
    const double n = double(points.size());
    if (points.size() < 2) return fault(ErrorKind::Invalid, "life.too-few-failures", {}, {std::int64_t(points.size())});
    const auto yOf = [](const PlotPoint& point) { return std::log(-std::log1p(-point.medianRank)); };
    double meanX = 0;
    double meanY = 0;
    for (const PlotPoint& point : points) {
        meanX += std::log(point.age) / n;
        meanY += yOf(point) / n;
    }
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (const PlotPoint& point : points) {
        const double x = std::log(point.age) - meanX;
        const double y = yOf(point) - meanY;
        xx += x * x;
        xy += x * y;
        yy += y * y;
    }
    if (std::sqrt(xx / n) <= leastSpread) return fault(ErrorKind::Invalid, "life.no-spread", {}, {std::int64_t(points.size())});
    const double shape = regression == Regression::XOnY ? yy / xy : xy / xx;
    const double scale = std::exp(meanX - meanY / shape);
    if (!std::isfinite(scale)) return fault(ErrorKind::Invalid, "life.beyond-range", {});
    return Weibull{shape, scale};
}

}  // namespace laneward
