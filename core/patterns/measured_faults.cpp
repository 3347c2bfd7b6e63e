#include "core/patterns/inspection.h"
#include "core/patterns/tape_reading.h"

#include <algorithm>

namespace laneward {

namespace {

/// Collects what is wrong on one lane.
struct Faults {
    QString lane;
    std::vector<Finding> found;

    void add(bool wrong, const char* rule, std::vector<Value> values = {}) {
        if (wrong) found.push_back({Severity::Fault, rule, lane, std::move(values)});
    }
};

bool isOnLane(Micrometres distance) { return distance >= Micrometres{0} && distance <= laneLength; }

}  // namespace

bool isMeasured(const TapeReading& reading) {
    return std::any_of(reading.milliUnits.begin(), reading.milliUnits.end(), [](const auto& film) { return film.has_value(); });
}

std::vector<Finding> faultsOf(const TapeReading& reading, int lanes) {
    Faults faults{QString::number(reading.lane), {}};
    faults.add(reading.lane < 1 || reading.lane > lanes, "reading.lane", {std::int64_t{lanes}});
    faults.add(!isOnLane(reading.distance), "reading.distance", {reading.distance});
    faults.add(reading.laneOfRun < 0 || reading.laneOfRun > mostLanesOfRun, "reading.lane-of-run",
               {std::int64_t{reading.laneOfRun}, std::int64_t{mostLanesOfRun}});
    for (size_t board = 0; board < reading.milliUnits.size(); ++board) {
        const std::int64_t film = reading.milliUnits[board].value_or(0);
        faults.add(film < 0 || film > mostMilliUnits, "reading.film",
                   {std::int64_t(board) + 1, std::int64_t{mostMilliUnits / 1'000}});
    }
    faults.add(!reading.corrects && !isMeasured(reading), "reading.nothing");
    return faults.found;
}

std::vector<Finding> faultsOf(const Inspection& inspection, int lanes) {
    Faults faults{QString::number(inspection.lane), {}};
    faults.add(inspection.lane < 1 || inspection.lane > lanes, "inspection.lane", {std::int64_t{lanes}});
    for (const GeometryValue& value : inspection.values) {
        faults.add(!isOnLane(value.distance), "inspection.distance", {value.distance});
        faults.add(value.departure > mostDeparture || value.departure < -mostDeparture, "inspection.departure",
                   {value.departure, value.distance});
    }
    faults.add(!inspection.corrects && inspection.values.empty(), "inspection.nothing");
    return faults.found;
}

}  // namespace laneward
