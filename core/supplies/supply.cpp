#include "core/supplies/supply.h"

#include <algorithm>

namespace laneward {

BaseUnit unitOf(SupplyKind kind) {
    switch (kind) {
        case SupplyKind::Conditioner:
        case SupplyKind::Cleaner:
        case SupplyKind::ApproachCleaner:
            return BaseUnit::Microlitre;
        case SupplyKind::Cloth:
            return BaseUnit::Millimetre;
        case SupplyKind::Part:
        case SupplyKind::Pack:
            break;
    }
    return BaseUnit::Piece;
}

const Supply* findSupply(const std::vector<Supply>& supplies, const SupplyId& id) {
    const auto found = std::find_if(supplies.begin(), supplies.end(), [&](const Supply& s) { return s.id == id; });
    return found == supplies.end() ? nullptr : &*found;
}

const Supply* supplyNamed(const std::vector<Supply>& supplies, const QString& name) {
    const auto found = std::find_if(supplies.begin(), supplies.end(), [&](const Supply& s) { return s.name == name; });
    return found == supplies.end() ? nullptr : &*found;
}

const Supplier* findSupplier(const std::vector<Supplier>& suppliers, const SupplierId& id) {
    const auto found = std::find_if(suppliers.begin(), suppliers.end(), [&](const Supplier& s) { return s.id == id; });
    return found == suppliers.end() ? nullptr : &*found;
}

Value valueOfAmount(Amount amount, BaseUnit unit) {
    switch (unit) {
        case BaseUnit::Microlitre:
            return Microlitres{amount.value};
        case BaseUnit::Millimetre:
            return Micrometres{amount.value * 1'000};
        case BaseUnit::Piece:
            break;
    }
    return amount.value;
}

}  // namespace laneward
