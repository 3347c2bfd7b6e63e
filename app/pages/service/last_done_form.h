// What was done before the program came, typed once: what the machine's counters show now, and when each duty was last done. It
// is recorded as done on those days, so that what falls due next follows from it like from any other record.
#pragma once

#include "app/edits/edit_form.h"
#include "app/pages/service/last_done_model.h"

#include <array>

class QDoubleSpinBox;

namespace laneward {

class CellTable;

class LastDoneForm : public EditForm {
    Q_OBJECT

public:
    explicit LastDoneForm(Session& session, QWidget* parent = nullptr);

    void create(const MachineId& machine);
    /// Counters that are typed, and services; in one step.
    std::vector<Record> draft() const;

    /// Duties of the machine (empty = the centre) of which nothing was ever recorded.
    static std::vector<LastDoneModel::Asked> unrecorded(const SeasonState& season, const MachineId& machine);

private:
    void build();
    std::vector<MeterReading> readings() const;
    Meters metersThen() const;
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override { return false; }
    void reload() override;

    MachineId m_machine;
    std::array<QDoubleSpinBox*, 3> m_counters{};  ///< lanes, runs, hours; below 0 = not read
    LastDoneModel* m_model = nullptr;
    CellTable* m_table = nullptr;
};

}  // namespace laneward
