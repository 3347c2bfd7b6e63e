#include "app/paper/order_painter.h"

#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

constexpr double rowGap = 3;

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

/// Columns by their share of the page: article, supply, packs, each, total.
constexpr std::array<double, 5> shares{0.14, 0.38, 0.16, 0.16, 0.16};
constexpr size_t firstNumber = 3;

using Cells = std::array<QString, shares.size()>;

PaperBlock rowBlock(const Paper& paper, const Cells& cells, PaperStyle style) {
    PaperBlock block;
    double x = 0;
    double height = 0;
    for (size_t n = 0; n < cells.size(); ++n) {
        const double width = shares[n] * paper.width() - 6;
        const double own = paper.heightOf(cells[n], style, width);
        block.texts.push_back({QRectF(x, 0, width, own), cells[n], style, n >= firstNumber});
        height = std::max(height, own);
        x += shares[n] * paper.width();
    }
    block.height = height + rowGap;
    return block;
}

PaperBlock textBlock(const Paper& paper, const QString& text, PaperStyle style, double above = 0) {
    PaperBlock block;
    block.height = above + paper.put(block, {0, above, paper.width()}, text, style);
    return block;
}

PaperBlock headBlock(const Paper& paper, const PurchaseOrder& order, const Speech& speech) {
    PaperBlock block;
    const double side = paper.width() * 0.4;
    const QString what = say(QT_TRANSLATE_NOOP("wording", "Order")) + ' ' + shown(order.number);
    const QString when = order.date ? dayText(*order.date, speech) : say(QT_TRANSLATE_NOOP("wording", "Draft: not placed yet"));
    const double title = paper.put(block, {0, 0, paper.width() - side}, shown(order.centre), PaperStyle::Title);
    block.texts.push_back({QRectF(paper.width() - side, 0, side, title), what, PaperStyle::Title, true});
    const double day = paper.heightOf(when, PaperStyle::Strong, side);
    block.texts.push_back({QRectF(paper.width() - side, title, side, day), when, PaperStyle::Strong, true});
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, title + day + 2, paper.width(), 0)});
    block.height = title + day + 8;
    return block;
}

PaperBlock ruled(const Paper& paper, PaperBlock block) {
    for (PaperText& text : block.texts)
        text.box.translate(0, 4);
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, 1, paper.width(), 0)});
    block.height += 4;
    return block;
}

Blocks blocksOf(const Paper& paper, const PurchaseOrder& order, const Speech& speech) {
    Blocks blocks{headBlock(paper, order, speech)};
    blocks.push_back(textBlock(paper, shown(order.supplier), PaperStyle::Strong));
    for (const QString& line : order.address.split('\n', Qt::SkipEmptyParts))
        blocks.push_back(textBlock(paper, shown(line), PaperStyle::Body));
    blocks.push_back(textBlock(paper, QString(' '), PaperStyle::Body));
    blocks.push_back(rowBlock(paper,
                              {say(QT_TRANSLATE_NOOP("wording", "Article")), say(QT_TRANSLATE_NOOP("wording", "Supply")),
                               say(QT_TRANSLATE_NOOP("wording", "Packs")), say(QT_TRANSLATE_NOOP("wording", "Each")),
                               say(QT_TRANSLATE_NOOP("wording", "Total"))},
                              PaperStyle::Small));
    blocks.back().keepWithNext = true;
    for (size_t n = 0; n < order.lines.size(); ++n) {
        const PurchaseLine& line = order.lines[n];
        PaperBlock row = rowBlock(paper,
                                  {shown(line.article), shown(line.supply), packsText(line.packs, line.pack, line.kind, speech),
                                   moneyText(line.each, speech), moneyText(line.total, speech)},
                                  PaperStyle::Body);
        blocks.push_back(n == 0 ? ruled(paper, std::move(row)) : std::move(row));
    }
    const auto sum = [&](const char* name, const Money& money, PaperStyle style) {
        return rowBlock(paper, {QString(), say(name), QString(), QString(), moneyText(money, speech)}, style);
    };
    blocks.push_back(ruled(paper, sum(QT_TRANSLATE_NOOP("wording", "Freight"), order.freight, PaperStyle::Body)));
    blocks.push_back(sum(QT_TRANSLATE_NOOP("wording", "Total"), order.total, PaperStyle::Strong));
    if (!order.person.isEmpty()) {
        const QString by = say(QT_TRANSLATE_NOOP("wording", "Ordered by %1")).arg(shown(order.person));
        blocks.push_back(textBlock(paper, by, PaperStyle::Body, 10));
    }
    if (!order.note.isEmpty()) blocks.push_back(textBlock(paper, shown(order.note), PaperStyle::Body, 10));
    return blocks;
}

}  // namespace

int paintOrders(QPagedPaintDevice& device, const std::vector<PurchaseOrder>& orders, const Speech& speech) {
    if (orders.empty()) return 0;
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    std::vector<Blocks> parts;
    for (const PurchaseOrder& order : orders)
        parts.push_back(blocksOf(paper, order, speech));
    return paintPages(device, paper, parts, shown(orders.front().centre).left(60), speech);
}

Outcome writeOrdersPdf(const QString& path, const std::vector<PurchaseOrder>& orders, const Speech& speech, PaperSize size) {
    const QString title = orders.empty() ? QString() : shown(orders.front().centre) + ' ' + shown(orders.front().number);
    return writePdf(path, title, size, [&](QPagedPaintDevice& device) { return paintOrders(device, orders, speech); });
}

}  // namespace laneward
