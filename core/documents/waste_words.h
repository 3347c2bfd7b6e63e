// Waste tanks in words: how full each is, what was learned of it, and how likely it overflows tonight.
#pragma once

#include "core/documents/wording.h"
#include "core/season/waste_past.h"

#include <QJsonArray>

namespace laneward {

/// "about 3.1 L of 9 L; 84 % of the cleaner comes back (12 emptyings)".
QString wasteLevelText(const WasteLine& line, const Speech& speech);
/// "tonight: …": the greatest chance of the jobs that are still to run; empty when none is.
QString wasteTonightText(const WasteLine& line, const Speech& speech);
/// Whether its disposal caution stands beside it: there is waste, or some is to come.
bool hasWaste(const WasteLine& line);

/// [{machine, level_ul, capacity_ul, share_permille, emptyings, overflow: [{job, permille}]}]: `overflow` of tonight's jobs.
QJsonArray wasteJson(const std::vector<WasteLine>& lines);

}  // namespace laneward
