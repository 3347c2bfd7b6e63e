#include "core/calendar/icalendar.h"
#include "core/documents/sheet_words.h"
#include "core/documents/writers.h"

namespace laneward {

namespace {

QString titleOf(const Job& job, const State& state, const Speech& speech) {
    const Machine* machine = findMachine(state.centre, job.machine);
    const Pattern* pattern = job.pattern ? findPattern(state.patterns, *job.pattern) : nullptr;
    QStringList parts{machine ? machine->name : job.machine.value, lanesText(job, speech)};
    if (job.pattern) parts += pattern ? pattern->name : job.pattern->value;
    parts += text(job.treatment);
    return parts.join(", ");
}

}  // namespace

QByteArray jobsIcs(const Plan& plan, const State& state, const Speech& speech, Instant stamp) {
    std::vector<IcsEntry> entries;
    for (const Job& job : plan.jobs) {
        if (job.state == JobState::Dropped) continue;
        IcsEntry entry;
        entry.uid = job.id.value + "@" + state.centre.facts.id.value;
        entry.summary = titleOf(job, state, speech);
        entry.description = amountsText(job, speech) + "; " + slackText(job, speech) + "\n" + neededByText(job, speech);
        entry.time = job.time;
        entry.lanes = job.laneSet();
        entries.push_back(std::move(entry));
    }
    return writeIcs(state.centre.facts.name, entries, stamp);
}

}  // namespace laneward
