#include "core/season/pack_deeds.h"

#include "core/season/pack_outlook.h"

#include <algorithm>

namespace laneward {

namespace {

const PackState* onMachine(const std::vector<PackState>& packs, const MachineId& machine) {
    const auto found =
        std::find_if(packs.begin(), packs.end(), [&](const PackState& p) { return p.onMachine && p.machine == machine; });
    return found == packs.end() ? nullptr : &*found;
}

/// Charged and unused first, then on charge, then what has run; the earlier the better.
auto readinessOrder(const PackState& pack) {
    const int rank = pack.onCharge ? 1 : pack.since && pack.lanes <= 0 ? 0 : 2;
    return std::tuple(rank, pack.since.value_or(Instant{}), pack.pack);
}

PackReading entry(const ItemId& pack, PackDeed deed, Instant at) {
    PackReading reading;
    reading.at = at;
    reading.pack = pack;
    reading.deed = deed;
    return reading;
}

/// When the volts that the levels carry were measured: the first of the day's readings that have them.
Instant measuredAt(const SeasonState& season, const MachineLevels& now, Instant dawn) {
    Instant at = now.at;
    for (const LevelReading& reading : standing(season.readings)) {
        const MachineLevels& levels = reading.levels;
        if (levels.machine == now.machine && levels.volts == now.volts && levels.at >= dawn) at = std::min(at, levels.at);
    }
    return at;
}

}  // namespace

const ServiceItem* packOn(const SeasonState& season, const MachineId& machine, Instant now) {
    const std::vector<PackState> packs = packsOf(season, now);
    const PackState* pack = onMachine(packs, machine);
    return pack ? findItem(season.items, pack->pack) : nullptr;
}

std::vector<ItemId> sparesOf(const SeasonState& season, const MachineId& machine, Instant now) {
    std::vector<PackState> packs = packsOf(season, now);
    std::erase_if(packs, [&](const PackState& p) { return p.machine != machine || p.onMachine; });
    std::sort(packs.begin(), packs.end(),
              [](const PackState& a, const PackState& b) { return readinessOrder(a) < readinessOrder(b); });
    std::vector<ItemId> spares;
    for (const PackState& pack : packs)
        spares.push_back(pack.pack);
    return spares;
}

VoltRule voltRuleOf(const SeasonState& season, const Machine& machine, Instant now) {
    VoltRule rule = voltRule(machine, packOn(season, machine.id, now));
    rule.hasSpare = rule.hasSpare || !sparesOf(season, machine.id, now).empty();
    return rule;
}

std::vector<PackReading> packEntries(const SeasonState& season, const MachineId& machine, const PackNews& news, Instant at) {
    const ServiceItem* pack = packOn(season, machine, at);
    if (!pack) return {};
    std::vector<PackReading> entries;
    PackReading now = entry(pack->id, PackDeed::Read, at);
    if (news.change == PackChange::Charged) now.deed = PackDeed::Charged;
    if (news.change == PackChange::OnCharge) now.deed = PackDeed::OnCharge;
    if (news.change == PackChange::Swapped) {
        const std::vector<ItemId> spares = sparesOf(season, machine, at);
        const ItemId other = news.on.isEmpty() && !spares.empty() ? spares.front() : news.on;
        // A spare that nobody keeps a log of: the log of the one before ends here.
        entries.push_back(entry(pack->id, PackDeed::OnCharge, at));
        if (other.isEmpty() || other == pack->id) return entries;
        now = entry(other, PackDeed::OnMachine, at);
    }
    now.volts = news.volts;
    now.state = news.state;
    if (now.deed != PackDeed::Read || now.volts) entries.push_back(now);
    return entries;
}

std::optional<MeasuredVolts> voltsToday(const SeasonState& season, const MachineLevels& now, Instant dawn) {
    std::optional<MeasuredVolts> byLevels;
    if (now.volts) byLevels = MeasuredVolts{*now.volts, VoltageState::Rested, measuredAt(season, now, dawn)};
    const std::vector<PackState> packs = packsOf(season, now.at);
    const PackState* pack = onMachine(packs, now.machine);
    if (!pack || !pack->volts || *pack->voltsAt < dawn || pack->onCharge) return byLevels;
    if (pack->since && *pack->voltsAt < *pack->since) return byLevels;
    const bool older = byLevels && byLevels->volts != *pack->volts && byLevels->at > *pack->voltsAt;
    return older ? byLevels : MeasuredVolts{*pack->volts, pack->state, *pack->voltsAt};
}

}  // namespace laneward
