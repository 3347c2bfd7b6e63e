#include "core/statistics/survival_curve.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double normal975 = 1.959963984540054;
constexpr double tie = 1.5e-8;  // how near one half counts as one half: the root of a double's precision

/// The age at which a falling curve passes one half; where it runs along at one half, the middle of that stretch.
template <class Height>
std::optional<double> halfOf(const std::vector<SurvivalStep>& steps, Height heightOf) {
    const auto isHalf = [](double height) { return height < 0.5 + tie; };
    auto first = steps.begin();
    while (first != steps.end() && !(heightOf(*first) && isHalf(*heightOf(*first))))
        ++first;
    if (first == steps.end()) return {};
    const double height = *heightOf(*first);
    if (std::abs(height - 0.5) >= tie) return first->age;
    for (auto next = first + 1; next != steps.end(); ++next)
        if (heightOf(*next) && *heightOf(*next) < height) return (first->age + next->age) / 2;
    return first->age;
}

}  // namespace

double SurvivalCurve::survivalAt(double age) const {
    const auto after =
        std::upper_bound(steps.begin(), steps.end(), age, [](double a, const SurvivalStep& step) { return a < step.age; });
    return after == steps.begin() ? 1 : (after - 1)->survival;
}

Result<SurvivalCurve> survivalCurve(std::span<const Life> lives) {
    if (const Outcome ages = checkAges(lives); !ages) return ages.error();
    std::vector<Life> sorted(lives.begin(), lives.end());
    std::sort(sorted.begin(), sorted.end(), [](const Life& a, const Life& b) { return a.age < b.age; });
    SurvivalCurve curve;
    double survival = 1;
    double greenwood = 0;  // variance of the logarithm: sum of d / (n (n - d))
    for (size_t i = 0; i < sorted.size();) {
        SurvivalStep step;
        step.age = sorted[i].age;
        step.atRisk = int(sorted.size() - i);
        for (; i < sorted.size() && sorted[i].age == step.age; ++i)
            ++(sorted[i].failed ? step.failed : step.leftAlive);
        const double n = step.atRisk;
        const double living = n - step.failed;
        survival *= living / n;
        if (living > 0) greenwood += step.failed / (n * living);
        step.survival = survival;
        if (survival > 0) {
            const double deviation = std::sqrt(greenwood);
            step.standardError = survival * deviation;
            step.low = survival * std::exp(-normal975 * deviation);
            step.high = std::min(1.0, survival * std::exp(normal975 * deviation));
        }
        curve.steps.push_back(step);
    }
    curve.median.estimate = halfOf(curve.steps, [](const SurvivalStep& s) { return std::optional(s.survival); });
    curve.median.low = halfOf(curve.steps, [](const SurvivalStep& s) { return s.low; });
    curve.median.high = halfOf(curve.steps, [](const SurvivalStep& s) { return s.high; });
    return curve;
}

}  // namespace laneward
