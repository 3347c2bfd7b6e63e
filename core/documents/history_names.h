// Names and prices as entries of the history need them: looked up once, shared by all entries. Internal to this room.
#pragma once

#include "core/documents/wording.h"
#include "core/season/event_costs.h"

#include <QHash>

namespace laneward {

class HistoryNames {
public:
    /// `season` must outlive the names.
    explicit HistoryNames(const SeasonState& season);

    QString machine(const MachineId& id) const;
    QString person(const PersonId& id) const;
    QString pattern(const PatternId& id) const;
    QString supply(const SupplyId& id) const;  ///< also the ledger's own, water and waste
    SupplyKind kindOf(const SupplyId& id) const;
    /// What is in the machine's tanks, as far as it was used.
    QStringList tanks(const MachineId& id, const std::array<bool, conditionerSlots>& conditions, bool cleans) const;
    const ServiceItem* item(const ItemId& id) const { return m_items.value(id); }
    QString orderNumber(const QString& id) const { return m_orders.value(id); }
    /// At the cheapest offer for one pack; nothing without one.
    std::optional<Money> price(const SupplyId& id, Amount amount) const;

private:
    QHash<MachineId, QString> m_machines;
    QHash<PersonId, QString> m_people;
    QHash<PatternId, QString> m_patterns;
    QHash<SupplyId, const Supply*> m_supplies;
    QHash<SupplyId, UnitPrice> m_prices;
    QHash<ItemId, const ServiceItem*> m_items;
    QHash<QString, QString> m_orders;
    std::array<QHash<MachineId, QStringList>, 8> m_tanks;  ///< by which of the three were used
};

}  // namespace laneward
