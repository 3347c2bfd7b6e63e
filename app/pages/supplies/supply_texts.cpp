#include "app/pages/supplies/supply_texts.h"

#include "app/widgets/time_formats.h"
#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("laneward::SupplyTexts", source); }

QString machineName(const MachineId& id, const SeasonState& season) {
    const Machine* machine = findMachine(season.centre, id);
    return shown(machine ? machine->name : id.value);
}

}  // namespace

SupplyGroup groupOf(SupplyKind kind) {
    switch (unitOf(kind)) {
        case BaseUnit::Microlitre:
            return SupplyGroup::Liquid;
        case BaseUnit::Millimetre:
            return SupplyGroup::Cloth;
        case BaseUnit::Piece:
            break;
    }
    return SupplyGroup::Part;
}

QString supplyName(const SupplyId& id, const SeasonState& season) {
    if (id == waterId) return say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "water"));
    if (id == wasteId) return say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "waste"));
    const Supply* supply = findSupply(season.supplies, id);
    return shown(supply ? supply->name : id.value);
}

SupplyKind supplyKind(const SupplyId& id, const SeasonState& season) {
    const Supply* supply = findSupply(season.supplies, id);
    return supply ? supply->kind : SupplyKind::Cleaner;
}

QString supplierName(const SupplierId& id, const SeasonState& season) {
    const Supplier* supplier = findSupplier(season.suppliers, id);
    return shown(supplier ? supplier->name : id.value);
}

const Order* findOrder(const std::vector<Order>& orders, const OrderId& id) {
    const auto found = std::find_if(orders.begin(), orders.end(), [&](const Order& o) { return o.id == id; });
    return found == orders.end() ? nullptr : &*found;
}

QString placeText(const StockKey& key, const SeasonState& season) {
    QString place = text(key.place.kind);
    if (!key.place.machine.isEmpty())
        place = say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "%1, %2")).arg(machineName(key.place.machine, season), place);
    if (!key.container.isEmpty())
        place = say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "%1, %2")).arg(place, shown(key.container));
    if (!key.lot.isEmpty()) place = say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "%1, lot %2")).arg(place, shown(key.lot));
    return place;
}

QString whereText(const SupplyId& id, const SeasonState& season, const Speech& speech) {
    std::map<Place, Amount> places;
    for (const auto& [key, amount] : season.stock.all()) {
        if (key.supply != id) continue;
        Place place = key.place;
        place.slot = 0;
        places[place] += amount;
    }
    const SupplyKind kind = supplyKind(id, season);
    QStringList parts;
    for (const auto& [place, amount] : places) {
        if (amount == Amount{}) continue;
        const QString much = amountText(amount, kind, speech);
        const QString where = place.machine.isEmpty() ? text(place.kind) : machineName(place.machine, season);
        parts << say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "%1 %2")).arg(where, much);
    }
    return parts.isEmpty() ? say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "none is left")) : parts.join(QStringLiteral(" · "));
}

QString orderByText(const std::optional<QDate>& orderBy, QDate today, const Speech& speech) {
    if (!orderBy) return QStringLiteral("-");
    if (*orderBy == today) return say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "! today"));
    const QString day = shortDay(*orderBy, speech.locale);
    return *orderBy < today ? say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "! overdue since %1")).arg(day) : day;
}

QString chanceText(double chance, const Speech& speech) {
    if (chance < 0.005) return say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "under 1 %"));
    if (chance > 0.995) return say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "over 99 %"));
    return say(QT_TRANSLATE_NOOP("laneward::SupplyTexts", "%1 %")).arg(speech.locale.toString(qRound(chance * 100)));
}

}  // namespace laneward
