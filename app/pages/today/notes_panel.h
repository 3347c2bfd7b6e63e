// What the shift before left, and what this one leaves for the next.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace laneward {

class NotesPanel : public QWidget {
    Q_OBJECT

public:
    explicit NotesPanel(Session& session, QWidget* parent = nullptr);

    void refresh(const JobSheet& sheet);  ///< keeps what is being written

private:
    void build();
    void leaveNote();

    Session& m_session;
    QLabel* m_notes = nullptr;
    QLabel* m_incidents = nullptr;
    QPlainTextEdit* m_text = nullptr;
    QPushButton* m_leave = nullptr;
};

}  // namespace laneward
