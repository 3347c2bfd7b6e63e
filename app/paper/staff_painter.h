// Paints staff hours, each week on a page of its own: the same code for printer, preview and PDF.
#pragma once

#include "app/paper/paper_pages.h"
#include "core/season/staff_hours.h"

namespace laneward {

struct StaffSheet {
    QString centre;
    Instant printed;
    std::vector<StaffWeek> weeks;
};

/// Returns the number of pages, 0 when the device cannot be painted on or there is no week.
int paintStaffHours(QPagedPaintDevice& device, const StaffSheet& sheet, const Speech& speech);
/// Errors: as writePdf().
Outcome writeStaffHoursPdf(const QString& path, const StaffSheet& sheet, const Speech& speech, PaperSize size);

}  // namespace laneward
