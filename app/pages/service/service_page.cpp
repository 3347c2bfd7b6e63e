#include "app/pages/service/service_page.h"

#include "app/edits/busy_bar.h"
#include "app/models/panel_list.h"
#include "app/pages/service/due_panel.h"
#include "app/pages/service/machines_panel.h"
#include "app/pages/service/packs_panel.h"
#include "app/pages/service/wear_panel.h"
#include "core/documents/service_words.h"

#include <QHideEvent>
#include <QKeyEvent>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

ServicePage::ServicePage(Session& session, QWidget* parent) : Page(session, parent) {
    m_headline = tr("Working out what falls due…");
    connect(&m_asker, &SupplyAsker::answered, this, &ServicePage::take);
    connect(&m_asker, &SupplyAsker::failed, this, &ServicePage::takeFailure);
}

void ServicePage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addWidget(m_busy = new BusyBar(tr("Working out what falls due"), tr("Work it &out"), this));
    connect(m_busy, &BusyBar::cancelled, this, &ServicePage::stop);
    connect(m_busy, &BusyBar::againWanted, this, &ServicePage::ask);
    connect(&m_asker, &SupplyAsker::progressed, m_busy, &BusyBar::setDone);
    m_tabs = new QTabWidget(this);
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(m_due = new DuePanel(session(), m_tabs), tr("Due"));
    m_tabs->addTab(m_machines = new MachinesPanel(session(), m_tabs), tr("Machines"));
    m_tabs->addTab(m_wear = new WearPanel(session(), m_tabs), tr("Wear"));
    m_tabs->addTab(m_packs = new PacksPanel(session(), m_tabs), tr("Packs"));
    column->addWidget(m_tabs, 1);
    const auto follow = [this] { startAt(m_tabs->currentWidget()->findChild<QTableView*>()); };
    connect(m_tabs, &QTabWidget::currentChanged, this, follow);
    follow();
    walkTabs(*m_tabs, *this);
    connect(m_machines, &MachinesPanel::recordWanted, this, [this](const DutyId& duty) {
        m_tabs->setCurrentWidget(m_due);
        m_due->recordDuty(duty);
    });
}

bool ServicePage::isBusy() const { return m_asker.isBusy() || (m_wear && m_wear->isBusy()); }

void ServicePage::refresh() {
    wake();
    m_due->refresh();
    m_machines->refresh();
    m_wear->refresh();
    m_packs->refresh();
    ask();
}

void ServicePage::ask() {
    if (session().season().items.empty()) {
        m_asker.leave();
        m_answer = nullptr;
        m_busy->end();
    } else {
        m_asker.ask(session(), SupplyAsker::Wanted::Service);
        m_busy->begin();
    }
    showAll();
}

/// The old answer stays.
void ServicePage::stop() {
    m_asker.leave();
    m_busy->stop(m_answer ? tr("Stopped. What is shown is older than the last change.")
                          : tr("Stopped. What falls due is not known."));
    say();
}

/// A hidden page works nothing out; it asks again when it is shown.
void ServicePage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    if (event->spontaneous() || !m_asker.isBusy()) return;
    m_asker.leave();
    m_busy->end();
    refreshSoon();
}

/// What is open in a tab takes Esc first.
void ServicePage::keyPressEvent(QKeyEvent* event) {
    const bool isEscape = event->key() == Qt::Key_Escape;
    if (!isEscape || !m_busy || !(m_busy->cancel() || m_wear->cancel())) Page::keyPressEvent(event);
}

void ServicePage::take(const std::shared_ptr<const SupplyAnswer>& answer) {
    m_answer = answer;
    m_busy->end();
    showAll();
}

void ServicePage::takeFailure(const Error& why) {
    m_busy->stop(tr("What falls due could not be worked out: %1").arg(text(why, session().speech())));
    say();
}

void ServicePage::showAll() {
    m_due->show(m_answer);
    m_machines->show(m_answer);
    m_packs->show(m_answer);
    say();
}

void ServicePage::say() {
    const QString before = m_headline;
    if (session().season().items.empty())
        m_headline = tr("Nothing is looked after here yet.");
    else if (m_answer)
        m_headline = serviceHeadline(m_answer->service, session().season(), session().speech());
    else
        m_headline = m_asker.isBusy() ? tr("Working out what falls due…") : tr("What falls due is not known.");
    if (m_headline != before) Q_EMIT headlineChanged();
}

}  // namespace laneward
