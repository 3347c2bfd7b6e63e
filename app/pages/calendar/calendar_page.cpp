#include "app/pages/calendar/calendar_page.h"

#include "app/edits/ask_bar.h"
#include "app/edits/event_mover.h"
#include "app/pages/calendar/copy_season_panel.h"
#include "app/pages/calendar/event_editor.h"
#include "app/pages/calendar/month_view.h"
#include "app/pages/calendar/staff_panel.h"
#include "app/pages/calendar/week_view.h"
#include "app/widgets/date_bar.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

CalendarPage::CalendarPage(Session& session, QWidget* parent) : Page(session, parent) { followPlans(); }

bool CalendarPage::isHolding() const { return m_bar && (view()->isHolding() || m_ask->isVisible()); }

void CalendarPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    buildBar();
    column->addWidget(m_bar);
    m_ask = new AskBar(this);
    column->addWidget(m_ask);
    m_split = new QSplitter(Qt::Horizontal, this);
    m_split->setChildrenCollapsible(false);
    buildViews();
    buildSide();
    buildMover();
    m_split->setStretchFactor(0, 1);
    m_split->setStretchFactor(1, 0);
    column->addWidget(m_split, 1);
    m_status = new QLabel(this);
    m_status->setTextFormat(Qt::PlainText);
    m_status->setWordWrap(true);
    column->addWidget(m_status);
    showStatus({});
    connect(m_ask, &AskBar::left, this, [this] {
        view()->clearGhost();
        view()->setFocus();
        letGo();
    });
}

void CalendarPage::buildBar() {
    m_bar = new DateBar({tr("&Month"), tr("&Week"), tr("&Day")}, this);
    m_bar->setLevel(int(Level::Week));
    m_new = new QPushButton(tr("&New event (N)"), m_bar);
    m_copy = new QPushButton(tr("&Copy last season…"), m_bar);
    m_hours = new QPushButton(tr("Staff &hours"), m_bar);
    m_hours->setObjectName("staffHours");
    for (QPushButton* button : {m_new, m_copy, m_hours}) {
        button->setMinimumHeight(28);
        m_bar->addWidget(button);
    }
    connect(m_bar, &DateBar::dayChosen, this, &CalendarPage::showDay);
    connect(m_bar, &DateBar::stepAsked, this, &CalendarPage::step);
    connect(m_bar, &DateBar::levelChosen, this, [this](int level) { setLevel(Level(level)); });
    connect(m_new, &QPushButton::clicked, this, [this] { createAt(view()->proposedStart()); });
    connect(m_copy, &QPushButton::clicked, this, [this] { copySeason({}); });
    connect(m_hours, &QPushButton::clicked, this, &CalendarPage::showStaffHours);
}

void CalendarPage::buildViews() {
    m_views = new QStackedWidget(m_split);
    m_month = new MonthView(m_views);
    m_week = new WeekView(m_views);
    m_views->addWidget(m_month);
    m_views->addWidget(m_week);
    m_views->setCurrentWidget(m_week);
    connectView(m_month);
    connectView(m_week);
}

void CalendarPage::connectView(DiaryView* diary) {
    connect(diary, &BlockView::activated, this, &CalendarPage::open);
    connect(diary, &BlockView::menuAsked, this, &CalendarPage::openMenu);
    connect(diary, &DiaryView::held, this, [this] { m_mover->runner().prepare(range()); });
    connect(diary, &DiaryView::ghostMoved, this, &CalendarPage::considerMove);
    connect(diary, &DiaryView::letGo, this, &CalendarPage::letGo);
    connect(diary, &DiaryView::moveAsked, this, &CalendarPage::askMove);
    connect(diary, &DiaryView::removeAsked, this, &CalendarPage::askRemove);
    connect(diary, &DiaryView::newAsked, this, &CalendarPage::createAt);
    connect(diary, &DiaryView::ghostChanged, this, [this](const QString& words) {
        if (words.isEmpty()) m_mover->leave();
        showStatus(words);
    });
}

void CalendarPage::buildMover() {
    m_mover = new EventMover(session(), *m_ask, this);
    connect(m_mover, &EventMover::asked, this, [this] { view()->awaitDifference(m_mover->title()); });
    connect(m_mover, &EventMover::settling, this, [this] { view()->clearGhost(); });
    connect(m_mover, &EventMover::settled, this, [this] { view()->setFocus(); });
    connect(&m_mover->runner(), &WhatIfRunner::answered, this, &CalendarPage::showReply);
    connect(&m_mover->runner(), &WhatIfRunner::stockAnswered, this, &CalendarPage::showReply);
}

void CalendarPage::buildSide() {
    m_side = new QStackedWidget(m_split);
    m_side->hide();
}

/// Made when it is first wanted: most sittings only look at the calendar.
EventEditor& CalendarPage::editor() {
    if (!m_editor) {
        m_editor = new EventEditor(session(), m_side);
        m_side->addWidget(m_editor);
        connect(m_editor, &EventEditor::closeAsked, this, &CalendarPage::closeSide);
        connect(m_editor, &EventEditor::saved, this, &CalendarPage::closeSide);
    }
    return *m_editor;
}

CopySeasonPanel& CalendarPage::seasons() {
    if (!m_seasons) {
        m_seasons = new CopySeasonPanel(session(), m_side);
        m_side->addWidget(m_seasons);
        connect(m_seasons, &CopySeasonPanel::closeAsked, this, &CalendarPage::closeSide);
        connect(m_seasons, &CopySeasonPanel::copied, this, [this](QDate first) {
            closeSide();
            showDay(first);
        });
    }
    return *m_seasons;
}

