// 'What if' asked of stock: behind the proof, beside the window, learned once; and that nothing stays of it.
#include "app/pages/calendar/calendar_page.h"
#include "app/pages/calendar/week_view.h"
#include "app/pages/lanes/lanes_page.h"
#include "app/pages/lanes/season_form.h"
#include "app/pages/lanes/season_panel.h"
#include "app/pages/lanes/why_panel.h"
#include "app/widgets/date_bar.h"
#include "app/widgets/difference_panel.h"
#include "core/documents/supply_difference_words.h"
#include "core/season/service_state.h"
#include "tests/support/demo_session.h"
#include "tests/support/looks.h"
#include "tests/support/stocked_house.h"

#include <QCheckBox>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QSignalSpy>
#include <QSqlDatabase>
#include <QTest>
#include <QThreadPool>
#include <QToolButton>

using namespace laneward;

namespace {

constexpr int patience = 60'000;  // milliseconds: beside everything else that a machine under test does
const QDate thursday(2026, 11, 12);
const DateRange evening{thursday, thursday};

/// The league every evening: it takes seven times as much.
State daily(State state) {
    for (Series& series : state.series) {
        if (series.id.value == "league") series.rule = "FREQ=DAILY;COUNT=170";
    }
    return state;
}

void drag(QWidget* on, const QPoint& from, const QPoint& to) {
    QTest::mousePress(on, Qt::LeftButton, {}, from);
    for (int step = 1; step <= 4; ++step) {
        const QPoint point = from + (to - from) * step / 4;
        QMouseEvent move(QEvent::MouseMove, point, on->mapToGlobal(point), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(on, &move);
    }
}

}  // namespace

class StockChangeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void whatRunsOutEarlierIsTold();
    void whatFallsDueEarlierIsTold();
    void thePastIsLearnedOnce();
    void theNewestQuestionWins();
    void nothingIsAnsweredAfterLeaving();
    void closingWhileBusyIsClean();
    void stockFollowsTheProof();
    void theFirstAnswerDoesNotWait();
    void withoutSuppliesNobodyAsks();
    void draggingInTheWeekTellsIt();
    void draggingOnLanesTellsIt();
    void theSeasonTellsIt();
    void pictures();

private:
    std::shared_ptr<const StockBase> base() const {
        return std::make_shared<const StockBase>(
            StockBase{m_session->planningState(), m_session->season(), m_session->store().location(), m_session->now()});
    }
    std::shared_ptr<const State> changed() const { return std::make_shared<const State>(daily(m_session->planningState())); }
    /// All that was asked is worked on, and all that was answered has arrived.
    static void settle() {
        QVERIFY(StockRunner::threads().waitForDone(patience));
        QCoreApplication::processEvents();
    }
    static QString panelOf(const QWidget& page) {
        for (const DifferencePanel* shown : page.findChildren<DifferencePanel*>()) {
            if (shown->isVisible()) return shown->allText();
        }
        return {};
    }

    std::unique_ptr<support::StockedHouse> m_house;
    std::unique_ptr<Session> m_session;
};

void StockChangeTest::init() {
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setPalette(support::lightPalette());
    m_house = std::make_unique<support::StockedHouse>();
    m_session = m_house->session();
}

void StockChangeTest::cleanup() {
    m_session.reset();
    m_house.reset();
}

void StockChangeTest::whatRunsOutEarlierIsTold() {
    StockRunner runner;
    std::optional<StockAnswer> answer;
    runner.ask(base(), changed(), [&](const StockAnswer& a) { answer = a; });
    QVERIFY(runner.isBusy());
    QTRY_VERIFY_WITH_TIMEOUT(answer, patience);
    QVERIFY(!runner.isBusy());
    const auto shift = std::find_if(answer->difference.runOut.begin(), answer->difference.runOut.end(),
                                    [](const SupplyShift& s) { return s.supply.value == "fen"; });
    QVERIFY(shift != answer->difference.runOut.end());
    QVERIFY(shift->after && (!shift->before || *shift->after < *shift->before));
    QVERIFY(answer->cost.sum.minor > 0);
    QCOMPARE(answer->cost.sum.currency, QByteArray("EUR"));
    // The other way round it is the opposite.
    auto other = std::make_shared<StockBase>(*base());
    other->state = daily(other->state);
    std::optional<StockAnswer> back;
    runner.ask(other, std::make_shared<const State>(m_session->planningState()), [&](const StockAnswer& a) { back = a; });
    QTRY_VERIFY_WITH_TIMEOUT(back, patience);
    QCOMPARE(back->cost.sum.minor, -answer->cost.sum.minor);
    QCOMPARE(back->difference.runOut.size(), answer->difference.runOut.size());
}

