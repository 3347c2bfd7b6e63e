#include "app/pages/today/notes_panel.h"

#include "app/edits/plain_label.h"

#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace laneward {

NotesPanel::NotesPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) { build(); }

void NotesPanel::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(headingLabel(tr("Notes for this shift"), this));
    m_notes = proseLabel({}, this);
    m_incidents = proseLabel({}, this);
    column->addWidget(m_notes);
    column->addWidget(m_incidents);
    m_text = new QPlainTextEdit(this);
    m_text->setAccessibleName(tr("Note for the next shift"));
    m_text->setPlaceholderText(tr("Note for the next shift"));
    m_text->setTabChangesFocus(true);
    m_text->setFixedHeight(56);
    m_leave = new QPushButton(tr("Leave the &note"), this);
    m_leave->setObjectName("leaveNote");
    m_leave->setEnabled(false);
    column->addWidget(m_text);
    column->addWidget(m_leave, 0, Qt::AlignTrailing);
    connect(m_leave, &QPushButton::clicked, this, &NotesPanel::leaveNote);
    connect(m_text, &QPlainTextEdit::textChanged, this,
            [this] { m_leave->setEnabled(!m_text->toPlainText().trimmed().isEmpty() && !m_session.isReadOnly()); });
}

void NotesPanel::refresh(const JobSheet& sheet) {
    const Speech speech = m_session.speech();
    const auto nameOf = [this](const PersonId& id) {
        const Person* person = findPerson(m_session.season().centre, id);
        return person ? shown(person->name) : tr("somebody");
    };
    QStringList notes;
    for (const HandOver& note : sheet.handOvers) {
        notes.append(tr("%1, %2: %3", "when, who: what").arg(dateTimeText(note.at, speech), nameOf(note.person), note.text));
    }
    m_notes->setText(notes.isEmpty() ? tr("The shift before left no note.") : notes.join(u'\n'));
    QStringList incidents;
    const Span day = dayOf(m_session.season().centre, sheet.date);
    for (const Incident& incident : m_session.season().incidents) {
        if (!day.contains(incident.at)) continue;
        const QString lane = incident.lane > 0 ? tr(" on lane %1").arg(incident.lane) : QString();
        const QString line = incident.answers ? tr("%1: %2%3, followed up: %4", "time: kind, on lane: what was done")
                                              : tr("%1: %2%3: %4", "time: kind, on lane: text");
        incidents.append(line.arg(clockTime(incident.at, speech), text(incident.kind), lane, incident.text));
    }
    m_incidents->setText(incidents.join(u'\n'));
    m_incidents->setVisible(!incidents.isEmpty());
}

void NotesPanel::leaveNote() {
    HandOver note;
    note.date = m_session.today();
    note.at = m_session.now();
    note.text = m_text->toPlainText().trimmed().left(limits::noteLength);
    if (m_session.record(tr("Leave a note for the next shift"), {note})) m_text->clear();
}

}  // namespace laneward
