#include "app/pages/centre/outage_form.h"

#include "app/pages/centre/centre_rows.h"
#include "app/widgets/decimal_text.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QLineEdit>

namespace laneward {

OutageForm::OutageForm(Session& session, QWidget* parent) : CentreRowForm(session, &Centre::outages, parent) {
    build();
    finish();
    connect(m_what, &QComboBox::currentIndexChanged, this, &OutageForm::showFields);
    connect(m_open, &QCheckBox::toggled, this, &OutageForm::showFields);
    for (QDateTimeEdit* field : {m_begin, m_end})
        connect(field, &QDateTimeEdit::dateTimeChanged, this, &OutageForm::touched);
}

void OutageForm::build() {
    m_what = choiceField("outageWhat");
    m_lanes = lineField("outageLanes", limits::noteLength);
    m_lanes->setPlaceholderText(tr("1-4, 12"));
    m_begin = momentField(this);
    m_begin->setObjectName("outageBegin");
    m_end = momentField(this);
    m_end->setObjectName("outageEnd");
    m_note = lineField("outageNote", limits::noteLength);
    addRow(tr("&What:"), m_what, {"outage.machine-unknown"});
    addRow(tr("&Lanes:"), m_lanes, {"lanes.unreadable", "lanes.out-of-range", "outage.lane-unknown", "outage.nothing"});
    addRow(tr("F&rom:"), m_begin, {});
    m_open = addCheck("outageOpen", tr("until &further notice"), {});
    addRow(tr("&Until:"), m_end, {"outage.end-before-begin"});
    addRow(tr("N&ote:"), m_note, {});
}

Outage OutageForm::blank() const {
    Outage outage;
    outage.begin = session().now();
    return outage;
}

void OutageForm::fill(const Outage& outage) {
    const Centre& centre = session().season().centre;
    m_what->clear();
    m_what->addItem(tr("lanes"), QString());
    for (const Machine& machine : centre.machines)
        m_what->addItem(shown(machine.name), machine.id.value);
    m_what->setCurrentIndex(std::max(0, m_what->findData(outage.machine ? outage.machine->value : QString())));
    m_lanes->setText(outage.lanes.text());
    setMoment(*m_begin, outage.begin, session().zone());
    m_open->setChecked(!outage.end);
    setMoment(*m_end, outage.end.value_or(session().now() + hours(24)), session().zone());
    m_note->setText(outage.note);
    showFields();
}

void OutageForm::showFields() {
    setRowVisible(m_lanes, m_what->currentData().toString().isEmpty());
    setRowVisible(m_end, !m_open->isChecked());
}

/// Times that nobody typed over stay as they are, to the second.
Outage OutageForm::draft() const {
    const auto timeOf = [this](const QDateTimeEdit& field, Instant before) {
        const Instant typed = momentOf(field, session().zone());
        return typed.seconds / 60 == before.seconds / 60 ? before : typed;
    };
    Outage outage = loaded();
    const QString machine = m_what->currentData().toString();
    outage.machine.reset();
    outage.lanes = {};
    if (!machine.isEmpty()) {
        outage.machine = MachineId{machine};
    } else if (const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text())) {
        outage.lanes = *lanes;
    }
    outage.begin = timeOf(*m_begin, loaded().begin);
    outage.end.reset();
    if (!m_open->isChecked()) outage.end = timeOf(*m_end, loaded().end.value_or(Instant{}));
    outage.note = m_note->text().trimmed();
    return outage;
}

std::vector<Finding> OutageForm::faults() const {
    Outage made = draft();
    if (!made.machine) {
        const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text());
        if (m_lanes->text().trimmed().isEmpty()) return {{Severity::Fault, "outage.nothing", {}, {}}};
        if (!lanes) return {lanes.error().finding};
    }
    made.id = {CentreRows::outageName(made, session().season().centre)};  // it is named by what it is about
    return newFaults(centreWith(made));
}

QString OutageForm::title() const {
    return isNew() ? tr("Out of service") : CentreRows::outageName(loaded(), session().season().centre);
}

QString OutageForm::deedName(const Outage& made) const {
    return tr("Out of service: %1").arg(CentreRows::outageName(made, session().season().centre));
}

}  // namespace laneward
