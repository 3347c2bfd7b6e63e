#include "app/demo/demo_parts.h"

#include "core/patterns/film.h"

#include <algorithm>
#include <cmath>

namespace laneward::demo {

namespace {

constexpr std::uint64_t seed = 0x7a9e;
constexpr int tapeEveryDays = 6;
constexpr int inspectEveryDays = 91;
constexpr int inspectedLanes[] = {7, 8, 11, 12};

const RunLog* runOn(const HistorySlice& records, const Centre& centre, QDate date, Dice& dice) {
    std::vector<const RunLog*> runs;
    for (const RunLog& run : records.runs)
        if (run.pattern && !run.lanes.empty() && dateOf(centre, run.time.end) == date) runs.push_back(&run);
    return runs.empty() ? nullptr : runs[size_t(dice.below(int(runs.size())))];
}

/// What a tape takes is read to a tenth of a unit, and it does not take all boards alike.
std::int64_t readFilm(double units, Dice& dice) {
    const double noise = (dice.below(61) + dice.below(61) - 60) / 100.0;
    const double seen = units > 0.05 ? std::max(units + noise, 0.0) : units;
    return 100 * std::llround(seen * 10);
}

TapeReading tapeOf(const RunLog& run, const Pattern& pattern, const Machine& machine, Dice& dice) {
    const int place = dice.below(int(run.lanes.size()));
    TapeReading reading;
    reading.id = operation("tape " + run.id.value);
    reading.at = run.time.end + minutes(6 + dice.below(9));
    reading.person = run.person;
    reading.machine = run.machine;
    reading.pattern = pattern.id;
    reading.patternVersion = run.patternVersion;
    reading.lane = run.lanes[size_t(place)].lane;
    reading.laneOfRun = 0;
    const std::int64_t farthest = pattern.end.value / feet(1).value - 2;
    const std::int64_t distances[] = {8, 15, 22, farthest};
    reading.distance = feet(distances[dice.below(4)]);
    const BoardValues film = tapeFilm(pattern, {machine.carryLength, reading.laneOfRun}, reading.distance);
    for (size_t board = 0; board < film.size(); ++board)
        reading.milliUnits[board] = readFilm(film[board], dice);
    return reading;
}

/// Lanes 11 and 12 sank to one side until they were relevelled; the others hardly move.
Inspection inspectionOf(const Centre& centre, QDate date, int lane, int daysUntilLevelled, Dice& dice) {
    Inspection inspection;
    inspection.id = operation(QString("inspection %1 ").arg(lane) + date.toString(Qt::ISODate));
    inspection.at = dayOf(centre, date).begin + minutes(4 * 60 + 3 * lane);
    inspection.person = {"rowan"};
    inspection.lane = lane;
    const bool sinks = lane >= 11 && daysUntilLevelled > 0;
    const int years = 600;  // days over which the tilt grew
    const int tilt = sinks ? 200 + 850 * std::max(0, years - daysUntilLevelled) / years : 120;
    for (const int distance : {20, 35, 50}) {
        const auto near = [&](int um) { return Micrometres{10 * ((um + dice.below(61) - 30) / 10)}; };
        inspection.values.push_back({GeometryFeature::Tilt, feet(distance), lane == 11 ? -near(tilt) : near(tilt)});
        inspection.values.push_back({GeometryFeature::Level, feet(distance), near(150)});
        inspection.values.push_back({GeometryFeature::Crown, feet(distance), near(90)});
        inspection.values.push_back({GeometryFeature::Depression, feet(distance), near(180)});
    }
    return inspection;
}

}  // namespace

void addTapes(HistorySlice& records, const SeasonState& season, QDate today) {
    Dice dice(seed);
    for (QDate date = today.addDays(-historyDays); date < today; date = date.addDays(tapeEveryDays)) {
        const RunLog* run = runOn(records, season.centre, date, dice);
        if (!run) continue;
        const Pattern* pattern = versionOf(records.patternVersions, *run->pattern, run->patternVersion);
        const Machine* machine = findMachine(season.centre, run->machine);
        if (pattern && machine) records.tapes.push_back(tapeOf(*run, *pattern, *machine, dice));
    }
}

void addInspections(HistorySlice& records, const SeasonState& season, QDate today) {
    Dice dice(seed + 1);
    for (int ago = 2 * historyDays; ago > 0; ago -= inspectEveryDays) {
        for (const int lane : inspectedLanes) {
            records.inspections.push_back(inspectionOf(season.centre, today.addDays(-ago), lane, ago - relevelledDaysAgo, dice));
        }
    }
}

}  // namespace laneward::demo
