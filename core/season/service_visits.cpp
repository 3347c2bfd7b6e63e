#include "core/season/service_visits.h"

#include <algorithm>

namespace laneward {

namespace {

/// `from` without `taken`.
std::vector<Span> without(const std::vector<Span>& from, const Span& taken) {
    std::vector<Span> left;
    for (const Span& span : from) {
        if (taken.end <= span.begin || span.end <= taken.begin) {
            left.push_back(span);
            continue;
        }
        if (span.begin < taken.begin) left.push_back({span.begin, taken.begin});
        if (taken.end < span.end) left.push_back({taken.end, span.end});
    }
    return left;
}

struct Bound {
    Instant at;
    int change = 0;
};

/// When as many attended machines are out as there are people.
std::vector<Span> nobodyFree(const Centre& centre, const std::vector<Outing>& outings, int people) {
    std::vector<Bound> bounds;
    for (const Outing& outing : outings) {
        const Machine* machine = findMachine(centre, outing.machine);
        if (!machine || !machine->attended) continue;
        bounds.push_back({outing.time.begin, 1});
        bounds.push_back({outing.time.end, -1});
    }
    std::sort(bounds.begin(), bounds.end(),
              [](const Bound& a, const Bound& b) { return std::tie(a.at, a.change) < std::tie(b.at, b.change); });
    std::vector<Span> full;
    int out = 0;
    for (size_t i = 0; i < bounds.size(); ++i) {
        out += bounds[i].change;
        if (out >= people && i + 1 < bounds.size()) full.push_back({bounds[i].at, bounds[i + 1].at});
    }
    return full;
}

std::vector<Outing> outingsAround(const Plan& ahead, QDate day) {
    std::vector<Outing> outings;
    for (const DayPlan& one : ahead.days) {
        if (std::abs(one.date.daysTo(day)) <= 1) outings.insert(outings.end(), one.outings.begin(), one.outings.end());
    }
    return outings;
}

class Placing {
public:
    Placing(ServiceOutlook& outlook, const ServiceQuestion& question, const ServiceRule& rule)
        : m_outlook(outlook), m_question(question), m_rule(rule), m_last(outlook.today.addDays(rule.visitDays - 1)) {}

    void run() {
        const auto& due = m_outlook.due;
        std::vector<bool> placed(due.size(), false);
        for (size_t i = 0; i < due.size(); ++i) {
            if (placed[i] || !due[i].due.isDue(m_last)) continue;
            std::vector<size_t> group{i};
            for (size_t other = 0; other < due.size(); ++other) {
                if (other != i && !placed[other] && joins(due[other], due[i])) group.push_back(other);
            }
            for (size_t one : group)
                placed[one] = true;
            place(group);
        }
        std::sort(m_outlook.visits.begin(), m_outlook.visits.end(), [](const ServiceVisit& a, const ServiceVisit& b) {
            return std::tie(a.time.begin, a.machine) < std::tie(b.time.begin, b.machine);
        });
    }

private:
    const Duty& dutyOf(const DutyDue& due) const { return *findDuty(*findItem(m_question.season.items, due.item), due.duty); }

    QDate dayOf(const DutyDue& due) const { return std::max(m_outlook.today, *due.due.likely); }

    bool joins(const DutyDue& other, const DutyDue& first) const {
        if (other.machine != first.machine || first.machine.isEmpty()) return false;
        if (!other.due.likely) return false;
        if (dayOf(other) <= dayOf(first)) return true;
        const Duty& duty = dutyOf(other);
        if (!duty.opensUp || !dutyOf(first).opensUp) return false;
        // The share of the interval that is over now grows to one on its likely day.
        const double days = double(m_outlook.today.daysTo(*other.due.likely));
        const double early = double(dayOf(first).daysTo(*other.due.likely));
        const double lost = (1 - std::clamp(other.due.used, 0.0, 1.0)) * early / std::max(1.0, days);
        if (!duty.parts.empty() && lost > m_rule.mostLostOfPart) return false;
        return lost * duty.minutes < m_rule.openingMinutes;
    }

