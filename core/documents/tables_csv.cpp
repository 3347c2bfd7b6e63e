#include "core/documents/keys.h"
#include "core/documents/writers.h"

namespace laneward {

namespace {

CsvField words(const QString& text) { return {text, false}; }
CsvField number(std::int64_t n) { return {QString::number(n), true}; }

QByteArray header(const QStringList& names) {
    std::vector<CsvField> fields;
    for (const QString& name : names)
        fields.push_back(words(name));
    return csvRecord(fields);
}

QString titlesOf(const Job& job) {
    QStringList titles;
    for (const Need& need : job.neededBy)
        titles += need.title;
    return titles.join(", ");
}

std::vector<CsvField> jobFields(const Job& job, const QString& pattern, const QString& machine, const Speech& speech) {
    return {words(job.id.value),
            words(key(job.state)),
            words(job.date.toString(Qt::ISODate)),
            words(machine),
            number(job.outing),
            words(isoTime(job.time.begin, speech.zone)),
            words(isoTime(job.time.end, speech.zone)),
            words(job.laneSet().text()),
            words(pattern),
            words(key(job.treatment)),
            words(titlesOf(job)),
            number(wholeMinutes(job.slack)),
            number(wholeMinutes(job.late + Seconds{59})),
            number(job.use.conditionerTotal().value),
            number(job.use.cleaner.value),
            number(job.use.waste.value)};
}

QByteArray jobHeader() {
    return header({"id", "state", "date", "machine", "outing", "start", "end", "lanes", "pattern", "treatment", "needed_by",
                   "slack_min", "late_min", "conditioner_ul", "cleaner_ul", "waste_ul"});
}

}  // namespace

QByteArray sheetCsv(const JobSheet& sheet, const Speech& speech) {
    QByteArray out = jobHeader();
    for (size_t n = 0; n < sheet.jobs.size(); ++n) {
        out += csvRecord(jobFields(sheet.jobs[n], sheet.patternNames[n], sheet.machineNames[n], speech));
    }
    return out;
}

QByteArray planCsv(const Plan& plan, const Speech& speech) {
    QByteArray out = jobHeader();
    for (const Job& job : plan.jobs) {
        out += csvRecord(jobFields(job, job.pattern ? job.pattern->value : QString(), job.machine.value, speech));
    }
    return out;
}

QByteArray eventsCsv(const Occupancy& occupancy, const Speech& speech) {
    QByteArray out =
        header({"series", "title", "event_kind", "start", "end", "lanes", "demand_lanes", "demand", "pattern", "kind"});
    for (const Occurrence& event : occupancy.occurrences) {
        std::vector<SurfaceDemand> demands = event.demands;
        if (demands.empty()) demands.push_back({event.lanes, DemandKind::AsItIs, {}, {}, {}, {}});
        for (const SurfaceDemand& demand : demands) {
            out += csvRecord({words(event.series.value), words(event.title), words(key(event.kind)),
                              words(isoTime(event.booked.begin, speech.zone)), words(isoTime(event.booked.end, speech.zone)),
                              words(event.lanes.text()), words(demand.lanes.text()), words(key(demand.kind)),
                              words(demand.pattern ? demand.pattern->value : QString()), words(key(demand.least))});
        }
    }
    return out;
}

}  // namespace laneward
