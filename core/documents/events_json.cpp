#include "core/documents/keys.h"
#include "core/documents/writers.h"

namespace laneward {

namespace {

QJsonArray demandsJson(const std::vector<SurfaceDemand>& demands) {
    QJsonArray list;
    for (const SurfaceDemand& demand : demands) {
        list.append(QJsonObject{{"lanes", laneList(demand.lanes)},
                                {"demand", key(demand.kind)},
                                {"pattern", demand.pattern ? QJsonValue(demand.pattern->value) : QJsonValue()},
                                {"kind", key(demand.least)}});
    }
    return list;
}

QJsonObject conflictJson(const Conflict& conflict, const Occupancy& occupancy, const Speech& speech) {
    return {{"first", occupancy.occurrences[conflict.first].series.value},
            {"second", occupancy.occurrences[conflict.second].series.value},
            {"lanes", laneList(conflict.lanes)},
            {"start", isoTime(conflict.overlap.begin, speech.zone)},
            {"end", isoTime(conflict.overlap.end, speech.zone)}};
}

}  // namespace

QJsonObject eventsJson(const Occupancy& occupancy, const Speech& speech) {
    QJsonArray occurrences, conflicts;
    for (const Occurrence& event : occupancy.occurrences) {
        occurrences.append(QJsonObject{{"series", event.series.value},
                                       {"title", event.title},
                                       {"event_kind", key(event.kind)},
                                       {"start", isoTime(event.booked.begin, speech.zone)},
                                       {"end", isoTime(event.booked.end, speech.zone)},
                                       {"lanes", laneList(event.lanes)},
                                       {"demands", demandsJson(event.demands)}});
    }
    for (const Conflict& conflict : occupancy.conflicts)
        conflicts.append(conflictJson(conflict, occupancy, speech));
    return {{"occurrences", occurrences}, {"conflicts", conflicts}, {"findings", findingsJson(occupancy.findings, speech)}};
}

}  // namespace laneward
