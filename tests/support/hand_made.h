// A small evening whose plan is written by hand, so that a change of the planner does not change what documents are tested on.
// Twelve lanes in London on Thursday 2026-11-12; one machine, two jobs, one demand that cannot be met.
#pragma once

#include "core/season/season.h"

namespace support {

/// Minutes after 2026-11-12T00:00Z, which is local midnight.
inline laneward::Instant handAt(int hour, int minute, int second = 0) {
    return {1'794'441'600 + hour * 3'600 + minute * 60 + second};
}

inline laneward::SeasonState handSeason() {
    using namespace laneward;
    SeasonState season;
    season.centre.facts = {{"hand"}, "Sedge Lanes", "Europe/London", 12, {}, 0};
    Machine machine;
    machine.id = {"m1"};
    machine.name = "Otter";
    machine.conditioners = {"Fenlight", {}};
    machine.cleaner = "Sluice";
    season.centre.machines = {machine};
    season.centre.people = {{{"ada"}, "Ada Fenwick", Role::Operator, true, 0}};
    Pattern pattern;
    pattern.id = {"reed"};
    pattern.name = "Reed 38";
    pattern.end = feet(38);
    pattern.strokes = {{Direction::Out, 2, 38, 10, Microlitres{50}, feet(0), feet(38), 0}};
    season.patterns = {pattern};
    season.handOvers = {{{"n1"}, QDate(2026, 11, 11), handAt(-1, 30), {"ada"}, "Cloth nearly at its end.", {}}};
    return season;
}

inline std::vector<laneward::LaneTime> handLanes(int first, int last, laneward::Instant begin) {
    std::vector<laneward::LaneTime> lanes;
    for (int lane = first; lane <= last; ++lane) {
        const laneward::Instant start = begin + laneward::minutes(2 * (lane - first));
        lanes.push_back({lane, {start, start + laneward::minutes(2)}});
    }
    return lanes;
}

inline laneward::JobUse handUse(int laneRuns) {
    using namespace laneward;
    JobUse use;
    use.conditioner[0] = millilitres(20) * laneRuns;
    use.cleaner = millilitres(110) * laneRuns;
    use.waste = millilitres(100) * laneRuns;
    use.laneRuns = laneRuns;
    return use;
}

inline laneward::Job handJob() {
    using namespace laneward;
    Job job;
    job.id = {"2026-11-12-m1-1717"};
    job.date = QDate(2026, 11, 12);
    job.machine = {"m1"};
    job.outing = 1;
    job.time = {handAt(17, 17, 20), handAt(17, 38, 20)};
    job.pattern = PatternId{"reed"};
    job.lanes = handLanes(1, 8, handAt(17, 22, 20));
    job.steps = {{StepKind::LeaveBay, {handAt(17, 17, 20), handAt(17, 22, 20)}, {}},
                 {StepKind::Treat, {handAt(17, 22, 20), handAt(17, 38, 20)}, LaneSet::range(1, 8)}};
    job.neededBy = {{{"fours"}, {QDate(2026, 11, 12), QTime(18, 30)}, "Thursday Fours", handAt(18, 30), LaneSet::range(1, 8)}};
    job.reasons = {{Severity::Note, "job.needed", "Thursday Fours", {handAt(18, 30), QString("1-8")}}};
    job.slack = Seconds{26 * 60 + 40};
    job.use = handUse(8);
    return job;
}

inline laneward::Job handSecondJob() {
    using namespace laneward;
    Job job;
    job.id = {"2026-11-12-m1-1744"};
    job.date = QDate(2026, 11, 12);
    job.machine = {"m1"};
    job.outing = 1;
    job.time = {handAt(17, 38, 20), handAt(17, 52)};
    job.treatment = Treatment::CleanOnly;
    job.lanes = handLanes(9, 12, handAt(17, 44));
    job.steps = {{StepKind::EmptyWaste, {handAt(17, 38, 20), handAt(17, 43, 20)}, {}},
                 {StepKind::Treat, {handAt(17, 44), handAt(17, 52)}, LaneSet::range(9, 12)},
                 {StepKind::ReturnToBay, {handAt(17, 52), handAt(17, 56)}, {}}};
    job.neededBy = {{{"strip"}, {QDate(2026, 11, 12), QTime(18, 10)}, "Strip night", handAt(18, 10), LaneSet::range(9, 12)}};
    job.slack = Seconds{-7 * 60};
    job.use = handUse(4);
    job.use.conditioner = {};
    return job;
}

inline laneward::Shortfall handShortfall() {
    using namespace laneward;
    Shortfall shortfall;
    shortfall.series = {"late"};
    shortfall.original = {QDate(2026, 11, 12), QTime(20, 0)};
    shortfall.title = "Late Fours";
    shortfall.playBegins = handAt(20, 0);
    shortfall.lanes = LaneSet::range(5, 8);
    shortfall.missing = minutes(12);
    shortfall.reasons = {{Severity::Warning, "short.no-time", "Late Fours", {minutes(12), handAt(19, 50)}}};
    shortfall.remedies = {
        {{Severity::Note, "remedy.move-event", "Late Fours", {minutes(12), handAt(20, 12)}}, minutes(12), true}};
    return shortfall;
}

inline laneward::Plan handPlan() {
    using namespace laneward;
    Plan plan;
    plan.range = {QDate(2026, 11, 12), QDate(2026, 11, 12)};
    plan.now = handAt(15, 0);
    plan.jobs = {handJob(), handSecondJob()};
    plan.unmet = {handShortfall()};
    DayPlan day;
    day.date = QDate(2026, 11, 12);
    day.objective.unmet = 4;
    day.objective.treatments = 12;
    day.bound.treatments = 12;
    day.outings = {{{"m1"}, 1, {handAt(17, 17, 20), handAt(17, 56)}, {handJob().id, handSecondJob().id}}};
    plan.days = {day};
    Occurrence fours;
    fours.series = {"fours"};
    fours.original = {QDate(2026, 11, 12), QTime(18, 30)};
    fours.title = "Thursday Fours";
    fours.kind = EventKind::League;
    fours.booked = {handAt(18, 30), handAt(21, 0)};
    fours.cleared = handAt(21, 10);
    fours.lanes = LaneSet::range(1, 8);
    SurfaceDemand demand;
    demand.lanes = fours.lanes;
    demand.kind = DemandKind::Fresh;
    demand.pattern = PatternId{"reed"};
    fours.demands = {demand};
    plan.occupancy.occurrences = {fours};
    return plan;
}

}  // namespace support
