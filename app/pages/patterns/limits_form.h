// What the centre itself asks of a tape reading: limits that are checked beside the published ones. Keeping them is one
// undoable edit.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QDoubleSpinBox;
class QFormLayout;

namespace laneward {

class LimitsForm : public QWidget {
    Q_OBJECT

public:
    explicit LimitsForm(Session& session, QWidget* parent = nullptr);

    void begin();

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QDoubleSpinBox* addLimit(QFormLayout* form, const QString& name, double most);
    void keep();

    Session& m_session;
    QDoubleSpinBox* m_lowest = nullptr;
    QDoubleSpinBox* m_error = nullptr;
    QDoubleSpinBox* m_leastTrack = nullptr;
    QDoubleSpinBox* m_mostTrack = nullptr;
};

}  // namespace laneward
