#include "core/documents/sheet_words.h"

#include "core/documents/cautions.h"
#include "core/documents/pack_words.h"
#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

QByteArray ruleOf(const SheetStep& step) {
    switch (step.kind) {
        case SheetStep::Kind::Refill:
            return "sheet.refill";
        case SheetStep::Kind::EmptyWaste:
            return "sheet.empty-waste";
        case SheetStep::Kind::SwapPack:
            return "sheet.swap-pack";
        case SheetStep::Kind::Charge:
            return "sheet.charge";
        case SheetStep::Kind::Duty:
            return "sheet.duty";
        case SheetStep::Kind::Return:
            return "sheet.return";
        case SheetStep::Kind::Prepare:
        case SheetStep::Kind::Job:
        case SheetStep::Kind::CloseDown:
            break;
    }
    return step.rule;
}

}  // namespace

QString versionText(const JobSheet& sheet, const Speech& speech) {
    if (sheet.planVersion > 0)
        return say(QT_TRANSLATE_NOOP("wording", "Plan version %1")).arg(speech.locale.toString(sheet.planVersion));
    return say(QT_TRANSLATE_NOOP("wording", "Not confirmed yet"));
}

QString stepText(const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    const QString machine = step.job ? sheet.machineNames[*step.job] : QString();
    QString line = text(Finding{Severity::Note, ruleOf(step), machine, {}}, speech);
    QStringList duties;
    for (const size_t n : step.duties) {
        const Duty& duty = sheet.duties[n].duty;
        duties += say(QT_TRANSLATE_NOOP("wording", "%1 (%2)")).arg(shown(duty.name), durationText(minutes(duty.minutes), speech));
    }
    return duties.isEmpty() ? line : line + ": " + duties.join(", ");
}

QStringList dutyLines(const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    QStringList lines;
    for (const size_t n : step.duties) {
        const SheetDuty& due = sheet.duties[n];
        for (const QString& one : due.duty.steps)
            lines += shown(one);
        for (size_t part = 0; part < due.duty.parts.size(); ++part) {
            const Supply& supply = due.supplies[part];
            lines += say(QT_TRANSLATE_NOOP("wording", "takes %1: %2"))
                         .arg(shown(supply.name), amountText(due.duty.parts[part].amount, supply.kind, speech));
        }
        if (due.duty.skill != Skill::Anyone) lines += text(due.duty.skill);
    }
    return lines;
}

QString laneNumbers(const LaneSet& lanes, const Speech& speech) {
    if (speech.locale.textDirection() == Qt::LeftToRight) return lanes.text();
    return QChar(0x2066) + lanes.text() + QChar(0x2069);  // left-to-right isolate
}

QString lanesText(const Job& job, const Speech& speech) {
    const auto later = [](const LaneTime& a, const LaneTime& b) { return a.lane > b.lane; };
    const bool descending = job.lanes.size() > 1 && std::is_sorted(job.lanes.begin(), job.lanes.end(), later);
    const QString lanes = laneNumbers(job.laneSet(), speech);
    if (descending)
        return say(QT_TRANSLATE_NOOP("wording", "lanes %1, from lane %2 down")).arg(lanes).arg(job.lanes.front().lane);
    const char* form = job.lanes.size() == 1 ? QT_TRANSLATE_NOOP("wording", "lane %1") : QT_TRANSLATE_NOOP("wording", "lanes %1");
    return say(form).arg(lanes);
}

QString amountsText(const Job& job, const Speech& speech) {
    QStringList parts;
    if (conditions(job.treatment)) {
        parts += say(QT_TRANSLATE_NOOP("wording", "conditioner %1")).arg(amountText(job.use.conditionerTotal(), speech));
    }
    if (cleans(job.treatment)) {
        parts += say(QT_TRANSLATE_NOOP("wording", "cleaner %1")).arg(amountText(job.use.cleaner, speech));
        parts += say(QT_TRANSLATE_NOOP("wording", "waste %1")).arg(amountText(job.use.waste, speech));
    }
    return parts.join(", ");
}

QString slackText(const Job& job, const Speech& speech) {
    if (job.late > Seconds{0}) return say(QT_TRANSLATE_NOOP("wording", "LATE by %1")).arg(durationText(job.late, speech));
    if (job.slack < Seconds{0}) {
        return say(QT_TRANSLATE_NOOP("wording", "TIGHT: %1 of the reserve used")).arg(durationText(-job.slack, speech));
    }
    if (job.slack < minutes(1)) return say(QT_TRANSLATE_NOOP("wording", "nothing to spare"));
    return say(QT_TRANSLATE_NOOP("wording", "%1 to spare")).arg(durationText(minutes(job.slack.value / 60), speech));
}

QString neededByText(const Job& job, const Speech& speech) {
    QStringList events;
    for (const Need& need : job.neededBy)
        events += shown(need.title) + " " + clockTime(need.playBegins, speech);
    return events.isEmpty() ? QString() : say(QT_TRANSLATE_NOOP("wording", "for %1")).arg(events.join(", "));
}

