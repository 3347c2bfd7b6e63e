#include "core/season/counted_meters.h"

#include "core/season/service_state.h"

namespace laneward {

CountedMeters::CountedMeters(const SeasonState& season) : m_season(season), m_work(workOf(season)) {}

const CountedMeters::Firsts& CountedMeters::firstsOf(const MachineId& machine) {
    const auto [place, isNew] = m_firsts.try_emplace(machine);
    Firsts& firsts = place->second;
    if (!isNew) return firsts;
    for (const MeterReading& counter : m_season.counters) {
        if (counter.machine != machine || size_t(counter.meter) >= firsts.size()) continue;
        First& first = firsts[size_t(counter.meter)];
        if (!first.at || counter.at < *first.at) first = {counter.at, 0, counter.shown};
    }
    for (size_t kind = 0; kind < firsts.size(); ++kind) {
        if (firsts[kind].at) firsts[kind].logged = valueOf(metersAt({}, m_work, machine, *firsts[kind].at), MeterKind(kind));
    }
    return firsts;
}

Meters CountedMeters::of(const MachineId& machine, const ServiceRecord& record) {
    Meters meters = record.meters;
    const Firsts& firsts = firstsOf(machine);
    const auto moved = [&](MeterKind kind) {
        const First& first = firsts[size_t(kind)];
        const bool byLogs = first.at && record.at < *first.at && first.logged > 0 && valueOf(record.meters, kind) <= first.logged;
        return byLogs ? first.shown - first.logged : 0;
    };
    meters.lanes += moved(MeterKind::Lanes);
    meters.runs += moved(MeterKind::Runs);
    meters.work += minutes(moved(MeterKind::Minutes));
    return meters;
}

}  // namespace laneward
