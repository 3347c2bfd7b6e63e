#include "core/documents/guide_words.h"

#include "core/documents/service_words.h"
#include "core/documents/sheet_words.h"
#include "core/documents/stock_words.h"
#include "core/season/waste_past.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

const SheetReadiness* readinessOf(const JobSheet& sheet, const MachineId& machine) {
    const auto found = std::find_if(sheet.readiness.begin(), sheet.readiness.end(),
                                    [&machine](const SheetReadiness& entry) { return entry.machine == machine; });
    return found == sheet.readiness.end() ? nullptr : &*found;
}

QString machineName(const JobSheet& sheet, const MachineId& machine) {
    const SheetReadiness* entry = readinessOf(sheet, machine);
    return entry ? entry->name : machine.value;
}

QString jobTitle(const JobSheet& sheet, size_t index, const Speech& speech) {
    const Job& job = sheet.jobs[index];
    QString lanes = lanesText(job, speech);
    if (!lanes.isEmpty()) lanes[0] = lanes[0].toUpper();
    const QString what = say(QT_TRANSLATE_NOOP("wording", "%1: %2")).arg(lanes, text(job.treatment));
    const QString& pattern = sheet.patternNames[index];
    return pattern.isEmpty() ? what : say(QT_TRANSLATE_NOOP("wording", "%1, %2")).arg(what, shown(pattern));
}

QString dutyTitle(const JobSheet& sheet, const GuideStep& step) {
    const SheetDuty& due = sheet.duties[*step.duty];
    return step.lines == 0 ? shown(due.duty.name) : shown(due.duty.steps[size_t(step.line)]);
}

QStringList tonight(const JobSheet& sheet, const Speech& speech) {
    QStringList lines;
    for (const SheetEvent& event : sheet.events) {
        lines += say(QT_TRANSLATE_NOOP("wording", "%1 to %2, lanes %3: %4"))
                     .arg(clockTime(event.booked.begin, speech), clockTime(event.booked.end, speech),
                          laneNumbers(event.lanes, speech), shown(event.title));
    }
    for (const Shortfall& shortfall : sheet.shortfalls)
        lines += shortfallText(shortfall, speech);
    for (const HandOver& note : sheet.handOvers)
        lines += say(QT_TRANSLATE_NOOP("wording", "Note: %1")).arg(note.text);
    return lines;
}

QStringList jobDetails(const JobSheet& sheet, const GuideStep& step, const Speech& speech) {
    const Job& job = sheet.jobs[*step.step.job];
    QStringList lines{shown(sheet.machineNames[*step.step.job])};
    if (!progressText(job).isEmpty()) lines.front() += ", " + progressText(job);
    for (const Step& part : job.steps) {
        if (part.kind == StepKind::FirstPairTwice)
            lines += say(QT_TRANSLATE_NOOP("wording", "work lanes %1 twice")).arg(part.lanes.text());
    }
    if (!neededByText(job, speech).isEmpty()) lines += neededByText(job, speech);
    lines += amountsText(job, speech);
    if (isAhead(job)) lines += slackText(job, speech);
    if (const std::optional<double> chance = overflowOf(sheet, job); chance && *chance > worthSaying)
        lines += QStringLiteral("! ") + overflowText(*chance, speech) + ". " +
                 text(Finding{Severity::Warning, "caution.waste", {}, {}}, speech);
    return lines;
}

QStringList dutyDetails(const JobSheet& sheet, const GuideStep& step, const Speech& speech) {
    const SheetDuty& due = sheet.duties[*step.duty];
    QStringList lines{say(QT_TRANSLATE_NOOP("wording", "%1: %2, %3"))
                          .arg(shown(machineName(sheet, due.machine)), shown(due.item), shown(due.duty.name))};
    if (step.lines > 1) lines += say(QT_TRANSLATE_NOOP("wording", "step %1 of %2")).arg(step.line + 1).arg(step.lines);
    lines += durationText(minutes(due.duty.minutes), speech);
    for (size_t part = 0; part < due.duty.parts.size(); ++part) {
        const Supply& supply = due.supplies[part];
        lines += say(QT_TRANSLATE_NOOP("wording", "takes %1: %2"))
                     .arg(shown(supply.name), amountText(due.duty.parts[part].amount, supply.kind, speech));
    }
    if (due.duty.skill != Skill::Anyone) lines += text(due.duty.skill);
    return lines;
}

QStringList levelDetails(const SheetReadiness& machine, const Speech& speech) {
    QStringList lines;
    for (const LevelLine& line : levelLines(machine, speech))
        lines += say(QT_TRANSLATE_NOOP("wording", "%1: about %2, %3")).arg(line.name, line.now, line.tonight);
    return lines;
}

}  // namespace

QString titleOf(const GuideStep& step, const JobSheet& sheet, const Speech& speech) {
    if (step.deed == GuideDeed::Run) return jobTitle(sheet, *step.step.job, speech);
    if (step.duty) return dutyTitle(sheet, step);
    if (step.step.job) return stepText(sheet, step.step, speech);
    const QString machine = step.step.machine.isEmpty() ? QString() : machineName(sheet, step.step.machine);
    return text(Finding{Severity::Note, step.step.rule, machine, {}}, speech);
}

QStringList detailsOf(const GuideStep& step, const JobSheet& sheet, const Speech& speech) {
    QStringList lines;
    if (step.step.startBy) {
        const QString begin = clockTime(*step.step.startBy, speech);
        lines += step.step.readyAt ? say(QT_TRANSLATE_NOOP("wording", "start by %1, ready at %2"))
                                         .arg(begin, clockTime(*step.step.readyAt, speech, true))
                                   : begin;
    }
    if (step.step.rule == "guide.look-ahead") lines += tonight(sheet, speech);
    if (step.deed == GuideDeed::Run) lines += jobDetails(sheet, step, speech);
    if (step.duty) lines += dutyDetails(sheet, step, speech);
    const SheetReadiness* machine = readinessOf(sheet, step.step.machine);
    if (!machine) return lines;
    if (step.deed == GuideDeed::Volts) lines += voltsRule(*machine, speech);
    if (step.deed == GuideDeed::Levels) lines += levelDetails(*machine, speech);
    return lines;
}

QStringList cautionsOf(const GuideStep& step, const Speech& speech) {
    QStringList lines;
    for (const Finding& caution : step.step.cautions)
        lines += text(caution, speech);
    if (!lines.isEmpty()) lines += text(Finding{Severity::Note, "caution.defer", {}, {}}, speech);
    return lines;
}

QString changeText(const GuideChange& change) {
    QStringList parts;
    if (change.added > 0) parts += say(QT_TRANSLATE_N_NOOP("wording", "%n step(s) new"), change.added);
    if (change.gone > 0) parts += say(QT_TRANSLATE_N_NOOP("wording", "%n step(s) gone"), change.gone);
    if (change.moved > 0) parts += say(QT_TRANSLATE_N_NOOP("wording", "%n step(s) at another time"), change.moved);
    if (parts.isEmpty()) return {};
    return say(QT_TRANSLATE_NOOP("wording", "The plan has changed: %1. What is done stays done.")).arg(parts.join(", "));
}

QString lineOf(const GuideTick& tick, const JobSheet& sheet, const Speech& speech) {
    if (!tick.line.isEmpty()) return tick.line;
    for (size_t n = 0; n < sheet.jobs.size(); ++n) {
        if (sheet.jobs[n].id == tick.job) return jobTitle(sheet, n, speech);
    }
    return {};
}

}  // namespace laneward
