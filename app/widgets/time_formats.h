// How fields and heads write days and clock times: the locale's short forms, without seconds, with the weekday.
#pragma once

#include <QDate>
#include <QLocale>

namespace laneward {

/// "HH:mm", or the locale's own.
QString clockFormat(const QLocale& locale);
QString clockText(QTime time, const QLocale& locale);
/// "Thu 12 Nov" and "Thursday, 12 November", in the locale's own order and punctuation.
QString shortDay(QDate date, const QLocale& locale);
QString longDay(QDate date, const QLocale& locale);
/// The locale's short date behind the weekday: for date fields.
QString dayFieldFormat(const QLocale& locale);

}  // namespace laneward
