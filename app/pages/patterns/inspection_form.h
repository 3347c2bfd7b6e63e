// Typing an inspection of a lane's geometry, or correcting one.
#pragma once

#include "app/edits/session.h"

#include <QFrame>

class QDateTimeEdit;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace laneward {

class CellTable;
class InspectionModel;

class InspectionForm : public QFrame {
    Q_OBJECT

public:
    explicit InspectionForm(Session& session, QWidget* parent = nullptr);

    void begin(int lane);
    /// To replace a stored inspection.
    void correct(const Inspection& inspection);

Q_SIGNALS:
    void finished(const Inspection& inspection);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void submit();
    QString problemOf(const Inspection& inspection) const;

    Session& m_session;
    std::optional<OperationId> m_corrects;
    QLabel* m_title = nullptr;
    QSpinBox* m_lane = nullptr;
    QDateTimeEdit* m_at = nullptr;
    QLineEdit* m_note = nullptr;
    InspectionModel* m_model = nullptr;
    CellTable* m_table = nullptr;
    QLabel* m_problem = nullptr;
};

}  // namespace laneward
