#include "core/season/service_state.h"

#include "core/season/counted_meters.h"

#include <algorithm>

namespace laneward {

namespace {

Meters metersOf(const JobUse& use, const std::vector<LaneTime>& lanes) {
    const Seconds work = lanes.empty() ? Seconds{0} : lanes.back().time.end - lanes.front().time.begin;
    return {use.laneRuns, lanes.empty() ? 0 : 1, work, use.conditionerTotal() + use.cleaner};
}

}  // namespace

Meters metersOf(const RunLog& run) { return metersOf(run.use, run.lanes); }

Meters metersOf(const Job& job) { return metersOf(job.use, job.lanes); }

std::vector<MachineWork> workOf(const SeasonState& season) {
    std::vector<MachineWork> work = season.workBefore;
    for (const RunLog& run : standing(season.runs))
        work.push_back({run.machine, run.time.end, metersOf(run)});
    return work;
}

Meters metersNow(const SeasonState& season, const MachineId& machine, Instant now) {
    return metersAt(season.counters, workOf(season), machine, now);
}

std::map<DutyId, LastDone> lastDone(const SeasonState& season) {
    std::map<DutyId, LastDone> lasts;
    std::vector<ServiceRecord> records = standing(season.services);
    std::sort(records.begin(), records.end(),
              [](const ServiceRecord& a, const ServiceRecord& b) { return std::tie(a.at, a.id) < std::tie(b.at, b.id); });
    CountedMeters counted(season);
    for (const ServiceRecord& record : records) {
        if (record.duty.isEmpty() || record.result == ServiceResult::Found) continue;
        const ServiceItem* item = findItem(season.items, record.item);
        const Meters meters = item ? counted.of(item->machine, record) : record.meters;
        lasts[record.duty] = {record.at, dateOf(season.centre, record.at), meters};
    }
    return lasts;
}

}  // namespace laneward
