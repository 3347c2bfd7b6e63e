// The guided evening, driven by keyboard alone and by mouse alone on the demo centre, and what came of it in the records; then
// what happens when somebody leaves it, takes something back, types nonsense, or when the evening changes meanwhile.
#include "app/edits/run_form.h"
#include "app/pages/guide/guide_list.h"
#include "app/pages/guide/guide_view.h"
#include "app/pages/today/today_page.h"
#include "app/window/style.h"
#include "core/documents/guide_words.h"
#include "core/season/pack_outlook.h"
#include "tests/support/demo_window.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"
#include "tests/support/practised_pack.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QTest>
#include <QTranslator>

#include <functional>

using namespace laneward;

namespace {

using support::afternoon;

struct House : support::DemoWindow {
    GuideView* guide() { return window.findChild<GuideView*>(); }

    void pass(Instant t) {
        clock.set(t);
        session().tick();
    }
    std::vector<RunLog> runsSince(Instant t) {
        std::vector<RunLog> runs;
        for (const RunLog& run : standing(session().season().runs)) {
            if (run.recordedAt >= t) runs.push_back(run);
        }
        return runs;
    }
};

/// The guide alone, on the small evening.
struct Desk {
    support::Evening evening;
    std::unique_ptr<Session> session;
    std::unique_ptr<GuideView> view;

    explicit Desk(Access access = Access::ReadWrite, bool packs = false) {
        session = std::make_unique<Session>(evening.store(access), evening.clock);
        session->setPerson({"ada"});
        if (packs && !session->apply("Packs", {RowChange<ServiceItem>{{}, support::practisedPack("p1", "p1")},
                                               RowChange<ServiceItem>{{}, support::practisedPack("p2", "p2")}}))
            qFatal("no packs");
        open();
    }
    QComboBox* state() const {
        for (QComboBox* box : view->findChildren<QComboBox*>("guideVoltState")) {
            if (box->isVisible()) return box;
        }
        return nullptr;
    }
    std::vector<PackReading> log() const { return standing(session->season().packReadings); }
    void open() {
        view.reset();
        view = std::make_unique<GuideView>(*session);
        view->resize(1100, 600);
        view->show();
        if (!QTest::qWaitForWindowExposed(view.get())) qFatal("the guide is not shown");
    }
    QString title() const { return view->findChild<QLabel*>("guideTitle")->text(); }
    QString notice() const { return view->findChild<QLabel*>("guideNotice")->text(); }
    QString problem() const {
        const auto* label = view->findChild<QLabel*>("guideProblem");
        return label->isVisible() ? label->text() : QString();
    }
    void key(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }
    void click(const QString& name) {
        auto* button = view->findChild<QPushButton*>(name);
        QVERIFY2(button && button->isVisible() && button->isEnabled(), qPrintable(name));
        QTest::mouseClick(button, Qt::LeftButton);
    }
    QList<QLineEdit*> blanks() const {
        QList<QLineEdit*> seen;
        for (QLineEdit* field : view->findChildren<QLineEdit*>("guideBlank")) {
            if (field->isVisible()) seen.append(field);
        }
        return seen;
    }
    void until(const QString& start) {
        for (int n = 0; n < 40 && !title().startsWith(start); ++n)
            view->goOn();
        QVERIFY2(title().startsWith(start), qPrintable(title()));
    }
    std::vector<RunLog> runs() const { return standing(session->season().runs); }
};

}  // namespace

class GuideViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void anEveningByKeyboardAlone();
    void anEveningByMouseAlone();
    void opensInPlaceOfThePageAndCloses();
    void ticksStayWhenLeftAndWhenTheWindowWasClosed();
    void nonsenseIsSaidAndKept();
    void twoReadingsOfOneSecondBothCount();
    void voltsGoToThePacksLogWithTheirState();
    void tooFewVoltsAreSaidAtOnce();
    void emptiedWasteIsTyped();
    void aSwapIsOneDeedWithTheLog();
    void thePackGoesOnChargeAtTheEnd();
    void lookingBackKeepsAndCorrects();
    void whatIsTakenBackComesAgain();
    void leavingOutRecordsNothing();
    void cutShortIsRecordedByTheForm();
    void leavingTheBayConfirmsTheOuting();
    void followsAnEventThatSlips();
    void typedValuesSurviveAChangeElsewhere();
    void aHeldKeyTicksNothing();
    void readOnlyTicksWithoutRecords();
    void emptyDaySaysWhatToDo();
    void looks_data();
    void looks();

