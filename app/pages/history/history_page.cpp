#include "app/pages/history/history_page.h"

#include "app/edits/busy_bar.h"
#include "app/edits/plain_label.h"
#include "app/pages/history/history_filters.h"
#include "app/pages/history/history_model.h"
#include "app/pages/history/history_panel.h"
#include "core/documents/history_totals.h"

#include <QHeaderView>
#include <QHideEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>

namespace laneward {

HistoryPage::HistoryPage(Session& session, QWidget* parent) : Page(session, parent) {
    m_headline = tr("Reading what was done…");
    connect(&m_reader, &HistoryReader::answered, this, &HistoryPage::take);
    connect(&m_reader, &HistoryReader::failed, this, &HistoryPage::takeFailure);
}

void HistoryPage::refresh() {
    wake();
    m_filters->refresh();
    read();
}

void HistoryPage::read() {
    m_from = m_reading ? std::min(m_reading->from, m_filters->from()) : m_filters->from();
    m_reader.read(session(), m_from);
    m_busy->begin();
    say();
}

/// What was read before stays; earlier days are not listed then, and what was recorded meanwhile is not either.
void HistoryPage::stop() {
    m_reader.leave();
    if (!m_reading)
        m_busy->stop(tr("Stopped: what was done is not known."));
    else if (m_filters->from() < m_reading->from)
        m_busy->stop(tr("Stopped: nothing before %1 is listed.").arg(dayText(m_reading->from, session().speech())));
    else
        m_busy->stop(tr("Stopped: the list may be older than the last record."));
    find();
}

/// A hidden page reads nothing; it asks again when it is shown.
void HistoryPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    if (event->spontaneous() || !m_reader.isBusy()) return;
    m_reader.leave();
    m_busy->end();
    refreshSoon();
}

void HistoryPage::take(const std::shared_ptr<const HistoryReading>& reading) {
    const bool isFirst = m_reading == nullptr;
    m_reading = reading;
    m_busy->end();
    find();
    if (isFirst) fitList();
    if (m_filters->from() < reading->from) read();
}

void HistoryPage::takeFailure(const Error& why) {
    m_busy->stop(tr("What was done could not be read: %1").arg(text(why, session().speech())));
    say();
}

/// Whoever stopped reading goes on by the button, or by choosing other days.
void HistoryPage::follow() {
    const bool isMissing = !m_reading || m_filters->from() < m_reading->from;
    if (isMissing && m_filters->from() != m_from) read();
    find();
}

void HistoryPage::find() {
    if (!m_reading) return say();
    const OperationId kept = m_panel->isOpen()                           ? m_panel->current()
                             : m_model->at(m_list->currentIndex().row()) ? m_model->at(m_list->currentIndex().row())->id
                                                                         : OperationId{};
    m_showing = true;
    m_model->show(m_reading, m_reading->index.find(m_filters->query()), HistoryCells(currency(), session().speech()));
    const int row = kept.isEmpty() ? -1 : m_model->rowOf(kept);
    if (m_model->rowCount() > 0) m_list->setCurrentIndex(m_model->index(std::max(0, row), 0));
    m_showing = false;
    if (m_panel->isOpen()) showChosen();
    say();
    showEmpty();
}

void HistoryPage::say() {
    const QString before = m_headline;
    if (!m_reading) {
        m_headline = m_reader.isBusy() ? tr("Reading what was done…") : tr("What was done is not known.");
    } else {
        const HistoryTotals totals = totalsOf(m_reading->index, m_model->rows());
        const HistoryQuery query = m_filters->query();
        m_headline = historyHeadline(totals, m_filters->days(), session().speech());
        m_totals->setText(totalsText(totals, session().season(), session().speech()));
        const std::optional<ItemFigures> figures = itemFigures(m_reading->index, query, session().season());
        m_figures->setText(figures ? figuresText(*figures, session().season(), session().speech()) : QString());
        m_figures->setVisible(figures.has_value());
        m_totals->setVisible(!m_totals->text().isEmpty());
    }
    if (m_headline != before) Q_EMIT headlineChanged();
}

void HistoryPage::showEmpty() {
    const bool isEmpty = m_reading && m_model->rowCount() == 0;
    const bool narrowed = m_filters->isNarrowed();
    m_empty->setVisible(isEmpty);
    m_clear->setVisible(isEmpty && narrowed);
    m_splitter->setVisible(!isEmpty);
    if (!isEmpty) return;
    m_empty->setText(narrowed
                         ? tr("Nothing that was recorded on these days fits. Take words or choices away, or go further back.")
                         : tr("Nothing is recorded on these days. Runs, fills and incidents are recorded on the page Today, "
                              "services on the page Service, counts and deliveries on the page Supplies."));
}

QByteArray HistoryPage::currency() const { return session().season().centre.facts.settings.currency; }

void HistoryPage::openDetails() {
    if (!m_model->at(m_list->currentIndex().row())) return;
    m_panel->setVisible(true);
    showChosen();
}

void HistoryPage::closeDetails() {
    m_panel->hide();
    m_list->setFocus();
}

void HistoryPage::showChosen() {
    const int row = m_list->currentIndex().row();
    if (!m_model->at(row)) return m_panel->hide();
    m_panel->show(m_reading, m_model->rows()[size_t(row)]);
}

/// Another record may not be listed: then nothing narrows the list any more, and its days reach as far as that one.
void HistoryPage::goTo(const OperationId& id) {
    if (m_model->rowOf(id) < 0) m_filters->listEverything();
    if (m_model->rowOf(id) < 0 && m_reading) {
        const auto& entries = m_reading->index.entries();
        const auto found = std::find_if(entries.begin(), entries.end(), [&](const HistoryEntry& e) { return e.id == id; });
        if (found != entries.end()) m_filters->reach(dateOf(session().season().centre, found->at));
    }
    const int row = m_model->rowOf(id);
    if (row < 0) return;
    m_list->setCurrentIndex(m_model->index(row, 0));
    m_list->scrollTo(m_list->currentIndex());
    showChosen();
}

void HistoryPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_panel && m_panel->isOpen())
        closeDetails();
    else if (event->key() != Qt::Key_Escape || !m_busy || !m_busy->cancel())
        Page::keyPressEvent(event);
}

}  // namespace laneward
