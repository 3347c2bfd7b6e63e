// Stable words of JSON and CSV: never translated. Internal to this room.
#pragma once

#include "core/documents/wording.h"
#include "core/supplies/supply.h"

#include <QJsonArray>
#include <QJsonObject>

namespace laneward {

QString key(Treatment treatment);
QString key(DemandKind demand);
QString key(EventKind kind);
QString key(JobState state);
QString key(StepKind step);
QString key(Severity severity);
QString key(VoltageState state);
/// "ul", "mm" or "pieces": what keys of its amounts end with.
QString unitKey(SupplyKind kind);

/// "2026-11-12T17:17:00+00:00".
QString isoTime(Instant t, const Zone& zone);
QJsonArray laneList(const LaneSet& lanes);
/// {rule, severity, subject, text}.
QJsonObject findingJson(const Finding& finding, const Speech& speech);
QJsonArray findingsJson(const std::vector<Finding>& findings, const Speech& speech);
QJsonObject jobJson(const Job& job, const Speech& speech);
QJsonObject shortfallJson(const Shortfall& shortfall, const Speech& speech);
std::int64_t wholeMinutes(Seconds d);  ///< rounded down, also below zero

}  // namespace laneward
