#include "app/paper/sheet_blocks.h"

#include "core/documents/sheet_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace laneward {

namespace {

constexpr double columnGap = 16;
constexpr double blankWidth = 40;
constexpr qsizetype paragraph = 600;  ///< longer notes are cut into blocks of about so many characters

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

/// Volts and levels of one machine, with blanks to write, in a column.
double putMachine(const Paper& paper, PaperBlock& block, const PaperSpot& column, const SheetReadiness& machine,
                  const Speech& speech) {
    const double x = column.x;
    const double width = column.width;
    const double blankX = x + width - blankWidth;
    const double nowX = x + width * 0.36;
    const double tonightX = x + width * 0.55;
    const auto& measured = machine.readiness.volts;
    const QString volts = measured ? measuredVoltsText(*measured, speech) : QString();
    const double line = paper.heightOf(QString('X'), PaperStyle::Body, width);
    double y = std::max(line, paper.put(block, {x, 0, nowX - x - 4}, shown(machine.name), PaperStyle::Strong));
    paper.put(block, {nowX, 0, blankX - nowX - 4}, say(QT_TRANSLATE_NOOP("wording", "Volts")) + " " + volts, PaperStyle::Body);
    block.marks.push_back({PaperMark::Kind::Blank, QRectF(blankX, 0, blankWidth, line - 1)});
    for (const LevelLine& level : levelLines(machine, speech)) {
        const double name = paper.put(block, {x, y, nowX - x - 4}, level.name, PaperStyle::Body);
        const double now = paper.put(block, {nowX, y, tonightX - nowX - 4}, level.now, PaperStyle::Body);
        const double tonight = paper.put(block, {tonightX, y + 1, blankX - tonightX - 4}, level.tonight, PaperStyle::Small);
        block.marks.push_back({PaperMark::Kind::Blank, QRectF(blankX, y, blankWidth, line - 1)});
        y += std::max({name, now, tonight});
    }
    y += paper.put(block, {x, y, width}, voltsRule(machine, speech), PaperStyle::Small);
    for (const Finding& finding : machine.readiness.findings)
        y += paper.put(block, {x, y, width}, readinessText(finding, speech), PaperStyle::Small);
    return y;
}

QString eventLine(const SheetEvent& event, const Speech& speech) {
    return clockTime(event.booked.begin, speech) + "–" + clockTime(event.booked.end, speech) + "  " +
           laneNumbers(event.lanes, speech) + "  " + shown(event.title);
}

void append(std::vector<PaperBlock>& blocks, const Paper& paper, const QString& text, PaperStyle style, double indent) {
    for (qsizetype from = 0; from < text.size();) {
        qsizetype to = std::min(text.size(), from + paragraph);
        const qsizetype space = to < text.size() ? text.lastIndexOf(' ', to) : to;
        if (space > from) to = space;
        PaperBlock block;
        block.height = paper.put(block, {indent, 0, paper.width() - indent}, text.mid(from, to - from).trimmed(), style);
        blocks.push_back(std::move(block));
        from = to;
    }
}

}  // namespace

PaperBlock sectionBlock(const Paper& paper, const QString& title) {
    PaperBlock block;
    block.keepWithNext = true;
    const double height = paper.put(block, {0, 3, paper.width()}, title, PaperStyle::Section);
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, height + 3, paper.width(), 0)});
    block.height = height + 5;
    return block;
}

std::vector<PaperBlock> readinessBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    if (sheet.readiness.empty()) return {};
    std::vector<PaperBlock> blocks{sectionBlock(paper, say(QT_TRANSLATE_NOOP("wording", "Readiness")))};
    const double width = (paper.width() - columnGap) / 2;
    for (size_t n = 0; n < sheet.readiness.size(); n += 2) {
        PaperBlock block;
        block.height = putMachine(paper, block, {0, 0, width}, sheet.readiness[n], speech);
        if (n + 1 < sheet.readiness.size()) {
            block.height =
                std::max(block.height, putMachine(paper, block, {width + columnGap, 0, width}, sheet.readiness[n + 1], speech));
        }
        blocks.push_back(std::move(block));
    }
    return blocks;
}

std::vector<PaperBlock> eventBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    if (sheet.events.empty()) return {};
    std::vector<PaperBlock> blocks{sectionBlock(paper, say(QT_TRANSLATE_NOOP("wording", "On the lanes")))};
    const double width = (paper.width() - columnGap) / 2;
    const size_t rows = (sheet.events.size() + 1) / 2;
    for (size_t row = 0; row < rows; ++row) {
        PaperBlock block;
        block.height = paper.put(block, {0, 0, width}, eventLine(sheet.events[row], speech), PaperStyle::Small);
        if (row + rows < sheet.events.size()) {
            const QString other = eventLine(sheet.events[row + rows], speech);
            block.height = std::max(block.height, paper.put(block, {width + columnGap, 0, width}, other, PaperStyle::Small));
        }
        blocks.push_back(std::move(block));
    }
    return blocks;
}

std::vector<PaperBlock> noteBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    std::vector<PaperBlock> blocks;
    for (const HandOver& note : sheet.handOvers) {
        append(blocks, paper, clockTime(note.at, speech) + "  " + shown(note.text), PaperStyle::Body, 0);
    }
    if (!blocks.empty())
        blocks.insert(blocks.begin(), sectionBlock(paper, say(QT_TRANSLATE_NOOP("wording", "From the shift before"))));
    return blocks;
}

std::vector<PaperBlock> shortfallBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    if (sheet.shortfalls.empty()) return {};
    std::vector<PaperBlock> blocks{sectionBlock(paper, say(QT_TRANSLATE_NOOP("wording", "What cannot be met")))};
    for (const Shortfall& shortfall : sheet.shortfalls) {
        append(blocks, paper, shortfallText(shortfall, speech), PaperStyle::Strong, 0);
        append(blocks, paper, shortfallDetails(shortfall, speech).join("; "), PaperStyle::Body, 14);
    }
    return blocks;
}

std::vector<PaperBlock> footBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    std::vector<PaperBlock> blocks;
    PaperBlock note;
    const QString label = say(QT_TRANSLATE_NOOP("wording", "Hand-over:"));
    const double width = paper.widthOf(label, PaperStyle::Strong);
    const double line = 8 + paper.put(note, {0, 8, width}, label, PaperStyle::Strong);
    note.marks.push_back({PaperMark::Kind::Blank, QRectF(width + 4, 0, paper.width() - width - 4, line - 1)});
    note.marks.push_back({PaperMark::Kind::Blank, QRectF(0, line, paper.width(), 17)});
    note.height = line + 20;
    blocks.push_back(std::move(note));
    QStringList fine;
    for (const Finding& caution : sheet.cautions)
        fine += text(caution, speech);
    if (!sheet.cautions.empty()) fine += sourcesText(sheet, speech);
    append(blocks, paper, fine.join(' '), PaperStyle::Fine, 0);
    return blocks;
}

}  // namespace laneward
