#include "app/pages/today/job_details.h"

#include "app/edits/plain_label.h"
#include "core/documents/sheet_words.h"
#include "core/season/waste_past.h"

#include <QVBoxLayout>

namespace laneward {

JobDetails::JobDetails(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("About the selected job"));
}

void JobDetails::addLine(const QString& text, bool heading) {
    QLabel* label = heading ? headingLabel(text, m_body) : proseLabel(text, m_body);
    m_lines->addWidget(label);
}

void JobDetails::addCaution(const QString& text) {
    QLabel* label = proseLabel(text, m_body);
    const int indent = fontMetrics().horizontalAdvance(u'0') * 6;
    label->setContentsMargins(isRightToLeft() ? 0 : indent, 0, isRightToLeft() ? indent : 0, 0);
    m_lines->addWidget(label);
}

void JobDetails::show(const JobSheet& sheet, std::optional<size_t> job, const std::vector<JobMove>& moves, const Speech& speech) {
    m_body = new QWidget;
    m_lines = new QVBoxLayout(m_body);
    m_lines->setContentsMargins(8, 4, 8, 4);
    m_lines->setSpacing(3);
    if (job) {
        addSteps(sheet, *job, speech);
        addTakes(sheet.jobs[*job], speech);
        addReasons(sheet.jobs[*job], overflowOf(sheet, sheet.jobs[*job]), speech);
        addMoves(moves, speech);
    } else {
        addLine(sheet.jobs.empty()
                    ? tr("No lane needs a treatment today. Events with a demand, entered in the Calendar, bring jobs here.")
                    : tr("Select a job to see its steps, what it takes, and why it is where it is."));
    }
    m_lines->addStretch();
    setWidget(m_body);
}

void JobDetails::addSteps(const JobSheet& sheet, size_t job, const Speech& speech) {
    addLine(tr("Steps"), true);
    bool cautioned = false;
    for (const SheetStep& step : sheet.steps) {
        if (step.job != job) continue;
        const bool work = step.kind == SheetStep::Kind::Job;
        const Job& done = sheet.jobs[job];
        const QString what = work ? tr("%1: %2", "lanes: treatment").arg(lanesText(done, speech), text(done.treatment))
                                  : stepText(sheet, step, speech);
        QString line = step.startBy ? tr("%1  %2", "time, what").arg(clockTime(*step.startBy, speech), what) : what;
        addLine(line);
        for (Finding caution : step.cautions) {
            // The sheet says a caution once and reminds afterwards; here a job is read alone, so it is said in full.
            if (caution.rule.endsWith("-again")) caution.rule.chop(6);
            addCaution(text(caution, speech));
            cautioned = true;
        }
    }
    if (cautioned) addLine(text(Finding{Severity::Note, "caution.defer", {}, {}}, speech));
}

void JobDetails::addTakes(const Job& job, const Speech& speech) {
    addLine(tr("Takes"), true);
    QStringList takes;
    if (job.use.conditionerTotal() > Microlitres{0})
        takes.append(tr("%1 of conditioner").arg(amountText(job.use.conditionerTotal(), speech)));
    if (job.use.cleaner > Microlitres{0}) takes.append(tr("%1 of cleaner").arg(amountText(job.use.cleaner, speech)));
    if (job.use.waste > Microlitres{0}) takes.append(tr("room for %1 of waste").arg(amountText(job.use.waste, speech)));
    takes.append(tr("%n lane(s) of the pack's charge", nullptr, job.use.laneRuns));
    addLine(takes.join(tr(", ", "between amounts")));
}

void JobDetails::addReasons(const Job& job, const std::optional<double>& overflow, const Speech& speech) {
    addLine(tr("Why here"), true);
    for (const QString& line : placeText(job, speech))
        addLine(line);
    if (!overflow || !cleans(job.treatment)) return;
    const bool matters = *overflow > worthSaying;
    addLine(matters ? tr("! %1", "a warning").arg(overflowText(*overflow, speech)) : overflowText(*overflow, speech));
    if (matters) addCaution(text(Finding{Severity::Warning, "caution.waste", {}, {}}, speech));
}

void JobDetails::addMoves(const std::vector<JobMove>& moves, const Speech& speech) {
    if (moves.empty()) return;
    addLine(tr("If the outing moved"), true);
    for (const JobMove& move : moves)
        addLine(text(move, speech));
}

}  // namespace laneward
