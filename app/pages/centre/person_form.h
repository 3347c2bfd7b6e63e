// Who signs records: name, role, and whether the person still works here.
#pragma once

#include "app/pages/centre/centre_form.h"

namespace laneward {

class PersonForm : public CentreRowForm<Person> {
    Q_OBJECT

public:
    explicit PersonForm(Session& session, QWidget* parent = nullptr);

private:
    void fill(const Person& person) override;
    Person draft() const override;
    QString title() const override;
    QString deedName(const Person& made) const override;
    std::vector<Finding> faults() const override;

    QLineEdit* m_name = nullptr;
    QComboBox* m_role = nullptr;
    QCheckBox* m_active = nullptr;
};

}  // namespace laneward
