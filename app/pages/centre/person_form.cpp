#include "app/pages/centre/person_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include <algorithm>

namespace laneward {

PersonForm::PersonForm(Session& session, QWidget* parent) : CentreRowForm(session, &Centre::people, parent) {
    m_name = lineField("personName", limits::nameLength + 1);  // what is too long is said
    m_role = choiceField("personRole");
    for (const Role role : {Role::Operator, Role::Lead, Role::Manager})
        m_role->addItem(text(role), int(role));
    addRow(tr("&Name:"), m_name, {"centre.no-name", "centre.name-too-long", "centre.name-twice"});
    addRow(tr("R&ole:"), m_role, {});
    m_active = addCheck("personActive", tr("works here and signs &records"), {"centre.nobody"});
    finish();
}

void PersonForm::fill(const Person& person) {
    m_name->setText(person.name);
    m_role->setCurrentIndex(m_role->findData(int(person.role)));
    m_active->setChecked(person.active);
}

Person PersonForm::draft() const {
    Person person = loaded();
    person.name = m_name->text().trimmed();
    person.role = Role(m_role->currentData().toInt());
    person.active = m_active->isChecked();
    return person;
}

QString PersonForm::title() const { return isNew() ? tr("A new person") : shown(loaded().name); }

QString PersonForm::deedName(const Person& made) const {
    return isNew() ? tr("New person: %1").arg(shown(made.name)) : tr("Change %1").arg(shown(loaded().name));
}

std::vector<Finding> PersonForm::faults() const {
    const Centre centre = centreWith(draft());
    std::vector<Finding> found = newFaults(centre);
    if (std::none_of(centre.people.begin(), centre.people.end(), [](const Person& person) { return person.active; }))
        found.push_back({Severity::Fault, "centre.nobody", centre.facts.name, {}});
    return found;
}

}  // namespace laneward