private:
    void walk(House& house, const std::function<void()>& done, const std::function<void(const QString&)>& write);
    void checkRecords(House& house);
};

void GuideViewTest::initTestCase() { QStandardPaths::setTestModeEnabled(true); }

void GuideViewTest::init() { QSettings().remove("guide"); }

void GuideViewTest::cleanup() {
    QApplication::setPalette(support::lightPalette());
    QApplication::setLayoutDirection(Qt::LeftToRight);
    QLocale::setDefault(QLocale("en_GB"));
    applyStyle(TargetSize::Usual);
}

/// Every step of the evening at its time; volts and a note are written where there is a blank for them.
void GuideViewTest::walk(House& house, const std::function<void()>& done, const std::function<void(const QString&)>& write) {
    GuideView* guide = house.guide();
    QVERIFY(guide && guide->isVisible());
    for (int n = 0; n < 200 && guide->shownStep(); ++n) {
        const GuideStep step = *guide->shownStep();
        Session& session = house.session();
        const JobSheet sheet = jobSheet(session.season(), session.planOf(session.today()), session.today(), session.now());
        if (step.deed == GuideDeed::Volts) write("25.7");
        if (step.deed == GuideDeed::HandOver) write("All went well");
        if (step.deed == GuideDeed::Run) {
            const Job& job = sheet.jobs[*step.step.job];
            house.pass(std::max(house.clock.now(), job.state == JobState::UnderWay ? job.time.end : job.time.begin));
        }
        const size_t before = guide->guide().done.size();
        done();
        QVERIFY2(guide->guide().done.size() > before || step.deed == GuideDeed::Run,
                 qPrintable(titleOf(step, sheet, session.speech())));
    }
    QVERIFY(!guide->shownStep());
}

void GuideViewTest::checkRecords(House& house) {
    Session& session = house.session();
    const Plan& plan = session.planOf(session.today());
    int jobs = 0;
    for (const Job& job : plan.jobs) {
        if (job.date != session.today()) continue;
        QVERIFY2(job.state == JobState::Done, qPrintable(job.laneSet().text()));
        ++jobs;
    }
    const std::vector<RunLog> runs = house.runsSince(afternoon);
    QVERIFY(runs.size() >= 3);
    QVERIFY(int(runs.size()) <= jobs);
    for (const RunLog& run : runs) {
        QCOMPARE(run.result, RunResult::AsPlanned);
        QCOMPARE(run.person.value, QString("nell"));
        QVERIFY(run.time.end <= house.clock.now());
    }
    int volts = 0;
    int full = 0;
    for (const LevelReading& reading : standing(session.season().readings)) {
        if (reading.levels.at < afternoon) continue;
        volts += reading.levels.volts == Millivolts{25'700} ? 1 : 0;
        const Machine* machine = findMachine(session.season().centre, reading.levels.machine);
        full += reading.levels.cleaner == machine->capacity.cleaner && reading.levels.waste == Microlitres{0} ? 1 : 0;
    }
    QVERIFY(volts >= 2);  // of both machines
    QVERIFY(full >= 2);
    // The duty that the demo has fall due tonight, with the steps of its record.
    const auto served =
        std::count_if(session.season().services.begin(), session.season().services.end(), [](const ServiceRecord& r) {
            return r.duty.value == "grebe-squeegee-turn" && r.at >= afternoon && r.result == ServiceResult::Done;
        });
    QCOMPARE(served, 1);
    QCOMPARE(session.season().handOvers.back().text, QString("All went well"));
    QVERIFY(house.guide()->findChild<QLabel*>("guideTitle")->text().startsWith("Everything"));
}

void GuideViewTest::anEveningByKeyboardAlone() {
    House house;
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_G, Qt::ControlModifier);
    walk(
        house, [] { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space); },
        [](const QString& typed) {
            QWidget* field = QApplication::focusWidget();
            QVERIFY(qobject_cast<QLineEdit*>(field));
            QTest::keyClicks(field, typed);
            if (typed.contains(' ')) {  // a note has spaces; Tab leads on to the button
                while (!qobject_cast<QPushButton*>(QApplication::focusWidget()) ||
                       QApplication::focusWidget()->objectName() != "guideGoOn")
                    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            }
        });
    checkRecords(house);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    QVERIFY(house.window.workspace()->currentPage()->isVisible());
}

