#include "core/documents/sheet_words.h"
#include "core/documents/text_page.h"
#include "core/documents/wording_jobs.h"
#include "core/documents/writers.h"

#include <QCoreApplication>

#include <map>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

QString patternName(const State& state, const std::optional<PatternId>& id) {
    if (!id) return {};
    const Pattern* pattern = findPattern(state.patterns, *id);
    return shown(pattern ? pattern->name : id->value);
}

QString machineName(const State& state, const MachineId& id) {
    const Machine* machine = findMachine(state.centre, id);
    return shown(machine ? machine->name : id.value);
}

QString dayJobs(const Plan& plan, const DayPlan& day, const State& state, const Speech& speech) {
    std::vector<QStringList> rows;
    for (const Job& job : plan.jobs) {
        if (job.date != day.date) continue;
        rows.push_back({clockTime(job.time.begin, speech) + "-" + clockTime(job.time.end, speech, true),
                        machineName(state, job.machine), lanesText(job, speech), patternName(state, job.pattern),
                        text(job.treatment), text(job.state)});
    }
    return table(rows, 2);
}

/// Each job again, with its room, what fixes its place and what it would cost to move its outing. Jobs of one outing move
/// together: what the job before has said of that is not said again.
QString dayReasons(const Plan& plan, const DayPlan& day, const State& state, const Speech& speech) {
    QString out;
    std::map<std::pair<MachineId, int>, QStringList> told;
    for (const Job& job : plan.jobs) {
        if (job.date != day.date) continue;
        out += wrapped(clockTime(job.time.begin, speech) + " " + lanesText(job, speech) + ":", 2);
        for (const QString& line : placeText(job, speech))
            out += wrapped(line, 6, "    -");
        QStringList& before = told[{job.machine, job.outing}];
        for (const JobMove& move : movesOf(state, plan, job)) {
            const QString line = text(move, speech);
            if (!before.contains(line)) out += wrapped(line, 6, "    -");
            before += line;
        }
    }
    return out;
}

QString proofText(const DayPlan& day, const Speech& speech) {
    const QString treatments = speech.locale.toString(qlonglong(day.objective.treatments));
    const char* form = day.proven ? QT_TRANSLATE_NOOP("wording", "lanes to treat: %1; nothing better exists")
                                  : QT_TRANSLATE_NOOP("wording", "lanes to treat: %1; not proven to be the best");
    return say(form).arg(treatments);
}

QString demandText(const SurfaceDemand& demand, const State& state) {
    QString words = text(demand.kind);
    if (demand.pattern) words += " " + patternName(state, demand.pattern);
    return demand.lanes.text() + ": " + words;
}

}  // namespace

QString planText(const Plan& plan, const State& state, const Speech& speech) {
    QString out;
    for (const DayPlan& day : plan.days) {
        out += heading(dayText(day.date, speech)) + dayJobs(plan, day, state, speech);
        if (plan.range.days() <= daysExplained) out += dayReasons(plan, day, state, speech);
        for (const Shortfall& shortfall : plan.unmet) {
            if (dateOf(state.centre, shortfall.playBegins) != day.date) continue;
            out += wrapped(shortfallText(shortfall, speech), 2);
            for (const QString& detail : shortfallDetails(shortfall, speech))
                out += wrapped(detail, 6, "    -");
        }
        out += wrapped(proofText(day, speech), 2) + "\n";
    }
    for (const Finding& finding : plan.findings)
        out += wrapped(text(finding, speech), 2, "!");
    return out;
}

QString eventsText(const Occupancy& occupancy, const State& state, const Speech& speech) {
    QString out;
    QDate day;
    std::vector<QStringList> rows;
    const auto flush = [&] {
        if (day.isValid()) out += heading(dayText(day, speech)) + table(rows, 2) + "\n";
        rows.clear();
    };
    for (const Occurrence& event : occupancy.occurrences) {
        const QDate date = dateOf(state.centre, event.booked.begin);
        if (date != day) flush();
        day = date;
        QStringList demands;
        for (const SurfaceDemand& demand : event.demands)
            demands += demandText(demand, state);
        rows.push_back({clockTime(event.booked.begin, speech) + "-" + clockTime(event.booked.end, speech), event.lanes.text(),
                        shown(event.title), demands.join("; ")});
    }
    flush();
    for (const Finding& finding : occupancy.findings)
        out += wrapped(text(finding, speech), 2, "!");
    return out;
}

}  // namespace laneward
