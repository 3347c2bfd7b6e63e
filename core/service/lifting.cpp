#include "core/service/lifting.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace laneward {

namespace {

constexpr double poundsPerKilogram = 1 / 0.45359237;

struct Constants {
    double load, reach, farthest, knuckle, perHeight, highest, perDistance, shortest, longest;
};
constexpr Constants metric{23, 25, 63, 75, 0.003, 175, 4.5, 25, 175};
constexpr Constants inches{51, 10, 25, 30, 0.0075, 70, 1.8, 10, 70};

struct FrequencyRow {
    double perMinute;
    std::array<double, 6> multiplier;  ///< by duration, and below or from knuckle height
};
// Table 5 of the manual.
constexpr std::array<FrequencyRow, 17> frequencies{{
    {0.2, {1.00, 1.00, 0.95, 0.95, 0.85, 0.85}},
    {0.5, {0.97, 0.97, 0.92, 0.92, 0.81, 0.81}},
    {1, {0.94, 0.94, 0.88, 0.88, 0.75, 0.75}},
    {2, {0.91, 0.91, 0.84, 0.84, 0.65, 0.65}},
    {3, {0.88, 0.88, 0.79, 0.79, 0.55, 0.55}},
    {4, {0.84, 0.84, 0.72, 0.72, 0.45, 0.45}},
    {5, {0.80, 0.80, 0.60, 0.60, 0.35, 0.35}},
    {6, {0.75, 0.75, 0.50, 0.50, 0.27, 0.27}},
    {7, {0.70, 0.70, 0.42, 0.42, 0.22, 0.22}},
    {8, {0.60, 0.60, 0.35, 0.35, 0.18, 0.18}},
    {9, {0.52, 0.52, 0.30, 0.30, 0.00, 0.15}},
    {10, {0.45, 0.45, 0.26, 0.26, 0.00, 0.13}},
    {11, {0.41, 0.41, 0.00, 0.23, 0.00, 0.00}},
    {12, {0.37, 0.37, 0.00, 0.21, 0.00, 0.00}},
    {13, {0.00, 0.34, 0.00, 0.00, 0.00, 0.00}},
    {14, {0.00, 0.31, 0.00, 0.00, 0.00, 0.00}},
    {15, {0.00, 0.28, 0.00, 0.00, 0.00, 0.00}},
}};

double frequencyMultiplier(double perMinute, size_t column) {
    if (perMinute <= frequencies.front().perMinute) return frequencies.front().multiplier[column];
    for (size_t i = 1; i < frequencies.size(); ++i) {
        const FrequencyRow& before = frequencies[i - 1];
        const FrequencyRow& row = frequencies[i];
        if (perMinute > row.perMinute) continue;
        const double part = (perMinute - before.perMinute) / (row.perMinute - before.perMinute);
        return before.multiplier[column] + part * (row.multiplier[column] - before.multiplier[column]);
    }
    return 0;
}

double couplingMultiplier(Coupling coupling, bool low) {
    switch (coupling) {
        case Coupling::Good:
            return 1;
        case Coupling::Fair:
            return low ? 0.95 : 1;
        case Coupling::Poor:
            return 0.9;
    }
    return 0;
}

}  // namespace

Result<LiftMultipliers> liftMultipliers(const Lift& lift) {
    for (double measure : {lift.horizontal, lift.vertical, lift.distance, lift.angle, lift.perMinute})
        if (!std::isfinite(measure) || measure < 0) return fault(ErrorKind::Invalid, "lifting.measure", {});
    const Constants& c = lift.units == LiftUnits::Metric ? metric : inches;
    const bool low = lift.vertical < c.knuckle;
    LiftMultipliers all;
    all.load = c.load;
    all.horizontal = lift.horizontal > c.farthest ? 0 : c.reach / std::max(lift.horizontal, c.reach);
    all.vertical = lift.vertical > c.highest ? 0 : 1 - c.perHeight * std::abs(lift.vertical - c.knuckle);
    all.distance = lift.distance > c.longest ? 0 : lift.distance < c.shortest ? 1 : 0.82 + c.perDistance / lift.distance;
    all.angle = lift.angle > 135 ? 0 : 1 - 0.0032 * lift.angle;
    all.frequency = frequencyMultiplier(lift.perMinute, 2 * size_t(lift.duration) + (low ? 0 : 1));
    all.coupling = couplingMultiplier(lift.coupling, low);
    return all;
}

Result<double> recommendedWeightLimit(const Lift& lift) {
    const Result<LiftMultipliers> all = liftMultipliers(lift);
    if (!all) return all.error();
    return all->product();
}

std::vector<Finding> liftingFindings(const QString& what, double kilograms, const Lift& lift) {
    const Result<double> limit = recommendedWeightLimit(lift);
    if (!limit || !std::isfinite(kilograms) || kilograms < 0 || kilograms > 10'000)
        return {{Severity::Fault, "lifting.measure", what, {}}};
    const double most = lift.units == LiftUnits::Metric ? *limit : *limit / poundsPerKilogram;
    if (kilograms <= most) return {};
    const auto up = [](double x) { return std::int64_t(std::ceil(x)); };
    const auto down = [](double x) { return std::int64_t(std::floor(x)); };
    const char* rule = kilograms > 2 * most ? "lifting.lift" : "lifting.two";
    return {{Severity::Warning,
             rule,
             what,
             {up(kilograms), down(most), up(kilograms * poundsPerKilogram), down(most * poundsPerKilogram)}}};
}

}  // namespace laneward
