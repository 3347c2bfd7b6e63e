// Recurrence as people say it, to and from the RRULE text of RFC 5545, section 3.3.10.
//
// A rule that cannot be said with these words is kept as it is (Form::Custom). What the words leave open (which weekday of the
// month, which date of the year) follows from the start, as people expect it to.
//
//     RecurrenceChoice c = choiceOf("FREQ=WEEKLY;BYDAY=TH;COUNT=30", start, zone);   // weekly, Thursday, 30 times
//     QString rule = ruleOf(c, start, zone);
#pragma once

#include "core/base/zone.h"

#include <QString>

namespace laneward {

struct RecurrenceChoice {
    enum class Form {
        Once,
        Daily,
        Weekly,         ///< on `weekdays`
        MonthlyOnDate,  ///< on the start's date
        MonthlyOnLastDay,
        MonthlyOnWeekday,      ///< on the start's weekday, counted from the month's beginning
        MonthlyOnLastWeekday,  ///< on the last such weekday of the month
        Yearly,
        Custom,
    };
    enum class End { Never, OnDate, AfterTimes };

    Form form = Form::Once;
    int every = 1;              ///< every n-th day, week, month, year
    std::uint8_t weekdays = 0;  ///< bit 0 = Monday … bit 6 = Sunday
    End end = End::Never;
    QDate until;  ///< last date on which it may take place
    int times = 10;
    QString custom;  ///< the whole rule of Form::Custom
    friend bool operator==(const RecurrenceChoice&, const RecurrenceChoice&) = default;
};

RecurrenceChoice choiceOf(const QString& rule, const LocalTime& start, const Zone& zone);
/// An end on a date is written as UTC, as section 3.3.10 asks of starts with a zone.
QString ruleOf(const RecurrenceChoice& choice, const LocalTime& start, const Zone& zone);

bool isLastOfMonth(QDate date);         ///< the last day
bool isLastWeekdayOfMonth(QDate date);  ///< within the last seven days
int weekOfMonth(QDate date);            ///< 1 for days 1 to 7, 2 for 8 to 14 …
std::uint8_t weekdayBit(QDate date);

}  // namespace laneward
