// What a machine's counter shows, written down. One that runs backwards is refused unless it is a new one.
#pragma once

#include "app/pages/service/record_form.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;

namespace laneward {

class CounterForm : public RecordForm {
    Q_OBJECT

public:
    explicit CounterForm(Session& session, QWidget* parent = nullptr);

    void create(const MachineId& machine);
    MeterReading draft() const;

    /// As it is typed: lanes, runs, or hours with a tenth.
    static double typedOf(std::int64_t shown, MeterKind meter);
    static std::int64_t shownOf(double typed, MeterKind meter);

private:
    void build();
    void meterChosen();
    void tellExpected();
    MeterKind meter() const;
    QString machineName() const;
    std::vector<Finding> faults() const override;
    bool store() override;
    void reload() override;

    MachineId m_machine;
    QComboBox* m_meter = nullptr;
    QDoubleSpinBox* m_shown = nullptr;
    QLabel* m_expected = nullptr;
    QCheckBox* m_replaced = nullptr;
};

}  // namespace laneward
