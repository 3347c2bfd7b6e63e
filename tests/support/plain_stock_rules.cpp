#include "tests/support/plain_stock_rules.h"

#include "core/statistics/loss.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace support {

using namespace laneward;

namespace {

constexpr int halvings = 200;

/// g(S) = h E[(S - X)+] + p E[(X - S)+] = h (S - mean) + (h + p) deviation G(k), k = (S - mean) / deviation.
double periodCost(double stock, const NormalDemand& demand, double over, double under) {
    const double k = (stock - demand.mean) / demand.deviation;
    return over * (stock - demand.mean) + (over + under) * demand.deviation * normalLoss(k);
}

/// For a lot the best point has g(r) = g(r + lot): found between the newsvendor's stock less a lot and that stock.
double pointFor(double lot, const NormalDemand& overLead, const ReorderCosts& costs) {
    double high = newsvendor(overLead, costs.holding, costs.backorder).stock;
    double low = high - lot;
    for (int i = 0; i < halvings && high - low > 1e-13 * std::abs(high); ++i) {
        const double middle = (low + high) / 2;
        const bool tooLow = periodCost(middle, overLead, costs.holding, costs.backorder) >
                            periodCost(middle + lot, overLead, costs.holding, costs.backorder);
        (tooLow ? low : high) = middle;
    }
    return (low + high) / 2;
}

}  // namespace

NormalDemand demandOver(const NormalDemand& aDay, double days, double daysDeviation) {
    const double variance = days * aDay.deviation * aDay.deviation + aDay.mean * aDay.mean * daysDeviation * daysDeviation;
    return {aDay.mean * days, std::sqrt(variance)};
}

double safetyStockFor(const NormalDemand& overLead, double level) { return normalQuantile(level) * overLead.deviation; }

double safetyStockForFillRate(const NormalDemand& overLead, double fillRate, double lot) {
    return normalLossInverse(lot * (1 - fillRate) / overLead.deviation) * overLead.deviation;
}

Newsvendor newsvendor(const NormalDemand& demand, double over, double under) {
    const double stock = demand.mean + normalQuantile(under / (over + under)) * demand.deviation;
    return {stock, periodCost(stock, demand, over, under)};
}

double poissonNewsvendorCost(int stock, double mean, double over, double under) {
    const double missing = poissonLoss(stock, mean);
    return over * (stock - mean + missing) + under * missing;
}

Newsvendor poissonNewsvendor(double mean, double over, double under) {
    int stock = 0;
    while (poissonBelow(stock, mean) < under / (over + under))
        ++stock;
    return {double(stock), poissonNewsvendorCost(stock, mean, over, under)};
}

double reorderCost(double point, double lot, double demandPerYear, const NormalDemand& overLead, const ReorderCosts& costs) {
    const auto g = [&](double stock) { return periodCost(stock, overLead, costs.holding, costs.backorder); };
    const double area = boost::math::quadrature::gauss_kronrod<double, 31>::integrate(g, point, point + lot, 12, 1e-12);
    return (costs.order * demandPerYear + area) / lot;
}

ReorderRule bestReorderRule(double demandPerYear, const NormalDemand& overLead, const ReorderCosts& costs) {
    // The cost with the best point falls in the lot and then rises; no lot is smaller than that for certain demand.
    const double h = costs.holding;
    const double least = std::sqrt(2 * costs.order * demandPerYear * (h + costs.backorder) / (h * costs.backorder));
    const auto slope = [&](double lot) {
        const double point = pointFor(lot, overLead, costs);
        return periodCost(point + lot, overLead, h, costs.backorder) - reorderCost(point, lot, demandPerYear, overLead, costs);
    };
    double low = least;
    double high = 2 * least;
    while (slope(high) < 0)
        low = high, high *= 2;
    for (int i = 0; i < halvings && high - low > 1e-9 * high; ++i) {
        const double middle = (low + high) / 2;
        (slope(middle) < 0 ? low : high) = middle;
    }
    const double lot = (low + high) / 2;
    const double point = pointFor(lot, overLead, costs);
    return {point, lot, reorderCost(point, lot, demandPerYear, overLead, costs)};
}

WaitingLot lotWithBackorders(double demand, const ReorderCosts& costs) {
    const auto& [h, p, k] = costs;
    return {std::sqrt(2 * k * demand * (h + p) / (h * p)), h / (h + p), std::sqrt(2 * k * demand * h * p / (h + p))};
}

// In region j a lot of Q costs k_j + c_j Q, k_j what its earlier units cost more than c_j.
ReorderRule lotWithIncrementalPrices(double demand, double order, double rate, std::span<const IncrementalPrice> prices) {
    ReorderRule best;
    double more = 0;
    for (size_t j = 0; j < prices.size(); ++j) {
        if (j > 0) more += (prices[j - 1].each - prices[j].each) * prices[j].units;
        const double each = prices[j].each;
        const double lot = std::sqrt(2 * (order + more) * demand / (rate * each));
        if (lot < prices[j].units || (j + 1 < prices.size() && lot >= prices[j + 1].units)) continue;
        const double cost = each * demand + rate * more / 2 + std::sqrt(2 * (order + more) * demand * rate * each);
        if (best.lot == 0 || cost < best.cost) best = {0, lot, cost};
    }
    return best;
}

double upToCost(int point, int upTo, double mean, const ReorderCosts& costs) {
    const auto chance = [mean](int n) { return std::exp(-mean + n * std::log(mean) - std::lgamma(n + 1.0)); };
    std::vector<double> visits;  // expected, of the stock `j` below `upTo` between two orders
    double periods = 0;
    double cost = costs.order;
    for (int j = 0; j < upTo - point; ++j) {
        double reached = j == 0 ? 1 : 0;
        for (int l = 1; l <= j; ++l)
            reached += chance(l) * visits[size_t(j - l)];
        visits.push_back(reached / (1 - chance(0)));
        periods += visits.back();
        cost += visits.back() * poissonNewsvendorCost(upTo - j, mean, costs.holding, costs.backorder);
    }
    return cost / periods;
}

}  // namespace support
