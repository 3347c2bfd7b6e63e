// What the lists of the pages have in common.
#pragma once

#include "app/edits/session.h"

class QAbstractItemModel;
class QTableView;
class QTabWidget;

namespace laneward {

/// A sortable list of whole rows with the tools of every list; `name` is the key of its choice of columns, `file` the name that
/// is offered for its CSV. Sorts by Qt::UserRole.
QTableView* listOf(QAbstractItemModel* model, const QString& name, const QString& file, Session& session, QWidget* parent);
/// Columns as wide as the first rows and the longest word of their titles need, and `air` more; titles break into lines.
void fitColumns(QTableView& list, int air = 12);
/// The row of the model that is chosen in the list, -1 = none.
int chosenRow(const QTableView& list);
void chooseRow(QTableView& list, int row);

/// Ctrl+Tab goes to the next tab from wherever the keyboard is on the page (some fields would keep it), and the keyboard to where
/// the page begins.
void walkTabs(QTabWidget& tabs, QWidget& page);

}  // namespace laneward
