// What happened to a pack, written down: its volts read, put on its machine or on charge, charged.
#pragma once

#include "app/pages/service/record_form.h"

class QComboBox;
class QDoubleSpinBox;

namespace laneward {

class PackForm : public RecordForm {
    Q_OBJECT

public:
    explicit PackForm(Session& session, QWidget* parent = nullptr);

    void create(const ItemId& pack);
    PackReading draft() const;

private:
    void build();
    void deedChosen();
    PackDeed deed() const;
    std::vector<Finding> faults() const override;
    bool store() override;
    void reload() override;

    ItemId m_pack;
    QComboBox* m_deed = nullptr;
    QDoubleSpinBox* m_volts = nullptr;
    QComboBox* m_state = nullptr;
    QCheckBox* m_spent = nullptr;
};

}  // namespace laneward
