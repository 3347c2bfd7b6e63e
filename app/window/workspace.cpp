#include "app/window/workspace.h"

#include "app/edits/backup_keeper.h"
#include "app/edits/forecast_keeper.h"
#include "app/edits/plain_label.h"
#include "app/models/list_tools.h"
#include "app/pages/calendar/calendar_page.h"
#include "app/pages/centre/centre_view.h"
#include "app/pages/guide/guide_view.h"
#include "app/pages/history/history_page.h"
#include "app/pages/lanes/lanes_page.h"
#include "app/pages/patterns/patterns_page.h"
#include "app/pages/service/service_page.h"
#include "app/pages/supplies/supplies_page.h"
#include "app/pages/today/sheet_view.h"
#include "app/pages/today/today_page.h"
#include "app/window/centre_making.h"
#include "app/window/message_bar.h"
#include "app/window/rail.h"
#include "app/window/search.h"

#include <QHBoxLayout>
#include <QStackedWidget>
#include <QTimer>

namespace laneward {

namespace {

constexpr int lookForOthersEvery = 2'500;  // ms; changeCounter() is one indexed read

}  // namespace

Workspace::Workspace(std::unique_ptr<Session> session, QWidget* parent) : QWidget(parent), m_session(std::move(session)) {
    buildFrame();
    buildPages();
    connectSession();
    startTimers();
    showPage(0);
}

Workspace::~Workspace() {
    // These use the session to their end.
    delete m_backups;
    delete m_keeper;
    delete m_stack;
    delete m_search;
}

void Workspace::buildFrame() {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(m_rail = new Rail(this));
    auto* column = new QVBoxLayout;
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(10);
    column->addWidget(buildHead());
    column->addWidget(m_message = new MessageBar(this));
    column->addWidget(m_stack = new QStackedWidget(this), 1);
    row->addLayout(column, 1);
    connect(m_rail, &Rail::pageWanted, this, &Workspace::showPage);
}

QWidget* Workspace::buildHead() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    m_headline = headingLabel({}, head);
    m_headline->setObjectName("headline");
    m_headline->setWordWrap(true);
    m_headline->setTextInteractionFlags(Qt::TextSelectableByMouse);
    QFont font = m_headline->font();
    font.setPointSizeF(font.pointSizeF() * 1.25);
    m_headline->setFont(font);
    row->addWidget(m_headline, 1);
    m_search = new Search(*m_session, head);
    m_search->setFixedWidth(210);
    row->addWidget(m_search, 0, Qt::AlignTop);
    m_clock = plainLabel({}, head);
    m_clock->setFont(font);
    m_clock->setAccessibleName(tr("Time now"));
    row->addWidget(m_clock, 0, Qt::AlignTop);
    connect(m_search, &Search::chosen, this, &Workspace::go);
    return head;
}

void Workspace::buildPages() {
    addPage(new TodayPage(*m_session, this));
    addPage(new CalendarPage(*m_session, this));
    addPage(new LanesPage(*m_session, this));
    addPage(new SuppliesPage(*m_session, this));
    addPage(new ServicePage(*m_session, this));
    addPage(new PatternsPage(*m_session, this));
    addPage(new HistoryPage(*m_session, this));
    m_stack->addWidget(m_sheet = new SheetView(*m_session, this));
    connect(m_sheet, &SheetView::closed, this, [this] { showPage(m_current); });
}

void Workspace::addPage(Page* page) {
    m_rail->addPage(page->title(), page->iconName());
    m_stack->addWidget(page);
    m_pages.push_back(page);
    connect(page, &Page::headlineChanged, this, [this, page] {
        if (page == currentPage()) showHeadline();
    });
    connect(page, &Page::sheetWanted, this, &Workspace::showSheet);
    connect(page, &Page::guideWanted, this, &Workspace::showGuide);
    connect(page, &Page::recordWanted, this, [this](const JobId& job) { goTo("today", [&](Page* p) { p->showJob(job); }); });
    connect(page, &Page::eventWanted, this, [this](const SeriesId& series, const LocalTime& original) {
        goTo("calendar", [&](Page* p) { p->showOccurrence(series, original); });
    });
}

