// A small house for planning tests, in UTC: one attended machine with round figures, one person from 9 to 23 o'clock, two
// patterns. Day 0 is Thursday, 12 November 2026. An event at 18:00 is met by 17:45 and tight after 17:35.
#pragma once

#include "core/planning/plan.h"

namespace support {

using namespace laneward;

inline const QDate day0{2026, 11, 12};

inline Instant at(int day, int hour, int minute = 0, int second = 0) {
    return Zone().toInstant({day0.addDays(day), QTime(0, 0)}) + hours(hour) + minutes(minute) + Seconds{second};
}

inline Pattern patternOf(const QString& id, int doseMicrolitres = 10) {
    Pattern p;
    p.id = {id};
    p.name = "Pattern " + id;
    p.strokes.push_back({Direction::Out, 1, 39, 10, {doseMicrolitres}, {}, feet(30), 0});  // 39 boards x 10 laps x dose
    return p;
}

/// 100 s a lane, 20 s to the next, 5 min to leave the bay, 4 min to return.
inline Machine machineOf(const QString& id) {
    Machine m;
    m.id = {id};
    m.name = "Machine " + id;
    m.times.lane = {Seconds{100}, Seconds{80}, Seconds{60}};
    m.capacity.conditioner = {millilitres(2'000), Microlitres{0}};
    m.capacity.conditionerPermille = 1'000;
    return m;
}

inline Shift shiftOf(const QString& id, QTime begin, QTime end, int people = 1) {
    Shift s;
    s.id = {id};
    s.name = "Shift " + id;
    s.begin = begin;
    s.end = end;
    s.people = people;
    return s;
}

inline State house(int lanes = 8) {
    State s;
    s.centre.facts = {{"c"}, "House", "UTC", lanes, {}, 0};
    s.centre.machines.push_back(machineOf("m1"));
    s.centre.shifts.push_back(shiftOf("s1", {9, 0}, {23, 0}));
    s.patterns = {patternOf("p1"), patternOf("p2", 20)};
    return s;
}

inline SurfaceDemand asks(DemandKind kind, const LaneSet& lanes, const char* pattern = "p1") {
    SurfaceDemand d;
    d.kind = kind;
    d.lanes = lanes;
    if (pattern) d.pattern = PatternId{QString::fromLatin1(pattern)};
    if (kind == DemandKind::Stripped) d.least = Treatment::CleanOnly;
    return d;
}

/// Once, on day `day`; fresh p1 on all its lanes unless told otherwise.
inline Series eventOf(const QString& id, int day, QTime begin, int lengthMinutes, const LaneSet& lanes) {
    Series s;
    s.id = {id};
    s.uid = id;
    s.title = "Event " + id;
    s.start = {day0.addDays(day), begin};
    s.duration = minutes(lengthMinutes);
    s.lanes = lanes;
    s.demands.push_back(asks(DemandKind::Fresh, lanes));
    return s;
}

inline void lastTreated(State& s, const LaneSet& lanes, Instant end, const char* pattern = "p1") {
    for (int lane : lanes.lanes()) {
        LaneTreatment t{lane, pattern ? Treatment::CleanAndCondition : Treatment::CleanOnly, {}, end};
        if (pattern) t.pattern = PatternId{QString::fromLatin1(pattern)};
        s.history.push_back(t);
    }
}

inline Plan planDay(const State& s, Instant now = at(0, 6), int days = 1) {
    return plan(s, now, {day0, day0.addDays(days - 1)}, 20'000);
}

inline LaneSet lanesOf(const Plan& p) {
    LaneSet lanes;
    for (const Job& job : p.jobs)
        lanes = lanes | job.laneSet();
    return lanes;
}

inline bool hasStep(const Job& job, StepKind kind) {
    for (const Step& step : job.steps) {
        if (step.kind == kind) return true;
    }
    return false;
}

inline bool has(const std::vector<Finding>& findings, const char* rule) {
    for (const Finding& f : findings) {
        if (f.rule == rule) return true;
    }
    return false;
}

}  // namespace support
