#include "core/base/limits.h"
#include "core/supplies/movement.h"

#include <set>

namespace laneward {

namespace {

using Findings = std::vector<Finding>;

void add(Findings& faults, const char* rule, const QString& subject, std::vector<Value> values = {}) {
    faults.push_back({Severity::Fault, rule, subject.left(limits::nameLength), std::move(values)});
}

bool isBetween(std::int64_t value, std::int64_t least, std::int64_t most) { return value >= least && value <= most; }
bool isStockable(Amount amount) { return isBetween(amount.value, 0, limits::stockAmount); }

/// Machines take only what is in their tanks.
bool isUsableAs(const Supply& supply) {
    const bool inTanks = supply.kind == SupplyKind::Conditioner || supply.kind == SupplyKind::Cleaner;
    return supply.basis != UseBasis::Machine || inTanks;
}

void checkMoney(const Money& money, const QByteArray& currency, const QString& subject, Findings& faults) {
    const Findings found = faultsOf(money, currency, subject);
    faults.insert(faults.end(), found.begin(), found.end());
}

void checkPrices(const Offer& offer, const QByteArray& currency, const QString& subject, Findings& faults) {
    if (offer.prices.empty()) return add(faults, "offer.no-price", subject);
    if (offer.prices.size() > size_t{limits::priceBreaks})
        return add(faults, "offer.too-many-prices", subject,
                   {std::int64_t(offer.prices.size()), std::int64_t{limits::priceBreaks}});
    const int first = offer.prices.front().packs;
    if (first > 1) add(faults, "offer.price-gap", subject, {std::int64_t{first}});
    int before = 0;
    for (const PriceBreak& price : offer.prices) {
        if (price.packs <= before) add(faults, "offer.price-order", subject, {std::int64_t{before}, std::int64_t{price.packs}});
        if (price.packs > limits::packs) add(faults, "offer.packs", subject, {std::int64_t{price.packs}});
        checkMoney(price.each, currency, subject, faults);
        before = price.packs;
    }
}

void checkLine(const OrderLine& line, const QByteArray& currency, const QString& subject, Findings& faults) {
    if (line.supply.isEmpty()) add(faults, "order.no-supply", subject);
    if (!isBetween(line.packs, 1, limits::packs)) add(faults, "order.packs", subject, {std::int64_t{line.packs}});
    if (!isBetween(line.pack.value, 1, limits::stockAmount)) add(faults, "order.pack", subject, {line.pack.value});
    checkMoney(line.each, currency, subject, faults);
}

}  // namespace

Findings faultsOf(const Supply& supply) {
    Findings faults;
    const QString& name = supply.name;
    const StockRules& rules = supply.rules;
    if (supply.id == waterId || supply.id == wasteId) add(faults, "supply.reserved", name, {supply.id.value});
    if (name.trimmed().isEmpty()) add(faults, "supply.no-name", supply.id.value);
    if (name.size() > limits::nameLength) add(faults, "supply.name-too-long", name.left(20));
    if (supply.container <= Amount{0} || !isStockable(supply.container)) add(faults, "supply.container", name);
    if (!isStockable(supply.usualUse)) add(faults, "supply.usual-use", name);
    if (!isStockable(rules.storageLimit)) add(faults, "supply.storage-limit", name);
    if (!isBetween(rules.shelfLifeDays, 0, 36'500)) add(faults, "supply.shelf-life", name, {std::int64_t{rules.shelfLifeDays}});
    if (!isBetween(rules.serviceLevelPermille, 1, 999))
        add(faults, "supply.service-level", name, {std::int64_t{rules.serviceLevelPermille}});
    if (!isBetween(rules.holdingPermille, 0, 10'000))
        add(faults, "supply.holding-cost", name, {std::int64_t{rules.holdingPermille}});
    const bool diluted = supply.kind == SupplyKind::Cleaner || supply.waterParts == 0;
    if (!isBetween(supply.waterParts, 0, 1'000) || !diluted) add(faults, "supply.water", name, {std::int64_t{supply.waterParts}});
    if (!isUsableAs(supply)) add(faults, "supply.basis", name);
    return faults;
}

Findings faultsOf(const std::vector<Supply>& supplies) {
    Findings faults;
    std::set<QString> names;
    for (const Supply& supply : supplies) {
        const Findings own = faultsOf(supply);
        faults.insert(faults.end(), own.begin(), own.end());
        if (!names.insert(supply.name).second) add(faults, "supply.name-twice", supply.name);
    }
    return faults;
}

Findings faultsOf(const Supplier& supplier, const QByteArray& currency) {
    Findings faults;
    const QString& name = supplier.name;
    if (name.trimmed().isEmpty()) add(faults, "supplier.no-name", supplier.id.value);
    if (name.size() > limits::nameLength) add(faults, "supplier.name-too-long", name.left(20));
    if (!isBetween(supplier.orderWeekdays, 1, 0x7f)) add(faults, "supplier.order-days", name);
    if (!isBetween(supplier.usualLeadDays, 0, 365))
        add(faults, "supplier.lead-time", name, {std::int64_t{supplier.usualLeadDays}});
    for (const Money& money : {supplier.freight, supplier.freeFreightFrom.value_or(Money{}), supplier.minimumOrder})
        checkMoney(money, currency, name, faults);
    return faults;
}

Findings faultsOf(const Offer& offer, const QByteArray& currency) {
    Findings faults;
    const QString subject = offer.article.isEmpty() ? offer.id.value : offer.article;
    if (offer.article.size() > limits::nameLength) add(faults, "offer.article-too-long", offer.article.left(20));
    if (!isBetween(offer.pack.value, 1, limits::stockAmount)) add(faults, "offer.pack", subject, {offer.pack.value});
    checkPrices(offer, currency, subject, faults);
    return faults;
}

Findings faultsOf(const Order& order, const QByteArray& currency) {
    Findings faults;
    const QString subject = order.number.isEmpty() ? order.id.value : order.number;
    if (order.number.size() > limits::nameLength) add(faults, "order.number-too-long", order.number.left(20));
    if (order.state == OrderState::Placed && !order.placedOn) add(faults, "order.no-date", subject);
    if (order.state == OrderState::Placed && order.lines.empty()) add(faults, "order.nothing", subject);
    if (order.lines.size() > size_t{limits::stockLines})
        add(faults, "order.too-long", subject, {std::int64_t{limits::stockLines}});
    for (const OrderLine& line : order.lines)
        checkLine(line, currency, subject, faults);
    checkMoney(order.freight, currency, subject, faults);
    return faults;
}

Findings doubtsOf(const Offer& offer) {
    Findings doubts;
    const QString subject = offer.article.isEmpty() ? offer.id.value : offer.article;
    for (size_t i = 1; i < offer.prices.size(); ++i)
        if (offer.prices[i].each.minor > offer.prices[i - 1].each.minor)
            doubts.push_back({Severity::Warning, "offer.price-rises", subject, {std::int64_t{offer.prices[i].packs}}});
    return doubts;
}

}  // namespace laneward
