#include "app/pages/calendar/event_editor.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>

#include <algorithm>

namespace laneward {

const Series* EventEditor::stored() const {
    const std::vector<Series>& all = m_session.season().series;
    const auto found = std::find_if(all.begin(), all.end(), [this](const Series& s) { return s.id == m_draft.id; });
    return found == all.end() ? nullptr : &*found;
}

QString EventEditor::editName(const Series& before, const Series& after) const {
    Series same = after;
    const QString title = shown(after.title);
    same.start = before.start;
    same.duration = before.duration;
    same.rule = before.rule;
    same.overrides = before.overrides;
    same.excludedDates = before.excludedDates;
    if (same == before)
        return after.start == before.start && after.duration == before.duration ? tr("Change dates of %1").arg(title)
                                                                                : tr("Move %1").arg(title);
    same = after;
    same.title = before.title;
    if (same == before) return tr("Rename %1").arg(title);
    same = after;
    same.demands = before.demands;
    if (same == before) return tr("Change what %1 asks").arg(title);
    same.lanes = before.lanes;
    return same == before ? tr("Change lanes of %1").arg(title) : tr("Change %1").arg(title);
}

bool EventEditor::save() {
    const std::optional<Series> after = draft();
    if (!after || !showFaults(*after)) {
        m_problems->show();
        if (m_title->text().trimmed().isEmpty())
            m_title->setFocus();
        else if (!LaneSet::parse(m_lanes->text()) || LaneSet::parse(m_lanes->text())->isEmpty())
            m_lanes->setFocus();
        return false;
    }
    if (m_before && *after == *m_before) {
        m_dirty = false;
        Q_EMIT closeAsked();
        return true;
    }
    const QString name = m_before ? editName(*m_before, *after) : tr("Add %1").arg(shown(after->title));
    m_dirty = false;  // so that the change that comes back is taken over
    if (!m_session.apply(name, {RowChange<Series>{m_before, after}})) {
        m_dirty = true;
        return false;
    }
    Q_EMIT saved(after->id);
    return true;
}

void EventEditor::revert() {
    if (const Series* now = stored())
        edit(*now);
    else
        create(m_draft);
}

void EventEditor::sessionChanged() {
    if (!m_open) return;
    const Series* now = stored();
    if (!m_dirty) {
        if (now && (!m_before || *now != *m_before))
            edit(*now);
        else if (!now && m_before)
            Q_EMIT closeAsked();
        return;
    }
    const bool other = m_before && (!now || *now != *m_before);
    if (!other) return;
    m_problems->setText(
        tr("This event was changed meanwhile. Revert shows what is stored now; what you typed stays until then."));
    m_problems->show();
}

QString EventEditor::problems() const { return m_problems->isHidden() ? QString() : m_problems->text(); }

QString EventEditor::consequences() const { return m_consequences->text(); }

void EventEditor::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closeAsked();
    else if (enter && !(event->modifiers() & ~Qt::KeypadModifier & ~Qt::ControlModifier))
        save();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace laneward
