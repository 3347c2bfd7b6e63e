// Blocks put on pages, with a footer on each, and written as a PDF: what every printed document shares.
#pragma once

#include "app/paper/paper_block.h"
#include "core/documents/wording.h"

#include <functional>

namespace laneward {

enum class PaperSize { A4, Letter };

using Blocks = std::vector<PaperBlock>;

/// Page size and margins of a document.
void prepare(QPagedPaintDevice& device, PaperSize size);

/// Each part begins on a page of its own; "page x of y" counts within the part. Returns the number of pages, 0 when the device
/// cannot be painted on.
int paintPages(QPagedPaintDevice& device, const Paper& paper, const std::vector<Blocks>& parts, const QString& footer,
               const Speech& speech);

/// `paint` returns the number of pages. Written beside `path` and renamed when it is whole. Errors: Io "file.not-written",
/// "file.not-a-file".
Outcome writePdf(const QString& path, const QString& title, PaperSize size, const std::function<int(QPagedPaintDevice&)>& paint);

}  // namespace laneward
