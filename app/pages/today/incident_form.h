// Recording a spill, a jam, a fault, an injury or a near miss, with the usual caution beside it.
#pragma once

#include "app/edits/session.h"

#include <QFrame>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace laneward {

class IncidentForm : public QFrame {
    Q_OBJECT

public:
    explicit IncidentForm(Session& session, QWidget* parent = nullptr);

    void begin();

Q_SIGNALS:
    void finished(const Incident& incident);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildFields(QGridLayout* grid);
    void buildButtons(QGridLayout* grid);
    void showCaution();
    void submit();

    Session& m_session;
    QComboBox* m_kind = nullptr;
    QSpinBox* m_lane = nullptr;
    QComboBox* m_machine = nullptr;
    QLineEdit* m_text = nullptr;
    QLabel* m_caution = nullptr;
    QLabel* m_problem = nullptr;
};

}  // namespace laneward
