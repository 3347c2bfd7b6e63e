#include "app/pages/today/levels_form.h"

#include "app/edits/plain_label.h"
#include "app/pages/today/amount_box.h"

#include <QFormLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QSpinBox>

#include <cmath>

namespace laneward {

LevelsForm::LevelsForm(Session& session, const Machine& machine, QWidget* parent)
    : QWidget(parent), m_session(session), m_machine(machine) {
    auto* form = m_form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    buildFields(form);
    buildPoured(form);
    buildButtons(form);
}

void LevelsForm::buildFields(QFormLayout* form) {
    const UnitSystem units = m_session.season().centre.facts.settings.units;
    const MachineCapacity& capacity = m_machine.capacity;
    m_volts = new QDoubleSpinBox(this);
    m_volts->setDecimals(1);
    m_volts->setRange(0, 99);
    m_volts->setSingleStep(0.1);
    m_volts->setSuffix(tr(" V", "suffix"));
    m_volts->setSpecialValueText(tr("not read"));
    m_volts->setAlignment(Qt::AlignTrailing);
    addField(form, tr("Rested &volts:"), m_volts);
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (capacity.conditioner[slot] <= Microlitres{0}) continue;
        m_conditioner[slot] = new AmountBox(units, capacity.conditioner[slot], this);
        addField(form, slot == 0 ? tr("&Conditioner:") : tr("&Second conditioner:"), m_conditioner[slot]);
    }
    addField(form, tr("Clea&ner:"), m_cleaner = new AmountBox(units, capacity.cleaner, this));
    addField(form, tr("&Waste in its tank:"), m_waste = new AmountBox(units, capacity.waste, this));
    m_lanesLeft = new QSpinBox(this);
    m_lanesLeft->setRange(0, capacity.lanesPerCharge);
    m_lanesLeft->setAlignment(Qt::AlignTrailing);
    addField(form, tr("&Lanes left on the pack:"), m_lanesLeft);
}

AmountBox* LevelsForm::pouredBox(Microlitres most) {
    // A tank that was overfilled, or drained first, takes more than it holds.
    auto* box = new AmountBox(m_session.season().centre.facts.settings.units, most * 2, this);
    box->setSpecialValueText(tr("not read"));
    box->setToolTip(tr("What it took to reach the line: from this Laneward learns what the machine really puts out"));
    return box;
}

void LevelsForm::buildPoured(QFormLayout* form) {
    const MachineCapacity& capacity = m_machine.capacity;
    for (size_t slot = 0; slot < m_pouredConditioner.size(); ++slot) {
        if (capacity.conditioner[slot] <= Microlitres{0}) continue;
        m_pouredConditioner[slot] = pouredBox(capacity.conditioner[slot]);
        addField(form, slot == 0 ? tr("Conditioner &poured in:") : tr("Second conditioner poured &in:"),
                 m_pouredConditioner[slot]);
    }
    addField(form, tr("Cleaner poure&d in:"), m_pouredCleaner = pouredBox(capacity.cleaner));
    m_pouredCleaner->setObjectName("pouredCleaner");
    showPoured(false);
}

void LevelsForm::showPoured(bool filled) {
    for (AmountBox* box : m_pouredConditioner) {
        if (box) m_form->setRowVisible(box, filled);
    }
    m_form->setRowVisible(m_pouredCleaner, filled);
}

void LevelsForm::fill() {
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (m_conditioner[slot]) m_conditioner[slot]->setAmount(m_machine.capacity.conditioner[slot]);
    }
    m_cleaner->setAmount(m_machine.capacity.cleaner);
    showPoured(true);
    if (m_pouredConditioner[0]) m_pouredConditioner[0]->setFocus();
}

std::optional<Poured> LevelsForm::poured() const {
    Poured poured;
    bool any = m_pouredCleaner->amount() > Microlitres{0};
    poured.cleaner = m_pouredCleaner->amount();
    for (size_t slot = 0; slot < m_pouredConditioner.size(); ++slot) {
        if (!m_pouredConditioner[slot]) continue;
        poured.conditioner[slot] = m_pouredConditioner[slot]->amount();
        any = any || poured.conditioner[slot] > Microlitres{0};
    }
    return any ? std::optional(poured) : std::nullopt;
}

void LevelsForm::buildButtons(QFormLayout* form) {
    auto* filled = new QPushButton(tr("&Filled"), this);
    auto* emptied = new QPushButton(tr("&Emptied"), this);
    auto* swapped = new QPushButton(tr("Pac&k swapped"), this);
    connect(filled, &QPushButton::clicked, this, &LevelsForm::fill);
    connect(emptied, &QPushButton::clicked, this, [this] { m_waste->setAmount({0}); });
    connect(swapped, &QPushButton::clicked, this, [this] { m_lanesLeft->setValue(m_machine.capacity.lanesPerCharge); });
    auto* quick = new QHBoxLayout;
    for (QPushButton* button : {filled, emptied, swapped})
        quick->addWidget(button);
    form->addRow(quick);
    auto* keep = new QPushButton(tr("&Keep the reading"), this);
    keep->setObjectName("keepReading");
    auto* leave = new QPushButton(tr("Cancel"), this);
    auto* row = new QHBoxLayout;
    row->addStretch();
    row->addWidget(keep);
    row->addWidget(leave);
    form->addRow(row);
    connect(keep, &QPushButton::clicked, this, &LevelsForm::submit);
    connect(leave, &QPushButton::clicked, this, &LevelsForm::cancelled);
}

void LevelsForm::begin(const MachineLevels& levels) {
    m_volts->setValue(0);
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (m_conditioner[slot]) m_conditioner[slot]->setAmount(levels.conditioner[slot]);
    }
    m_cleaner->setAmount(levels.cleaner);
    m_waste->setAmount(levels.waste);
    m_lanesLeft->setValue(levels.lanesLeft);
    for (AmountBox* box : m_pouredConditioner) {
        if (box) box->setAmount({});
    }
    m_pouredCleaner->setAmount({});
    showPoured(false);
    m_volts->setFocus();
    m_volts->selectAll();
}

/// Fields let Enter pass on to the form; on a button it presses that button.
void LevelsForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT cancelled();
    } else if (auto* button = qobject_cast<QPushButton*>(focusWidget()); enter && button && button->hasFocus()) {
        button->click();
    } else if (enter) {
        submit();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void LevelsForm::submit() {
    MachineLevels levels;
    levels.machine = m_machine.id;
    levels.at = m_session.now();
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (m_conditioner[slot]) levels.conditioner[slot] = m_conditioner[slot]->amount();
    }
    levels.cleaner = m_cleaner->amount();
    levels.waste = m_waste->amount();
    levels.lanesLeft = m_lanesLeft->value();
    if (m_volts->value() > 0) levels.volts = Millivolts{std::llround(m_volts->value() * 1000)};
    Q_EMIT finished(levels, poured());
}

}  // namespace laneward
