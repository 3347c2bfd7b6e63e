// The plain rules of stock in handbooks: what to order when, for demand that is steady, normal or Poisson. The order plan is
// compared with policies made of them.
//
// z(p) is the quantile of the standard normal distribution, G its loss function (core/statistics/loss.h). Demands and amounts are
// plain numbers in one unit. Sources: Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., 4.3 and 5.2; Silver, Pyke
// and Peterson, Inventory Management and Production Planning and Scheduling, 3rd ed., ch. 7 (both from memory).
#pragma once

#include <span>

namespace support {

struct NormalDemand {
    double mean = 0;
    double deviation = 0;
};

/// Demand over a time that is random itself: variance E[T] deviation^2 + mean^2 Var[T].
NormalDemand demandOver(const NormalDemand& aDay, double days, double daysDeviation = 0);

/// So that a replenishment cycle ends without running out with probability `level`: z(level) deviation.
double safetyStockFor(const NormalDemand& overLead, double level);
/// So that of all demand the share `fillRate` is served, with lots of `lot`: k deviation, G(k) deviation = lot (1 - fillRate).
double safetyStockForFillRate(const NormalDemand& overLead, double fillRate, double lot);

/// What to have at the beginning of one period when each unit left costs `over`, each missing `under`, and what that costs.
struct Newsvendor {
    double stock = 0;
    double cost = 0;
};
Newsvendor newsvendor(const NormalDemand& demand, double over, double under);
/// For Poisson demand, in whole units: the least stock with P(N <= stock) >= under / (over + under).
Newsvendor poissonNewsvendor(double mean, double over, double under);
double poissonNewsvendorCost(int stock, double mean, double over, double under);

/// Order `lot` whenever the stock position falls to `point`: cost per year with holding cost h, backorder cost p (each per unit
/// and year) and cost K of an order.
struct ReorderCosts {
    double holding = 0;
    double backorder = 0;
    double order = 0;
};
struct ReorderRule {
    double point = 0;
    double lot = 0;
    double cost = 0;
};
/// Exact for normal demand over the lead time: [K D + integral over (r, r + Q) of g] / Q, g the newsvendor's cost.
double reorderCost(double point, double lot, double demandPerYear, const NormalDemand& overLead, const ReorderCosts& costs);
/// The least of it: g(r) = g(r + Q), and Q so that their level is the cost itself (Zheng 1992). Error of the cost below 1e-9 of
/// it.
ReorderRule bestReorderRule(double demandPerYear, const NormalDemand& overLead, const ReorderCosts& costs);

/// A lot for certain demand of `demand` a year, when what is missing may wait at `backorder` per unit and year.
struct WaitingLot {
    double lot = 0;
    double waiting = 0;  ///< share of the time in which there is nothing
    double cost = 0;     ///< a year, without the goods
};
WaitingLot lotWithBackorders(double demand, const ReorderCosts& costs);

/// From `units` on each further unit costs `each`, those before it what they cost anyway.
struct IncrementalPrice {
    double units = 0;
    double each = 0;
};
/// The cheapest lot for certain demand, holding at `rate` of the value a year; the cost is that of a year with the goods.
ReorderRule lotWithIncrementalPrices(double demand, double order, double rate, std::span<const IncrementalPrice> prices);

/// Looked at once a period, and filled up to `upTo` when the stock has fallen to `point` or below: the cost of a period with
/// Poisson demand, by renewal theory (`costs` per unit and period; what is missing waits).
double upToCost(int point, int upTo, double mean, const ReorderCosts& costs);

}  // namespace support
