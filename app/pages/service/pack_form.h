// What happened to a pack, written down: its volts read, put on its machine or on charge, charged.
#pragma once

#include "app/edits/edit_form.h"

class QCheckBox;
class QComboBox;
class QDateTimeEdit;
class QDoubleSpinBox;
class QLineEdit;

namespace laneward {

class PackForm : public EditForm {
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
    bool isOther() const override { return false; }
    void reload() override;

    ItemId m_pack;
    QComboBox* m_deed = nullptr;
    QDoubleSpinBox* m_volts = nullptr;
    QComboBox* m_state = nullptr;
    QCheckBox* m_spent = nullptr;
    QDateTimeEdit* m_at = nullptr;
    QLineEdit* m_note = nullptr;
};

}  // namespace laneward
