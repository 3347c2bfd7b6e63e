#include "core/calendar/expander.h"

#include <libical/ical.h>

#include <algorithm>
#include <set>

// Expanding is our own work because libical 3.0.16 cannot be trusted with it: FREQ=YEARLY;BYWEEKNO=7;BYHOUR=1,8,9 crashes the
// process, YEARLY;BYMONTHDAY stays in the month of DTSTART, negative BYMONTHDAY is lost in DAILY rules, BYSETPOS in DAILY and
// WEEKLY ones, and each date costs it some microseconds. tests/outside compares the result with other libraries.

namespace laneward {

namespace {

std::vector<int> listOf(const short* values, int size) {
    const short* end = std::find(values, values + size, short{ICAL_RECURRENCE_ARRAY_MAX});
    return {values, end};
}

int weekdayOf(icalrecurrencetype_weekday day) { return (int(day) + 5) % 7; }  // libical counts from Sunday = 1

/// Whether `value`, the n-th of `length`, is listed, counted from the front or with a minus from the end.
bool lists(const std::vector<int>& list, int value, int length) {
    return std::any_of(list.begin(), list.end(), [=](int n) { return n == value || n == value - length - 1; });
}

struct Week {
    int number;
    int ofYear;
};

/// Weeks by ISO 8601 with any first weekday: week 1 is the first with at least four days in the year.
Week weekOf(QDate day, int weekStart) {
    const int into = (day.dayOfWeek() - 1 - weekStart + 7) % 7;
    const QDate middle = day.addDays(3 - into);
    return {(middle.dayOfYear() - 1) / 7 + 1, middle.year()};
}

int weeksIn(int year, int weekStart) { return weekOf(QDate(year, 12, 28), weekStart).number; }

/// BYSETPOS, RFC 5545 section 3.3.10: the n-th of the set, from the end when negative.
std::vector<LocalTime> selected(const std::vector<LocalTime>& set, const std::vector<int>& positions) {
    std::set<size_t> chosen;
    const int size = int(set.size());
    for (int n : positions) {
        const int index = n > 0 ? n - 1 : size + n;
        if (index >= 0 && index < size) chosen.insert(size_t(index));
    }
    std::vector<LocalTime> result;
    for (size_t index : chosen)
        result.push_back(set[index]);
    return result;
}

}  // namespace

Expander::Expander(const icalrecurrencetype& rule) {
    static constexpr std::array units{Unit::Day, Unit::Week, Unit::Month, Unit::Year};
    m_unit = units[size_t(rule.freq - ICAL_DAILY_RECURRENCE)];
    m_interval = std::max<std::int64_t>(1, rule.interval);
    m_weekStart = weekdayOf(rule.week_start);
    readDays(rule);
}

Expander::Expander(const icalrecurrencetype& rule, const LocalTime& start) : Expander(rule) {
    readTimes(rule, start.time);
    takeFromStart(start);
}

void Expander::readDays(const icalrecurrencetype& rule) {
    for (int month : listOf(rule.by_month, ICAL_BY_MONTH_SIZE))
        m_months |= 1u << month;
    m_monthDays = listOf(rule.by_month_day, ICAL_BY_MONTHDAY_SIZE);
    m_yearDays = listOf(rule.by_year_day, ICAL_BY_YEARDAY_SIZE);
    m_weekNumbers = listOf(rule.by_week_no, ICAL_BY_WEEKNO_SIZE);
    m_positions = listOf(rule.by_set_pos, ICAL_BY_SETPOS_SIZE);
    for (int day : listOf(rule.by_day, ICAL_BY_DAY_SIZE)) {
        m_weekdays.push_back(
            {weekdayOf(icalrecurrencetype_day_day_of_week(short(day))), icalrecurrencetype_day_position(short(day))});
    }
}

void Expander::readTimes(const icalrecurrencetype& rule, const QTime& start) {
    const auto or_ = [](const std::vector<int>& list, int otherwise) {
        return list.empty() ? std::vector<int>{otherwise} : list;
    };
    std::set<QTime> times;
    for (int hour : or_(listOf(rule.by_hour, ICAL_BY_HOUR_SIZE), start.hour())) {
        for (int minute : or_(listOf(rule.by_minute, ICAL_BY_MINUTE_SIZE), start.minute())) {
            for (int second : or_(listOf(rule.by_second, ICAL_BY_SECOND_SIZE), start.second()))
                times.insert(QTime(hour, minute, std::min(second, 59)));  // 60 is a leap second, which wall time here lacks
        }
    }
    m_times.assign(times.begin(), times.end());
}

void Expander::takeFromStart(const LocalTime& start) {
    const QDate day = start.date;
    const bool dayless = m_weekdays.empty() && m_monthDays.empty() && m_yearDays.empty();
    switch (m_unit) {
        case Unit::Day:
            m_origin = day;
            break;
        case Unit::Week:
            m_origin = day.addDays(-((day.dayOfWeek() - 1 - m_weekStart + 7) % 7));
            if (m_weekdays.empty()) m_weekdays.push_back({day.dayOfWeek() - 1, 0});
            break;
        case Unit::Month:
            m_origin = QDate(day.year(), day.month(), 1);
            if (dayless) m_monthDays.push_back(day.day());
            break;
        case Unit::Year:
            m_origin = QDate(day.year(), 1, 1);
            if (!dayless) break;
            if (!m_weekNumbers.empty()) {
                m_weekdays.push_back({day.dayOfWeek() - 1, 0});
                break;
            }
            if (m_months == 0) m_months = 1u << day.month();
            m_monthDays.push_back(day.day());
            break;
    }
}

QDate Expander::firstDay(std::int64_t index) const {
    const std::int64_t steps = index * m_interval;
    switch (m_unit) {
        case Unit::Day:
            return m_origin.addDays(steps);
        case Unit::Week:
            return m_origin.addDays(7 * steps);
        case Unit::Month:
            return m_origin.addMonths(int(steps));
        case Unit::Year:
            break;
    }
    return m_origin.addYears(int(steps));
}

std::int64_t Expander::periodOf(QDate date) const {
    std::int64_t units = 0;
    switch (m_unit) {
        case Unit::Day:
            units = m_origin.daysTo(date);
            break;
        case Unit::Week:
            units = m_origin.daysTo(date) / 7;
            break;
        case Unit::Month:
            units = 12 * (date.year() - m_origin.year()) + date.month() - m_origin.month();
            break;
        case Unit::Year:
            units = date.year() - m_origin.year();
            break;
    }
    return std::max<std::int64_t>(0, units) / m_interval;
}

std::vector<LocalTime> Expander::period(std::int64_t index) const {
    const QDate first = firstDay(index);
    QDate end = first.addDays(m_unit == Unit::Week ? 7 : 1);
    if (m_unit == Unit::Month) end = first.addMonths(1);
    if (m_unit == Unit::Year) end = first.addYears(1);
    std::vector<LocalTime> set;
    for (QDate day = first; day < end; day = day.addDays(1)) {
        if (!matches(day)) continue;
        for (const QTime& time : m_times)
            set.push_back({day, time});
    }
    return m_positions.empty() ? set : selected(set, m_positions);
}

bool Expander::matches(QDate day) const {
    int year = 0;
    int month = 0;
    int dayOfMonth = 0;
    day.getDate(&year, &month, &dayOfMonth);
    if (m_months != 0 && !((m_months >> month) & 1u)) return false;
    if (!m_monthDays.empty() && !lists(m_monthDays, dayOfMonth, day.daysInMonth())) return false;
    if (!m_weekdays.empty() && !matchesWeekday(day)) return false;
    if (!m_yearDays.empty() && !lists(m_yearDays, day.dayOfYear(), day.daysInYear())) return false;
    return m_weekNumbers.empty() || matchesWeekNumber(day);
}

bool Expander::matchesWeekday(QDate day) const {
    // A position counts within the month in monthly rules and in yearly ones with BYMONTH, else within the year.
    const bool inMonth = m_unit != Unit::Year || m_months != 0;
    const int weekday = day.dayOfWeek() - 1;
    for (const WeekdayPart& part : m_weekdays) {
        if (part.weekday != weekday) continue;
        if (part.position == 0) return true;
        const int ordinal = inMonth ? day.day() : day.dayOfYear();
        const int length = inMonth ? day.daysInMonth() : day.daysInYear();
        const int fromFront = (ordinal - 1) / 7 + 1;
        const int fromEnd = -((length - ordinal) / 7 + 1);
        if (part.position == fromFront || part.position == fromEnd) return true;
    }
    return false;
}

bool Expander::matchesWeekNumber(QDate day) const {
    const Week week = weekOf(day, m_weekStart);
    return lists(m_weekNumbers, week.number, weeksIn(week.ofYear, m_weekStart));
}

bool Expander::canGiveDates(const icalrecurrencetype& rule) {
    Expander expander(rule);
    expander.m_interval = 1;
    expander.readTimes(rule, QTime(0, 0));
    // 28 years hold every kind of year: each first weekday, leap or not. The first of them begins on a Monday.
    expander.m_origin = expander.m_unit == Unit::Week ? QDate(2001, 1, 1).addDays(expander.m_weekStart) : QDate(2001, 1, 1);
    for (std::int64_t index = 0; expander.firstDay(index) < QDate(2029, 1, 8); ++index) {
        if (!expander.period(index).empty()) return true;
    }
    return false;
}

}  // namespace laneward
