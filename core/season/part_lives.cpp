#include "core/season/part_lives.h"

#include "core/season/counted_meters.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace laneward {

namespace {

constexpr double minutesPerHour = 60;
constexpr double microlitresPerLitre = 1'000'000;
constexpr double mostInterval = 1e12;  // as an item may have

class Ages {
public:
    explicit Ages(const PartQuestion& question) : m_question(question), m_counted(question.season) {}

    /// From one record to the other, in the unit that is asked for.
    double between(const MachineId& machine, const ServiceRecord& from, const ServiceRecord& until) {
        const Centre& centre = m_question.season.centre;
        if (m_question.unit == MeterKind::Days) return double(dateOf(centre, from.at).daysTo(dateOf(centre, until.at)));
        const auto reading = [&](const ServiceRecord& record) { return valueOf(m_counted.of(machine, record), m_question.unit); };
        return double(reading(until) - reading(from));
    }
    ServiceRecord now(const MachineId& machine) {
        ServiceRecord record;
        record.at = m_question.now;
        record.meters = metersNow(m_question.season, machine, m_question.now);
        return record;
    }

private:
    const PartQuestion& m_question;
    CountedMeters m_counted;
};

using Records = std::vector<const ServiceRecord*>;

bool isEarlier(const ServiceRecord* a, const ServiceRecord* b) { return std::tie(a->at, a->id) < std::tie(b->at, b->id); }

void addLives(PartLives& lives, const ServiceItem& item, const ItemDuty& of, const Records& records, Ages& ages) {
    const auto add = [&](const ServiceRecord& from, const ServiceRecord& until, bool failed, bool inUse) {
        const double age = ages.between(item.machine, from, until);
        if (age > 0)
            lives.lives.push_back({of, from.at, until.at, inUse, {age, failed}});
        else if (!inUse)
            ++lives.leftOut;
    };
    const ServiceRecord* fitted = nullptr;
    for (const ServiceRecord* record : records) {
        if (record->duty != of.duty || record->result == ServiceResult::Found) continue;
        if (fitted) add(*fitted, *record, record->result == ServiceResult::Failed, false);
        fitted = record;
    }
    if (fitted) add(*fitted, item.retired ? *records.back() : ages.now(item.machine), false, true);
}

}  // namespace

std::vector<Life> PartLives::ages() const {
    std::vector<Life> all;
    all.reserve(lives.size());
    for (const PartLife& life : lives)
        all.push_back(life.life);
    return all;
}

PartLives partLives(const PartQuestion& question, const std::vector<ItemDuty>& duties) {
    const std::vector<ServiceRecord> records = standing(question.records);
    std::map<ItemId, Records> byItem;
    for (const ServiceRecord& record : records) {
        if (record.at <= question.now) byItem[record.item].push_back(&record);
    }
    for (auto& [id, own] : byItem)
        std::sort(own.begin(), own.end(), isEarlier);
    PartLives lives;
    Ages ages(question);
    for (const ItemDuty& of : duties) {
        const ServiceItem* item = findItem(question.season.items, of.item);
        if (item) addLives(lives, *item, of, byItem[of.item], ages);
    }
    return lives;
}

std::vector<ItemDuty> alikeDuties(const std::vector<ServiceItem>& items, const ServiceItem& item, const Duty& duty) {
    std::vector<ItemDuty> alike{{item.id, duty.id}};
    for (const ServiceItem& other : items) {
        const bool sameName = other.name.compare(item.name, Qt::CaseInsensitive) == 0;
        if (other.kind != item.kind || (item.kind == ItemKind::Other && !sameName)) continue;
        for (const Duty& candidate : other.duties) {
            const ItemDuty of{other.id, candidate.id};
            if (candidate.kind == DutyKind::Replace && of != alike.front() && other.id != item.id) alike.push_back(of);
        }
    }
    return alike;
}

std::int64_t roundedInterval(double age, MeterKind meter) {
    const double unit = meter == MeterKind::Minutes ? minutesPerHour : meter == MeterKind::Volume ? microlitresPerLitre : 1;
    const double inUnits = std::clamp(age / unit, 0.0, mostInterval / unit);
    if (inUnits < 1) return std::max<std::int64_t>(1, std::llround(inUnits * unit));
    const double step = std::pow(10, std::max(0.0, std::floor(std::log10(inUnits)) - 1));
    return std::llround(std::round(inUnits / step) * step * unit);
}

ServiceItem withInterval(const ServiceItem& item, const DutyId& duty, const Trigger& trigger) {
    ServiceItem after = item;
    for (Duty& one : after.duties) {
        if (one.id != duty) continue;
        const auto same =
            std::find_if(one.triggers.begin(), one.triggers.end(), [&](const Trigger& t) { return t.meter == trigger.meter; });
        if (same == one.triggers.end())
            one.triggers.push_back(trigger);
        else
            *same = trigger;
    }
    return after;
}

}  // namespace laneward