void StockChangeTest::whatFallsDueEarlierIsTold() {
    auto first = std::make_shared<StockBase>(*base());
    const MachineId machine = first->season.centre.machines.front().id;
    Duty turn{{"turn"}, DutyKind::Turn, "Turn the brush"};
    turn.triggers = {{MeterKind::Lanes, 60}};
    Duty look{{"look"}, DutyKind::Inspect, "Look at the brush"};
    look.triggers = {{MeterKind::Days, 9}};
    first->season.items = {{{"brush"}, machine, ItemKind::CushionBrush, "Brush", {turn, look}, {}, false, 1}};
    for (const char* duty : {"turn", "look"}) {
        ServiceRecord record;
        record.id = {duty};
        record.at = first->now - hours(24);
        record.item = {"brush"};
        record.duty = {duty};
        record.meters = metersNow(first->season, machine, first->now);
        first->season.services.push_back(record);
    }
    StockRunner runner;
    std::optional<StockAnswer> answer;
    runner.ask(first, changed(), [&](const StockAnswer& a) { answer = a; });
    QTRY_VERIFY_WITH_TIMEOUT(answer, patience);
    QCOMPARE(answer->service.size(), size_t(1));  // what counts days stays
    const DutyShift& shift = answer->service.front();
    QCOMPARE(shift.duty.value, QString("turn"));
    QVERIFY(shift.after && (!shift.before || *shift.after < *shift.before));
    const auto lines = serviceLines(answer->service, first->season, m_session->speech());
    QCOMPARE(lines.size(), size_t(1));
    QVERIFY2(lines.front().words.contains("Brush, Turn the brush falls due"), qPrintable(lines.front().words));
}

/// The file is out of reach after the first answer: the next ones do without it, until something else is recorded.
void StockChangeTest::thePastIsLearnedOnce() {
    StockRunner runner;
    int answers = 0;
    const auto count = [&](const StockAnswer&) { ++answers; };
    const auto first = base();
    runner.ask(first, changed(), count);
    QTRY_COMPARE_WITH_TIMEOUT(answers, 1, patience);
    const QString path = m_house->location().path;
    QVERIFY(QFile::rename(path, path + ".away"));
    runner.ask(first, changed(), count);
    QTRY_COMPARE_WITH_TIMEOUT(answers, 2, patience);
    runner.ask(base(), changed(), count);  // after an edit that records nothing
    QTRY_COMPARE_WITH_TIMEOUT(answers, 3, patience);
    auto other = std::make_shared<StockBase>(*base());
    other->season.stock.add(
        support::stockMove("more", MovementKind::Received, {"fen"}, {Place::Kind::Supplier, Place::Kind::Shelf}, 1));
    runner.ask(other, changed(), count);
    settle();
    QCOMPARE(answers, 3);
    QVERIFY(QFile::rename(path + ".away", path));
    runner.ask(other, changed(), count);
    QTRY_COMPARE_WITH_TIMEOUT(answers, 4, patience);
}

void StockChangeTest::theNewestQuestionWins() {
    StockRunner runner;
    std::vector<int> answered;
    for (int n = 0; n < 12; ++n)
        runner.ask(base(), changed(), [&, n](const StockAnswer&) { answered.push_back(n); });
    QTRY_VERIFY_WITH_TIMEOUT(!answered.empty(), patience);
    settle();
    QCOMPARE(answered, std::vector<int>{11});
}

void StockChangeTest::nothingIsAnsweredAfterLeaving() {
    StockRunner runner;
    int answers = 0;
    runner.ask(base(), changed(), [&](const StockAnswer&) { ++answers; });
    runner.leave();
    QVERIFY(!runner.isBusy());
    settle();
    QCOMPARE(answers, 0);
    runner.ask(base(), changed(), [&](const StockAnswer&) { ++answers; });
    QTRY_COMPARE_WITH_TIMEOUT(answers, 1, patience);
}

/// Nothing of it uses the file any longer: what closes the databases when the program ends does not wait.
void StockChangeTest::closingWhileBusyIsClean() {
    const QStringList connections = QSqlDatabase::connectionNames();
    for (const int wait : {0, 1, 2, 5, 10, 20, 40, 80}) {
        {
            StockRunner runner;
            runner.ask(base(), changed(), [](const StockAnswer&) { QFAIL("answered after the end"); });
            QThread::msleep(unsigned(wait));
        }
        QCOMPARE(QSqlDatabase::connectionNames(), connections);
    }
    settle();
}

