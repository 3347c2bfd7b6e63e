// 'What if' while the mouse moves: the answer beside the ghost, the runner behind it, and that nothing stays of what was not
// kept.
#include "app/edits/ask_bar.h"
#include "app/pages/calendar/calendar_page.h"
#include "app/pages/calendar/week_view.h"
#include "app/pages/lanes/lanes_page.h"
#include "app/pages/lanes/why_panel.h"
#include "app/widgets/difference_panel.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QPushButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QThreadPool>
#include <QTranslator>

using namespace laneward;

namespace {

constexpr int patience = 30'000;  // milliseconds
const QDate thursday(2026, 11, 12);
const LocalTime league{thursday, QTime(18, 30)};
const DateRange evening{thursday, thursday};

QAbstractButton* button(const QWidget& parent, const QString& text) {
    for (QAbstractButton* child : parent.findChildren<QAbstractButton*>()) {
        if (child->isVisible() && child->text().remove('&').startsWith(text)) return child;
    }
    qFatal("no button %s", qPrintable(text));
}

void moveTo(QWidget* on, const QPoint& point) {
    QMouseEvent move(QEvent::MouseMove, point, on->mapToGlobal(point), Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(on, &move);
}

void drag(QWidget* on, const QPoint& from, const QPoint& to) {
    QTest::mousePress(on, Qt::LeftButton, {}, from);
    for (int step = 1; step <= 4; ++step)
        moveTo(on, from + (to - from) * step / 4);
}

QImage looksOf(QWidget& widget) {
    for (int round = 0; round < 3; ++round)
        QCoreApplication::processEvents();
    return widget.grab().toImage();
}

State withLeague(State state, Seconds later) {
    for (Series& series : state.series) {
        if (series.id.value == "league") series.start = shifted(series.start, later);
    }
    return state;
}

int indexOf(const HouseView& view, HouseItem::Kind kind) {
    int found = -1;
    for (int i = 0; i < view.blockCount(); ++i) {
        if (view.itemOf(i) && view.itemOf(i)->kind == kind) found = i;
    }
    return found;
}

}  // namespace

class WhatIfDragTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void onlyTheNewestQuestionIsAnswered();
    void aFirstLookThenTheProof();
    void nothingIsAnsweredAfterLeaving();
    void theSeasonFollowsTheSession();
    void closingWhileBusyIsClean_data();
    void closingWhileBusyIsClean();
    void closingThePageWhileBusyIsClean();
    void daysAreFourWeeksAtLeast();
    void draggingTellsWhatWouldChange();
    void droppingIsOneUndoableEdit();
    void escLeavesNoTrace();
    void aBetterPlanWaitsForTheHand();
    void theKeyboardAsksTheSame();
    void consideringTheWholeSeries();
    void whatCannotBeMetIsSaid();
    void monthShowsTheDaysThatChange();
    void hidingThePageLeavesTheGhost();
    void lanesTellWhatWouldChange();
    void lanesByKeyboard();
    void aJobIsConfirmedWhereItIsDropped();
    void anImpossibleJobSpringsBack();
    void pictures();

private:
    WeekView& week() const { return *m_calendar->findChild<WeekView*>(); }
    AskBar& ask() const { return *m_calendar->findChild<AskBar*>(); }
    QString panel() const {
        for (const DifferencePanel* shown : m_calendar->findChildren<DifferencePanel*>()) {
            if (shown->isVisible()) return shown->allText();
        }
        return {};
    }
    QPoint middle() const {
        week().setCurrentKey(eventKey({"league"}, league));
        week().setFocus();
        return week().blockRect(week().current()).center();
    }
    QPoint by(int days, double hours) const {
        const WeekLayout& layout = week().layout();
        return {int(days * layout.column(0).width()), int(hours * layout.hourHeight())};
    }
    HouseView& house() const { return *m_lanes->findChild<HouseView*>(); }
    QString why() const { return m_lanes->findChild<WhyPanel*>()->allText(); }
    QPoint hours(double n) const { return {0, int(n * house().layout().dayHeight() / 24)}; }
    QPoint middleOf(HouseItem::Kind kind) const {
        house().setCurrent(indexOf(house(), kind));
        house().setFocus();
        return house().blockRect(house().current()).center();
    }

    /// Made when it is first wanted.
    Session& demoSession() {
        if (!m_demo) m_demo = std::make_unique<support::DemoSession>();
        return m_demo->session();
    }

