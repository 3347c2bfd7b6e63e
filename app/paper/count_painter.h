// Paints the count sheet: a line for every place with a blank to write on. Black and white; one page for a usual store.
#pragma once

#include "app/paper/paper_pages.h"

namespace laneward {

struct CountSheetLine {
    QString supply;
    QString place;
    QString lot;
    QString books;  ///< printed only when the sheet shows them
    QString unit;
};

struct CountSheet {
    QString centre;
    Instant made;
    bool withBooks = false;  ///< otherwise the count is blind
    std::vector<CountSheetLine> lines;
};

/// Returns the number of pages, 0 when the device cannot be painted on.
int paintCount(QPagedPaintDevice& device, const CountSheet& sheet, const Speech& speech);
/// Errors: as writePdf().
Outcome writeCountPdf(const QString& path, const CountSheet& sheet, const Speech& speech, PaperSize size);

}  // namespace laneward
