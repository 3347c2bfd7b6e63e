#include "app/paper/service_painter.h"

#include "app/paper/sheet_blocks.h"
#include "core/documents/cautions.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace laneward {

namespace {

// Columns in points: a box to tick, what to do, when, how long, and who has done it.
constexpr double boxSize = 11;
constexpr double whatColumn = 18;
constexpr double whenWidth = 150;
constexpr double timeWidth = 44;
constexpr double blankWidth = 92;
constexpr double gap = 8;
constexpr double footerRoom = 30;

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

PaperBlock textBlock(const Paper& paper, const QString& text, PaperStyle style, double above = 0) {
    PaperBlock block;
    block.height = above + paper.put(block, {0, above, paper.width()}, text, style);
    return block;
}

PaperBlock headBlock(const Paper& paper, const ServiceList& list, const Speech& speech) {
    PaperBlock block;
    const double side = paper.width() * 0.4;
    const QString what = say(QT_TRANSLATE_NOOP("wording", "Service"));
    const QString when = dayText(list.outlook.today, speech);
    const double title = paper.put(block, {0, 0, paper.width() - side}, shown(list.season.centre.facts.name), PaperStyle::Title);
    block.texts.push_back({QRectF(paper.width() - side, 0, side, title), what, PaperStyle::Title, true});
    const double day = paper.heightOf(when, PaperStyle::Strong, side);
    block.texts.push_back({QRectF(paper.width() - side, title, side, day), when, PaperStyle::Strong, true});
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, title + day + 2, paper.width(), 0)});
    block.height = title + day + 8;
    return block;
}

/// Short reminders beside the duty; the cautions stand in full at the foot.
QString remindersOf(const Duty& duty, const Speech& speech) {
    QStringList reminders;
    for (const QByteArray& caution : duty.cautions)
        reminders += text(Finding{Severity::Warning, caution + "-again", {}, {}}, speech);
    if (duty.skill != Skill::Anyone) reminders.prepend(text(duty.skill) + '.');
    return reminders.join(' ');
}

/// What the columns are.
PaperBlock columnsBlock(const Paper& paper) {
    PaperBlock block;
    const double blankX = paper.width() - blankWidth;
    const double timeX = blankX - timeWidth;
    const double whenX = timeX - whenWidth;
    block.height = 6 + paper.put(block, {whenX, 6, whenWidth - gap}, say(QT_TRANSLATE_NOOP("wording", "Due")), PaperStyle::Small);
    paper.put(block, {timeX, 6, timeWidth - 4}, say(QT_TRANSLATE_NOOP("wording", "Work")), PaperStyle::Small);
    paper.put(block, {blankX, 6, blankWidth}, say(QT_TRANSLATE_NOOP("wording", "Done by, on")), PaperStyle::Small);
    block.keepWithNext = true;
    return block;
}

PaperBlock dutyBlock(const Paper& paper, const ServiceList& list, const DutyDue& due, const Speech& speech) {
    const ServiceItem& item = *findItem(list.season.items, due.item);
    const Duty& duty = *findDuty(item, due.duty);
    PaperBlock block;
    block.marks.push_back({PaperMark::Kind::TickBox, QRectF(1, 1.5, boxSize, boxSize)});
    const double blankX = paper.width() - blankWidth;
    const double timeX = blankX - timeWidth;
    const double whenX = timeX - whenWidth;
    double y = paper.put(block, {whatColumn, 0, whenX - whatColumn - gap}, shown(duty.name), PaperStyle::Strong);
    const QString reminders = remindersOf(duty, speech);
    if (!reminders.isEmpty()) {
        block.marks.push_back({PaperMark::Kind::Caution, QRectF(whatColumn, y + 2, 9, 8.5)});
        y += paper.put(block, {whatColumn + 13, y, whenX - whatColumn - 13 - gap}, reminders, PaperStyle::Small);
    }
    double right =
        paper.put(block, {whenX, 0, whenWidth - gap}, likelyText(due.due, list.outlook.today, speech), PaperStyle::Body);
    QStringList facts;
    if (const QString range = rangeText(due.due, speech); !range.isEmpty()) facts += range;
    if (!due.due.neverDone) facts += leftText(due.due, speech);
    if (!due.missing.empty()) facts += missingText(due.missing, list.season, speech);
    right += paper.put(block, {whenX, right, whenWidth - gap}, facts.join(", "), PaperStyle::Small);
    paper.put(block, {timeX, 0, timeWidth - 4}, durationText(minutes(duty.minutes), speech), PaperStyle::Body);
    block.marks.push_back({PaperMark::Kind::Blank, QRectF(blankX, 0, blankWidth, 14)});
    block.height = std::max(y, right) + 3;
    return block;
}

