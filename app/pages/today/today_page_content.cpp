#include "app/edits/run_deeds.h"
#include "app/edits/run_form.h"
#include "app/pages/today/follow_up_list.h"
#include "app/pages/today/incident_form.h"
#include "app/pages/today/job_details.h"
#include "app/pages/today/job_mark_delegate.h"
#include "app/pages/today/notes_panel.h"
#include "app/pages/today/readiness_card.h"
#include "app/pages/today/shortfall_list.h"
#include "app/pages/today/slip_panel.h"
#include "app/pages/today/today_headline.h"
#include "app/pages/today/today_page.h"

#include <QAction>
#include <QHeaderView>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QStyle>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

QString TodayPage::headline() const { return todayHeadline({m_sheet, session().speech(), session().now(), int(m_open.size())}); }

const JobRow* TodayPage::rowAt(const QModelIndex& proxyIndex) const {
    return m_model->row(m_proxy->mapToSource(proxyIndex).row());
}

std::optional<Job> TodayPage::selectedJob() const {
    const JobRow* row = rowAt(m_table->currentIndex());
    return row ? std::optional(row->job) : std::nullopt;
}

void TodayPage::refresh() {
    const std::optional<Job> before = selectedJob();
    const QDate today = session().today();
    m_sheet = jobSheet(session().season(), session().planAtOnce(today), today, session().now());
    const std::vector<JobRow> rows = jobRows(m_sheet, session().season());
    m_model->show(rows, session().speech(), session().now());
    m_open = openFollowUps(session());
    m_marks->setNow(session().now());
    fitColumns();
    // Ids of proposed jobs change with the plan; then the next open job is the one that matters.
    int row = before ? m_model->rowOf(before->id) : -1;
    if (row < 0 || (isAhead(*before) && !isAhead(rows[size_t(row)].job))) {
        const auto next = std::find_if(rows.begin(), rows.end(), [](const JobRow& r) { return isAhead(r.job); });
        if (next != rows.end()) row = int(next - rows.begin());
    }
    const QModelIndex selected = m_table->currentIndex();
    selectRow(row);
    if (m_table->currentIndex() == selected) showSelected();  // otherwise the table's selection has shown it
    if (m_run) m_run->refresh();
    m_slip->refresh();
    refreshSide();
}

/// As wide as their contents, so that what is to be done gets the rest: the header alone would keep room for an arrow in each.
void TodayPage::fitColumns() {
    const QHeaderView* header = m_table->horizontalHeader();
    const QAbstractItemView* cells = m_table;
    QFont bold = header->font();
    bold.setBold(true);  // as the style draws the header of the selected cell
    const QFontMetrics letters(bold);
    const int arrow = style()->pixelMetric(QStyle::PM_HeaderMarkSize, nullptr, header);
    for (int column = 0; column < m_proxy->columnCount(); ++column) {
        if (column == JobModel::What) continue;
        const QString name = m_proxy->headerData(column, Qt::Horizontal).toString();
        const int sorted = column == header->sortIndicatorSection() ? 2 * arrow : 0;
        const int wanted = letters.horizontalAdvance(name) + 16 + sorted;
        m_table->setColumnWidth(column, std::max(wanted, cells->sizeHintForColumn(column)));
    }
}

void TodayPage::selectRow(int sourceRow) {
    const QModelIndex index = m_proxy->mapFromSource(m_model->index(sourceRow, JobModel::StartBy));
    if (index.isValid()) m_table->setCurrentIndex(index);
}

void TodayPage::showJob(const JobId& job) {
    const int row = m_model->rowOf(job);
    if (row < 0) return;
    selectRow(row);
    m_table->setFocus();
}

/// What can be done with the selected job shows at once; what there is to tell about it, which is worked out, after the page was
/// painted, and once for a row of steps through the list.
void TodayPage::showSelected() {
    m_tellSoon->start();
    const std::optional<Job> job = selectedJob();
    const bool writable = !session().isReadOnly();
    m_asPlanned->setEnabled(writable && job && isAhead(*job));
    m_changed->setEnabled(writable && job);
    m_changed->setText(job && !isAhead(*job) ? tr("&Correct…") : tr("Record with &changes…"));
    m_begin->setEnabled(writable && job && isAhead(*job) && job->state != JobState::UnderWay);
    m_unplanned->setEnabled(writable && !session().season().centre.machines.empty());
    m_incidentAction->setEnabled(writable);
}

