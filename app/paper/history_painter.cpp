#include "app/paper/history_painter.h"

#include <algorithm>
#include <numeric>

namespace laneward {

namespace {

constexpr double gap = 8;
constexpr double least = 30;            // points that a column gets
constexpr qsizetype mostLetters = 500;  // of a cell: a row must fit on a page
constexpr double mostNames = 96;        // points that a column of names takes before it breaks into lines

/// As wide as their texts need, names not beyond reason; what was done takes the rest.
std::vector<double> widthsOf(const Paper& paper, const HistorySheet& sheet) {
    std::vector<double> widths;
    for (size_t column = 0; column < sheet.columns.size(); ++column) {
        double width = paper.widthOf(sheet.headings[qsizetype(column)], PaperStyle::Small);
        for (size_t row = 0; row < sheet.rowCount(); ++row)
            width = std::max(width, paper.widthOf(sheet.row(row)[column], PaperStyle::Small));
        const bool isProse = sheet.columns[column] == HistoryColumn::Words;
        const bool isTime = sheet.columns[column] == HistoryColumn::When;
        widths.push_back(isProse ? 0 : std::clamp(width + 1, least, isTime ? paper.width() : mostNames) + gap);
    }
    const auto prose = std::find(sheet.columns.begin(), sheet.columns.end(), HistoryColumn::Words);
    if (prose == sheet.columns.end()) return widths;
    const double others = std::accumulate(widths.begin(), widths.end(), 0.0);
    widths[size_t(prose - sheet.columns.begin())] = std::max(least * 3, paper.width() - others);
    const double all = std::accumulate(widths.begin(), widths.end(), 0.0);
    if (all > paper.width())
        for (double& width : widths)
            width *= paper.width() / all;
    return widths;
}

PaperBlock rowBlock(const Paper& paper, const HistorySheet& sheet, const std::vector<double>& widths,
                    std::span<const QString> cells) {
    PaperBlock block;
    double x = 0;
    for (size_t column = 0; column < widths.size(); ++column) {
        QString text = cells[column];
        if (text.size() > mostLetters) text = text.left(mostLetters) + u'…';
        const double width = widths[column] - gap;
        const double height = paper.heightOf(text, PaperStyle::Small, width);
        const bool isNumber = sheet.columns[column] >= HistoryColumn::Meter;
        block.texts.push_back({QRectF(x, 0, width, height), text, PaperStyle::Small, isNumber});
        if (!text.isEmpty()) block.height = std::max(block.height, height + 3);
        x += widths[column];
    }
    return block;
}

PaperBlock proseBlock(const Paper& paper, const QString& text, PaperStyle style) {
    PaperBlock block;
    block.height = 4 + paper.put(block, {0, 4, paper.width()}, text, style);
    return block;
}

}  // namespace

int paintHistory(QPagedPaintDevice& device, const HistorySheet& sheet, const Speech& speech) {
    device.setPageOrientation(QPageLayout::Landscape);
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    Blocks blocks{proseBlock(paper, sheet.title, PaperStyle::Title), proseBlock(paper, sheet.headline, PaperStyle::Strong)};
    blocks.back().height += 6;
    const std::vector<double> widths = widthsOf(paper, sheet);
    blocks.push_back(rowBlock(paper, sheet, widths, sheet.headings));
    blocks.back().marks.push_back({PaperMark::Kind::Rule, QRectF(0, blocks.back().height - 1, paper.width(), 0)});
    blocks.back().keepWithNext = true;
    for (size_t row = 0; row < sheet.rowCount(); ++row)
        blocks.push_back(rowBlock(paper, sheet, widths, sheet.row(row)));
    for (const QString& line : sheet.sums)
        blocks.push_back(proseBlock(paper, line, PaperStyle::Body));
    return paintPages(device, paper, {blocks}, sheet.footer, speech);
}

Outcome writeHistoryPdf(const QString& path, const HistorySheet& sheet, const Speech& speech, PaperSize size) {
    return writePdf(path, sheet.title, size, [&](QPagedPaintDevice& device) { return paintHistory(device, sheet, speech); });
}

}  // namespace laneward
