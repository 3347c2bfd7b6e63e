#include "core/documents/staff_words.h"

#include "core/documents/keys.h"
#include "core/documents/text_page.h"
#include "core/documents/writers.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

QString timeOrDash(const std::optional<Instant>& t, const Speech& speech) {
    return t ? clockTime(*t, speech) : QStringLiteral("-");
}

QString hoursOrDash(Seconds s, const Speech& speech) { return s > Seconds{0} ? durationText(s, speech) : QStringLiteral("-"); }

QJsonValue isoOrNull(const std::optional<Instant>& t, const Speech& speech) {
    return t ? QJsonValue(isoTime(*t, speech.zone)) : QJsonValue();
}

QString isoOrNothing(const std::optional<Instant>& t, const Speech& speech) { return t ? isoTime(*t, speech.zone) : QString(); }

}  // namespace

QString staffTitle(const StaffWeek& week, const Speech& speech) {
    const QDate last = week.days.empty() ? week.first : week.days.back().date;
    return say(QT_TRANSLATE_NOOP("wording", "Week %1, %2 to %3"))
        .arg(speech.locale.toString(week.number), dayText(week.first, speech), dayText(last, speech));
}

QStringList staffHeader() {
    return {say(QT_TRANSLATE_NOOP("wording", "Day")),      say(QT_TRANSLATE_NOOP("wording", "From")),
            say(QT_TRANSLATE_NOOP("wording", "Until")),    say(QT_TRANSLATE_NOOP("wording", "Hours")),
            say(QT_TRANSLATE_NOOP("wording", "Overtime")), say(QT_TRANSLATE_NOOP("wording", "Outings"))};
}

QStringList staffRow(const StaffDay& day, const Speech& speech) {
    return {dayText(day.date, speech),         timeOrDash(day.first, speech),
            timeOrDash(day.last, speech),      hoursOrDash(day.bound, speech),
            hoursOrDash(day.overtime, speech), day.outings > 0 ? speech.locale.toString(day.outings) : QStringLiteral("-")};
}

QStringList staffTotal(const StaffWeek& week, const Speech& speech) {
    int outings = 0;
    for (const StaffDay& day : week.days)
        outings += day.outings;
    return {say(QT_TRANSLATE_NOOP("wording", "Total")),
            QString(),
            QString(),
            durationText(week.bound, speech),
            hoursOrDash(week.overtime, speech),
            speech.locale.toString(outings)};
}

QString staffNote() {
    return say(QT_TRANSLATE_NOOP("wording",
                                 "A machine that is attended binds one person from the moment it is readied until it is back. "
                                 "Overtime is what lies outside the paid time of every shift. Days ahead are those of the "
                                 "plan, days that are over those of the runs on record."));
}

QString staffText(const std::vector<StaffWeek>& weeks, const Speech& speech) {
    QString out;
    for (const StaffWeek& week : weeks) {
        std::vector<QStringList> rows{staffHeader()};
        for (const StaffDay& day : week.days)
            rows.push_back(staffRow(day, speech));
        rows.push_back(staffTotal(week, speech));
        out += staffTitle(week, speech) + u'\n' + table(rows, 0) + u'\n';
    }
    return out + wrapped(staffNote(), 0);
}

QJsonArray staffJson(const std::vector<StaffWeek>& weeks, const Speech& speech) {
    QJsonArray all;
    for (const StaffWeek& week : weeks) {
        QJsonArray days;
        for (const StaffDay& day : week.days)
            days.append(QJsonObject{{"date", day.date.toString(Qt::ISODate)},
                                    {"from", isoOrNull(day.first, speech)},
                                    {"until", isoOrNull(day.last, speech)},
                                    {"bound_s", qint64(day.bound.value)},
                                    {"overtime_s", qint64(day.overtime.value)},
                                    {"outings", day.outings}});
        all.append(QJsonObject{{"week", week.number},
                               {"first", week.first.toString(Qt::ISODate)},
                               {"bound_s", qint64(week.bound.value)},
                               {"overtime_s", qint64(week.overtime.value)},
                               {"days", days}});
    }
    return all;
}

QByteArray staffCsv(const std::vector<StaffWeek>& weeks, const Speech& speech) {
    std::vector<CsvField> header;
    for (const char* name : {"week", "date", "from", "until", "bound_s", "overtime_s", "outings"})
        header.push_back({name, false});
    QByteArray out = csvRecord(header);
    for (const StaffWeek& week : weeks) {
        for (const StaffDay& day : week.days)
            out += csvRecord({{QString::number(week.number), true},
                              {day.date.toString(Qt::ISODate), false},
                              {isoOrNothing(day.first, speech), false},
                              {isoOrNothing(day.last, speech), false},
                              {QString::number(day.bound.value), true},
                              {QString::number(day.overtime.value), true},
                              {QString::number(day.outings), true}});
    }
    return out;
}

}  // namespace laneward