void TodayPage::tellAboutSelected() {
    const std::optional<Job> job = selectedJob();
    std::optional<size_t> inSheet;
    for (size_t i = 0; job && i < m_sheet.jobs.size(); ++i) {
        if (m_sheet.jobs[i].id == job->id) inSheet = i;
    }
    std::vector<JobMove> moves;
    if (inSheet) moves = movesOf(session().planningState(), session().planAtOnce(session().today()), m_sheet.jobs[*inSheet]);
    m_details->show(m_sheet, inSheet, moves, session().speech());
}

/// Cards stay while their machine stays as it is, so that a reading which is being typed is not lost.
void TodayPage::fitCards() {
    const std::vector<Machine>& machines = session().season().centre.machines;
    const bool same = std::equal(machines.begin(), machines.end(), m_cards.begin(), m_cards.end(),
                                 [](const Machine& machine, const ReadinessCard* card) { return card->values() == machine; });
    if (same) return;
    for (ReadinessCard* card : m_cards)
        card->deleteLater();
    m_cards.clear();
    for (const Machine& machine : machines) {
        m_cards.push_back(new ReadinessCard(session(), machine, this));
        m_cardColumn->addWidget(m_cards.back());
    }
}

void TodayPage::refreshSide() {
    m_shortfalls->show(m_sheet.shortfalls, session().speech());
    m_followUps->show(m_open, !session().isReadOnly(), session().speech());
    fitCards();
    for (ReadinessCard* card : m_cards) {
        for (const SheetReadiness& entry : m_sheet.readiness) {
            if (entry.machine == card->machine()) card->refresh(entry);
        }
    }
    // Machines that have work tonight stand first.
    for (bool works : {true, false}) {
        for (ReadinessCard* card : m_cards) {
            if (card->worksTonight() != works) continue;
            m_cardColumn->removeWidget(card);
            m_cardColumn->addWidget(card);
        }
    }
    m_notes->refresh(m_sheet);
}

void TodayPage::showDetails() {
    m_correcting.reset();
    m_panels->setCurrentIndex(DetailsPanel);
    m_table->setFocus();
}

void TodayPage::recordAsPlanned() {
    const std::optional<Job> selected = selectedJob();
    if (!selected || !isAhead(*selected)) return;
    if (session().perform(doneAsPlanned(session(), *selected))) showDetails();
}

void TodayPage::beginJob() {
    const std::optional<Job> selected = selectedJob();
    if (selected && isAhead(*selected)) session().perform(begun(session(), *selected));
}

void TodayPage::guide() { Q_EMIT guideWanted(); }

void TodayPage::recordWithChanges() {
    const std::optional<Job> selected = selectedJob();
    if (!selected) return;
    m_selectedPlanned = rowAt(m_table->currentIndex())->planned;
    m_correcting = runOf(session().season(), *selected);
    m_panels->setCurrentIndex(RunPanel);
    runForm().begin(selected);
}

void TodayPage::recordUnplanned() {
    m_correcting.reset();
    m_panels->setCurrentIndex(RunPanel);
    runForm().begin(std::nullopt);
}

void TodayPage::recordIncident() {
    m_panels->setCurrentIndex(IncidentPanel);
    incidentForm().begin();
}

void TodayPage::finishRun(const RunAccount& account, const std::optional<Incident>& incident) {
    RunAccount told = account;
    if (!m_selectedPlanned) told.job.reset();
    if (session().perform(doneOtherwise(session(), told, incident, m_correcting))) showDetails();
}

void TodayPage::followUp(const FollowUp& open) {
    m_panels->setCurrentIndex(IncidentPanel);
    incidentForm().answer(open);
}

void TodayPage::finishIncident(const Incident& incident, const std::optional<Outage>& outage) {
    Deed deed;
    deed.name = incident.answers ? tr("Followed up: %1").arg(text(incident.kind)) : tr("Incident: %1").arg(text(incident.kind));
    if (outage) {
        std::optional<Outage> before;
        for (const Outage& known : session().season().centre.outages) {
            if (known.id == outage->id) before = known;
        }
        deed.changes.push_back(RowChange<Outage>{before, *outage});
    }
    deed.records.push_back(incident);
    if (session().perform(std::move(deed))) showDetails();
}

}  // namespace laneward
