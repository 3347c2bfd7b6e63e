#include "app/pages/supplies/supplies_page.h"

#include "app/edits/busy_bar.h"
#include "app/models/panel_list.h"
#include "app/pages/supplies/count_panel.h"
#include "app/pages/supplies/ledger_panel.h"
#include "app/pages/supplies/orders_panel.h"
#include "app/pages/supplies/price_panel.h"
#include "app/pages/supplies/stock_panel.h"
#include "core/documents/supply_words.h"

#include <QHideEvent>
#include <QKeyEvent>
#include <QTabWidget>
#include <QVBoxLayout>

namespace laneward {

SuppliesPage::SuppliesPage(Session& session, QWidget* parent) : Page(session, parent) {
    m_headline = tr("Working out how long stock lasts…");
    connect(&m_asker, &SupplyAsker::answered, this, &SuppliesPage::take);
    connect(&m_asker, &SupplyAsker::failed, this, &SuppliesPage::takeFailure);
}

void SuppliesPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addWidget(m_busy = new BusyBar(tr("Working out how long stock lasts"), tr("Work it &out"), this));
    m_tabs = new QTabWidget(this);
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(m_stock = new StockPanel(session(), m_tabs), tr("Stock"));
    m_tabs->addTab(m_orders = new OrdersPanel(session(), m_tabs), tr("Orders"));
    m_tabs->addTab(m_ledger = new LedgerPanel(session(), m_tabs), tr("Ledger"));
    m_tabs->addTab(m_count = new CountPanel(session(), m_tabs), tr("Count"));
    m_tabs->addTab(m_prices = new PricePanel(session(), m_tabs), tr("Price lists"));
    column->addWidget(m_tabs, 1);
    startAt(m_tabs);
    walkTabs(*m_tabs, *this);
    connect(m_stock, &StockPanel::chosen, m_ledger, &LedgerPanel::select);
    connect(m_busy, &BusyBar::cancelled, this, &SuppliesPage::stop);
    connect(m_busy, &BusyBar::againWanted, this, &SuppliesPage::ask);
    connect(&m_asker, &SupplyAsker::progressed, m_busy, &BusyBar::setDone);
}

void SuppliesPage::refresh() {
    wake();
    m_orders->refresh();
    m_count->refresh();
    m_prices->refresh();
    m_ledger->refresh();
    ask();
}

void SuppliesPage::ask() {
    m_current = false;
    if (session().season().supplies.empty()) {
        m_asker.leave();
        m_answer = std::make_shared<SupplyAnswer>();
        m_current = true;
        m_busy->end();
    } else {
        m_asker.ask(session());
        m_busy->begin();
    }
    showAll();
}

void SuppliesPage::stop() {
    m_asker.leave();
    m_busy->stop(m_answer ? tr("Stopped. What is shown is older than the last change.")
                          : tr("Stopped. How long stock lasts is not known."));
    say();
}

/// A hidden page works nothing out; it asks again when it is shown.
void SuppliesPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    if (event->spontaneous() || !m_asker.isBusy()) return;
    m_asker.leave();
    m_busy->end();
    refreshSoon();
}

void SuppliesPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || !m_busy || !m_busy->cancel()) Page::keyPressEvent(event);
}

void SuppliesPage::take(const std::shared_ptr<const SupplyAnswer>& answer) {
    m_answer = answer;
    m_current = true;
    m_busy->end();
    showAll();
}

void SuppliesPage::takeFailure(const Error& why) {
    m_busy->stop(tr("How long stock lasts could not be worked out: %1").arg(text(why, session().speech())));
    say();
}

void SuppliesPage::showAll() {
    m_stock->show(m_answer);
    m_orders->show(m_answer, m_current);
    say();
}

void SuppliesPage::say() {
    const QString before = m_headline;
    if (m_answer)
        m_headline = supplyHeadline(m_answer->outlook, session().season(), session().speech());
    else
        m_headline = m_asker.isBusy() ? tr("Working out how long stock lasts…") : tr("How long stock lasts is not known.");
    if (m_headline != before) Q_EMIT headlineChanged();
}

}  // namespace laneward
