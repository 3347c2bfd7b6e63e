// Paints a job sheet on pages: the same code for printer, preview and PDF.
//
//     Outcome done = writeSheetPdf("tonight.pdf", sheet, speech, PaperSize::A4);
//
// Needs a QGuiApplication (for fonts); works with the platform 'offscreen'.
#pragma once

#include "app/paper/paper_pages.h"
#include "core/documents/job_sheet.h"
#include "core/documents/wording.h"

namespace laneward {

/// Paints on a device whose page size and margins are set (see prepare()). Returns the number of pages, 0 when the device
/// cannot be painted on.
int paintSheet(QPagedPaintDevice& device, const JobSheet& sheet, const Speech& speech);

/// Written beside `path` and renamed when it is whole. Errors: Io "file.not-written", "file.not-a-file".
Outcome writeSheetPdf(const QString& path, const JobSheet& sheet, const Speech& speech, PaperSize size);

}  // namespace laneward
