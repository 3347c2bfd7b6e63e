// Questions to the order plan: a small one by hand, and the year of a large centre.
#pragma once

#include "core/supplies/order_plan.h"

#include <random>

namespace support {

using namespace laneward;

inline const QDate orderDay0{2026, 11, 2};  // a Monday

/// `daily` of it is used each day; as much again as three days of it must stay.
inline StockedSupply stocked(const QString& id, std::int64_t onHand, std::int64_t daily, int days = 364) {
    StockedSupply made;
    made.supply = {{id}, id, SupplyKind::Part};
    made.onHand = {onHand};
    for (int day = 1; day <= days; ++day) {
        made.expected.push_back({daily * day});
        made.needed.push_back({daily * (day + 3)});
    }
    return made;
}

inline SourcedSupplier sourcedFrom(const QString& id, std::int64_t freight, int leadDays = 7) {
    Supplier supplier;
    supplier.id = {id};
    supplier.name = id;
    supplier.freight = {freight, "EUR"};
    supplier.minimumOrder = {0, "EUR"};
    return {supplier, leadDays};
}

inline Offer offered(const QString& supplier, const QString& supply, std::int64_t pack, std::int64_t each) {
    return {{supplier + '/' + supply + '/' + QString::number(pack)}, {supplier}, {supply}, "A1", {pack}, {{1, {each, "EUR"}}}};
}

inline OrderQuestion orderQuestion(std::vector<StockedSupply> supplies, std::vector<SourcedSupplier> suppliers,
                                   std::vector<Offer> offers) {
    return {orderDay0, "EUR", std::move(supplies), std::move(suppliers), std::move(offers)};
}

/// 20 supplies, 4 suppliers, 52 weeks; freight, free from a value, a minimum order, price breaks, some limits; `doubles` of the
/// supplies are sold by two.
inline OrderQuestion yearOfOrders(unsigned seed, int doubles) {
    std::mt19937 random(seed);
    const auto between = [&](int least, int most) { return least + int(random() % unsigned(most - least + 1)); };
    OrderQuestion question{orderDay0, "EUR", {}, {}, {}};
    for (int s = 0; s < 4; ++s) {
        question.suppliers.push_back(sourcedFrom(QString("supplier %1").arg(s), 100 * between(15, 40), between(2, 9)));
        Supplier& supplier = question.suppliers.back().supplier;
        supplier.orderWeekdays = s % 2 == 0 ? 0x1f : 0x05;
        if (s > 0) supplier.freeFreightFrom = Money{100 * between(300, 800), "EUR"};
        if (s > 1) supplier.minimumOrder = {100 * between(50, 120), "EUR"};
    }
    for (int i = 0; i < 20; ++i) {
        const QString id = QString("supply %1").arg(i, 2, 10, QLatin1Char('0'));
        const int packs = between(6, 40);  // a year
        StockedSupply supply;
        supply.supply = {{id}, id, SupplyKind::Conditioner};
        supply.onHand = {between(1, 4) * 5'000'000};
        double used = 0;
        for (int day = 0; day < 364; ++day) {
            used += double(between(5, 15)) / 10 * packs * 5e6 / 364;
            supply.expected.push_back({std::int64_t(used)});
            supply.needed.push_back({std::int64_t(used + 2.05 * 5e5 * std::sqrt(double(day + 1) / 7))});
        }
        if (i % 4 == 0) supply.supply.rules.storageLimit = {between(10, 20) * 5'000'000};
        if (i % 5 == 0) supply.supply.rules.shelfLifeDays = 300;
        question.supplies.push_back(supply);
        const int each = 100 * between(8, 60);
        for (int k = 0; k < (i < doubles ? 2 : 1); ++k) {
            Offer offer = offered(QString("supplier %1").arg((i + k) % 4), id, 5'000'000, each * (100 + 3 * k) / 100);
            offer.prices.push_back({between(4, 10), {each * 95 / 100, "EUR"}});
            question.offers.push_back(offer);
        }
    }
    return question;
}

}  // namespace support
