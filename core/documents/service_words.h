// What falls due and what was done, in words, as text for a terminal, as JSON and as CSV.
//
// JSON: {duties: [{item, item_name, duty, name, kind, machine, due_early, due_likely, due_late, never_done, used_permille, by,
// left, minutes, skill, missing: [{supply, amount_U}]}], visits: [{machine, begin, end, late, duties}], packs and charging
// as in pack_words.h, waste as in waste_words.h, findings}, U being ul, mm
// or pieces, `left` in the unit of the meter `by` (lanes, runs, minutes, volume in ul, days), dates null beyond what is planned.
// Of history: {records: [{id, happened_at, person, item, duty, machine, result, meters: {lanes, runs, minutes, volume_ul},
// parts: [{supply, lot, amount_U}], cost_minor, minutes, finding, note, corrects}], totals: {records, failures, minutes,
// cost_minor, parts}}.
#pragma once

#include "core/documents/wording.h"
#include "core/season/pack_outlook.h"
#include "core/season/service_outlook.h"
#include "core/season/waste_past.h"

#include <QJsonObject>

namespace laneward {

QString text(Skill skill);
QString text(ServiceResult result);

/// "Heron: Filters": an item with the machine that it is of.
QString itemText(const ServiceItem& item, const SeasonState& season);
/// "120 lanes left", "4 days over".
QString leftText(const DueRange& due, const Speech& speech);
/// "today", "Mon 2026-11-16", "overdue", "later".
QString likelyText(const DueRange& due, QDate today, const Speech& speech);
/// "Sat 2026-11-14 to Thu 2026-11-19": 5 to 95 %; empty where both are the likely day.
QString rangeText(const DueRange& due, const Speech& speech);
/// Both: "Mon 2026-11-16 (Sat 2026-11-14 to Thu 2026-11-19)".
QString dueText(const DueRange& due, QDate today, const Speech& speech);
/// "missing: Squeegee blade set 1"; empty when all is there.
QString missingText(const std::vector<PartNeed>& missing, const SeasonState& season, const Speech& speech);
/// "41,230 lanes, 512 runs, 310 h".
QString metersText(const Meters& meters, const Speech& speech);
/// "Mon 2026-11-16, 15:30 to 16:00, Heron: Clean the filters, …".
QString visitText(const ServiceVisit& visit, const SeasonState& season, const Speech& speech);
/// One sentence: what is overdue or due today, else what is next.
QString serviceHeadline(const ServiceOutlook& outlook, const SeasonState& season, const Speech& speech);

/// Duties that are due by `until`, as expected.
std::vector<DutyDue> dueBy(const ServiceOutlook& outlook, QDate until);

/// What is asked for: the outlook's duties up to a day.
struct ServiceList {
    const ServiceOutlook& outlook;
    const SeasonState& season;
    QDate until;
    const PackOutlook& packs;
    std::vector<WasteLine> waste;
};
QString serviceText(const ServiceList& list, const Speech& speech);
QJsonObject serviceJson(const ServiceList& list, const Speech& speech);
QByteArray serviceCsv(const ServiceList& list);

/// Records that stand, in the order given, with their sums.
QString historyText(const std::vector<ServiceRecord>& records, const SeasonState& season, const Speech& speech);
QJsonObject historyJson(const std::vector<ServiceRecord>& records, const SeasonState& season, const Speech& speech);
QByteArray historyCsv(const std::vector<ServiceRecord>& records, const SeasonState& season, const Speech& speech);

}  // namespace laneward
