#include "core/season/supply_difference.h"

#include "core/season/event_costs.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace laneward {

namespace {

const SupplyLine* lineOf(const SupplyOutlook& outlook, const SupplyId& supply) {
    const auto found =
        std::find_if(outlook.lines.begin(), outlook.lines.end(), [&](const SupplyLine& line) { return line.supply == supply; });
    return found == outlook.lines.end() ? nullptr : &*found;
}

/// None comes last.
bool isEarlier(const std::optional<QDate>& a, const std::optional<QDate>& b) { return a && (!b || *a < *b); }

/// What was used of each product by name, mixed liquid; negative where it was saved.
using Used = std::map<QString, double>;

void add(Used& used, const std::vector<Job>& jobs, const SeasonState& season, const UseFactors& factors, int sign) {
    for (const Job& job : jobs) {
        const Machine* machine = job.state == JobState::Dropped ? nullptr : findMachine(season.centre, job.machine);
        for (int product = 0; machine && product < products; ++product) {
            const Microlitres nominal = product == cleanerProduct ? job.use.cleaner : job.use.conditioner[size_t(product)];
            if (nominal == Microlitres{0}) continue;
            const auto factor = factors.find({machine->id, product});
            used[productName(*machine, product)] += sign * (factor == factors.end() ? 1 : factor->second) * double(nominal.value);
        }
    }
}

ProductCost priced(const Used& used, const SeasonState& season) {
    ProductCost cost{{0, season.centre.facts.settings.currency}, {}};
    for (const auto& [name, amount] : used) {
        const Supply* supply = supplyNamed(season.supplies, name);
        const auto unit = supply ? unitPriceOf(season.offers, supply->id) : std::nullopt;
        const std::int64_t whole = std::llround(std::abs(amount) / (supply ? 1 + supply->waterParts : 1));
        if (whole == 0) continue;
        if (!unit || (!unit->price.isZero() && unit->price.currency != cost.sum.currency)) {
            cost.withoutPrice << name;
            continue;
        }
        const Money money = costOf(Amount{whole}, *unit);
        cost.sum = cost.sum + Money{amount < 0 ? -money.minor : money.minor, money.currency};
    }
    return cost;
}

}  // namespace

SupplyDifference supplyDifference(const SupplyOutlook& before, const SupplyOutlook& after) {
    SupplyDifference change;
    for (const SupplyLine& then : after.lines) {
        const SupplyLine* now = lineOf(before, then.supply);
        if (!now) continue;
        if (now->outLikely != then.outLikely) change.runOut.push_back({then.supply, now->outLikely, then.outLikely});
        if (now->orderBy == then.orderBy) continue;
        const auto same = std::find_if(change.orders.begin(), change.orders.end(), [&](const OrderShift& shift) {
            return shift.before == now->orderBy && shift.after == then.orderBy;
        });
        if (same == change.orders.end())
            change.orders.push_back({{then.supply}, now->orderBy, then.orderBy});
        else
            same->supplies.push_back(then.supply);
    }
    const auto order = [](const auto& a, const auto& b) { return isEarlier(a.after, b.after); };
    std::stable_sort(change.runOut.begin(), change.runOut.end(), order);
    std::stable_sort(change.orders.begin(), change.orders.end(), order);
    return change;
}

ProductCost costOf(const std::vector<Job>& jobs, const SeasonState& season, const UseFactors& factors) {
    Used used;
    add(used, jobs, season, factors, 1);
    return priced(used, season);
}

ProductCost costOf(const PlanDifference& change, const SeasonState& season, const UseFactors& factors) {
    Used used;
    add(used, change.added, season, factors, 1);
    add(used, change.removed, season, factors, -1);
    for (const auto& [from, to] : change.moved) {
        add(used, {from}, season, factors, -1);
        add(used, {to}, season, factors, 1);
    }
    return priced(used, season);
}

}  // namespace laneward