void GuideViewTest::anEveningByMouseAlone() {
    House house;
    QTest::mouseClick(house.window.findChild<QPushButton*>("guide"), Qt::LeftButton);
    walk(
        house, [&] { QTest::mouseClick(house.guide()->findChild<QPushButton*>("guideGoOn"), Qt::LeftButton); },
        [&](const QString& typed) {
            for (QLineEdit* field : house.guide()->findChildren<QLineEdit*>("guideBlank")) {
                if (!field->isVisible()) continue;
                QTest::mouseClick(field, Qt::LeftButton);
                field->insert(typed);  // as from a keypad on the screen
                break;
            }
        });
    checkRecords(house);
    QTest::mouseClick(house.guide()->findChild<QPushButton*>("closeGuide"), Qt::LeftButton);
    QVERIFY(house.window.workspace()->currentPage()->isVisible());
}

void GuideViewTest::opensInPlaceOfThePageAndCloses() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    Page* page = window.workspace()->currentPage();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_G, Qt::ControlModifier);
    QPointer<GuideView> guide = window.findChild<GuideView*>();
    QVERIFY(guide && guide->isVisible() && !page->isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_G, Qt::ControlModifier);
    QCOMPARE(window.findChildren<GuideView*>().size(), 1);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    QTRY_VERIFY(!guide);
    QVERIFY(page->isVisible());
    QVERIFY(page->isAncestorOf(QApplication::focusWidget()) || page == QApplication::focusWidget());
}

void GuideViewTest::ticksStayWhenLeftAndWhenTheWindowWasClosed() {
    Desk desk;
    desk.until("Floor sign");
    const std::vector<GuideTick> ticks = desk.view->guide().done;
    QVERIFY(ticks.size() >= 4);
    desk.open();
    QCOMPARE(desk.view->guide().done, ticks);
    QVERIFY(desk.title().startsWith("Floor sign"));
    desk.view.reset();
    desk.session = support::sessionOn(desk.evening);
    desk.open();
    QCOMPARE(desk.view->guide().done, ticks);
    // Another evening begins anew.
    desk.view.reset();
    desk.evening.clock.set(support::eveningNow + hours(7 * 24));
    desk.session = support::sessionOn(desk.evening);
    desk.open();
    QVERIFY(desk.view->guide().done.empty());
}

