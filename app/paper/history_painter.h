// What was done, on paper: a title, the list in columns across the page, the sums below.
#pragma once

#include "app/paper/paper_pages.h"
#include "core/documents/history_list.h"

namespace laneward {

/// More entries than these are hundreds of pages: a list for a file, not for paper.
inline constexpr size_t mostOnPaper = 2'000;

/// Across the page. Returns the number of pages, 0 when the device cannot be painted on.
int paintHistory(QPagedPaintDevice& device, const HistorySheet& sheet, const Speech& speech);
Outcome writeHistoryPdf(const QString& path, const HistorySheet& sheet, const Speech& speech, PaperSize size);

}  // namespace laneward
