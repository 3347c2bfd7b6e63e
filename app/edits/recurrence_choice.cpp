#include "app/edits/recurrence_choice.h"

#include <QHash>
#include <QStringList>

#include <array>
#include <optional>

namespace laneward {

namespace {

using Form = RecurrenceChoice::Form;
using End = RecurrenceChoice::End;
using Parts = QHash<QString, QString>;

const std::array<QString, 7>& dayNames() {
    static const std::array<QString, 7> names{QStringLiteral("MO"), QStringLiteral("TU"), QStringLiteral("WE"),
                                              QStringLiteral("TH"), QStringLiteral("FR"), QStringLiteral("SA"),
                                              QStringLiteral("SU")};
    return names;
}

std::optional<Parts> partsOf(const QString& rule) {
    Parts parts;
    for (const QString& piece : rule.toUpper().split(u';', Qt::SkipEmptyParts)) {
        const qsizetype equals = piece.indexOf(u'=');
        if (equals < 1 || parts.contains(piece.left(equals))) return std::nullopt;
        parts.insert(piece.left(equals).trimmed(), piece.mid(equals + 1).trimmed());
    }
    return parts;
}

std::uint8_t weekdaysOf(const QString& list) {
    std::uint8_t mask = 0;
    for (const QString& name : list.split(u',')) {
        const auto& names = dayNames();
        const auto found = std::find(names.begin(), names.end(), name.trimmed());
        if (found == names.end()) return 0;
        mask |= std::uint8_t(1u << (found - names.begin()));
    }
    return mask;
}

/// The last date on which an instance may start.
std::optional<QDate> untilOf(const QString& text, const LocalTime& start, const Zone& zone) {
    const QDate date = QDate::fromString(text.left(8), QStringLiteral("yyyyMMdd"));
    if (!date.isValid()) return std::nullopt;
    if (text.size() == 8) return date;
    const QTime time = QTime::fromString(text.mid(9, 6), QStringLiteral("HHmmss"));
    if (!time.isValid() || text[8] != u'T') return std::nullopt;
    LocalTime last{date, time};
    if (text.endsWith(u'Z'))
        last = zone.toLocal(Zone().toInstant(last));
    else if (text.size() != 15)
        return std::nullopt;
    return last.time < start.time ? last.date.addDays(-1) : last.date;
}

bool readEnd(Parts& parts, const LocalTime& start, const Zone& zone, RecurrenceChoice& choice) {
    bool ok = true;
    if (parts.contains(QStringLiteral("INTERVAL"))) choice.every = parts.take(QStringLiteral("INTERVAL")).toInt(&ok);
    if (!ok || choice.every < 1) return false;
    if (parts.contains(QStringLiteral("COUNT"))) {
        choice.end = End::AfterTimes;
        choice.times = parts.take(QStringLiteral("COUNT")).toInt(&ok);
        if (!ok || choice.times < 1) return false;
    }
    if (!parts.contains(QStringLiteral("UNTIL"))) return true;
    const std::optional<QDate> until = untilOf(parts.take(QStringLiteral("UNTIL")), start, zone);
    if (!until || choice.end == End::AfterTimes) return false;
    choice.end = End::OnDate;
    choice.until = *until;
    return true;
}

/// The week's first day matters only to every second week and the like, with more than one day.
bool takeWeekStart(Parts& parts, const RecurrenceChoice& choice, const LocalTime& start) {
    const QString first = parts.take(QStringLiteral("WKST"));
    const bool one = choice.weekdays == weekdayBit(start.date);
    return first.isEmpty() || first == QStringLiteral("MO") || choice.every == 1 || one;
}

bool readWeekly(Parts& parts, const LocalTime& start, RecurrenceChoice& choice) {
    choice.form = Form::Weekly;
    const QString days = parts.take(QStringLiteral("BYDAY"));
    choice.weekdays = days.isEmpty() ? weekdayBit(start.date) : weekdaysOf(days);
    return choice.weekdays != 0 && takeWeekStart(parts, choice, start) && parts.isEmpty();
}

bool readDaily(Parts& parts, const LocalTime& start, RecurrenceChoice& choice) {
    // Every day of some weekdays is every week on them.
    if (parts.contains(QStringLiteral("BYDAY"))) return choice.every == 1 && readWeekly(parts, start, choice);
    choice.form = Form::Daily;
    parts.remove(QStringLiteral("WKST"));
    return parts.isEmpty();
}

bool readMonthly(Parts& parts, const LocalTime& start, RecurrenceChoice& choice) {
    parts.remove(QStringLiteral("WKST"));
    QString day = parts.take(QStringLiteral("BYDAY"));
    const QString date = parts.take(QStringLiteral("BYMONTHDAY"));
    day.prepend(parts.take(QStringLiteral("BYSETPOS")));  // "TH" at position 2 is "2TH"
    if (!parts.isEmpty() || (!day.isEmpty() && !date.isEmpty())) return false;
    const QString weekday = dayNames()[size_t(start.date.dayOfWeek() - 1)];
    if (!day.isEmpty()) {
        const bool last = day == QStringLiteral("-1") + weekday && isLastWeekdayOfMonth(start.date);
        choice.form = last ? Form::MonthlyOnLastWeekday : Form::MonthlyOnWeekday;
        return last || day == QString::number(weekOfMonth(start.date)) + weekday ||
               day == QStringLiteral("+%1%2").arg(weekOfMonth(start.date)).arg(weekday);
    }
    const bool last = date == QStringLiteral("-1") && isLastOfMonth(start.date);
    choice.form = last ? Form::MonthlyOnLastDay : Form::MonthlyOnDate;
    return last || date.isEmpty() || date == QString::number(start.date.day());
}

bool readYearly(Parts& parts, const LocalTime& start, RecurrenceChoice& choice) {
    choice.form = Form::Yearly;
    parts.remove(QStringLiteral("WKST"));
    const QString month = parts.take(QStringLiteral("BYMONTH"));
    const QString date = parts.take(QStringLiteral("BYMONTHDAY"));
    const bool named = month == QString::number(start.date.month()) && date == QString::number(start.date.day());
    return parts.isEmpty() && (named || (month.isEmpty() && date.isEmpty()));
}

bool read(const QString& rule, const LocalTime& start, const Zone& zone, RecurrenceChoice& choice) {
    std::optional<Parts> parts = partsOf(rule);
    if (!parts || !readEnd(*parts, start, zone, choice)) return false;
    const QString frequency = parts->take(QStringLiteral("FREQ"));
    if (frequency == QStringLiteral("DAILY")) return readDaily(*parts, start, choice);
    if (frequency == QStringLiteral("WEEKLY")) return readWeekly(*parts, start, choice);
    if (frequency == QStringLiteral("MONTHLY")) return readMonthly(*parts, start, choice);
    return frequency == QStringLiteral("YEARLY") && readYearly(*parts, start, choice);
}

QString weekdayList(std::uint8_t mask) {
    QStringList days;
    for (size_t day = 0; day < 7; ++day) {
        if (mask >> day & 1) days << dayNames()[day];
    }
    return days.join(u',');
}

QString frequencyOf(const RecurrenceChoice& choice, QDate start) {
    const QString weekday = dayNames()[size_t(start.dayOfWeek() - 1)];
    switch (choice.form) {
        case Form::Daily:
            return QStringLiteral("FREQ=DAILY");
        case Form::Weekly:
            return QStringLiteral("FREQ=WEEKLY;BYDAY=") + weekdayList(choice.weekdays ? choice.weekdays : weekdayBit(start));
        case Form::MonthlyOnDate:
            return QStringLiteral("FREQ=MONTHLY;BYMONTHDAY=%1").arg(start.day());
        case Form::MonthlyOnLastDay:
            return QStringLiteral("FREQ=MONTHLY;BYMONTHDAY=-1");
        case Form::MonthlyOnWeekday:
            return QStringLiteral("FREQ=MONTHLY;BYDAY=%1%2").arg(weekOfMonth(start)).arg(weekday);
        case Form::MonthlyOnLastWeekday:
            return QStringLiteral("FREQ=MONTHLY;BYDAY=-1") + weekday;
        case Form::Yearly:
            return QStringLiteral("FREQ=YEARLY");
        case Form::Once:
        case Form::Custom:
            break;
    }
    return {};
}

}  // namespace

bool isLastOfMonth(QDate date) { return date.day() == date.daysInMonth(); }
bool isLastWeekdayOfMonth(QDate date) { return date.day() + 7 > date.daysInMonth(); }
int weekOfMonth(QDate date) { return (date.day() - 1) / 7 + 1; }
std::uint8_t weekdayBit(QDate date) { return std::uint8_t(1u << (date.dayOfWeek() - 1)); }

RecurrenceChoice choiceOf(const QString& rule, const LocalTime& start, const Zone& zone) {
    RecurrenceChoice choice;
    if (rule.trimmed().isEmpty()) return choice;
    if (read(rule, start, zone, choice)) return choice;
    choice = {};
    choice.form = Form::Custom;
    choice.custom = rule;
    return choice;
}

QString ruleOf(const RecurrenceChoice& choice, const LocalTime& start, const Zone& zone) {
    if (choice.form == Form::Custom) return choice.custom;
    QString rule = frequencyOf(choice, start.date);
    if (rule.isEmpty()) return rule;
    if (choice.every > 1) rule += QStringLiteral(";INTERVAL=%1").arg(choice.every);
    if (choice.end == End::AfterTimes) rule += QStringLiteral(";COUNT=%1").arg(choice.times);
    if (choice.end == End::OnDate) {
        const LocalTime utc = Zone().toLocal(zone.toInstant({choice.until, QTime(23, 59, 59)}));
        rule += QStringLiteral(";UNTIL=%1T%2Z")
                    .arg(utc.date.toString(QStringLiteral("yyyyMMdd")), utc.time.toString(QStringLiteral("HHmmss")));
    }
    return rule;
}

}  // namespace laneward
