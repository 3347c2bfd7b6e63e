#include "app/window/setup_form.h"

#include "app/edits/plain_label.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QTimeEdit>
#include <QTimeZone>

namespace laneward {

SetupForm::SetupForm(QWidget* parent) : QWidget(parent) {
    auto* form = new QFormLayout(this);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    buildFields(form);
    buildButtons(form);
}

void SetupForm::buildFields(QFormLayout* form) {
    form->addRow(headingLabel(tr("Set up my centre"), this));
    addField(form, tr("&Name of the centre:"), m_name = new QLineEdit(this));
    m_lanes = new QSpinBox(this);
    m_lanes->setRange(1, limits::lanes);
    m_lanes->setValue(24);
    addField(form, tr("Number of &lanes:"), m_lanes);
    m_machines = new QLineEdit(tr("Machine 1"), this);
    m_machines->setPlaceholderText(tr("names, with a comma between them"));
    addField(form, tr("Lane &machines:"), m_machines);
    m_zone = new QComboBox(this);
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds()) {
        if (id.contains('/')) m_zone->addItem(QString::fromUtf8(id));
    }
    addField(form, tr("&Time zone:"), m_zone);
    m_units = new QComboBox(this);
    m_units->addItem(tr("millilitres, metres"), int(UnitSystem::Metric));
    m_units->addItem(tr("US fluid ounces, feet"), int(UnitSystem::UsCustomary));
    addField(form, tr("&Units:"), m_units);
    addField(form, tr("&Your name:"), m_person = new QLineEdit(this));
    auto* hours = new QHBoxLayout;
    hours->addWidget(m_begins = new QTimeEdit(QTime(9, 0), this));
    hours->addWidget(plainLabel(tr("to"), this));
    hours->addWidget(m_ends = new QTimeEdit(QTime(23, 0), this));
    hours->addStretch();
    m_ends->setAccessibleName(tr("Lane staff works until"));
    addField(form, tr("Lane staff &works from:"), hours, m_begins);
}

void SetupForm::buildButtons(QFormLayout* form) {
    m_problem = proseLabel({}, this);
    form->addRow(m_problem);
    auto* create = new QPushButton(tr("&Create the centre"), this);
    create->setObjectName("createCentre");
    create->setDefault(true);
    auto* leave = new QPushButton(tr("&Back"), this);
    auto* row = new QHBoxLayout;
    row->addStretch();
    row->addWidget(create);
    row->addWidget(leave);
    form->addRow(row);
    connect(create, &QPushButton::clicked, this, &SetupForm::submit);
    connect(leave, &QPushButton::clicked, this, &SetupForm::cancelled);
    for (QLineEdit* edit : {m_name, m_machines, m_person})
        connect(edit, &QLineEdit::returnPressed, this, &SetupForm::submit);
}

void SetupForm::begin() {
    const QString here = QString::fromUtf8(QTimeZone::systemTimeZoneId());
    if (m_zone->findText(here) < 0) m_zone->insertItem(0, here);
    m_zone->setCurrentIndex(m_zone->findText(here));
    const bool metric = QLocale().measurementSystem() != QLocale::ImperialUSSystem;
    m_units->setCurrentIndex(metric ? 0 : 1);
    m_problem->clear();
    m_name->setFocus();
}

void SetupForm::submit() {
    SetUp setUp;
    setUp.name = m_name->text().trimmed().left(limits::nameLength);
    setUp.lanes = m_lanes->value();
    setUp.zone = m_zone->currentText().toUtf8();
    setUp.units = UnitSystem(m_units->currentData().toInt());
    for (const QString& part : m_machines->text().split(u',', Qt::SkipEmptyParts)) {
        if (const QString name = part.trimmed().left(limits::nameLength); !name.isEmpty()) setUp.machines.append(name);
    }
    setUp.machines.removeDuplicates();
    setUp.person = m_person->text().trimmed().left(limits::nameLength);
    setUp.workBegins = m_begins->time();
    setUp.workEnds = m_ends->time();
    if (setUp.name.isEmpty()) {
        m_problem->setText(tr("Give the centre a name."));
        return m_name->setFocus();
    }
    if (setUp.machines.isEmpty()) {
        m_problem->setText(tr("Name at least one lane machine."));
        return m_machines->setFocus();
    }
    if (setUp.person.isEmpty()) {
        m_problem->setText(tr("Write your name: every record says who made it."));
        return m_person->setFocus();
    }
    Q_EMIT finished(setUp);
}

}  // namespace laneward
