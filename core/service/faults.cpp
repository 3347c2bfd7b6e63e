#include "core/base/limits.h"
#include "core/service/service_record.h"

#include <algorithm>
#include <set>

namespace laneward {

namespace {

using Findings = std::vector<Finding>;

constexpr std::int64_t mostEvery = 1'000'000'000'000;  // a machine's life in microlitres, and far beyond in all else
constexpr int mostMinutes = 24 * 60;

void add(Findings& faults, const char* rule, const QString& subject, std::vector<Value> values = {}) {
    faults.push_back({Severity::Fault, rule, subject.left(limits::nameLength), std::move(values)});
}

void checkMoney(const Money& money, const QByteArray& currency, const QString& subject, Findings& faults) {
    const Findings found = faultsOf(money, currency, subject);
    faults.insert(faults.end(), found.begin(), found.end());
}

void checkDuty(const Duty& duty, bool hasMachine, const QByteArray& currency, Findings& faults) {
    const QString& name = duty.name;
    if (duty.id.isEmpty() || name.trimmed().isEmpty()) add(faults, "service.duty-without-name", duty.id.value);
    if (duty.triggers.empty() && duty.dates.empty()) add(faults, "service.never-due", name);
    std::set<MeterKind> meters;
    for (const Trigger& trigger : duty.triggers) {
        if (trigger.every < 1 || trigger.every > mostEvery) add(faults, "service.interval", name, {trigger.every});
        if (!hasMachine && trigger.meter != MeterKind::Days) add(faults, "service.no-meter", name);
        if (!meters.insert(trigger.meter).second) add(faults, "service.meter-twice", name);
    }
    if (duty.minutes < 0 || duty.minutes > mostMinutes) add(faults, "service.minutes", name, {std::int64_t{duty.minutes}});
    for (const PartNeed& part : duty.parts) {
        if (part.supply.isEmpty() || part.amount.value < 1 || part.amount.value > limits::stockAmount)
            add(faults, "service.part", name, {part.amount.value});
    }
    checkMoney(duty.planned, currency, name, faults);
    checkMoney(duty.failed, currency, name, faults);
}

}  // namespace

const ServiceItem* findItem(const std::vector<ServiceItem>& items, const ItemId& id) {
    const auto found = std::find_if(items.begin(), items.end(), [&](const ServiceItem& item) { return item.id == id; });
    return found == items.end() ? nullptr : &*found;
}

const Duty* findDuty(const ServiceItem& item, const DutyId& id) {
    const auto found = std::find_if(item.duties.begin(), item.duties.end(), [&](const Duty& duty) { return duty.id == id; });
    return found == item.duties.end() ? nullptr : &*found;
}

Findings faultsOf(const ServiceItem& item, const QByteArray& currency) {
    Findings faults;
    if (item.name.trimmed().isEmpty()) add(faults, "service.no-name", item.id.value);
    if (item.name.size() > limits::nameLength) add(faults, "service.name-too-long", item.name.left(20));
    std::set<DutyId> ids;
    for (const Duty& duty : item.duties) {
        checkDuty(duty, !item.machine.isEmpty(), currency, faults);
        if (!ids.insert(duty.id).second) add(faults, "service.duty-twice", duty.name);
    }
    if (item.pack && item.kind != ItemKind::Pack) add(faults, "service.no-pack", item.name);
    for (const Finding& finding : item.pack ? findingsOf(*item.pack, item.name) : Findings{}) {
        if (finding.severity == Severity::Fault) faults.push_back(finding);
    }
    return faults;
}

Findings faultsOf(const ServiceRecord& record, const ServiceItem* item, Instant now) {
    Findings faults;
    if (!item) {
        add(faults, "service.unknown-item", record.item.value);
        return faults;
    }
    const QString& name = item->name;
    if (!record.duty.isEmpty() && !findDuty(*item, record.duty)) add(faults, "service.unknown-duty", name, {record.duty.value});
    if (record.at > now) add(faults, "service.in-future", name, {record.at});
    if (record.minutes < 0 || record.minutes > mostMinutes) add(faults, "service.minutes", name, {std::int64_t{record.minutes}});
    for (const PartUsed& part : record.parts) {
        if (part.supply.isEmpty() || part.amount.value < 1 || part.amount.value > limits::stockAmount)
            add(faults, "service.part", name, {part.amount.value});
    }
    if (record.cost.minor < 0 || record.cost.minor > limits::moneyMinor)
        add(faults, "price.amount", name, {std::int64_t{record.cost.minor}});
    const bool says = !record.finding.trimmed().isEmpty() || !record.note.trimmed().isEmpty();
    if (record.duty.isEmpty() && record.result != ServiceResult::Withdrawn && !says) add(faults, "service.says-nothing", name);
    return faults;
}

Findings faultsOf(const MeterReading& reading, const std::vector<MeterReading>& before, Instant now) {
    Findings faults;
    const QString& machine = reading.machine.value;
    if (reading.at > now) add(faults, "meter.in-future", machine, {reading.at});
    if (reading.shown < 0 || reading.shown > mostEvery) add(faults, "meter.value", machine, {reading.shown});
    if (reading.meter == MeterKind::Volume || reading.meter == MeterKind::Days) add(faults, "meter.kind", machine);
    const MeterReading* last = nullptr;
    const MeterReading* next = nullptr;
    for (const MeterReading& other : before) {
        const bool same = other.machine == reading.machine && other.meter == reading.meter && other.id != reading.id &&
                          other.id != reading.corrects.value_or(OperationId{});
        if (!same) continue;
        if (other.at <= reading.at && (!last || last->at < other.at)) last = &other;
        if (other.at > reading.at && (!next || next->at > other.at)) next = &other;
    }
    if (last && !reading.replaced && reading.shown < last->shown)
        add(faults, "meter.backwards", machine, {reading.shown, last->shown});
    if (next && !next->replaced && next->shown < reading.shown)
        add(faults, "meter.backwards", machine, {next->shown, reading.shown});
    return faults;
}

}  // namespace laneward
