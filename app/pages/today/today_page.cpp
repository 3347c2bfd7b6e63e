#include "app/pages/today/today_page.h"

#include "app/edits/run_form.h"
#include "app/models/list_tools.h"
#include "app/pages/today/follow_up_list.h"
#include "app/pages/today/incident_form.h"
#include "app/pages/today/job_details.h"
#include "app/pages/today/job_mark_delegate.h"
#include "app/pages/today/notes_panel.h"
#include "app/pages/today/shortfall_list.h"
#include "app/pages/today/slip_panel.h"

#include <QAction>
#include <QCheckBox>
#include <QFileDialog>
#include <QHeaderView>
#include <QPushButton>
#include <QSaveFile>
#include <QScrollArea>
#include <QSortFilterProxyModel>
#include <QStackedWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int rowHeight = 44;  // two lines of text, and a target for greasy hands
constexpr int sideWidth = 370;
constexpr int tellAfter = 40;  // ms: a frame or two, and less than a step through the list

}  // namespace

TodayPage::TodayPage(Session& session, QWidget* parent) : Page(session, parent) {
    followPlans();
    buildActions();
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    auto* column = new QVBoxLayout;
    row->addLayout(column, 5);
    buildTopRow(column);
    buildTable(column);
    buildJobRow(column);
    buildPanels(column);
    row->addWidget(buildSide(), 3);
    connectPanels();
    startAt(m_table);
}

QString TodayPage::title() const { return tr("Today"); }

QString TodayPage::question() const { return tr("What do I do now, and can the machine finish it?"); }

QAction* TodayPage::addTool(const QString& name, const QKeySequence& keys, void (TodayPage::*slot)()) {
    auto* action = new QAction(name, this);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, slot);
    addAction(action);
    return action;
}

