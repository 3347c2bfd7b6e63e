// Staff hours as a sheet: for the terminal, as JSON and CSV, and the words that its paper has.
//
// JSON: [{week, first, bound_s, overtime_s, days: [{date, from, until, bound_s, overtime_s, outings}]}]; from and until are null
// on days without an outing.
#pragma once

#include "core/documents/wording.h"
#include "core/season/staff_hours.h"

#include <QJsonArray>

namespace laneward {

/// "Week 46, Monday 9 November 2026 to Sunday 15 November 2026".
QString staffTitle(const StaffWeek& week, const Speech& speech);
QStringList staffHeader();
/// Day, from, until, hours, overtime, outings.
QStringList staffRow(const StaffDay& day, const Speech& speech);
QStringList staffTotal(const StaffWeek& week, const Speech& speech);
/// What is counted, in a sentence.
QString staffNote();

QString staffText(const std::vector<StaffWeek>& weeks, const Speech& speech);
QJsonArray staffJson(const std::vector<StaffWeek>& weeks, const Speech& speech);
QByteArray staffCsv(const std::vector<StaffWeek>& weeks, const Speech& speech);

}  // namespace laneward
