#include "app/window/person_chooser.h"

#include <QMenu>

namespace laneward {

PersonChooser::PersonChooser(Session& session, QWidget* parent)
    : QPushButton(parent), m_session(session), m_menu(new QMenu(this)) {
    setMenu(m_menu);
    setFlat(true);
    setObjectName("person");
    m_menu->setObjectName("people");
    connect(m_menu, &QMenu::aboutToShow, this, &PersonChooser::fill);
    connect(&session, &Session::personChanged, this, &PersonChooser::refresh);
    connect(&session, &Session::changed, this, &PersonChooser::refresh);
    session.setPersonChooser([this] { return ask(); });
    refresh();
}

void PersonChooser::refresh() {
    const std::optional<Person> person = m_session.person();
    QString name = person ? shown(person->name) : tr("Who is at the desk?");
    setText(name.replace(u'&', QStringLiteral("&&")));
    setAccessibleName(person ? tr("At the desk: %1").arg(shown(person->name)) : tr("Choose who is at the desk"));
}

void PersonChooser::fill() {
    m_menu->clear();
    for (const Person& person : m_session.season().centre.people) {
        if (!person.active) continue;
        QString name = tr("%1, %2", "person, role").arg(shown(person.name), laneward::text(person.role));
        QAction* action = m_menu->addAction(name.replace(u'&', QStringLiteral("&&")));
        action->setData(person.id.value);
        connect(action, &QAction::triggered, this, [this, id = person.id] { m_session.setPerson(id); });
    }
}

PersonId PersonChooser::ask() {
    fill();
    m_menu->setActiveAction(m_menu->actions().isEmpty() ? nullptr : m_menu->actions().front());
    const QPoint above = mapToGlobal(QPoint(0, -m_menu->sizeHint().height()));
    const QAction* chosen = m_menu->exec(above);
    return chosen ? PersonId{chosen->data().toString()} : PersonId{};
}

}  // namespace laneward
