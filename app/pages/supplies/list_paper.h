// Lists on paper: a title, the columns that are shown, a row each.
#pragma once

#include "app/edits/session.h"
#include "app/paper/paper_pages.h"

class QPrinter;
class QTableView;

namespace laneward {

/// Returns the number of pages, 0 when the device cannot be painted on.
int paintList(QPagedPaintDevice& device, const QString& title, const QTableView& list, const Session& session);
/// Asks for a printer; says in the window what came of it.
void printList(const QString& title, const QTableView& list, Session& session, QWidget* over);

/// Asks for a printer, prepared for the centre's paper; false when it was left.
bool askPrinter(QPrinter& printer, const Session& session, QWidget* over);

}  // namespace laneward
