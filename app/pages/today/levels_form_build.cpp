#include "app/edits/plain_label.h"
#include "app/pages/today/amount_box.h"
#include "app/pages/today/levels_form.h"
#include "core/documents/pack_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

namespace laneward {

namespace {

constexpr double mostTypedVolts = 999;  // more than can be: what cannot is said, not cut off
constexpr int quickHeight = 28;

}  // namespace

LevelsForm::LevelsForm(Session& session, const Machine& machine, QWidget* parent)
    : QWidget(parent), m_session(session), m_machine(machine) {
    m_form = new QFormLayout(this);
    m_form->setContentsMargins(0, 0, 0, 0);
    buildVolts();
    buildLevels();
    buildPack();
    buildPoured();
    buildButtons();
}

void LevelsForm::buildVolts() {
    m_volts = new QDoubleSpinBox(this);
    m_volts->setObjectName("volts");
    m_volts->setDecimals(2);
    m_volts->setRange(0, mostTypedVolts);
    m_volts->setSingleStep(0.1);
    m_volts->setSuffix(tr(" V", "suffix"));
    m_volts->setSpecialValueText(tr("not read"));
    m_volts->setAlignment(Qt::AlignTrailing);
    m_state = new QComboBox(this);
    m_state->setObjectName("voltsState");
    m_state->setAccessibleName(tr("In which state the volts were read"));
    for (const VoltageState one : {VoltageState::Rested, VoltageState::JustCharged, VoltageState::UnderLoad})
        m_state->addItem(text(one), int(one));
    m_voltsName = plainLabel({}, this);
    m_voltsName->setBuddy(m_volts);
    m_form->addRow(m_voltsName, m_volts);
    addField(m_form, tr("Read when:"), m_state);
    m_form->addRow(m_voltsWords = proseLabel({}, this));
    m_voltsWords->setObjectName("voltsWords");
    connect(m_volts, &QDoubleSpinBox::valueChanged, this, &LevelsForm::judge);
    connect(m_state, &QComboBox::currentIndexChanged, this, &LevelsForm::judge);
}

void LevelsForm::buildLevels() {
    const UnitSystem units = m_session.season().centre.facts.settings.units;
    const MachineCapacity& capacity = m_machine.capacity;
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (capacity.conditioner[slot] <= Microlitres{0}) continue;
        m_conditioner[slot] = new AmountBox(units, capacity.conditioner[slot], this);
        addField(m_form, slot == 0 ? tr("&Conditioner:") : tr("&Second conditioner:"), m_conditioner[slot]);
    }
    addField(m_form, tr("Clea&ner:"), m_cleaner = new AmountBox(units, capacity.cleaner, this));
    addField(m_form, tr("&Waste in its tank:"), m_waste = new AmountBox(units, capacity.waste, this));
    m_emptiedRow = new QWidget(this);
    auto* row = new QHBoxLayout(m_emptiedRow);
    row->setContentsMargins(0, 0, 0, 0);
    m_emptied = new QLineEdit(m_emptiedRow);
    m_emptied->setObjectName("emptied");
    m_emptied->setPlaceholderText(tr("not read"));
    m_emptied->setAlignment(Qt::AlignTrailing);
    m_emptied->setMaxLength(20);
    m_emptied->setToolTip(tr("What was in the waste tank: from this Laneward learns how much of the cleaner comes back"));
    row->addWidget(m_emptied, 1);
    row->addWidget(plainLabel(units == UnitSystem::Metric ? tr("mL") : tr("fl oz"), m_emptiedRow));
    auto* name = plainLabel(tr("E&mptied, measured:"), this);
    name->setBuddy(m_emptied);
    m_form->addRow(name, m_emptiedRow);
    m_form->addRow(m_emptiedWords = proseLabel({}, this));
    m_emptiedWords->setObjectName("emptiedWords");
    connect(m_emptied, &QLineEdit::textChanged, this, &LevelsForm::judge);
}

void LevelsForm::buildPack() {
    m_lanesLeft = new QSpinBox(this);
    m_lanesLeft->setObjectName("lanesLeft");
    m_lanesLeft->setAlignment(Qt::AlignTrailing);
    addField(m_form, tr("&Lanes left on the pack:"), m_lanesLeft);
    m_pack = new QComboBox(this);
    m_pack->setObjectName("packChange");
    m_pack->setToolTip(tr("After a swap the pack that was on the machine is on charge"));
    m_pack->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_pack->setMinimumContentsLength(12);
    addField(m_form, tr("&Pack:"), m_pack);
    connect(m_pack, &QComboBox::currentIndexChanged, this, [this] {
        if (packNews().change != PackChange::None) m_lanesLeft->setValue(fullPack());
        judge();
    });
}

AmountBox* LevelsForm::pouredBox(Microlitres most) {
    // A tank that was overfilled, or drained first, takes more than it holds.
    auto* box = new AmountBox(m_session.season().centre.facts.settings.units, most * 2, this);
    box->setSpecialValueText(tr("not read"));
    box->setToolTip(tr("What it took to reach the line: from this Laneward learns what the machine really puts out"));
    return box;
}

void LevelsForm::buildPoured() {
    const MachineCapacity& capacity = m_machine.capacity;
    for (size_t slot = 0; slot < m_pouredConditioner.size(); ++slot) {
        if (capacity.conditioner[slot] <= Microlitres{0}) continue;
        m_pouredConditioner[slot] = pouredBox(capacity.conditioner[slot]);
        addField(m_form, slot == 0 ? tr("Conditioner p&oured in:") : tr("Second conditioner poured &in:"),
                 m_pouredConditioner[slot]);
    }
    addField(m_form, tr("Cleaner poure&d in:"), m_pouredCleaner = pouredBox(capacity.cleaner));
    m_pouredCleaner->setObjectName("pouredCleaner");
    showPoured(false);
}

void LevelsForm::buildButtons() {
    auto* quick = new QGridLayout;
    const auto add = [this, quick](const QString& name, const char* objectName, const std::function<void()>& deed) {
        auto* button = new QPushButton(name, this);
        button->setObjectName(objectName);
        button->setMinimumHeight(quickHeight);
        connect(button, &QPushButton::clicked, this, deed);
        quick->addWidget(button, quick->count() / 2, quick->count() % 2);
    };
    add(tr("&Filled"), "filled", [this] { fill(); });
    add(tr("&Emptied"), "emptiedNow", [this] { emptyWaste(); });
    add(tr("Pac&k swapped"), "packSwapped", [this] { choosePack(PackChange::Swapped); });
    add(tr("Pack c&harged"), "packCharged", [this] { choosePack(PackChange::Charged); });
    m_form->addRow(quick);
    auto* keep = new QPushButton(tr("&Keep the reading"), this);
    keep->setObjectName("keepReading");
    auto* leave = new QPushButton(tr("Cancel"), this);
    auto* row = new QHBoxLayout;
    row->addStretch();
    for (QPushButton* button : {keep, leave}) {
        button->setMinimumHeight(quickHeight);
        row->addWidget(button);
    }
    m_form->addRow(row);
    connect(keep, &QPushButton::clicked, this, &LevelsForm::submit);
    connect(leave, &QPushButton::clicked, this, &LevelsForm::cancelled);
}

}  // namespace laneward
