#include "app/widgets/time_formats.h"

#include <QRegularExpression>

namespace laneward {

namespace {

/// The long form without its year; a plain one where the year does not stand at the end.
QString yearless(const QLocale& locale) {
    static const QRegularExpression year(QStringLiteral("[\\s,]*('[^']*'\\s*)*y+[\\s.]*('[^']*')?$"));
    QString format = locale.dateFormat(QLocale::LongFormat);
    format.remove(year);
    const bool usable =
        format.startsWith(QStringLiteral("dddd")) && !format.contains(u'y') && format.contains(QStringLiteral("MMMM"));
    return usable ? format : QStringLiteral("dddd, d MMMM");
}

}  // namespace

QString clockFormat(const QLocale& locale) {
    // The plain locale's short form has seconds, which no booking has.
    return locale.language() == QLocale::C ? QStringLiteral("HH:mm") : locale.timeFormat(QLocale::ShortFormat);
}

QString clockText(QTime time, const QLocale& locale) { return locale.toString(time, clockFormat(locale)); }

QString shortDay(QDate date, const QLocale& locale) {
    QString format = yearless(locale);
    format.replace(QStringLiteral("dddd"), QStringLiteral("ddd"))
        .replace(QStringLiteral("MMMM"), QStringLiteral("MMM"))
        .remove(u',');
    return locale.toString(date, format);
}

QString longDay(QDate date, const QLocale& locale) { return locale.toString(date, yearless(locale)); }

QString dayFieldFormat(const QLocale& locale) { return QStringLiteral("ddd ") + locale.dateFormat(QLocale::ShortFormat); }

}  // namespace laneward
