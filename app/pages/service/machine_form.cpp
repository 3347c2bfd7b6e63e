#include "app/pages/service/machine_form.h"

#include "core/service/lifting.h"

#include <QDoubleSpinBox>

#include <cmath>

namespace laneward {

namespace {

constexpr double gramsPerKilogram = 1'000;
constexpr double gramsPerPound = 453.59237;  // exactly: 1 lb = 0.45359237 kg (NIST Handbook 44, appendix C; from memory)
constexpr double mostTyped = 99'999;         // more than can be: what cannot is said, not cut off
constexpr double milli = 1'000;

}  // namespace

MachineForm::MachineForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    build();
    finish();
    for (QDoubleSpinBox* field : {m_weight, m_full, m_spare})
        connect(field, &QDoubleSpinBox::valueChanged, this, &MachineForm::touched);
}

QDoubleSpinBox* MachineForm::box(const char* name, int decimals, const QString& suffix) {
    auto* field = new QDoubleSpinBox(this);
    field->setObjectName(QString::fromLatin1(name));
    field->setRange(0, mostTyped);
    field->setDecimals(decimals);
    field->setSuffix(suffix);
    field->setAlignment(Qt::AlignTrailing);
    return field;
}

void MachineForm::build() {
    const bool metric = session().season().centre.facts.settings.units == UnitSystem::Metric;
    m_weight = box("machineWeight", 1, metric ? tr(" kg", "suffix") : tr(" lb", "suffix"));
    m_weight->setSpecialValueText(tr("not known"));
    m_full = box("machineFull", 2, tr(" V", "suffix"));
    m_spare = box("machineSpare", 2, tr(" V", "suffix"));
    for (QDoubleSpinBox* volts : {m_full, m_spare})
        volts->setSingleStep(0.1);
    addRow(tr("Wei&ght:"), m_weight, {"machine.weight", "lifting.two", "lifting.lift"});
    addRow(tr("F&ull from, rested:"), m_full, {"machine.volts", "pack.volts"});
    addRow(tr("&Spare pack below, rested:"), m_spare, {});
}

double MachineForm::gramsPerUnit() const {
    return session().season().centre.facts.settings.units == UnitSystem::Metric ? gramsPerKilogram : gramsPerPound;
}

const Machine* MachineForm::stored() const { return findMachine(session().season().centre, m_machine); }

void MachineForm::edit(const MachineId& machine) {
    m_machine = machine;
    if (!stored()) return;
    open(tr("%1: weight, and volts where its packs have none", "machine").arg(shown(stored()->name)));
}

void MachineForm::reload() {
    if (!stored()) return;
    m_loaded = *stored();
    m_weight->setValue(m_loaded.weight ? double(m_loaded.weight->value) / gramsPerUnit() : 0);
    m_full->setValue(double(m_loaded.fullAt.value) / milli);
    m_spare->setValue(double(m_loaded.attachSpareAt.value) / milli);
}

bool MachineForm::isOther() const { return !stored() || stored()->version != m_loaded.version; }

Machine MachineForm::draft() const {
    Machine machine = m_loaded;
    machine.weight.reset();
    if (m_weight->value() > 0) machine.weight = Grams{std::llround(m_weight->value() * gramsPerUnit())};
    machine.fullAt = Millivolts{std::llround(m_full->value() * milli)};
    machine.attachSpareAt = Millivolts{std::llround(m_spare->value() * milli)};
    return machine;
}

std::vector<Finding> MachineForm::faults() const {
    Centre centre = session().season().centre;
    const Machine made = draft();
    for (Machine& machine : centre.machines)
        if (machine.id == m_machine) machine = made;
    std::vector<Finding> found = faultsOf(centre);
    std::erase_if(found, [&](const Finding& fault) { return !fault.rule.startsWith("machine.") || fault.subject != made.name; });
    for (const Millivolts volts : {made.fullAt, made.attachSpareAt}) {
        for (Finding& fault : voltsFindings(volts, made.name))
            found.push_back(std::move(fault));
    }
    return found;
}

std::vector<Finding> MachineForm::doubts() const {
    const Machine made = draft();
    return made.weight ? liftingFindings(made.name, double(made.weight->value) / gramsPerKilogram) : std::vector<Finding>{};
}

bool MachineForm::store() {
    const QString name = tr("Weight and volts of %1", "machine").arg(shown(m_loaded.name));
    return session().apply(name, {RowChange<Machine>{m_loaded, draft()}});
}

}  // namespace laneward