void StockChangeTest::stockFollowsTheProof() {
    WhatIfRunner runner(*m_session);
    QStringList order;
    std::optional<WhatIfReply> last;
    connect(&runner, &WhatIfRunner::answered, this, [&](const WhatIfReply& reply) {
        order << (reply.answer.proven ? "proof" : "look");
        QVERIFY(!reply.besides);
    });
    connect(&runner, &WhatIfRunner::stockAnswered, this, [&](const WhatIfReply& reply) {
        order << "stock";
        last = reply;
    });
    const quint64 question = runner.ask(evening, daily(m_session->planningState()));
    QTRY_VERIFY_WITH_TIMEOUT(last, patience);
    QCOMPARE(order.last(), QString("stock"));
    QCOMPARE(order.count("stock"), 1);
    QCOMPARE(last->question, question);
    QVERIFY(last->besides && !last->besides->stock.isEmpty());
    QVERIFY(last->besides->cost.sum.minor > 0);
    // A newer question and leaving cancel it.
    last.reset();
    runner.ask(evening, daily(m_session->planningState()));
    runner.leave();
    settle();
    QVERIFY(!last);
}

/// A question on the demo centre, then others as while a mouse moves: the first answer never waits for the stock of the one
/// before.
void StockChangeTest::theFirstAnswerDoesNotWait() {
    support::DemoSession demo;
    WhatIfRunner runner(demo.session());
    QElapsedTimer clock;
    qint64 first = -1, last = -1, stock = -1;
    connect(&runner, &WhatIfRunner::answered, this, [&] {
        if (first < 0) first = clock.elapsed();
        last = clock.elapsed();
    });
    connect(&runner, &WhatIfRunner::stockAnswered, this, [&] { stock = clock.elapsed(); });
    const auto moved = [&](int quarters) {
        State state = demo.session().planningState();
        state.series.front().start = shifted(state.series.front().start, minutes(15 * quarters));
        return state;
    };
    for (int n = 1; n <= 4; ++n) {
        first = last = stock = -1;
        clock.start();
        runner.ask(evening, moved(n));
        QTRY_VERIFY_WITH_TIMEOUT(stock >= 0, 2 * patience);
        qInfo("question %d: first answer %lld ms, last %lld ms, stock %lld ms", n, first, last, stock);
        QVERIFY(first >= 0 && first <= last && last <= stock);
    }
    // In the middle of working out stock the next question is answered first.
    first = last = stock = -1;
    clock.start();
    runner.ask(evening, moved(5));
    QTRY_VERIFY_WITH_TIMEOUT(last >= 0, patience);
    first = -1;
    clock.start();
    runner.ask(evening, moved(6));
    QTRY_VERIFY_WITH_TIMEOUT(first >= 0, patience);
    qInfo("question while stock is worked out: first answer %lld ms", first);
    runner.leave();
}

void StockChangeTest::withoutSuppliesNobodyAsks() {
    support::StockedHouse bare({}, support::eveningSeason());
    const std::unique_ptr<Session> session = bare.session();
    WhatIfRunner runner(*session);
    QSignalSpy answers(&runner, &WhatIfRunner::answered);
    QSignalSpy stock(&runner, &WhatIfRunner::stockAnswered);
    runner.ask(evening, daily(session->planningState()));
    QTRY_VERIFY_WITH_TIMEOUT(!answers.isEmpty(), patience);
    QVERIFY(QThreadPool::globalInstance()->waitForDone(patience));
    settle();
    QCOMPARE(stock.count(), 0);
}

void StockChangeTest::draggingInTheWeekTellsIt() {
    CalendarPage page(*m_session);
    page.resize(1100, 660);
    page.show();
    WeekView& week = *page.findChild<WeekView*>();
    week.setCurrentKey(eventKey({"league"}, {thursday, QTime(18, 30)}));
    week.setFocus();
    const auto looks = [&] {
        for (int round = 0; round < 3; ++round)
            QCoreApplication::processEvents();
        return page.grab().toImage();
    };
    const QPoint middle = week.blockRect(week.current()).center();
    QTest::mouseMove(week.viewport(), middle);
    const QImage before = looks();
    drag(week.viewport(), middle, middle + QPoint(0, 40));
    QTRY_VERIFY2_WITH_TIMEOUT(panelOf(page).contains("Product cost"), qPrintable(panelOf(page)), patience);
    QVERIFY2(
        panelOf(page).contains("Nothing runs out or has to be ordered on another day.") || panelOf(page).contains("runs out"),
        qPrintable(panelOf(page)));
    QVERIFY(panelOf(page).contains("Proven"));
    QVERIFY(support::picture(page, "stock-change-week"));
    QTest::keyClick(&week, Qt::Key_Escape);
    QTest::mouseRelease(week.viewport(), Qt::LeftButton, {}, middle + QPoint(0, 40));
    QVERIFY(panelOf(page).isEmpty());
    settle();
    QVERIFY(panelOf(page).isEmpty());
    QTest::mouseMove(week.viewport(), middle);
    QCOMPARE(looks(), before);
    QCOMPARE(m_session->undoStack().count(), 0);
}