void GuideViewTest::nonsenseIsSaidAndKept() {
    Desk desk;
    desk.until("Otter: charger off");
    struct Case {
        const char* typed;
        const char* said;
    };
    for (const Case& one : {Case{"61", "0 to 60 volts"}, Case{"abc", "'abc' is no number"}, Case{"-1", "0 to 60 volts"},
                            Case{"2,5,6", "is no number"}}) {
        QWidget* field = QApplication::focusWidget();
        QVERIFY(qobject_cast<QLineEdit*>(field));
        static_cast<QLineEdit*>(field)->clear();
        QTest::keyClicks(field, one.typed);
        desk.key(Qt::Key_Space);
        QVERIFY2(desk.problem().contains(one.said), qPrintable(desk.problem()));
        QVERIFY(desk.title().startsWith("Otter: charger off"));
        QCOMPARE(static_cast<QLineEdit*>(field)->text(), QString(one.typed));
        QVERIFY(desk.session->season().readings.empty());
    }
    desk.blanks().front()->setText("25.9");
    desk.key(Qt::Key_Return);
    QCOMPARE(desk.session->season().readings.size(), size_t(1));
    QCOMPARE(desk.session->season().readings.front().levels.volts->value, std::int64_t{25'900});
    QCOMPARE(desk.problem(), QString());
    // Enter goes from blank to blank; what is not typed stays as the records say.
    QCOMPARE(desk.blanks().size(), 4);
    desk.key(Qt::Key_Return);
    QTest::keyClicks(QApplication::focusWidget(), "9999");
    desk.key(Qt::Key_Space);
    QVERIFY2(desk.problem().contains("Sluice: between 0 and 7.5"), qPrintable(desk.problem()));
    desk.blanks()[1]->setText("5000");
    desk.view->goOn();
    const MachineLevels levels = standing(desk.session->season().readings).back().levels;
    QCOMPARE(levels.cleaner.value, millilitres(5'000).value);
    QCOMPARE(levels.conditioner[0].value, millilitres(2'000).value);
    QCOMPARE(levels.volts->value, std::int64_t{25'900});
}

void GuideViewTest::twoReadingsOfOneSecondBothCount() {
    for (int round = 0; round < 8; ++round) {
        QSettings().remove("guide");
        Desk desk;
        desk.until("Otter: charger off");
        desk.blanks()[0]->setText("25.9");
        desk.view->goOn();
        desk.blanks()[1]->setText("5000");
        desk.view->goOn();
        desk.evening.clock.set(support::eveningNow + Seconds{2});
        desk.session->tick();
        QVERIFY(desk.session->reload());
        const MachineLevels levels = desk.session->planningState().levels.front();
        QCOMPARE(levels.volts->value, std::int64_t{25'900});
        QCOMPARE(levels.cleaner.value, millilitres(5'000).value);
    }
}

void GuideViewTest::voltsGoToThePacksLogWithTheirState() {
    Desk desk(Access::ReadWrite, true);
    desk.until("Otter: charger off");
    auto* state = desk.state();
    QVERIFY(state && state->isVisible());
    QCOMPARE(state->currentData().toInt(), int(VoltageState::JustCharged));  // as the pack's limit is measured
    // By keyboard: Tab leads to the state, the arrows choose, Space goes on.
    QTest::keyClicks(QApplication::focusWidget(), "25.5");
    desk.key(Qt::Key_Tab);
    QCOMPARE(QApplication::focusWidget(), static_cast<QWidget*>(state));
    desk.key(Qt::Key_Up);
    desk.key(Qt::Key_Space);
    QVERIFY2(desk.title().startsWith("Otter: read all levels"), qPrintable(desk.title()));
    QCOMPARE(desk.log().size(), size_t(1));
    QVERIFY(desk.log().front().state == VoltageState::Rested && desk.log().front().deed == PackDeed::Read);
    QCOMPARE(desk.log().front().volts->value, std::int64_t{25'500});
    QVERIFY(desk.log().front().pack.value == "p1");
    // One deed: one undo takes back the reading and the log.
    desk.session->undoStack().undo();
    QVERIFY(desk.log().empty());
    QVERIFY(desk.title().startsWith("Otter: charger off"));
    // By mouse: what is chosen beside the blank counts as well.
    desk.blanks().front()->setText("26.9");
    desk.click("guideGoOn");
    QVERIFY(desk.log().front().state == VoltageState::JustCharged);
    // Out of the choice Backspace leads back, as from everywhere.
    desk.key(Qt::Key_Backspace);
    desk.state()->setFocus();
    desk.key(Qt::Key_Backspace);
    QVERIFY2(desk.title().startsWith("Look at tonight"), qPrintable(desk.title()));
}

void GuideViewTest::tooFewVoltsAreSaidAtOnce() {
    Desk desk(Access::ReadWrite, true);
    desk.until("Otter: charger off");
    QTest::keyClicks(QApplication::focusWidget(), "19.9");
    const auto* advice = desk.view->findChild<QLabel*>("guideAdvice");
    QVERIFY(advice->isVisible());
    QVERIFY2(advice->text().contains("put the spare pack on before the run"), qPrintable(advice->text()));
    desk.key(Qt::Key_Space);
    QVERIFY2(desk.notice().contains("put the spare pack on before the run"), qPrintable(desk.notice()));
    QVERIFY(!advice->isVisible());
    desk.key(Qt::Key_Space);
    QCOMPARE(desk.notice(), QString());
    // Without a pack of its own the machine's settings hold.
    Desk plain;
    plain.until("Otter: charger off");
    QVERIFY(!plain.state());
    QTest::keyClicks(QApplication::focusWidget(), "24.1");
    QVERIFY(plain.view->findChild<QLabel*>("guideAdvice")->text().contains("24.1 V is below 24.2 V"));
}

void GuideViewTest::emptiedWasteIsTyped() {
    Desk desk;
    desk.until("Otter: waste into");
    QTest::keyClicks(QApplication::focusWidget(), "-3");
    desk.key(Qt::Key_Space);
    QVERIFY2(desk.problem().contains("cannot be emptied; nothing was recorded"), qPrintable(desk.problem()));
    QVERIFY(desk.title().startsWith("Otter: waste into"));
    desk.blanks().front()->setText("12000");
    QVERIFY(desk.view->findChild<QLabel*>("guideAdvice")->text().contains("kept and flagged"));
    desk.blanks().front()->setText("790");
    QCOMPARE(desk.view->findChild<QLabel*>("guideAdvice")->text(), QString());
    desk.key(Qt::Key_Space);
    const LevelReading reading = standing(desk.session->season().readings).back();
    QCOMPARE(reading.emptied->value, millilitres(790).value);
    QCOMPARE(reading.levels.waste.value, std::int64_t{0});
    desk.session->undoStack().undo();
    QVERIFY(!standing(desk.session->season().readings).back().emptied);
}

void GuideViewTest::aSwapIsOneDeedWithTheLog() {
    Desk desk(Access::ReadWrite, true);
    desk.evening.clock.set(support::eveningNow - minutes(30));
    LevelReading low;
    low.levels = desk.session->planningState().levels.front();
    low.levels.at = desk.session->now();
    low.levels.lanesLeft = 2;
    QVERIFY(desk.session->record("Low", {low}));
    desk.until("Swap the pack of Otter");
    QTest::keyClicks(QApplication::focusWidget(), "26.8");
    const int steps = desk.session->undoStack().index();
    desk.key(Qt::Key_Space);
    QCOMPARE(desk.session->undoStack().index(), steps + 1);
    QCOMPARE(desk.log().size(), size_t(2));
    const std::vector<PackState> packs = packsOf(desk.session->season(), desk.session->now() + Seconds{2});
    QVERIFY(packs[0].onCharge && !packs[0].onMachine && packs[1].onMachine);
    QCOMPARE(packs[1].volts->value, std::int64_t{26'800});
    desk.session->undoStack().undo();
    QVERIFY(desk.log().empty());
}

void GuideViewTest::thePackGoesOnChargeAtTheEnd() {
    Desk desk(Access::ReadWrite, true);
    desk.until("Otter: pack on charge");
    const size_t before = desk.log().size();
    desk.key(Qt::Key_Space);
    QCOMPARE(desk.log().size(), before + 1);
    QVERIFY(packsOf(desk.session->season(), desk.session->now() + Seconds{2}).front().onCharge);
    QVERIFY(!desk.title().startsWith("Otter: pack on charge"));
    QCOMPARE(desk.session->undoStack().undoText(), QString("Pack of Otter on charge"));
    // Taken back it comes again.
    desk.session->undoStack().undo();
    QVERIFY(!packsOf(desk.session->season(), desk.session->now() + Seconds{2}).front().onCharge);
    QVERIFY2(desk.title().startsWith("Otter: pack on charge"), qPrintable(desk.title()));
    // A machine of which nobody keeps packs has the step and no record.
    Desk other;
    other.until("Otter: pack on charge");
    const int steps = other.session->undoStack().index();
    other.key(Qt::Key_Space);
    QCOMPARE(other.session->undoStack().index(), steps);
    QVERIFY(!other.title().startsWith("Otter: pack on charge"));
}

void GuideViewTest::lookingBackKeepsAndCorrects() {
    Desk desk;
    desk.until("Otter: charger off");
    QTest::keyClicks(QApplication::focusWidget(), "25.9");
    desk.key(Qt::Key_Space);
    const size_t done = desk.view->guide().done.size();
    desk.key(Qt::Key_Backspace);
    QVERIFY(desk.title().startsWith("Otter: charger off"));
    QCOMPARE(desk.view->guide().done.size(), done);
    // Nothing typed: nothing recorded again.
    desk.key(Qt::Key_Space);
    QCOMPARE(desk.session->season().readings.size(), size_t(1));
    QVERIFY(desk.title().startsWith("Otter: read all levels"));
    desk.key(Qt::Key_Backspace);
    QTest::keyClicks(QApplication::focusWidget(), "24.9");
    desk.key(Qt::Key_Space);
    QCOMPARE(desk.session->season().readings.size(), size_t(2));
    QCOMPARE(desk.view->guide().done.size(), done);
    desk.key(Qt::Key_Backspace);
    desk.key(Qt::Key_Backspace);
    QVERIFY(desk.title().startsWith("Look at tonight"));
    QVERIFY(!desk.view->findChild<QPushButton*>("guideBack")->isEnabled());
    desk.click("guideGoOn");
    desk.click("guideGoOn");
    QVERIFY(desk.title().startsWith("Otter: read all levels"));
    desk.click("guideBack");
    QVERIFY(desk.title().startsWith("Otter: charger off"));
}

void GuideViewTest::whatIsTakenBackComesAgain() {
    Desk desk;
    desk.until("Otter: charger off");
    QTest::keyClicks(QApplication::focusWidget(), "25.9");
    desk.key(Qt::Key_Space);
    QVERIFY(desk.title().startsWith("Otter: read all levels"));
    desk.session->undoStack().undo();
    QVERIFY2(desk.title().startsWith("Otter: charger off"), qPrintable(desk.title()));
    desk.until("Lanes 1-8");
    desk.view->goOn();
    desk.evening.clock.set(support::eveningNow + hours(1));
    desk.view->goOn();
    QCOMPARE(desk.runs().size(), size_t(1));
    desk.session->undoStack().undo();
    QVERIFY(desk.runs().empty());
    QVERIFY2(desk.title().startsWith("Lanes 1-8"), qPrintable(desk.title()));
    desk.session->undoStack().redo();
    QCOMPARE(desk.runs().size(), size_t(1));
    QVERIFY2(desk.title().startsWith("Bring Otter back"), qPrintable(desk.title()));
}

void GuideViewTest::leavingOutRecordsNothing() {
    Desk desk;
    desk.until("Lanes 1-8");
    const int steps = desk.session->undoStack().count();
    desk.click("guideLeaveOut");
    QVERIFY(desk.runs().empty());
    QCOMPARE(desk.session->undoStack().count(), steps);
    QVERIFY(desk.view->guide().done.back().isLeftOut);
    bool marked = false;
    const auto* list = desk.view->findChild<GuideList*>();
    for (int row = 0; row < list->count(); ++row)
        marked |= list->item(row)->text().startsWith("– left out: Lanes 1-8");
    QVERIFY(marked);
}

void GuideViewTest::cutShortIsRecordedByTheForm() {
    Desk desk;
    desk.until("Lanes 1-8");
    desk.view->goOn();
    desk.evening.clock.set(support::eveningNow + hours(1));
    desk.click("guideOtherwise");
    auto* form = desk.view->findChild<RunForm*>();
    QVERIFY(form->isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    QVERIFY(!form->isVisible() && desk.view->isVisible());
    desk.click("guideOtherwise");
    for (QComboBox* box : form->findChildren<QComboBox*>()) {
        if (box->findText("lane 4") >= 0) box->setCurrentIndex(box->findText("lane 4"));
    }
    desk.click("recordRun");
    QCOMPARE(desk.runs().size(), size_t(1));
    QCOMPARE(desk.runs().front().result, RunResult::CutShort);
    QVERIFY(!form->isVisible());
    // The rest is planned again, and the guide says so.
    QVERIFY2(desk.notice().startsWith("The plan has changed"), qPrintable(desk.notice()));
    bool rest = false;
    for (const GuideStep& step : desk.view->guide().ahead)
        rest |= step.deed == GuideDeed::Run;
    QVERIFY(rest);
}

void GuideViewTest::leavingTheBayConfirmsTheOuting() {
    Desk desk;
    desk.until("Ready Otter");
    QVERIFY(desk.session->season().confirmed.empty());
    desk.view->goOn();
    QCOMPARE(desk.session->season().confirmed.size(), size_t(1));
    QCOMPARE(desk.session->season().confirmed.front().state, JobState::Confirmed);
    QVERIFY(desk.title().startsWith("Lanes 1-8"));
    desk.session->undoStack().undo();
    QVERIFY(desk.session->season().confirmed.empty());
}

void GuideViewTest::followsAnEventThatSlips() {
    Desk desk;
    desk.evening.clock.set(support::eveningNow - minutes(20));
    desk.session->tick();
    desk.until("Floor sign");
    const std::vector<GuideTick> ticks = desk.view->guide().done;
    const auto& open = desk.session->occupancyOf({desk.session->today(), desk.session->today()}).occurrences.front();
    QVERIFY(desk.session->slip(open.series, open.original, minutes(80)));
    QCOMPARE(desk.view->guide().done, ticks);
    QVERIFY(desk.title().startsWith("Floor sign"));
    QVERIFY2(desk.notice().startsWith("The plan has changed: "), qPrintable(desk.notice()));
    desk.view->goOn();
    QCOMPARE(desk.notice(), QString());
}

void GuideViewTest::typedValuesSurviveAChangeElsewhere() {
    Desk desk;
    desk.until("Otter: charger off");
    QTest::keyClicks(QApplication::focusWidget(), "25.3");
    HandOver note;
    note.date = desk.session->today();
    note.at = desk.session->now();
    note.text = "elsewhere";
    QVERIFY(desk.session->record("A note", {note}));
    QCOMPARE(desk.blanks().front()->text(), QString("25.3"));
    QCOMPARE(QApplication::focusWidget(), static_cast<QWidget*>(desk.blanks().front()));
}

void GuideViewTest::aHeldKeyTicksNothing() {
    Desk desk;
    QWidget* focus = QApplication::focusWidget();
    for (int n = 0; n < 3; ++n) {
        QKeyEvent held(QEvent::KeyPress, Qt::Key_Space, Qt::NoModifier, " ", true);
        QApplication::sendEvent(focus, &held);
        QKeyEvent released(QEvent::KeyRelease, Qt::Key_Space, Qt::NoModifier, " ", true);
        QApplication::sendEvent(focus, &released);
    }
    QVERIFY(desk.view->guide().done.empty());
}

void GuideViewTest::readOnlyTicksWithoutRecords() {
    Desk desk(Access::ReadOnly);
    QVERIFY(desk.session->isReadOnly());
    QVERIFY(desk.notice().contains("nothing is recorded"));
    int steps = 0;
    for (; steps < 40 && desk.view->shownStep(); ++steps)
        desk.key(Qt::Key_Space);
    QVERIFY(!desk.view->shownStep());
    QCOMPARE(size_t(steps), desk.view->guide().done.size());
    QVERIFY(desk.session->season().readings.empty() && desk.runs().empty() && desk.session->season().confirmed.empty());
    QVERIFY(!desk.notice().contains("nothing is recorded"));  // said once
}

void GuideViewTest::emptyDaySaysWhatToDo() {
    support::Evening evening;
    evening.clock.set(support::eveningNow + hours(24));
    const auto session = support::sessionOn(evening);
    GuideView view(*session);
    view.show();
    QVERIFY(QTest::qWaitForWindowExposed(&view));
    QCOMPARE(view.findChild<QLabel*>("guideTitle")->text(), QString("No lane needs a treatment today."));
    QVERIFY(view.findChild<QLabel*>("guideDetails")->text().contains("Calendar"));
    QVERIFY(!view.findChild<QPushButton*>("guideGoOn")->isEnabled());
    QTest::keyClick(&view, Qt::Key_Space);
    QVERIFY(view.guide().done.empty());
}

void GuideViewTest::looks_data() {
    QTest::addColumn<QString>("look");
    for (const char* look : {"light", "dark", "contrast", "german", "mirrored", "shop"})
        QTest::newRow(look) << QString(look);
}

void GuideViewTest::looks() {
    QFETCH(QString, look);
    applyStyle(look == "shop" ? TargetSize::Shop : TargetSize::Usual);
    QTranslator german;
    if (look == "dark") QApplication::setPalette(readablePalette(support::darkPalette()));
    if (look == "contrast") QApplication::setPalette(readablePalette(support::contrastPalette()));
    if (look == "mirrored") QApplication::setLayoutDirection(Qt::RightToLeft);
    if (look == "german") {
        QLocale::setDefault(QLocale("de_DE"));
        QVERIFY(german.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
        QApplication::installTranslator(&german);
    }
    House house;
    house.window.workspace()->showGuide();
    GuideView* guide = house.guide();
    const auto shot = [&](const QString& name) {
        QVERIFY(support::picture(house.window, "guide-" + name + "-" + look));
        QCOMPARE(house.window.size(), QSize(1280, 720));
        for (const QPushButton* button : guide->findChildren<QPushButton*>()) {
            if (!button->isVisible()) continue;
            if (guide->findChild<RunForm*>()->isAncestorOf(button)) continue;  // as on the page Today
            QVERIFY2(button->height() >= 28, qPrintable(button->text()));
            QVERIFY2(button->fontMetrics().horizontalAdvance(button->text().remove('&')) <= button->width(),
                     qPrintable(button->text()));
        }
    };
    shot("begin");
    const auto goOn = [&] {
        if (const GuideStep& step = *guide->shownStep(); step.deed == GuideDeed::Run) {
            Session& session = house.session();
            const JobSheet sheet = jobSheet(session.season(), session.planOf(session.today()), session.today(), session.now());
            const Span time = sheet.jobs[*step.step.job].time;
            house.pass(
                std::max(house.clock.now(), sheet.jobs[*step.step.job].state == JobState::UnderWay ? time.end : time.begin));
        }
        guide->goOn();
    };
    const auto until = [&](GuideDeed deed) {
        while (guide->shownStep() && guide->shownStep()->deed != deed)
            goOn();
    };
    until(GuideDeed::Volts);
    shot("volts");
    const auto firstBlank = [&] {
        for (QLineEdit* field : guide->findChildren<QLineEdit*>("guideBlank")) {
            if (field->isVisible()) return field;
        }
        return static_cast<QLineEdit*>(nullptr);
    };
    firstBlank()->setText(QLocale().toString(23.9));
    QVERIFY(guide->findChild<QLabel*>("guideAdvice")->isVisible());
    shot("volts-low");
    firstBlank()->clear();
    until(GuideDeed::Levels);
    shot("levels");
    until(GuideDeed::Run);
    shot("run");
    guide->recordOtherwise();
    shot("otherwise");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    for (int n = 0; n < 100 && guide->shownStep() && !guide->shownStep()->duty; ++n)
        goOn();
    shot("duty");
    until(GuideDeed::CloseTanks);
    firstBlank()->setText(QStringLiteral("99000"));
    shot("emptied");
    firstBlank()->clear();
    for (int n = 0; n < 100 && guide->shownStep(); ++n)
        goOn();
    QVERIFY(!guide->shownStep());
    shot("end");
}

QTEST_MAIN(GuideViewTest)
#include "tst_guide.moc"
