// When lane staff works: days of the week, times, how many, the overtime that is allowed, and days that are otherwise.
#pragma once

#include "app/pages/centre/centre_form.h"

#include <array>

namespace laneward {

class ShiftForm : public CentreRowForm<Shift> {
    Q_OBJECT

public:
    explicit ShiftForm(Session& session, QWidget* parent = nullptr);

private:
    void buildWhen();
    void buildRest();
    void fill(const Shift& shift) override;
    Shift draft() const override;
    QString title() const override;
    QString deedName(const Shift& made) const override;
    std::vector<Finding> faults() const override;

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
