#include "app/pages/centre/person_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include <algorithm>

namespace laneward {

PersonForm::PersonForm(Session& session, QWidget* parent) : CentreForm(session, parent) {
    m_name = lineField("personName", limits::nameLength + 1);  // what is too long is said
    m_role = choiceField("personRole");
    for (const Role role : {Role::Operator, Role::Lead, Role::Manager})
        m_role->addItem(text(role), int(role));
    addRow(tr("&Name:"), m_name, {"centre.no-name", "centre.name-too-long", "centre.name-twice"});
    addRow(tr("R&ole:"), m_role, {});
    m_active = addCheck("personActive", tr("works here and signs &records"), {"centre.nobody"});
    finish();
}

void PersonForm::create() {
    m_isNew = true;
    m_loaded = Person{};
    m_loaded.id = {session().newOperation().value};
    open(tr("A new person"));
}

void PersonForm::edit(const PersonId& person) {
    m_isNew = false;
    m_loaded.id = person;
    if (!stored()) return;
    open(shown(stored()->name));
}

const Person* PersonForm::stored() const { return findPerson(session().season().centre, m_loaded.id); }

void PersonForm::reload() {
    if (stored()) m_loaded = *stored();
    m_name->setText(m_loaded.name);
    m_role->setCurrentIndex(m_role->findData(int(m_loaded.role)));
    m_active->setChecked(m_loaded.active);
}

bool PersonForm::isOther() const { return !m_isNew && (!stored() || stored()->version != m_loaded.version); }

Person PersonForm::draft() const {
    Person person = m_loaded;
    person.name = m_name->text().trimmed();
    person.role = Role(m_role->currentData().toInt());
    person.active = m_active->isChecked();
    return person;
}

std::vector<Finding> PersonForm::faults() const {
    Centre centre = session().season().centre;
    put(centre.people, draft());
    std::vector<Finding> found = newFaults(centre);
    if (std::none_of(centre.people.begin(), centre.people.end(), [](const Person& person) { return person.active; }))
        found.push_back({Severity::Fault, "centre.nobody", centre.facts.name, {}});
    return found;
}

bool PersonForm::store() {
    if (m_isNew)
        return session().apply(tr("New person: %1").arg(shown(draft().name)), {RowChange<Person>{std::nullopt, draft()}});
    return session().apply(tr("Change %1").arg(shown(m_loaded.name)), {RowChange<Person>{m_loaded, draft()}});
}

}  // namespace laneward
