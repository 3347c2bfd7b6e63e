#include "core/documents/keys.h"

namespace laneward {

namespace {

QJsonArray stepsJson(const Job& job, const Speech& speech) {
    QJsonArray list;
    for (const Step& step : job.steps) {
        QJsonObject object{{"kind", key(step.kind)},
                           {"start", isoTime(step.time.begin, speech.zone)},
                           {"end", isoTime(step.time.end, speech.zone)}};
        if (!step.lanes.isEmpty()) object["lanes"] = laneList(step.lanes);
        list.append(object);
    }
    return list;
}

QJsonArray neededByJson(const Job& job, const Speech& speech) {
    QJsonArray list;
    for (const Need& need : job.neededBy) {
        list.append(QJsonObject{{"series", need.series.value},
                                {"title", need.title},
                                {"start", isoTime(need.playBegins, speech.zone)},
                                {"lanes", laneList(need.lanes)}});
    }
    return list;
}

QJsonArray workingOrder(const Job& job) {
    QJsonArray lanes;
    for (const LaneTime& lane : job.lanes)
        lanes.append(lane.lane);
    return lanes;
}

}  // namespace

QJsonObject findingJson(const Finding& finding, const Speech& speech) {
    return {{"rule", QString::fromUtf8(finding.rule)},
            {"severity", key(finding.severity)},
            {"subject", finding.subject},
            {"text", text(finding, speech)}};
}

QJsonArray findingsJson(const std::vector<Finding>& findings, const Speech& speech) {
    QJsonArray list;
    for (const Finding& finding : findings)
        list.append(findingJson(finding, speech));
    return list;
}

QJsonObject jobJson(const Job& job, const Speech& speech) {
    return {{"id", job.id.value},
            {"state", key(job.state)},
            {"date", job.date.toString(Qt::ISODate)},
            {"machine", job.machine.value},
            {"outing", job.outing},
            {"start", isoTime(job.time.begin, speech.zone)},
            {"end", isoTime(job.time.end, speech.zone)},
            {"lanes", workingOrder(job)},
            {"pattern", job.pattern ? QJsonValue(job.pattern->value) : QJsonValue()},
            {"treatment", key(job.treatment)},
            {"steps", stepsJson(job, speech)},
            {"reasons", findingsJson(job.reasons, speech)},
            {"needed_by", neededByJson(job, speech)},
            {"slack_min", qint64(wholeMinutes(job.slack))},
            {"late_min", qint64(wholeMinutes(job.late + Seconds{59}))},
            {"conditioner_ul", qint64(job.use.conditionerTotal().value)},
            {"cleaner_ul", qint64(job.use.cleaner.value)},
            {"waste_ul", qint64(job.use.waste.value)},
            {"lane_runs", job.use.laneRuns},
            {"plan_version", job.planVersion}};
}

QJsonObject shortfallJson(const Shortfall& shortfall, const Speech& speech) {
    QJsonArray remedies;
    for (const Remedy& remedy : shortfall.remedies) {
        QJsonObject object = findingJson(remedy.what, speech);
        object["by_s"] = qint64(remedy.by.value);
        object["verified"] = remedy.verified;
        remedies.append(object);
    }
    return {{"series", shortfall.series.value},
            {"title", shortfall.title},
            {"start", isoTime(shortfall.playBegins, speech.zone)},
            {"lanes", laneList(shortfall.lanes)},
            {"demand", key(shortfall.demand)},
            {"unmet", shortfall.unmet},
            {"missing_s", qint64(shortfall.missing.value)},
            {"reasons", findingsJson(shortfall.reasons, speech)},
            {"remedies", remedies}};
}

}  // namespace laneward
