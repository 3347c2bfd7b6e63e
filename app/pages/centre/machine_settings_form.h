// A lane machine as planning knows it: what is in its tanks, what it holds and takes, how long it takes, what it must not do.
//
// Its weight and the volts of its packs are typed on the page Service, beside what is looked after.
#pragma once

#include "app/pages/centre/centre_form.h"

#include <array>

class QHBoxLayout;
class QListWidget;

namespace laneward {

class QuantityBox;

class MachineSettingsForm : public CentreRowForm<Machine> {
    Q_OBJECT

public:
    explicit MachineSettingsForm(Session& session, QWidget* parent = nullptr);

private:
    /// A tank: what is in it and how much it holds.
    struct Tank {
        QComboBox* product = nullptr;
        QuantityBox* holds = nullptr;
    };
    /// A time of the machine, in its field.
    struct TimeField {
        Seconds MachineTimes::*time;
        QDoubleSpinBox* minutes;
    };

    Tank addTank(const QString& label, const char* name, SupplyKind kind);
    QuantityBox* amountField(const char* name, SupplyKind kind);
    void addTime(const QString& label, const char* name, Seconds MachineTimes::*time);
    void buildTanks();
    void buildUse();
    void buildLaneTimes();
    void buildTimes();
    void buildBars();
    void showProducts(const Tank& tank, SupplyKind kind, const QString& product);
    void showBars(const Bars& bars);
    Bars bars() const;
    MachineCapacity capacity() const;
    void fill(const Machine& machine) override;
    Machine draft() const override;
    QString title() const override;
    QString deedName(const Machine& made) const override;
    std::vector<Finding> faults() const override;

    QLineEdit* m_name = nullptr;
    QCheckBox* m_attended = nullptr;
    std::array<Tank, conditionerSlots> m_conditioner{};
    Tank m_cleaner;
    QuantityBox* m_waste = nullptr;
    QDoubleSpinBox* m_percent = nullptr;  ///< really used of what the pattern says
    QuantityBox* m_cleanerPerLane = nullptr;
    QuantityBox* m_wastePerLane = nullptr;
    QSpinBox* m_lanesPerCharge = nullptr;
    QSpinBox* m_spares = nullptr;
    std::array<QSpinBox*, 3> m_lane{};  ///< seconds, by Treatment
    QSpinBox* m_perTenFeet = nullptr;
    QSpinBox* m_next = nullptr;
    QSpinBox* m_cross = nullptr;
    std::vector<TimeField> m_times;
    QLineEdit* m_barredLanes = nullptr;
    std::array<QCheckBox*, 3> m_barredTreatments{};
    QListWidget* m_barredPatterns = nullptr;
};

}  // namespace laneward
