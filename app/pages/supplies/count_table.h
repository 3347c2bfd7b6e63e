// The table of the count sheet: Enter, Down and Tab go from one field that is counted to the next, Up and Shift+Tab back.
#pragma once

#include "app/widgets/cell_table.h"

namespace laneward {

class CountModel;

class CountTable : public CellTable {
    Q_OBJECT

public:
    explicit CountTable(CountModel* model, QWidget* parent = nullptr);

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
};

}  // namespace laneward
