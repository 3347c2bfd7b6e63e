// Balances: what lies where, as the sum of movements.
//
//     Balances stock = balancesOf(movements);
//     Amount onHand = stock.onHand(supply.id);
#pragma once

#include "core/supplies/movement.h"

#include <map>
#include <span>

namespace laneward {

class Balances {
public:
    Balances() = default;
    explicit Balances(std::map<StockKey, Amount> amounts) : m_amounts(std::move(amounts)) {}

    /// Inside places only; what is nothing again is dropped.
    void add(const Movement& movement);
    Amount at(const StockKey& key) const;
    Amount in(const SupplyId& supply, const Place& place) const;  ///< over containers and lots
    Amount onHand(const SupplyId& supply) const;                  ///< over all inside places
    const std::map<StockKey, Amount>& all() const { return m_amounts; }
    friend bool operator==(const Balances&, const Balances&) = default;

private:
    std::map<StockKey, Amount> m_amounts;
};

Balances balancesOf(std::span<const Movement> movements);

/// The movement that takes `movement` back, of the same kind, source and time; its id, person and time of recording are empty.
Movement counterOf(const Movement& movement);

/// What cannot be about a movement by itself ("ledger.…"): no entries, an amount of nothing or beyond reason, entries that do not
/// sum to zero for a supply, a supply that is not kept, a way that its kind does not go (a receipt that takes away), a date after
/// it was recorded. Empty when sound.
std::vector<Finding> faultsOf(const Movement& movement, const std::vector<Supply>& supplies);
/// Places that it takes more from than is in them, with both amounts ("ledger.below-zero", "ledger.container-empty").
std::vector<Finding> shortagesOf(const Movement& movement, const Balances& before, const std::vector<Supply>& supplies);
/// Both; shortages only of a movement that is not flagged.
std::vector<Finding> faultsOf(const Movement& movement, const Balances& before, const std::vector<Supply>& supplies);
/// Whether it takes more from an inside place than is in it.
bool overdraws(const Movement& movement, const Balances& before);

/// What cannot be about a count ("count.…"): lines that name no supply, a place outside, one place twice, or less than nothing.
std::vector<Finding> faultsOf(const StockCount& count, const std::vector<Supply>& supplies);

/// Whether the ledger keeps it: a supply, water or waste.
bool isKept(const SupplyId& id, const std::vector<Supply>& supplies);

}  // namespace laneward
