#include "core/documents/sheet_words.h"
#include "core/documents/text_page.h"
#include "core/documents/writers.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

QString head(const JobSheet& sheet, const Speech& speech) {
    return spread(shown(sheet.centre), say(QT_TRANSLATE_NOOP("wording", "Job sheet"))) +
           spread(dayText(sheet.date, speech), versionText(sheet, speech)) + QString(textColumns, '=') + "\n";
}

QString readinessPart(const JobSheet& sheet, const Speech& speech) {
    QString out = "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "Readiness")));
    for (const SheetReadiness& machine : sheet.readiness) {
        const auto& measured = machine.readiness.volts;
        const QString volts = measured ? measuredVoltsText(*measured, speech) + "  " : QString();
        out += padded(shown(machine.name), 24) + say(QT_TRANSLATE_NOOP("wording", "volts")) + " " + volts + "________\n" +
               wrapped(voltsRule(machine, speech), 4);
        std::vector<QStringList> rows;
        for (const LevelLine& line : levelLines(machine, speech))
            rows.push_back({line.name, line.now, line.tonight, "________"});
        out += table(rows, 4);
        for (const Finding& finding : machine.readiness.findings)
            out += wrapped(readinessText(finding, speech), 6, "    >");
    }
    return out;
}

QString eventsPart(const JobSheet& sheet, const Speech& speech) {
    if (sheet.events.empty()) return {};
    std::vector<QStringList> rows;
    for (const SheetEvent& event : sheet.events) {
        rows.push_back({clockTime(event.booked.begin, speech) + "-" + clockTime(event.booked.end, speech), event.lanes.text(),
                        shown(event.title)});
    }
    return "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "On the lanes"))) + table(rows, 2);
}

QString handOverPart(const JobSheet& sheet, const Speech& speech) {
    QString out;
    for (const HandOver& note : sheet.handOvers)
        out += wrapped(shown(note.text), 15, padded("  " + dateTimeText(note.at, speech), 15));
    return out.isEmpty() ? out : "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "From the shift before"))) + out;
}

QString box(const JobSheet& sheet, const SheetStep& step) {
    if (!step.job || step.kind != SheetStep::Kind::Job) return "[ ] ";
    switch (sheet.jobs[*step.job].state) {
        case JobState::Done:
            return "[x] ";
        case JobState::CutShort:
            return "[/] ";
        case JobState::Proposed:
        case JobState::Confirmed:
        case JobState::UnderWay:
        case JobState::Dropped:
            break;
    }
    return "[ ] ";
}

QString cautionLines(const SheetStep& step, const Speech& speech) {
    QString out;
    for (const Finding& caution : step.cautions)
        out += wrapped(text(caution, speech), 8, "      !");
    return out;
}

QString blankLine(const SheetStep& step, const Speech& speech) {
    QStringList blanks;
    for (const QByteArray& blank : step.blanks)
        blanks += text(Finding{Severity::Note, blank, {}, {}}, speech) + " ________";
    return blanks.isEmpty() ? QString() : "      " + blanks.join("   ") + "\n";
}

QString jobLines(const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    const Job& job = sheet.jobs[*step.job];
    QStringList what{shown(sheet.machineNames[*step.job]), lanesText(job, speech)};
    if (!sheet.patternNames[*step.job].isEmpty()) what += shown(sheet.patternNames[*step.job]);
    what += text(job.treatment);
    if (!progressText(job).isEmpty()) what += progressText(job).toUpper();
    QString out = box(sheet, step) +
                  say(QT_TRANSLATE_NOOP("wording", "start by %1, ready at %2"))
                      .arg(clockTime(*step.startBy, speech), clockTime(*step.readyAt, speech, true)) +
                  "\n" + wrapped(what.join(" | "), 6) + wrapped(amountsText(job, speech) + "; " + slackText(job, speech), 6);
    for (const Step& part : job.steps) {
        if (part.kind != StepKind::FirstPairTwice) continue;
        out += wrapped(say(QT_TRANSLATE_NOOP("wording", "work lanes %1 twice")).arg(part.lanes.text()), 6);
    }
    if (!neededByText(job, speech).isEmpty()) out += wrapped(neededByText(job, speech), 6);
    return out;
}

QString orderOfWork(const JobSheet& sheet, const Speech& speech) {
    QString out = "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "Order of work")));
    if (sheet.steps.empty()) return out + say(QT_TRANSLATE_NOOP("wording", "Nothing to run on this day.")) + "\n";
    bool closing = false;
    for (const SheetStep& step : sheet.steps) {
        if (step.kind == SheetStep::Kind::CloseDown && !closing) {
            out += "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "Closing down")));
            closing = true;
        }
        if (step.kind == SheetStep::Kind::Job) {
            out += jobLines(sheet, step, speech);
        } else {
            const QString time = step.startBy ? clockTime(*step.startBy, speech) + " " : QString();
            out += wrapped(time + stepText(sheet, step, speech), 4, "[ ]");
            for (const QString& line : dutyLines(sheet, step, speech))
                out += wrapped(line, 8, "      -");
        }
        out += cautionLines(step, speech) + blankLine(step, speech);
    }
    return out;
}

QString shortfallPart(const JobSheet& sheet, const Speech& speech) {
    if (sheet.shortfalls.empty()) return {};
    QString out = "\n" + heading(say(QT_TRANSLATE_NOOP("wording", "What cannot be met")));
    for (const Shortfall& shortfall : sheet.shortfalls) {
        out += wrapped(shortfallText(shortfall, speech), 2);
        for (const QString& detail : shortfallDetails(shortfall, speech))
            out += wrapped(detail, 6, "    -");
    }
    return out;
}

QString foot(const JobSheet& sheet, const Speech& speech) {
    QString out = sheet.cautions.empty() ? QString() : "\n";
    for (const Finding& caution : sheet.cautions)
        out += wrapped(text(caution, speech), 0);
    if (!sheet.cautions.empty()) out += wrapped(sourcesText(sheet, speech), 0);
    out += "\n" + say(QT_TRANSLATE_NOOP("wording", "Hand-over to the next shift:")) + "\n";
    for (int line = 0; line < 2; ++line)
        out += QString(textColumns, '_') + "\n";
    return out;
}

}  // namespace

QString sheetText(const JobSheet& sheet, const Speech& speech) {
    return head(sheet, speech) + shortfallPart(sheet, speech) + readinessPart(sheet, speech) + handOverPart(sheet, speech) +
           eventsPart(sheet, speech) + orderOfWork(sheet, speech) + foot(sheet, speech);
}

}  // namespace laneward
