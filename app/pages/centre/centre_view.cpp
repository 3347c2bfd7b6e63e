#include "app/pages/centre/centre_view.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/centre/centre_tab.h"
#include "app/pages/centre/house_form.h"
#include "app/pages/centre/machine_settings_form.h"
#include "app/pages/centre/outage_form.h"
#include "app/pages/centre/person_form.h"
#include "app/pages/centre/shift_form.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace laneward {

CentreView::CentreView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    setAccessibleName(tr("The centre"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->addWidget(headingLabel(tr("The centre"), this), 1);
    auto* close = new QPushButton(tr("&Back to the page (Esc)"), this);
    close->setObjectName("closeCentre");
    head->addWidget(close);
    connect(close, &QPushButton::clicked, this, &CentreView::closed);
    column->addLayout(head);
    m_tabs = new QTabWidget(this);
    column->addWidget(m_tabs, 1);
    buildHouse();
    buildMachines();
    buildPeople();
    buildShifts();
    buildOutages();
    walkTabs(*m_tabs, *this);
    connect(m_tabs, &QTabWidget::currentChanged, this, [this](int tab) { m_lists[size_t(tab)]->focusList(); });
    connect(&session, &Session::changed, this, &CentreView::refresh);
    refresh();
    setFocusProxy(m_tabs->currentWidget());
}

CentreList CentreView::listOf(Tab tab) const {
    const Centre& centre = m_session.season().centre;
    const Speech speech = m_session.speech();
    switch (tab) {
        case House:
            return CentreRows::house(centre, speech);
        case Machines:
            return CentreRows::machines(centre, m_session.now(), speech);
        case People:
            return CentreRows::people(centre);
        case Shifts:
            return CentreRows::shifts(centre, m_session.today(), speech);
        case Outages:
        case TabCount:
            break;
    }
    return CentreRows::outages(centre, m_session.now(), speech);
}

CentreTab* CentreView::add(Tab tab, const QString& title, const QString& name) {
    auto* list = new CentreTab(m_session, name, listOf(tab), m_tabs);
    m_lists[size_t(tab)] = list;
    m_tabs->addTab(list, title);
    return list;
}

void CentreView::buildHouse() {
    CentreTab* list = add(House, tr("House"), QStringLiteral("house"));
    auto* form = new HouseForm(m_session, list);
    list->addForm(form, [form](const QString&) { form->edit(); });
    list->addButton(tr("&Change…"), QStringLiteral("changeHouse"), [form] { form->edit(); });
}

void CentreView::buildMachines() {
    CentreTab* list = add(Machines, tr("Machines"), QStringLiteral("machines"));
    auto* form = new MachineSettingsForm(m_session, list);
    list->addForm(form, [form](const QString& id) { form->edit({id}); });
    list->addButton(tr("&New machine…"), QStringLiteral("newMachine"), [form] { form->create(); });
    list->addRowButton(tr("&Change…"), QStringLiteral("changeMachine"), [form](const QString& id) { form->edit({id}); });
    list->addRowButton(tr("Take it out"), QStringLiteral("removeMachine"), [this](const QString& id) {
        takeOut(m_session.season().centre.machines, id, tr("Take out the machine"));
    });
}

void CentreView::buildPeople() {
    CentreTab* list = add(People, tr("People"), QStringLiteral("people"));
    auto* form = new PersonForm(m_session, list);
    list->addForm(form, [form](const QString& id) { form->edit({id}); });
    list->addButton(tr("&New person…"), QStringLiteral("newPerson"), [form] { form->create(); });
    list->addRowButton(tr("&Change…"), QStringLiteral("changePerson"), [form](const QString& id) { form->edit({id}); });
}

void CentreView::buildShifts() {
    CentreTab* list = add(Shifts, tr("Shifts"), QStringLiteral("shifts"));
    auto* form = new ShiftForm(m_session, list);
    list->addForm(form, [form](const QString& id) { form->edit({id}); });
    list->addButton(tr("&New shift…"), QStringLiteral("newShift"), [form] { form->create(); });
    list->addRowButton(tr("&Change…"), QStringLiteral("changeShift"), [form](const QString& id) { form->edit({id}); });
    list->addRowButton(tr("Take it out"), QStringLiteral("removeShift"),
                       [this](const QString& id) { takeOut(m_session.season().centre.shifts, id, tr("Take out the shift")); });
}

void CentreView::buildOutages() {
    CentreTab* list = add(Outages, tr("Out of service"), QStringLiteral("outages"));
    auto* form = new OutageForm(m_session, list);
    list->addForm(form, [form](const QString& id) { form->edit({id}); });
    list->addButton(tr("&Out of service…"), QStringLiteral("newOutage"), [form] { form->create(); });
    list->addRowButton(tr("Back in &service now"), QStringLiteral("endOutage"), [this](const QString& id) { endOutage(id); });
    list->addRowButton(tr("&Change…"), QStringLiteral("changeOutage"), [form](const QString& id) { form->edit({id}); });
    list->addRowButton(tr("Take it out"), QStringLiteral("removeOutage"),
                       [this](const QString& id) { takeOut(m_session.season().centre.outages, id, tr("Take out the entry")); });
}

void CentreView::refresh() {
    for (int tab = 0; tab < TabCount; ++tab)
        m_lists[size_t(tab)]->show(listOf(Tab(tab)));
}

void CentreView::showTab(Tab tab) {
    m_tabs->setCurrentIndex(tab);
    m_lists[size_t(tab)]->focusList();
}

/// What is used elsewhere stays, and the session says so.
template <class Row>
void CentreView::takeOut(const std::vector<Row>& rows, const QString& id, const QString& name) {
    for (const Row& row : rows) {
        if (row.id.value != id) continue;
        const Row before = row;
        m_session.apply(name, {RowChange<Row>{before, std::nullopt}});
        return;
    }
}

void CentreView::endOutage(const QString& id) {
    for (const Outage& outage : m_session.season().centre.outages) {
        if (outage.id.value != id || !CentreRows::isOut(outage, m_session.now())) continue;
        const Outage before = outage;
        Outage after = before;
        after.end = m_session.now();
        m_session.apply(tr("Back in service: %1").arg(CentreRows::outageName(before, m_session.season().centre)),
                        {RowChange<Outage>{before, after}});
        return;
    }
    Q_EMIT m_session.said(tr("It is not out of service now."));
}

void CentreView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
    } else {
        QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
