#include "core/centre/centre.h"

#include <algorithm>

namespace laneward {

namespace {

bool worksOn(const Shift& shift, QDate date) {
    if (std::find(shift.daysOff.begin(), shift.daysOff.end(), date) != shift.daysOff.end()) return false;
    if (std::find(shift.extraDays.begin(), shift.extraDays.end(), date) != shift.extraDays.end()) return true;
    return (shift.weekdays >> (date.dayOfWeek() - 1)) & 1;
}

template <class Row, class RowId>
const Row* findRow(const std::vector<Row>& rows, const RowId& id) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.id == id; });
    return found == rows.end() ? nullptr : &*found;
}

}  // namespace

Zone zoneOf(const Centre& centre) {
    const Result<Zone> zone = Zone::load(centre.facts.zone);
    return zone ? *zone : Zone();
}

Span dayOf(const Centre& centre, QDate date) {
    const Zone zone = zoneOf(centre);
    const QTime begins = centre.facts.settings.dayBegins;
    return {zone.toInstant({date, begins}), zone.toInstant({date.addDays(1), begins})};
}

QDate dateOf(const Centre& centre, Instant t) {
    const LocalTime local = zoneOf(centre).toLocal(t);
    return local.time < centre.facts.settings.dayBegins ? local.date.addDays(-1) : local.date;
}

std::vector<ShiftSpan> shiftsOn(const Centre& centre, QDate date) {
    const Zone zone = zoneOf(centre);
    std::vector<ShiftSpan> spans;
    for (const Shift& shift : centre.shifts) {
        if (!worksOn(shift, date)) continue;
        const QDate endDate = shift.end <= shift.begin ? date.addDays(1) : date;
        const Span work{zone.toInstant({date, shift.begin}), zone.toInstant({endDate, shift.end})};
        spans.push_back({shift.id, work, {work.begin - shift.overtimeBefore, work.end + shift.overtimeAfter}, shift.people});
    }
    std::sort(spans.begin(), spans.end(), [](const ShiftSpan& a, const ShiftSpan& b) {
        return a.work.begin != b.work.begin ? a.work.begin < b.work.begin : a.shift < b.shift;
    });
    return spans;
}

LaneSet allLanes(const Centre& centre) { return LaneSet::range(1, centre.facts.lanes); }

const Machine* findMachine(const Centre& centre, const MachineId& id) { return findRow(centre.machines, id); }

const Person* findPerson(const Centre& centre, const PersonId& id) { return findRow(centre.people, id); }

}  // namespace laneward
