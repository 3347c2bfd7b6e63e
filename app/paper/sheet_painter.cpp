#include "app/paper/sheet_painter.h"

#include "app/paper/sheet_blocks.h"
#include "core/documents/sheet_words.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

PaperBlock headBlock(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    PaperBlock block;
    const double side = 160;
    const double title = paper.put(block, {0, 0, paper.width() - side}, shown(sheet.centre), PaperStyle::Title);
    const QString what = say(QT_TRANSLATE_NOOP("wording", "Job sheet"));
    block.texts.push_back({QRectF(paper.width() - side, 0, side, title), what, PaperStyle::Title, true});
    const double day = paper.put(block, {0, title, paper.width() - side}, dayText(sheet.date, speech), PaperStyle::Strong);
    block.texts.push_back({QRectF(paper.width() - side, title, side, day), versionText(sheet, speech), PaperStyle::Strong, true});
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, title + day + 2, paper.width(), 0)});
    block.height = title + day + 4;
    return block;
}

Blocks allBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech) {
    Blocks all{headBlock(paper, sheet, speech)};
    for (const auto part : {shortfallBlocks, readinessBlocks, noteBlocks, eventBlocks, stepBlocks, footBlocks}) {
        for (PaperBlock& block : part(paper, sheet, speech))
            all.push_back(std::move(block));
    }
    return all;
}

QString footerText(const JobSheet& sheet, const Speech& speech) {
    return shown(sheet.centre).left(40) + ", " + dayText(sheet.date, speech) + ", " + versionText(sheet, speech);
}

}  // namespace

int paintSheet(QPagedPaintDevice& device, const JobSheet& sheet, const Speech& speech) {
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    return paintPages(device, paper, {allBlocks(paper, sheet, speech)}, footerText(sheet, speech), speech);
}

Outcome writeSheetPdf(const QString& path, const JobSheet& sheet, const Speech& speech, PaperSize size) {
    return writePdf(path, shown(sheet.centre) + " " + sheet.date.toString(Qt::ISODate), size,
                    [&](QPagedPaintDevice& device) { return paintSheet(device, sheet, speech); });
}

}  // namespace laneward
