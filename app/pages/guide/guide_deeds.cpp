#include "app/pages/guide/guide_deeds.h"

#include "app/edits/run_deeds.h"
#include "core/documents/guide_words.h"

#include <QCoreApplication>

namespace laneward {

namespace {

struct Names {
    Q_DECLARE_TR_FUNCTIONS(Guide)

public:
    static QString reading(const Machine& machine) { return tr("Reading of %1").arg(shown(machine.name)); }
    static QString service(const Duty& duty) { return tr("Service: %1", "duty").arg(shown(duty.name)); }
    static QString onCharge(const Machine& machine) { return tr("Pack of %1 on charge").arg(shown(machine.name)); }
    static QString note() { return tr("Leave a note for the next shift"); }
};

void confirmOuting(const Session& session, const JobSheet& sheet, const GuideStep& step, std::vector<Change>& changes) {
    if (!step.step.job) return;
    const Job& first = sheet.jobs[*step.step.job];
    for (const Job& job : sheet.jobs) {
        if (job.machine == first.machine && job.outing == first.outing) committed(session, job, changes);
    }
}

/// The machine's reading of this second, or of one that was put after it.
const LevelReading* readingOfThisSecond(const Session& session, const MachineId& machine) {
    const LevelReading* found = nullptr;
    for (const LevelReading& reading : session.season().readings) {
        const bool later = !found || reading.levels.at > found->levels.at;
        if (reading.levels.machine == machine && reading.levels.at >= session.now() && later) found = &reading;
    }
    return found;
}

/// As planning counts on, learned or set.
int lanesPerCharge(Session& session, const Machine& machine) {
    for (const MachineLimits& limits : session.planningState().limits) {
        if (limits.machine == machine.id) return limits.lanesPerCharge;
    }
    return machine.capacity.lanesPerCharge;
}

void addReading(GuideAct& act, Session& session, const GuideStep& step, const std::vector<GuideAnswer>& answers) {
    const Machine* machine = findMachine(session.season().centre, step.step.machine);
    if (!machine) return;
    Machine learned = *machine;
    learned.capacity.lanesPerCharge = lanesPerCharge(session, *machine);
    const MachineLevels now = levelsOf(session, machine->id);
    std::optional<LevelReading> reading = readingOf(step, learned, now, answers, session.speech().units);
    if (!reading) return;
    reading->levels.machine = machine->id;
    // Of two readings of one second nobody could tell which was the later one.
    const LevelReading* before = readingOfThisSecond(session, machine->id);
    reading->levels.at = before ? before->levels.at + Seconds{1} : session.now();
    act.record = reading->id = session.newOperation();
    act.deed.name = Names::reading(*machine);
    act.deed.records.push_back(*reading);
    for (PackReading& entry : packEntries(session.season(), machine->id, packNewsOf(step, answers), reading->levels.at))
        act.deed.records.push_back(std::move(entry));
}

void addPack(GuideAct& act, Session& session, const GuideStep& step) {
    const Machine* machine = findMachine(session.season().centre, step.step.machine);
    if (!machine || step.deed != GuideDeed::ClosePack) return;
    for (PackReading& entry : packEntries(session.season(), machine->id, packNewsOf(step, {}), session.now())) {
        act.record = entry.id = session.newOperation();
        act.deed.name = Names::onCharge(*machine);
        act.deed.records.push_back(std::move(entry));
    }
}

void addService(GuideAct& act, const Session& session, const JobSheet& sheet, const GuideStep& step) {
    std::optional<ServiceRecord> record = serviceOf(step, sheet, session.season(), session.now());
    if (!record) return;
    act.record = record->id = session.newOperation();
    act.deed.name = Names::service(sheet.duties[*step.duty].duty);
    act.deed.records.push_back(*record);
}

}  // namespace

MachineLevels levelsOf(Session& session, const MachineId& machine) {
    if (const LevelReading* reading = readingOfThisSecond(session, machine)) return reading->levels;
    for (const MachineLevels& levels : session.planningState().levels) {
        if (levels.machine == machine) return levels;
    }
    return {};
}

GuideAct actOf(Session& session, const JobSheet& sheet, const GuideStep& step, const std::vector<GuideAnswer>& answers) {
    GuideAct act;
    if (step.deed == GuideDeed::Run) {
        const Job& job = sheet.jobs[*step.step.job];
        if (isAhead(job)) act.deed = job.state == JobState::UnderWay ? doneAsPlanned(session, job) : begun(session, job);
        return act;
    }
    addReading(act, session, step, answers);
    addPack(act, session, step);
    addService(act, session, sheet, step);
    if (step.deed == GuideDeed::HandOver) {
        if (std::optional<HandOver> note = noteOf(answers, sheet.date, session.now())) {
            act.record = note->id = session.newOperation();
            act.deed.name = Names::note();
            act.deed.records.push_back(*note);
        }
    }
    confirmOuting(session, sheet, step, act.deed.changes);
    if (act.deed.name.isEmpty()) act.deed.name = titleOf(step, sheet, session.speech());
    return act;
}

}  // namespace laneward
