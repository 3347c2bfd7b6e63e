// Fields of what is stocked: supplies, suppliers, price lists, orders, and the ledger. See fields.h.
//
// An amount is in the base unit of its supply (microlitres, millimetres, pieces: unitOf()), which only its row knows; money is
// whole minor units beside their currency.
#pragma once

#include "core/storage/fields.h"
#include "core/supplies/kept_forecast.h"

namespace laneward {

template <class V, ValueOf<Money> T>
void describe(V& visit, T& m) {
    visit("minor", m.minor);
    visit("currency", m.currency);
}

template <class V, ValueOf<StockRules> T>
void describe(V& visit, T& r) {
    visit("storage_limit", r.storageLimit);
    visit("shelf_life_days", r.shelfLifeDays);
    visit("service_level_permille", r.serviceLevelPermille);
    visit("holding_permille", r.holdingPermille);
}

template <class V, ValueOf<Supply> T>
void describe(V& visit, T& s) {
    visit("id", s.id);
    visit("name", s.name);
    visit("kind", s.kind);
    visit("water_parts", s.waterParts);
    visit("basis", s.basis);
    visit("usual_use", s.usualUse);
    visit("container", s.container);
    visit("rules", s.rules);
    visit("retired", s.retired);
    visit("note", s.note);
}

template <class V, ValueOf<Supplier> T>
void describe(V& visit, T& s) {
    visit("id", s.id);
    visit("name", s.name);
    visit("address", s.address);
    visit("freight", s.freight);
    visit("free_freight_from", s.freeFreightFrom);
    visit("minimum_order", s.minimumOrder);
    visit("order_weekdays", s.orderWeekdays);
    visit("usual_lead_days", s.usualLeadDays);
    visit("retired", s.retired);
    visit("note", s.note);
}

template <class V, ValueOf<PriceBreak> T>
void describe(V& visit, T& b) {
    visit("packs", b.packs);
    visit("each", b.each);
}

template <class V, ValueOf<Offer> T>
void describe(V& visit, T& o) {
    visit("id", o.id);
    visit("supplier", o.supplier);
    visit("supply", o.supply);
    visit("article", o.article);
    visit("pack", o.pack);
    visit("prices", o.prices);
    visit("retired", o.retired);
}

template <class V, ValueOf<OrderLine> T>
void describe(V& visit, T& l) {
    visit("supply", l.supply);
    visit("offer", l.offer);
    visit("article", l.article);
    visit("pack", l.pack);
    visit("packs", l.packs);
    visit("each", l.each);
}

template <class V, ValueOf<Order> T>
void describe(V& visit, T& o) {
    visit("id", o.id);
    visit("supplier", o.supplier);
    visit("number", o.number);
    visit("state", o.state);
    visit("person", o.person);
    visit("placed_on", o.placedOn);
    visit("lines", o.lines);
    visit("freight", o.freight);
    visit("note", o.note);
}

template <class V, ValueOf<StockKey> T>
void describe(V& visit, T& k) {
    visit("supply", k.supply);
    visit("place", k.place.kind);
    visit("machine", k.place.machine);
    visit("slot", k.place.slot);
    visit("container", k.container);
    visit("lot", k.lot);
}

template <class V, ValueOf<Entry> T>
void describe(V& visit, T& e) {
    describe(visit, e.key);
    visit("amount", e.amount);
}

template <class V, ValueOf<Movement> T>
void describe(V& visit, T& m) {
    visit("id", m.id);
    visit("kind", m.kind);
    visit("happened_at", m.at);
    visit("person", m.person);
    visit("reason", m.reason);
    visit("source", m.source);
    visit("source_id", m.sourceId);
    visit("corrects", m.corrects);
    visit("flagged", m.flagged);
    visit.child("entries", m.entries);
    visit("recorded_at", m.recordedAt);
}

template <class V, ValueOf<CountLine> T>
void describe(V& visit, T& l) {
    describe(visit, l.key);
    visit("counted", l.counted);
}

template <class V, ValueOf<StockCount> T>
void describe(V& visit, T& c) {
    visit("id", c.id);
    visit("happened_at", c.at);
    visit("person", c.person);
    visit("lines", c.lines);
    visit("note", c.note);
    visit("corrects", c.corrects);
}

template <class V, ValueOf<KeptUse> T>
void describe(V& visit, T& u) {
    visit("days", u.days);
    visit("use", u.use);
}

template <class V, ValueOf<KeptSupply> T>
void describe(V& visit, T& s) {
    visit("supply", s.supply);
    visit("horizons", s.horizons);
}

template <class V, ValueOf<KeptForecast> T>
void describe(V& visit, T& f) {
    visit("day", f.day);
    visit("supplies", f.supplies);
}

}  // namespace laneward
