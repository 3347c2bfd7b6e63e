#include "core/base/corrections.h"
#include "core/service/service_record.h"

namespace laneward {

std::vector<ServiceRecord> standing(std::vector<ServiceRecord> records) {
    records = uncorrected(std::move(records));
    std::erase_if(records, [](const ServiceRecord& record) { return record.result == ServiceResult::Withdrawn; });
    return records;
}

std::vector<MeterReading> standing(std::vector<MeterReading> readings) {
    readings = uncorrected(std::move(readings));
    std::erase_if(readings, [](const MeterReading& reading) { return reading.withdrawn; });
    return readings;
}

}  // namespace laneward
