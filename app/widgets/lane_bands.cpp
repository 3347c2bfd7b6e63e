#include "app/widgets/house_data.h"

#include <QCoreApplication>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(HouseData)
};

/// The season with the plan's jobs that end by `at` recorded as they are planned.
SeasonState asIfRun(const HouseSource& source, Instant at) {
    SeasonState imagined = source.season;
    if (at <= source.plan.now) return imagined;
    for (const Job& job : source.plan.jobs) {
        const bool ahead = job.state == JobState::Proposed || job.state == JobState::Confirmed || job.state == JobState::UnderWay;
        if (!ahead || job.lanes.empty() || job.lanes.front().time.end > at) continue;
        RunLog run;
        run.id = {QStringLiteral("planned-") + job.id.value};
        run.machine = job.machine;
        run.treatment = job.treatment;
        run.pattern = job.pattern;
        for (const LaneTime& lane : job.lanes) {
            if (lane.time.end <= at) run.lanes.push_back(lane);
        }
        run.time = {run.lanes.front().time.begin, run.lanes.back().time.end};
        imagined.runs.push_back(run);
    }
    return imagined;
}

QString ageText(Seconds age, const Speech& speech) {
    const std::int64_t days = age.value / 86'400;
    if (days > 0) return Words::tr("%n d", "age in days, short", int(days));
    if (age.value >= 3'600) return Words::tr("%n h", "age in hours, short", int(age.value / 3'600));
    return durationText(age, speech);
}

LaneBand bandOf(const LaneNow& lane, const HouseSource& source, Instant at) {
    LaneBand band;
    band.first = band.last = lane.lane;
    band.inPlay = lane.inPlay;
    band.outOfService = lane.outOfService;
    if (!lane.condition.treated) {
        band.pattern = Words::tr("unknown");
        return band;
    }
    band.pattern = lane.condition.pattern ? patternName(lane.condition.pattern, source.season.patterns) : Words::tr("stripped");
    band.age = ageText(at - lane.condition.end, source.speech);
    return band;
}

bool sameBand(const LaneBand& a, const LaneBand& b) {
    return a.pattern == b.pattern && a.age == b.age && a.inPlay == b.inPlay && a.outOfService == b.outOfService;
}

QString spokenBand(const LaneBand& band) {
    QStringList words;
    words << (band.first == band.last ? Words::tr("Lane %1").arg(band.first)
                                      : Words::tr("Lanes %1").arg(QStringLiteral("%1-%2").arg(band.first).arg(band.last)));
    words << band.pattern;
    if (!band.age.isEmpty()) words << Words::tr("treated %1 ago").arg(band.age);
    if (band.inPlay) words << Words::tr("in play");
    if (band.outOfService) words << Words::tr("out of service");
    return words.join(Words::tr(", "));
}

}  // namespace

std::vector<LaneBand> laneBands(const HouseSource& source, const Occupancy& before, Instant at) {
    std::vector<LaneBand> bands;
    for (const LaneNow& lane : lanesAt(asIfRun(source, at), before, at)) {
        LaneBand band = bandOf(lane, source, at);
        if (!bands.empty() && sameBand(bands.back(), band) && bands.back().last + 1 == lane.lane)
            bands.back().last = lane.lane;
        else
            bands.push_back(band);
    }
    for (LaneBand& band : bands)
        band.spoken = spokenBand(band);
    return bands;
}

}  // namespace laneward
