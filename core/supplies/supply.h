// What is stocked, who sells it, at which price. Plain values.
//
// Amounts are integers in the supply's base unit: microlitres of liquids, millimetres of cloth, pieces of parts and packs.
// Liquids that are diluted are stocked, counted and ordered as concentrate.
#pragma once

#include "core/base/finding.h"
#include "core/base/ids.h"
#include "core/base/money.h"
#include "core/base/quantities.h"

#include <QDate>

#include <optional>
#include <vector>

namespace laneward {

enum class SupplyKind { Conditioner, Cleaner, ApproachCleaner, Cloth, Part, Pack };
enum class BaseUnit { Microlitre, Millimetre, Piece };

BaseUnit unitOf(SupplyKind kind);

/// What a supply is used by, besides what patterns and cleaning doses of machines take.
enum class UseBasis {
    Machine,         ///< conditioner and cleaner: by the recipe, from a machine's tank
    PerLaneCleaned,  ///< cloth
    PerDay,          ///< approach cleaner: each day of the centre
    WhenServiced,    ///< parts
};

/// How much of a supply is kept.
struct StockRules {
    Amount storageLimit;             ///< most that the store can hold; 0 = no limit
    int shelfLifeDays = 0;           ///< from receipt; 0 = keeps
    int serviceLevelPermille = 980;  ///< probability of not running out before the next delivery, times 1,000
    int holdingPermille = 200;       ///< cost of holding for one year, per 1,000 of the value
    friend bool operator==(const StockRules&, const StockRules&) = default;
};

struct Supply {
    SupplyId id;
    QString name;  ///< unique in the centre; a machine's tanks name the product that they hold by it
    SupplyKind kind = SupplyKind::Conditioner;
    int waterParts = 0;  ///< cleaner only: parts of water to one of concentrate; 0 = used as it comes
    UseBasis basis = UseBasis::Machine;
    Amount usualUse;   ///< for PerLaneCleaned and PerDay
    Amount container;  ///< what one container holds
    StockRules rules;
    bool retired = false;
    QString note;
    std::int64_t version = 0;
    friend bool operator==(const Supply&, const Supply&) = default;
};

struct Supplier {
    SupplierId id;
    QString name;
    QString address;                       ///< for the order, lines
    Money freight;                         ///< of one order
    std::optional<Money> freeFreightFrom;  ///< value of goods from which there is no freight
    Money minimumOrder;                    ///< value of goods that an order must have
    std::uint8_t orderWeekdays = 0x1f;     ///< when orders are taken; bit 0 = Monday … bit 6 = Sunday
    int usualLeadDays = 7;                 ///< from order to receipt, before there is a history
    bool retired = false;
    QString note;
    std::int64_t version = 0;
    friend bool operator==(const Supplier&, const Supplier&) = default;
};

/// All-units price: from `packs` on, every pack of the order costs `each`.
struct PriceBreak {
    int packs = 1;
    Money each;
    friend bool operator==(const PriceBreak&, const PriceBreak&) = default;
};

/// A line of a price list: how a supplier sells a supply.
struct Offer {
    OfferId id;
    SupplierId supplier;
    SupplyId supply;
    QString article;                 ///< the supplier's number
    Amount pack;                     ///< what one pack holds
    std::vector<PriceBreak> prices;  ///< ascending by packs, the first from 1
    bool retired = false;
    std::int64_t version = 0;
    friend bool operator==(const Offer&, const Offer&) = default;
};

/// Draft until it is sent; what has arrived follows from receipts; Closed = nothing more is expected.
enum class OrderState { Draft, Placed, Closed };

struct OrderLine {
    SupplyId supply;
    OfferId offer;
    QString article;
    Amount pack;
    int packs = 0;
    Money each;
    friend bool operator==(const OrderLine&, const OrderLine&) = default;
};

struct Order {
    OrderId id;
    SupplierId supplier;
    QString number;  ///< the centre's own, printed
    OrderState state = OrderState::Draft;
    PersonId person;                ///< who placed it
    std::optional<QDate> placedOn;  ///< centre's day
    std::vector<OrderLine> lines;
    Money freight;
    QString note;
    std::int64_t version = 0;
    friend bool operator==(const Order&, const Order&) = default;
};

const Supply* findSupply(const std::vector<Supply>& supplies, const SupplyId& id);
/// By name, as machines' tanks name it.
const Supply* supplyNamed(const std::vector<Supply>& supplies, const QString& name);

const Supplier* findSupplier(const std::vector<Supplier>& suppliers, const SupplierId& id);

/// An amount for a finding: a volume, a length or a number.
Value valueOfAmount(Amount amount, BaseUnit unit);

/// What cannot be ("supply.…", "supplier.…", "offer.…", "order.…"): no name, amounts of nothing or beyond reason, a price list
/// with a gap or its breaks out of order, another currency than the centre's. Empty when sound.
std::vector<Finding> faultsOf(const Supply& supply);
std::vector<Finding> faultsOf(const Supplier& supplier, const QByteArray& currency);
std::vector<Finding> faultsOf(const Offer& offer, const QByteArray& currency);
std::vector<Finding> faultsOf(const Order& order, const QByteArray& currency);
/// Of each, and names that stand twice.
std::vector<Finding> faultsOf(const std::vector<Supply>& supplies);

/// What is hardly meant though it can be: a price that rises with the number of packs ("offer.price-rises").
std::vector<Finding> doubtsOf(const Offer& offer);

}  // namespace laneward
