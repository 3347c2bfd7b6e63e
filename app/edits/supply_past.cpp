#include "app/edits/supply_past.h"

#include "core/storage/booked.h"

namespace laneward {

/// What learning follows from, as far as it is in memory; a new day learns anew.
struct SupplyPastReader::Key {
    QDate day;
    Location location;
    std::vector<Machine> machines;
    std::vector<Supply> supplies;
    std::vector<Supplier> suppliers;
    std::vector<Order> orders;
    std::vector<RunLog> runs;
    std::vector<LevelReading> readings;
    Balances stock;

    bool isOf(const SeasonState& s, const Location& at, QDate today) const {
        return day == today && location.path == at.path && location.server == at.server && machines == s.centre.machines &&
               supplies == s.supplies && suppliers == s.suppliers && orders == s.orders && runs == s.runs &&
               readings == s.readings && stock == s.stock;
    }
};

std::shared_ptr<const SupplyPast> SupplyPastReader::read(const Location& location, const SeasonState& season, Instant now) {
    const std::scoped_lock lock(m_mutex);
    const QDate today = dateOf(season.centre, now);
    if (m_past && m_key->isOf(season, location, today)) return m_past;
    const Result<std::unique_ptr<Store>> store = Store::open(location, Access::ReadOnly);
    if (!store) return nullptr;
    const Result<SupplyHistory> history = supplyHistory(**store, season, now);
    if (!history) return nullptr;
    auto past = std::make_shared<SupplyPast>(SupplyPast{learnSupplies(season, *history), {}});
    for (const Movement& movement : history->stock.movements) {
        if (movement.source == MovementSource::Order) past->receipts.push_back(movement);
    }
    m_past = std::move(past);
    m_key = std::make_shared<const Key>(Key{today, location, season.centre.machines, season.supplies, season.suppliers,
                                            season.orders, season.runs, season.readings, season.stock});
    return m_past;
}

}  // namespace laneward
