#include "app/widgets/time_formats.h"

namespace laneward {

QString clockFormat(const QLocale& locale) {
    // The plain locale's short form has seconds, which no booking has.
    return locale.language() == QLocale::C ? QStringLiteral("HH:mm") : locale.timeFormat(QLocale::ShortFormat);
}

QString clockText(QTime time, const QLocale& locale) { return locale.toString(time, clockFormat(locale)); }

QString dayFieldFormat(const QLocale& locale) { return QStringLiteral("ddd ") + locale.dateFormat(QLocale::ShortFormat); }

}  // namespace laneward
