// What was done and read: services, meters, packs. Records are never changed; a correction is a record that names the old one.
#pragma once

#include "core/service/meters.h"
#include "core/service/service_item.h"

namespace laneward {

enum class ServiceResult {
    Done,       ///< in time
    Failed,     ///< the part had failed: what was done put it right
    Found,      ///< only looked at: the finding says what was seen
    Withdrawn,  ///< only as a correction: it was not done
};

struct PartUsed {
    SupplyId supply;
    Amount amount;
    QString lot;  ///< empty = not known
    friend bool operator==(const PartUsed&, const PartUsed&) = default;
};

struct ServiceRecord {
    OperationId id;
    Instant at;
    PersonId person;
    ItemId item;
    DutyId duty;    ///< empty = work that is no duty of the item
    Meters meters;  ///< of the item's machine, as they stood
    ServiceResult result = ServiceResult::Done;
    std::vector<PartUsed> parts;
    Money cost;  ///< besides the parts
    int minutes = 0;
    QString finding;
    QString note;
    std::optional<OperationId> corrects;  ///< replaces that earlier one
    friend bool operator==(const ServiceRecord&, const ServiceRecord&) = default;
};

/// What a machine's counter showed. The difference to the one before is what it did in between, whatever was logged.
struct MeterReading {
    OperationId id;
    Instant at;
    PersonId person;
    MachineId machine;
    MeterKind meter = MeterKind::Lanes;  ///< Lanes, Runs or Minutes
    std::int64_t shown = 0;
    bool replaced = false;   ///< a new counter, which began with `shown`: what was counted before stays counted
    bool withdrawn = false;  ///< only as a correction: it was not read
    QString note;
    std::optional<OperationId> corrects;  ///< replaces that earlier one
    friend bool operator==(const MeterReading&, const MeterReading&) = default;
};

/// The records that stand: without what a later one corrects, and without the withdrawn. Order as given.
std::vector<ServiceRecord> standing(std::vector<ServiceRecord> records);
std::vector<MeterReading> standing(std::vector<MeterReading> readings);

/// What cannot be ("service.…", "meter.…"): in the future of `now`, no such duty, amounts of nothing; a counter below the one
/// before it that was not replaced. Empty when sound. `before`: readings that stand, of any machine.
std::vector<Finding> faultsOf(const ServiceRecord& record, const ServiceItem* item, Instant now);
std::vector<Finding> faultsOf(const MeterReading& reading, const std::vector<MeterReading>& before, Instant now);

}  // namespace laneward
