#include "app/pages/supplies/list_paper.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QPrintDialog>
#include <QPrinter>
#include <QTableView>

#include <algorithm>

namespace laneward {

namespace {

constexpr double gap = 8;
constexpr double least = 34;  ///< points that a column gets

QString say(const char* source) { return QCoreApplication::translate("laneward::ListPaper", source); }

struct Columns {
    std::vector<int> logical;
    std::vector<double> widths;
};

/// As wide as their longest texts need, in proportion where that is more than the page has.
Columns columnsOf(const Paper& paper, const QTableView& list) {
    Columns columns;
    const QAbstractItemModel& model = *list.model();
    for (int visual = 0; visual < model.columnCount(); ++visual) {
        const int c = list.horizontalHeader()->logicalIndex(visual);
        if (list.isColumnHidden(c)) continue;
        double width = paper.widthOf(model.headerData(c, Qt::Horizontal).toString(), PaperStyle::Small);
        for (int row = 0; row < model.rowCount(); ++row)
            width = std::max(width, paper.widthOf(model.index(row, c).data().toString(), PaperStyle::Body));
        columns.logical.push_back(c);
        columns.widths.push_back(std::max(least, width + gap));
    }
    double wanted = 0;
    for (const double width : columns.widths)
        wanted += width;
    for (double& width : columns.widths)
        width *= std::min(1.0, paper.width() / wanted);
    return columns;
}

template <class TextOf>
PaperBlock rowBlock(const Paper& paper, const Columns& columns, PaperStyle style, TextOf textOf) {
    PaperBlock block;
    double x = 0;
    for (size_t n = 0; n < columns.logical.size(); ++n) {
        const double width = columns.widths[n] - gap;
        const QString text = textOf(columns.logical[n]);
        const double height = paper.heightOf(text, style, width);
        block.texts.push_back({QRectF(x, 0, width, height), text, style, false});
        block.height = std::max(block.height, height + 3);
        x += columns.widths[n];
    }
    return block;
}

}  // namespace

int paintList(QPagedPaintDevice& device, const QString& title, const QTableView& list, const Session& session) {
    const Speech speech = session.speech();
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    const QAbstractItemModel& model = *list.model();
    const QString centre = shown(session.season().centre.facts.name);
    Blocks blocks(1);
    blocks[0].height = paper.put(blocks[0], {0, 0, paper.width()}, title, PaperStyle::Title) + 6;
    const Columns columns = columnsOf(paper, list);
    const auto headOf = [&](int c) { return model.headerData(c, Qt::Horizontal).toString(); };
    blocks.push_back(rowBlock(paper, columns, PaperStyle::Small, headOf));
    blocks.back().marks.push_back({PaperMark::Kind::Rule, QRectF(0, blocks.back().height - 1, paper.width(), 0)});
    blocks.back().keepWithNext = true;
    for (int row = 0; row < model.rowCount(); ++row)
        blocks.push_back(
            rowBlock(paper, columns, PaperStyle::Body, [&](int c) { return model.index(row, c).data().toString(); }));
    const QString footer =
        say(QT_TRANSLATE_NOOP("laneward::ListPaper", "%1, %2")).arg(centre.left(60), dateTimeText(session.now(), speech));
    return paintPages(device, paper, {blocks}, footer, speech);
}

bool askPrinter(QPrinter& printer, const Session& session, QWidget* over) {
    prepare(printer, session.season().centre.facts.settings.letterPaper ? PaperSize::Letter : PaperSize::A4);
    QPrintDialog dialog(&printer, over);
    return dialog.exec() == QDialog::Accepted;
}

void printList(const QString& title, const QTableView& list, Session& session, QWidget* over) {
    QPrinter printer(QPrinter::HighResolution);
    if (!askPrinter(printer, session, over)) return;
    if (paintList(printer, title, list, session) > 0)
        Q_EMIT session.said(say(QT_TRANSLATE_NOOP("laneward::ListPaper", "The list is printed")));
    else
        Q_EMIT session.problem(
            say(QT_TRANSLATE_NOOP("laneward::ListPaper", "Nothing was printed: the printer cannot be painted on.")));
}

}  // namespace laneward
