#include "app/paper/paper_pages.h"

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

PaperBlock footerBlock(const Paper& paper, const QString& left, const QString& right) {
    PaperBlock block;
    block.height = footerHeight;
    block.marks.push_back({PaperMark::Kind::Rule, QRectF(0, 2, paper.width(), 0)});
    block.texts.push_back({QRectF(0, 4, paper.width() - 90, footerHeight - 4), left, PaperStyle::Small, false});
    block.texts.push_back({QRectF(paper.width() - 90, 4, 90, footerHeight - 4), right, PaperStyle::Small, true});
    return block;
}

/// A block and those that must stay with it.
double togetherHeight(const Blocks& blocks, size_t first) {
    double height = blocks[first].height;
    for (size_t n = first; n + 1 < blocks.size() && blocks[n].keepWithNext; ++n)
        height += blocks[n + 1].height;
    return height;
}

std::vector<Blocks> pagesOf(const Blocks& blocks, double room) {
    std::vector<Blocks> pages(1);
    double used = 0;
    for (size_t n = 0; n < blocks.size(); ++n) {
        if (used > 0 && used + togetherHeight(blocks, n) > room) {
            pages.emplace_back();
            used = 0;
        }
        used += blocks[n].height;
        pages.back().push_back(blocks[n]);
    }
    return pages;
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

int paintPages(QPagedPaintDevice& device, const Paper& paper, const std::vector<Blocks>& parts, const QString& footer,
               const Speech& speech) {
    const double room = paper.height() - footerHeight;
    QPainter painter;
    if (!painter.begin(&device)) return 0;
    int painted = 0;
    for (const Blocks& part : parts) {
        const std::vector<Blocks> pages = pagesOf(part, room);
        for (size_t page = 0; page < pages.size(); ++page) {
            if (painted++ > 0 && !device.newPage()) return 0;
            double top = 0;
            for (const PaperBlock& block : pages[page]) {
                paper.paint(painter, block, top);
                top += block.height;
            }
            paper.paint(painter, footerBlock(paper, footer, pageText(page + 1, pages.size(), speech)), room);
        }
    }
    return painter.end() ? painted : 0;
}

Outcome writePdf(const QString& path, const QString& title, PaperSize size, const std::function<int(QPagedPaintDevice&)>& paint) {
    // A rename would put a file in the place of a device or a pipe.
    if (QFileInfo::exists(path) && !QFileInfo(path).isFile()) return fault(ErrorKind::Io, "file.not-a-file", path);
    // The PDF engine does not look at what its writes return, so it writes to memory and the file is written by us.
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    int pages = 0;
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(title);
        prepare(writer, size);
        pages = paint(writer);
    }
    QSaveFile file(path);
    const bool written =
        pages > 0 && file.open(QIODevice::WriteOnly) && file.write(buffer.data()) == buffer.size() && file.commit();
    if (!written) return fault(ErrorKind::Io, "file.not-written", path, {file.errorString()});
    return Nothing{};
}

}  // namespace laneward
