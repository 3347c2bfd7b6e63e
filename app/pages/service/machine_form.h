// What a machine weighs, and the volts that count where none of its packs has limits of its own.
//
// Weight is typed in kilograms or pounds and kept in grams; volts are those of a rested pack.
#pragma once

#include "app/edits/edit_form.h"

class QDoubleSpinBox;

namespace laneward {

class MachineForm : public EditForm {
    Q_OBJECT

public:
    explicit MachineForm(Session& session, QWidget* parent = nullptr);

    void edit(const MachineId& machine);

private:
    void build();
    QDoubleSpinBox* box(const char* name, int decimals, const QString& suffix);
    double gramsPerUnit() const;
    const Machine* stored() const;
    Machine draft() const;
    std::vector<Finding> faults() const override;
    std::vector<Finding> doubts() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    Machine m_loaded;
    MachineId m_machine;
    QDoubleSpinBox* m_weight = nullptr;
    QDoubleSpinBox* m_full = nullptr;
    QDoubleSpinBox* m_spare = nullptr;
};

}  // namespace laneward
