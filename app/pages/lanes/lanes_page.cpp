#include "app/pages/lanes/lanes_page.h"

#include "app/edits/ask_bar.h"
#include "app/edits/event_mover.h"
#include "app/pages/lanes/season_panel.h"
#include "app/pages/lanes/why_panel.h"
#include "app/widgets/date_bar.h"

#include <QApplication>
#include <QSplitter>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int playedBefore = 8;  // days of occurrences that tell how much a lane was played since its last treatment
constexpr int secondsBetweenLooks = 20;

}  // namespace

LanesPage::LanesPage(Session& session, QWidget* parent) : Page(session, parent) { followPlans(); }

bool LanesPage::isHolding() const { return m_view && (m_view->isHolding() || m_ask->isVisible()); }

void LanesPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    m_bar = new DateBar({tr("Eve&ning"), tr("&Day"), tr("&Week"), tr("&Month"), tr("Sea&son"), tr("Y&ear")}, this);
    column->addWidget(m_bar);
    m_ask = new AskBar(this);
    column->addWidget(m_ask);
    m_mover = new EventMover(session(), *m_ask, this);
    auto* split = new QSplitter(Qt::Horizontal, this);
    m_view = new HouseView(split);
    m_why = new WhyPanel(split);
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 0);
    split->setSizes({900, 260});
    split->setChildrenCollapsible(false);
    column->addWidget(split, 1);
    m_house = split;
    connectParts();
    connectGhost();
}

void LanesPage::connectParts() {
    connect(m_bar, &DateBar::dayChosen, this, &LanesPage::goTo);
    connect(m_bar, &DateBar::stepAsked, this, &LanesPage::step);
    connect(m_bar, &DateBar::levelChosen, this, &LanesPage::chooseLevel);
    connect(m_view, &HouseView::zoomChanged, this, [this](HouseZoom zoom) { m_bar->setLevel(int(zoom)); });
    connect(m_view, &HouseView::momentChosen, this, &LanesPage::chooseMoment);
    connect(m_view, &BlockView::currentChanged, this, &LanesPage::showWhy);
    connect(m_view, &BlockView::activated, this, &LanesPage::activate);
    connect(m_view, &BlockView::menuAsked, this, &LanesPage::openMenu);
    connect(m_why, &WhyPanel::printAsked, this, [this] { Q_EMIT sheetWanted(m_day); });
    connect(m_why, &WhyPanel::recordAsked, this, [this] { activate(m_view->current()); });
    connect(m_why, &WhyPanel::editAsked, this, [this] {
        if (const Occurrence* chosen = chosenOccurrence()) Q_EMIT eventWanted(chosen->series, chosen->original);
    });
    auto* tick = new QTimer(this);
    connect(tick, &QTimer::timeout, this, [this] {
        if (isVisible()) m_view->setNow(session().now());
    });
    tick->start(secondsBetweenLooks * 1000);
}

DateRange LanesPage::range() const {
    switch (m_view->zoom()) {
        case HouseZoom::Evening:
        case HouseZoom::Day:
            break;
        case HouseZoom::Week: {
            const QDate first = m_day.addDays(-((m_day.dayOfWeek() - int(m_speech.locale.firstDayOfWeek()) + 7) % 7));
            return {first, first.addDays(6)};
        }
        case HouseZoom::Month: {
            const QDate first(m_day.year(), m_day.month(), 1);
            return {first, first.addMonths(1).addDays(-1)};
        }
        case HouseZoom::Season:
            return {m_day.addDays(-7), m_day.addDays(83)};
    }
    return {m_day, m_day};
}

HouseSource LanesPage::source() const {
    const DateRange days = range();
    const Plan& plan = session().planAtOnce(days);
    return {session().season(), plan, m_speech};
}

void LanesPage::refresh() {
    wake();
    m_speech = session().speech();
    m_bar->setSpeechLocale(m_speech.locale);
    m_bar->setToday(session().today());
    if (!m_day.isValid()) m_day = session().today();
    m_bar->setDay(m_day);
    if (isYear()) return m_year->refresh();
    loadDays();
}

