#include "core/documents/wording.h"

#include <QCoreApplication>

#include <cstdlib>

namespace laneward {

namespace {

// Sources: 1 US fl oz = 29.5735295625 mL and 1 US gal = 3.785411784 L exactly (volume table of NIST Handbook 44, from memory;
// 16 CFR 500.19 gives the same to its digits); 1 ft = 0.3048 m exactly (16 CFR 500.19).
constexpr double microlitresPerFluidOunce = 29'573.5295625;
constexpr double microlitresPerGallon = 3'785'411.784;
constexpr double micrometresPerFoot = 304'800.0;
constexpr double micrometresPerMetre = 1'000'000.0;

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

/// At most `decimals`, and none that are zero.
QString number(double value, int decimals, const Speech& speech) {
    QString text = speech.locale.toString(value, 'f', decimals);
    const QString point = speech.locale.decimalPoint();
    if (!text.contains(point)) return text;
    while (text.endsWith(speech.locale.zeroDigit()))
        text.chop(speech.locale.zeroDigit().size());
    if (text.endsWith(point)) text.chop(point.size());
    return text;
}

QString metricAmount(Microlitres a, const Speech& speech) {
    const double ml = double(a.value) / 1'000.0;
    const double size = std::abs(ml);
    if (size < 9.95) return say(QT_TRANSLATE_NOOP("wording", "%1 mL")).arg(number(ml, 1, speech));
    if (size < 999.5) return say(QT_TRANSLATE_NOOP("wording", "%1 mL")).arg(number(ml, 0, speech));
    return say(QT_TRANSLATE_NOOP("wording", "%1 L")).arg(number(ml / 1'000.0, 1, speech));
}

QString customaryAmount(Microlitres a, const Speech& speech) {
    const double ounces = double(a.value) / microlitresPerFluidOunce;
    if (std::abs(ounces) < 127.95) return say(QT_TRANSLATE_NOOP("wording", "%1 fl oz")).arg(number(ounces, 1, speech));
    return say(QT_TRANSLATE_NOOP("wording", "%1 gal")).arg(number(double(a.value) / microlitresPerGallon, 2, speech));
}

bool isPlain(const Speech& speech) { return speech.locale.language() == QLocale::C; }

}  // namespace

QString clockTime(Instant t, const Speech& speech, bool roundUp) {
    const std::int64_t seconds = roundUp ? t.seconds + 59 : t.seconds;
    const std::int64_t minute = seconds - ((seconds % 60) + 60) % 60;
    const QTime time = speech.zone.toLocal({minute}).time;
    return isPlain(speech) ? time.toString("HH:mm") : speech.locale.toString(time, QLocale::ShortFormat);
}

QString dayText(QDate date, const Speech& speech) {
    return isPlain(speech) ? speech.locale.toString(date, "dddd d MMMM yyyy") : speech.locale.toString(date, QLocale::LongFormat);
}

QString dateTimeText(Instant t, const Speech& speech) {
    const QDate date = speech.zone.toLocal(t).date;
    const QString day = speech.locale.dayName(date.dayOfWeek(), QLocale::ShortFormat);
    const QString shortDate = isPlain(speech) ? date.toString(Qt::ISODate) : speech.locale.toString(date, QLocale::ShortFormat);
    return say(QT_TRANSLATE_NOOP("wording", "%1 %2, %3")).arg(day, shortDate, clockTime(t, speech));
}

QString durationText(Seconds d, const Speech& speech) {
    const std::int64_t size = std::abs(d.value);
    const QString sign = d.value < 0 ? speech.locale.negativeSign() : QString();
    if (size < 60) return sign + say(QT_TRANSLATE_NOOP("wording", "%1 s")).arg(speech.locale.toString(qlonglong(size)));
    const std::int64_t whole = (size + 30) / 60;
    if (whole < 60) return sign + say(QT_TRANSLATE_NOOP("wording", "%1 min")).arg(speech.locale.toString(qlonglong(whole)));
    const QString hoursPart = speech.locale.toString(qlonglong(whole / 60));
    if (whole % 60 == 0) return sign + say(QT_TRANSLATE_NOOP("wording", "%1 h")).arg(hoursPart);
    const QString minutesPart = speech.locale.toString(qlonglong(whole % 60)).rightJustified(2, speech.locale.zeroDigit().at(0));
    return sign + say(QT_TRANSLATE_NOOP("wording", "%1 h %2 min")).arg(hoursPart, minutesPart);
}

QString amountText(Microlitres a, const Speech& speech) {
    return speech.units == UnitSystem::Metric ? metricAmount(a, speech) : customaryAmount(a, speech);
}

QString lengthText(Micrometres l, const Speech& speech) {
    const double um = double(l.value);
    if (speech.units == UnitSystem::Metric) {
        return say(QT_TRANSLATE_NOOP("wording", "%1 m")).arg(number(um / micrometresPerMetre, 1, speech));
    }
    return say(QT_TRANSLATE_NOOP("wording", "%1 ft")).arg(number(um / micrometresPerFoot, 1, speech));
}

QString voltsText(Millivolts v, const Speech& speech) {
    return say(QT_TRANSLATE_NOOP("wording", "%1 V")).arg(speech.locale.toString(double(v.value) / 1'000.0, 'f', 1));
}

}  // namespace laneward
