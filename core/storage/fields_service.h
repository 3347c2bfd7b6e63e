// Fields of what is serviced, and of records of it. See fields.h.
#pragma once

#include "core/service/attachment.h"
#include "core/storage/fields_supplies.h"

namespace laneward {

template <class V, ValueOf<Trigger> T>
void describe(V& visit, T& t) {
    visit("meter", t.meter);
    visit("every", t.every);
}

template <class V, ValueOf<PartNeed> T>
void describe(V& visit, T& p) {
    visit("supply", p.supply);
    visit("amount", p.amount);
}

template <class V, ValueOf<Duty> T>
void describe(V& visit, T& d) {
    visit("id", d.id);
    visit("kind", d.kind);
    visit("name", d.name);
    visit("triggers", d.triggers);
    visit("dates", d.dates);
    visit("steps", d.steps);
    visit("minutes", d.minutes);
    visit("opens_up", d.opensUp);
    visit("parts", d.parts);
    visit("skill", d.skill);
    visit("cautions", d.cautions);
    visit("planned", d.planned);
    visit("failed", d.failed);
}

template <class V, ValueOf<VoltLimit> T>
void describe(V& visit, T& l) {
    visit("volts_mv", l.at);
    visit("state", l.state);
}

template <class V, ValueOf<PackLimits> T>
void describe(V& visit, T& p) {
    visit("chemistry", p.kind.chemistry);
    visit("nominal_mv", p.kind.nominal);
    visit("full", p.full);
    visit("fit", p.fit);
    visit("spare_below", p.spareBelow);
}

template <class V, ValueOf<ServiceItem> T>
void describe(V& visit, T& i) {
    visit("id", i.id);
    visit("machine", i.machine);
    visit("kind", i.kind);
    visit("name", i.name);
    visit("duties", i.duties);
    visit("pack", i.pack);
    visit("note", i.note);
    visit("retired", i.retired);
}

template <class V, ValueOf<Meters> T>
void describe(V& visit, T& m) {
    visit("lanes", m.lanes);
    visit("runs", m.runs);
    visit("seconds", m.work);
    visit("volume_ul", m.volume);
}

template <class V, ValueOf<PartUsed> T>
void describe(V& visit, T& p) {
    visit("supply", p.supply);
    visit("amount", p.amount);
    visit("lot", p.lot);
}

template <class V, ValueOf<ServiceRecord> T>
void describe(V& visit, T& r) {
    visit("id", r.id);
    visit("happened_at", r.at);
    visit("person", r.person);
    visit("item", r.item);
    visit("duty", r.duty);
    visit("meters", r.meters);
    visit("result", r.result);
    visit("parts", r.parts);
    visit("cost", r.cost);
    visit("minutes", r.minutes);
    visit("finding", r.finding);
    visit("note", r.note);
    visit("corrects", r.corrects);
}

template <class V, ValueOf<MeterReading> T>
void describe(V& visit, T& r) {
    visit("id", r.id);
    visit("happened_at", r.at);
    visit("person", r.person);
    visit("machine", r.machine);
    visit("meter", r.meter);
    visit("shown", r.shown);
    visit("replaced", r.replaced);
    visit("withdrawn", r.withdrawn);
    visit("note", r.note);
    visit("corrects", r.corrects);
}

template <class V, ValueOf<PackReading> T>
void describe(V& visit, T& r) {
    visit("id", r.id);
    visit("happened_at", r.at);
    visit("person", r.person);
    visit("pack", r.pack);
    visit("deed", r.deed);
    visit("volts_mv", r.volts);
    visit("state", r.state);
    visit("spent", r.spent);
    visit("withdrawn", r.withdrawn);
    visit("note", r.note);
    visit("corrects", r.corrects);
}

template <class V, ValueOf<Attachment> T>
void describe(V& visit, T& a) {
    visit("id", a.id);
    visit("happened_at", a.at);
    visit("person", a.person);
    visit("record", a.record);
    visit("name", a.name);
    visit("type", a.type);
    visit("size", a.size);
    visit("sha256", a.sha256);
    visit("withdrawn", a.withdrawn);
    visit("corrects", a.corrects);
}

}  // namespace laneward
