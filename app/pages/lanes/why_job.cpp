#include "app/pages/lanes/why_text.h"

#include "core/documents/wording_jobs.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WhyText)
};

QString spanText(const Span& span, const Speech& speech) {
    return Words::tr("%1 to %2").arg(clockTime(span.begin, speech), clockTime(span.end, speech));
}

QString lanesText(const LaneSet& lanes) {
    return (lanes.count() == 1 ? Words::tr("lane %1") : Words::tr("lanes %1")).arg(lanes.text());
}

/// The clock, with the weekday when it is not the job's own day.
QString playText(Instant t, const Job& job, const HouseSource& source) {
    const QDate day = dateOf(source.season.centre, t);
    const QString clock = clockTime(t, source.speech);
    return day == job.date ? clock : source.speech.locale.toString(day, QStringLiteral("ddd ")) + clock;
}

WhySection neededBy(const HouseSource& source, const Job& job) {
    WhySection section{Words::tr("Needed by"), {}};
    for (const Need& need : job.neededBy) {
        section.rows.push_back({playText(need.playBegins, job, source),
                                QStringLiteral("%1 · %2").arg(shown(need.title), lanesText(need.lanes)), false});
    }
    if (section.rows.empty())
        section.rows.push_back({{}, Words::tr("No event on record: it was run or confirmed for itself."), false});
    return section;
}

QString slackText(const Job& job, const Speech& speech) {
    if (job.late.value > 0) return Words::tr("%1 late in all").arg(durationText(job.late, speech));
    if (job.slack.value < 0) return Words::tr("tight by %1").arg(durationText(-job.slack, speech));
    if (job.slack.value < 60) return Words::tr("no time to spare");
    return Words::tr("%1 to spare").arg(durationText(job.slack, speech));
}

WhySection place(const HouseSource& source, const Job& job) {
    WhySection section{Words::tr("Why here"), {}};
    const Machine* machine = findMachine(source.season.centre, job.machine);
    if (machine) section.rows.push_back({Words::tr("Machine"), shown(machine->name), false});
    section.rows.push_back({Words::tr("Works"), spanText(job.time, source.speech), false});
    if (!job.window.isEmpty()) section.rows.push_back({Words::tr("Could work"), spanText(job.window, source.speech), false});
    for (const Finding& reason : job.reasons)
        section.rows.push_back({{}, text(reason, source.speech), false});
    section.rows.push_back({Words::tr("Slack"), slackText(job, source.speech), true});
    return section;
}

/// Levels after the job: what is in the machine now, less what the jobs up to it take, with its refills counted as full tanks.
struct Levels {
    Microlitres conditioner;
    Microlitres cleaner;
    Microlitres waste;
    int lanesLeft = 0;
};

Levels levelsAfter(const HouseSource& source, const Job& job, const Readiness& ready, const Machine& machine) {
    Levels levels{ready.now.conditioner[0] + ready.now.conditioner[1], ready.now.cleaner, ready.now.waste, ready.now.lanesLeft};
    for (const Job& other : source.plan.jobs) {
        const bool ahead = other.state == JobState::Proposed || other.state == JobState::Confirmed;
        if (other.machine != job.machine || !ahead || other.time.begin > job.time.begin) continue;
        for (const Step& step : other.steps) {
            if (step.kind == StepKind::Refill) {
                levels.conditioner = machine.capacity.conditioner[0] + machine.capacity.conditioner[1];
                levels.cleaner = machine.capacity.cleaner;
            }
            if (step.kind == StepKind::EmptyWaste) levels.waste = {};
            if (step.kind == StepKind::SwapPack || step.kind == StepKind::Charge)
                levels.lanesLeft = machine.capacity.lanesPerCharge;
        }
        levels.conditioner -= other.use.conditionerTotal();
        levels.cleaner -= other.use.cleaner;
        levels.waste += other.use.waste;
        levels.lanesLeft -= other.use.laneRuns;
    }
    return levels;
}

WhySection takes(const HouseSource& source, const Job& job, const std::vector<Readiness>& readiness) {
    WhySection section{Words::tr("Takes"), {}};
    const Speech& speech = source.speech;
    section.rows.push_back({Words::tr("Conditioner"), amountText(job.use.conditionerTotal(), speech), true});
    section.rows.push_back({Words::tr("Cleaner"), amountText(job.use.cleaner, speech), true});
    section.rows.push_back({Words::tr("Waste"), amountText(job.use.waste, speech), true});
    section.rows.push_back({Words::tr("Pack"), Words::tr("%n lane(s)", nullptr, job.use.laneRuns), true});
    const Machine* machine = findMachine(source.season.centre, job.machine);
    const auto ready =
        std::find_if(readiness.begin(), readiness.end(), [&](const Readiness& r) { return r.machine == job.machine; });
    const bool ahead = job.state == JobState::Proposed || job.state == JobState::Confirmed;
    const bool today = dateOf(source.season.centre, source.plan.now) == job.date;
    if (!machine || ready == readiness.end() || !ahead || !today) return section;
    const Levels after = levelsAfter(source, job, *ready, *machine);
    section.rows.push_back({Words::tr("Conditioner after"), amountText(after.conditioner, speech), false});
    section.rows.push_back({Words::tr("Cleaner after"), amountText(after.cleaner, speech), false});
    section.rows.push_back({Words::tr("Waste after"), amountText(after.waste, speech), false});
    section.rows.push_back({Words::tr("Pack after"), Words::tr("%n lane(s) left", nullptr, after.lanesLeft), false});
    return section;
}

WhySection stepsOf(const Job& job, const Speech& speech) {
    WhySection section{Words::tr("Steps"), {}};
    for (const Step& step : job.steps) {
        const QString lanes = step.lanes.isEmpty() ? QString() : QStringLiteral(" · ") + lanesText(step.lanes);
        section.rows.push_back({clockTime(step.time.begin, speech), text(step.kind) + lanes, false});
    }
    return section;
}

}  // namespace

WhyText whyJob(const HouseSource& source, const Job& job, const std::vector<Readiness>& readiness,
               const std::vector<JobMove>& moves) {
    WhyText why;
    QStringList title{text(job.treatment)};
    if (job.pattern) title << patternName(job.pattern, source.season.patterns);
    title << lanesText(job.laneSet());
    why.title = title.join(QStringLiteral(" · "));
    WhySection state{{}, {{Words::tr("State"), text(job.state), true}}};
    if (job.planVersion > 0) state.rows.push_back({Words::tr("On sheet"), QString::number(job.planVersion), false});
    why.sections = {state, neededBy(source, job), place(source, job)};
    if (!moves.empty()) {
        why.sections.push_back({Words::tr("If the outing moved"), {}});
        for (const JobMove& move : moves)
            why.sections.back().rows.push_back({{}, text(move, source.speech), false});
    }
    why.sections.push_back(takes(source, job, readiness));
    why.sections.push_back(stepsOf(job, source.speech));
    return why;
}

}  // namespace laneward
