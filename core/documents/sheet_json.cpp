#include "core/documents/cautions.h"
#include "core/documents/keys.h"
#include "core/documents/sheet_words.h"
#include "core/documents/writers.h"

#include <cmath>

namespace laneward {

namespace {

QString kindKey(SheetStep::Kind kind) {
    switch (kind) {
        case SheetStep::Kind::Prepare:
            return "prepare";
        case SheetStep::Kind::Job:
            return "job";
        case SheetStep::Kind::Refill:
            return "refill";
        case SheetStep::Kind::EmptyWaste:
            return "empty-waste";
        case SheetStep::Kind::SwapPack:
            return "swap-pack";
        case SheetStep::Kind::Charge:
            return "charge";
        case SheetStep::Kind::Duty:
            return "duty";
        case SheetStep::Kind::Return:
            return "return";
        case SheetStep::Kind::CloseDown:
            return "close-down";
    }
    return {};
}

QJsonObject cautionJson(const Finding& caution, const Speech& speech) {
    const Caution known = cautionOf(caution.rule);
    return {{"rule", QString::fromUtf8(caution.rule)},
            {"text", text(caution, speech)},
            {"source", QString::fromLatin1(known.source)},
            {"source_read", QString::fromLatin1(known.read)}};
}

QJsonArray cautionsJson(const std::vector<Finding>& cautions, const Speech& speech) {
    QJsonArray list;
    for (const Finding& caution : cautions)
        list.append(cautionJson(caution, speech));
    return list;
}

QJsonObject readinessJson(const SheetReadiness& machine, const Speech& speech) {
    const Readiness& ready = machine.readiness;
    return {{"machine", machine.machine.value},
            {"name", machine.name},
            {"volts_mv", ready.volts ? QJsonValue(qint64(ready.volts->volts.value)) : QJsonValue()},
            {"volts_state", ready.volts ? QJsonValue(key(ready.volts->state)) : QJsonValue()},
            {"limits_of", ready.limits.pack.isEmpty() ? QJsonValue() : QJsonValue(ready.limits.pack.value)},
            {"full_at_mv", qint64(ready.limits.full.at.value)},
            {"full_state", key(ready.limits.full.state)},
            {"fit_at_mv", ready.limits.fit ? QJsonValue(qint64(ready.limits.fit->at.value)) : QJsonValue()},
            {"fit_state", ready.limits.fit ? QJsonValue(key(ready.limits.fit->state)) : QJsonValue()},
            {"attach_spare_at_mv", qint64(ready.limits.spareBelow.at.value)},
            {"attach_spare_state", key(ready.limits.spareBelow.state)},
            {"measured_at", ready.measuredAt ? QJsonValue(isoTime(*ready.measuredAt, speech.zone)) : QJsonValue()},
            {"conditioner_ul", qint64((ready.now.conditioner[0] + ready.now.conditioner[1]).value)},
            {"cleaner_ul", qint64(ready.now.cleaner.value)},
            {"waste_ul", qint64(ready.now.waste.value)},
            {"lanes_left", ready.now.lanesLeft},
            {"tonight_conditioner_ul", qint64(ready.tonight.conditionerTotal().value)},
            {"tonight_cleaner_ul", qint64(ready.tonight.cleaner.value)},
            {"tonight_waste_ul", qint64(ready.tonight.waste.value)},
            {"tonight_lane_runs", ready.tonight.laneRuns},
            {"findings", findingsJson(ready.findings, speech)}};
}

QJsonObject stepJson(const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    QJsonObject object{{"kind", kindKey(step.kind)}, {"cautions", cautionsJson(step.cautions, speech)}};
    if (step.startBy) object["start_by"] = isoTime({step.startBy->seconds / 60 * 60}, speech.zone);
    if (step.readyAt) object["ready_at"] = isoTime({(step.readyAt->seconds + 59) / 60 * 60}, speech.zone);
    if (step.job) object["job"] = sheet.jobs[*step.job].id.value;
    if (!step.machine.isEmpty()) object["machine"] = step.machine.value;
    if (step.kind != SheetStep::Kind::Job) object["text"] = stepText(sheet, step, speech);
    QJsonArray blanks;
    for (const QByteArray& blank : step.blanks)
        blanks.append(QString::fromUtf8(blank).remove("blank."));
    object["blanks"] = blanks;
    return object;
}

QJsonArray dutiesJson(const JobSheet& sheet, const Speech& speech) {
    QJsonArray list;
    for (const SheetDuty& due : sheet.duties) {
        QJsonArray parts;
        for (size_t n = 0; n < due.duty.parts.size(); ++n) {
            const PartNeed& part = due.duty.parts[n];
            parts.append(QJsonObject{{"supply", part.supply.value},
                                     {"amount_" + unitKey(due.supplies[n].kind), qint64(part.amount.value)}});
        }
        QJsonArray steps;
        for (const QString& step : due.duty.steps)
            steps.append(step);
        std::vector<Finding> cautions;
        for (const QByteArray& rule : due.duty.cautions)
            cautions.push_back({Severity::Warning, rule, {}, {}});
        list.append(QJsonObject{{"machine", due.machine.value},
                                {"item_name", due.item},
                                {"duty", due.duty.id.value},
                                {"name", due.duty.name},
                                {"minutes", due.duty.minutes},
                                {"steps", steps},
                                {"parts", parts},
                                {"cautions", cautionsJson(cautions, speech)}});
    }
    return list;
}

QJsonArray eventsJson(const JobSheet& sheet, const Speech& speech) {
    QJsonArray list;
    for (const SheetEvent& event : sheet.events) {
        list.append(QJsonObject{{"title", event.title},
                                {"start", isoTime(event.booked.begin, speech.zone)},
                                {"end", isoTime(event.booked.end, speech.zone)},
                                {"lanes", laneList(event.lanes)}});
    }
    return list;
}

}  // namespace

QJsonObject sheetJson(const JobSheet& sheet, const Speech& speech) {
    QJsonArray readiness, jobs, steps, shortfalls, notes;
    for (const SheetReadiness& machine : sheet.readiness)
        readiness.append(readinessJson(machine, speech));
    for (size_t n = 0; n < sheet.jobs.size(); ++n) {
        QJsonObject job = jobJson(sheet.jobs[n], speech);
        job["pattern_name"] = sheet.patternNames[n];
        job["machine_name"] = sheet.machineNames[n];
        const std::optional<double> chance = overflowOf(sheet, sheet.jobs[n]);
        job["overflow_permille"] = chance ? QJsonValue(qint64(std::llround(*chance * 1'000))) : QJsonValue();
        jobs.append(job);
    }
    for (const SheetStep& step : sheet.steps)
        steps.append(stepJson(sheet, step, speech));
    for (const Shortfall& shortfall : sheet.shortfalls)
        shortfalls.append(shortfallJson(shortfall, speech));
    for (const HandOver& note : sheet.handOvers) {
        notes.append(QJsonObject{{"at", isoTime(note.at, speech.zone)}, {"person", note.person.value}, {"text", note.text}});
    }
    return {{"centre", sheet.centre},
            {"date", sheet.date.toString(Qt::ISODate)},
            {"plan_version", sheet.planVersion},
            {"made_at", isoTime(sheet.madeAt, speech.zone)},
            {"readiness", readiness},
            {"jobs", jobs},
            {"steps", steps},
            {"unmet", shortfalls},
            {"duties", dutiesJson(sheet, speech)},
            {"cautions", cautionsJson(sheet.cautions, speech)},
            {"events", eventsJson(sheet, speech)},
            {"hand_overs", notes}};
}

}  // namespace laneward