QString progressText(const Job& job) {
    const bool ahead = job.state == JobState::Proposed || job.state == JobState::Confirmed;
    return ahead ? QString() : text(job.state);
}

std::vector<LevelLine> levelLines(const SheetReadiness& machine, const Speech& speech) {
    std::vector<LevelLine> lines;
    const Readiness& ready = machine.readiness;
    const auto tonight = [&speech](Microlitres a) {
        return say(QT_TRANSLATE_NOOP("wording", "tonight %1")).arg(amountText(a, speech));
    };
    for (size_t slot = 0; slot < machine.conditioners.size(); ++slot) {
        lines.push_back({shown(machine.conditioners[slot]), amountText(ready.now.conditioner[slot], speech),
                         tonight(ready.tonight.conditioner[slot])});
    }
    lines.push_back({shown(machine.cleaner), amountText(ready.now.cleaner, speech), tonight(ready.tonight.cleaner)});
    lines.push_back(
        {say(QT_TRANSLATE_NOOP("wording", "Waste")), amountText(ready.now.waste, speech), tonight(ready.tonight.waste)});
    lines.push_back({say(QT_TRANSLATE_NOOP("wording", "Lanes a charge")), speech.locale.toString(ready.now.lanesLeft),
                     say(QT_TRANSLATE_NOOP("wording", "tonight %1")).arg(speech.locale.toString(ready.tonight.laneRuns))});
    return lines;
}

QString voltsRule(const SheetReadiness& machine, const Speech& speech) {
    const VoltRule& rule = machine.readiness.limits;
    const auto limit = [&](const char* form, const VoltLimit& one) {
        return say(form).arg(voltsText(one.at, speech), text(one.state));
    };
    QStringList parts{limit(QT_TRANSLATE_NOOP("wording", "full at %1 %2"), rule.full)};
    if (rule.fit) parts += limit(QT_TRANSLATE_NOOP("wording", "fit to run at %1 %2"), *rule.fit);
    parts += limit(rule.hasSpare ? QT_TRANSLATE_NOOP("wording", "spare pack on below %1 %2")
                                 : QT_TRANSLATE_NOOP("wording", "to be charged below %1 %2"),
                   rule.spareBelow);
    return parts.join(QStringLiteral(", "));
}

QString measuredVoltsText(const MeasuredVolts& measured, const Speech& speech) {
    return say(QT_TRANSLATE_NOOP("wording", "%1 %2")).arg(voltsText(measured.volts, speech), text(measured.state));
}

QString readinessText(const Finding& finding, const Speech& speech) {
    const QString said = text(finding, speech);
    if (finding.rule != "readiness.overflow") return said;
    return said + ". " + text(Finding{Severity::Warning, "caution.waste", {}, {}}, speech);
}

QString overflowText(double chance, const Speech& speech) {
    constexpr double hardlyAny = 0.001;
    if (chance < hardlyAny) return say(QT_TRANSLATE_NOOP("wording", "the waste tank lasts, as far as is known"));
    const int decimals = chance < 0.1 ? 1 : 0;
    return say(QT_TRANSLATE_NOOP("wording", "the waste tank overflows with a chance of %1 %, unless it is emptied before"))
        .arg(speech.locale.toString(chance * 100, 'f', decimals));
}

QString shortfallText(const Shortfall& shortfall, const Speech& speech) {
    const char* form = shortfall.unmet ? QT_TRANSLATE_NOOP("wording", "UNMET: %1, %2, lanes %3 (%4)")
                                       : QT_TRANSLATE_NOOP("wording", "LATE: %1, %2, lanes %3 (%4)");
    QString line = say(form).arg(shown(shortfall.title), clockTime(shortfall.playBegins, speech),
                                 laneNumbers(shortfall.lanes, speech), text(shortfall.demand));
    if (shortfall.missing > Seconds{0}) {
        line += say(QT_TRANSLATE_NOOP("wording", ", %1 missing")).arg(durationText(shortfall.missing, speech));
    }
    return line;
}

QStringList shortfallDetails(const Shortfall& shortfall, const Speech& speech) {
    QStringList details;
    for (const Finding& reason : shortfall.reasons)
        details += text(reason, speech);
    for (const Remedy& remedy : shortfall.remedies) {
        const char* form =
            remedy.verified ? QT_TRANSLATE_NOOP("wording", "would help: %1") : QT_TRANSLATE_NOOP("wording", "might help: %1");
        details += say(form).arg(text(remedy.what, speech));
    }
    return details;
}

QString sourcesText(const JobSheet& sheet, const Speech& speech) {
    QStringList sources;
    for (const Caution& caution : cautions()) {
        const bool used = std::any_of(sheet.steps.begin(), sheet.steps.end(), [&caution](const SheetStep& step) {
            return std::any_of(step.cautions.begin(), step.cautions.end(),
                               [&caution](const Finding& f) { return f.rule == caution.rule; });
        });
        const QString source = QString::fromLatin1(caution.source);
        if (used && !source.startsWith("common")) sources += source;
    }
    if (sources.isEmpty()) return {};
    return text(Finding{Severity::Note, "caution.sources", sources.join("; "), {}}, speech);
}

}  // namespace laneward
