#include "core/service/pack_log.h"

#include "core/base/corrections.h"
#include "core/base/limits.h"

#include <algorithm>

namespace laneward {

namespace {

constexpr double secondsOfDay = 86'400;

class Log {
public:
    explicit Log(const std::vector<ServiceItem>& items) {
        for (const ServiceItem& item : items) {
            if (item.kind == ItemKind::Pack && !item.retired && !item.machine.isEmpty())
                m_packs.push_back({item.id, item.machine, false, false, {}, 0, {}, {}, {}, 0, {}});
        }
        std::sort(m_packs.begin(), m_packs.end(), [](const PackState& a, const PackState& b) { return a.pack < b.pack; });
        for (PackState& pack : m_packs)
            pack.onMachine = !packOn(pack.machine);
    }

    void run(const MachineWork& work) {
        PackState* pack = packOn(work.machine);
        if (!pack) return;
        if (pack->onCharge) begin(*pack, work.end);
        pack->lanes += double(work.done.lanes);
    }

    void read(const PackReading& reading) {
        const auto found =
            std::find_if(m_packs.begin(), m_packs.end(), [&](const PackState& p) { return p.pack == reading.pack; });
        if (found == m_packs.end()) return;
        if (reading.deed == PackDeed::OnMachine) putOn(*found, reading.at);
        if (reading.deed == PackDeed::OnCharge) end(*found, reading.at, !reading.spent);
        if (reading.deed == PackDeed::Charged) {
            if (!found->onCharge) end(*found, reading.at, true);  // nobody wrote when it was put on
            begin(*found, reading.at);
        }
        if (!reading.volts) return;
        found->volts = reading.volts;
        found->voltsAt = reading.at;
        found->state = reading.state;
        found->lanesAtVolts = found->lanes;
    }

    std::vector<PackState> take() { return std::move(m_packs); }

private:
    PackState* packOn(const MachineId& machine) {
        const auto found =
            std::find_if(m_packs.begin(), m_packs.end(), [&](const PackState& p) { return p.onMachine && p.machine == machine; });
        return found == m_packs.end() ? nullptr : &*found;
    }

    void putOn(PackState& pack, Instant at) {
        if (PackState* other = packOn(pack.machine)) other->onMachine = false;
        pack.onMachine = true;
        if (pack.onCharge) begin(pack, at);
    }

    static void begin(PackState& pack, Instant at) {
        pack.onCharge = false;
        pack.since = at;
        pack.lanes = 0;
    }

    /// A discharge whose begin is not known says nothing.
    static void end(PackState& pack, Instant at, bool cutShort) {
        if (!pack.onCharge && pack.since && pack.lanes > 0)
            pack.charges.push_back({double(at.seconds) / secondsOfDay, pack.lanes, cutShort});
        pack.onCharge = true;
        pack.since = at;
        pack.lanes = 0;
    }

    std::vector<PackState> m_packs;
};

}  // namespace

std::vector<PackReading> standing(std::vector<PackReading> readings) {
    readings = uncorrected(std::move(readings));
    std::erase_if(readings, [](const PackReading& reading) { return reading.withdrawn; });
    return readings;
}

std::vector<Finding> faultsOf(const PackReading& reading, const ServiceItem* item, Instant now) {
    const QString subject = (item ? item->name : reading.pack.value).left(limits::nameLength);
    if (!item || item->kind != ItemKind::Pack) return {{Severity::Fault, "pack.unknown", subject, {}}};
    std::vector<Finding> faults;
    if (reading.at > now) faults.push_back({Severity::Fault, "pack.in-future", subject, {reading.at}});
    if (reading.deed == PackDeed::Read && !reading.volts && !reading.withdrawn)
        faults.push_back({Severity::Fault, "pack.says-nothing", subject, {}});
    if (reading.volts) {
        const std::vector<Finding> volts = voltsFindings(*reading.volts, subject);
        faults.insert(faults.end(), volts.begin(), volts.end());
    }
    return faults;
}

std::vector<PackState> packStates(const std::vector<ServiceItem>& items, std::vector<PackReading> readings,
                                  std::vector<MachineWork> work, Instant now) {
    std::erase_if(readings, [now](const PackReading& r) { return r.at > now; });
    std::erase_if(work, [now](const MachineWork& w) { return w.end > now; });
    std::sort(readings.begin(), readings.end(),
              [](const PackReading& a, const PackReading& b) { return std::tie(a.at, a.id) < std::tie(b.at, b.id); });
    std::sort(work.begin(), work.end(), [](const MachineWork& a, const MachineWork& b) {
        return std::tie(a.end, a.machine, a.done.lanes) < std::tie(b.end, b.machine, b.done.lanes);
    });
    Log log(items);
    auto run = work.begin();
    for (const PackReading& reading : readings) {
        for (; run != work.end() && run->end <= reading.at; ++run)
            log.run(*run);
        log.read(reading);
    }
    for (; run != work.end(); ++run)
        log.run(*run);
    return log.take();
}

}  // namespace laneward
