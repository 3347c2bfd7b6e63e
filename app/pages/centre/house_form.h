// The centre itself: its name, lanes, wall time, rules that planning keeps, units, paper and currency.
#pragma once

#include "app/pages/centre/centre_form.h"

namespace laneward {

class HouseForm : public CentreForm {
    Q_OBJECT

public:
    explicit HouseForm(Session& session, QWidget* parent = nullptr);

    void edit();

private:
    void buildFacts();
    void buildTimes();
    void buildHabits();
    CentreFacts draft() const;
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    CentreFacts m_loaded;
    QLineEdit* m_name = nullptr;
    QSpinBox* m_lanes = nullptr;
    QComboBox* m_zone = nullptr;
    QTimeEdit* m_dayBegins = nullptr;
    QCheckBox* m_partner = nullptr;
    QDoubleSpinBox* m_reserve = nullptr;
    QDoubleSpinBox* m_settle = nullptr;
    QDoubleSpinBox* m_clearing = nullptr;
    QDoubleSpinBox* m_longestAge = nullptr;
    QComboBox* m_units = nullptr;
    QComboBox* m_paper = nullptr;
    QLineEdit* m_currency = nullptr;
};

}  // namespace laneward
