// The dates of a recurrence rule by the table of RFC 5545 section 3.3.10, one period (day, week, month or year) at a time.
//
// Works on floating wall time and takes time only for the days it looks at: a rule that gives nothing costs no more than one
// that gives much. The rule has passed parseRule().
//
//     Expander expander(rule.ical(), start);
//     for (const LocalTime& t : expander.period(0)) …      // the whole first period, also what lies before `start`
#pragma once

#include "core/base/zone.h"

#include <cstdint>
#include <optional>
#include <vector>

struct icalrecurrencetype;

namespace laneward {

class Expander {
public:
    /// What the rule leaves open is taken from `start`.
    Expander(const icalrecurrencetype& rule, const LocalTime& start);

    /// The set of the `index`-th period that the rule visits, period 0 being the one with `start`; ascending, BYSETPOS applied.
    std::vector<LocalTime> period(std::int64_t index) const;
    QDate firstDay(std::int64_t index) const;
    /// The last period that begins on or before `date`, not below 0.
    std::int64_t periodOf(QDate date) const;

    /// Whether some start could give the rule a date. Only a necessary condition: "every 4 years on 29 February" may still start
    /// in a year that never meets one.
    static bool canGiveDates(const icalrecurrencetype& rule);

private:
    enum class Unit { Day, Week, Month, Year };
    struct WeekdayPart {
        int weekday;   ///< 0 = Monday
        int position;  ///< 0 = every one
    };

    explicit Expander(const icalrecurrencetype& rule);
    void readDays(const icalrecurrencetype& rule);
    void readTimes(const icalrecurrencetype& rule, const QTime& start);
    void takeFromStart(const LocalTime& start);
    bool matches(QDate day) const;
    bool matchesWeekday(QDate day) const;
    bool matchesWeekNumber(QDate day) const;

    Unit m_unit = Unit::Day;
    std::int64_t m_interval = 1;
    int m_weekStart = 0;
    QDate m_origin;  ///< first day of period 0
    unsigned m_months = 0;
    std::vector<int> m_monthDays;
    std::vector<int> m_yearDays;
    std::vector<int> m_weekNumbers;
    std::vector<WeekdayPart> m_weekdays;
    std::vector<int> m_positions;
    std::vector<QTime> m_times;
};

}  // namespace laneward
