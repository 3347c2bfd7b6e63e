#include "app/widgets/cell_table.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>

namespace laneward {

CellTable::CellTable(QAbstractItemModel* model, QWidget* parent) : QTableView(parent) {
    setModel(model);
    setEditTriggers(QAbstractItemView::AllEditTriggers);
    verticalHeader()->setDefaultSectionSize(qMax(26, fontMetrics().lineSpacing() + 8));
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setStretchLastSection(true);
}

void CellTable::finishEditing() {
    QWidget* editor = indexWidget(currentIndex());
    if (!editor) return;
    commitData(editor);
    closeEditor(editor, QAbstractItemDelegate::NoHint);
}

/// Tab would go round and round: behind the last cell and before the first it goes on with what stands beside the table.
bool CellTable::isLast(bool forward) {
    const QModelIndex here = currentIndex();
    const QModelIndex next = moveCursor(forward ? MoveNext : MovePrevious, Qt::NoModifier);
    if (!next.isValid()) return true;
    if (!here.isValid()) return false;
    const std::pair from(here.row(), here.column());
    const std::pair to(next.row(), next.column());
    return forward ? to <= from : to >= from;
}

void CellTable::keyPressEvent(QKeyEvent* event) {
    const bool isTab = event->key() == Qt::Key_Tab || event->key() == Qt::Key_Backtab;
    if (isTab && isLast(event->key() == Qt::Key_Tab)) return event->ignore();
    QModelIndex cell = currentIndex().isValid() ? currentIndex() : model()->index(0, 0);
    if (!(cell.flags() & Qt::ItemIsEditable)) cell = cell.siblingAtColumn(0);
    if (event->matches(QKeySequence::Paste)) {
        model()->setData(cell, QGuiApplication::clipboard()->text());
    } else if (event->matches(QKeySequence::Delete)) {
        model()->setData(cell, QString());
    } else {
        QTableView::keyPressEvent(event);
    }
}

void CellTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const bool forward = hint == QAbstractItemDelegate::EditNextItem;
    if ((forward || hint == QAbstractItemDelegate::EditPreviousItem) && isLast(forward)) {
        QTableView::closeEditor(editor, QAbstractItemDelegate::NoHint);
        focusNextPrevChild(forward);
        return;
    }
    // An editor that is closed because another row was chosen leads nowhere else.
    const bool isHere = indexWidget(currentIndex()) == editor;
    QTableView::closeEditor(editor, hint);
    const QModelIndex next = currentIndex().siblingAtRow(currentIndex().row() + 1);
    if (isHere && hint == QAbstractItemDelegate::SubmitModelCache && next.isValid()) setCurrentIndex(next);
}

}  // namespace laneward
