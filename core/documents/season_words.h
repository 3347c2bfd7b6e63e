// A season's figures as text for a terminal and as JSON.
//
// JSON: {total, weeks: [{week, first, tight_days, …}], days: [{date, tight, …}], tight: [date …]}; the figures of each are jobs,
// outings, treatments, conditioner_ul, cleaner_ul, machine_s, overtime_s, unmet, late, late_s, tight_s, least_slack_s, spare_s
// (null where nothing is to be done), days, proven.
#pragma once

#include "core/documents/wording.h"
#include "core/season/season_figures.h"

#include <QJsonObject>

namespace laneward {

QString seasonText(const SeasonFigures& season, const Speech& speech);
QJsonObject seasonJson(const SeasonFigures& season);

/// "12 min to spare", "nothing to spare", "3 demands unmet", "tight by 4 min"; what makes a day hard, in a few words.
QString spareText(const WorkFigures& work, const Speech& speech);

}  // namespace laneward
