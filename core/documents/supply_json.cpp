#include "core/documents/keys.h"
#include "core/documents/supply_words.h"
#include "core/documents/writers.h"

#include <QJsonArray>

namespace laneward {

namespace {

QString kindKey(SupplyKind kind) {
    switch (kind) {
        case SupplyKind::Conditioner:
            return "conditioner";
        case SupplyKind::Cleaner:
            return "cleaner";
        case SupplyKind::ApproachCleaner:
            return "approach_cleaner";
        case SupplyKind::Cloth:
            return "cloth";
        case SupplyKind::Part:
            return "part";
        case SupplyKind::Pack:
            break;
    }
    return "pack";
}

QJsonValue dateJson(const std::optional<QDate>& date) { return date ? QJsonValue(date->toString(Qt::ISODate)) : QJsonValue(); }

QString dateCell(const std::optional<QDate>& date) { return date ? date->toString(Qt::ISODate) : QString(); }

}  // namespace

QString unitKey(SupplyKind kind) {
    switch (unitOf(kind)) {
        case BaseUnit::Microlitre:
            return "ul";
        case BaseUnit::Millimetre:
            return "mm";
        case BaseUnit::Piece:
            break;
    }
    return "pieces";
}

QJsonObject supplyJson(const SupplyOutlook& outlook, const PastScores& scores, const SeasonState& season) {
    QJsonArray supplies;
    for (const SupplyLine& line : outlook.lines) {
        const Supply* supply = findSupply(season.supplies, line.supply);
        if (!supply) continue;
        const QString unit = '_' + unitKey(supply->kind);
        const auto score = scores.find(line.supply);
        const QJsonValue past = score == scores.end() ? QJsonValue() : QJsonValue(scoreJson(score->second, supply->kind));
        supplies.append(QJsonObject{{"supply", line.supply.value},
                                    {"name", supply->name},
                                    {"kind", kindKey(supply->kind)},
                                    {"on_hand" + unit, qint64(line.onHand().value)},
                                    {"sealed" + unit, qint64(line.sealed.value)},
                                    {"open" + unit, qint64(line.open.value)},
                                    {"in_tanks" + unit, qint64(line.inTanks.value)},
                                    {"a_week" + unit, qint64(line.aWeek.value)},
                                    {"run_out_early", dateJson(line.outEarly)},
                                    {"run_out_likely", dateJson(line.outLikely)},
                                    {"run_out_late", dateJson(line.outLate)},
                                    {"order_by", dateJson(line.orderBy)},
                                    {"past", past}});
    }
    return {{"supplies", supplies}};
}

QByteArray supplyCsv(const SupplyOutlook& outlook, const SeasonState& season) {
    std::vector<CsvField> header;
    for (const char* name : {"supply", "name", "kind", "unit", "on_hand", "sealed", "open", "in_tanks", "a_week", "run_out_early",
                             "run_out_likely", "run_out_late", "order_by"})
        header.push_back({name, false});
    QByteArray out = csvRecord(header);
    for (const SupplyLine& line : outlook.lines) {
        const Supply* supply = findSupply(season.supplies, line.supply);
        if (!supply) continue;
        std::vector<CsvField> row{
            {line.supply.value, false}, {supply->name, false}, {kindKey(supply->kind), false}, {unitKey(supply->kind), false}};
        for (const Amount amount : {line.onHand(), line.sealed, line.open, line.inTanks, line.aWeek})
            row.push_back({QString::number(amount.value), true});
        for (const auto& date : {line.outEarly, line.outLikely, line.outLate, line.orderBy})
            row.push_back({dateCell(date), false});
        out += csvRecord(row);
    }
    return out;
}

QJsonObject ordersJson(const SupplyOutlook& outlook, const SeasonState& season) {
    QJsonArray orders;
    for (size_t n = 0; n < outlook.plan.next.size(); ++n) {
        const NextOrder& next = outlook.plan.next[n];
        const PlannedOrder& planned = outlook.plan.orders[next.order];
        QJsonObject order = orderJson(purchaseOrder(season, draftOf(planned, season, outlook.today)));
        order["order_by"] = next.orderBy.isValid() ? QJsonValue(next.orderBy.toString(Qt::ISODate)) : QJsonValue();
        order["arrives"] = planned.arrives.toString(Qt::ISODate);
        QJsonArray risks;
        for (const OrderRisk& risk : outlook.risks[n])
            risks.append(QJsonObject{{"supply", risk.supply.value}, {"on_time", risk.onTime}, {"waiting", risk.waiting}});
        order["risks"] = risks;
        orders.append(order);
    }
    return {{"orders", orders},
            {"total_minor", qint64(outlook.plan.total.minor)},
            {"lower_bound_minor", qint64(outlook.plan.lowerBound.minor)},
            {"proven", outlook.plan.proven}};
}

}  // namespace laneward
