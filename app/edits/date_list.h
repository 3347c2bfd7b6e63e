// Dates that are typed in one line: 2026-12-24, or as the locale writes them, with commas between.
#pragma once

#include <QDate>
#include <QLocale>
#include <QStringList>

#include <vector>

namespace laneward {

QString datesText(const std::vector<QDate>& dates);
/// In the order in which they were typed. What is no date is left out and told in `unreadable`.
std::vector<QDate> readDates(const QString& typed, const QLocale& locale, QStringList* unreadable = nullptr);

}  // namespace laneward
