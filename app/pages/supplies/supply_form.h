// One supply: what it is, what uses it, how much of it is kept. Keeping a new one books what is in the tanks that name it.
#pragma once

#include "app/edits/edit_form.h"

class QComboBox;
class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;

namespace laneward {

class QuantityBox;

class SupplyForm : public EditForm {
    Q_OBJECT

public:
    explicit SupplyForm(Session& session, QWidget* parent = nullptr);

    void create();
    void edit(const Supply& supply);
    Supply draft() const;
    SupplyId editing() const { return m_loaded.id; }

private:
    void buildWhat();
    void buildRules();
    void connectFields();
    void kindChosen();
    void showFields();
    std::vector<Change> changesTo(const Supply& after) const;
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    std::optional<Supply> m_before;  ///< nothing for a new one
    Supply m_loaded;
    QLineEdit* m_name = nullptr;
    QComboBox* m_kind = nullptr;
    QSpinBox* m_water = nullptr;
    QComboBox* m_basis = nullptr;
    QuantityBox* m_usual = nullptr;
    QuantityBox* m_container = nullptr;
    QuantityBox* m_limit = nullptr;
    QSpinBox* m_life = nullptr;
    QDoubleSpinBox* m_level = nullptr;
    QDoubleSpinBox* m_holding = nullptr;
    QLineEdit* m_note = nullptr;
};

/// 'Retire …' or 'Take … up again', as one undoable edit.
bool retire(Session& session, const Supply& supply);

}  // namespace laneward