    std::unique_ptr<support::DemoSession> m_demo;
    std::unique_ptr<support::Evening> m_evening;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<CalendarPage> m_calendar;
    std::unique_ptr<LanesPage> m_lanes;
};

void WhatIfDragTest::init() {
    m_evening = std::make_unique<support::Evening>();
    m_session = support::sessionOn(*m_evening);
    m_calendar = std::make_unique<CalendarPage>(*m_session);
    m_calendar->resize(1100, 660);
    m_calendar->show();
    m_lanes = std::make_unique<LanesPage>(*m_session);
    m_lanes->resize(1150, 660);
    m_lanes->show();
}

void WhatIfDragTest::cleanup() {
    m_calendar.reset();
    m_lanes.reset();
    m_session.reset();
    QVERIFY(QThreadPool::globalInstance()->waitForDone(patience));
}

void WhatIfDragTest::onlyTheNewestQuestionIsAnswered() {
    WhatIfRunner runner(*m_session);
    std::vector<quint64> answered;
    connect(&runner, &WhatIfRunner::answered, this, [&](const WhatIfReply& reply) { answered.push_back(reply.question); });
    quint64 last = 0;
    for (int i = 0; i < 25; ++i)
        last = runner.ask(evening, withLeague(m_session->planningState(), minutes(15 * i)));
    QTRY_VERIFY_WITH_TIMEOUT(!answered.empty(), patience);
    QVERIFY(QThreadPool::globalInstance()->waitForDone(patience));
    QCoreApplication::processEvents();
    for (quint64 question : answered)
        QCOMPARE(question, last);
    QVERIFY(answered.size() <= 2);
}