void StockChangeTest::draggingOnLanesTellsIt() {
    LanesPage page(*m_session);
    page.resize(1150, 660);
    page.show();
    HouseView& house = *page.findChild<HouseView*>();
    for (int i = 0; i < house.blockCount(); ++i) {
        if (house.itemOf(i) && house.itemOf(i)->kind == HouseItem::Kind::Event) house.setCurrent(i);
    }
    house.setFocus();
    const QPoint middle = house.blockRect(house.current()).center();
    drag(house.viewport(), middle, middle + QPoint(0, 60));
    const auto why = [&] { return page.findChild<WhyPanel*>()->allText(); };
    QTRY_VERIFY2_WITH_TIMEOUT(why().contains("Product cost"), qPrintable(why()), patience);
    QTest::keyClick(&house, Qt::Key_Escape);
    QVERIFY(!why().contains("Product cost"));
    settle();
    QVERIFY(!why().contains("Product cost"));
    QTest::mouseRelease(house.viewport(), Qt::LeftButton, {}, middle);
    QCOMPARE(m_session->undoStack().count(), 0);
}

void StockChangeTest::theSeasonTellsIt() {
    LanesPage page(*m_session);
    page.resize(1150, 660);
    page.show();
    for (QToolButton* button : page.findChild<DateBar*>()->findChildren<QToolButton*>()) {
        if (button->accessibleName() == "Year") QTest::mouseClick(button, Qt::LeftButton);
    }
    SeasonPanel& panel = *page.findChild<SeasonPanel*>();
    QTRY_VERIFY_WITH_TIMEOUT(!panel.isBusy(), 2 * patience);
    const auto stock = [&] {
        for (const QLabel* label : panel.findChildren<QLabel*>()) {
            if (label->accessibleName() == "What it does to stock") return label->isVisibleTo(&panel) ? label->text() : QString();
        }
        return QString("no label");
    };
    QCOMPARE(stock(), QString());
    QCheckBox* more = nullptr;
    for (QCheckBox* box : panel.findChildren<QCheckBox*>()) {
        if (box->isVisible() && !more) more = box;
    }
    QVERIFY(more);
    more->setFocus();
    QTest::keyClick(more, Qt::Key_Space);
    QTRY_VERIFY2_WITH_TIMEOUT(stock().contains("Product cost"), qPrintable(stock()), 2 * patience);
    QVERIFY2(stock().contains("over the 182 day"), qPrintable(stock()));
    QVERIFY(!panel.isLookingAtStock());
    QVERIFY(support::picture(page, "stock-change-season"));
    QTest::keyClick(more, Qt::Key_Space);
    QTRY_COMPARE_WITH_TIMEOUT(stock(), QString(), patience);
    QCOMPARE(m_session->undoStack().count(), 0);
}

/// What runs out earlier beside the ghost, light and dark.
void StockChangeTest::pictures() {
    SupplyDifference change;
    change.runOut = {{{"fen"}, thursday.addDays(33), thursday.addDays(30)}};
    change.orders = {{{{"fen"}, {"sluice"}}, thursday.addDays(23), thursday.addDays(20)}};
    DifferenceText text{"What if Thursday Fours plays on Fri 13 Nov, 19:00 to 22:00?", {}, {}};
    text.words = {"1 job moved",
                  {{DifferenceLine::Kind::Moved, "From Thu 16:00 to 17:00: clean and condition · lanes 1-8"},
                   {DifferenceLine::Kind::Amounts, "12/11 to 9/12: treatments +8, conditioner +240 mL, cleaner +1 L"},
                   {DifferenceLine::Kind::Proof, "Proven: no plan does better."}}};
    addBesides(text.words, {change, {}, {{1'420, "EUR"}, {"Sedge"}}}, m_session->season(), m_session->speech());
    for (const char* look : {"light", "dark"}) {
        QApplication::setPalette(QString(look) == "dark" ? support::darkPalette() : support::lightPalette());
        QWidget ground;
        ground.resize(400, 420);
        DifferencePanel panel(&ground);
        panel.show(text);
        panel.move(20, 20);
        ground.show();
        QVERIFY(support::picture(ground, QString("stock-change-") + look));
    }
}

QTEST_MAIN(StockChangeTest)
#include "tst_stock_change.moc"
