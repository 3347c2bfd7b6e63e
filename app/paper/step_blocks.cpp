#include "app/paper/sheet_blocks.h"
#include "core/documents/sheet_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

// Columns of the order of work, in points: a box to tick, two times, what to do, and beside it cautions and blanks.
constexpr double boxSize = 11;
constexpr double startColumn = 18;
constexpr double readyColumn = 62;
constexpr double workColumn = 106;
constexpr double side = 146;      ///< beside a job, and for reminders
constexpr double wideSide = 306;  ///< for a caution in full
constexpr double gap = 8;
constexpr double blank = 36;
constexpr double below = 2;

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

PaperMark::Kind boxOf(const JobSheet& sheet, const SheetStep& step) {
    if (step.kind != SheetStep::Kind::Job) return PaperMark::Kind::TickBox;
    const JobState state = sheet.jobs[*step.job].state;
    if (state == JobState::Done) return PaperMark::Kind::Ticked;
    return state == JobState::CutShort ? PaperMark::Kind::TornBox : PaperMark::Kind::TickBox;
}

bool isReminder(const Finding& caution) { return caution.rule.endsWith("-again"); }

bool hasFullCaution(const SheetStep& step) {
    return std::any_of(step.cautions.begin(), step.cautions.end(), [](const Finding& f) { return !isReminder(f); });
}

/// Full cautions stand by themselves; reminders follow together.
QStringList cautionLines(const SheetStep& step, const Speech& speech) {
    QStringList lines;
    QStringList reminders;
    for (const Finding& caution : step.cautions)
        (isReminder(caution) ? reminders : lines) += text(caution, speech);
    if (reminders.isEmpty()) return lines;
    if (lines.isEmpty()) return {reminders.join(' ')};
    lines.last() += (lines.last().endsWith('.') ? " " : ". ") + reminders.join(' ');
    return lines;
}

/// Returns where it ends.
double putCautions(const Paper& paper, PaperBlock& block, const QStringList& lines, double y, double width) {
    const double x = paper.width() - width;
    for (const QString& line : lines) {
        block.marks.push_back({PaperMark::Kind::Caution, QRectF(x, y + 2, 9, 8.5)});
        y += paper.put(block, {x + 13, y, width - 13}, line, PaperStyle::Small);
    }
    return y;
}

double putBlanks(const Paper& paper, PaperBlock& block, const SheetStep& step, const Speech& speech, double y) {
    double x = paper.width() - side;
    double height = 0;
    for (const QByteArray& name : step.blanks) {
        const QString label = text(Finding{Severity::Note, name, {}, {}}, speech);
        const double width = paper.widthOf(label, PaperStyle::Small);
        const double down = y > 0 ? 4 : 1;
        height = down + paper.put(block, {x, y + down, width}, label, PaperStyle::Small);
        block.marks.push_back({PaperMark::Kind::Blank, QRectF(x + width + 2, y, blank, height - 1)});
        x += width + blank + 6;
    }
    return y + height;
}

QString workText(const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    const Job& job = sheet.jobs[*step.job];
    QString what = text(job.treatment);
    if (!progressText(job).isEmpty()) what += ", " + progressText(job);
    for (const Step& part : job.steps) {
        if (part.kind != StepKind::FirstPairTwice) continue;
        what += ", " + say(QT_TRANSLATE_NOOP("wording", "work lanes %1 twice")).arg(laneNumbers(part.lanes, speech));
    }
    const QString needs = neededByText(job, speech);
    return needs.isEmpty() ? what : what + ", " + needs;
}

double putJob(const Paper& paper, PaperBlock& block, const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    const Job& job = sheet.jobs[*step.job];
    const QString& pattern = sheet.patternNames[*step.job];
    const double width = paper.width() - side - gap - workColumn;
    QStringList title{lanesText(job, speech), shown(sheet.machineNames[*step.job])};
    if (!pattern.isEmpty()) title.insert(1, shown(pattern));
    double y = paper.put(block, {workColumn, 0, width}, title.join(", "), PaperStyle::Strong);
    y += paper.put(block, {workColumn, y, width}, workText(sheet, step, speech), PaperStyle::Body);
    y += paper.put(block, {workColumn, y, width}, amountsText(job, speech), PaperStyle::Small);
    paper.put(block, {startColumn, 0, readyColumn - startColumn - 2}, clockTime(*step.startBy, speech), PaperStyle::Strong);
    paper.put(block, {readyColumn, 0, workColumn - readyColumn - 2}, clockTime(*step.readyAt, speech, true), PaperStyle::Strong);
    double right = paper.put(block, {paper.width() - side, 0, side}, slackText(job, speech), PaperStyle::Small);
    right = putCautions(paper, block, cautionLines(step, speech), right, side);
    return std::max(y, putBlanks(paper, block, step, speech, right)) + 2 * below;
}

double putStep(const Paper& paper, PaperBlock& block, const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    const double x = step.startBy ? readyColumn : startColumn;
    const double cautions = hasFullCaution(step) ? wideSide : side;
    const double taken = step.cautions.empty() && step.blanks.empty() ? 0 : cautions + gap;
    if (step.startBy)
        paper.put(block, {startColumn, 0, readyColumn - startColumn - 2}, clockTime(*step.startBy, speech), PaperStyle::Body);
    double y = paper.put(block, {x, 0, paper.width() - taken - x}, stepText(sheet, step, speech), PaperStyle::Body);
    const QString details = dutyLines(sheet, step, speech).join(QStringLiteral("; "));
    if (!details.isEmpty()) y += paper.put(block, {x, y, paper.width() - taken - x}, details, PaperStyle::Small);
    const double right =
        putBlanks(paper, block, step, speech, putCautions(paper, block, cautionLines(step, speech), 0, cautions));
    return std::max(y, right) + below;
}

PaperBlock stepBlock(const Paper& paper, const JobSheet& sheet, const SheetStep& step, const Speech& speech) {
    PaperBlock block;
    const bool isJob = step.kind == SheetStep::Kind::Job;
    block.height = isJob ? putJob(paper, block, sheet, step, speech) : putStep(paper, block, sheet, step, speech);
    block.marks.push_back({boxOf(sheet, step), QRectF(1, 1.5, boxSize, boxSize)});
    return block;
}

}  // namespace

std::vector<PaperBlock> stepBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    std::vector<PaperBlock> blocks{sectionBlock(paper, say(QT_TRANSLATE_NOOP("wording", "Order of work: start by, ready at")))};
    if (sheet.steps.empty()) {
        PaperBlock none;
        none.height = paper.put(none, {0, 0, paper.width()}, say(QT_TRANSLATE_NOOP("wording", "Nothing to run on this day.")),
                                PaperStyle::Body);
        blocks.push_back(std::move(none));
        return blocks;
    }
    bool closing = false;
    for (const SheetStep& step : sheet.steps) {
        if (step.kind == SheetStep::Kind::CloseDown && !closing) {
            blocks.push_back(sectionBlock(paper, say(QT_TRANSLATE_NOOP("wording", "Closing down"))));
            closing = true;
        }
        blocks.push_back(stepBlock(paper, sheet, step, speech));
    }
    return blocks;
}

}  // namespace laneward
