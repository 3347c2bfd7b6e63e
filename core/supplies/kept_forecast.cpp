#include "core/supplies/kept_forecast.h"

#include "core/base/limits.h"

#include <algorithm>
#include <set>

namespace laneward {

namespace {

constexpr int longestHorizon = 3'660;

bool isPossible(const KeptUse& use) {
    const auto within = [](Amount a) { return -limits::stockAmount <= a.value && a.value <= limits::stockAmount; };
    return std::all_of(use.use.begin(), use.use.end(), within) && std::is_sorted(use.use.begin(), use.use.end());
}

bool ascends(const std::vector<KeptUse>& horizons) {
    int before = 0;
    for (const KeptUse& use : horizons) {
        if (use.days <= before || use.days > longestHorizon) return false;
        before = use.days;
    }
    return true;
}

}  // namespace

std::vector<Finding> faultsOf(const KeptForecast& forecast) {
    std::vector<Finding> faults;
    const QString day = forecast.day.toString(Qt::ISODate);
    const auto add = [&](const char* rule) { faults.push_back({Severity::Fault, rule, day, {}}); };
    if (!forecast.day.isValid()) add("forecast.day");
    std::set<SupplyId> seen;
    bool named = forecast.supplies.size() <= size_t{limits::stockLines};
    bool ordered = true;
    bool possible = true;
    for (const KeptSupply& one : forecast.supplies) {
        named = named && !one.supply.isEmpty() && seen.insert(one.supply).second;
        ordered = ordered && ascends(one.horizons);
        possible = possible && std::all_of(one.horizons.begin(), one.horizons.end(), isPossible);
    }
    if (!named) add("forecast.supplies");
    if (!ordered) add("forecast.horizons");
    if (!possible) add("forecast.quantiles");
    return faults;
}

}  // namespace laneward
