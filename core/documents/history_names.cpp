#include "core/documents/history_names.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

template <class Id>
QString named(const QHash<Id, QString>& names, const Id& id) {
    const auto found = names.find(id);
    return found != names.end() ? *found : shown(id.value);
}

/// Bit n of `used` is conditioner slot n; the last is the cleaner.
QStringList tanksOf(const Machine& machine, size_t used) {
    QStringList products;
    for (size_t slot = 0; slot < machine.conditioners.size(); ++slot) {
        const QString& conditioner = machine.conditioners[slot];
        if ((used >> slot & 1U) != 0 && !conditioner.isEmpty() && !products.contains(conditioner)) products << shown(conditioner);
    }
    if ((used >> conditionerSlots) != 0 && !machine.cleaner.isEmpty()) products << shown(machine.cleaner);
    return products;
}

}  // namespace

HistoryNames::HistoryNames(const SeasonState& season) {
    for (const Machine& machine : season.centre.machines) {
        m_machines.insert(machine.id, shown(machine.name));
        for (size_t used = 0; used < m_tanks.size(); ++used)
            m_tanks[used].insert(machine.id, tanksOf(machine, used));
    }
    for (const Person& person : season.centre.people)
        m_people.insert(person.id, shown(person.name));
    for (const Pattern& pattern : season.patterns)
        m_patterns.insert(pattern.id, shown(pattern.name));
    for (const Supply& supply : season.supplies) {
        m_supplies.insert(supply.id, &supply);
        if (const auto price = unitPriceOf(season.offers, supply.id)) m_prices.insert(supply.id, *price);
    }
    for (const ServiceItem& item : season.items)
        m_items.insert(item.id, &item);
    for (const Order& order : season.orders)
        m_orders.insert(order.id.value, shown(order.number));
}

QString HistoryNames::machine(const MachineId& id) const { return named(m_machines, id); }

QString HistoryNames::person(const PersonId& id) const { return named(m_people, id); }

QString HistoryNames::pattern(const PatternId& id) const { return named(m_patterns, id); }

QString HistoryNames::supply(const SupplyId& id) const {
    if (id == waterId) return say(QT_TRANSLATE_NOOP("wording", "water"));
    if (id == wasteId) return say(QT_TRANSLATE_NOOP("wording", "waste"));
    const Supply* supply = m_supplies.value(id);
    return shown(supply ? supply->name : id.value);
}

SupplyKind HistoryNames::kindOf(const SupplyId& id) const {
    const Supply* supply = m_supplies.value(id);
    if (supply) return supply->kind;
    return id == waterId || id == wasteId ? SupplyKind::Cleaner : SupplyKind::Part;
}

QStringList HistoryNames::tanks(const MachineId& id, const std::array<bool, conditionerSlots>& conditions, bool cleans) const {
    const size_t used = (conditions[0] ? 1U : 0U) + (conditions[1] ? 2U : 0U) + (cleans ? 4U : 0U);
    return m_tanks[used].value(id);
}

std::optional<Money> HistoryNames::price(const SupplyId& id, Amount amount) const {
    const auto found = m_prices.find(id);
    return found == m_prices.end() ? std::nullopt : std::optional(costOf(amount, *found));
}

}  // namespace laneward
