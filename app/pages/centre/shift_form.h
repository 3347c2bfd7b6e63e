// When lane staff works: days of the week, times, how many, the overtime that is allowed, and days that are otherwise.
#pragma once

#include "app/pages/centre/centre_form.h"

#include <array>

namespace laneward {

class ShiftForm : public CentreForm {
    Q_OBJECT

public:
    explicit ShiftForm(Session& session, QWidget* parent = nullptr);

    void create();
    void edit(const ShiftId& shift);

private:
    void buildWhen();
    void buildRest();
    const Shift* stored() const;
    Shift draft() const;
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    bool m_isNew = false;
    Shift m_loaded;
    QLineEdit* m_name = nullptr;
    std::array<QCheckBox*, 7> m_days{};
    QTimeEdit* m_begin = nullptr;
    QTimeEdit* m_end = nullptr;
    QSpinBox* m_people = nullptr;
    QDoubleSpinBox* m_before = nullptr;
    QDoubleSpinBox* m_after = nullptr;
    QLineEdit* m_daysOff = nullptr;
    QLineEdit* m_extraDays = nullptr;
};

}  // namespace laneward
