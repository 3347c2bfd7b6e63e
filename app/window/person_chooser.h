// Who is at the desk: chosen once per sitting, from the status line or when the first record needs it.
#pragma once

#include "app/edits/session.h"

#include <QPushButton>

class QMenu;

namespace laneward {

class PersonChooser : public QPushButton {
    Q_OBJECT

public:
    explicit PersonChooser(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void fill();
    /// Opens the list and waits for a choice; empty when it is left.
    PersonId ask();

    Session& m_session;
    QMenu* m_menu = nullptr;
};

}  // namespace laneward
