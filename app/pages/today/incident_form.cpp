#include "app/pages/today/incident_form.h"

#include "app/edits/plain_label.h"
#include "app/pages/today/follow_up_list.h"
#include "app/widgets/decimal_text.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
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
    buildLane(grid);
    buildButtons(grid);
}

void IncidentForm::buildFields(QGridLayout* grid) {
    grid->addWidget(m_title = headingLabel({}, this), 0, 0, 1, 4);
    grid->addWidget(m_about = proseLabel({}, this), 1, 0, 1, 4);
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
    add(tr("&Kind:"), m_kind, 2, 0);
    add(tr("L&ane:"), m_lane, 2, 2);
    add(tr("&Machine:"), m_machine = new QComboBox(this), 3, 0);
    add(tr("&In words:"), m_text = new QLineEdit(this), 4, 0, 3);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &IncidentForm::showCaution);
    connect(m_lane, &QSpinBox::valueChanged, this, &IncidentForm::showLane);
    connect(m_text, &QLineEdit::returnPressed, this, &IncidentForm::submit);
}

void IncidentForm::buildLane(QGridLayout* grid) {
    m_close = new QCheckBox(this);
    m_close->setObjectName("closeLane");
    m_until = momentField(this);
    m_until->setObjectName("closedUntil");
    m_until->setAccessibleName(tr("Closed until"));
    grid->addWidget(m_close, 3, 2);
    grid->addWidget(m_until, 3, 3);
    connect(m_close, &QCheckBox::toggled, m_until, &QWidget::setEnabled);
}

void IncidentForm::buildButtons(QGridLayout* grid) {
    m_caution = proseLabel({}, this);
    grid->addWidget(m_caution, 5, 0, 1, 4);
    auto* buttons = new QHBoxLayout;
    m_problem = proseLabel({}, this);
    auto* save = new QPushButton(tr("&Record the incident"), this);
    save->setObjectName("recordIncident");
    auto* leave = new QPushButton(tr("Cancel"), this);
    buttons->addWidget(m_problem, 1);
    buttons->addWidget(save);
    buttons->addWidget(leave);
    grid->addLayout(buttons, 6, 0, 1, 4);
    connect(save, &QPushButton::clicked, this, &IncidentForm::submit);
    connect(leave, &QPushButton::clicked, this, &IncidentForm::cancelled);
}

void IncidentForm::fillMachines(const MachineId& chosen) {
    m_machine->clear();
    m_machine->addItem(tr("none"), QString());
    for (const Machine& machine : m_session.season().centre.machines)
        m_machine->addItem(shown(machine.name), machine.id.value);
    m_machine->setCurrentIndex(std::max(0, m_machine->findData(chosen.value)));
}

void IncidentForm::begin() {
    m_open.reset();
    m_title->setText(tr("What happened"));
    m_about->hide();
    m_lane->setRange(0, m_session.season().centre.facts.lanes);
    m_lane->setValue(0);
    fillMachines({});
    m_text->clear();
    m_problem->clear();
    setMoment(*m_until, dayOf(m_session.season().centre, m_session.today()).end, m_session.zone());
    showLane();
    showCaution();
    m_kind->setFocus();
}

void IncidentForm::answer(const FollowUp& open) {
    begin();
    m_open = open;
    m_title->setText(tr("What was done about it"));
    m_about->setText(lineOf(open, m_session.speech()));
    m_about->show();
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(int(open.kind))));
    m_lane->setValue(open.lane);
    fillMachines(open.machine);
    showLane();
    m_text->setFocus();
}

/// A lane in use can be closed; one that is out of service is put to use again, with those that went out with it.
void IncidentForm::showLane() {
    const int lane = m_lane->value();
    const Outage* closed = lane > 0 ? outageOf(m_session.season().centre, lane, m_session.now()) : nullptr;
    QString words = lane > 0 ? tr("&Close lane %1 until").arg(lane) : tr("&Close the lane until");
    if (closed) words = tr("Lane %1 is in &use again").arg(lane);
    if (closed && closed->lanes.count() > 1) words = tr("Lanes %1 are in &use again").arg(closed->lanes.text());
    m_close->setChecked(false);
    m_close->setEnabled(lane > 0);
    m_close->setText(words);
    m_until->setVisible(!closed);
    m_until->setEnabled(false);
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

std::optional<Outage> IncidentForm::outage(const QString& why) const {
    const int lane = m_lane->value();
    if (lane == 0 || !m_close->isChecked()) return std::nullopt;
    if (const Outage* now = outageOf(m_session.season().centre, lane, m_session.now())) {
        Outage after = *now;
        after.end = m_session.now();
        return after;
    }
    Outage made;
    made.id = {m_session.newOperation().value};
    made.lanes = LaneSet{lane};
    made.begin = m_session.now();
    made.end = momentOf(*m_until, m_session.zone());
    made.note = why;
    return made;
}

QString IncidentForm::problem(const Incident& incident) const {
    if (incident.text.isEmpty())
        return m_open ? tr("Nothing recorded yet: say in a word what was done.")
                      : tr("Nothing recorded yet: say in a word what happened.");
    const bool closes = m_close->isChecked() && !m_until->isHidden();
    if (closes && momentOf(*m_until, m_session.zone()) <= m_session.now())
        return tr("Nothing recorded yet: a lane can only be closed until a time to come.");
    return {};
}

void IncidentForm::submit() {
    Incident incident;
    incident.kind = IncidentKind(m_kind->currentData().toInt());
    incident.at = m_session.now();
    incident.lane = m_lane->value();
    incident.machine = {m_machine->currentData().toString()};
    incident.text = m_text->text().trimmed();
    if (m_open) incident.answers = m_open->id;
    m_problem->setText(problem(incident));
    if (!m_problem->text().isEmpty()) {
        (incident.text.isEmpty() ? static_cast<QWidget*>(m_text) : m_until)->setFocus();
        return;
    }
    Q_EMIT finished(incident, outage(incident.text));
}

}  // namespace laneward
