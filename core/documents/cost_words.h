// What events cost in lane care, in words, as a table and as JSON. What nobody told the program is named, never taken for
// nothing: products without a price, and what an hour of work costs.
//
// JSON: {events: [{series, title, start, lanes, time_s, conditioner_ul, cleaner_ul, waste_ul, lane_runs, product_minor, currency,
// without_price: [product], a_lane: {time_s, product_minor}}], nobody: {time_s, …}}; product_minor is of what has a price.
#pragma once

#include "core/documents/wording.h"
#include "core/season/event_costs.h"

#include <QJsonObject>

namespace laneward {

/// Of one event, a line each.
QStringList costSentences(const EventCost& cost, const SeasonState& season, const Speech& speech);

QString costsText(const EventCosts& costs, const SeasonState& season, const Speech& speech);
QJsonObject costsJson(const EventCosts& costs, const SeasonState& season, const Speech& speech);
QByteArray costsCsv(const EventCosts& costs, const SeasonState& season, const Speech& speech);

}  // namespace laneward
