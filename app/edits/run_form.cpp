#include "app/edits/run_form.h"

#include "app/edits/plain_label.h"

#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QTimeEdit>

namespace laneward {

RunForm::RunForm(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Record a run"));
    auto* grid = new QGridLayout(this);
    grid->setColumnStretch(1, 3);
    grid->setColumnStretch(3, 2);
    buildFields();
    buildIncident();
    buildButtons();
}

void RunForm::buildFields() {
    auto* grid = static_cast<QGridLayout*>(layout());
    m_title = headingLabel({}, this);
    grid->addWidget(m_title, 0, 0, 1, 4);
    const auto add = [this, grid](const QString& name, QWidget* field, int row, int column) {
        auto* label = plainLabel(name, this);
        label->setBuddy(field);
        grid->addWidget(label, row, column);
        grid->addWidget(field, row, column + 1);
    };
    add(tr("&Lanes done:"), m_lanes = new QLineEdit(this), 1, 0);
    add(tr("Stopped &after:"), m_lastLane = new QComboBox(this), 1, 2);
    add(tr("&Pattern:"), m_pattern = new QComboBox(this), 2, 0);
    add(tr("&Treatment:"), m_treatment = new QComboBox(this), 2, 2);
    add(tr("&Machine:"), m_machine = new QComboBox(this), 3, 0);
    add(tr("&Note:"), m_note = new QLineEdit(this), 4, 0);
    add(tr("&From:"), m_begin = new QTimeEdit(this), 3, 2);
    add(tr("&Until:"), m_end = new QTimeEdit(this), 4, 2);
    m_lanes->setPlaceholderText(tr("for example 1-12, 15"));
    for (Treatment treatment : allTreatments)
        m_treatment->addItem(text(treatment), int(treatment));
    connect(m_lanes, &QLineEdit::textChanged, this, &RunForm::lanesEdited);
    connect(m_begin, &QTimeEdit::userTimeChanged, this, [this] { m_beginGuessed = false; });
    for (QComboBox* box : {m_machine, m_treatment, m_pattern, m_lastLane}) {
        connect(box, &QComboBox::currentIndexChanged, this, &RunForm::guessBegin);
    }
    connect(m_treatment, &QComboBox::currentIndexChanged, this,
            [this] { m_pattern->setEnabled(conditions(Treatment(m_treatment->currentData().toInt()))); });
}

void RunForm::buildIncident() {
    auto* grid = static_cast<QGridLayout*>(layout());
    m_incident = new QComboBox(this);
    m_incident->setAccessibleName(tr("Something happened"));
    m_incident->addItem(tr("nothing happened"), -1);
    for (auto kind :
         {IncidentKind::Spill, IncidentKind::Jam, IncidentKind::Fault, IncidentKind::Injury, IncidentKind::NearMiss}) {
        m_incident->addItem(text(kind), int(kind));
    }
    m_incidentText = new QLineEdit(this);
    m_incidentText->setAccessibleName(tr("What happened, and where"));
    m_incidentText->setPlaceholderText(tr("what happened, and where"));
    m_incidentText->setEnabled(false);
    connect(m_incident, &QComboBox::currentIndexChanged, this, [this](int index) { m_incidentText->setEnabled(index > 0); });
    auto* label = plainLabel(tr("&Besides:"), this);
    label->setBuddy(m_incident);
    grid->addWidget(label, 5, 0);
    grid->addWidget(m_incident, 5, 1);
    grid->addWidget(m_incidentText, 5, 2, 1, 2);
}

void RunForm::buildButtons() {
    auto* grid = static_cast<QGridLayout*>(layout());
    m_problem = proseLabel({}, this);
    auto* buttons = new QHBoxLayout;
    auto* save = new QPushButton(tr("&Record this run"), this);
    save->setObjectName("recordRun");
    auto* leave = new QPushButton(tr("Cancel"), this);
    leave->setObjectName("cancelRun");
    buttons->addWidget(m_problem, 1);
    buttons->addWidget(save);
    buttons->addWidget(leave);
    grid->addLayout(buttons, 6, 0, 1, 4);
    connect(save, &QPushButton::clicked, this, &RunForm::submit);
    connect(leave, &QPushButton::clicked, this, &RunForm::cancelled);
}

/// Fields let Enter pass on to the form; on a button it presses that button.
void RunForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT cancelled();
    } else if (auto* button = qobject_cast<QPushButton*>(focusWidget()); enter && button && button->hasFocus()) {
        button->click();
    } else if (enter) {
        submit();
    } else {
        QFrame::keyPressEvent(event);
    }
}

void RunForm::submit() {
    QString problem;
    const std::optional<RunAccount> run = account(problem);
    m_problem->setText(problem);
    if (!run) return;
    Q_EMIT finished(*run, incident(*run));
}

}  // namespace laneward
