#include "app/demo/demo_parts.h"

#include <QUuid>

#include <algorithm>

namespace laneward::demo {

namespace {

constexpr std::uint64_t seed = 0x51a5;
constexpr int waitingDays = 3;  // for an answer to an incident

PersonId operatorOn(QDate date) { return {date.dayOfWeek() % 3 == 0 ? "idris" : "nell"}; }

RunLog asPlanned(const Job& job, const std::vector<PatternVersion>& versions) {
    RunLog log;
    log.id = operation("run " + job.id.value);
    log.job = job.id;
    log.planVersion = 1;
    log.machine = job.machine;
    log.person = operatorOn(job.date);
    log.time = job.time;
    log.treatment = job.treatment;
    log.pattern = job.pattern;
    if (job.pattern) log.patternVersion = editionAt(versions, *job.pattern, job.time.begin);
    log.lanes = job.lanes;
    log.use = job.use;
    log.recordedAt = job.time.end + minutes(3);
    return log;
}

JobUse share(const JobUse& use, int part, int whole) {
    JobUse some;
    for (size_t slot = 0; slot < use.conditioner.size(); ++slot)
        some.conditioner[slot] = {use.conditioner[slot].value * part / whole};
    some.cleaner = {use.cleaner.value * part / whole};
    some.waste = {use.waste.value * part / whole};
    some.laneRuns = part;
    return some;
}

Incident incident(IncidentKind kind, const RunLog& log, int lane, const QString& text) {
    return {operation("incident " + log.job.value), kind, log.time.end, lane, log.machine, log.person, text};
}

/// A jam stops the machine half way; what is left is run a few minutes later without a plan.
void cutShort(HistorySlice& records, RunLog log) {
    const auto done = log.lanes.begin() + std::ptrdiff_t(log.lanes.size() / 2);
    RunLog rest = log;
    rest.id = operation("rest " + log.job.value);
    rest.job = {};
    rest.planVersion = 0;
    rest.result = RunResult::Unplanned;
    rest.note = "The rest after the jam";
    rest.lanes.assign(done, log.lanes.end());
    for (LaneTime& lane : rest.lanes)
        lane.time = {lane.time.begin + minutes(6), lane.time.end + minutes(6)};
    rest.time = {rest.lanes.front().time.begin, rest.lanes.back().time.end};
    rest.recordedAt = rest.time.end + minutes(2);
    const int whole = int(log.lanes.size());
    rest.use = share(log.use, int(rest.lanes.size()), whole);
    log.lanes.erase(done, log.lanes.end());
    log.use = share(log.use, int(log.lanes.size()), whole);
    log.time.end = log.lanes.back().time.end;
    log.recordedAt = log.time.end + minutes(2);
    log.result = RunResult::CutShort;
    log.note = "Stopped: cloth jammed on the return";
    records.incidents.push_back(
        incident(IncidentKind::Jam, log, log.lanes.back().lane, "Cloth jammed; switched off, isolated, cleared."));
    records.runs.push_back(log);
    records.runs.push_back(rest);
}

void addRun(HistorySlice& records, const Job& job, Dice& dice) {
    RunLog log = asPlanned(job, records.patternVersions);
    const bool roomy = job.slack >= minutes(10) && job.lanes.size() >= 4;
    if (roomy && dice.oneIn(60)) {
        cutShort(records, log);
        return;
    }
    if (dice.oneIn(90)) {
        const QString text = "Conditioner dripped on the approach; wiped up, sign put out.";
        records.incidents.push_back(incident(IncidentKind::Spill, log, log.lanes.front().lane, text));
    } else if (dice.oneIn(250)) {
        records.incidents.push_back(
            incident(IncidentKind::NearMiss, log, 0, "Slipped stepping over the foul line; nobody hurt."));
    }
    records.runs.push_back(log);
}

MachineLevels levelsOf(const Machine& machine, Instant at) { return fullLevels(machine, limitsFromSettings(machine), at); }

/// What was in the waste tank of a day's runs: what the clean takes up of the cleaner, and the conditioner.
Microlitres wasteOf(const HistorySlice& records, const MachineId& machine, const Span& time, Dice& dice) {
    const int recovered = (machine.value == "heron" ? 78 : 84) + dice.below(5) - 2;  // of 100
    Microlitres waste;
    for (const RunLog& run : records.runs) {
        if (run.machine != machine || run.time.end < time.begin || run.time.end >= time.end || !cleans(run.treatment)) continue;
        waste += {run.use.cleaner.value * recovered / 100};
        for (const Microlitres conditioner : run.use.conditioner)
            waste += conditioner;
    }
    return waste;
}

/// Each morning somebody reads volts and levels, and empties the waste tank; this morning one tank was low.
void addReadings(HistorySlice& records, const Centre& centre, QDate today, Dice& dice) {
    for (QDate date = today.addDays(-openWindowDays); date <= today; date = date.addDays(1)) {
        const Instant at = dayOf(centre, date).begin + minutes(15);
        for (const Machine& machine : centre.machines) {
            LevelReading reading{operation("reading " + machine.id.value + date.toString(Qt::ISODate)),
                                 operatorOn(date),
                                 levelsOf(machine, at),
                                 {},
                                 {}};
            reading.levels.volts = Millivolts{machine.fullAt.value + 50 * dice.below(8)};
            const Microlitres waste = wasteOf(records, machine.id, {at - hours(24), at}, dice);
            if (waste > Microlitres{0}) reading.emptied = {waste.value / 50'000 * 50'000};  // as it is read off the scale
            if (date == today && machine.id.value == "heron") {
                reading.levels.conditioner[0] = millilitres(290);
                reading.levels.waste = millilitres(2'400);
                reading.emptied.reset();
            }
            records.readings.push_back(reading);
        }
    }
}

void addHandOvers(HistorySlice& records, const Centre& centre, QDate today, Dice& dice) {
    static constexpr const char* notes[] = {"All quiet. Both machines wiped down, waste emptied.",
                                            "Lane 7 ball return noisy again, mechanic told.",
                                            "Grebe pack on charge, Heron pack full.", "New cloth roll on Heron.",
                                            "Approach 15-16 sticky; cleaned with approach cleaner only."};
    for (QDate date = today.addDays(-openWindowDays); date < today; date = date.addDays(1)) {
        const QString text =
            date == today.addDays(-1)
                ? QString("Heron's Tideglass Amber is low: the drum ran out. The new one stands beside the charger.")
                : QString::fromLatin1(notes[dice.below(int(std::size(notes)))]);
        records.handOvers.push_back({operation("hand-over " + date.toString(Qt::ISODate)), date,
                                     dayOf(centre, date).begin + minutes(19 * 60 + 10), operatorOn(date), text});
    }
}

const char* answerTo(IncidentKind kind) {
    switch (kind) {
        case IncidentKind::Spill:
            return "Tip of the drip tray bent; straightened, approach washed.";
        case IncidentKind::Jam:
            return "Cloth roll sat askew; set right, ran clean afterwards.";
        case IncidentKind::Fault:
        case IncidentKind::Injury:
        case IncidentKind::NearMiss:
            break;
    }
    return "Talked through at the next hand-over.";
}

/// What happened was followed up the next morning; what happened in the last days still waits.
void addAnswers(HistorySlice& records, const Centre& centre, QDate today) {
    std::vector<Incident> answers;
    for (const Incident& happened : records.incidents) {
        const QDate next = dateOf(centre, happened.at).addDays(1);
        if (next.daysTo(today) < waitingDays) continue;
        Incident answer = happened;
        answer.id = operation("answer " + happened.id.value);
        answer.at = dayOf(centre, next).begin + hours(4);
        answer.person = {"tamsin"};
        answer.text = QString::fromLatin1(answerTo(happened.kind));
        answer.answers = happened.id;
        answers.push_back(std::move(answer));
    }
    records.incidents.insert(records.incidents.end(), answers.begin(), answers.end());
}

}  // namespace

OperationId operation(const QString& name) {
    static const QUuid space(QStringLiteral("{6f1c2f6e-3d57-5b0e-9b1a-5a1f0c7d2e44}"));
    return {QUuid::createUuidV5(space, name).toString(QUuid::WithoutBraces)};
}

HistorySlice yearOfRecords(const SeasonState& season, QDate today) {
    HistorySlice records;
    records.patternVersions = patternVersions(season.centre, today);
    Dice dice(seed);
    const QDate first = today.addDays(-historyDays);
    const Instant begin = dayOf(season.centre, first).begin;
    const Plan year = plan(planningState(season, begin), begin, {first, today.addDays(-1)});
    for (const Job& planned : year.jobs) {
        if (planned.lanes.empty()) continue;
        Job job = planned;
        job.state = JobState::Confirmed;
        job.planVersion = 1;
        job.person = operatorOn(job.date);
        job.reasons.clear();
        addRun(records, job, dice);
        records.jobs.push_back(job);
    }
    addAnswers(records, season.centre, today);
    addReadings(records, season.centre, today, dice);
    addHandOvers(records, season.centre, today, dice);
    addFills(records, season, today);
    addTapes(records, season, today);
    addInspections(records, season, today);
    return records;
}

}  // namespace laneward::demo
