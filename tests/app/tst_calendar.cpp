// The Calendar page: month, week and day; moving by mouse and keys, with Esc, undo and redo; taking away; adding.
#include "app/edits/ask_bar.h"
#include "app/pages/calendar/calendar_page.h"
#include "app/pages/calendar/event_editor.h"
#include "app/pages/calendar/month_view.h"
#include "app/pages/calendar/week_view.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QPushButton>
#include <QTest>
#include <QToolButton>

using namespace laneward;

namespace {

const LocalTime thursday{QDate(2026, 11, 12), QTime(18, 30)};

QAbstractButton* button(const QWidget& parent, const QString& text) {
    for (QAbstractButton* child : parent.findChildren<QAbstractButton*>()) {
        if (child->isVisible() && child->text().remove('&').startsWith(text)) return child;
    }
    qFatal("no button %s", qPrintable(text));
}

}  // namespace

class CalendarTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void theHeadlineAnswers();
    void draggingOneDateIsOneUndoableEdit();
    void draggingTheWholeSeries();
    void stretchingByTheLowerEdge();
    void escLeavesNoTrace();
    void aClickMovesNothing();
    void keysMoveAndStretch();
    void aSingleEventMovesAtOnce();
    void monthDragChangesTheDay();
    void monthShowsWhatHasNoRoom();
    void takingAwayOneDateOrAll();
    void newEventsByKeyAndDoubleClick();
    void levelsAndSteps();
    void conflictsAndClosuresAreSeen();
    void daysRunFromRightToLeft();
    void readOnlyMovesNothing();
    void pictures();

