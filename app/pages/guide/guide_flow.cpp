#include "app/edits/run_deeds.h"
#include "app/edits/run_form.h"
#include "app/pages/guide/guide_deeds.h"
#include "app/pages/guide/guide_list.h"
#include "app/pages/guide/guide_memory.h"
#include "app/pages/guide/guide_step_panel.h"
#include "app/pages/guide/guide_view.h"
#include "core/documents/guide_words.h"

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

#include <algorithm>
#include <utility>

namespace laneward {

const GuideStep* GuideView::shownStep() const {
    if (m_back == 0) return m_guide.ahead.empty() ? nullptr : &m_guide.ahead.front();
    const QByteArray& key = m_guide.done[size_t(shownRow())].key;
    const auto found =
        std::find_if(m_guide.behind.begin(), m_guide.behind.end(), [&key](const GuideStep& step) { return step.key == key; });
    return found == m_guide.behind.end() ? nullptr : &*found;
}

/// The centre or the time is another: what is done stays done, the rest comes from the plan as it is now.
void GuideView::follow() {
    read();
    if (const QString line = changeText(changeOf(m_expected, m_guide)); !line.isEmpty()) say(line);
    showStep();
}

/// After something was done here: only what it did to the steps themselves is news.
void GuideView::settle(bool announce) {
    read();
    GuideChange change = changeOf(m_expected, m_guide);
    change.moved = 0;
    QStringList lines;
    if (const QString line = announce ? changeText(change) : QString(); !line.isEmpty()) lines += line;
    if (!m_doubts.isEmpty()) lines += std::exchange(m_doubts, {});
    say(lines.join(u'\n'));
    m_expected = m_guide.ahead;
    showStep();
    focusStep();
}

void GuideView::showStep() {
    const Speech speech = m_session.speech();
    m_heading->setText(tr("Step by step: %1", "day").arg(dayText(m_day, speech)));
    const int all = int(m_guide.done.size() + m_guide.ahead.size());
    GuideSight sight;
    sight.state = tr("Step %1 of %2").arg(speech.locale.toString(shownRow() + 1), speech.locale.toString(all));
    if (m_back > 0) sight.state = tr("%1, done already", "step 3 of 17").arg(sight.state);
    const GuideStep* step = shownStep();
    if (step) {
        sight.title = titleOf(*step, m_sheet, speech);
        sight.details = detailsOf(*step, m_sheet, speech);
        sight.cautions = cautionsOf(*step, speech);
        m_step->show(sight);
    } else if (m_back > 0) {
        sight.title = lineOf(m_guide.done[size_t(shownRow())], m_sheet, speech);
        m_step->show(sight);
    } else {
        showEnd();
    }
    const QByteArray key = step ? step->key : QByteArray("none");
    if (key != m_asked) {
        m_asked = key;
        ask(step);
    }
    m_list->show(m_guide, m_sheet, shownRow(), speech);
    showButtons();
}

void GuideView::ask(const GuideStep* step) {
    const Speech speech = m_session.speech();
    std::vector<GuideBlank> blanks;
    if (step && !m_session.isReadOnly()) blanks = blanksOf(*step, m_session.season(), m_session.now());
    const MachineId id = step ? step->step.machine : MachineId{};
    const MachineLevels now = step ? levelsOf(m_session, id) : MachineLevels{};
    const bool swapped = step && step->deed == GuideDeed::FullPack;
    GuideStepPanel::Help help;
    help.expected = [now, speech](const GuideBlank& blank) { return expectedText(blank, now, speech); };
    help.advice = [this, id, swapped](const GuideAnswer& answer) {
        const Machine* machine = findMachine(m_session.season().centre, id);
        if (!machine) return QString();
        VoltRule rule = voltRuleOf(m_session.season(), *machine, m_session.now());
        if (swapped) rule.hasSpare = false;  // that one is on already
        QStringList lines;
        for (const Finding& doubt : doubtsOf(answer, *machine, rule, m_session.speech().units))
            lines += text(doubt, m_session.speech());
        return lines.join(u'\n');
    };
    m_step->ask(blanks, help, speech);
}

void GuideView::showEnd() {
    GuideSight sight;
    if (m_sheet.jobs.empty()) {
        sight.title = tr("No lane needs a treatment today.");
        sight.details = {tr("Events with a demand, entered in the Calendar, bring steps here."),
                         tr("A run that nobody planned is recorded on the page Today: Ctrl+U."),
                         tr("What falls due besides is on the page Service.")};
    } else {
        sight.title = tr("Everything on tonight's sheet is done.");
        const int leftOut =
            int(std::count_if(m_guide.done.begin(), m_guide.done.end(), [](const GuideTick& tick) { return tick.isLeftOut; }));
        if (leftOut > 0) sight.details = {tr("%n step(s) left out: see the list.", nullptr, leftOut)};
        sight.details += tr("Escape leads back to the page.");
    }
    m_step->show(sight);
}

void GuideView::showButtons() {
    const GuideStep* step = shownStep();
    const bool run = step && step->deed == GuideDeed::Run;
    const bool writable = !m_session.isReadOnly();
    const Job* job = run ? &m_sheet.jobs[*step->step.job] : nullptr;
    m_goBack->setEnabled(m_back < int(m_guide.done.size()));
    m_leaveOut->setEnabled(step && m_back == 0);
    m_otherwise->setVisible(run && writable);
    m_goOn->setEnabled(step || m_back > 0);
    if (m_back > 0 || !step)
        m_goOn->setText(tr("Go on (Space)"));
    else if (run && writable)
        m_goOn->setText(job->state == JobState::UnderWay ? tr("Done as planned (Space)") : tr("Begin now (Space)"));
    else
        m_goOn->setText(tr("Done (Space)"));
}

void GuideView::focusStep() {
    if (m_stack->currentIndex() != 0) return;
    if (m_goOn->isEnabled() && !m_step->focusFirstBlank())
        m_goOn->setFocus();
    else if (!m_goOn->isEnabled())
        m_close->setFocus();
}

bool GuideView::perform(const GuideStep& step, OperationId& record) {
    const auto answers = m_step->answers(m_session.speech());
    if (!answers) return false;
    m_doubts = m_step->advice();
    if (m_session.isReadOnly()) return true;
    if (m_back > 0 && answers->empty()) return true;  // looked at again, and left as it is
    GuideAct act = actOf(m_session, m_sheet, step, *answers);
    m_acting = true;
    const bool done = m_session.perform(std::move(act.deed));
    m_acting = false;
    record = act.record;
    if (!done) follow();
    return done;
}

void GuideView::goOn() {
    if (m_back > 0) return goOnFromBehind();
    if (!shownStep()) return;
    const GuideStep step = *shownStep();
    OperationId record;
    if (!perform(step, record)) return;
    // A run ticks itself once it is recorded; the first time it only begins.
    if (step.deed != GuideDeed::Run || m_session.isReadOnly()) tick(step, false, record);
    m_asked.clear();
    settle(true);
}

void GuideView::goOnFromBehind() {
    const GuideStep* shown = shownStep();
    const bool again = shown && shown->deed != GuideDeed::Run && shown->deed != GuideDeed::Service;
    OperationId record;
    const int row = shownRow();
    if (again && !perform(GuideStep(*shown), record)) return;
    if (!record.isEmpty()) {
        m_guide.done[size_t(row)].record = record;
        keepTicks(m_session.season().centre.facts.id, m_day, m_guide.done);
    }
    m_back = std::max(0, m_back - 1);
    settle(true);
}

void GuideView::tick(const GuideStep& step, bool leftOut, const OperationId& record) {
    m_guide.done.push_back(
        {step.key, step.step.kind, step.step.machine, titleOf(step, m_sheet, m_session.speech()), leftOut, {}, record});
    keepTicks(m_session.season().centre.facts.id, m_day, m_guide.done);
}

void GuideView::goBack() {
    if (m_back >= int(m_guide.done.size())) return;
    ++m_back;
    settle(false);
}

void GuideView::leaveOut() {
    if (m_back > 0 || !shownStep()) return;
    tick(GuideStep(*shownStep()), true, {});
    settle(false);
}

void GuideView::recordOtherwise() {
    const GuideStep* step = shownStep();
    if (!step || step->deed != GuideDeed::Run || m_session.isReadOnly()) return;
    m_run->begin(m_sheet.jobs[*step->step.job]);
    m_stack->setCurrentIndex(1);
    m_buttons->hide();
}

void GuideView::finishRun(const RunAccount& account, const std::optional<Incident>& incident) {
    const std::optional<OperationId> before =
        account.job ? runOf(m_session.season(), *account.job) : std::optional<OperationId>();
    m_acting = true;
    const bool done = m_session.perform(doneOtherwise(m_session, account, incident, before));
    m_acting = false;
    if (!done) return follow();
    m_back = 0;
    closeForm();
}

void GuideView::closeForm() {
    m_stack->setCurrentIndex(0);
    m_buttons->show();
    settle(true);
}

}  // namespace laneward
