#include "app/pages/centre/machine_settings_form.h"

#include "app/widgets/quantity_box.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double permillePerPercent = 10;

Amount amountOf(Microlitres volume) { return {volume.value}; }
Microlitres volumeOf(const QuantityBox& field) { return {field.amount().value}; }

}  // namespace

/// What is stocked of that kind is offered; anything else can be typed.
void MachineSettingsForm::showProducts(const Tank& tank, SupplyKind kind, const QString& product) {
    tank.product->clear();
    for (const Supply& supply : session().season().supplies) {
        if (supply.kind == kind && !supply.retired) tank.product->addItem(supply.name);
    }
    tank.product->setEditText(product);
}

void MachineSettingsForm::fill(const Machine& machine) {
    const MachineCapacity& holds = machine.capacity;
    m_name->setText(machine.name);
    m_attended->setChecked(machine.attended);
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        showProducts(m_conditioner[slot], SupplyKind::Conditioner, machine.conditioners[slot]);
        m_conditioner[slot].holds->setAmount(amountOf(holds.conditioner[slot]));
    }
    showProducts(m_cleaner, SupplyKind::Cleaner, machine.cleaner);
    m_cleaner.holds->setAmount(amountOf(holds.cleaner));
    m_waste->setAmount(amountOf(holds.waste));
    m_percent->setValue(holds.conditionerPermille / permillePerPercent);
    m_cleanerPerLane->setAmount(amountOf(holds.cleanerPerLane));
    m_wastePerLane->setAmount(amountOf(holds.wastePerLane));
    m_lanesPerCharge->setValue(holds.lanesPerCharge);
    m_spares->setValue(holds.sparePacks);
    for (size_t t = 0; t < m_lane.size(); ++t)
        m_lane[t]->setValue(int(machine.times.lane[t].value));
    m_perTenFeet->setValue(int(machine.times.perTenFeet.value));
    m_next->setValue(int(machine.times.nextLane.value));
    m_cross->setValue(int(machine.times.crossLane.value));
    for (const TimeField& field : m_times)
        showMinutes(*field.minutes, machine.times.*field.time);
    showBars(machine.bars);
}

void MachineSettingsForm::showBars(const Bars& bars) {
    m_barredLanes->setText(bars.lanes.text());
    for (size_t t = 0; t < m_barredTreatments.size(); ++t)
        m_barredTreatments[t]->setChecked(std::count(bars.treatments.begin(), bars.treatments.end(), Treatment(t)) > 0);
    m_barredPatterns->clear();
    for (const Pattern& pattern : session().season().patterns) {
        const bool barred = std::count(bars.patterns.begin(), bars.patterns.end(), pattern.id) > 0;
        if (pattern.retired && !barred) continue;
        auto* item = new QListWidgetItem(pattern.name, m_barredPatterns);
        item->setData(Qt::UserRole, pattern.id.value);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(barred ? Qt::Checked : Qt::Unchecked);
    }
}

Bars MachineSettingsForm::bars() const {
    Bars bars;
    if (const Result<LaneSet> lanes = LaneSet::parse(m_barredLanes->text())) bars.lanes = *lanes;
    for (size_t t = 0; t < m_barredTreatments.size(); ++t) {
        if (m_barredTreatments[t]->isChecked()) bars.treatments.push_back(Treatment(t));
    }
    for (int row = 0; row < m_barredPatterns->count(); ++row) {
        const QListWidgetItem* item = m_barredPatterns->item(row);
        if (item->checkState() == Qt::Checked) bars.patterns.push_back({item->data(Qt::UserRole).toString()});
    }
    return bars;
}

MachineCapacity MachineSettingsForm::capacity() const {
    MachineCapacity holds = loaded().capacity;
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot)
        holds.conditioner[slot] = volumeOf(*m_conditioner[slot].holds);
    holds.cleaner = volumeOf(*m_cleaner.holds);
    holds.waste = volumeOf(*m_waste);
    holds.cleanerPerLane = volumeOf(*m_cleanerPerLane);
    holds.wastePerLane = volumeOf(*m_wastePerLane);
    holds.conditionerPermille = int(std::lround(m_percent->value() * permillePerPercent));
    holds.lanesPerCharge = m_lanesPerCharge->value();
    holds.sparePacks = m_spares->value();
    return holds;
}

Machine MachineSettingsForm::draft() const {
    Machine machine = loaded();
    machine.name = m_name->text().trimmed();
    machine.attended = m_attended->isChecked();
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot)
        machine.conditioners[slot] = m_conditioner[slot].product->currentText().trimmed().left(limits::nameLength);
    machine.cleaner = m_cleaner.product->currentText().trimmed().left(limits::nameLength);
    machine.capacity = capacity();
    for (size_t t = 0; t < m_lane.size(); ++t)
        machine.times.lane[t] = Seconds{m_lane[t]->value()};
    machine.times.perTenFeet = Seconds{m_perTenFeet->value()};
    machine.times.nextLane = Seconds{m_next->value()};
    machine.times.crossLane = Seconds{m_cross->value()};
    for (const TimeField& field : m_times)
        machine.times.*field.time = secondsOf(*field.minutes);
    machine.bars = bars();
    return machine;
}

std::vector<Finding> MachineSettingsForm::faults() const {
    std::vector<Finding> found = newFaults(centreWith(draft()));
    if (const Result<LaneSet> lanes = LaneSet::parse(m_barredLanes->text()); !lanes && !m_barredLanes->text().trimmed().isEmpty())
        found.push_back(lanes.error().finding);
    return found;
}

QString MachineSettingsForm::title() const { return isNew() ? tr("A new machine") : shown(loaded().name); }

QString MachineSettingsForm::deedName(const Machine& made) const {
    return isNew() ? tr("New machine: %1").arg(shown(made.name)) : tr("Change the machine %1").arg(shown(loaded().name));
}

}  // namespace laneward
