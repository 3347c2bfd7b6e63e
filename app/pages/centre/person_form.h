// Who signs records: name, role, and whether the person still works here.
#pragma once

#include "app/pages/centre/centre_form.h"

namespace laneward {

class PersonForm : public CentreForm {
    Q_OBJECT

public:
    explicit PersonForm(Session& session, QWidget* parent = nullptr);

    void create();
    void edit(const PersonId& person);

private:
    const Person* stored() const;
    Person draft() const;
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    bool m_isNew = false;
    Person m_loaded;
    QLineEdit* m_name = nullptr;
    QComboBox* m_role = nullptr;
    QCheckBox* m_active = nullptr;
};

}  // namespace laneward
