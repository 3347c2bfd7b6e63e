// An order as the supplier reads it, as plain data: the same model feeds the screen, the PDF, the printer, the text and the CSV.
//
// Money in minor units of the centre's currency. One page for a usual order.
#pragma once

#include "core/documents/wording.h"
#include "core/season/season.h"
#include "core/supplies/supply.h"

#include <QJsonObject>

namespace laneward {

struct PurchaseLine {
    QString article;
    QString supply;
    SupplyKind kind = SupplyKind::Part;
    Amount pack;
    int packs = 0;
    Money each;
    Money total;
};

struct PurchaseOrder {
    QString centre;
    QString supplier;
    QString address;
    QString number;
    std::optional<QDate> date;  ///< none while it is a draft
    QString person;
    std::vector<PurchaseLine> lines;  ///< in the order's own order
    Money goods;
    Money freight;
    Money total;
    QString note;
};

PurchaseOrder purchaseOrder(const SeasonState& season, const Order& order);

QString orderText(const PurchaseOrder& order, const Speech& speech);
/// Columns article, supply, pack, packs, each, total, currency; money in minor units.
QByteArray orderCsv(const PurchaseOrder& order);
/// {supplier, number, date, lines: [{article, supply, pack_ul | pack_mm | pack_pieces, packs, each_minor, total_minor}],
/// goods_minor, freight_minor, total_minor, currency}.
QJsonObject orderJson(const PurchaseOrder& order);

}  // namespace laneward
