// Documents as text, JSON and CSV. JSON keys are snake_case and stable; times ISO 8601 with the centre's offset; amounts are
// integers in base units with the unit in the key.
#pragma once

#include "core/documents/wording.h"

#include <QJsonObject>

namespace laneward {

QString sheetText(const JobSheet& sheet, const Speech& speech);
QJsonObject sheetJson(const JobSheet& sheet, const Speech& speech);
QByteArray sheetCsv(const JobSheet& sheet, const Speech& speech);

QString planText(const Plan& plan, const State& state, const Speech& speech);
/// Plans of so many days tell of each job what fixes its place and what it would cost to move it: a longer plan is read for what
/// lies ahead, not job by job.
inline constexpr int daysExplained = 7;
QJsonObject planJson(const Plan& plan, const State& state, const Speech& speech);
QByteArray planCsv(const Plan& plan, const Speech& speech);

QString eventsText(const Occupancy& occupancy, const State& state, const Speech& speech);
QJsonObject eventsJson(const Occupancy& occupancy, const Speech& speech);
QByteArray eventsCsv(const Occupancy& occupancy, const Speech& speech);

/// Jobs as calendar entries for phones.
QByteArray jobsIcs(const Plan& plan, const State& state, const Speech& speech, Instant stamp);

/// One record by RFC 4180, CRLF at its end. Text fields that a spreadsheet would take for a formula (leading = + - @ tab CR NUL)
/// get an apostrophe in front; numbers are written as they are.
struct CsvField {
    QString text;
    bool isNumber = false;
};
QByteArray csvRecord(const std::vector<CsvField>& fields);

}  // namespace laneward
