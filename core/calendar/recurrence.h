// Recurrence rules of RFC 5545: read by libical, expanded in floating wall time by expander.h (which says why not by libical).
// Frequencies below a day are refused.
//
//     Result<Rule> rule = parseRule("FREQ=WEEKLY;BYDAY=TH;COUNT=30", zone);
//     Dates d = datesOf(*rule, start, {QDate(2026, 9, 1), QDate(2026, 12, 31)});
#pragma once

#include "core/base/dates.h"
#include "core/base/result.h"
#include "core/calendar/series.h"

#include <memory>
#include <vector>

struct icalrecurrencetype;

namespace laneward {

class Rule {
public:
    const icalrecurrencetype& ical() const { return *m_ical; }

private:
    friend Result<Rule> parseRule(const QString&, const Zone&);
    std::shared_ptr<const icalrecurrencetype> m_ical;
};

/// `text` is an RRULE value; an UNTIL in UTC is turned into wall time of `zone`.
/// Errors (Invalid): "rule.unreadable", "rule.too-frequent" (SECONDLY, MINUTELY, HOURLY, or several times a day beyond 24),
/// "rule.endless-search" (one that can never produce a date, such as 30 February).
Result<Rule> parseRule(const QString& text, const Zone& zone);

struct Dates {
    std::vector<LocalTime> starts;  ///< ascending, without duplicates, dates within the range
    bool cut = false;               ///< stopped at limits::occurrencesPerRule
};

/// The instances of the rule alone that start on a date of `range`. DTSTART counts as the first instance of COUNT and is
/// an instance even if it does not match and even after UNTIL, as RFC 5545, section 3.8.5.3, leaves open.
Dates datesOf(const Rule& rule, const LocalTime& start, const DateRange& range);

/// All starts of a series: the rule, RDATE, without EXDATE. Overrides are not applied.
Result<Dates> startsOf(const Series& series, const DateRange& range);

}  // namespace laneward
