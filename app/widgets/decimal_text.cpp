#include "app/widgets/decimal_text.h"

#include "app/widgets/time_formats.h"

#include <QDateTimeEdit>
#include <QRegularExpression>

#include <cmath>

namespace laneward {

std::optional<double> decimalOf(const QString& text, const QLocale& locale) {
    const QString typed = text.trimmed();
    if (typed.contains(u'e', Qt::CaseInsensitive)) return std::nullopt;
    bool good = false;
    double number = QLocale::c().toDouble(typed, &good);
    if (typed.contains(u',')) good = false;
    if (!good && !typed.contains(u'.')) {
        QLocale strict = locale;
        strict.setNumberOptions(QLocale::RejectGroupSeparator);
        number = strict.toDouble(typed, &good);
    }
    return good && std::isfinite(number) ? std::optional(number) : std::nullopt;
}

QString decimalText(double value, int decimals, const QLocale& locale) {
    QString text = locale.toString(value, 'f', decimals);
    if (!text.contains(locale.decimalPoint())) return text;
    while (text.endsWith(locale.zeroDigit()))
        text.chop(locale.zeroDigit().size());
    if (text.endsWith(locale.decimalPoint())) text.chop(locale.decimalPoint().size());
    return text;
}

QStringList pastedCells(QString text) {
    static const QRegularExpression lineEnd(QStringLiteral("[\\r\\n\u2028\u2029]+$"));
    text.remove(lineEnd);
    static const QRegularExpression parting(QStringLiteral("\\r\\n|[\\t\\r\\n;\u2028\u2029]"));
    return text.split(parting);
}

QDateTimeEdit* momentField(QWidget* parent) {
    auto* field = new QDateTimeEdit(parent);
    const QLocale locale;
    field->setDisplayFormat(dayFieldFormat(locale) + u' ' + clockFormat(locale));
    field->setCalendarPopup(true);
    field->setDateRange({1970, 1, 1}, {2099, 12, 31});
    field->setTimeSpec(Qt::UTC);
    return field;
}

void setMoment(QDateTimeEdit& field, Instant t, const Zone& zone) {
    const LocalTime local = zone.toLocal(t);
    field.setDateTime({local.date, local.time, Qt::UTC});  // seconds stay, unseen
}

Instant momentOf(const QDateTimeEdit& field, const Zone& zone) { return zone.toInstant({field.date(), field.time()}); }

}  // namespace laneward
