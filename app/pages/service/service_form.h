// Recording a service: its steps with their cautions, the parts proposed, and what was found. One click when all went as usual.
#pragma once

#include "app/edits/session.h"
#include "core/season/service_outlook.h"

#include <QFrame>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace laneward {

class QuantityBox;

class ServiceForm : public QFrame {
    Q_OBJECT

public:
    explicit ServiceForm(Session& session, QWidget* parent = nullptr);

    void open(const DutyDue& due);
    void leave();
    bool isOpen() const { return !isHidden(); }
    /// Keeps what is typed while the duty is still there; leaves when it is not.
    void refresh();

Q_SIGNALS:
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Part {
        SupplyId supply;
        QuantityBox* amount;
    };

    void buildFields();
    void buildButtons();
    const Duty* duty() const;
    void tellSteps();
    void addParts();
    ServiceRecord record() const;
    void keep();

    Session& m_session;
    DutyDue m_due;
    std::vector<Part> m_parts;
    QVBoxLayout* m_column = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_steps = nullptr;
    QWidget* m_fields = nullptr;
    QGridLayout* m_grid = nullptr;
    QComboBox* m_result = nullptr;
    QSpinBox* m_minutes = nullptr;
    QLineEdit* m_finding = nullptr;
    QLineEdit* m_note = nullptr;
    QWidget* m_partFields = nullptr;
    QLabel* m_problem = nullptr;
    QPushButton* m_keep = nullptr;
};

}  // namespace laneward