QString placeOf(const MachineId& id, const SeasonState& season) {
    if (id.isEmpty()) return say(QT_TRANSLATE_NOOP("wording", "The house"));
    const Machine* machine = findMachine(season.centre, id);
    return shown(machine ? machine->name : id.value);
}

/// By machine, each with what is due first; the house last.
Blocks dutyBlocks(const Paper& paper, const ServiceList& list, const std::vector<DutyDue>& due, const Speech& speech) {
    std::vector<MachineId> places;
    for (const Machine& machine : list.season.centre.machines)
        places.push_back(machine.id);
    places.emplace_back();
    Blocks blocks;
    for (const MachineId& place : places) {
        bool first = true;
        for (const DutyDue& one : due) {
            if (one.machine != place) continue;
            if (first) blocks.push_back(sectionBlock(paper, placeOf(place, list.season)));
            blocks.push_back(dutyBlock(paper, list, one, speech));
            first = false;
        }
    }
    return blocks;
}

Blocks footBlocks(const Paper& paper, const ServiceList& list, const std::vector<DutyDue>& due, const Speech& speech) {
    std::set<QByteArray> used;
    for (const DutyDue& one : due) {
        const Duty& duty = *findDuty(*findItem(list.season.items, one.item), one.duty);
        used.insert(duty.cautions.begin(), duty.cautions.end());
    }
    QStringList cautions;
    QStringList sources;
    for (const QByteArray& rule : used) {
        cautions += text(Finding{Severity::Warning, rule, {}, {}}, speech);
        const QString source = QString::fromLatin1(cautionOf(rule).source);
        if (!source.isEmpty() && !source.startsWith("common")) sources += source;
    }
    Blocks blocks;
    for (const QString& caution : cautions) {
        PaperBlock block;
        block.marks.push_back({PaperMark::Kind::Caution, QRectF(0, 2, 9, 8.5)});
        block.height = paper.put(block, {13, 0, paper.width() - 13}, caution, PaperStyle::Small);
        blocks.push_back(std::move(block));
    }
    QString fine = text(Finding{Severity::Note, "caution.defer", {}, {}}, speech);
    if (!sources.isEmpty()) fine += ' ' + text(Finding{Severity::Note, "caution.sources", sources.join("; "), {}}, speech);
    blocks.push_back(textBlock(paper, fine, PaperStyle::Fine, 3));
    return blocks;
}

double heightOf(const Blocks& blocks) {
    double sum = 0;
    for (const PaperBlock& block : blocks)
        sum += block.height;
    return sum;
}

/// The duties that fit between what stands above and below, those that are due first.
Blocks pageOf(const Paper& paper, const ServiceList& list, const Speech& speech) {
    const std::vector<DutyDue> all = dueBy(list.outlook, list.until);
    const Blocks head{headBlock(paper, list, speech),
                      textBlock(paper, serviceHeadline(list.outlook, list.season, speech), PaperStyle::Strong),
                      columnsBlock(paper)};
    for (size_t n = all.size();; --n) {
        const std::vector<DutyDue> due(all.begin(), all.begin() + std::ptrdiff_t(n));
        Blocks blocks = head;
        for (PaperBlock& block : dutyBlocks(paper, list, due, speech))
            blocks.push_back(std::move(block));
        if (n < all.size()) {
            const QString more = say(QT_TRANSLATE_N_NOOP("wording", "%n more until %1"), int(all.size() - n));
            blocks.push_back(textBlock(paper, more.arg(dayText(list.until, speech)), PaperStyle::Body, 4));
        }
        for (PaperBlock& block : footBlocks(paper, list, due, speech))
            blocks.push_back(std::move(block));
        if (n == 0 || heightOf(blocks) <= paper.height() - footerRoom) return blocks;
    }
}

}  // namespace

int paintService(QPagedPaintDevice& device, const ServiceList& list, const Speech& speech) {
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    return paintPages(device, paper, {pageOf(paper, list, speech)}, shown(list.season.centre.facts.name).left(60), speech);
}

Outcome writeServicePdf(const QString& path, const ServiceList& list, const Speech& speech, PaperSize size) {
    const QString title = shown(list.season.centre.facts.name);
    return writePdf(path, title, size, [&](QPagedPaintDevice& device) { return paintService(device, list, speech); });
}

}  // namespace laneward
