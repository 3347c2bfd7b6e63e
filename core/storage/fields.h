// What is stored of each value: one list of fields per kind, read by every visitor (JSON in and out, columns in and out), so
// that the database and the centre file can never disagree about a field.
//
// Keys are snake_case and carry the unit of an amount (_s seconds, _ul microlitres, _um micrometres, _mv millivolts, milli_units
// thousandths of a unit of film); they are both the JSON key and the column. A list or struct inside a row becomes one column of
// JSON text, because nothing queries inside it; `visit.child` marks the one list that has a table of its own. Row versions are
// left out: only the database has them.
//
//     template <class V, ValueOf<Incident> T> void describe(V& visit, T& i) { visit("id", i.id); … }
#pragma once

#include "core/season/season.h"

#include <concepts>

namespace laneward {

/// T, const or not.
template <class T, class Value>
concept ValueOf = std::same_as<std::remove_const_t<T>, Value>;

template <class V, ValueOf<LaneTime> T>
void describe(V& visit, T& t) {
    visit("lane", t.lane);
    visit("begins", t.time.begin);
    visit("ends", t.time.end);
}

template <class V, ValueOf<JobUse> T>
void describe(V& visit, T& u) {
    visit("conditioner_ul", u.conditioner);
    visit("cleaner_ul", u.cleaner);
    visit("waste_ul", u.waste);
    visit("lane_runs", u.laneRuns);
}

template <class V, ValueOf<Finding> T>
void describe(V& visit, T& f) {
    visit("severity", f.severity);
    visit("rule", f.rule);
    visit("subject", f.subject);
    visit("values", f.values);
}

template <class V, ValueOf<RunLog> T>
void describe(V& visit, T& r) {
    visit("id", r.id);
    visit("job", r.job);
    visit("plan_version", r.planVersion);
    visit("corrects", r.corrects);
    visit("machine", r.machine);
    visit("person", r.person);
    visit("begins", r.time.begin);
    visit("ends", r.time.end);
    visit("treatment", r.treatment);
    visit("pattern", r.pattern);
    visit("pattern_version", r.patternVersion);
    visit.child("lanes", r.lanes);
    visit("result", r.result);
    visit("used", r.use);
    visit("note", r.note);
    visit("recorded_at", r.recordedAt);
}

template <class V, ValueOf<Incident> T>
void describe(V& visit, T& i) {
    visit("id", i.id);
    visit("incident", i.kind);
    visit("happened_at", i.at);
    visit("lane", i.lane);
    visit("machine", i.machine);
    visit("person", i.person);
    visit("note", i.text);
    visit("corrects", i.corrects);
    visit("answers", i.answers);
}

template <class V, ValueOf<HandOver> T>
void describe(V& visit, T& h) {
    visit("id", h.id);
    visit("day", h.date);
    visit("happened_at", h.at);
    visit("person", h.person);
    visit("note", h.text);
    visit("corrects", h.corrects);
}

template <class V, ValueOf<Poured> T>
void describe(V& visit, T& p) {
    visit("conditioner_ul", p.conditioner);
    visit("cleaner_ul", p.cleaner);
    visit("to_line", p.toLine);
}

template <class V, ValueOf<LevelReading> T>
void describe(V& visit, T& r) {
    visit("id", r.id);
    visit("person", r.person);
    visit("machine", r.levels.machine);
    visit("happened_at", r.levels.at);
    visit("conditioner_ul", r.levels.conditioner);
    visit("cleaner_ul", r.levels.cleaner);
    visit("waste_ul", r.levels.waste);
    visit("lanes_left", r.levels.lanesLeft);
    visit("volts_mv", r.levels.volts);
    visit("poured", r.poured);
    visit("emptied_ul", r.emptied);
    visit("corrects", r.corrects);
}

template <class V, ValueOf<TapeReading> T>
void describe(V& visit, T& r) {
    visit("id", r.id);
    visit("happened_at", r.at);
    visit("person", r.person);
    visit("machine", r.machine);
    visit("pattern", r.pattern);
    visit("pattern_version", r.patternVersion);
    visit("lane", r.lane);
    visit("lane_of_run", r.laneOfRun);
    visit("distance_um", r.distance);
    visit("milli_units", r.milliUnits);
    visit("note", r.note);
    visit("corrects", r.corrects);
}

template <class V, ValueOf<GeometryValue> T>
void describe(V& visit, T& g) {
    visit("feature", g.feature);
    visit("distance_um", g.distance);
    visit("departure_um", g.departure);
}

template <class V, ValueOf<Inspection> T>
void describe(V& visit, T& i) {
    visit("id", i.id);
    visit("happened_at", i.at);
    visit("person", i.person);
    visit("lane", i.lane);
    visit("geometry", i.values);
    visit("note", i.note);
    visit("corrects", i.corrects);
}

}  // namespace laneward
