#include "app/pages/supplies/supplies_page.h"

#include "app/edits/plain_label.h"
#include "app/pages/supplies/count_panel.h"
#include "app/pages/supplies/ledger_panel.h"
#include "app/pages/supplies/orders_panel.h"
#include "app/pages/supplies/price_panel.h"
#include "app/pages/supplies/stock_panel.h"
#include "core/documents/supply_words.h"

#include <QHideEvent>
#include <QProgressBar>
#include <QPushButton>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int patience = 200;  // ms: anything longer shows progress
constexpr int fullProgress = 100;

}  // namespace

SuppliesPage::SuppliesPage(Session& session, QWidget* parent) : Page(session, parent) {
    m_headline = tr("Working out how long stock lasts…");
    connect(&m_asker, &SupplyAsker::answered, this, &SuppliesPage::take);
    connect(&m_asker, &SupplyAsker::failed, this, &SuppliesPage::takeFailure);
}

void SuppliesPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    buildBusy(column);
    m_tabs = new QTabWidget(this);
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(m_stock = new StockPanel(session(), m_tabs), tr("Stock"));
    m_tabs->addTab(m_orders = new OrdersPanel(session(), m_tabs), tr("Orders"));
    m_tabs->addTab(m_ledger = new LedgerPanel(session(), m_tabs), tr("Ledger"));
    m_tabs->addTab(m_count = new CountPanel(session(), m_tabs), tr("Count"));
    m_tabs->addTab(m_prices = new PricePanel(session(), m_tabs), tr("Price lists"));
    column->addWidget(m_tabs, 1);
    setFocusProxy(m_tabs);
    connect(m_stock, &StockPanel::chosen, m_ledger, &LedgerPanel::select);
}

void SuppliesPage::buildBusy(QVBoxLayout* column) {
    m_busy = new QWidget(this);
    auto* row = new QHBoxLayout(m_busy);
    row->setContentsMargins(0, 0, 0, 0);
    m_progress = new QProgressBar(m_busy);
    m_progress->setRange(0, fullProgress);
    m_progress->setAccessibleName(tr("Working out how long stock lasts"));
    auto* cancel = new QPushButton(tr("Cancel"), m_busy);
    cancel->setObjectName("cancelOutlook");
    row->addWidget(m_progress, 1);
    row->addWidget(cancel);
    column->addWidget(m_busy);
    m_busy->hide();
    m_stopped = new QWidget(this);
    auto* other = new QHBoxLayout(m_stopped);
    other->setContentsMargins(0, 0, 0, 0);
    other->addWidget(m_why = proseLabel({}, m_stopped), 1, Qt::AlignVCenter);
    auto* again = new QPushButton(tr("Work it &out"), m_stopped);
    again->setObjectName("askOutlook");
    other->addWidget(again);
    column->addWidget(m_stopped);
    m_stopped->hide();
    m_slow = new QTimer(this);
    m_slow->setSingleShot(true);
    m_slow->setInterval(patience);
    connect(m_slow, &QTimer::timeout, this, &SuppliesPage::showBusy);
    connect(cancel, &QPushButton::clicked, this, &SuppliesPage::stop);
    connect(again, &QPushButton::clicked, this, &SuppliesPage::ask);
    connect(&m_asker, &SupplyAsker::progressed, m_progress,
            [this](double done) { m_progress->setValue(int(done * fullProgress)); });
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
    m_note.clear();
    m_current = false;
    if (session().season().supplies.empty()) {
        m_asker.leave();
        m_answer = std::make_shared<SupplyAnswer>();
        m_current = true;
    } else {
        m_progress->setValue(0);
        m_asker.ask(session());
        m_slow->start();
    }
    showBusy();
    showAll();
}

void SuppliesPage::stop() {
    m_asker.leave();
    m_note = m_answer ? tr("Stopped. What is shown is older than the last change.")
                      : tr("Stopped. How long stock lasts is not known.");
    showBusy();
    say();
}

/// A hidden page works nothing out; it asks again when it is shown.
void SuppliesPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    if (event->spontaneous() || !m_asker.isBusy()) return;
    m_asker.leave();
    refreshSoon();
}

void SuppliesPage::take(const std::shared_ptr<const SupplyAnswer>& answer) {
    m_answer = answer;
    m_current = true;
    showBusy();
    showAll();
}

void SuppliesPage::takeFailure(const Error& why) {
    m_note = tr("How long stock lasts could not be worked out: %1").arg(text(why, session().speech()));
    showBusy();
    say();
}

void SuppliesPage::showBusy() {
    if (!m_asker.isBusy()) m_slow->stop();
    m_busy->setVisible(m_asker.isBusy() && !m_slow->isActive());
    m_stopped->setVisible(!m_note.isEmpty());
    m_why->setText(m_note);
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
