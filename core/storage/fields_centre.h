// Fields of what a centre is: settings, machines, people, shifts, outages, patterns. See fields.h.
#pragma once

#include "core/storage/fields.h"

namespace laneward {

template <class V, ValueOf<Settings> T>
void describe(V& visit, T& s) {
    visit("pair_partner_rule", s.pairPartnerRule);
    visit("reserve_s", s.reserve);
    visit("settle_s", s.settle);
    visit("clearing_s", s.clearing);
    visit("longest_age_s", s.longestAge);
    visit("day_begins", s.dayBegins);
    visit("units", s.units);
    visit("letter_paper", s.letterPaper);
    visit("currency", s.currency);
}

template <class V, ValueOf<ReadingLimits> T>
void describe(V& visit, T& l) {
    visit("lowest_milli_units", l.lowestMilliUnits);
    visit("largest_error_milli_units", l.largestErrorMilliUnits);
    visit("least_track_permille", l.leastTrackPermille);
    visit("most_track_permille", l.mostTrackPermille);
}

template <class V, ValueOf<CentreFacts> T>
void describe(V& visit, T& c) {
    visit("id", c.id);
    visit("name", c.name);
    visit("zone", c.zone);
    visit("lanes", c.lanes);
    visit("settings", c.settings);
    visit("reading_limits", c.readingLimits);
}

template <class V, ValueOf<Bars> T>
void describe(V& visit, T& b) {
    visit("lanes", b.lanes);
    visit("patterns", b.patterns);
    visit("treatments", b.treatments);
}

template <class V, ValueOf<MachineTimes> T>
void describe(V& visit, T& t) {
    visit("lane_s", t.lane);
    visit("per_ten_feet_s", t.perTenFeet);
    visit("next_lane_s", t.nextLane);
    visit("cross_lane_s", t.crossLane);
    visit("leave_bay_s", t.leaveBay);
    visit("return_to_bay_s", t.returnToBay);
    visit("refill_s", t.refill);
    visit("empty_waste_s", t.emptyWaste);
    visit("swap_pack_s", t.swapPack);
    visit("charge_s", t.charge);
    visit("duty_s", t.duty);
}

template <class V, ValueOf<MachineCapacity> T>
void describe(V& visit, T& c) {
    visit("conditioner_ul", c.conditioner);
    visit("cleaner_ul", c.cleaner);
    visit("waste_ul", c.waste);
    visit("cleaner_per_lane_ul", c.cleanerPerLane);
    visit("waste_per_lane_ul", c.wastePerLane);
    visit("conditioner_permille", c.conditionerPermille);
    visit("lanes_per_charge", c.lanesPerCharge);
    visit("spare_packs", c.sparePacks);
    visit("lanes_until_duty", c.lanesUntilDuty);
}

template <class V, ValueOf<Machine> T>
void describe(V& visit, T& m) {
    visit("id", m.id);
    visit("name", m.name);
    visit("attended", m.attended);
    visit("bars", m.bars);
    visit("times", m.times);
    visit("capacity", m.capacity);
    visit("full_at_mv", m.fullAt);
    visit("attach_spare_at_mv", m.attachSpareAt);
    visit("conditioners", m.conditioners);
    visit("cleaner", m.cleaner);
    visit("carry_length_um", m.carryLength);
    visit("weight_g", m.weight);
}

template <class V, ValueOf<Person> T>
void describe(V& visit, T& p) {
    visit("id", p.id);
    visit("name", p.name);
    visit("role", p.role);
    visit("active", p.active);
}

template <class V, ValueOf<Shift> T>
void describe(V& visit, T& s) {
    visit("id", s.id);
    visit("name", s.name);
    visit("weekdays", s.weekdays);
    visit("begins", s.begin);
    visit("ends", s.end);
    visit("people", s.people);
    visit("overtime_before_s", s.overtimeBefore);
    visit("overtime_after_s", s.overtimeAfter);
    visit("days_off", s.daysOff);
    visit("extra_days", s.extraDays);
}

template <class V, ValueOf<Outage> T>
void describe(V& visit, T& o) {
    visit("id", o.id);
    visit("lanes", o.lanes);
    visit("machine", o.machine);
    visit("begins", o.begin);
    visit("ends", o.end);
    visit("note", o.note);
}

template <class V, ValueOf<Stroke> T>
void describe(V& visit, T& s) {
    visit("direction", s.direction);
    visit("first_board", s.firstBoard);
    visit("last_board", s.lastBoard);
    visit("laps", s.laps);
    visit("dose_ul", s.dose);
    visit("from_um", s.from);
    visit("to_um", s.to);
    visit("slot", s.slot);
}

template <class V, ValueOf<Pattern> T>
void describe(V& visit, T& p) {
    visit("id", p.id);
    visit("name", p.name);
    visit("strokes", p.strokes);
    visit("end_um", p.end);
    visit("clean_whole_lane", p.cleanWholeLane);
    visit("note", p.note);
    visit("retired", p.retired);
    visit("edition", p.edition);
}

template <class V, ValueOf<PatternVersion> T>
void describe(V& visit, T& v) {
    visit("pattern", v.pattern.id);
    visit("edition", v.pattern.edition);
    visit("name", v.pattern.name);
    visit("strokes", v.pattern.strokes);
    visit("end_um", v.pattern.end);
    visit("clean_whole_lane", v.pattern.cleanWholeLane);
    visit("note", v.pattern.note);
    visit("since", v.since);
    visit("person", v.person);
}

}  // namespace laneward
