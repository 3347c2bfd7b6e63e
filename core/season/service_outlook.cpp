#include "core/season/service_outlook.h"

#include "core/season/service_visits.h"

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

using OnHand = std::map<SupplyId, Amount>;

OnHand onHandOf(const Balances& stock) {
    OnHand sums;
    for (const auto& [key, amount] : stock.all()) {
        if (key.place.kind == Place::Kind::Shelf || key.place.kind == Place::Kind::Open) sums[key.supply] += amount;
    }
    return sums;
}

/// Takes what the duty needs, and says what is not there.
std::vector<PartNeed> take(const Duty& duty, OnHand& left) {
    std::vector<PartNeed> missing;
    for (const PartNeed& part : duty.parts) {
        Amount& there = left[part.supply];
        const Amount lacking = part.amount - std::max(Amount{0}, there);
        if (lacking > Amount{0}) missing.push_back({part.supply, lacking});
        there -= part.amount;
    }
    return missing;
}

std::map<MachineId, WorkAhead> aheadOf(const ServiceQuestion& question, QDate today) {
    std::map<MachineId, WorkAhead> all;
    for (const Machine& machine : question.season.centre.machines)
        all.emplace(machine.id, workAhead(question.season, question.ahead, machine.id, today));
    return all;
}

std::map<MachineId, Meters> metersOfAll(const SeasonState& season, Instant now) {
    std::map<MachineId, Meters> all;
    const std::vector<MachineWork> work = workOf(season);
    for (const Machine& machine : season.centre.machines)
        all.emplace(machine.id, metersAt(season.counters, work, machine.id, now));
    return all;
}

std::vector<DutyDue> dueDuties(const ServiceQuestion& question, QDate today) {
    const std::map<MachineId, WorkAhead> ahead = aheadOf(question, today);
    const std::map<MachineId, Meters> meters = metersOfAll(question.season, question.now);
    const std::map<DutyId, LastDone> lasts = lastDone(question.season);
    std::vector<DutyDue> due;
    for (const ServiceItem& item : question.season.items) {
        if (item.retired) continue;
        const auto work = ahead.find(item.machine);
        const auto done = meters.find(item.machine);
        DueQuestion asked{done == meters.end() ? Meters{} : done->second, work == ahead.end() ? nullptr : &work->second, today,
                          std::max(366, int(today.daysTo(question.ahead.range.last)))};
        for (const Duty& duty : item.duties) {
            const auto last = lasts.find(duty.id);
            due.push_back({item.id,
                           duty.id,
                           item.machine,
                           dueOf(duty, last == lasts.end() ? std::nullopt : std::optional(last->second), asked),
                           {}});
        }
    }
    return due;
}

/// What the machine will have done before a day begins, as expected.
Meters metersBefore(const DueQuestion& asked, int day) {
    if (!asked.ahead || day <= 0) return asked.now;
    const auto reached = [&](MeterKind kind) {
        const auto& curve = asked.ahead->reached[size_t(kind)];
        return curve.empty() ? 0 : std::int64_t(std::ceil(curve[std::min(size_t(day) - 1, curve.size() - 1)][1]));
    };
    return asked.now + Meters{reached(MeterKind::Lanes), reached(MeterKind::Runs), minutes(reached(MeterKind::Minutes)),
                              Microlitres{reached(MeterKind::Volume)}};
}

/// The days on which a duty falls due one time after another, counted from today; what is overdue is due today. It is done before
/// the machine's first outing of its day, as visits are placed: that day's work counts to the next time.
std::vector<int> daysDue(const Duty& duty, std::optional<LastDone> last, const DueQuestion& asked) {
    std::vector<int> days;
    while (true) {
        const DueRange due = dueOf(duty, last, asked);
        if (!due.likely) return days;
        const int soonest = days.empty() ? 0 : days.back() + 1;
        const int day = std::max(soonest, int(asked.today.daysTo(*due.likely)));
        if (day >= asked.days) return days;
        days.push_back(day);
        last = LastDone{{}, asked.today.addDays(day), metersBefore(asked, day)};
    }
}

void sortByDay(std::vector<DutyDue>& due, QDate today) {
    const QDate never = today.addDays(1'000'000);
    const auto key = [&](const DutyDue& d) {
        return std::tuple(d.due.likely.value_or(never), d.due.early.value_or(never), d.item, d.duty);
    };
    std::sort(due.begin(), due.end(), [&](const DutyDue& a, const DutyDue& b) { return key(a) < key(b); });
}

}  // namespace

ServiceOutlook serviceOutlook(const ServiceQuestion& question, const ServiceRule& rule) {
    ServiceOutlook outlook;
    outlook.today = dateOf(question.season.centre, question.now);
    outlook.due = dueDuties(question, outlook.today);
    sortByDay(outlook.due, outlook.today);
    OnHand left = onHandOf(question.season.stock);
    for (DutyDue& due : outlook.due) {
        const ServiceItem* item = findItem(question.season.items, due.item);
        due.missing = take(*findDuty(*item, due.duty), left);
    }
    placeVisits(outlook, question, rule);
    return outlook;
}

std::map<SupplyId, std::vector<Amount>> partsAhead(const ServiceQuestion& question, int days) {
    const QDate today = dateOf(question.season.centre, question.now);
    const std::map<MachineId, WorkAhead> ahead = aheadOf(question, today);
    const std::map<MachineId, Meters> meters = metersOfAll(question.season, question.now);
    const std::map<DutyId, LastDone> lasts = lastDone(question.season);
    std::map<SupplyId, std::vector<Amount>> taken;
    for (const ServiceItem& item : question.season.items) {
        if (item.retired) continue;
        const auto work = ahead.find(item.machine);
        const auto done = meters.find(item.machine);
        const DueQuestion asked{done == meters.end() ? Meters{} : done->second, work == ahead.end() ? nullptr : &work->second,
                                today, days};
        for (const Duty& duty : item.duties) {
            if (duty.parts.empty()) continue;
            const auto last = lasts.find(duty.id);
            for (int day : daysDue(duty, last == lasts.end() ? std::nullopt : std::optional(last->second), asked)) {
                for (const PartNeed& part : duty.parts) {
                    std::vector<Amount>& amounts = taken[part.supply];
                    amounts.resize(size_t(days), Amount{0});
                    amounts[size_t(day)] += part.amount;
                }
            }
        }
    }
    return taken;
}

std::vector<LaneDuty> laneDuties(const SeasonState& season, const MachineId& machine, Instant now) {
    const Meters meters = metersNow(season, machine, now);
    const std::map<DutyId, LastDone> lasts = lastDone(season);
    std::vector<LaneDuty> duties;
    for (const ServiceItem& item : season.items) {
        if (item.retired || item.machine != machine) continue;
        for (const Duty& duty : item.duties) {
            const auto last = lasts.find(duty.id);
            const auto left = lanesLeft(duty, last == lasts.end() ? std::nullopt : std::optional(last->second), meters);
            if (left) duties.push_back({item.id, duty.id, int(std::clamp<std::int64_t>(*left, 0, 1'000'000))});
        }
    }
    std::sort(duties.begin(), duties.end(), [](const LaneDuty& a, const LaneDuty& b) {
        return std::tie(a.left, a.item, a.duty) < std::tie(b.left, b.item, b.duty);
    });
    return duties;
}

std::optional<int> lanesUntilDuty(const SeasonState& season, const MachineId& machine, Instant now) {
    const std::vector<LaneDuty> duties = laneDuties(season, machine, now);
    return duties.empty() ? std::nullopt : std::optional(duties.front().left);
}

}  // namespace laneward
