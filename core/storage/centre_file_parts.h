// The members of the centre file in their order, for its writer and its reader.
#pragma once

#include "core/storage/centre_file.h"

namespace laneward {

inline constexpr auto centreFileFormat = "laneward-centre";

/// Visits every list of the file: visit("machines", file.season.centre.machines), …
template <class V, class File>
void eachList(V& visit, File& file) {
    visit("machines", file.season.centre.machines);
    visit("people", file.season.centre.people);
    visit("shifts", file.season.centre.shifts);
    visit("outages", file.season.centre.outages);
    visit("patterns", file.season.patterns);
    visit("pattern_versions", file.history.patternVersions);
    visit("series", file.season.series);
    visit("jobs", file.history.jobs);
    visit("runs", file.history.runs);
    visit("incidents", file.history.incidents);
    visit("hand_overs", file.history.handOvers);
    visit("readings", file.history.readings);
    visit("tape_readings", file.history.tapes);
    visit("inspections", file.history.inspections);
    visit("supplies", file.season.supplies);
    visit("suppliers", file.season.suppliers);
    visit("offers", file.season.offers);
    visit("orders", file.season.orders);
    visit("movements", file.history.movements);
    visit("stock_counts", file.history.counts);
    visit("service_items", file.season.items);
    visit("service_records", file.history.services);
    visit("meter_readings", file.history.counters);
    visit("pack_readings", file.history.packReadings);
    visit("attachments", file.history.attachments);
    visit("kept_forecasts", file.history.forecasts);
}

}  // namespace laneward
