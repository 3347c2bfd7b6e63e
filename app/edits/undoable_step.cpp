#include "app/edits/undoable_step.h"

namespace laneward {

UndoableStep::UndoableStep(Session& session, Edit counter, std::vector<Passage> passages, std::vector<Record> records)
    : m_session(session), m_next(std::move(counter)), m_passages(std::move(passages)), m_records(std::move(records)) {
    setText(m_next.name);
}

/// The passages are turned round with the edit, so that each side always expects the version under which it is stored now.
bool UndoableStep::turnEdit() {
    if (m_next.changes.empty()) return true;
    for (Passage& passage : m_passages)
        std::swap(passage.from, passage.to);
    if (m_session.commit(m_next, m_passages)) return true;
    for (Passage& passage : m_passages)
        std::swap(passage.from, passage.to);
    return false;
}

/// The stack has moved already. A conflict takes the step off the stack; after a locked database it moves back and can be tried
/// again.
void UndoableStep::giveUp(int stepsBack) {
    if (m_session.lastRefusal() == ErrorKind::Refused) {
        setObsolete(true);
        return;
    }
    QUndoStack& stack = m_session.undoStack();
    QMetaObject::invokeMethod(
        &stack, [&stack, stepsBack] { stack.setIndex(stack.index() + stepsBack); }, Qt::QueuedConnection);
}

void UndoableStep::undo() {
    if (!m_done) return;
    if (!turnEdit()) return giveUp(+1);
    m_counters = m_session.counterOf(m_records);
    if (!m_records.empty() && !m_session.append(m_counters)) {
        if (turnEdit()) return giveUp(+1);
        return setObsolete(true);
    }
    m_done = false;
    m_session.settled();
}

void UndoableStep::redo() {
    if (m_done) return;
    if (!turnEdit()) return giveUp(-1);
    for (size_t i = 0; i < m_records.size(); ++i) {
        std::visit(
            [this, i](auto& record) {
                record.id = m_session.newOperation();
                // What stands now, and is to be corrected again, is the counter-record.
                if (record.corrects && i < m_counters.size()) record.corrects = operationOf(m_counters[i]);
            },
            m_records[i]);
    }
    if (!m_records.empty() && !m_session.append(m_records)) {
        if (turnEdit()) return giveUp(-1);
        return setObsolete(true);
    }
    m_done = true;
    m_session.settled();
}

}  // namespace laneward
