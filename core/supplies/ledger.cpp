#include "core/supplies/ledger.h"

#include "core/base/limits.h"
#include "core/centre/machine.h"

#include <algorithm>
#include <array>
#include <set>

namespace laneward {

namespace {

using Findings = std::vector<Finding>;
using Kind = Place::Kind;

constexpr unsigned bit(Kind kind) { return 1U << unsigned(kind); }
template <class... Kinds>
constexpr unsigned bits(Kinds... kinds) {
    return (bit(kinds) | ...);
}

/// From where and to where a kind of movement goes.
struct Way {
    unsigned from = 0;
    unsigned to = 0;
};

constexpr unsigned inside = bits(Kind::Shelf, Kind::Open, Kind::Tank, Kind::WasteTank);

/// In the order of MovementKind. Use goes from the lane back into a tank where a level shows that less was used than booked.
constexpr std::array ways{Way{bits(Kind::Supplier, Kind::Opening), bits(Kind::Shelf, Kind::Open)},
                          Way{bit(Kind::Shelf), bit(Kind::Open)},
                          Way{bits(Kind::Shelf, Kind::Open, Kind::WaterMain), bit(Kind::Tank)},
                          Way{inside | bit(Kind::Lane), bits(Kind::Tank, Kind::WasteTank, Kind::Lane)},
                          Way{inside, bits(Kind::Loss, Kind::Drain)},
                          Way{inside | bits(Kind::Loss, Kind::Opening), inside | bits(Kind::Loss, Kind::Opening)},
                          Way{bits(Kind::Shelf, Kind::Open), bit(Kind::Supplier)},
                          Way{inside, bit(Kind::Drain)}};
static_assert(ways.size() == size_t(MovementKind::Disposed) + 1);

/// What takes something back goes the other way, and what takes that back the first way again.
bool goesThere(const Movement& movement, const Entry& entry) {
    const Way& way = ways.at(size_t(movement.kind));
    const unsigned oneWay = entry.amount > Amount{0} ? way.to : way.from;
    return ((movement.corrects ? way.to | way.from : oneWay) & bit(entry.key.place.kind)) != 0;
}

QString nameOf(const SupplyId& id, const std::vector<Supply>& supplies) {
    const Supply* supply = findSupply(supplies, id);
    return (supply ? supply->name : id.value).left(limits::nameLength);
}

Value shown(const SupplyId& id, Amount amount, const std::vector<Supply>& supplies) {
    const Supply* supply = findSupply(supplies, id);
    return valueOfAmount(amount, supply ? unitOf(supply->kind) : BaseUnit::Microlitre);
}

bool isOfAMachine(Kind kind) { return kind == Kind::Tank || kind == Kind::WasteTank; }

/// Machines go with tanks, slots with tanks for what is used.
bool isSound(const Place& place) {
    const bool slot = place.kind == Kind::Tank ? place.slot >= 0 && place.slot <= int(conditionerSlots) : place.slot == 0;
    return slot && isOfAMachine(place.kind) == !place.machine.isEmpty();
}

struct Collecting {
    const Movement& movement;
    const std::vector<Supply>& supplies;
    Findings faults;

    void add(const char* rule, const QString& subject, std::vector<Value> values = {}) {
        faults.push_back({Severity::Fault, rule, subject.left(limits::nameLength), std::move(values)});
    }

    void entry(const Entry& entry) {
        const SupplyId& id = entry.key.supply;
        const QString name = nameOf(id, supplies);
        if (!isKept(id, supplies)) add("ledger.unknown-supply", id.value);
        if (!isSound(entry.key.place)) add("ledger.place", name);
        if (entry.amount == Amount{0} || std::abs(entry.amount.value) > limits::stockAmount)
            add("ledger.amount", name, {shown(id, entry.amount, supplies)});
        else if (!goesThere(movement, entry))
            direction(entry, name);
    }

    void direction(const Entry& entry, const QString& name) {
        const bool negative = movement.kind == MovementKind::Received && entry.key.place.isInside() && entry.amount < Amount{0};
        add(negative ? "ledger.negative-receipt" : "ledger.wrong-way", name, {shown(entry.key.supply, entry.amount, supplies)});
    }