private:
    const Series& league() const {
        for (const Series& series : m_session->season().series) {
            if (series.id.value == "league") return series;
        }
        qFatal("no league");
    }
    DiaryView& view() const {
        for (DiaryView* diary : m_page->findChildren<DiaryView*>()) {
            if (diary->isVisible()) return *diary;
        }
        qFatal("no view");
    }
    AskBar& ask() const { return *m_page->findChild<AskBar*>(); }
    EventEditor& editor() const { return *m_page->findChild<EventEditor*>(); }
    int block(const LocalTime& original = thursday) const {
        for (int i = 0; i < view().blockCount(); ++i) {
            if (view().block(i).key == eventKey({"league"}, original)) return i;
        }
        qFatal("no block");
    }
    void drag(const QPoint& from, const QPoint& to, bool release = true) const {
        QWidget* on = view().viewport();
        QTest::mousePress(on, Qt::LeftButton, {}, from);
        QMouseEvent half(QEvent::MouseMove, (from + to) / 2, on->mapToGlobal((from + to) / 2), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(on, &half);
        QMouseEvent whole(QEvent::MouseMove, to, on->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(on, &whole);
        if (release) QTest::mouseRelease(on, Qt::LeftButton, {}, to);
    }
    QPoint by(int days, double hours) const {
        const WeekLayout& layout = m_page->findChild<WeekView*>()->layout();
        return {int(days * layout.column(0).width()), int(hours * layout.hourHeight())};
    }
    QPoint middle(const LocalTime& original = thursday) const {
        view().setCurrent(block(original));
        return view().blockRect(block(original)).center();
    }

    std::unique_ptr<support::Evening> m_evening;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<CalendarPage> m_page;
};

void CalendarTest::init() {
    m_evening = std::make_unique<support::Evening>();
    m_session = support::sessionOn(*m_evening);
    m_page = std::make_unique<CalendarPage>(*m_session);
    connect(m_session.get(), &Session::changed, m_page.get(), &Page::refreshSoon);
    m_page->resize(1100, 660);
    m_page->show();
}

void CalendarTest::cleanup() {
    m_page.reset();
    m_session.reset();
}

void CalendarTest::theHeadlineAnswers() {
    QVERIFY2(m_page->headline().contains("2 event") && m_page->headline().contains("job"), qPrintable(m_page->headline()));
}

void CalendarTest::draggingOneDateIsOneUndoableEdit() {
    const SeasonState before = m_session->season();
    drag(middle(), middle() + by(1, 0.5));
    QVERIFY2(ask().question().contains("Thursday Fours") && ask().question().contains("19:00"), qPrintable(ask().question()));
    QCOMPARE(m_session->season().series, before.series);  // asked, not done
    QTest::mouseClick(button(ask(), "This date only"), Qt::LeftButton);
    QCOMPARE(m_session->undoStack().count(), 1);
    QCOMPARE(m_session->undoStack().undoText(), QString("Move Thursday Fours"));
    QCOMPARE(league().overrides.size(), size_t(1));
    QCOMPARE(*league().overrides.front().start, (LocalTime{QDate(2026, 11, 13), QTime(19, 0)}));
    QVERIFY(!view().ghost());
    m_session->undoStack().undo();
    QVERIFY(league().overrides.empty());
    m_session->undoStack().redo();
    QCOMPARE(league().overrides.size(), size_t(1));
}

void CalendarTest::draggingTheWholeSeries() {
    drag(middle(), middle() + by(-1, 1));
    QTest::mouseClick(button(ask(), "The whole series"), Qt::LeftButton);
    QCOMPARE(league().start, (LocalTime{QDate(2026, 11, 11), QTime(19, 30)}));
    QCOMPARE(league().rule, QString("FREQ=WEEKLY;BYDAY=WE"));
    QVERIFY(league().overrides.empty());
    m_session->undoStack().undo();
    QCOMPARE(league().start, thursday);
    QCOMPARE(league().rule, QString("FREQ=WEEKLY;BYDAY=TH"));
}

void CalendarTest::stretchingByTheLowerEdge() {
    view().setCurrent(block());
    const QRect rect = view().blockRect(block());
    const QPoint edge(rect.center().x(), rect.bottom() - 2);
    drag(edge, edge + by(0, 0.75));
    QTest::mouseClick(button(ask(), "The whole series"), Qt::LeftButton);
    QCOMPARE(league().duration, minutes(225));
    QCOMPARE(league().start, thursday);
}

void CalendarTest::escLeavesNoTrace() {
    const SeasonState before = m_session->season();
    drag(middle(), middle() + by(1, 1), false);
    QVERIFY(view().ghost());
    QTest::keyClick(&view(), Qt::Key_Escape);
    QVERIFY(!view().ghost());
    QTest::mouseRelease(view().viewport(), Qt::LeftButton, {}, middle() + by(1, 1));
    QVERIFY(ask().question().isEmpty());
    drag(middle(), middle() + by(1, 1));
    QVERIFY(!ask().question().isEmpty());
    QTest::keyClick(ask().findChild<QPushButton*>(), Qt::Key_Escape);
    QVERIFY(ask().question().isEmpty());
    QVERIFY(!view().ghost());
    QCOMPARE(m_session->season(), before);
    QCOMPARE(m_session->undoStack().count(), 0);
}

void CalendarTest::aClickMovesNothing() {
    QTest::mouseClick(view().viewport(), Qt::LeftButton, {}, middle());
    drag(middle(), middle() + QPoint(3, 2));
    QVERIFY(ask().question().isEmpty());
    QVERIFY(!view().ghost());
}

void CalendarTest::keysMoveAndStretch() {
    view().setCurrent(block());
    view().setFocus();
    QTest::keyClick(&view(), Qt::Key_Down, Qt::AltModifier);
    QTest::keyClick(&view(), Qt::Key_Down, Qt::AltModifier);
    QTest::keyClick(&view(), Qt::Key_Right, Qt::AltModifier);
    QTest::keyClick(&view(), Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    QCOMPARE(view().ghost()->start.date, QDate(2026, 11, 13));
    QCOMPARE(view().ghost()->start.time, QTime(19, 0));
    QCOMPARE(view().ghost()->duration, minutes(165));
    QCOMPARE(m_session->undoStack().count(), 0);
    QTest::keyClick(&view(), Qt::Key_Return);
    QTest::keyClick(button(ask(), "This date only"), Qt::Key_Return);
    QCOMPARE(m_session->undoStack().count(), 1);
    QCOMPARE(*league().overrides.front().duration, minutes(165));
}

void CalendarTest::aSingleEventMovesAtOnce() {
    const Series before = league();
    Series once = before;
    once.rule.clear();
    QVERIFY(m_session->apply("Once", {RowChange<Series>{before, once}}));
    m_page->refresh();
    drag(middle(), middle() + by(0, 1));
    QVERIFY(ask().question().isEmpty());
    QCOMPARE(league().start, (LocalTime{QDate(2026, 11, 12), QTime(19, 30)}));
    QCOMPARE(m_session->undoStack().count(), 2);
}

void CalendarTest::monthDragChangesTheDay() {
    m_page->setLevel(CalendarPage::Level::Month);
    const int cell = view().viewport()->width() / 7;
    drag(middle(), middle() + QPoint(2 * cell, 0));
    QTest::mouseClick(button(ask(), "This date only"), Qt::LeftButton);
    QCOMPARE(*league().overrides.front().start, (LocalTime{QDate(2026, 11, 14), QTime(18, 30)}));
}

void CalendarTest::monthShowsWhatHasNoRoom() {
    std::vector<Change> changes;
    for (int i = 0; i < 9; ++i) {
        Series series = league();
        series.id = {QString("extra%1").arg(i)};
        series.uid = series.id.value;
        series.version = 0;
        series.rule.clear();
        series.lanes = {12};
        series.demands.clear();
        series.start = {QDate(2026, 11, 20), QTime(9 + i, 0)};
        series.duration = minutes(20);
        changes.emplace_back(RowChange<Series>{std::nullopt, series});
    }
    QVERIFY(m_session->apply("Add", changes));
    m_page->setLevel(CalendarPage::Level::Month);
    QVERIFY(view().setCurrentKey("more:2026-11-20"));
    view().setFocus();
    QVERIFY(view().block(view().current()).spoken.contains("more event"));
    QTest::keyClick(&view(), Qt::Key_Return);
    QCOMPARE(int(m_page->level()), int(CalendarPage::Level::Day));
    QVERIFY2(m_page->headline().contains("20 November"), qPrintable(m_page->headline()));
    QCOMPARE(view().blockCount(), 9);
}

void CalendarTest::takingAwayOneDateOrAll() {
    view().setCurrent(block());
    view().setFocus();
    QTest::keyClick(&view(), Qt::Key_Delete);
    QTest::mouseClick(button(ask(), "Cancel only"), Qt::LeftButton);
    QVERIFY(league().overrides.front().cancelled);
    m_session->undoStack().undo();
    QVERIFY(league().overrides.empty());
    view().setCurrent(block());
    view().setFocus();
    QTest::keyClick(&view(), Qt::Key_Delete);
    QTest::mouseClick(button(ask(), "Delete the whole series"), Qt::LeftButton);
    QCOMPARE(m_session->season().series.size(), size_t(1));
    m_session->undoStack().undo();
    QCOMPARE(m_session->season().series.size(), size_t(2));
}

void CalendarTest::newEventsByKeyAndDoubleClick() {
    view().setCurrent(block());
    view().setFocus();
    QTest::keyClick(&view(), Qt::Key_N);
    QVERIFY(editor().isVisible());
    QCOMPARE(editor().draft()->start, (LocalTime{QDate(2026, 11, 12), QTime(19, 0)}));
    QTest::keyClick(&editor(), Qt::Key_Escape);
    QVERIFY(!editor().isVisible());
    QTest::mouseDClick(view().viewport(), Qt::LeftButton, {}, middle() + by(2, 0));
    QVERIFY(editor().isVisible());
    QCOMPARE(editor().draft()->start.date, QDate(2026, 11, 14));
    QTest::keyClick(&editor(), Qt::Key_Escape);
    QTest::mouseDClick(view().viewport(), Qt::LeftButton, {}, middle());
    QVERIFY(editor().isVisible());
    QCOMPARE(editor().editing().value, QString("league"));
}

void CalendarTest::levelsAndSteps() {
    QTest::mouseClick(button(*m_page, "Month"), Qt::LeftButton);
    QVERIFY2(m_page->headline().contains("November 2026"), qPrintable(m_page->headline()));
    m_page->showDay(QDate(2026, 12, 10));
    QVERIFY(m_page->headline().contains("December 2026"));
    QTest::mouseClick(button(*m_page, "Day"), Qt::LeftButton);
    QVERIFY(m_page->headline().contains("10 December"));
    m_page->showOccurrence({"league"}, {QDate(2026, 11, 26), QTime(18, 30)});
    QVERIFY(m_page->headline().contains("26 November"));
    QVERIFY(editor().isVisible());
}

void CalendarTest::conflictsAndClosuresAreSeen() {
    Series other = league();
    other.id = {"clash"};
    other.uid = "clash";
    other.version = 0;
    other.title = "Clash";
    other.lanes = LaneSet::range(7, 12);
    other.demands.clear();
    QVERIFY(m_session->apply("Add", {RowChange<Series>{std::nullopt, other}}));
    m_page->refresh();
    QVERIFY2(m_page->headline().contains("conflict"), qPrintable(m_page->headline()));
    QVERIFY(view().block(block()).spoken.contains("conflict"));
}

void CalendarTest::daysRunFromRightToLeft() {
    m_page->setLayoutDirection(Qt::RightToLeft);
    const WeekLayout& layout = m_page->findChild<WeekView*>()->layout();
    QVERIFY(layout.column(0).left() > layout.column(1).left());
    drag(middle(), middle() + QPoint(-by(1, 0).x(), 0));  // to the left is onward
    QTest::mouseClick(button(ask(), "This date only"), Qt::LeftButton);
    QCOMPARE(league().overrides.front().start->date, QDate(2026, 11, 13));
}

void CalendarTest::readOnlyMovesNothing() {
    Session looking(m_evening->store(Access::ReadOnly), m_evening->clock);
    CalendarPage page(looking);
    page.resize(1100, 660);
    page.show();
    auto* week = page.findChild<WeekView*>();
    week->setFocus();
    week->setCurrentKey(eventKey({"league"}, thursday));
    QTest::keyClick(week, Qt::Key_Down, Qt::AltModifier);
    QVERIFY(!week->ghost());
    QTest::keyClick(week, Qt::Key_N);
    const auto* editor = page.findChild<EventEditor*>();
    QVERIFY(!editor || !editor->isVisible());
    QTest::keyClick(week, Qt::Key_Delete);
    QVERIFY(page.findChild<AskBar*>()->question().isEmpty());
}

void CalendarTest::pictures() {
    drag(middle(), middle() + by(1, 0.5));
    QVERIFY(support::picture(*m_page, "calendar_asks"));
    support::DemoSession demo;
    CalendarPage page(demo.session());
    page.resize(1150, 640);  // what 1280x720 leaves beside the rail
    page.show();
    for (const auto& [name, level] : {std::pair("month", CalendarPage::Level::Month),
                                      std::pair("week", CalendarPage::Level::Week), std::pair("day", CalendarPage::Level::Day)}) {
        page.setLevel(level);
        QVERIFY(support::picture(page, QString("calendar_demo_%1").arg(name)));
    }
    QApplication::setPalette(support::darkPalette());
    page.setLevel(CalendarPage::Level::Month);
    QVERIFY(support::picture(page, "calendar_demo_month_dark"));
    page.setLevel(CalendarPage::Level::Week);
    page.editSeries(demo.session().season().series.front().id);
    QVERIFY(support::picture(page, "calendar_demo_editor_dark"));
    QApplication::setPalette(support::lightPalette());
    page.setLayoutDirection(Qt::RightToLeft);
    QVERIFY(support::picture(page, "calendar_demo_rtl"));
    page.copySeason({});
    QVERIFY(support::picture(page, "calendar_demo_copy"));
}

QTEST_MAIN(CalendarTest)
#include "tst_calendar.moc"
