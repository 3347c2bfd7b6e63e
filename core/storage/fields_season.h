// Fields of what is asked and what is planned: series and confirmed jobs. See fields.h.
#pragma once

#include "core/storage/fields.h"

namespace laneward {

template <class V, ValueOf<SurfaceDemand> T>
void describe(V& visit, T& d) {
    visit("lanes", d.lanes);
    visit("kind", d.kind);
    visit("pattern", d.pattern);
    visit("least", d.least);
    visit("longest_age_s", d.longestAge);
    visit("longest_play_s", d.longestPlay);
}

template <class V, ValueOf<Override> T>
void describe(V& visit, T& o) {
    visit("original", o.original);
    visit("cancelled", o.cancelled);
    visit("start", o.start);
    visit("duration_s", o.duration);
    visit("title", o.title);
    visit("lanes", o.lanes);
}

template <class V, ValueOf<Series> T>
void describe(V& visit, T& s) {
    visit("id", s.id);
    visit("uid", s.uid);
    visit("title", s.title);
    visit("kind", s.kind);
    visit("zone", s.zone);
    visit("starts", s.start);
    visit("duration_s", s.duration);
    visit("rule", s.rule);
    visit("extra_dates", s.extraDates);
    visit("excluded_dates", s.excludedDates);
    visit("overrides", s.overrides);
    visit("lanes", s.lanes);
    visit("demands", s.demands);
    visit("settle_s", s.settle);
    visit("clearing_s", s.clearing);
    visit("first_pair_twice", s.firstPairTwice);
    visit("yields_to_closure", s.yieldsToClosure);
    visit("no_staff", s.noStaff);
    visit("cancelled", s.cancelled);
    visit("players", s.players);
    visit("note", s.note);
}

template <class V, ValueOf<Step> T>
void describe(V& visit, T& s) {
    visit("kind", s.kind);
    visit("begins", s.time.begin);
    visit("ends", s.time.end);
    visit("lanes", s.lanes);
}

template <class V, ValueOf<Need> T>
void describe(V& visit, T& n) {
    visit("series", n.series);
    visit("original", n.original);
    visit("title", n.title);
    visit("play_begins", n.playBegins);
    visit("lanes", n.lanes);
}

template <class V, ValueOf<Job> T>
void describe(V& visit, T& j) {
    visit("id", j.id);
    visit("state", j.state);
    visit("day", j.date);
    visit("machine", j.machine);
    visit("outing", j.outing);
    visit("begins", j.time.begin);
    visit("ends", j.time.end);
    visit("treatment", j.treatment);
    visit("pattern", j.pattern);
    visit("lanes", j.lanes);
    visit("steps", j.steps);
    visit("needed_by", j.neededBy);
    visit("reasons", j.reasons);
    visit("earliest", j.window.begin);
    visit("latest", j.window.end);
    visit("slack_s", j.slack);
    visit("late_s", j.late);
    visit("used", j.use);
    visit("plan_version", j.planVersion);
    visit("person", j.person);
}

}  // namespace laneward
