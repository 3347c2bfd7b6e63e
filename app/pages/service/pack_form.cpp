#include "app/pages/service/pack_form.h"

#include "app/widgets/decimal_text.h"
#include "core/base/limits.h"
#include "core/documents/pack_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLineEdit>

#include <cmath>

namespace laneward {

namespace {

constexpr double mostTyped = 999;  // more than can be: what cannot is said, not cut off

}  // namespace

PackForm::PackForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    build();
    finish();
    connect(m_deed, &QComboBox::currentIndexChanged, this, &PackForm::deedChosen);
    connect(m_volts, &QDoubleSpinBox::valueChanged, this, &PackForm::touched);
    connect(m_state, &QComboBox::currentIndexChanged, this, &PackForm::touched);
    connect(m_spent, &QCheckBox::toggled, this, &PackForm::touched);
    connect(m_at, &QDateTimeEdit::dateTimeChanged, this, &PackForm::touched);
    connect(m_note, &QLineEdit::textChanged, this, &PackForm::touched);
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
    m_spent = new QCheckBox(tr("It had run until it was &done"), this);
    m_spent->setObjectName("packSpent");
    m_at = momentField(this);
    m_at->setObjectName("packAt");
    m_note = new QLineEdit(this);
    m_note->setObjectName("packNote");
    m_note->setMaxLength(limits::noteLength);
    addRow(tr("&What happened:"), m_deed, {});
    addRow(tr("&Volts:"), volts, m_volts, {"pack.volts", "pack.says-nothing"});
    auto* spent = new QHBoxLayout;
    spent->addWidget(m_spent);
    addRow({}, spent, m_spent, {});
    addRow(tr("Wh&en:"), m_at, {"pack.in-future"});
    addRow(tr("N&ote:"), m_note, {});
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
    setMoment(*m_at, session().now(), session().zone());
    m_note->clear();
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
    reading.at = momentOf(*m_at, session().zone());
    reading.note = m_note->text().trimmed();
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
