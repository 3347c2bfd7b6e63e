#include "core/season/product_usage.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

// Between counts of what is not filled into tanks; common practice, no source.
constexpr int lanesBetweenCounts = 1'000;
constexpr int daysBetweenCounts = 28;

std::vector<UsageFill> fillsFrom(const std::vector<FillPoint>& points) {
    std::vector<UsageFill> fills;
    for (const FillPoint& p : points)
        fills.push_back({p.fill, p.at, {p.nominal.value}, {p.poured.value}, p.lanes, p.follows});
    return fills;
}

std::int64_t lanesCleaned(const std::vector<RunLog>& runs, Instant from, Instant until) {
    std::int64_t lanes = 0;
    for (const RunLog& run : runs) {
        const bool within = from < run.time.end && run.time.end <= until;
        if (within && run.treatment != Treatment::ConditionOnly) lanes += run.use.laneRuns;
    }
    return lanes;
}

Amount nominalBetween(const Supply& supply, const std::vector<RunLog>& runs, Instant from, Instant until) {
    if (supply.basis == UseBasis::PerLaneCleaned) return supply.usualUse * lanesCleaned(runs, from, until);
    return {std::llround(double(supply.usualUse.value) * double((until - from).value) / double(hours(24).value))};
}

}  // namespace

std::vector<ProductUsage> usageOf(const DriftHistory& history, const Centre& centre) {
    std::vector<ProductUsage> usages;
    for (const Machine& machine : centre.machines) {
        for (int product = 0; product < products; ++product) {
            const QString name = productName(machine, product);
            const Microlitres tank = tankOf(machine, product);
            if (name.isEmpty() || tank <= Microlitres{0}) continue;
            UsageRule rule;
            rule.tank = {tank.value};
            usages.push_back(
                {machine.id, product, name, learnUsage(fillsFrom(fillPoints(history, machine, product).points), rule)});
        }
    }
    return usages;
}

UseFactors factorsOf(const std::vector<ProductUsage>& usages) {
    UseFactors factors;
    for (const ProductUsage& one : usages)
        factors[{one.machine, one.product}] = one.usage.factor().centre;
    return factors;
}

Amount goneIn(const Movement& movement, const SupplyId& supply) {
    Amount sum;
    for (const Entry& entry : movement.entries) {
        const Place::Kind kind = entry.key.place.kind;
        const bool leaves = kind == Place::Kind::Lane || kind == Place::Kind::Drain || kind == Place::Kind::Loss;
        if (entry.key.supply == supply && leaves) sum += entry.amount;
    }
    return sum;
}

std::vector<const StockCount*> countsOf(const Supply& supply, const std::vector<StockCount>& all) {
    std::vector<const StockCount*> counts;
    for (const StockCount& count : all) {
        const auto isOwn = [&](const CountLine& line) { return line.key.supply == supply.id; };
        if (std::any_of(count.lines.begin(), count.lines.end(), isOwn)) counts.push_back(&count);
    }
    std::sort(counts.begin(), counts.end(),
              [](const StockCount* a, const StockCount* b) { return std::pair(a->at, a->id) < std::pair(b->at, b->id); });
    return counts;
}

Usage usageFromCounts(const Supply& supply, const StockHistory& history) {
    UsageRule rule;
    const int usual = supply.basis == UseBasis::PerLaneCleaned ? lanesBetweenCounts : daysBetweenCounts;
    rule.tank = std::max(Amount{1}, supply.usualUse * usual);
    rule.factorDeviation = 0.3;
    rule.noise = 0.1;
    rule.purgeDeviation = 0;
    rule.lineShare = 0;
    std::vector<UsageFill> fills;
    const std::vector<const StockCount*> counts = countsOf(supply, history.counts);
    for (size_t n = 1; n < counts.size(); ++n) {
        const Instant from = counts[n - 1]->at;
        const Instant until = counts[n]->at;
        Amount used;
        for (const Movement& movement : history.movements) {
            if (from < movement.at && movement.at <= until) used += goneIn(movement, supply.id);
        }
        fills.push_back({counts[n]->id, until, nominalBetween(supply, history.runs, from, until), used, 0, true});
    }
    return learnUsage(std::move(fills), rule);
}

}  // namespace laneward