StaffPanel& CalendarPage::staff() {
    if (!m_staff) {
        m_staff = new StaffPanel(session(), m_side);
        m_side->addWidget(m_staff);
        connect(m_staff, &StaffPanel::closeAsked, this, &CalendarPage::closeSide);
    }
    return *m_staff;
}

void CalendarPage::showStaffHours() {
    wake();
    staff();
    showSide(m_staff);
    m_staff->setDays(range());
    m_staff->setFocus();
}

DiaryView* CalendarPage::view() const { return level() == Level::Month ? static_cast<DiaryView*>(m_month) : m_week; }

CalendarPage::Level CalendarPage::level() const { return Level(m_bar->level()); }

void CalendarPage::setLevel(Level level) {
    wake();
    m_bar->setLevel(int(level));
    m_views->setCurrentWidget(view());
    m_scroll = true;
    loadDays();
    view()->setFocus();
}

DateRange CalendarPage::range() const {
    const Qt::DayOfWeek firstDay = m_speech.locale.firstDayOfWeek();
    switch (level()) {
        case Level::Month:
            return MonthView::weeksOf(m_day, firstDay);
        case Level::Week: {
            const QDate first = m_day.addDays(-((m_day.dayOfWeek() - int(firstDay) + 7) % 7));
            return {first, first.addDays(6)};
        }
        case Level::Day:
            break;
    }
    return {m_day, m_day};
}

void CalendarPage::refresh() {
    wake();
    m_speech = session().speech();
    m_bar->setSpeechLocale(m_speech.locale);
    m_bar->setToday(session().today());
    if (!m_day.isValid()) m_day = session().today();
    m_bar->setDay(m_day);
    m_new->setEnabled(!session().isReadOnly());
    m_copy->setEnabled(!session().isReadOnly());
    loadDays();
    if (m_editor) m_editor->sessionChanged();
}

void CalendarPage::loadDays() {
    const DateRange days = range();
    QApplication::setOverrideCursor(Qt::BusyCursor);
    const Plan& plan = session().planAtOnce(days);
    HouseData house = houseData({session().season(), plan, m_speech}, session().now());
    QApplication::restoreOverrideCursor();
    m_month->setMonth(m_day);
    m_ask->hide();
    view()->clearGhost();
    view()->setMovable(!session().isReadOnly());
    view()->setToday(session().today());
    view()->setData(std::move(house), days, session().season().centre.facts.settings.dayBegins, m_speech);
    if (m_scroll) m_week->scrollToBusyPart();
    m_scroll = false;
    if (m_staff && m_staff->isVisible()) m_staff->setDays(days);
    say();
}

void CalendarPage::say() {
    const std::vector<HouseItem>& items = view()->data().items;
    const auto count = [&](HouseItem::Kind kind) {
        return int(std::count_if(items.begin(), items.end(), [kind](const HouseItem& item) { return item.kind == kind; }));
    };
    const int conflicts = int(std::count_if(items.begin(), items.end(), [](const HouseItem& item) { return item.conflict; }));
    QString when = dayText(m_day, m_speech);
    if (level() == Level::Week) {
        when = tr("Week of %1").arg(dayText(range().first, m_speech));
    } else if (level() == Level::Month) {
        when = m_speech.locale.toString(m_day, QStringLiteral("MMMM yyyy"));
    }
    const int events = count(HouseItem::Kind::Event);
    QStringList parts{events > 0 ? tr("%n event(s)", nullptr, events) : tr("nothing is booked; N adds an event")};
    if (events > 0) parts << tr("they ask for %n job(s)", nullptr, count(HouseItem::Kind::Job));
    if (conflicts > 0) parts << tr("%n event(s) in conflict", nullptr, conflicts);
    const int missing = count(HouseItem::Kind::Shortfall);
    if (missing > 0) parts << tr("%n demand(s) that no job can meet", nullptr, missing);
    m_headline = tr("%1: %2").arg(when, parts.join(tr(", ")));
    Q_EMIT headlineChanged();
}

void CalendarPage::showDay(QDate day) {
    wake();
    if (!day.isValid()) return;
    m_day = day;
    m_scroll = true;
    refresh();
}

void CalendarPage::step(int direction) {
    if (level() == Level::Month)
        showDay(m_day.addMonths(direction));
    else
        showDay(m_day.addDays(direction * (level() == Level::Week ? 7 : 1)));
}

void CalendarPage::showOccurrence(const SeriesId& series, const LocalTime& original) {
    wake();
    if (original.date.isValid() && !view()->setCurrentKey(eventKey(series, original))) {
        showDay(original.date);
        view()->setCurrentKey(eventKey(series, original));
    }
    editSeries(series);
}

void CalendarPage::showStatus(const QString& words) {
    m_status->setText(
        words.isEmpty()
            ? tr("Enter edits, N creates, Delete takes away; drag or Alt+arrows move, Alt+Shift+arrows stretch, Space picks up.")
            : words);
}

void CalendarPage::showSide(QWidget* panel) {
    m_side->setCurrentWidget(panel);
    if (!m_side->isHidden()) return;
    m_side->show();
    const int wanted = qMax(panel->minimumWidth(), 350);
    m_split->setSizes({qMax(300, m_split->width() - wanted), wanted});
}

void CalendarPage::closeSide() {
    m_side->hide();
    view()->setFocus();
}

}  // namespace laneward