void LanesPage::loadDays() {
    QApplication::setOverrideCursor(Qt::BusyCursor);
    HouseData house = houseData(source(), session().now());
    QApplication::restoreOverrideCursor();
    leaveMove();
    m_view->setMovable(!session().isReadOnly());
    m_view->setData(std::move(house), m_speech);
    loadHeads();
    if (!m_scrolled) {
        const bool today = m_view->data().range.contains(session().now());
        const Instant evening = session().zone().toInstant({m_day, QTime(15, 0)});
        m_view->scrollTo(today ? std::max(m_view->data().range.begin, std::min(session().now() - hours(1), evening + hours(2)))
                               : evening);
        m_scrolled = true;
    }
    showWhy(m_view->current());
    say();
}

Instant LanesPage::headsAt() const {
    if (m_moment) return *m_moment;
    const Span shown = m_view->data().range;
    return shown.contains(session().now()) ? session().now() : shown.begin;
}

void LanesPage::loadHeads() {
    const Instant at = headsAt();
    const QDate day = dateOf(session().season().centre, at);
    const Occupancy& before = session().occupancyOf(DateRange{day.addDays(-playedBefore), day});
    const bool now = !m_moment && at == session().now();
    const QString title = now ? tr("now") : tr("at %1").arg(clockTime(at, m_speech));
    m_view->setBands(laneBands(source(), before, at), title, m_moment);
}

void LanesPage::say() {
    const std::vector<LaneBand>& bands = m_view->data().bands;
    const int unknown = int(std::count_if(bands.begin(), bands.end(), [](const LaneBand& b) { return b.age.isEmpty(); }));
    const int missing = int(std::count_if(m_view->data().items.begin(), m_view->data().items.end(),
                                          [](const HouseItem& item) { return item.kind == HouseItem::Kind::Shortfall; }));
    const int jobs = int(std::count_if(m_view->data().items.begin(), m_view->data().items.end(), [](const HouseItem& item) {
        return item.kind == HouseItem::Kind::Job && (item.state == JobState::Proposed || item.state == JobState::Confirmed);
    }));
    QStringList parts;
    parts << (jobs > 0 ? tr("%n job(s) to run", nullptr, jobs) : tr("no job to run"));
    parts << (missing > 0 ? tr("%n demand(s) that no job can meet", nullptr, missing) : tr("every lane is ready in time"));
    if (unknown > 0) parts << tr("some lanes have no record");
    m_headline = tr("%1: %2").arg(dayText(m_day, m_speech), parts.join(tr(", ")));
    Q_EMIT headlineChanged();
}

void LanesPage::showDay(QDate day) {
    if (!day.isValid()) return;
    showYear(false);
    m_day = day;
    m_moment.reset();
    m_scrolled = false;
    refresh();
}

void LanesPage::step(int direction) {
    if (isYear()) return goTo(m_day.addDays(7 * direction));
    switch (m_view->zoom()) {
        case HouseZoom::Evening:
        case HouseZoom::Day:
            return showDay(m_day.addDays(direction));
        case HouseZoom::Week:
            return showDay(m_day.addDays(7 * direction));
        case HouseZoom::Month:
            return showDay(m_day.addMonths(direction));
        case HouseZoom::Season:
            return showDay(m_day.addDays(84 * direction));
    }
}

void LanesPage::chooseLevel(int level) {
    m_view->clearGhost();
    if (level > int(HouseZoom::Season)) return showYear(true);
    showYear(false);
    m_view->setZoom(HouseZoom(level));
    m_moment.reset();
    m_scrolled = false;
    loadDays();
}

void LanesPage::chooseMoment(qint64 seconds) {
    m_moment = Instant{seconds - seconds % 300};  // to five minutes: a click is no finer
    loadHeads();
}

void LanesPage::showOccurrence(const SeriesId& series, const LocalTime& original) {
    wake();
    showYear(false);
    if (!m_view->setCurrentKey(eventKey(series, original))) {
        showDay(original.date);
        m_view->setCurrentKey(eventKey(series, original));
    }
    m_view->setFocus();
}

void LanesPage::showJob(const JobId& job) {
    wake();
    showYear(false);
    m_view->setCurrentKey(QStringLiteral("job:") + job.value);
    m_view->setFocus();
}

void LanesPage::showLane(int lane) {
    wake();
    showYear(false);
    for (const LaneBand& band : m_view->data().bands) {
        if (band.first <= lane && lane <= band.last) m_view->setCurrentKey(QStringLiteral("lanes:%1").arg(band.first));
    }
    m_view->setFocus();
}

}  // namespace laneward