void TodayPage::buildActions() {
    m_asPlanned = addTool(tr("&Record as planned"), QKeySequence(Qt::CTRL | Qt::Key_Return), &TodayPage::recordAsPlanned);
    m_changed =
        addTool(tr("Record with &changes…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Return), &TodayPage::recordWithChanges);
    m_begin = addTool(tr("&Begin the job"), QKeySequence(Qt::CTRL | Qt::Key_B), &TodayPage::beginJob);
    m_unplanned = addTool(tr("&Unplanned run…"), QKeySequence(Qt::CTRL | Qt::Key_U), &TodayPage::recordUnplanned);
    m_incidentAction = addTool(tr("&Incident…"), QKeySequence(Qt::CTRL | Qt::Key_I), &TodayPage::recordIncident);
    m_guide = addTool(tr("&Guide me"), QKeySequence(Qt::CTRL | Qt::Key_G), &TodayPage::guide);
    m_print = new QAction(tr("&Print the sheet…"), this);
    connect(m_print, &QAction::triggered, this, [this] { Q_EMIT sheetWanted(session().today()); });
}

QPushButton* TodayPage::buttonFor(QAction* action, const QString& name) {
    auto* button = new QPushButton(action->text(), this);
    button->setObjectName(name);
    button->setEnabled(action->isEnabled());
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    connect(action, &QAction::changed, button, [button, action] {
        button->setEnabled(action->isEnabled());
        button->setText(action->text());
    });
    if (!action->shortcut().isEmpty()) button->setToolTip(plainTip(action->shortcut().toString(QKeySequence::NativeText)));
    return button;
}

void TodayPage::buildTopRow(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    m_onlyOpen = new QCheckBox(tr("&Only what is left"), this);
    row->addWidget(m_onlyOpen);
    row->addStretch();
    row->addWidget(buttonFor(m_unplanned, "unplanned"));
    row->addWidget(buttonFor(m_incidentAction, "incident"));
    row->addWidget(buttonFor(m_print, "print"));
    row->addWidget(buttonFor(m_guide, "guide"));
    column->addLayout(row);
}

void TodayPage::buildTable(QVBoxLayout* column) {
    m_model = new JobModel(this);
    m_proxy = new QSortFilterProxyModel(this);
    m_proxy->setSourceModel(m_model);
    m_proxy->setSortRole(JobModel::SortRole);
    m_proxy->setFilterRole(JobModel::OpenRole);
    m_table = new QTableView(this);
    m_table->setObjectName("jobs");
    m_table->setAccessibleName(tr("The day's jobs in order of work"));
    m_table->setModel(m_proxy);
    m_marks = new JobMarkDelegate([this](const QModelIndex& index) { return rowAt(index); }, this);
    m_table->setItemDelegateForColumn(JobModel::Mark, m_marks);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setShowGrid(false);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setSectionResizeMode(JobModel::What, QHeaderView::Stretch);
    m_table->verticalHeader()->setDefaultSectionSize(rowHeight);
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(JobModel::StartBy, Qt::AscendingOrder);
    column->addWidget(m_table, 3);
    auto* tools = new ListTools(m_table, "today/jobs");
    connect(tools, &ListTools::csvWanted, this, &TodayPage::saveCsv);
    connect(m_onlyOpen, &QCheckBox::toggled, this,
            [this](bool only) { m_proxy->setFilterFixedString(only ? QString("true") : QString()); });
    m_tellSoon = new QTimer(this);
    m_tellSoon->setSingleShot(true);
    m_tellSoon->setInterval(tellAfter);
    connect(m_tellSoon, &QTimer::timeout, this, &TodayPage::tellAboutSelected);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &TodayPage::showSelected);
}

void TodayPage::saveCsv(const QByteArray& csv) {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the list"), tr("jobs.csv"), tr("CSV (*.csv)"));
    if (path.isEmpty()) return;
    QSaveFile file(path);
    const bool saved = file.open(QIODevice::WriteOnly) && file.write(csv) == csv.size() && file.commit();
    if (saved)
        Q_EMIT session().said(tr("The list is in %1").arg(path));
    else
        Q_EMIT session().problem(tr("%1 could not be written; nothing was changed.").arg(path));
}

void TodayPage::buildJobRow(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->addWidget(buttonFor(m_asPlanned, "asPlanned"));
    row->addWidget(buttonFor(m_changed, "changed"));
    row->addWidget(buttonFor(m_begin, "begin"));
    row->addStretch();
    column->addLayout(row);
}

void TodayPage::buildPanels(QVBoxLayout* column) {
    m_panels = new QStackedWidget(this);
    m_panels->addWidget(m_details = new JobDetails(this));
    for (QScrollArea** room : {&m_runRoom, &m_incidentRoom}) {
        *room = new QScrollArea(this);
        (*room)->setWidgetResizable(true);
        (*room)->setFrameShape(QFrame::NoFrame);
        (*room)->setFocusPolicy(Qt::NoFocus);
        m_panels->addWidget(*room);
    }
    column->addWidget(m_panels, 3);
    column->addWidget(m_slip = new SlipPanel(session(), this));
}

/// Made when it is first wanted: the page comes up sooner.
RunForm& TodayPage::runForm() {
    if (!m_run) {
        m_run = new RunForm(session(), this);
        m_run->refresh();
        m_runRoom->setWidget(m_run);
        connect(m_run, &RunForm::finished, this, &TodayPage::finishRun);
        connect(m_run, &RunForm::cancelled, this, &TodayPage::showDetails);
    }
    return *m_run;
}

IncidentForm& TodayPage::incidentForm() {
    if (!m_incident) {
        m_incident = new IncidentForm(session(), this);
        m_incidentRoom->setWidget(m_incident);
        connect(m_incident, &IncidentForm::finished, this, &TodayPage::finishIncident);
        connect(m_incident, &IncidentForm::cancelled, this, &TodayPage::showDetails);
    }
    return *m_incident;
}

QWidget* TodayPage::buildSide() {
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumWidth(300);
    scroll->setMaximumWidth(sideWidth);
    scroll->setAccessibleName(tr("Readiness and notes"));
    auto* body = new QWidget(scroll);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(4, 0, 4, 0);
    column->addWidget(m_shortfalls = new ShortfallList(body));
    column->addWidget(m_followUps = new FollowUpList(body));
    m_cardColumn = new QVBoxLayout;
    column->addLayout(m_cardColumn);
    column->addWidget(m_notes = new NotesPanel(session(), body));
    column->addStretch();
    scroll->setWidget(body);
    return scroll;
}

void TodayPage::connectPanels() {
    connect(m_shortfalls, &ShortfallList::eventWanted, this, &Page::eventWanted);
    connect(m_followUps, &FollowUpList::answerWanted, this, &TodayPage::followUp);
}

}  // namespace laneward
