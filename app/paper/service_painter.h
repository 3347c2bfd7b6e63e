// Paints what falls due on one page to pin to the wall: the same code for printer, preview and PDF.
#pragma once

#include "app/paper/paper_pages.h"
#include "core/documents/service_words.h"

namespace laneward {

/// What does not fit on the page is counted at its end. Returns the number of pages, 0 when the device cannot be painted on.
int paintService(QPagedPaintDevice& device, const ServiceList& list, const Speech& speech);
/// Errors: as writePdf().
Outcome writeServicePdf(const QString& path, const ServiceList& list, const Speech& speech, PaperSize size);

}  // namespace laneward
