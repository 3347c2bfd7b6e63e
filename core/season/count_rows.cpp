#include "core/season/count_rows.h"

#include "core/season/bookings.h"
#include "core/season/output_drift.h"

#include <algorithm>

namespace laneward {

namespace {

using Rows = std::vector<CountRow>;

/// Places of one supply by the books, and those that are looked into anyway.
class Looking {
public:
    Looking(const SeasonState& season, const Supply& supply) : m_season(season), m_supply(supply) {}

    Rows rows() {
        const bool pieces = unitOf(m_supply.kind) == BaseUnit::Piece;
        add(Place::Kind::Shelf, !m_supply.retired);
        add(Place::Kind::Open, !m_supply.retired && !pieces);
        for (const Machine& machine : m_season.centre.machines)
            addTanks(machine);
        return std::move(m_rows);
    }

private:
    void add(Place::Kind kind, bool always) {
        bool known = false;
        for (const auto& [key, amount] : m_season.stock.all()) {
            if (key.supply != m_supply.id || key.place.kind != kind || amount == Amount{}) continue;
            m_rows.push_back({key, m_supply.kind, amount, 0});
            known = true;
        }
        if (always && !known) m_rows.push_back({{m_supply.id, {kind, {}, 0}, {}, {}}, m_supply.kind, {}, 0});
    }

    void addTanks(const Machine& machine) {
        for (int product = 0; product < products; ++product) {
            const Place tank{Place::Kind::Tank, machine.id, product};
            const bool named = !m_supply.name.isEmpty() && productName(machine, product) == m_supply.name;
            const Amount own = m_season.stock.in(m_supply.id, tank);
            if (!named && own == Amount{}) continue;
            // What another product left behind has no water of its own.
            const Amount there = named ? inTank(m_season.stock, m_supply, tank) : own;
            m_rows.push_back({{m_supply.id, tank, {}, {}}, m_supply.kind, there, named ? m_supply.waterParts : 0});
        }
    }

    const SeasonState& m_season;
    const Supply& m_supply;
    Rows m_rows;
};

}  // namespace

std::vector<CountRow> rowsToCount(const SeasonState& season) {
    std::vector<const Supply*> supplies;
    for (const Supply& supply : season.supplies)
        supplies.push_back(&supply);
    std::stable_sort(supplies.begin(), supplies.end(),
                     [](const Supply* a, const Supply* b) { return std::tie(a->kind, a->name) < std::tie(b->kind, b->name); });
    Rows rows;
    for (const Supply* supply : supplies) {
        Rows own = Looking(season, *supply).rows();
        std::move(own.begin(), own.end(), std::back_inserter(rows));
    }
    if (rows.empty()) return rows;
    for (const Machine& machine : season.centre.machines) {
        const Place waste{Place::Kind::WasteTank, machine.id, 0};
        rows.push_back({{wasteId, waste, {}, {}}, SupplyKind::Cleaner, season.stock.in(wasteId, waste), 0});
    }
    return rows;
}

std::vector<CountLine> linesOf(const CountRow& row, Amount counted) {
    if (row.waterParts == 0) return {{row.key, counted}};
    Supply mixed;
    mixed.waterParts = row.waterParts;
    const Mixture there = mixtureOf(mixed, counted);
    StockKey water = row.key;
    water.supply = waterId;
    return {{row.key, there.concentrate}, {water, there.water}};
}

}  // namespace laneward
