#include "app/paper/count_painter.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

constexpr double gap = 6;
constexpr double roomy = 24;      ///< points of a line that is easily written on
constexpr double tight = 17;      ///< the least that still is
constexpr double furniture = 95;  ///< points of head, titles, signature and footer

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

/// Columns by their share of the page: supply, place, lot, books, counted, unit.
using Shares = std::array<double, 6>;
constexpr Shares blind{0.27, 0.27, 0.18, 0.0, 0.21, 0.07};
constexpr Shares told{0.25, 0.24, 0.16, 0.11, 0.17, 0.07};
constexpr size_t booksColumn = 3;
constexpr size_t countedColumn = 4;

using Cells = std::array<QString, Shares().size()>;

PaperBlock rowBlock(const Paper& paper, const Shares& shares, const Cells& cells, PaperStyle style) {
    PaperBlock block;
    double x = 0;
    for (size_t n = 0; n < cells.size(); ++n) {
        const double width = shares[n] * paper.width() - gap;
        if (width > 0) {
            const double height = paper.heightOf(cells[n], style, width);
            block.texts.push_back({QRectF(x, 0, width, height), cells[n], style, n == booksColumn});
            block.height = std::max(block.height, height);
        }
        x += shares[n] * paper.width();
    }
    return block;
}

/// Text stands on the line that is written on.
PaperBlock lineBlock(const Paper& paper, const Shares& shares, const Cells& cells, double least) {
    PaperBlock block = rowBlock(paper, shares, cells, PaperStyle::Body);
    const double down = std::max(0.0, least - block.height - 2);
    for (PaperText& text : block.texts)
        text.box.translate(0, down);
    block.height += down + 2;
    double x = 0;
    for (size_t n = 0; n < countedColumn; ++n)
        x += shares[n] * paper.width();
    block.marks.push_back({PaperMark::Kind::Blank, QRectF(x, 0, shares[countedColumn] * paper.width() - gap, block.height - 1)});
    return block;
}

PaperBlock headBlock(const Paper& paper, const CountSheet& sheet, const Speech& speech) {
    PaperBlock block;
    const double side = paper.width() * 0.35;
    const double title = paper.put(block, {0, 0, paper.width() - side}, shown(sheet.centre), PaperStyle::Title);
    block.texts.push_back({QRectF(paper.width() - side, 0, side, title), say(QT_TRANSLATE_NOOP("wording", "Count sheet")),
                           PaperStyle::Title, true});
    const QString rule = say(QT_TRANSLATE_NOOP("wording", "Write what is really there; a line left empty is not counted."));
    const QString when = dateTimeText(sheet.made, speech);
    const double next = paper.put(block, {0, title, paper.width() - side}, rule, PaperStyle::Small);
    block.texts.push_back({QRectF(paper.width() - side, title, side, next), when, PaperStyle::Small, true});
    block.height = title + next + 6;
    return block;
}

/// Who counted, and when.
PaperBlock signature(const Paper& paper) {
    PaperBlock block;
    const double half = paper.width() / 2;
    const auto blank = [&](double from, const char* source) {
        const QString name = say(source);
        const double width = paper.widthOf(name, PaperStyle::Body) + 4;
        const double height = paper.put(block, {from, 12, width}, name, PaperStyle::Body);
        block.marks.push_back({PaperMark::Kind::Blank, QRectF(from + width, 12, half - width - 2 * gap, height)});
        block.height = std::max(block.height, 12 + height + 2);
    };
    blank(0, QT_TRANSLATE_NOOP("wording", "Counted by"));
    blank(half, QT_TRANSLATE_NOOP("wording", "Day and time"));
    return block;
}

Blocks blocksOf(const Paper& paper, const CountSheet& sheet, const Speech& speech) {
    const Shares& shares = sheet.withBooks ? told : blind;
    Blocks blocks{headBlock(paper, sheet, speech)};
    PaperBlock titles = rowBlock(paper, shares,
                                 {say(QT_TRANSLATE_NOOP("wording", "Supply")), say(QT_TRANSLATE_NOOP("wording", "Place")),
                                  say(QT_TRANSLATE_NOOP("wording", "Lot, container")), say(QT_TRANSLATE_NOOP("wording", "Books")),
                                  say(QT_TRANSLATE_NOOP("wording", "Counted")), say(QT_TRANSLATE_NOOP("wording", "Unit"))},
                                 PaperStyle::Small);
    titles.marks.push_back({PaperMark::Kind::Rule, QRectF(0, titles.height, paper.width(), 0)});
    titles.height += 2;
    titles.keepWithNext = true;
    blocks.push_back(titles);
    const double room = (paper.height() - furniture) / std::max<double>(1, double(sheet.lines.size()));
    const double line = std::clamp(room, tight, roomy);
    QString before;
    for (const CountSheetLine& one : sheet.lines) {
        // A supply is named once for all its places.
        const QString name = one.supply == before ? QString() : one.supply;
        before = one.supply;
        blocks.push_back(lineBlock(paper, shares, {name, one.place, one.lot, one.books, QString(), one.unit}, line));
    }
    blocks.back().keepWithNext = true;
    blocks.push_back(signature(paper));
    return blocks;
}

}  // namespace

int paintCount(QPagedPaintDevice& device, const CountSheet& sheet, const Speech& speech) {
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    return paintPages(device, paper, {blocksOf(paper, sheet, speech)}, shown(sheet.centre).left(60), speech);
}

Outcome writeCountPdf(const QString& path, const CountSheet& sheet, const Speech& speech, PaperSize size) {
    const QString title = shown(sheet.centre) + ' ' + say(QT_TRANSLATE_NOOP("wording", "Count sheet"));
    return writePdf(path, title, size, [&](QPagedPaintDevice& device) { return paintCount(device, sheet, speech); });
}

}  // namespace laneward
