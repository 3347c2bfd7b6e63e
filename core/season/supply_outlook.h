// How long will everything last, and what must be ordered: stock, the plan ahead, duties that take parts, and what was learned of
// use, put together.
//
// Days are the centre's days from today on. Use that the plan knows is nominal, by the recipe; what machines really take of it,
// and what nobody plans, was learned from history; a duty takes its parts on the day on which it is likely due. Jobs that are
// done are no part of what is ahead: the ledger has them.
//
//     const SupplyLearning learned = learnSupplies(season, history);
//     const SupplyOutlook outlook = *supplyOutlook({season, planAhead, learned, receipts, now}, {});
//     for (const SupplyLine& line : outlook.lines) …
#pragma once

#include "core/season/product_usage.h"
#include "core/supplies/order_plan.h"
#include "core/supplies/stock_forecast.h"

namespace laneward {

/// The past that use is learned from.
struct SupplyHistory {
    DriftHistory drift;
    StockHistory stock;
    DateRange days;  ///< that it covers
};

/// What was learned of one supply besides what machines take.
struct SupplyLearned {
    SupplyId supply;
    std::optional<Usage> counted;     ///< of cloth and approach cleaner
    std::vector<LearnedRate> chance;  ///< losses and finds, service use, unplanned work
};

struct SupplierLearned {
    SupplierId supplier;
    std::vector<int> leadDays;  ///< from order to the receipt that completed it, of orders that are over
};

struct SupplyLearning {
    std::vector<ProductUsage> machines;
    std::vector<SupplyLearned> supplies;
    std::vector<SupplierLearned> suppliers;
};

SupplyLearning learnSupplies(const SeasonState& season, const SupplyHistory& history);

/// An order that is placed and not all there.
struct OpenOrder {
    OrderId order;
    SupplierId supplier;
    QDate placedOn;
    std::vector<std::pair<SupplyId, Amount>> missing;
    DayChances arrival;  ///< days from today
    QDate likely;        ///< the median of it
};

/// What has arrived of an order, by its lines' order.
std::vector<Amount> receivedOf(const Order& order, const std::vector<Movement>& movements);
std::vector<OpenOrder> openOrders(const SeasonState& season, const SupplyLearning& learned,
                                  const std::vector<Movement>& movements, QDate today);

struct SupplyLine {
    SupplyId supply;
    Amount sealed;
    Amount open;
    Amount inTanks;
    Amount aWeek;             ///< expected over the next four weeks, for one of them
    double chancePerDay = 0;  ///< mean of the use that nobody plans, base units
    StockForecast forecast;
    std::optional<QDate> outEarly;   ///< run-out day at 5 %, …
    std::optional<QDate> outLikely;  ///< … 50 % …
    std::optional<QDate> outLate;    ///< … and 95 %; none = not within the horizon
    std::optional<QDate> orderBy;    ///< of the proposed order that has it
    Amount onHand() const { return sealed + open + inTanks; }
};

/// What waiting with a proposed order means.
struct OrderRisk {
    SupplyId supply;
    double onTime = 0;   ///< probability of running out before it arrives …
    double waiting = 0;  ///< … and before it does when it is placed a week later
};

struct SupplyOutlook {
    QDate today;
    int days = 0;
    std::vector<SupplyLine> lines;  ///< of supplies that are kept; by the early run-out day, then name
    std::vector<OpenOrder> open;
    OrderPlan plan;
    std::vector<std::vector<OrderRisk>> risks;  ///< of each in plan.next
};

struct OutlookRule {
    int days = 182;  ///< horizon; at most what the plan covers
    int paths = 4'000;
    std::int64_t orderEffort = usualOrderEffort;
};

/// What the answer is made from.
struct OutlookQuestion {
    const SeasonState& season;
    const Plan& ahead;  ///< begins today or before
    const SupplyLearning& learned;
    const std::vector<Movement>& receipts;  ///< of orders that are open; others do no harm
    Instant now;
};

/// Nothing when cancelled.
std::optional<SupplyOutlook> supplyOutlook(const OutlookQuestion& question, const OutlookRule& rule,
                                           const ForecastWatch& watch = {});

}  // namespace laneward
