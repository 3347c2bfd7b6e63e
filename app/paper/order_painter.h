// Paints purchase orders, each on a page of its own: the same code for printer, preview and PDF.
#pragma once

#include "app/paper/paper_pages.h"
#include "core/documents/purchase_order.h"

namespace laneward {

/// Returns the number of pages, 0 when the device cannot be painted on.
int paintOrders(QPagedPaintDevice& device, const std::vector<PurchaseOrder>& orders, const Speech& speech);
/// Errors: as writePdf().
Outcome writeOrdersPdf(const QString& path, const std::vector<PurchaseOrder>& orders, const Speech& speech, PaperSize size);

}  // namespace laneward
