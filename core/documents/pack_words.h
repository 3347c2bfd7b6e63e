// Packs in words: what they are, where they are, whether they last tonight, and which is to be charged.
#pragma once

#include "core/documents/wording.h"
#include "core/season/pack_outlook.h"

#include <QJsonArray>

namespace laneward {

QString text(Chemistry chemistry);
QString text(VoltageState state);
QString text(PackDeed deed);

/// "Heron: Pack": a pack with its machine.
QString packName(const ItemId& pack, const SeasonState& season);
/// "on the machine, 23 lanes since Tue 24 Nov, 05:02".
QString packPlaceText(const PackState& pack, const Speech& speech);
/// "24.9 V rested, Tue 24 Nov, 05:02: about half full (40 to 60 %)"; empty when nothing was measured.
QString packVoltsText(const PackLine& line, const Speech& speech);
/// "about 18 lanes left; tonight's 16 lanes: likely (97 %)".
QString packTonightText(const PackLine& line, const Speech& speech);
/// "about 38 lanes a charge, in 19 of 20 at least 31 (12 charges, 4 cut short)"; without charges that the setting is used.
QString packLearnedText(const PackLine& line, const Speech& speech);
/// "Thu 26 Nov, 16:43 to 20:43: Grebe: Spare pack on charge".
QString turnText(const ChargeTurn& turn, const SeasonState& season, const Speech& speech);
/// "Heron: Pack fades: fewer than 24 lanes, as the busiest night took, about Mar 2027 (Jan to Jun 2027)."; else why there is
/// none.
QString packTrendText(const Result<PackTrend>& trend, int needed, const QString& name, const Speech& speech);
/// One sentence: the first pack that may not last tonight, else which is on charge now.
QString packHeadline(const PackOutlook& outlook, const SeasonState& season, Instant now, const Speech& speech);

/// [{pack, name, machine, on_machine, on_charge, since, lanes, charges, cut_short, usual_lanes_permille, sure_lanes_permille,
/// volts_mv, state, charge_permille, left_permille, tonight, finishes_permille}]: lanes in thousandths; null = not known.
QJsonArray packsJson(const PackOutlook& outlook, const SeasonState& season, const Speech& speech);
/// [{pack, begin, end, full, late_s}]
QJsonArray turnsJson(const PackOutlook& outlook, const Speech& speech);

}  // namespace laneward