    void place(const std::vector<size_t>& group) {
        ServiceVisit visit{m_outlook.due[group.front()].machine, {}, {}, false};
        std::int64_t work = 0;
        bool opens = false;
        for (size_t one : group) {
            const Duty& duty = dutyOf(m_outlook.due[one]);
            visit.duties.push_back(duty.id);
            work += duty.minutes;
            opens = opens || duty.opensUp;
        }
        const Seconds length = minutes(std::max<std::int64_t>(1, work + (opens ? m_rule.openingMinutes : 0)));
        const DutyDue& first = m_outlook.due[group.front()];
        const std::optional<Span> time = window(first, length, visit.isLate);
        if (!time) {
            const ServiceItem* item = findItem(m_question.season.items, first.item);
            m_outlook.findings.push_back(
                {Severity::Warning, "service.no-window", item->name, {dutyOf(first).name, std::int64_t{work}}});
            return;
        }
        visit.time = *time;
        m_outlook.visits.push_back(visit);
    }

    /// As late as it can be before the first outing of its day, or early on a day without one; else on a day before; else the
    /// first room after.
    std::optional<Span> window(const DutyDue& due, Seconds length, bool& isLate) const {
        const QDate day = dayOf(due);
        for (QDate on = day; on >= m_outlook.today; on = on.addDays(-1)) {
            const std::optional<Instant> before = on == day ? firstOuting(due.machine, day) : std::nullopt;
            std::optional<Span> best;
            for (const Span& span : free(due.machine, on)) {
                const Instant end = std::min(span.end, before.value_or(span.end));
                if (end - span.begin < length) continue;
                if (before)
                    best = Span{end - length, end};
                else if (!best)
                    best = Span{span.begin, span.begin + length};
            }
            if (best) return best;
        }
        isLate = true;
        for (QDate on = day; on <= m_last; on = on.addDays(1)) {
            for (const Span& span : free(due.machine, on))
                if (span.length() >= length) return Span{span.begin, span.begin + length};
        }
        return {};
    }

    std::optional<Instant> firstOuting(const MachineId& machine, QDate day) const {
        std::optional<Instant> first;
        for (const DayPlan& plan : m_question.ahead.days) {
            if (plan.date != day) continue;
            for (const Outing& outing : plan.outings)
                if (outing.machine == machine) first = std::min(outing.time.begin, first.value_or(outing.time.begin));
        }
        return first ? std::optional(std::max(*first, m_question.now)) : first;
    }

    /// What is left of a day, without other visits.
    std::vector<Span> free(const MachineId& machine, QDate day) const {
        std::vector<Span> spans = freeTime(m_question.season.centre, m_question.ahead, machine, day);
        for (const ServiceVisit& visit : m_outlook.visits)
            spans = without(spans, visit.time);
        return without(spans, {{std::int64_t{-1} << 60}, m_question.now});
    }

    ServiceOutlook& m_outlook;
    const ServiceQuestion& m_question;
    const ServiceRule& m_rule;
    QDate m_last;
};

}  // namespace

std::vector<Span> freeTime(const Centre& centre, const Plan& ahead, const MachineId& machine, QDate day) {
    const std::vector<Outing> outings = outingsAround(ahead, day);
    std::vector<Span> all;
    for (const ShiftSpan& shift : shiftsOn(centre, day)) {
        if (shift.people < 1) continue;
        std::vector<Span> spans{shift.work};
        for (const Span& full : nobodyFree(centre, outings, shift.people))
            spans = without(spans, full);
        for (const Outing& outing : outings)
            if (!machine.isEmpty() && outing.machine == machine) spans = without(spans, outing.time);
        all.insert(all.end(), spans.begin(), spans.end());
    }
    std::sort(all.begin(), all.end());
    return all;
}

void placeVisits(ServiceOutlook& outlook, const ServiceQuestion& question, const ServiceRule& rule) {
    Placing(outlook, question, rule).run();
}

}  // namespace laneward
