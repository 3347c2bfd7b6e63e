#include "app/pages/today/incident_form.h"

#include "app/edits/plain_label.h"

#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

namespace laneward {

namespace {

std::vector<const char*> cautionsFor(IncidentKind kind) {
    switch (kind) {
        case IncidentKind::Spill:
            return {"caution.slippery", "caution.chemicals", "caution.waste"};
        case IncidentKind::Jam:
        case IncidentKind::Fault:
            return {"caution.moving-parts"};
        case IncidentKind::Injury:
        case IncidentKind::NearMiss:
            break;
    }
    return {};
}

}  // namespace

IncidentForm::IncidentForm(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Record an incident"));
    auto* grid = new QGridLayout(this);
    grid->setColumnStretch(1, 2);
    grid->setColumnStretch(3, 1);
    buildFields(grid);
    buildButtons(grid);
}

void IncidentForm::buildFields(QGridLayout* grid) {
    grid->addWidget(headingLabel(tr("What happened"), this), 0, 0, 1, 4);
    const auto add = [this, grid](const QString& name, QWidget* field, int row, int column, int span = 1) {
        auto* label = plainLabel(name, this);
        label->setBuddy(field);
        grid->addWidget(label, row, column);
        grid->addWidget(field, row, column + 1, 1, span);
    };
    m_kind = new QComboBox(this);
    for (auto kind :
         {IncidentKind::Spill, IncidentKind::Jam, IncidentKind::Fault, IncidentKind::Injury, IncidentKind::NearMiss}) {
        m_kind->addItem(text(kind), int(kind));
    }
    m_lane = new QSpinBox(this);
    m_lane->setSpecialValueText(tr("none"));
    add(tr("&Kind:"), m_kind, 1, 0);
    add(tr("L&ane:"), m_lane, 1, 2);
    add(tr("&Machine:"), m_machine = new QComboBox(this), 2, 0);
    add(tr("&In words:"), m_text = new QLineEdit(this), 3, 0, 3);
    m_caution = proseLabel({}, this);
    grid->addWidget(m_caution, 4, 0, 1, 4);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &IncidentForm::showCaution);
    connect(m_text, &QLineEdit::returnPressed, this, &IncidentForm::submit);
}

void IncidentForm::buildButtons(QGridLayout* grid) {
    auto* buttons = new QHBoxLayout;
    m_problem = proseLabel({}, this);
    auto* save = new QPushButton(tr("&Record the incident"), this);
    save->setObjectName("recordIncident");
    auto* leave = new QPushButton(tr("Cancel"), this);
    buttons->addWidget(m_problem, 1);
    buttons->addWidget(save);
    buttons->addWidget(leave);
    grid->addLayout(buttons, 5, 0, 1, 4);
    connect(save, &QPushButton::clicked, this, &IncidentForm::submit);
    connect(leave, &QPushButton::clicked, this, &IncidentForm::cancelled);
}

void IncidentForm::begin() {
    m_lane->setRange(0, m_session.season().centre.facts.lanes);
    m_lane->setValue(0);
    m_machine->clear();
    m_machine->addItem(tr("none"), QString());
    for (const Machine& machine : m_session.season().centre.machines)
        m_machine->addItem(shown(machine.name), machine.id.value);
    m_text->clear();
    m_problem->clear();
    showCaution();
    m_kind->setFocus();
}

void IncidentForm::showCaution() {
    const auto kind = IncidentKind(m_kind->currentData().toInt());
    QStringList lines;
    if (kind == IncidentKind::Injury)
        lines.append(tr("People first: follow the house's first aid and emergency instructions; the record can wait."));
    for (const char* rule : cautionsFor(kind))
        lines.append(text(Finding{Severity::Warning, rule, {}, {}}, m_session.speech()));
    lines.append(text(Finding{Severity::Note, "caution.defer", {}, {}}, m_session.speech()));
    m_caution->setText(lines.join(u'\n'));
}

void IncidentForm::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT cancelled();
    } else {
        QFrame::keyPressEvent(event);
    }
}

void IncidentForm::submit() {
    Incident incident;
    incident.kind = IncidentKind(m_kind->currentData().toInt());
    incident.at = m_session.now();
    incident.lane = m_lane->value();
    incident.machine = {m_machine->currentData().toString()};
    incident.text = m_text->text().trimmed();
    if (incident.text.isEmpty()) {
        m_problem->setText(tr("Nothing recorded yet: say in a word what happened."));
        m_text->setFocus();
        return;
    }
    Q_EMIT finished(incident);
}

}  // namespace laneward
