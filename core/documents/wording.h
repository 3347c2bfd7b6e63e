// Findings and values in words. The only room of the core that speaks a language: texts go through QCoreApplication::translate
// (context "wording") and numbers, dates and amounts through the given locale.
#pragma once

#include "core/base/finding.h"
#include "core/base/result.h"
#include "core/documents/job_sheet.h"

#include <QLocale>

namespace laneward {

struct Speech {
    QLocale locale;
    Zone zone;
    UnitSystem units = UnitSystem::Metric;
};

QString text(const Finding& finding, const Speech& speech);
/// Whether text() has words for the rule; without, it prints the bare facts.
bool isWorded(const QByteArray& rule);
QString text(const Error& error, const Speech& speech);
QString text(const Value& value, const Speech& speech);
QString text(Treatment treatment);
QString text(DemandKind demand);
QString text(EventKind kind);
QString text(JobState state);
QString text(StepKind step);
QString text(Role role);
QString text(IncidentKind kind);
QString text(RunResult result);

/// "17:17", by the locale; `roundUp` for 'ready at'.
QString clockTime(Instant t, const Speech& speech, bool roundUp = false);
QString dayText(QDate date, const Speech& speech);  ///< "Thursday 12 November 2026"
QString dateTimeText(Instant t, const Speech& speech);
QString durationText(Seconds d, const Speech& speech);    ///< "9 min", "2 h 05 min"
QString amountText(Microlitres a, const Speech& speech);  ///< "302 mL", "1.9 L", "10.2 fl oz"
QString lengthText(Micrometres l, const Speech& speech);  ///< "40 ft", "12.2 m"
QString voltsText(Millivolts v, const Speech& speech);
/// A recurrence in words, with the next dates from `from` on (or the first ones): "Every Thursday until 25 March 2027, not on
/// 24 December; next: …".
QString seriesText(const Series& series, const Speech& speech, QDate from = {});
/// Names shown in one line: control and bidirectional formatting characters become visible marks.
QString shown(const QString& name);

}  // namespace laneward
