#include "core/documents/keys.h"
#include "core/documents/writers.h"
#include "core/planning/moves.h"

namespace laneward {

namespace {

QJsonObject objectiveJson(const Objective& o) {
    return {{"unmet", qint64(o.unmet)},
            {"late_s", qint64(o.late_s)},
            {"treatments", qint64(o.treatments)},
            {"overtime_s", qint64(o.overtime_s)},
            {"tight_s", qint64(o.tight_s)},
            {"outings", qint64(o.outings)},
            {"changes", qint64(o.changes)},
            {"lanes_crossed", qint64(o.lanes_crossed)},
            {"freshness_s", qint64(o.freshness_s)}};
}

/// The first component in which the value differs from its bound, and by how much.
QJsonValue gapJson(const DayPlan& day) {
    if (day.proven) return {};
    const QJsonObject value = objectiveJson(day.objective);
    const QJsonObject bound = objectiveJson(day.bound);
    for (const char* component :
         {"unmet", "late_s", "treatments", "overtime_s", "tight_s", "outings", "changes", "lanes_crossed", "freshness_s"}) {
        const qint64 above = value[QLatin1String(component)].toInteger() - bound[QLatin1String(component)].toInteger();
        if (above != 0) return QJsonObject{{"component", component}, {"above_bound", above}};
    }
    return QJsonObject{};
}

QJsonObject dayJson(const DayPlan& day, const Speech& speech) {
    QJsonArray outings;
    for (const Outing& outing : day.outings) {
        QJsonArray jobs;
        for (const JobId& job : outing.jobs)
            jobs.append(job.value);
        outings.append(QJsonObject{{"machine", outing.machine.value},
                                   {"outing", outing.number},
                                   {"start", isoTime(outing.time.begin, speech.zone)},
                                   {"end", isoTime(outing.time.end, speech.zone)},
                                   {"jobs", jobs}});
    }
    return {{"date", day.date.toString(Qt::ISODate)},
            {"objective", objectiveJson(day.objective)},
            {"proof", day.proven ? "proven" : "gap"},
            {"gap", gapJson(day)},
            {"size", day.size},
            {"outings", outings}};
}

/// `change` = after less before; null where something forbids the move, and then `reasons` say what.
QJsonArray movesJson(const Plan& plan, const State& state, const Job& job, const Speech& speech) {
    QJsonArray moves;
    for (const JobMove& move : movesOf(state, plan, job)) {
        moves.append(QJsonObject{{"by_s", qint64(move.by.value)},
                                 {"possible", move.possible},
                                 {"change", move.possible ? QJsonValue(objectiveJson(move.change)) : QJsonValue()},
                                 {"text", text(move.what, speech)},
                                 {"reasons", findingsJson(move.why, speech)}});
    }
    return moves;
}

}  // namespace

QJsonObject planJson(const Plan& plan, const State& state, const Speech& speech) {
    QJsonArray jobs;
    for (const Job& job : plan.jobs) {
        QJsonObject json = jobJson(job, speech);
        if (plan.range.days() <= daysExplained) json["moves"] = movesJson(plan, state, job, speech);
        jobs.append(json);
    }
    QJsonArray unmet;
    for (const Shortfall& shortfall : plan.unmet)
        unmet.append(shortfallJson(shortfall, speech));
    QJsonArray days;
    for (const DayPlan& day : plan.days)
        days.append(dayJson(day, speech));
    return {{"from", plan.range.first.toString(Qt::ISODate)},
            {"until", plan.range.last.toString(Qt::ISODate)},
            {"now", isoTime(plan.now, speech.zone)},
            {"jobs", jobs},
            {"unmet", unmet},
            {"days", days},
            {"findings", findingsJson(plan.findings, speech)}};
}

}  // namespace laneward
