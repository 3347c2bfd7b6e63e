#include "app/paper/staff_painter.h"

#include "core/documents/staff_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

constexpr double rowGap = 6;
/// Columns by their share of the page: day, from, until, hours, overtime, outings.
constexpr std::array<double, 6> shares{0.36, 0.11, 0.11, 0.15, 0.15, 0.12};

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

PaperBlock rowBlock(const Paper& paper, const QStringList& cells, PaperStyle style) {
    PaperBlock block;
    double x = 0;
    for (size_t n = 0; n < shares.size() && n < size_t(cells.size()); ++n) {
        const double width = shares[n] * paper.width() - 6;
        const double height = paper.heightOf(cells[qsizetype(n)], style, width);
        block.texts.push_back({QRectF(x, 4, width, height), cells[qsizetype(n)], style, n > 0});
        block.height = std::max(block.height, height + 4 + rowGap);
        x += shares[n] * paper.width();
    }
    return block;
}

PaperBlock ruled(PaperBlock block, const Paper& paper) {
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, 0, paper.width(), 0)});
    return block;
}

PaperBlock textBlock(const Paper& paper, const QString& text, PaperStyle style, double above) {
    PaperBlock block;
    block.height = above + paper.put(block, {0, above, paper.width()}, text, style) + rowGap;
    return block;
}

/// A line to sign on: who checked the hours.
PaperBlock signature(const Paper& paper) {
    PaperBlock block = textBlock(paper, say(QT_TRANSLATE_NOOP("wording", "Checked by, on")), PaperStyle::Small, 34);
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, 30, paper.width() * 0.45, 0)});
    return block;
}

Blocks blocksOf(const Paper& paper, const StaffSheet& sheet, const StaffWeek& week, const Speech& speech) {
    Blocks blocks{textBlock(paper, shown(sheet.centre) + QStringLiteral(": ") + say(QT_TRANSLATE_NOOP("wording", "staff hours")),
                            PaperStyle::Title, 0),
                  textBlock(paper, staffTitle(week, speech), PaperStyle::Strong, 0)};
    blocks.push_back(rowBlock(paper, staffHeader(), PaperStyle::Small));
    blocks.back().keepWithNext = true;
    for (const StaffDay& day : week.days)
        blocks.push_back(ruled(rowBlock(paper, staffRow(day, speech), PaperStyle::Body), paper));
    blocks.push_back(ruled(rowBlock(paper, staffTotal(week, speech), PaperStyle::Strong), paper));
    blocks.push_back(textBlock(paper, staffNote(), PaperStyle::Small, 10));
    blocks.push_back(signature(paper));
    return blocks;
}

}  // namespace

int paintStaffHours(QPagedPaintDevice& device, const StaffSheet& sheet, const Speech& speech) {
    if (sheet.weeks.empty()) return 0;
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    std::vector<Blocks> parts;
    for (const StaffWeek& week : sheet.weeks)
        parts.push_back(blocksOf(paper, sheet, week, speech));
    const QString footer = shown(sheet.centre).left(60) + QStringLiteral(", ") + dateTimeText(sheet.printed, speech);
    return paintPages(device, paper, parts, footer, speech);
}

Outcome writeStaffHoursPdf(const QString& path, const StaffSheet& sheet, const Speech& speech, PaperSize size) {
    const QString title = shown(sheet.centre) + QStringLiteral(": ") + say(QT_TRANSLATE_NOOP("wording", "staff hours"));
    return writePdf(path, title, size, [&](QPagedPaintDevice& device) { return paintStaffHours(device, sheet, speech); });
}

}  // namespace laneward
