#include "app/demo/demo_parts.h"

#include "core/season/service_state.h"

#include <algorithm>
#include <cmath>

namespace laneward::demo {

namespace {

constexpr std::uint64_t seed = 0xca11;

/// Lanes that a pack runs on one charge; one of them is getting old.
struct Strength {
    double lanes;
    double fadesAYear;  ///< share
};

Strength strengthOf(const ItemId& pack) { return pack.value == "heron-pack" ? Strength{50, 0.16} : Strength{47, 0.02}; }

ItemId spareOf(const Machine& machine) { return {machine.id.value + "-spare-pack"}; }

/// A year of packs: the one on the machine is swapped in the morning of a day that it would not last, and charged at once.
class YearOfPacks {
public:
    YearOfPacks(HistorySlice& records, const Machine& machine, const Centre& centre, QDate today)
        : m_records(records), m_centre(centre), m_today(today), m_dice(seed + std::uint64_t(machine.id.value.size())) {
        m_on = {machine.id.value + "-pack"};
        m_beside = spareOf(machine);
        for (const RunLog& run : standing(records.runs)) {
            if (run.machine == machine.id) m_lanes[dateOf(centre, run.time.end)] += metersOf(run).lanes;
        }
    }

    void run() {
        note(m_on, morning(m_today.addDays(-historyDays)), PackDeed::Charged);
        note(m_beside, morning(m_today.addDays(-historyDays)) + minutes(1), PackDeed::Charged);
        double done = 0;
        double able = draw(m_on, m_today.addDays(-historyDays));
        for (const auto& [day, lanes] : m_lanes) {
            if (done > 0 && done + double(lanes) > able) {
                swap(day, done > 0.8 * able);
                done = 0;
                able = draw(m_on, day);
            }
            done += double(lanes);
        }
        if (done > able / 4) swap(m_today, done > 0.8 * able);  // tonight begins with a full one
    }

private:
    Instant morning(QDate day) const { return dayOf(m_centre, day).begin + minutes(2); }

    double draw(const ItemId& pack, QDate day) {
        const Strength strength = strengthOf(pack);
        const double years = double(m_today.addDays(-historyDays).daysTo(day)) / historyDays;
        return strength.lanes * (1 - strength.fadesAYear * years) + double(m_dice.below(5) - 2);
    }

    void swap(QDate day, bool spent) {
        const Instant at = morning(day);
        PackReading& off = note(m_on, at, PackDeed::OnCharge);
        off.spent = spent;
        off.volts = Millivolts{(spent ? 24'000 : 24'500) + 20 * m_dice.below(8)};
        PackReading& on = note(m_beside, at + minutes(4), PackDeed::OnMachine);
        on.volts = Millivolts{25'640 + 20 * m_dice.below(6)};
        note(m_on, at + hours(5), PackDeed::Charged);
        std::swap(m_on, m_beside);
    }

    PackReading& note(const ItemId& pack, Instant at, PackDeed deed) {
        const QString name = QString("pack %1 %2 %3").arg(pack.value).arg(at.seconds).arg(int(deed));
        m_records.packReadings.push_back({operation(name), at, {m_dice.oneIn(3) ? "idris" : "nell"}, pack, deed});
        return m_records.packReadings.back();
    }

    HistorySlice& m_records;
    const Centre& m_centre;
    QDate m_today;
    Dice m_dice;
    ItemId m_on;
    ItemId m_beside;
    std::map<QDate, std::int64_t> m_lanes;
};

}  // namespace

void addPackItems(std::vector<ServiceItem>& items, const Centre& centre) {
    const PackLimits limits{{Chemistry::Agm, Millivolts{24'000}},
                            {Millivolts{25'600}, VoltageState::Rested},
                            {Millivolts{24'800}, VoltageState::Rested},
                            {Millivolts{24'200}, VoltageState::Rested}};
    for (const Machine& machine : centre.machines)
        items.push_back({spareOf(machine), machine.id, ItemKind::Pack, "Spare pack", {}, {}, false, 0});
    for (ServiceItem& item : items) {
        if (item.kind == ItemKind::Pack) item.pack = limits;
    }
}

void addPacks(HistorySlice& records, const Centre& centre, QDate today) {
    for (const Machine& machine : centre.machines)
        YearOfPacks(records, machine, centre, today).run();
    std::stable_sort(records.packReadings.begin(), records.packReadings.end(),
                     [](const PackReading& a, const PackReading& b) { return a.at < b.at; });
}

}  // namespace laneward::demo
