#include "app/paper/sheet_painter.h"

#include "app/paper/sheet_blocks.h"
#include "core/documents/sheet_words.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

namespace laneward {

namespace {

constexpr double footerHeight = 15;
constexpr double marginMillimetres = 10;

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

using Blocks = std::vector<PaperBlock>;

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

PaperBlock footer(const Paper& paper, const QString& left, const QString& right) {
    PaperBlock block;
    block.height = footerHeight;
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, 2, paper.width(), 0)});
    block.texts.push_back({QRectF(0, 4, paper.width() - 90, footerHeight - 4), left, PaperStyle::Small, false});
    block.texts.push_back({QRectF(paper.width() - 90, 4, 90, footerHeight - 4), right, PaperStyle::Small, true});
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

/// A block and those that must stay with it.
double togetherHeight(const Blocks& blocks, size_t first) {
    double height = blocks[first].height;
    for (size_t n = first; n + 1 < blocks.size() && blocks[n].keepWithNext; ++n)
        height += blocks[n + 1].height;
    return height;
}

std::vector<Blocks> pagesOf(Blocks blocks, double room) {
    std::vector<Blocks> pages(1);
    double used = 0;
    for (size_t n = 0; n < blocks.size(); ++n) {
        if (used > 0 && used + togetherHeight(blocks, n) > room) {
            pages.emplace_back();
            used = 0;
        }
        used += blocks[n].height;
        pages.back().push_back(std::move(blocks[n]));
    }
    return pages;
}

QString footerText(const JobSheet& sheet, const Speech& speech) {
    return shown(sheet.centre).left(40) + ", " + dayText(sheet.date, speech) + ", " + versionText(sheet, speech);
}

QString pageText(size_t page, size_t pages, const Speech& speech) {
    return say(QT_TRANSLATE_NOOP("wording", "page %1 of %2"))
        .arg(speech.locale.toString(qulonglong(page)), speech.locale.toString(qulonglong(pages)));
}

}  // namespace

void prepare(QPagedPaintDevice& device, PaperSize size) {
    device.setPageLayout(QPageLayout(QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait,
                                     QMarginsF(marginMillimetres, marginMillimetres, marginMillimetres, marginMillimetres),
                                     QPageLayout::Millimeter));
}

int paintSheet(QPagedPaintDevice& device, const JobSheet& sheet, const Speech& speech) {
    const Paper paper(device, speech.locale.textDirection() == Qt::RightToLeft);
    const double room = paper.height() - footerHeight;
    const std::vector<Blocks> pages = pagesOf(allBlocks(paper, sheet, speech), room);
    QPainter painter;
    if (!painter.begin(&device)) return 0;
    for (size_t page = 0; page < pages.size(); ++page) {
        if (page > 0 && !device.newPage()) return 0;
        double top = 0;
        for (const PaperBlock& block : pages[page]) {
            paper.paint(painter, block, top);
            top += block.height;
        }
        paper.paint(painter, footer(paper, footerText(sheet, speech), pageText(page + 1, pages.size(), speech)), room);
    }
    return painter.end() ? int(pages.size()) : 0;
}

Outcome writeSheetPdf(const QString& path, const JobSheet& sheet, const Speech& speech, PaperSize size) {
    // A rename would put a file in the place of a device or a pipe.
    if (QFileInfo::exists(path) && !QFileInfo(path).isFile()) return fault(ErrorKind::Io, "file.not-a-file", path);
    // The PDF engine does not look at what its writes return, so it writes to memory and the file is written by us.
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    int pages = 0;
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(shown(sheet.centre) + " " + sheet.date.toString(Qt::ISODate));
        prepare(writer, size);
        pages = paintSheet(writer, sheet, speech);
    }
    QSaveFile file(path);
    const bool written =
        pages > 0 && file.open(QIODevice::WriteOnly) && file.write(buffer.data()) == buffer.size() && file.commit();
    if (!written) return fault(ErrorKind::Io, "file.not-written", path, {file.errorString()});
    return Nothing{};
}

}  // namespace laneward
