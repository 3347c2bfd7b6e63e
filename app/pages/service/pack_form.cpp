#include "app/pages/service/pack_form.h"

#include "core/documents/pack_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>

#include <cmath>

namespace laneward {

namespace {

constexpr double mostTyped = 999;  // more than can be: what cannot is said, not cut off

}  // namespace

PackForm::PackForm(Session& session, QWidget* parent) : RecordForm(session, "pack", parent) {
    build();
    finish();
    connect(m_deed, &QComboBox::currentIndexChanged, this, &PackForm::deedChosen);
    connect(m_volts, &QDoubleSpinBox::valueChanged, this, &PackForm::touched);
    connect(m_state, &QComboBox::currentIndexChanged, this, &PackForm::touched);
}

void PackForm::build() {
    m_deed = new QComboBox(this);
    m_deed->setObjectName("packDeed");
    for (const PackDeed one : {PackDeed::Read, PackDeed::OnMachine, PackDeed::OnCharge, PackDeed::Charged})
        m_deed->addItem(text(one), int(one));
    m_volts = new QDoubleSpinBox(this);
    m_volts->setObjectName("packVolts");
    m_volts->setRange(0, mostTyped);
    m_volts->setDecimals(2);
    m_volts->setSingleStep(0.1);
    m_volts->setSuffix(tr(" V", "suffix"));
    m_volts->setSpecialValueText(tr("not read"));
    m_volts->setAlignment(Qt::AlignTrailing);
    m_state = new QComboBox(this);
    m_state->setObjectName("packState");
    m_state->setAccessibleName(tr("In which state they were read"));
    for (const VoltageState one : {VoltageState::Rested, VoltageState::JustCharged, VoltageState::UnderLoad})
        m_state->addItem(text(one), int(one));
    auto* volts = new QHBoxLayout;
    volts->addWidget(m_volts);
    volts->addWidget(m_state);
    addRow(tr("&What happened:"), m_deed, {});
    addRow(tr("&Volts:"), volts, m_volts, {"pack.volts", "pack.says-nothing"});
    m_spent = addCheck(tr("It had run until it was &done"), "packSpent");
    addEnd(tr("Wh&en:"), {"pack.in-future"});
}

PackDeed PackForm::deed() const { return PackDeed(m_deed->currentData().toInt()); }

void PackForm::create(const ItemId& pack) {
    m_pack = pack;
    open(packName(pack, session().season()));
    m_deed->setFocus();
}

void PackForm::reload() {
    m_deed->setCurrentIndex(0);
    m_volts->setValue(0);
    m_state->setCurrentIndex(0);
    m_spent->setChecked(false);
    RecordForm::reload();
    deedChosen();
}

void PackForm::deedChosen() {
    setRowVisible(m_spent, deed() == PackDeed::OnCharge);
    touched();
}

PackReading PackForm::draft() const {
    PackReading reading;
    reading.pack = m_pack;
    reading.deed = deed();
    if (m_volts->value() > 0) reading.volts = Millivolts{std::llround(m_volts->value() * 1'000)};
    reading.state = VoltageState(m_state->currentData().toInt());
    reading.spent = deed() == PackDeed::OnCharge && m_spent->isChecked();
    reading.at = at();
    reading.note = note();
    return reading;
}

std::vector<Finding> PackForm::faults() const {
    return faultsOf(draft(), findItem(session().season().items, m_pack), session().now());
}

bool PackForm::store() {
    const QString name = tr("%1: %2", "pack, what happened").arg(packName(m_pack, session().season()), text(deed()));
    return session().record(name, {draft()});
}

}  // namespace laneward
