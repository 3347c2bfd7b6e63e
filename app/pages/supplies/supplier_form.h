// One supplier: where orders go, what they cost to send, when they are taken.
#pragma once

#include "app/edits/edit_form.h"

class QCheckBox;
class QLineEdit;
class QPlainTextEdit;
class QSpinBox;

namespace laneward {

class MoneyBox;

class SupplierForm : public EditForm {
    Q_OBJECT

public:
    explicit SupplierForm(Session& session, QWidget* parent = nullptr);

    void create();
    void edit(const Supplier& supplier);
    Supplier draft() const;
    SupplierId editing() const { return m_loaded.id; }

private:
    void buildFields();
    void buildTerms();
    void connectFields();
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    std::optional<Supplier> m_before;  ///< nothing for a new one
    Supplier m_loaded;
    QLineEdit* m_name = nullptr;
    QPlainTextEdit* m_address = nullptr;
    MoneyBox* m_freight = nullptr;
    QCheckBox* m_isFree = nullptr;
    MoneyBox* m_freeFrom = nullptr;
    MoneyBox* m_minimum = nullptr;
    std::array<QCheckBox*, 7> m_days{};
    QSpinBox* m_lead = nullptr;
    QLineEdit* m_note = nullptr;
};

bool retire(Session& session, const Supplier& supplier);

}  // namespace laneward
