#include "core/base/money.h"
#include "core/centre/centre.h"

#include <set>

namespace laneward {

namespace {

void add(std::vector<Finding>& faults, QByteArray rule, QString subject, std::vector<Value> values = {}) {
    faults.push_back({Severity::Fault, std::move(rule), std::move(subject), std::move(values)});
}

template <class Row>
void checkNames(const std::vector<Row>& rows, std::vector<Finding>& faults) {
    std::set<QString> ids;
    std::set<QString> names;
    for (const Row& row : rows) {
        if (row.id.isEmpty() || !ids.insert(row.id.value).second) add(faults, "centre.id-twice", row.id.value);
        if (row.name.trimmed().isEmpty()) add(faults, "centre.no-name", row.id.value);
        if (row.name.size() > limits::nameLength) add(faults, "centre.name-too-long", row.name.left(20));
        if (!names.insert(row.name).second) add(faults, "centre.name-twice", row.name);
    }
}

bool isPositive(const MachineTimes& times) {
    for (const Seconds& lane : times.lane) {
        if (lane <= Seconds{0}) return false;
    }
    for (Seconds t : {times.perTenFeet, times.nextLane, times.crossLane, times.leaveBay, times.returnToBay, times.refill,
                      times.emptyWaste, times.swapPack, times.charge, times.duty}) {
        if (t < Seconds{0} || t > hours(24)) return false;
    }
    return true;
}

bool isUsable(const MachineCapacity& c) {
    const Microlitres most = millilitres(1'000'000);
    for (Microlitres a : {c.conditioner[0], c.conditioner[1], c.cleaner, c.waste, c.cleanerPerLane, c.wastePerLane}) {
        if (a < Microlitres{0} || a > most) return false;
    }
    return c.conditioner[0] > Microlitres{0} && c.cleaner >= c.cleanerPerLane && c.waste >= c.wastePerLane &&
           c.conditionerPermille > 0 && c.conditionerPermille <= 10'000 && c.lanesPerCharge >= 2 && c.lanesPerCharge <= 100'000 &&
           c.sparePacks >= 0 && c.sparePacks <= 100 && c.lanesUntilDuty.value_or(0) >= 0;
}

bool isUsable(const ReadingLimits& limits) {
    constexpr std::int64_t most = 1'000'000;  // 1,000 units, a thousandfold ratio
    for (const std::int64_t n :
         {limits.lowestMilliUnits.value_or(0), limits.largestErrorMilliUnits.value_or(0),
          std::int64_t{limits.leastTrackPermille.value_or(0)}, std::int64_t{limits.mostTrackPermille.value_or(0)}}) {
        if (n < 0 || n > most) return false;
    }
    return !limits.mostTrackPermille || limits.leastTrackPermille.value_or(0) <= *limits.mostTrackPermille;
}

void checkShift(const Shift& shift, std::vector<Finding>& faults) {
    if (!shift.begin.isValid() || !shift.end.isValid()) add(faults, "shift.no-time", shift.name);
    if (shift.people < 0 || shift.people > 100) add(faults, "shift.people", shift.name, {std::int64_t{shift.people}});
    for (Seconds overtime : {shift.overtimeBefore, shift.overtimeAfter}) {
        if (overtime < Seconds{0} || overtime > hours(12)) add(faults, "shift.overtime", shift.name, {overtime});
    }
}

void checkOutage(const Centre& centre, const Outage& outage, std::vector<Finding>& faults) {
    if (outage.end && *outage.end <= outage.begin) add(faults, "outage.end-before-begin", outage.id.value);
    if (outage.lanes.last() > centre.facts.lanes) {
        add(faults, "outage.lane-unknown", outage.id.value, {std::int64_t{outage.lanes.last()}});
    }
    if (outage.machine && !findMachine(centre, *outage.machine)) add(faults, "outage.machine-unknown", outage.id.value);
}

void checkFacts(const CentreFacts& facts, std::vector<Finding>& faults) {
    if (facts.name.trimmed().isEmpty()) add(faults, "centre.no-name", facts.id.value);
    if (facts.id.isEmpty()) add(faults, "centre.no-id", facts.name);
    if (facts.lanes < 1 || facts.lanes > limits::lanes) {
        add(faults, "centre.lane-count", facts.name, {std::int64_t{facts.lanes}, std::int64_t{limits::lanes}});
    }
    if (!Zone::load(facts.zone)) add(faults, "zone.unknown", QString::fromUtf8(facts.zone));
    const Settings& s = facts.settings;
    for (Seconds t : {s.reserve, s.settle, s.clearing}) {
        if (t < Seconds{0} || t > hours(12)) add(faults, "centre.setting-time", facts.name, {t});
    }
    if (!s.dayBegins.isValid()) add(faults, "centre.day-begins", facts.name);
    if (!isCurrencyCode(s.currency)) add(faults, "centre.currency", facts.name, {QString::fromUtf8(s.currency)});
    if (!isUsable(facts.readingLimits)) add(faults, "centre.reading-limits", facts.name);
}

}  // namespace

std::vector<Finding> faultsOf(const Centre& centre) {
    std::vector<Finding> faults;
    checkFacts(centre.facts, faults);
    checkNames(centre.machines, faults);
    checkNames(centre.people, faults);
    checkNames(centre.shifts, faults);
    for (const Machine& machine : centre.machines) {
        if (!isPositive(machine.times)) add(faults, "machine.times", machine.name);
        if (!isUsable(machine.capacity)) add(faults, "machine.capacity", machine.name);
        if (machine.attachSpareAt > machine.fullAt) add(faults, "machine.volts", machine.name);
        if (machine.carryLength < Micrometres{0} || machine.carryLength > longestCarry)
            add(faults, "machine.carry", machine.name);
        if (machine.weight && (*machine.weight <= Grams{0} || *machine.weight > heaviestMachine))
            add(faults, "machine.weight", machine.name);
    }
    for (const Shift& shift : centre.shifts)
        checkShift(shift, faults);
    for (const Outage& outage : centre.outages)
        checkOutage(centre, outage, faults);
    return faults;
}

}  // namespace laneward
