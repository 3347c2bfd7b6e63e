// Recording a spill, a jam, a fault, an injury or a near miss, with the usual caution beside it; or what was done about one.
//
// A lane that must not be used is closed by the same deed, and opened again by the one that says what was done.
#pragma once

#include "app/edits/session.h"
#include "core/season/follow_ups.h"

#include <QFrame>

class QCheckBox;
class QComboBox;
class QDateTimeEdit;
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
    /// Says what was done about it.
    void answer(const FollowUp& open);

Q_SIGNALS:
    /// `outage`: as it is to be for a lane that is closed, or put to use again.
    void finished(const Incident& incident, const std::optional<Outage>& outage);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildFields(QGridLayout* grid);
    void buildLane(QGridLayout* grid);
    void buildButtons(QGridLayout* grid);
    void fillMachines(const MachineId& chosen);
    void showCaution();
    void showLane();
    std::optional<Outage> outage(const QString& why) const;
    QString problem(const Incident& incident) const;
    void submit();

    Session& m_session;
    std::optional<FollowUp> m_open;  ///< that is answered
    QLabel* m_title = nullptr;
    QLabel* m_about = nullptr;
    QComboBox* m_kind = nullptr;
    QSpinBox* m_lane = nullptr;
    QComboBox* m_machine = nullptr;
    QLineEdit* m_text = nullptr;
    QCheckBox* m_close = nullptr;
    QDateTimeEdit* m_until = nullptr;
    QLabel* m_caution = nullptr;
    QLabel* m_problem = nullptr;
};

}  // namespace laneward
