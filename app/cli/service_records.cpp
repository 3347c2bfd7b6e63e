#include "app/cli/service_records.h"

#include "core/season/service_state.h"

#include <algorithm>

namespace laneward::cli {

namespace {

Result<std::optional<ServiceRecord>> storedSame(Store& store, const ServiceRecord& record) {
    const Result<std::vector<ServiceRecord>> then = store.services({record.at, record.at + Seconds{1}});
    if (!then) return then.error();
    const auto same = std::find_if(then->begin(), then->end(), [&](const ServiceRecord& other) { return other.id == record.id; });
    return same == then->end() ? std::nullopt : std::optional(*same);
}

}  // namespace

Outcome completeServices(const Loaded& loaded, std::vector<Record>& records) {
    const SeasonState& season = loaded.season;
    for (Record& one : records) {
        auto* record = std::get_if<ServiceRecord>(&one);
        if (!record) continue;
        if (!record->cost.isZero()) record->cost.currency = season.centre.facts.settings.currency;
        const ServiceItem* item = findItem(season.items, record->item);
        if (!item || item->machine.isEmpty() || record->meters != Meters{}) continue;
        const Result<std::optional<ServiceRecord>> stored = storedSame(*loaded.store, *record);
        if (!stored) return stored.error();
        record->meters = *stored ? (*stored)->meters : metersNow(season, item->machine, record->at);
    }
    return Nothing{};
}

Outcome checkServices(const Loaded& loaded, const std::vector<Record>& records) {
    const SeasonState& season = loaded.season;
    std::vector<MeterReading> counters = season.counters;
    for (const Record& one : records) {
        std::vector<Finding> faults;
        if (const auto* record = std::get_if<ServiceRecord>(&one))
            faults = faultsOf(*record, findItem(season.items, record->item), loaded.now);
        if (const auto* reading = std::get_if<MeterReading>(&one)) {
            if (!reading->withdrawn) faults = faultsOf(*reading, counters, loaded.now);
            counters.push_back(*reading);
        }
        if (const auto* reading = std::get_if<PackReading>(&one))
            faults = faultsOf(*reading, findItem(season.items, reading->pack), loaded.now);
        if (!faults.empty()) return Error{ErrorKind::Invalid, faults.front()};
    }
    return Nothing{};
}

QString partsNotThere(const Loaded& loaded, const std::vector<Record>& booked) {
    QString lines;
    for (const Record& one : booked) {
        const auto* movement = std::get_if<Movement>(&one);
        if (!movement || !movement->flagged || movement->source != MovementSource::Service) continue;
        const Supply* supply =
            movement->entries.empty() ? nullptr : findSupply(loaded.season.supplies, movement->entries.front().key.supply);
        if (!supply) continue;
        lines += text(Finding{Severity::Warning, "service.part-not-there", supply->name, {}}, loaded.speech) + "\n";
    }
    return lines;
}

}  // namespace laneward::cli