    void sums() {
        std::map<SupplyId, Amount> sums;
        for (const Entry& entry : movement.entries)
            sums[entry.key.supply] += entry.amount;
        for (const auto& [id, sum] : sums)
            if (sum != Amount{0}) add("ledger.unbalanced", nameOf(id, supplies), {shown(id, sum, supplies)});
    }
};

/// What a movement does to each inside place, entries of one place together.
std::map<StockKey, Amount> insideOf(const Movement& movement) {
    std::map<StockKey, Amount> change;
    for (const Entry& entry : movement.entries)
        if (entry.key.place.isInside()) change[entry.key] += entry.amount;
    return change;
}

}  // namespace

void Balances::add(const Movement& movement) {
    for (const Entry& entry : movement.entries) {
        if (!entry.key.place.isInside()) continue;
        const auto at = m_amounts.try_emplace(entry.key).first;
        at->second += entry.amount;
        if (at->second == Amount{0}) m_amounts.erase(at);
    }
}

Amount Balances::at(const StockKey& key) const {
    const auto found = m_amounts.find(key);
    return found == m_amounts.end() ? Amount{0} : found->second;
}

Amount Balances::in(const SupplyId& supply, const Place& place) const {
    Amount sum;
    for (auto it = m_amounts.lower_bound({supply, place, {}, {}}); it != m_amounts.end(); ++it) {
        if (it->first.supply != supply || it->first.place != place) break;
        sum += it->second;
    }
    return sum;
}

Amount Balances::onHand(const SupplyId& supply) const {
    Amount sum;
    for (auto it = m_amounts.lower_bound({supply, {}, {}, {}}); it != m_amounts.end() && it->first.supply == supply; ++it)
        sum += it->second;
    return sum;
}

Balances balancesOf(std::span<const Movement> movements) {
    Balances balances;
    for (const Movement& movement : movements)
        balances.add(movement);
    return balances;
}

Movement counterOf(const Movement& movement) {
    Movement counter = movement;
    counter.id = {};
    counter.person = {};
    counter.recordedAt = {};
    counter.flagged = false;
    counter.corrects = movement.id;
    for (Entry& entry : counter.entries)
        entry.amount = -entry.amount;
    return counter;
}

bool isKept(const SupplyId& id, const std::vector<Supply>& supplies) {
    return id == waterId || id == wasteId || findSupply(supplies, id) != nullptr;
}

Findings faultsOf(const Movement& movement, const std::vector<Supply>& supplies) {
    Collecting collecting{movement, supplies, {}};
    const size_t count = movement.entries.size();
    if (count == 0) collecting.add("ledger.empty", movement.id.value);
    if (count > size_t{limits::stockLines})
        collecting.add("ledger.too-long", movement.id.value, {std::int64_t(count), std::int64_t{limits::stockLines}});
    if (movement.at > movement.recordedAt + hours(24)) collecting.add("ledger.time", movement.id.value, {movement.at});
    if (!collecting.faults.empty()) return collecting.faults;
    for (const Entry& entry : movement.entries)
        collecting.entry(entry);
    if (collecting.faults.empty()) collecting.sums();
    return collecting.faults;
}

Findings shortagesOf(const Movement& movement, const Balances& before, const std::vector<Supply>& supplies) {
    Findings shortages;
    for (const auto& [key, change] : insideOf(movement)) {
        const Amount there = before.at(key);
        if (change >= Amount{0} || there + change >= Amount{0}) continue;
        const std::vector<Value> amounts{shown(key.supply, -change, supplies), shown(key.supply, there, supplies)};
        Finding finding{Severity::Fault, "ledger.below-zero", nameOf(key.supply, supplies), amounts};
        if (!key.container.isEmpty()) {
            finding.rule = "ledger.container-empty";
            finding.values.push_back(key.container.left(limits::nameLength));
        }
        shortages.push_back(std::move(finding));
    }
    return shortages;
}

Findings faultsOf(const Movement& movement, const Balances& before, const std::vector<Supply>& supplies) {
    Findings faults = faultsOf(movement, supplies);
    return faults.empty() && !movement.flagged ? shortagesOf(movement, before, supplies) : faults;
}

bool overdraws(const Movement& movement, const Balances& before) {
    const std::map<StockKey, Amount> changes = insideOf(movement);
    return std::any_of(changes.begin(), changes.end(), [&](const auto& change) {
        return change.second < Amount{0} && before.at(change.first) + change.second < Amount{0};
    });
}

Findings faultsOf(const StockCount& count, const std::vector<Supply>& supplies) {
    Findings faults;
    const auto add = [&](const char* rule, const QString& subject, std::vector<Value> values = {}) {
        faults.push_back({Severity::Fault, rule, subject.left(limits::nameLength), std::move(values)});
    };
    if (count.lines.empty() && !count.corrects) add("count.empty", count.id.value);
    if (count.lines.size() > size_t{limits::stockLines})
        add("count.too-long", count.id.value, {std::int64_t(count.lines.size()), std::int64_t{limits::stockLines}});
    std::set<StockKey> keys;
    for (const CountLine& line : count.lines) {
        const SupplyId& id = line.key.supply;
        const QString name = nameOf(id, supplies);
        if (!isKept(id, supplies)) add("count.unknown-supply", id.value);
        if (!line.key.place.isInside() || !isSound(line.key.place)) add("count.place", name);
        if (line.counted < Amount{0} || line.counted.value > limits::stockAmount)
            add("count.amount", name, {shown(id, line.counted, supplies)});
        if (!keys.insert(line.key).second) add("count.place-twice", name);
    }
    return faults;
}

}  // namespace laneward
