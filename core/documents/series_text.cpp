#include "core/calendar/recurrence.h"
#include "core/documents/wording.h"

#include <QCoreApplication>
#include <QMap>

#include <algorithm>

namespace laneward {

namespace {

constexpr int shownDates = 3;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

QMap<QString, QString> partsOf(const QString& rule) {
    QMap<QString, QString> parts;
    for (const QString& part : rule.split(';', Qt::SkipEmptyParts)) {
        const qsizetype equals = part.indexOf('=');
        parts[part.left(equals).trimmed().toUpper()] = part.mid(equals + 1).trimmed().toUpper();
    }
    return parts;
}

QString dateText(QDate date, const Speech& speech) {
    return speech.locale.language() == QLocale::C ? date.toString(Qt::ISODate)
                                                  : speech.locale.toString(date, QLocale::ShortFormat);
}

int weekdayOf(const QString& code) {
    static const QStringList codes{"MO", "TU", "WE", "TH", "FR", "SA", "SU"};
    return int(codes.indexOf(code)) + 1;
}

QString joined(const QStringList& items) {
    if (items.size() < 2) return items.join(QString());
    return say(QT_TRANSLATE_NOOP("wording", "%1 and %2")).arg(items.mid(0, items.size() - 1).join(", "), items.last());
}

/// "Monday and Thursday"; nothing when a part is not a plain weekday.
QString weekdays(const QString& byDay, const LocalTime& start, const Speech& speech) {
    if (byDay.isEmpty()) return speech.locale.dayName(start.date.dayOfWeek());
    QStringList names;
    for (const QString& code : byDay.split(',')) {
        if (weekdayOf(code) < 1) return {};
        names += speech.locale.dayName(weekdayOf(code));
    }
    return joined(names);
}

/// "on day 15", "on days 1 and 15", "on the last day". Nothing for days counted from the month's end otherwise.
QString datesOfMonth(const QString& byMonthDay) {
    if (byMonthDay == "-1") return say(QT_TRANSLATE_NOOP("wording", "on the last day"));
    if (byMonthDay.contains('-')) return {};
    const QStringList days = byMonthDay.split(',');
    return days.size() == 1 ? say(QT_TRANSLATE_NOOP("wording", "on day %1")).arg(days.first())
                            : say(QT_TRANSLATE_NOOP("wording", "on days %1")).arg(joined(days));
}

/// "on the second Thursday", "on day 15".
QString dayOfMonth(const QMap<QString, QString>& parts, const LocalTime& start, const Speech& speech) {
    const QString byDay = parts.value("BYDAY");
    if (byDay.isEmpty()) return datesOfMonth(parts.value("BYMONTHDAY", QString::number(start.date.day())));
    const QString number = byDay.left(byDay.size() - 2);
    const int weekday = weekdayOf(byDay.right(2));
    if (weekday < 1 || byDay.contains(',')) return {};
    static const QMap<QString, const char*> places{{"1", QT_TRANSLATE_NOOP("wording", "on the first %1")},
                                                   {"2", QT_TRANSLATE_NOOP("wording", "on the second %1")},
                                                   {"3", QT_TRANSLATE_NOOP("wording", "on the third %1")},
                                                   {"4", QT_TRANSLATE_NOOP("wording", "on the fourth %1")},
                                                   {"-1", QT_TRANSLATE_NOOP("wording", "on the last %1")}};
    return places.contains(number) ? say(places[number]).arg(speech.locale.dayName(weekday)) : QString();
}

QString daily(int interval) {
    return interval == 1 ? say(QT_TRANSLATE_NOOP("wording", "Every day"))
                         : say(QT_TRANSLATE_NOOP("wording", "Every %1 days")).arg(interval);
}

QString weekly(int interval, const QString& days) {
    if (days.isEmpty()) return {};
    return interval == 1 ? say(QT_TRANSLATE_NOOP("wording", "Every %1")).arg(days)
                         : say(QT_TRANSLATE_NOOP("wording", "Every %1 weeks on %2")).arg(QString::number(interval), days);
}

QString monthly(int interval, const QString& day) {
    if (day.isEmpty()) return {};
    return interval == 1 ? say(QT_TRANSLATE_NOOP("wording", "Every month %1")).arg(day)
                         : say(QT_TRANSLATE_NOOP("wording", "Every %1 months %2")).arg(QString::number(interval), day);
}

/// Nothing for a rule that these words cannot say.
QString frequency(const QMap<QString, QString>& parts, const LocalTime& start, const Speech& speech) {
    static const QStringList sayable{"FREQ", "INTERVAL", "COUNT", "UNTIL", "BYDAY", "BYMONTHDAY", "WKST"};
    for (const QString& key : parts.keys()) {
        if (!sayable.contains(key)) return {};
    }
    const int interval = std::max(1, parts.value("INTERVAL", "1").toInt());
    const bool limited = parts.contains("BYDAY") || parts.contains("BYMONTHDAY");
    const QString freq = parts.value("FREQ");
    if (freq == "DAILY" && !limited) return daily(interval);
    if (freq == "WEEKLY" && !parts.contains("BYMONTHDAY")) return weekly(interval, weekdays(parts.value("BYDAY"), start, speech));
    if (freq == "MONTHLY" && !(parts.contains("BYDAY") && parts.contains("BYMONTHDAY"))) {
        return monthly(interval, dayOfMonth(parts, start, speech));
    }
    if (freq == "YEARLY" && !limited && interval == 1) {
        return say(QT_TRANSLATE_NOOP("wording", "Every year on %1")).arg(speech.locale.toString(start.date, "d MMMM"));
    }
    return {};
}

QString limitText(const QMap<QString, QString>& parts, const Speech& speech) {
    const QDate until = QDate::fromString(parts.value("UNTIL").left(8), "yyyyMMdd");
    if (until.isValid()) return say(QT_TRANSLATE_NOOP("wording", " until %1")).arg(dateText(until, speech));
    const int count = parts.value("COUNT").toInt();
    return count > 0 ? say(QT_TRANSLATE_N_NOOP("wording", ", %n times in all"), count) : QString();
}

QString exceptionsText(const Series& series, const Speech& speech) {
    std::vector<QDate> without;
    for (const LocalTime& excluded : series.excludedDates)
        without.push_back(excluded.date);
    for (const Override& one : series.overrides) {
        if (one.cancelled) without.push_back(one.original.date);
    }
    std::sort(without.begin(), without.end());
    QStringList dates;
    for (const QDate& date : without)
        dates += dateText(date, speech);
    QString text = dates.isEmpty() ? QString() : say(QT_TRANSLATE_NOOP("wording", ", not on %1")).arg(joined(dates));
    for (const Override& one : series.overrides) {
        if (one.cancelled || !one.start) continue;
        text += say(QT_TRANSLATE_NOOP("wording", ", %1 moved to %2 %3"))
                    .arg(dateText(one.original.date, speech), dateText(one.start->date, speech),
                         speech.locale.toString(one.start->time, "HH:mm"));
    }
    return text;
}

bool isOff(const Series& series, const LocalTime& start) {
    return std::find(series.excludedDates.begin(), series.excludedDates.end(), start) != series.excludedDates.end() ||
           std::any_of(series.overrides.begin(), series.overrides.end(),
                       [&start](const Override& o) { return o.cancelled && o.original == start; });
}

QString nextText(const Series& series, const Speech& speech, QDate from) {
    const QDate first = from.isValid() ? from : series.start.date;
    const Result<Dates> dates = startsOf(series, {first, first.addYears(2)});
    if (!dates) return {};
    QStringList next;
    for (const LocalTime& start : dates->starts) {
        if (!isOff(series, start) && next.size() < shownDates) next += dateText(start.date, speech);
    }
    if (next.isEmpty()) return say(QT_TRANSLATE_NOOP("wording", "; no more dates"));
    const char* form = from.isValid() ? QT_TRANSLATE_NOOP("wording", "; next: %1") : QT_TRANSLATE_NOOP("wording", "; first: %1");
    return say(form).arg(next.join(", "));
}

}  // namespace

QString seriesText(const Series& series, const Speech& speech, QDate from) {
    if (series.cancelled) return say(QT_TRANSLATE_NOOP("wording", "Cancelled"));
    if (series.rule.isEmpty() && series.extraDates.empty()) {
        return say(QT_TRANSLATE_NOOP("wording", "Once, on %1")).arg(dayText(series.start.date, speech));
    }
    const QMap<QString, QString> parts = partsOf(series.rule);
    QString words = series.rule.isEmpty() ? say(QT_TRANSLATE_NOOP("wording", "On single dates"))
                                          : frequency(parts, series.start, speech) + limitText(parts, speech);
    if (!series.rule.isEmpty() && frequency(parts, series.start, speech).isEmpty()) {
        words = say(QT_TRANSLATE_NOOP("wording", "By the rule %1")).arg(series.rule);
    }
    return words + exceptionsText(series, speech) + nextText(series, speech, from);
}

}  // namespace laneward