void Workspace::connectSession() {
    connect(m_session.get(), &Session::problem, this, &Workspace::showMessage);
    connect(m_session.get(), &Session::said, this, [this](const QString& line) {
        m_message->hide();
        Q_EMIT said(line);
    });
}

void Workspace::startTimers() {
    m_keeper = new ForecastKeeper(*m_session);
    const std::optional<QString> folder = backupFolderOf(m_session->store().location());
    if (folder && !m_session->isReadOnly()) m_backups = new BackupKeeper(*m_session, *folder);
    auto* others = new QTimer(this);
    connect(others, &QTimer::timeout, m_session.get(), &Session::lookForOthers);
    others->start(lookForOthersEvery);
    auto* clock = new QTimer(this);
    connect(clock, &QTimer::timeout, this, &Workspace::showClock);
    clock->start(1'000);
    showClock();
}

void Workspace::showClock() {
    const Speech speech = m_session->speech();
    const QString now = clockTime(m_session->now(), speech);
    if (m_clock->text() == now) return;
    m_clock->setText(now);
    m_session->tick();
    showHeadline();
}

Page* Workspace::currentPage() const { return m_pages.empty() ? nullptr : m_pages[size_t(m_current)]; }

void Workspace::showHeadline() {
    const Page* page = currentPage();
    if (!page) return;
    m_headline->setText(page->headline());
    m_headline->setToolTip(plainTip(page->question()));
}

void Workspace::showPage(int page) {
    if (page < 0 || size_t(page) >= m_pages.size()) return;
    closePanel();
    m_current = page;
    m_pages[size_t(page)]->wake();
    m_rail->setCurrent(page);
    m_stack->setCurrentWidget(m_pages[size_t(page)]);
    m_pages[size_t(page)]->setFocus();
    showHeadline();
    Q_EMIT pageChanged(page);
}

template <class Show>
void Workspace::goTo(const char* name, Show show) {
    for (size_t i = 0; i < m_pages.size(); ++i) {
        if (m_pages[i]->iconName() != QLatin1StringView(name)) continue;
        showPage(int(i));
        show(m_pages[i]);
    }
}

void Workspace::showSheet(QDate day) {
    closePanel();
    m_stack->setCurrentWidget(m_sheet);
    m_sheet->show(day);
}

void Workspace::showGuide() {
    if (qobject_cast<GuideView*>(m_panel)) return;  // open already
    goTo("today", [](Page*) {});
    auto* guide = new GuideView(*m_session, this);
    connect(guide, &GuideView::closed, this, [this] { showPage(m_current); });
    // The headline above the guide goes with what is recorded in it.
    connect(m_session.get(), &Session::changed, guide, [this] {
        currentPage()->refresh();
        showHeadline();
    });
    showPanel(guide);
}

void Workspace::showCentre() {
    if (qobject_cast<CentreView*>(m_panel)) return;  // open already
    auto* centre = new CentreView(*m_session, this);
    connect(centre, &CentreView::closed, this, [this] { showPage(m_current); });
    showPanel(centre);
    centre->showTab(CentreView::House);
}

void Workspace::showPanel(QWidget* panel) {
    closePanel();
    m_panel = panel;
    m_stack->addWidget(panel);
    m_stack->setCurrentWidget(panel);
}

void Workspace::closePanel() {
    if (!m_panel) return;
    m_stack->removeWidget(m_panel);
    m_panel->deleteLater();
    m_panel = nullptr;
    m_stack->setCurrentWidget(m_pages[size_t(m_current)]);
}

void Workspace::showMessage(const QString& line) { m_message->show(line); }

void Workspace::focusSearch() {
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
}

void Workspace::go(const Found& found) {
    if (found.lane) {
        goTo("lanes", [&](Page* page) { page->showLane(*found.lane); });
        return;
    }
    goTo("calendar", [&](Page* page) {
        page->showDay(found.day);
        page->showOccurrence(found.series, found.original);
    });
}

}  // namespace laneward
