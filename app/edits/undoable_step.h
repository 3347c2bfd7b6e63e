// One step of the undo stack. Undoing applies the counter-edit and appends counter-records; redoing does the deed again.
#pragma once

#include "app/edits/session.h"

#include <QUndoCommand>

namespace laneward {

class UndoableStep : public QUndoCommand {
public:
    /// `counter` undoes the edit that the session has already made; `records` have already been appended.
    UndoableStep(Session& session, Edit counter, std::vector<Passage> passages, std::vector<Record> records);

    void undo() override;
    void redo() override;

private:
    bool turnEdit();
    void giveUp(int stepsBack);

    Session& m_session;
    Edit m_next;  ///< the edit that takes the rows to the other side
    std::vector<Passage> m_passages;
    std::vector<Record> m_records;
    std::vector<Record> m_counters;  ///< what undoing has appended
    bool m_done = true;
};

}  // namespace laneward