void WhatIfDragTest::aFirstLookThenTheProof() {
    Session& demo = demoSession();
    WhatIfRunner runner(demo);
    std::vector<WhatIfReply> replies;
    connect(&runner, &WhatIfRunner::answered, this, [&](const WhatIfReply& reply) { replies.push_back(reply); });
    State changed = demo.planningState();
    changed.series.front().start = shifted(changed.series.front().start, minutes(30));
    runner.ask(evening, changed);
    const auto done = [&] { return !replies.empty() && (replies.back().answer.proven || replies.size() == 2); };
    QTRY_VERIFY_WITH_TIMEOUT(done(), 120'000);
    QCOMPARE(int(replies.front().effort), int(Effort::First));
    QCOMPARE(replies.front().days.days(), 28);
    if (replies.size() == 2) QCOMPARE(int(replies.back().effort), int(Effort::Proven));
    QVERIFY(replies.back().answer.difference.after.unmet <= replies.front().answer.difference.after.unmet);
}

void WhatIfDragTest::nothingIsAnsweredAfterLeaving() {
    WhatIfRunner runner(*m_session);
    QSignalSpy answers(&runner, &WhatIfRunner::answered);
    runner.ask(evening, withLeague(m_session->planningState(), minutes(60)));
    runner.leave();
    QVERIFY(QThreadPool::globalInstance()->waitForDone(patience));
    QCoreApplication::processEvents();
    QCOMPARE(answers.count(), 0);
    runner.ask(evening, withLeague(m_session->planningState(), minutes(60)));
    QTRY_VERIFY_WITH_TIMEOUT(answers.count() > 0, patience);
}

void WhatIfDragTest::theSeasonFollowsTheSession() {
    WhatIfRunner runner(*m_session);
    std::optional<WhatIfReply> last;
    connect(&runner, &WhatIfRunner::answered, this, [&](const WhatIfReply& reply) { last = reply; });
    const State later = withLeague(m_session->planningState(), minutes(60));
    runner.ask(evening, later);
    QTRY_VERIFY_WITH_TIMEOUT(last && last->answer.proven, patience);
    QVERIFY(!last->answer.difference.moved.empty());
    for (const Series& series : m_session->season().series) {
        if (series.id.value != "league") continue;
        const Series before = series;
        Series after = before;
        after.start = shifted(after.start, minutes(60));
        QVERIFY(m_session->apply("Later", {RowChange<Series>{before, after}}));
        break;
    }
    last.reset();
    runner.ask(evening, m_session->planningState());
    QTRY_VERIFY_WITH_TIMEOUT(last && last->answer.proven, patience);
    QVERIFY(last->answer.difference.moved.empty());  // from where the league is now
}

void WhatIfDragTest::closingWhileBusyIsClean_data() {
    QTest::addColumn<int>("wait");
    for (int wait : {0, 1, 5, 20, 80})
        QTest::newRow(qPrintable(QString("after %1 ms").arg(wait))) << wait;
}

void WhatIfDragTest::closingWhileBusyIsClean() {
    QFETCH(int, wait);
    Session& demo = demoSession();
    {
        WhatIfRunner runner(demo);
        connect(&runner, &WhatIfRunner::answered, this, [](const WhatIfReply&) { QFAIL("answered after the end"); });
        State changed = demo.planningState();
        changed.series.front().start = shifted(changed.series.front().start, minutes(30));
        runner.ask(evening, std::move(changed));
        QThread::msleep(unsigned(wait));
    }
    QVERIFY(QThreadPool::globalInstance()->waitForDone(120'000));
    QCoreApplication::processEvents();
}

void WhatIfDragTest::closingThePageWhileBusyIsClean() {
    for (int round = 0; round < 4; ++round) {
        drag(week().viewport(), middle(), middle() + by(0, 1));
        QVERIFY(week().ghost());
        drag(house().viewport(), middleOf(HouseItem::Kind::Event), middleOf(HouseItem::Kind::Event) + hours(1));
        QVERIFY(house().ghost());
        cleanup();
        init();
    }
}

void WhatIfDragTest::daysAreFourWeeksAtLeast() {
    using Days = DateRange;
    QCOMPARE(WhatIfRunner::daysAround(evening, thursday), (Days{thursday, thursday.addDays(27)}));
    QCOMPARE(WhatIfRunner::daysAround({thursday.addDays(-7), thursday.addDays(-1)}, thursday),
             (Days{thursday, thursday.addDays(27)}));
    QCOMPARE(WhatIfRunner::daysAround({thursday.addDays(-7), thursday.addDays(83)}, thursday),
             (Days{thursday, thursday.addDays(83)}));
    QCOMPARE(WhatIfRunner::daysAround({thursday.addDays(100), thursday.addDays(106)}, thursday),
             (Days{thursday.addDays(100), thursday.addDays(127)}));
}

void WhatIfDragTest::draggingTellsWhatWouldChange() {
    drag(week().viewport(), middle(), middle() + by(0, 1));
    QVERIFY2(panel().contains("What if Thursday Fours plays"), qPrintable(panel()));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven"), qPrintable(panel()), patience);
    for (const char* words : {"19:30", "1 job(s) moved", "treatments", "conditioner", "cleaner", "lanes 1-8"})
        QVERIFY2(panel().contains(words), qPrintable(panel()));
    moveTo(week().viewport(), middle() + by(0, 2));
    QVERIFY2(panel().contains("20:30") && panel().contains("Looking"), qPrintable(panel()));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven"), qPrintable(panel()), patience);
    QVERIFY(support::picture(*m_calendar, "whatif_calendar_small"));
    QTest::keyClick(&week(), Qt::Key_Escape);
    QVERIFY(panel().isEmpty());
}

void WhatIfDragTest::droppingIsOneUndoableEdit() {
    const SeasonState before = m_session->season();
    drag(week().viewport(), middle(), middle() + by(0, 1));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven"), qPrintable(panel()), patience);
    QTest::mouseRelease(week().viewport(), Qt::LeftButton, {}, middle() + by(0, 1));
    QVERIFY(!panel().isEmpty());  // it stays while the question is open
    QTest::mouseClick(button(ask(), "This date only"), Qt::LeftButton);
    QVERIFY(panel().isEmpty());
    QCOMPARE(m_session->undoStack().count(), 1);
    QCOMPARE(m_session->undoStack().undoText(), QString("Move Thursday Fours"));
    QVERIFY(m_session->season().series != before.series);
    m_session->undoStack().undo();
    QCOMPARE(m_session->season().series.size(), before.series.size());
    for (size_t i = 0; i < before.series.size(); ++i) {
        Series restored = m_session->season().series[i];
        restored.version = before.series[i].version;
        QCOMPARE(restored, before.series[i]);
    }
}

void WhatIfDragTest::escLeavesNoTrace() {
    const SeasonState before = m_session->season();
    const QPoint from = middle();
    QTest::mouseMove(week().viewport(), from);
    const QImage look = looksOf(*m_calendar);
    drag(week().viewport(), from, from + by(1, 1));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven"), qPrintable(panel()), patience);
    QVERIFY(looksOf(*m_calendar) != look);
    QTest::keyClick(&week(), Qt::Key_Escape);
    QTest::mouseRelease(week().viewport(), Qt::LeftButton, {}, from + by(1, 1));
    QVERIFY(!week().ghost());
    QVERIFY(ask().question().isEmpty());
    QTest::mouseMove(week().viewport(), from);
    QCOMPARE(looksOf(*m_calendar), look);
    QCOMPARE(m_session->season(), before);
    QCOMPARE(m_session->undoStack().count(), 0);
}

/// What is dragged stays in the hand while the page's own plan becomes another; the page shows it once it is let go.
void WhatIfDragTest::aBetterPlanWaitsForTheHand() {
    QSignalSpy shownAgain(m_calendar.get(), &Page::headlineChanged);
    middle();
    QTest::keyClick(&week(), Qt::Key_Space);
    shownAgain.clear();
    Q_EMIT m_session->planned();
    QCoreApplication::processEvents();
    QVERIFY(week().ghost());
    QCOMPARE(shownAgain.size(), 0);
    QTest::keyClick(&week(), Qt::Key_Escape);
    QTRY_VERIFY(!shownAgain.isEmpty());
    // A button that only went down, and then up again, holds too.
    const QPoint from = middle();
    QTest::mousePress(week().viewport(), Qt::LeftButton, {}, from);
    shownAgain.clear();
    Q_EMIT m_session->planned();
    QCoreApplication::processEvents();
    QCOMPARE(shownAgain.size(), 0);
    QTest::mouseRelease(week().viewport(), Qt::LeftButton, {}, from);
    QTRY_VERIFY(!shownAgain.isEmpty());
    // And the house.
    middleOf(HouseItem::Kind::Event);
    QTest::keyClick(&house(), Qt::Key_Space);
    QVERIFY(house().ghost());
    QSignalSpy houseAgain(m_lanes.get(), &Page::headlineChanged);
    Q_EMIT m_session->planned();
    QCoreApplication::processEvents();
    QVERIFY(house().ghost());
    QCOMPARE(houseAgain.size(), 0);
    QTest::keyClick(&house(), Qt::Key_Escape);
    QTRY_VERIFY(!houseAgain.isEmpty());
    // With empty hands at once.
    houseAgain.clear();
    Q_EMIT m_session->planned();
    QVERIFY(!houseAgain.isEmpty());
}

void WhatIfDragTest::theKeyboardAsksTheSame() {
    middle();
    QTest::keyClick(&week(), Qt::Key_Space);
    QVERIFY(week().ghost());
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(&week(), Qt::Key_Down);
    QCOMPARE(week().ghost()->start, (LocalTime{thursday, QTime(19, 30)}));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven"), qPrintable(panel()), patience);
    QVERIFY2(panel().contains("1 job(s) moved"), qPrintable(panel()));
    QTest::keyClick(&week(), Qt::Key_Down, Qt::ShiftModifier);
    QCOMPARE(week().ghost()->duration, minutes(195));
    QTest::keyClick(&week(), Qt::Key_Escape);
    QVERIFY(!week().ghost() && panel().isEmpty());
    QCOMPARE(m_session->undoStack().count(), 0);
    QTest::keyClick(&week(), Qt::Key_Down, Qt::AltModifier);
    QTest::keyClick(&week(), Qt::Key_Return);
    QTest::keyClick(button(ask(), "This date only"), Qt::Key_Return);
    QCOMPARE(m_session->undoStack().count(), 1);
}

void WhatIfDragTest::consideringTheWholeSeries() {
    drag(week().viewport(), middle(), middle() + by(0, 1));
    QTest::mouseRelease(week().viewport(), Qt::LeftButton, {}, middle() + by(0, 1));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven"), qPrintable(panel()), patience);
    QVERIFY2(panel().contains("1 job(s) moved") && !panel().contains("always"), qPrintable(panel()));
    m_calendar->activateWindow();
    button(ask(), "The whole series")->setFocus();
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("always"), qPrintable(panel()), patience);
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("4 job(s) moved"), qPrintable(panel()), patience);  // Thursdays in four weeks
}

void WhatIfDragTest::whatCannotBeMetIsSaid() {
    drag(week().viewport(), middle(), middle() + by(0, -1.5));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven") || panel().contains("best plan"), qPrintable(panel()), patience);
    QVERIFY2(panel().contains("Cannot be met") || panel().contains("ready late"), qPrintable(panel()));
    QVERIFY(support::picture(*m_calendar, "whatif_calendar_unmet"));
}

void WhatIfDragTest::monthShowsTheDaysThatChange() {
    m_calendar->setLevel(CalendarPage::Level::Month);
    DiaryView* month = nullptr;
    for (DiaryView* diary : m_calendar->findChildren<DiaryView*>()) {
        if (diary->isVisible()) month = diary;
    }
    QVERIFY(month && month->setCurrentKey(eventKey({"league"}, league)));
    const QPoint from = month->blockRect(month->current()).center();
    drag(month->viewport(), from, from + QPoint(month->viewport()->width() / 7, 0));
    QTRY_VERIFY2_WITH_TIMEOUT(panel().contains("Proven"), qPrintable(panel()), patience);
    QVERIFY2(panel().contains("1 job(s) added, 1 job(s) removed"), qPrintable(panel()));
    QVERIFY(support::picture(*m_calendar, "whatif_calendar_month"));
}

void WhatIfDragTest::hidingThePageLeavesTheGhost() {
    drag(week().viewport(), middle(), middle() + by(0, 1));
    m_calendar->hide();
    QVERIFY(!week().ghost());
    drag(house().viewport(), middleOf(HouseItem::Kind::Event), middleOf(HouseItem::Kind::Event) + hours(1));
    m_lanes->hide();
    QVERIFY(!house().ghost());
}

void WhatIfDragTest::lanesTellWhatWouldChange() {
    const SeasonState before = m_session->season();
    const QPoint from = middleOf(HouseItem::Kind::Event);
    QTest::mouseMove(house().viewport(), from);
    const QString words = why();
    const QImage look = looksOf(*m_lanes);
    drag(house().viewport(), from, from + hours(1));
    QTRY_VERIFY2_WITH_TIMEOUT(why().contains("Proven"), qPrintable(why()), patience);
    for (const char* told : {"What if Thursday Fours plays", "19:30", "1 job(s) moved", "treatments", "lanes 1-8"})
        QVERIFY2(why().contains(told), qPrintable(why()));
    QVERIFY(support::picture(*m_lanes, "whatif_lanes_small"));
    QTest::keyClick(&house(), Qt::Key_Escape);
    QTest::mouseRelease(house().viewport(), Qt::LeftButton, {}, from + hours(1));
    QTest::mouseMove(house().viewport(), from);
    QCOMPARE(why(), words);
    QCOMPARE(looksOf(*m_lanes), look);
    QCOMPARE(m_session->season(), before);
    QCOMPARE(m_session->undoStack().count(), 0);
    drag(house().viewport(), from, from + hours(1));
    QTest::mouseRelease(house().viewport(), Qt::LeftButton, {}, from + hours(1));
    QTest::mouseClick(button(*m_lanes, "This date only"), Qt::LeftButton);
    QCOMPARE(m_session->undoStack().count(), 1);
    QVERIFY(!house().ghost());
    m_session->undoStack().undo();
    QVERIFY(m_session->season().series.front().overrides.empty() && m_session->season().series.back().overrides.empty());
}

void WhatIfDragTest::lanesByKeyboard() {
    middleOf(HouseItem::Kind::Event);
    QTest::keyClick(&house(), Qt::Key_Space);
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(&house(), Qt::Key_Down);
    QTRY_VERIFY2_WITH_TIMEOUT(why().contains("Proven"), qPrintable(why()), patience);
    QVERIFY2(why().contains("1 job(s) moved"), qPrintable(why()));
    QTest::keyClick(&house(), Qt::Key_Escape);
    QVERIFY(!house().ghost());
    QVERIFY2(why().contains("Asks of the lanes"), qPrintable(why()));
    QTest::keyClick(&house(), Qt::Key_Up, Qt::AltModifier);
    QTest::keyClick(&house(), Qt::Key_Right, Qt::AltModifier);  // another day is not in this view
    QCOMPARE(house().ghost()->start, (LocalTime{thursday, QTime(18, 15)}));
    QTest::keyClick(&house(), Qt::Key_Return);
    QTest::keyClick(button(*m_lanes, "The whole series"), Qt::Key_Return);
    QCOMPARE(m_session->undoStack().count(), 1);
}

void WhatIfDragTest::aJobIsConfirmedWhereItIsDropped() {
    const QPoint from = middleOf(HouseItem::Kind::Job);
    const Instant planned = house().itemOf(house().current())->time.begin;
    drag(house().viewport(), from, from - hours(0.25));
    QVERIFY2(why().contains("What if the job on lanes 1-8 starts"), qPrintable(why()));
    QTest::mouseRelease(house().viewport(), Qt::LeftButton, {}, from - hours(0.25));
    QTRY_COMPARE_WITH_TIMEOUT(m_session->undoStack().count(), 1, patience);
    QCOMPARE(m_session->season().confirmed.size(), size_t(1));
    const Job kept = m_session->season().confirmed.front();
    QCOMPARE(int(kept.state), int(JobState::Confirmed));
    QCOMPARE((planned - kept.lanes.front().time.begin).value, minutes(15).value);
    QVERIFY(violationsOf(m_session->planningState(), m_session->planOf(thursday)).empty());
    m_session->undoStack().undo();
    QVERIFY(m_session->season().confirmed.empty());
}

void WhatIfDragTest::anImpossibleJobSpringsBack() {
    const QPoint from = middleOf(HouseItem::Kind::Job);
    drag(house().viewport(), from, from + hours(1.5));
    QTRY_VERIFY2_WITH_TIMEOUT(why().contains("played on") && why().contains("Not possible there"), qPrintable(why()), patience);
    QVERIFY(support::picture(*m_lanes, "whatif_lanes_impossible"));
    QTest::mouseRelease(house().viewport(), Qt::LeftButton, {}, from + hours(1.5));
    QVERIFY2(why().contains("The job stays where it was") && why().contains("played on"), qPrintable(why()));
    QVERIFY(!house().ghost());
    QVERIFY(m_session->season().confirmed.empty());
    QCOMPARE(m_session->undoStack().count(), 0);
}

void WhatIfDragTest::pictures() {
    Session& demo = demoSession();
    QTranslator english;
    QVERIFY(english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&english);  // for its plural forms
    QTranslator german;
    for (const QString look : {"light", "dark", "german"}) {
        QApplication::setPalette(look == "dark" ? support::darkPalette() : support::lightPalette());
        QLocale::setDefault(QLocale(look == "german" ? "de_DE" : "en_GB"));
        if (look == "german") {
            QVERIFY(german.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
            QApplication::installTranslator(&german);
        }
        CalendarPage calendar(demo);
        calendar.resize(1150, 640);
        calendar.show();
        auto* diary = calendar.findChild<WeekView*>();
        LanesPage lanes(demo);
        lanes.resize(1150, 640);
        lanes.show();
        auto* view = lanes.findChild<HouseView*>();
        const auto settled = [](const QString& words) {
            return words.contains("Proven") || words.contains("best plan found") || words.contains("Bewiesen") ||
                   words.contains("beste gefundene");
        };
        for (int i = 0; i < diary->blockCount(); ++i) {
            const HouseItem* item = diary->itemOf(i);
            const bool tonight = item && item->kind == HouseItem::Kind::Event &&
                                 demo.zone().toLocal(item->time.begin).date == thursday && item->lanes.count() > 6;
            if (!tonight) continue;
            diary->setCurrent(i);
        }
        const QPoint from = diary->blockRect(diary->current()).center();
        drag(diary->viewport(), from, from + QPoint(0, int(diary->layout().hourHeight())));
        auto* panel = calendar.findChild<DifferencePanel*>();
        QVERIFY(panel);
        QTRY_VERIFY2_WITH_TIMEOUT(settled(panel->allText()), qPrintable(panel->allText()), 120'000);
        QVERIFY(support::picture(calendar, "whatif_calendar_" + look));
        const int event = indexOf(*view, HouseItem::Kind::Event);
        view->setCurrent(event);
        const QPoint middle = view->blockRect(event).center();
        drag(view->viewport(), middle, middle + QPoint(0, int(view->layout().dayHeight() / 24)));
        auto* told = lanes.findChild<WhyPanel*>();
        QTRY_VERIFY2_WITH_TIMEOUT(settled(told->allText()), qPrintable(told->allText()), 120'000);
        QVERIFY(support::picture(lanes, "whatif_lanes_" + look));
    }
    QApplication::removeTranslator(&german);
    QApplication::removeTranslator(&english);
    QLocale::setDefault(QLocale::c());
    QApplication::setPalette(support::lightPalette());
}

QTEST_MAIN(WhatIfDragTest)
#include "tst_what_if_drag.moc"
