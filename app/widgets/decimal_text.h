// Numbers as people type and paste them: with a decimal point, or with the decimal sign of the window's language.
//
// A sign that could also part thousands is never guessed: "1,234.5" and "1.234,5" are no numbers.
//
//     const std::optional<double> units = decimalOf(cell, QLocale());
#pragma once

#include "core/base/quantities.h"
#include "core/base/zone.h"

#include <QLocale>
#include <QStringList>

#include <optional>

class QDateTimeEdit;

namespace laneward {

std::optional<double> decimalOf(const QString& text, const QLocale& locale);
/// At most `decimals`, and none that are zero.
QString decimalText(double value, int decimals, const QLocale& locale);
/// Cells of a row or a column from a spreadsheet: parted by tabs, line ends or semicolons.
QStringList pastedCells(QString text);

/// A field for a day and a time on the centre's clocks, without seconds.
QDateTimeEdit* momentField(QWidget* parent);
void setMoment(QDateTimeEdit& field, Instant t, const Zone& zone);
Instant momentOf(const QDateTimeEdit& field, const Zone& zone);

}  // namespace laneward
