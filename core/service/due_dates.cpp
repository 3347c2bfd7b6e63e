#include "core/service/due_dates.h"

#include <algorithm>

namespace laneward {

namespace {

using Days = std::array<std::optional<int>, 3>;

void takeEarlier(std::optional<int>& day, std::optional<int> other) {
    if (other && (!day || *other < *day)) day = other;
}

/// The first day by whose end so much is reached, at each level.
Days daysUntil(const WorkAhead& ahead, MeterKind meter, double amount) {
    if (amount <= 0) return {0, 0, 0};
    Days days;
    const auto& curve = ahead.reached[size_t(meter)];
    for (size_t level = 0; level < days.size(); ++level) {
        const auto found = std::partition_point(curve.begin(), curve.end(),
                                                [&](const std::array<double, 3>& reached) { return reached[level] < amount; });
        if (found != curve.end()) days[level] = int(found - curve.begin());
    }
    return days;
}

std::int64_t doneSince(const Trigger& trigger, const std::optional<LastDone>& last, const DueQuestion& question) {
    if (trigger.meter == MeterKind::Days) return last ? last->day.daysTo(question.today) : trigger.every;
    return valueOf(question.now, trigger.meter) - (last ? valueOf(last->meters, trigger.meter) : 0);
}

void addDates(const Duty& duty, const std::optional<LastDone>& last, const DueQuestion& question, Days& days) {
    for (const QDate& date : duty.dates) {
        if (last && last->day >= date) continue;
        const int away = std::max(0, int(question.today.daysTo(date)));
        if (away > question.days) continue;
        for (std::optional<int>& day : days)
            takeEarlier(day, away);
    }
}

}  // namespace

DueRange dueOf(const Duty& duty, const std::optional<LastDone>& last, const DueQuestion& question) {
    DueRange due;
    due.neverDone = !last;
    Days days;
    bool first = true;
    for (const Trigger& trigger : duty.triggers) {
        const std::int64_t done = doneSince(trigger, last, question);
        const double used = double(done) / double(std::max<std::int64_t>(1, trigger.every));
        if (first || used > due.used) {
            due.used = used;
            due.by = trigger.meter;
            due.left = trigger.every - done;
        }
        first = false;
        const std::int64_t left = trigger.every - done;
        if (trigger.meter == MeterKind::Days) {
            const int away = int(std::clamp<std::int64_t>(left, 0, question.days + 1));
            for (std::optional<int>& day : days)
                if (away <= question.days) takeEarlier(day, away);
        } else if (question.ahead) {
            const Days reached = daysUntil(*question.ahead, trigger.meter, double(left));
            for (size_t level = 0; level < days.size(); ++level)
                takeEarlier(days[level], reached[level]);
        }
    }
    addDates(duty, last, question, days);
    const auto dateOf = [&](std::optional<int> day) { return day ? std::optional(question.today.addDays(*day)) : std::nullopt; };
    due.early = dateOf(days[0]);
    due.likely = dateOf(days[1]);
    due.late = dateOf(days[2]);
    return due;
}

std::optional<std::int64_t> lanesLeft(const Duty& duty, const std::optional<LastDone>& last, const Meters& now) {
    for (const Trigger& trigger : duty.triggers) {
        if (trigger.meter == MeterKind::Lanes) return trigger.every - (now.lanes - (last ? last->meters.lanes : 0));
    }
    return {};
}

}  // namespace laneward
