// Stock, run-out dates and proposed orders as text for a terminal and as JSON.
//
// JSON of a forecast: {supplies: [{supply, name, kind, on_hand_U, sealed_U, open_U, in_tanks_U, a_week_U, run_out_early,
// run_out_likely, run_out_late, order_by, past}]}, U being ul, mm or pieces; dates null where there is none within the horizon;
// `past` the score of past forecasts (score_words.h), null where none is kept. Of orders: {orders: [{supplier, order_by, arrives,
// lines, …, risks: [{supply, on_time, waiting}]}], total_minor, lower_bound_minor, proven}.
#pragma once

#include "core/documents/purchase_order.h"
#include "core/documents/score_words.h"
#include "core/season/orders.h"

#include <map>

namespace laneward {

using PastScores = std::map<SupplyId, ForecastScore>;
QString supplyText(const SupplyOutlook& outlook, const PastScores& scores, const SeasonState& season, const Speech& speech);
QJsonObject supplyJson(const SupplyOutlook& outlook, const PastScores& scores, const SeasonState& season);
QByteArray supplyCsv(const SupplyOutlook& outlook, const SeasonState& season);

/// What a week takes; of pieces that are rarely needed, how rarely: "about 1 in 12 weeks".
QString weekText(const SupplyLine& line, SupplyKind kind, const Speech& speech);

/// One sentence: what must be ordered now, or how long everything lasts.
QString supplyHeadline(const SupplyOutlook& outlook, const SeasonState& season, const Speech& speech);
/// Sentences about a proposed order: what it covers, what waiting risks, what ordering early costs.
QStringList orderReasons(const SupplyOutlook& outlook, size_t next, const SeasonState& season, const Speech& speech);

QString ordersText(const SupplyOutlook& outlook, const SeasonState& season, const Speech& speech);
QJsonObject ordersJson(const SupplyOutlook& outlook, const SeasonState& season);

}  // namespace laneward
