#include "app/edits/series_edits.h"

#include "app/edits/recurrence_choice.h"

#include <algorithm>

namespace laneward {

namespace {

Zone zoneOf(const Series& series) {
    const Result<Zone> zone = Zone::load(series.zone);
    return zone ? *zone : Zone();
}

auto findOverride(auto& series, const LocalTime& original) {
    return std::find_if(series.overrides.begin(), series.overrides.end(),
                        [&](const Override& o) { return o.original == original; });
}

Override& overrideFor(Series& series, const LocalTime& original) {
    const auto found = findOverride(series, original);
    if (found != series.overrides.end()) return *found;
    series.overrides.push_back({original, false, {}, {}, {}, {}});
    return series.overrides.back();
}

void dropIfEmpty(Series& series, const LocalTime& original) {
    const auto found = findOverride(series, original);
    if (found != series.overrides.end() && *found == Override{original, false, {}, {}, {}, {}}) series.overrides.erase(found);
}

struct Shift {
    qint64 days = 0;
    Seconds time;
    std::uint8_t weekday = 0;  ///< only instances on this weekday change their day; 0 = all

    LocalTime of(const LocalTime& t) const {
        const bool other = weekday != 0 && weekdayBit(t.date) != weekday;
        return shifted({t.date.addDays(other ? 0 : days), t.time}, time);
    }
};

Shift shiftBetween(const LocalTime& from, const LocalTime& to) {
    return {from.date.daysTo(to.date), Seconds{from.time.secsTo(to.time)}, 0};
}

/// The recurrence after instances of `from`'s weekday moved by `shift`; false when words and rule cannot follow.
bool follow(RecurrenceChoice& choice, Shift& shift, QDate from) {
    if (shift.days == 0) return true;
    switch (choice.form) {
        case RecurrenceChoice::Form::Daily:
        case RecurrenceChoice::Form::Custom:
            return false;
        case RecurrenceChoice::Form::Weekly: {
            const std::uint8_t left = weekdayBit(from);
            const std::uint8_t entered = weekdayBit(from.addDays(shift.days));
            if (!(choice.weekdays & left) || (entered != left && (choice.weekdays & entered))) return false;
            if (choice.weekdays != left) shift.weekday = left;
            choice.weekdays = std::uint8_t((choice.weekdays & ~left) | entered);
            break;
        }
        default:
            break;
    }
    if (choice.end == RecurrenceChoice::End::OnDate && shift.days > 0) choice.until = choice.until.addDays(shift.days);
    return true;
}

}  // namespace

bool isRecurring(const Series& series) { return !series.rule.isEmpty() || !series.extraDates.empty(); }

LocalTime startOf(const Series& series, const LocalTime& original) {
    const auto found = findOverride(series, original);
    return found == series.overrides.end() ? original : found->start.value_or(original);
}

Seconds durationOf(const Series& series, const LocalTime& original) {
    const auto found = findOverride(series, original);
    return found == series.overrides.end() ? series.duration : found->duration.value_or(series.duration);
}

Series movedOnce(const Series& series, const Move& move) {
    Series after = series;
    if (!isRecurring(series)) {
        after.start = move.start;
        after.duration = move.duration;
        after.overrides.clear();
        return after;
    }
    Override& change = overrideFor(after, move.original);
    change.start = move.start == move.original ? std::nullopt : std::optional(move.start);
    change.duration = move.duration == series.duration ? std::nullopt : std::optional(move.duration);
    dropIfEmpty(after, move.original);
    return after;
}

std::optional<Series> movedWhole(const Series& series, const Move& move) {
    if (!isRecurring(series)) return movedOnce(series, move);
    const LocalTime from = startOf(series, move.original);
    const Zone zone = zoneOf(series);
    RecurrenceChoice choice = choiceOf(series.rule, series.start, zone);
    Shift shift = shiftBetween(from, move.start);
    if (!follow(choice, shift, from.date)) return std::nullopt;
    Series after = series;
    after.duration = move.duration;
    after.start = shift.of(series.start);
    const bool custom = choice.form == RecurrenceChoice::Form::Custom;
    if (!custom && !series.rule.isEmpty()) after.rule = ruleOf(choice, after.start, zone);
    for (LocalTime& t : after.extraDates)
        t = shift.of(t);
    for (LocalTime& t : after.excludedDates)
        t = shift.of(t);
    for (Override& change : after.overrides) {
        change.original = shift.of(change.original);
        if (change.start) change.start = shift.of(*change.start);
    }
    return after;
}

Series cancelledOnce(const Series& series, const LocalTime& original) {
    Series after = series;
    if (isRecurring(series))
        overrideFor(after, original).cancelled = true;
    else
        after.cancelled = true;
    return after;
}

Series restoredOnce(const Series& series, const LocalTime& original) {
    Series after = series;
    std::erase(after.excludedDates, original);
    if (!isRecurring(series)) after.cancelled = false;
    const auto found = findOverride(after, original);
    if (found == after.overrides.end()) return after;
    found->cancelled = false;
    dropIfEmpty(after, original);
    return after;
}

}  // namespace laneward
