// The table of strokes with its own keys: choices for way and conditioner, Ctrl+Z for what was typed here, and a signal for the
// stroke at the cursor.
#pragma once

#include <QTableView>

namespace laneward {

class StrokesModel;

class StrokesTable : public QTableView {
    Q_OBJECT

public:
    explicit StrokesTable(StrokesModel* model, QWidget* parent = nullptr);

Q_SIGNALS:
    void undoAsked();
    void redoAsked();

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

}  // namespace laneward
