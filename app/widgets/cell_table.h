// A table to type numbers into: Enter goes on with the cell below, Tab leaves it behind the last cell, a row or column from a
// spreadsheet can be pasted on a cell, and what is still being typed can be taken in before the form is read. The model's
// setData() takes pasted text whole.
#pragma once

#include <QTableView>

namespace laneward {

class CellTable : public QTableView {
    Q_OBJECT

public:
    explicit CellTable(QAbstractItemModel* model, QWidget* parent = nullptr);

    void finishEditing();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

private:
    bool isLast(bool forward);
};

}  // namespace laneward
