#include "app/edits/run_form.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTimeEdit>

#include <algorithm>

namespace laneward {

namespace {

void select(QComboBox* box, const QVariant& data) { box->setCurrentIndex(std::max(0, box->findData(data))); }

}  // namespace

void RunForm::begin(std::optional<Job> job) {
    m_job = std::move(job);
    m_beginGuessed = true;
    m_problem->clear();
    m_note->clear();
    m_incident->setCurrentIndex(0);
    m_incidentText->clear();
    fillChoices();
    if (m_job)
        fillFrom(*m_job);
    else
        fillUnplanned();
    (m_job ? static_cast<QWidget*>(m_lastLane) : m_lanes)->setFocus();
}

void RunForm::refresh() { fillChoices(); }

void RunForm::fillChoices() {
    const QVariant machine = m_machine->currentData();
    const QVariant pattern = m_pattern->currentData();
    const QSignalBlocker quietMachine(m_machine);
    const QSignalBlocker quietPattern(m_pattern);
    m_machine->clear();
    for (const Machine& m : m_session.season().centre.machines)
        m_machine->addItem(shown(m.name), m.id.value);
    m_pattern->clear();
    for (const Pattern& p : m_session.season().patterns) {
        if (!p.retired || (m_job && m_job->pattern == p.id)) m_pattern->addItem(shown(p.name), p.id.value);
    }
    select(m_machine, machine);
    select(m_pattern, pattern);
}

void RunForm::fillFrom(const Job& job) {
    m_title->setText(tr("How the planned run really went"));
    select(m_machine, job.machine.value);
    select(m_treatment, int(job.treatment));
    if (job.pattern) select(m_pattern, job.pattern->value);
    m_lanes->setText(job.laneSet().text());
    const Span time = asPlanned(job, m_session.now()).time;
    m_begin->setTime(m_session.zone().toLocal(time.begin).time);
    m_end->setTime(m_session.zone().toLocal(time.end).time);
    m_beginGuessed = false;
}

/// The likeliest unplanned run is one like the last, just finished.
void RunForm::fillUnplanned() {
    m_title->setText(tr("A run that was not planned"));
    const std::vector<RunLog> runs = standing(m_session.season().runs);
    const auto last =
        std::max_element(runs.begin(), runs.end(), [](const RunLog& a, const RunLog& b) { return a.time.end < b.time.end; });
    select(m_treatment, int(Treatment::CleanAndCondition));
    if (last != runs.end()) {
        select(m_machine, last->machine.value);
        if (last->pattern) select(m_pattern, last->pattern->value);
    }
    m_lanes->clear();
    m_end->setTime(m_session.zone().toLocal(m_session.now()).time);
    guessBegin();
}

void RunForm::lanesEdited() {
    const QVariant before = m_lastLane->currentData();
    const QSignalBlocker quiet(m_lastLane);
    m_lastLane->clear();
    m_lastLane->addItem(tr("all done"), 0);
    if (const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text())) {
        for (int lane : lanes->lanes())
            m_lastLane->addItem(tr("lane %1").arg(lane), lane);
    }
    select(m_lastLane, before);
    guessBegin();
}

void RunForm::guessBegin() {
    if (!m_beginGuessed) return;
    const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text());
    if (!lanes) return;
    RunAccount guess;
    guess.machine = {m_machine->currentData().toString()};
    guess.treatment = Treatment(m_treatment->currentData().toInt());
    if (conditions(guess.treatment)) guess.pattern = PatternId{m_pattern->currentData().toString()};
    guess.lanes = *lanes;
    const Seconds length = usualLength(m_session.planningState(), guess);
    const QSignalBlocker quiet(m_begin);  // the guess is not the person's word
    m_begin->setTime(m_end->time().addSecs(-int(length.value)));
}

/// The latest such wall time that is not in the future: a run ends before it is recorded.
Instant RunForm::instantOf(const QTime& time) const {
    const LocalTime now = m_session.zone().toLocal(m_session.now());
    const Instant today = m_session.zone().toInstant({now.date, time});
    return today > m_session.now() + minutes(5) ? m_session.zone().toInstant({now.date.addDays(-1), time}) : today;
}

std::optional<RunAccount> RunForm::account(QString& problem) const {
    const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text());
    RunAccount run;
    run.job = m_job;
    run.machine = {m_machine->currentData().toString()};
    run.treatment = Treatment(m_treatment->currentData().toInt());
    if (conditions(run.treatment) && m_pattern->currentIndex() >= 0) run.pattern = PatternId{m_pattern->currentData().toString()};
    run.lastLane = m_lastLane->currentData().toInt();
    run.time = {instantOf(m_begin->time()), instantOf(m_end->time())};
    run.time.end = std::min(run.time.end, m_session.now());
    if (run.time.end < run.time.begin) run.time.begin = run.time.begin - hours(24);
    run.note = m_note->text().trimmed();
    if (lanes) run.lanes = *lanes;
    if (!lanes || lanes->isEmpty() || !lanes->isSubsetOf(allLanes(m_session.season().centre))) {
        problem = tr("Nothing recorded yet: write lanes of this house, such as 1-12.");
    } else if (run.machine.isEmpty()) {
        problem = tr("Nothing recorded yet: this centre has no machine.");
    } else if (conditions(run.treatment) && !run.pattern) {
        problem = tr("Nothing recorded yet: choose the pattern that was laid down.");
    } else if (run.time.length() > hours(12)) {
        problem = tr("Nothing recorded yet: a run of more than 12 hours cannot be; look at the times.");
    } else if (m_incident->currentIndex() > 0 && m_incidentText->text().trimmed().isEmpty()) {
        problem = tr("Nothing recorded yet: say in a word what happened, or choose 'nothing happened'.");
    }
    return problem.isEmpty() ? std::optional(run) : std::nullopt;
}

std::optional<Incident> RunForm::incident(const RunAccount& account) const {
    if (m_incident->currentIndex() <= 0) return std::nullopt;
    Incident happened;
    happened.kind = IncidentKind(m_incident->currentData().toInt());
    happened.at = account.time.end;
    happened.lane = account.lastLane;
    happened.machine = account.machine;
    happened.text = m_incidentText->text().trimmed();
    return happened;
}

}  // namespace laneward
